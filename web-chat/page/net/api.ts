/** The server's JSON API as this page uses it. */
import type { JobCard, JobView, Turn } from '../../../engine/desk/types.ts';
import type { Reply } from '../../../engine/index.ts';

/** Milliseconds: a weak signal gets this long before the person is told. */
const PATIENCE = 20_000;

export type Sent<T> =
  | { readonly ok: true; readonly value: T }
  /** `lost`: no answer, so nobody knows; the same client id may be sent again. `not-kept`: the server said so. */
  | { readonly ok: false; readonly why: 'lost' | 'not-kept' | 'signed-out' | 'refused'; readonly what: string };

export const postReply = (job: string, reply: Reply): Promise<Sent<Turn>> =>
  post(`/api/jobs/${encodeURIComponent(job)}/replies`, reply);

export const getJobs = (): Promise<Sent<JobCard[]>> => ask('/api/jobs', {});

export interface NewCall {
  readonly title: string;
  readonly assign?: string;
  readonly training?: boolean;
  readonly client: string;
}
export const postCall = (call: NewCall): Promise<Sent<Turn>> => post('/api/jobs', call);

export const postSignOut = (): Promise<Sent<unknown>> => post('/sign-out', {});

export const getView = (job: string): Promise<Sent<JobView>> => ask(`/api/jobs/${encodeURIComponent(job)}`, {});

const post = <T>(path: string, body: unknown): Promise<Sent<T>> =>
  ask(path, {
    method: 'POST',
    body: JSON.stringify(body),
    headers: { 'content-type': 'application/json', 'x-nocool': '1' },
  });

async function ask<T>(path: string, init: RequestInit): Promise<Sent<T>> {
  try {
    const response = await fetch(path, { ...init, signal: AbortSignal.timeout(PATIENCE) });
    const body: unknown = await response.json();
    if (response.ok) return { ok: true, value: body as T };
    const what = (body as { what?: string }).what ?? '';
    if (response.status === 401) return { ok: false, why: 'signed-out', what };
    return { ok: false, why: response.status >= 500 ? 'not-kept' : 'refused', what };
  } catch {
    return { ok: false, why: 'lost', what: '' };
  }
}
