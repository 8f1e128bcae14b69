/**
 * The writing of entries. What arrives while a commit is under way goes into the next one, all of it in one statement:
 * the flush and the way to the database cost more than everything else. Each is answered only after its commit.
 */
import { setTimeout } from 'node:timers/promises';
import { type Append, endOf, follows, lineOf, photosIn, writing } from '../appends.ts';
import type { Store } from '../port.ts';
import { fromText, toRow } from '../rows.ts';
import { soughtIn } from '../sought.ts';
import type { Watchers } from '../watchers.ts';
import type { Feed } from './feed.ts';
import { type Link, PAUSES } from './link.ts';
import { CHANNEL, SQL } from './sql.ts';
import { asTrouble, isLost, isRace, isTrouble, unknownOutcome } from './trouble.ts';

interface Waiting extends Append {
  resolve(outcome: 'kept' | 'conflict'): void;
  reject(error: unknown): void;
}
type Outcome = 'kept' | 'conflict' | { readonly bug: unknown };

/** Appends of one commit at most: one that fails takes the others' time, since each is then tried alone. */
const BATCH = 256;
/** Lost races of one append; each means that somebody else got through. */
const RACES = 20;

export interface Journal extends Pick<Store, 'create' | 'append'> {
  /** Resolves when nothing waits any more. */
  drained(): Promise<void>;
}

export function createJournal(link: Link, feed: Feed, watchers: Watchers): Journal {
  const waiting: Waiting[] = [];
  let busy: Promise<void> | null = null;

  async function work(): Promise<void> {
    // What comes within the same turn of the event loop shares the first commit as well.
    await new Promise(setImmediate);
    while (waiting.length > 0) await settle(waiting.splice(0, BATCH));
    busy = null;
  }

  async function settle(batch: readonly Waiting[]): Promise<void> {
    try {
      const outcomes = await write(batch);
      await told(outcomes);
      for (const [i, one] of batch.entries()) answer(one, outcomes[i] ?? 'conflict');
    } catch (error) {
      // A race or a bug of one is no matter of the others: each is tried by itself. So is what a lost connection or a
      // deadlock of two batches has left undone.
      if (isTrouble(error) && !isLost(error) && !isRace(error)) for (const one of batch) one.reject(asTrouble(error));
      else await Promise.all(batch.map((one) => alone(one, isLost(error))));
    }
  }

  /** One by itself, with as many tries as make sense. `lost`: it may be committed already, unknown to us. */
  async function alone(one: Waiting, lost: boolean): Promise<void> {
    let sent = lost;
    for (let races = 0, pauses = 0; ; ) {
      try {
        if (sent && (await isThere(link, one))) return await answerTold(one, 'kept');
        const [outcome] = await write([one]);
        return await answerTold(one, outcome ?? 'conflict');
      } catch (error) {
        if (isLost(error)) {
          sent = true;
          const pause = PAUSES[pauses++];
          if (pause === undefined) return one.reject(unknownOutcome(error));
          await setTimeout(pause);
        } else if (!isRace(error) || ++races > RACES) return one.reject(asTrouble(error));
        else if (races > 1 && (await isSettled(one))) return one.reject(error);
      }
    }
  }
  /** The record still ends where this append expects it: then it was no race that refused it. */
  async function isSettled({ job, expected }: Waiting): Promise<boolean> {
    const [end] = await link.once<[string, number, number]>('ends', SQL.ends, [[job]]);
    return (end?.[2] ?? 0) === (expected ?? 0);
  }

  async function write(batch: readonly Waiting[]): Promise<Outcome[]> {
    const jobs = [...new Set(batch.map((one) => one.job))];
    const rows = await link.once<[string, number, number]>('ends', SQL.ends, [jobs]);
    const ends = new Map(rows.map(([job, , last]) => [job, last]));
    const known = new Set(ends.keys());
    const outcomes = batch.map((one) => foresee(one, ends));
    const kept = batch.filter((_, i) => outcomes[i] === 'kept');
    const photos = kept.flatMap(photosIn);
    if (photos.length > 0)
      await link.once('append-photos', SQL.appendPhotos, [...parameters(kept, known), ...columns(photos, 3)]);
    else if (kept.length > 0) await link.once('append', SQL.append, parameters(kept, known));
    return outcomes;
  }

  /** Told before the one who wrote goes on. What was kept stays kept where telling fails: the feed makes it good. */
  async function told(outcomes: readonly Outcome[]): Promise<void> {
    if (watchers.any() && outcomes.includes('kept')) await feed.poll().catch(() => undefined);
  }
  function answer(one: Waiting, outcome: Outcome): void {
    if (typeof outcome === 'object') one.reject(outcome.bug);
    else one.resolve(outcome);
  }
  async function answerTold(one: Waiting, outcome: Outcome): Promise<void> {
    await told([outcome]);
    answer(one, outcome);
  }

  return {
    ...writing(
      (one) =>
        new Promise((resolve, reject) => {
          waiting.push({ ...one, resolve, reject });
          busy ??= work();
        }),
    ),
    async drained() {
      while (busy) await busy;
    },
  };
}

/** What becomes of an append where the records end at `ends`; one that is kept moves its end. */
function foresee(one: Append, ends: Map<string, number>): Outcome {
  try {
    if (!follows(one, ends.get(one.job))) return 'conflict';
    ends.set(one.job, endOf(one));
    return 'kept';
  } catch (bug) {
    return { bug };
  }
}

/** Whether these very entries stand where they belong: their hashes tell them from anybody else's. */
async function isThere(link: Link, { job, expected, entries }: Waiting): Promise<boolean> {
  if (entries.length === 0) return false;
  const rows = await link.once<[seq: number, ...rest: unknown[]]>('entries', SQL.entries, [job, expected ?? 0]);
  return entries.every((entry, i) => rows[i]?.at(-1) === entry.hash);
}

function parameters(kept: readonly Waiting[], known: ReadonlySet<string>): unknown[] {
  const jobs = [...new Set(kept.map((one) => one.job))];
  const entries = kept.flatMap(({ job, entries }) => entries.map((entry) => [job, ...toRow(entry)]));
  const words = kept.flatMap((one) => one.texts.map((text) => [one.job, endOf(one), ...fromText(text)]));
  // One line for each job: the last append of the batch says it.
  const lines = new Map<string, unknown[]>();
  for (const one of kept) {
    const line = lineOf(one);
    if (line) lines.set(one.job, [one.job, ...line]);
  }
  return [
    jobs.filter((job) => !known.has(job)),
    jobs.filter((job) => known.has(job)),
    ...columns(entries, 11),
    ...columns(words, 5),
    ...columns([...lines.values()], 7),
    ...columns(kept.flatMap(soughtIn), 4),
    CHANNEL,
  ];
}
const columns = (rows: readonly unknown[][], width: number): unknown[][] =>
  Array.from({ length: width }, (_, column) => rows.map((row) => row[column]));
