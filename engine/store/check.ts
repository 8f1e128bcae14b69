/** Whether a whole shop can be trusted as it is kept: every chain, every word against its hash, every photo. */
import { verifyChain, verifyText } from '../chain.ts';
import type { TextRef } from '../schema.ts';
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
  for (const { job } of jobs) {
    const pages = await found(store.read(job), trouble);
    if (!pages) continue;
    entries += pages.entries.length;
    trouble.push(...troubleIn(job, pages));
  }
  const photos = await store.photos();
  for (const hash of photos) await found(store.photo(hash), trouble);
  return { jobs: jobs.length, entries, photos: photos.length, trouble };
}

/** From the records; where a part of them is damaged, from the list beside them. */
export async function everyJob(store: Store): Promise<JobRow[]> {
  try {
    return await store.jobs();
  } catch (error) {
    if (!(error instanceof Damaged)) throw error;
    return store.board(Number.MAX_SAFE_INTEGER);
  }
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

function troubleIn(job: string, { entries, texts }: Pages): string[] {
  const chain = verifyChain(entries);
  if (!chain.ok) return [`The chain breaks (job ${job}, entry ${chain.at}): ${chain.why}.`];
  const rows = new Map(texts.map((row) => [row.ref, row]));
  return entries.flatMap(({ seq, body }) =>
    refsIn(body).flatMap((ref) => {
      // Words that are not there were removed; words that are there are those that were typed.
      const row = rows.get(ref.ref);
      return row && !verifyText(ref, row) ? [`Words are not those that were typed (job ${job}, entry ${seq}).`] : [];
    }),
  );
}

/** Every reference to words, at whatever depth of an entry's body. */
export function refsIn(body: unknown): TextRef[] {
  if (typeof body !== 'object' || body === null) return [];
  const { ref, hash } = body as Partial<TextRef>;
  if (typeof ref === 'string' && typeof hash === 'string') return [{ ref, hash }];
  return Object.values(body).flatMap(refsIn);
}
