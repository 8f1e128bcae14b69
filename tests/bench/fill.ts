/**
 * A shop with a past: so many entries, in jobs of 40 that are closed, and 30 open ones that the desk has opened. Each
 * closed one is a recorded call from the first question to the proven restart, and notes after it.
 */
import { GENESIS, seal, textRef } from '../../engine/chain.ts';
import type { Desk } from '../../engine/desk/index.ts';
import { sha256 } from '../../engine/report/digest.ts';
import type { Draft, Entry, Text } from '../../engine/schema.ts';
import type { Store } from '../../engine/store/index.ts';
import { recorded } from '../replay/jobs.ts';

const EACH = 40;
const { entries: CALL } = JSON.parse(recorded('weak-fan-section-replaced-and-proven')) as { entries: Entry[] };

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
    const at = new Date(Date.UTC(2025, 0, 1) + n * 60_000).toISOString();
    const texts: Text[] = [];
    const entries: Entry[] = [];
    for (let i = 0; i < EACH; i++) {
      const { ref, row } = textRef(`Note ${i} on job ${n}.`, '00112233445566778899aabbccddeeff', `ines.${n}.${i}`);
      const of = CALL[i];
      const said: Draft = { kind: 'noted', body: { as: 'note', text: ref } };
      const draft = i === 0 ? { ...opened, body: { ...opened.body, title: ref } } : (of ?? said);
      if (i === 0 || !of) texts.push(row);
      const head = { job, seq: i, prev: entries.at(-1)?.hash ?? GENESIS, by: of?.by ?? 'ines', at, said: null };
      const { kind, body } = draft;
      entries.push(...seal([{ kind, body } as Draft], { ...head, client: `${n}.${i}` }, sha256));
    }
    await store.create(job, entries, texts, {
      closed: true,
      card: card.replaceAll(known, job),
      // As if a senior still had to read every tenth, without being among those that are open.
      review: n % 10 === 0 ? 1000 + (n % 700) : null,
    });
    closed.push(job);
  };
  for (let n = 0; n < entries / EACH; n += 100)
    await Promise.all(Array.from({ length: Math.min(100, entries / EACH - n) }, (_, i) => make(n + i)));
  return [...open, ...closed];
}
