/**
 * Who is asking: a one-time link becomes an opaque session cookie. Both are 256 random bits and are stored as hashes,
 * so a copy of the database signs nobody in.
 */
import { createHash, randomBytes } from 'node:crypto';
import type { FastifyReply, FastifyRequest } from 'fastify';
import type { Person } from '../../engine/desk/index.ts';
import type { WebParts } from './parts.ts';
import { Problem } from './problem.ts';

const COOKIE = 'nocool';
/** Days; our setting. A technician signs in once a season, a lost phone is signed out by its owner or the shop. */
const SESSION_DAYS = 90;

declare module 'fastify' {
  interface FastifyRequest {
    /** Set by `whoAsks`; null where nobody is signed in. */
    person: Person | null;
  }
}

/** Uses a link up and signs its person in; false where it is unknown, used or too old. */
export async function signIn(
  parts: WebParts,
  request: FastifyRequest,
  reply: FastifyReply,
  token: string,
): Promise<boolean> {
  const { store, clock } = parts;
  const person = await store.useLink(hashOf(token), clock().toISOString());
  if (person === null) return false;
  const session = randomBytes(32).toString('base64url');
  const began = { made: clock().toISOString(), device: deviceOf(request) };
  await store.saveSession(hashOf(session), person, inDays(clock(), SESSION_DAYS), began);
  reply.setCookie(cookieName(parts), session, { ...cookie(parts), maxAge: SESSION_DAYS * 86_400 });
  return true;
}

export async function signOut(parts: WebParts, request: FastifyRequest, reply: FastifyReply): Promise<void> {
  const token = request.cookies[cookieName(parts)];
  if (token !== undefined) await parts.store.endSession(hashOf(token));
  reply.clearCookie(cookieName(parts), cookie(parts));
}

/** The session that a request came by, as it is stored; null where there is none. */
export function sessionOf(parts: WebParts, request: FastifyRequest): string | null {
  const token = request.cookies[cookieName(parts)];
  return token === undefined ? null : hashOf(token);
}

/** The signed-in person behind a request, or null. A person who left the crew is signed in no longer. */
export async function whoAsks(parts: WebParts, request: FastifyRequest): Promise<Person | null> {
  const { store, clock, desk } = parts;
  const token = request.cookies[cookieName(parts)];
  if (token === undefined || token.length > 100) return null;
  const id = await store.session(hashOf(token), clock().toISOString());
  const person = id === null ? null : await desk.person(id);
  return person?.active ? person : null;
}

/** Throws a 401 where nobody is signed in. */
export function signedIn(request: FastifyRequest): Person {
  if (!request.person) throw new Problem(401, 'not-signed-in', 'Sign in first, with the link you were given.');
  return request.person;
}

/** Behind https a browser takes this name from this host alone, over https alone, for the whole of it. */
const cookieName = ({ secureCookies }: WebParts): string => (secureCookies ? `__Host-${COOKIE}` : COOKIE);
/** A word that a person knows their device by; nothing that would tell one phone from another. */
const deviceOf = ({ headers }: FastifyRequest): string =>
  /\bMobi/.test(headers['user-agent'] ?? '') ? 'phone' : 'computer';
const hashOf = (token: string): string => createHash('sha256').update(token).digest('hex');
const inDays = (from: Date, days: number): string => new Date(from.getTime() + days * 86_400_000).toISOString();
const cookie = ({ secureCookies }: WebParts) =>
  ({ path: '/', httpOnly: true, sameSite: 'lax', secure: secureCookies }) as const;
