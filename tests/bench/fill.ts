/** A shop with a past: so many entries, in jobs of 40 that are closed, and 30 open ones that the desk has opened. */
import { GENESIS, seal, textRef } from '../../engine/chain.ts';
import type { Desk } from '../../engine/desk/index.ts';
import type { Draft } from '../../engine/schema.ts';
import type { Store } from '../../engine/store/index.ts';

const EACH = 40;

/** The open jobs first, then the closed ones. */
export async function fill(store: Store, desk: Desk, entries: number): Promise<string[]> {
  const open: string[] = [];
  for (let i = 0; i < 30; i++)
    open.push((await desk.open('dana', { title: `Call ${i}`, assign: 'ines', client: `open-${i}` })).view.job);
  const [like] = await store.board(0);
  const [opened] = (await store.read(open[0] ?? '')).entries;
  if (!like?.card || opened?.kind !== 'opened') throw new Error('no job to go by');
  const { card, job: known } = like;
  const closed: string[] = [];
  const make = async (n: number): Promise<void> => {
    const job = `old-${n}`;
    const words = Array.from({ length: EACH }, (_, i) => textRef(`Note ${i} on job ${n}.`, 'salt', `ines.${n}.${i}`));
    const drafts = words.map(
      ({ ref }, i): Draft =>
        i === 0
          ? { kind: 'opened', body: { ...opened.body, title: ref } }
          : { kind: 'noted', body: { as: 'note', text: ref } },
    );
    const at = new Date(Date.UTC(2025, 0, 1) + n * 60_000).toISOString();
    const head = { job, seq: 0, prev: GENESIS, by: 'ines', at, said: null, client: `${n}` };
    await store.create(
      job,
      seal(drafts, head),
      words.map(({ row }) => row),
      { closed: true, card: card.replaceAll(known, job) },
    );
    closed.push(job);
  };
  for (let n = 0; n < entries / EACH; n += 100)
    await Promise.all(Array.from({ length: Math.min(100, entries / EACH - n) }, (_, i) => make(n + i)));
  return [...open, ...closed];
}
