/** Whether a whole shop can be trusted as it is kept: every chain, every word against its hash, every photo. */
import { verifyChain, verifyText } from '../chain.ts';
import type { TextRef } from '../schema.ts';
import { photosNamed } from './forgotten.ts';
import { Damaged, type JobRow, type Pages, type Store } from './port.ts';

export interface ShopCheck {
  readonly jobs: number;
  readonly entries: number;
  readonly photos: number;
  /** One line for each thing that is wrong; everything else is sound. */
  readonly trouble: readonly string[];
}

export async function checkShop(store: Store): Promise<ShopCheck> {
  const trouble: string[] = [];
  let entries = 0;
  const jobs = await everyJob(store);
  const named: Named[] = [];
  for (const { job, lastSeq } of jobs) {
    const pages = await found(store.read(job), trouble);
    if (!pages) continue;
    entries += pages.entries.length;
    trouble.push(...troubleIn(job, lastSeq, pages));
    named.push(...photosOf(job, pages));
  }
  const photos = await store.photos();
  const there = new Set(photos);
  trouble.push(...named.filter(({ hash }) => !there.has(hash)).map(missing));
  for (const hash of photos) await found(store.photo(hash), trouble);
  return { jobs: jobs.length, entries, photos: photos.length, trouble };
}

/**
 * From the records, and from the list beside them: it knows a job whose entries were all removed, and how far the others went.
 * `lastSeq` is the later of both. Where a part of either is damaged, from the other.
 */
export async function everyJob(store: Store): Promise<JobRow[]> {
  const passed: string[] = [];
  const [records, list] = [
    await found(store.jobs(), passed),
    await found(store.board(Number.MAX_SAFE_INTEGER), passed),
  ];
  if (!records && !list) throw new Damaged(passed.join('\n'));
  const known = new Map((records ?? []).map((row) => [row.job, row]));
  for (const row of list ?? []) if (row.lastSeq > (known.get(row.job)?.lastSeq ?? 0)) known.set(row.job, row);
  return [...known.values()];
}

/** Null where it can't be read: why is added to the list. */
export async function found<T>(reading: Promise<T>, trouble: string[]): Promise<T | null> {
  try {
    return await reading;
  } catch (error) {
    if (!(error instanceof Damaged)) throw error;
    trouble.push(error.message);
    return null;
  }
}

/** @param lastSeq how far the record went, as the list beside it says */
export function cutOff(job: string, lastSeq: number, { entries }: Pages): string[] {
  const end = entries.length;
  return end < lastSeq
    ? [`Entries are missing at the end, ${lastSeq - end} of ${lastSeq} (job ${job}, entry ${end + 1}).`]
    : [];
}

function troubleIn(job: string, lastSeq: number, pages: Pages): string[] {
  const { entries, texts } = pages;
  const chain = verifyChain(entries);
  if (!chain.ok) return [`The chain breaks (job ${job}, entry ${chain.at}): ${chain.why}.`];
  const cut = cutOff(job, lastSeq, pages);
  if (cut.length > 0) return cut;
  const rows = new Map(texts.map((row) => [row.ref, row]));
  return entries.flatMap(({ seq, body }) =>
    refsIn(body).flatMap((ref) => {
      // Words that are not there were removed; words that are there are those that were typed.
      const row = rows.get(ref.ref);
      return row && !verifyText(ref, row) ? [`Words are not those that were typed (job ${job}, entry ${seq}).`] : [];
    }),
  );
}

interface Named {
  readonly job: string;
  readonly seq: number;
  readonly hash: string;
}
const missing = ({ job, seq, hash }: Named): string =>
  `The photo ${hash.slice(0, 12)} is missing (job ${job}, entry ${seq}).`;

/**
 * Photos that were not removed with their job. A job that is forgotten loses all words at once: where words are left that came
 * no later than the photo, nobody has removed it.
 */
function photosOf(job: string, { entries, texts }: Pages): Named[] {
  const left = new Set(texts.map(({ ref }) => ref));
  let [typed, removed] = [false, true];
  return entries.flatMap(({ seq, body }) => {
    const refs = refsIn(body);
    typed ||= refs.length > 0;
    removed &&= !refs.some(({ ref }) => left.has(ref));
    return typed && removed ? [] : photosNamed(body).map((hash) => ({ job, seq, hash }));
  });
}

/** Every reference to words, at whatever depth of an entry's body. */
export function refsIn(body: unknown): TextRef[] {
  if (typeof body !== 'object' || body === null) return [];
  const { ref, hash } = body as Partial<TextRef>;
  if (typeof ref === 'string' && typeof hash === 'string') return [{ ref, hash }];
  return Object.values(body).flatMap(refsIn);
}
