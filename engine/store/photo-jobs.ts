/** Which jobs name which photos, for a shop that was kept before that was written down with each append. */
import type { Entry } from '../schema.ts';
import { photosNamed } from './forgotten.ts';
import { json } from './rows.ts';

/** The shop's note that it was done, once. */
export const PHOTOS_FILLED = 'photos';
/** Jobs looked through at a time, by their keys. */
export const JOBS_AT_ONCE = 500;
/** Entries that name photos, as far as their text says: so few rows are read that name none. */
export const NAMING = `kind in ('answered', 'amended') and body like '%"kind":"photo"%' order by job, seq`;

/** `job` by its key. Of two entries of a job that name the same photo, the later one. */
export function namedIn(rows: readonly [job: number, seq: number, body: string][]): [string, number, number][] {
  const found = new Map<string, [string, number, number]>();
  for (const [job, seq, body] of rows)
    for (const photo of photosOf(body)) found.set(`${photo} ${job}`, [photo, job, seq]);
  return [...found.values()];
}

/** Of an entry that can't be read, none: that is for whoever reads its job to say. */
function photosOf(body: string): string[] {
  try {
    return photosNamed(json(body) as Entry['body']);
  } catch {
    return [];
  }
}
