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
/** The server's time. */
export interface Clock {
  (): Date;
  /** Goes on from this moment, milliseconds since 1970, where it is behind it. */
  readonly atLeast?: (ms: number) => void;
}
const MACHINE: Ticks = { wall: Date.now, passed: () => performance.now() };

/** @param from it starts no earlier than this, milliseconds since 1970 */
export function steadyClock(from = 0, ticks: Ticks = MACHINE): Clock {
  const { read, atLeast } = steady(from, ticks);
  return Object.assign(read, { atLeast });
}
/** A clock that can be told of a later time; one that can't is set on by what it was behind. */
export function following(clock: Clock): Clock & { readonly atLeast: (ms: number) => void } {
  const { atLeast } = clock;
  if (atLeast) return Object.assign(() => clock(), { atLeast });
  let ahead = 0;
  return Object.assign(() => new Date(clock().getTime() + ahead), {
    atLeast: (ms: number) => {
      ahead = Math.max(ahead, ms - clock().getTime());
    },
  });
}
function steady(from: number, { wall, passed }: Ticks): { read: () => Date; atLeast: (ms: number) => void } {
  let [last, at] = [Math.max(from, wall()), passed()];
  const read = (): Date => {
    const ticks = passed();
    last = Math.max(wall(), last + (ticks - at));
    at = ticks;
    return new Date(last);
  };
  return {
    read,
    atLeast(ms) {
      last = Math.max(read().getTime(), ms);
    },
  };
}

/** Clocks of several servers, and one that is put right by a time server, differ by less. */
const DIFFER = 2 * 60_000;
/** Longer than any proof of dead stands. */
const TOO_OLD = 24 * 60 * 60_000;
/** How often it is written down how late it is, and looked whether another process reckons with a later time. */
const EVERY = 15_000;
const MARK = 'clock';

/** How late it was, and what the machine's clock said then; an older program wrote down the first alone. */
interface Mark {
  readonly at: number;
  readonly wall: number | null;
}
export async function markIn(store: Pick<Store, 'meta'>): Promise<Mark | null> {
  const text = await store.meta(MARK);
  if (text === null) return null;
  const [at = '', wall] = text.split(' ');
  return { at: Date.parse(at), wall: wall === undefined ? null : Date.parse(wall) };
}
const written = (at: number, wall: number): string => [at, wall].map((ms) => new Date(ms).toISOString()).join(' ');

/**
 * Where the record, or what a clock before this one wrote down, is later than the machine's clock, that clock was set
 * back while nothing ran or before it ended. How long nothing ran then nobody knows: long enough, so that nothing that
 * was proved before still counts. Where the machine's clock has gone on since the mark, it goes on by as much: so time
 * does not run away with each start.
 */
export async function clockFor(
  store: Pick<Store, 'board' | 'meta' | 'setMeta'>,
  ticks: Ticks = MACHINE,
): Promise<Clock> {
  const last = await markIn(store);
  const recorded = (await store.board(1)).map((row) => Date.parse(row.updated));
  const latest = Math.max(0, ...recorded, last?.at ?? 0);
  const clock = steady(startFrom(latest, last, ticks.wall()), ticks);
  let marked = 0;
  const mark = async (now: number): Promise<void> => {
    const known = await markIn(store);
    if (known && known.at > now) clock.atLeast(known.at);
    else await store.setMeta(MARK, written(now, ticks.wall()));
  };
  const tell = (): Date => {
    const now = clock.read();
    if (now.getTime() - marked >= EVERY) {
      marked = now.getTime();
      // Where it can't be kept now, it is in a moment; nobody waits for it.
      mark(now.getTime()).catch(() => undefined);
    }
    return now;
  };
  // Also while nobody asks what time it is.
  if (ticks === MACHINE) setInterval(tell, EVERY).unref();
  return Object.assign(tell, { atLeast: clock.atLeast });
}

function startFrom(latest: number, last: Mark | null, wall: number): number {
  if (latest - wall <= DIFFER) return latest;
  // A record that goes on long after the mark was written by a clock that nobody knows.
  if (last?.wall == null || latest > last.at + 2 * EVERY) return latest + TOO_OLD;
  const since = wall - last.wall;
  return since < -DIFFER ? latest + TOO_OLD : Math.max(latest, last.at + since);
}
