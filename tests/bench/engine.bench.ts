/** The engine by itself: its machine against xstate's own, records gone over from the store, and what a job holds of memory. */
import { mkdir, mkdtemp, rm } from 'node:fs/promises';
import { join } from 'node:path';
import { setImmediate } from 'node:timers/promises';
import v8 from 'node:v8';
import vm from 'node:vm';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { type AnyMachineSnapshot, createActor } from 'xstate';
import { compile } from '../../engine/compile.ts';
import { createDesk, type Desk, randomHex } from '../../engine/desk/index.ts';
import { begin, placeIdOf, replay, type Standing, take } from '../../engine/replay.ts';
import { sha256 } from '../../engine/report/digest.ts';
import type { Entry } from '../../engine/schema.ts';
import { openSqlite, type Store } from '../../engine/store/index.ts';
import { SHELF } from '../../flows/index.ts';
import { personOf } from '../desk/shop.ts';
import { PEOPLE } from '../people.ts';
import { byActor, byEngine, byMachine } from './dialogue.ts';
import { fill } from './fill.ts';
import { type Ratio, ratio } from './ratio.ts';
import { judge, report } from './report.ts';

const JOBS = 10_000;
const CPU = { rounds: 41, ms: 40, warmMs: 4_000 };
const done: Ratio[] = [];
const machine = compile(SHELF[0]);
let folder = '';
let store: Store;
let desk: Desk;
let jobs: string[];
beforeAll(async () => {
  await mkdir('data', { recursive: true });
  folder = await mkdtemp(join('data', 'bench-'));
  store = await openSqlite(join(folder, 'records.db'));
  for (const person of Object.values(PEOPLE)) await store.savePerson(personOf(person));
  desk = createDesk({ store, shelf: SHELF, clock: () => new Date(), random: randomHex });
  jobs = (await fill(store, desk, JOBS * 40)).slice(30);
}, 600_000);
afterAll(async () => {
  await store.close();
  await rm(folder, { recursive: true, force: true });
  await report('engine', done);
});

const records = (from: number, count: number): Promise<Entry[][]> =>
  Promise.all(jobs.slice(from, from + count).map(async (job) => (await store.read(job)).entries));
const goneOver = (entries: readonly Entry[]): Standing => entries.reduce(take, begin(machine, 'job'));

/** Milliseconds of this process on a processor: others on the machine take none of them. */
const worked = (): number => {
  const { user, system } = process.cpuUsage();
  return (user + system) / 1000;
};

/** How many a second of work, of what does nothing but compute. */
const rate =
  (one: () => void, each = 1) =>
  async (ms: number): Promise<number> => {
    const began = worked();
    let count = 0;
    for (; worked() - began < ms; count += each) one();
    return (count * 1000) / (worked() - began);
  };

test('an entry taken / the bare transition of the same machine', async () => {
  const [record = []] = await records(0, 1);
  const events = record.map((entry) => ({ type: 'entry', entry }));
  const first = machine.snapshotOf(machine.initial);
  const self = createActor(first.machine);
  const nothing = (): void => {};
  const scope = {
    ...{ self, system: self.system, id: '', sessionId: '' },
    ...{ logger: nothing, defer: nothing, emit: nothing, stopChild: nothing, actionExecutor: nothing },
  };
  const bare = (): AnyMachineSnapshot =>
    events.reduce((at, event) => first.machine.transition(at as never, event as never, scope), first);
  expect(bare().value).toBe(placeIdOf(goneOver(record)));
  judge(
    done,
    await ratio({
      name: 'engine: an entry taken / the bare transition of its machine',
      unit: 'entries/s',
      base: rate(() => void bare(), events.length),
      subject: rate(() => void goneOver(record), events.length),
      atLeast: 0.6,
      ...CPU,
    }),
  );
});

test(`${JOBS} records of 40 entries from the store / the same entries in memory`, async () => {
  let [a, b] = [0, 0];
  judge(
    done,
    await ratio({
      name: 'engine: records of 40 entries read, verified and gone over / their entries taken from memory',
      unit: 'records/s',
      // Read anew before they are timed: what was computed of an answer is kept as long as the answer is in memory.
      base: async (ms) => {
        let [count, spent] = [0, 0];
        for (; spent < ms; count += 25) {
          a = (a + 25) % (jobs.length - 25);
          const fresh = await records(a, 25);
          const began = worked();
          for (const record of fresh) goneOver(record);
          spent += worked() - began;
        }
        return (count * 1000) / spent;
      },
      subject: async (ms) => {
        const began = worked();
        let count = 0;
        for (; worked() - began < ms; count++)
          replay(machine, (await store.read(jobs[b++ % jobs.length] ?? '')).entries, sha256);
        return (count * 1000) / (worked() - began);
      },
      atLeast: 0.65,
      ...CPU,
      ms: 150,
    }),
  );
});

test('twenty questions for a number / as an actor whose snapshot is kept', async () => {
  const [engine, actor] = [20, 20];
  const of = (name: string, one: () => void, atLeast?: number): Promise<Ratio> =>
    ratio({
      name: `twenty questions: ${name} / an xstate actor restored, sent, and its snapshot kept`,
      unit: 'answers/s',
      base: rate(byActor, actor),
      subject: rate(one, engine),
      ...(atLeast === undefined ? {} : { atLeast }),
      ...CPU,
    });
  judge(
    done,
    await of('an answer’s entry kept and taken', byMachine, 2),
    await of('the answer read, decided, sealed, kept, the next question made', byEngine),
  );
});

test('what a job holds of memory', async () => {
  v8.setFlagsFromString('--expose-gc');
  const gc = vm.runInNewContext('gc') as () => void;
  const used = async (): Promise<number> => {
    // Each time also what the last one has left to be let go of.
    for (let i = 0; i < 4; i++) {
      gc();
      await setImmediate();
    }
    return process.memoryUsage().heapUsed;
  };
  const look = async (from: number, to: number): Promise<number> => {
    for (const job of jobs.slice(from, to)) await desk.look('ruth', job);
    return used();
  };
  const each = (name: string, bytes: number, atMost: number): Ratio => ({
    ...{ name, unit: 'bytes', median: bytes, quartiles: [bytes, bytes], rounds: 1, base: 1, subject: bytes },
    ...{ gate: `≤ ${atMost}`, passed: bytes <= atMost },
  });
  await look(0, 50);
  const [few, many] = [await look(50, 100), await look(100, 400)];
  // The same five hundred are at hand before and after thousands of others: what is more then, those have left behind.
  // Once before, so that the engine's own code is compiled by then.
  const around = async (): Promise<number> => {
    await look(1_000, 9_000);
    return look(500, 1_000);
  };
  const [before, after] = [await around(), await around()];
  // So many that what the engine itself compiles and sets aside meanwhile is little beside them.
  const fresh = await records(7_000, 2_000);
  // Once for what is computed of their answers, which stays as long as the answers; then where they stand by itself.
  for (const record of fresh) goneOver(record);
  const without = await used();
  const standings = fresh.map(goneOver);
  const standing = ((await used()) - without) / standings.length;
  judge(
    done,
    each('heap of a job that nobody has looked at for a while', Math.max(0, (after - before) / 8_000), 50),
    each('heap of where a job of 40 entries stands, beside its entries', standing, 2 * 1024),
    each(
      'heap of a job of 40 entries at hand: entries, ticket, what was computed (at most 500 are)',
      (many - few) / 300,
      128 * 1024,
    ),
  );
});
