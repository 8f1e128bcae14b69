/**
 * New entries of all processes, in the order of each job. The database says that there is something new (NOTIFY); what it
 * is, is read. So a notification that is lost costs time and nothing else: the next one, the next turn of the clock or
 * the next connection reads on from the same place.
 *
 * The place is a horizon: every transaction below it had ended when it was read. Entries at or above it are read again
 * until it has passed them, and told once.
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

export async function createFeed(link: Link, watchers: Watchers): Promise<Feed> {
  let [[horizon] = ['0']] = await link.read<[string]>('horizon', SQL.horizon);
  /** Up to which entry each job was told, and the transaction of that entry: forgotten once the horizon is past it. */
  const told = new Map<string, { seq: number; xid: bigint }>();
  let [running, next]: [Promise<void> | null, Promise<void> | null] = [null, null];
  let stopped = false;

  async function look(): Promise<void> {
    if (!watchers.any()) {
      const [row] = await link.read<[string]>('horizon', SQL.horizon);
      if (row && !watchers.any()) horizon = row[0];
      return;
    }
    const rows = await link.read<[string, string | null, string, ...unknown[]]>('since', SQL.since, [horizon]);
    for (const [, xid, job, ...entry] of rows) {
      if (xid === null) continue;
      const [found] = toEntries(job, [entry], null);
      if (!found || found.seq <= (told.get(job)?.seq ?? 0)) continue;
      told.set(job, { seq: found.seq, xid: BigInt(xid) });
      watchers.tell(job, found as Entry);
    }
    horizon = rows[0]?.[0] ?? horizon;
    for (const [job, { xid }] of told) if (xid < BigInt(horizon)) told.delete(job);
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
