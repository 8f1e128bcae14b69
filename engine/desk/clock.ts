/**
 * The time that ages are reckoned by. It never goes back: where the machine's clock is set back, it goes on by the time
 * that really passes, so that no proof of dead gets younger. It may be ahead of the machine's clock, never behind.
 */
import { performance } from 'node:perf_hooks';
import type { Store } from '../store/port.ts';

export interface Ticks {
  /** The machine's clock, milliseconds since 1970; people and time servers set it. */
  readonly wall: () => number;
  /** Milliseconds that have passed since some moment; nobody can set it. */
  readonly passed: () => number;
}
const MACHINE: Ticks = { wall: Date.now, passed: () => performance.now() };

/** @param from it starts no earlier than this, milliseconds since 1970 */
export function steadyClock(from = 0, { wall, passed }: Ticks = MACHINE): () => Date {
  let [last, at] = [Math.max(from, wall()), passed()];
  return () => {
    const ticks = passed();
    last = Math.max(wall(), last + (ticks - at));
    at = ticks;
    return new Date(last);
  };
}

/** Clocks of several servers, and one that is put right by a time server, differ by less. */
const DIFFER = 2 * 60_000;
/** Longer than any proof of dead stands. */
const TOO_OLD = 24 * 60 * 60_000;

/**
 * Where the record is later than the machine's clock, that clock was set back while nothing ran, and how long that was
 * nobody knows: long enough, so that nothing that was proved before still counts.
 */
export async function clockFor(store: Pick<Store, 'board'>, ticks: Ticks = MACHINE): Promise<() => Date> {
  const latest = Math.max(0, ...(await store.board(1)).map(({ updated }) => Date.parse(updated)));
  const ahead = latest - ticks.wall();
  return steadyClock(ahead > DIFFER ? latest + TOO_OLD : latest, ticks);
}
