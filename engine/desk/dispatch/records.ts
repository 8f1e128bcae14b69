/** A call and the job that it opened are two records about one caller: whoever is forgotten is forgotten on both. */
import type { Store } from '../../store/port.ts';

/** The records that belong together with this one, itself among them. */
export async function recordsOf(store: Pick<Store, 'readAfter' | 'meta'>, job: string): Promise<string[]> {
  const { entries } = await store.readAfter(job, 0);
  const from = entries.flatMap((e) => (e.kind === 'set' && e.body.what === 'call' ? [e.body.call.from] : []));
  const opened = await store.meta(`call:${job}`);
  const there = opened !== null && (await store.readAfter(opened, 0)).entries.length > 0;
  return [...new Set([job, ...from, ...(there ? [opened] : [])])];
}
