/** What both databases say of an append before they write it. */
import type { Entry, Text } from '../schema.ts';
import { photosNamed } from './forgotten.ts';
import type { Count, Counts, Store, Summary } from './port.ts';
import { json } from './rows.ts';

export interface Append {
  readonly job: string;
  /** seq of the last entry that it follows; null: the job is new. */
  readonly expected: number | null;
  readonly entries: readonly Entry[];
  readonly texts: readonly Text[];
  readonly summary: Summary | null;
}

/** seq of the last entry that an append leaves. */
export const endOf = ({ expected, entries }: Append): number => (expected ?? 0) + entries.length;

/**
 * Whether it follows a record that ends at `end`, 0 without an entry, undefined without a job. Throws for what no caller
 * of the port may ask: another job of the same id, a job that isn't, entries that don't follow each other.
 */
export function follows({ job, expected, entries }: Append, end: number | undefined): boolean {
  if (expected === null && end !== undefined) throw new Error(`there is a job ${job} already`);
  if (expected !== null && end === undefined) throw new Error(`there is no job ${job}`);
  const last = expected ?? 0;
  if ((end ?? 0) !== last) return false;
  for (const [i, entry] of entries.entries())
    if (entry.job !== job || entry.seq !== last + 1 + i)
      throw new Error(`entry ${entry.seq} of job ${entry.job} can't follow entry ${last + i} of job ${job}`);
  return true;
}

/** A line of the list of jobs as an append leaves it; null where it added nothing. */
export function lineOf({
  entries,
  summary,
}: Append):
  | [seq: number, at: string, closed: number, card: string | null, review: number | null, counts: string | null]
  | null {
  const end = entries.at(-1);
  // Without a summary the card is gone, and whether the job is closed or what a senior should see is not known any more.
  if (!end) return null;
  const review = summary ? (summary.review ?? null) : 0;
  return [end.seq, end.at, summary?.closed ? 1 : 0, summary?.card ?? null, review, countsText(summary?.counts)];
}

export type PhotoRow = [photo: string, job: string, seq: number];
/** The photos that its entries name, each with the last entry that does. */
export function photosIn({ job, entries }: Append): PhotoRow[] {
  const rows = new Map<string, PhotoRow>();
  for (const { body, seq } of entries) for (const photo of photosNamed(body)) rows.set(photo, [photo, job, seq]);
  return [...rows.values()];
}

/** The port's two methods that write entries, on one that takes any append. */
export const writing = (put: (one: Append) => Promise<'kept' | 'conflict'>): Pick<Store, 'create' | 'append'> => ({
  async create(job, entries, texts, summary) {
    await put({ job, expected: null, entries, texts, summary: summary ?? null });
  },
  append: (job, expected, entries, texts, summary) => put({ job, expected, entries, texts, summary: summary ?? null }),
});

/** As a trigger of the database reads it: `{"day":"2026-07-14","under":[["verdict","…"]]}`. */
export const countsText = (counts: Counts | undefined): string | null =>
  counts === undefined
    ? null
    : JSON.stringify({ day: counts.day, under: counts.under.map(({ by, what }) => [by, what]) });
export function countsIn(text: string | null): Counts | undefined {
  if (text === null) return undefined;
  const { day, under } = json(text) as { day: string; under: [Count['by'], string][] };
  return { day, under: under.map(([by, what]) => ({ by, what })) };
}
