/**
 * By which words a job or a unit is found. Derived from what is written anyway, in the same commit; rows may be thrown away.
 * Words of people are in it, so they go where the words themselves go.
 */
import { VULNERABLE } from '../decide/call.ts';
import type { Entry, Text, TextRef, Value } from '../schema.ts';
import type { Append } from './appends.ts';
import { endOf } from './appends.ts';
import type { SheetList } from './port.ts';
import { json } from './rows.ts';

/** Shorter ones find everything. */
const SHORTEST = 2;
/** Digits from which on a number is one to call back on, however it is spaced. */
const NUMBER = 7;
const LONGEST = 40;

export type SoughtRow = [token: string, list: 'job' | SheetList, id: string, seq: number];

/** The words of a text as they are looked up: lower case, without accents, each once; a long number also as a whole. */
export function tokensOf(text: string): string[] {
  const plain = text.normalize('NFKD').replace(/\p{M}/gu, '').toLowerCase();
  const words = plain.split(/[^\p{L}\p{N}]+/u).filter((word) => word.length >= SHORTEST);
  return [...new Set([...words, ...numbersIn(plain)].map((word) => word.slice(0, LONGEST)))];
}

/** What was typed so far, as beginnings of words: a number is one beginning, however it is spaced. */
export function beginningsOf(typed: string): string[] {
  const number = /^[\d\s().+/-]+$/.test(typed.trim()) ? typed.replace(/\D/g, '') : '';
  if (number.length >= 4) return [number];
  return tokensOf(typed).slice(0, 6);
}
/** Digits with nothing but spaces and signs between them, as numbers to call back on are written. */
const numbersIn = (plain: string): string[] =>
  [...plain.matchAll(/\d[\d\s().+/-]*\d/g)].map(([run]) => run.replace(/\D/g, '')).filter((n) => n.length >= NUMBER);

/** How a job about this unit is found. */
export const unitToken = (unit: string): string => `unit:${unit}`;

export function soughtIn(one: Append): SoughtRow[] {
  const words = new Map(one.texts.map(({ ref, text }: Text) => [ref, text]));
  const tokens = new Set(one.entries.flatMap((entry) => tokensIn(entry, words)));
  return [...tokens].map((token) => [token, 'job', one.job, endOf(one)]);
}

/** What a part of an answer says in a person's words: a note, or a print as it was typed. */
const wordsOf = (v: Value): TextRef[] => (v.kind === 'text' ? [v.text] : v.kind === 'label' ? [v.typed] : []);

/** Titles, verdicts, units, prints, notes, and what a caller said in words: not every reading of a day. */
export function tokensIn(entry: Entry, words: ReadonlyMap<string, string>): string[] {
  const of = (refs: readonly TextRef[]): string[] => refs.flatMap(({ ref }) => tokensOf(words.get(ref) ?? ''));
  switch (entry.kind) {
    case 'opened':
      return of([entry.body.title]);
    case 'concluded':
      return tokensOf(entry.body.title);
    case 'answered':
      return of(Object.values(entry.body.parts).flatMap(wordsOf));
    case 'amended':
      return of(Object.values(entry.body.parts).flatMap(wordsOf));
    case 'noted':
      return entry.body.as === 'note' && entry.body.text ? of([entry.body.text]) : [];
    case 'set':
      if (entry.body.what === 'equipment') return [unitToken(entry.body.equipment.id)];
      return entry.body.what === 'call' ? of(toldOf(entry.body.call.words)) : [];
    default:
      return [];
  }
}

/** How somebody at the address is, is nothing to look calls up by. */
const toldOf = (words: Readonly<Record<string, TextRef>>): TextRef[] =>
  Object.entries(words).flatMap(([what, ref]) => (what === VULNERABLE ? [] : ref));

/** A unit is found by its name, which says where it stands. */
export function unitTokens(list: SheetList, id: string, body: unknown): SoughtRow[] {
  const name = list === 'equipment' && typeof body === 'object' && body !== null && 'name' in body ? body.name : null;
  return typeof name === 'string' ? tokensOf(name).map((token) => [token, list, id, 0]) : [];
}

/** Of which kinds the entries are that bring such words, for a table that is filled later. */
export const SOUGHT_KINDS = ['opened', 'concluded', 'answered', 'amended', 'set', 'noted'] as const;
/** A stored row as an entry, as far as this file looks at it. */
export const entryLike = (kind: string, body: string, job: string): Entry =>
  ({ kind, body: json(body, job) }) as unknown as Entry;
