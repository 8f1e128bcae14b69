/** The server's JSON API as this page uses it. */
import type {
  AlarmLine,
  Audience,
  AwaitedLine,
  JobCard,
  JobView,
  Recomputed,
  ReviewQueue,
  ReviewView,
  SharedLink,
  Turn,
} from '../../../engine/desk/types.ts';
import type { Reply } from '../../../engine/index.ts';

/** Milliseconds: a weak signal gets this long before the person is told. */
const PATIENCE = 20_000;

/** More than is taken in a minute: not kept, and to be sent again. */
const TOO_MANY = 429;

/** `lost`: no answer, so nobody knows; the same client id may be sent again. `not-kept`: the server said so. */
export interface Trouble {
  readonly why: 'lost' | 'not-kept' | 'signed-out' | 'refused';
  readonly what: string;
}
export type Sent<T> = { readonly ok: true; readonly value: T } | ({ readonly ok: false } & Trouble);

export const postReply = (job: string, reply: Reply): Promise<Sent<Turn>> => post(`${pathOf(job)}/replies`, reply);

export const postPhoto = (job: string, photo: Blob): Promise<Sent<{ hash: string }>> =>
  ask(`${pathOf(job)}/photos`, { method: 'POST', body: photo, headers: { ...CHANGE, 'content-type': 'image/jpeg' } });
export const photoAt = (job: string, hash: string): string => `${pathOf(job)}/photos/${hash}`;

export const getJobs = (): Promise<Sent<JobCard[]>> => ask('/api/jobs', {});

export const getQueue = (after: string | null): Promise<Sent<ReviewQueue>> =>
  ask(`/api/review${after === null ? '' : `?after=${encodeURIComponent(after)}`}`, {});
export const getReview = (job: string): Promise<Sent<ReviewView>> => ask(`/api/review/${encodeURIComponent(job)}`, {});
export const postRecompute = (job: string): Promise<Sent<Recomputed>> =>
  post(`/api/review/${encodeURIComponent(job)}/recompute`, {});

export const getShares = (job: string): Promise<Sent<SharedLink[]>> => ask(`${pathOf(job)}/shares`, {});
export const postShare = (
  job: string,
  share: { readonly for: Audience; readonly days: number },
): Promise<Sent<{ url: string; link: SharedLink }>> => post(`${pathOf(job)}/shares`, share);
export const deleteShare = (job: string, id: string): Promise<Sent<unknown>> =>
  ask(`${pathOf(job)}/shares/${id}`, { method: 'DELETE', headers: CHANGE });

export interface NewCall {
  readonly title: string;
  readonly assign?: string;
  readonly training?: boolean;
  readonly client: string;
}
export const postCall = (call: NewCall): Promise<Sent<Turn>> => post('/api/jobs', call);

export const postSignOut = (): Promise<Sent<unknown>> => post('/sign-out', {});

export const getView = (job: string): Promise<Sent<JobView>> => ask(pathOf(job), {});

export const getAwaited = (): Promise<Sent<AwaitedLine[]>> => ask('/api/awaited', {});
export const getAlarms = (): Promise<Sent<AlarmLine[]>> => ask('/api/alarms', {});

export const pathOf = (job: string): string => `/api/jobs/${encodeURIComponent(job)}`;
const CHANGE = { 'x-nocool': '1' };

export const post = <T>(path: string, body: unknown): Promise<Sent<T>> =>
  ask(path, {
    method: 'POST',
    body: JSON.stringify(body),
    headers: { ...CHANGE, 'content-type': 'application/json' },
  });

export async function ask<T>(path: string, init: RequestInit): Promise<Sent<T>> {
  try {
    const response = await fetch(path, { ...init, signal: AbortSignal.timeout(PATIENCE) });
    compare(response.headers.get('x-nocool-build'));
    const body: unknown = await response.json();
    if (response.ok) return { ok: true, value: body as T };
    const what = (body as { what?: string }).what ?? '';
    if (response.status === 401) return { ok: false, why: 'signed-out', what };
    return { ok: false, why: response.status >= 500 || response.status === TOO_MANY ? 'not-kept' : 'refused', what };
  } catch {
    return { ok: false, why: 'lost', what: '' };
  }
}

// ------------------------------------------------------------------------------------- which build the server is of

let [own, outdated]: [string | null, boolean] = [null, false];
let told: () => void = () => undefined;

/** Says by which build this page was drawn, and who is told once when the server is of another. */
export function drawnBy(build: string, onOutdated: () => void): void {
  [own, told] = [build, onOutdated];
  if (outdated) told();
}
export const isOutdated = (): boolean => outdated;

function compare(served: string | null): void {
  if (outdated || own === null || served === null || served === own) return;
  outdated = true;
  told();
}
