/**
 * New entries of all processes, in the order of each job. The database says that there is something new (NOTIFY); what it
 * is, is read. So a notification that is lost costs time and nothing else: the next one, the next turn of the clock or
 * the next connection reads on from the same place.
 *
 * The place is a snapshot: what it showed was told, what it did not show is read, once.
 */
import type pg from 'pg';
import type { Entry } from '../../schema.ts';
import { toEntries } from '../rows.ts';
import type { Watchers } from '../watchers.ts';
import type { Link } from './link.ts';
import { CHANNEL, SQL } from './sql.ts';

export interface Feed {
  /** Tells everything that was committed before this call. Rejects where it can't be read. */
  poll(): Promise<void>;
  stop(): Promise<void>;
}
/** Milliseconds between looks where no notification comes, and before a lost connection is made again. */
const TICK = 2_000;
const AGAIN = 250;

/** What a snapshot did not show, as ranges of transactions; the last of a range is null where it has no end. */
interface Unseen {
  readonly first: readonly string[];
  readonly last: readonly (string | null)[];
}
function unseenBy(snapshot: string): Unseen {
  const [, end = '0', under = ''] = snapshot.split(':');
  const running = under === '' ? [] : under.split(',');
  return { first: [...running, end], last: [...running, null] };
}

/** Null for a row of which no entry can be made: whoever reads that job is told so, and all others go on hearing. */
function legible(job: string, row: unknown[]): Entry | null {
  try {
    return toEntries(job, [row], null)[0] ?? null;
  } catch {
    return null;
  }
}

export async function createFeed(link: Link, watchers: Watchers): Promise<Feed> {
  const now = async (): Promise<Unseen> => unseenBy((await link.read<[string]>('now', SQL.now))[0]?.[0] ?? '');
  let unseen = await now();
  let [running, next]: [Promise<void> | null, Promise<void> | null] = [null, null];
  let stopped = false;

  async function look(): Promise<void> {
    if (!watchers.any()) {
      const at = await now();
      if (!watchers.any()) unseen = at;
      return;
    }
    const rows = await link.read<[now: string, job: string | null, ...unknown[]]>('since', SQL.since, [
      unseen.first,
      unseen.last,
    ]);
    // First, so that whatever becomes of these, nothing is told twice.
    if (rows[0]) unseen = unseenBy(rows[0][0]);
    for (const [, job, ...entry] of rows) {
      const found = job === null ? null : legible(job, entry);
      if (job !== null && found) watchers.tell(job, found);
    }
  }
  function poll(): Promise<void> {
    if (!running) {
      running = look().finally(() => {
        running = null;
      });
      return running;
    }
    // The one under way may have read already: what is asked for now is in the next.
    next ??= running
      .catch(() => undefined)
      .then(() => {
        next = null;
        return poll();
      });
    return next;
  }
  const quietly = (): void => void poll().catch(() => undefined);

  let listener: pg.Client | null = null;
  async function listen(): Promise<void> {
    if (stopped) return;
    const client = link.alone();
    let over = false;
    const lost = (): void => {
      if (over) return;
      over = true;
      listener = null;
      void client.end().catch(() => undefined);
      if (!stopped) setTimeout(() => void listen(), AGAIN).unref();
    };
    client.on('error', lost);
    client.on('end', lost);
    client.on('notification', quietly);
    try {
      await client.connect();
      await client.query(`listen ${CHANNEL}`);
      listener = client;
      if (stopped) await client.end();
      // What was said while nobody listened.
      else quietly();
    } catch {
      lost();
    }
  }
  await listen();
  const tick = setInterval(quietly, TICK);
  tick.unref();

  return {
    poll,
    async stop() {
      stopped = true;
      clearInterval(tick);
      await listener?.end().catch(() => undefined);
      await (next ?? running)?.catch(() => undefined);
    },
  };
}
