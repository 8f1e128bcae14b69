/**
 * `npm run bench`: how fast the store is, as ratios within one run. `ENTRIES=1000000 npm run bench` fills that many; the
 * median decides, against the gate beside it. Prints a table and writes `data/bench-store.json`.
 */
import { mkdir, mkdtemp, rm } from 'node:fs/promises';
import { join } from 'node:path';
import Database from 'better-sqlite3';
import pg from 'pg';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { createDesk, type Desk, randomHex } from '../../engine/desk/index.ts';
import { openSqlite, type Store } from '../../engine/store/index.ts';
import { openPostgres } from '../../engine/store/postgres/open.ts';
import { soughtIn } from '../../engine/store/sought.ts';
import { createCommits } from '../../engine/store/sqlite/commits.ts';
import { createEnds } from '../../engine/store/sqlite/ends.ts';
import { createJournal } from '../../engine/store/sqlite/journal.ts';
import { SHELF } from '../../flows/index.ts';
import { personOf } from '../desk/shop.ts';
import { PEOPLE } from '../people.ts';
import { type PostgresServer, startPostgres } from '../store/postgres-server.ts';
import { record, written } from '../store/written.ts';
import { fill } from './fill.ts';
import { milliseconds, perSecond, type Ratio, ratio } from './ratio.ts';
import { judge, report } from './report.ts';

const ENTRIES = Number(process.env.ENTRIES ?? 100_000);
const ROUNDS = { rounds: 9, ms: 400, warmMs: 4_000 };
const done: Ratio[] = [];
let folder = '';
beforeAll(async () => {
  // On a real disk: on one that is memory a flush costs nothing.
  await mkdir('data', { recursive: true });
  folder = await mkdtemp(join('data', 'bench-'));
});
afterAll(async () => {
  await rm(folder, { recursive: true, force: true });
  await report('store', done);
});

/** Each of so many clients appends to a job of its own, and to the next one when that has 40 entries. */
function clients(append: Store['append'], create: Store['create'], name: string): (i: number) => Promise<void> {
  const ends = new Map<number, { job: string; seq: number; entries: ReturnType<typeof record>['entries'] }>();
  let jobs = 0;
  return async (i) => {
    const end = ends.get(i);
    if (!end || end.seq >= 40) {
      const job = `${name}-${i}-${++jobs}`;
      const { entries, texts } = record(job, 1);
      await create(job, entries, texts);
      ends.set(i, { job, seq: 1, entries });
      return;
    }
    const { entries, texts } = written(end.job, end.entries.at(-1));
    expect(await append(end.job, end.seq, entries, texts)).toBe('kept');
    ends.set(i, { job: end.job, seq: end.seq + 1, entries });
  };
}

test.each([
  [64, 2.5],
  [1, 0.75],
])('SQLite, group commit / commit per request, %i connections', async (connections, atLeast) => {
  const files = [join(folder, `alone-${connections}.db`), join(folder, `group-${connections}.db`)] as const;
  const dbs = await Promise.all(
    files.map(async (file) => {
      await (await openSqlite(file)).close();
      const db = new Database(file);
      db.pragma('synchronous = full');
      db.pragma('secure_delete = on');
      return db;
    }),
  );
  const [alone, group] = dbs.map((db) => {
    const commits = createCommits(db);
    return { ...createJournal(db, commits, createEnds(db)), flush: commits.flush };
  });
  if (!alone || !group) throw new Error('no journal');
  const now = <T>(work: Promise<T>): Promise<T> => {
    alone.flush();
    return work;
  };
  const each = clients(
    (...of) => now(alone.append(...of)),
    (...of) => now(alone.create(...of)),
    'a',
  );
  const gathered = clients(group.append, group.create, 'g');
  judge(
    done,
    await ratio({
      name: `SQLite: group commit / commit per request, ${connections} connections`,
      unit: 'appends/s',
      base: (ms) => perSecond(ms, connections, each),
      subject: (ms) => perSecond(ms, connections, gathered),
      atLeast,
      ...ROUNDS,
    }),
  );
  for (const db of dbs) db.close();
});

/** The pool writes the same rows and tells of them as well, each append in a transaction of its own. */
test('PostgreSQL, append under 64 clients / plain pool of 16', async () => {
  const server: PostgresServer = await startPostgres({ fsync: true });
  try {
    const url = `${server.url}postgres`;
    const store = await openPostgres(url);
    const pool = new pg.Pool({ connectionString: url, max: 16 });
    const plain = clients(
      async (job, seq, entries, texts) => {
        const [[entry], [text]] = [entries, texts];
        const client = await pool.connect();
        try {
          await client.query('begin');
          await client.query({
            name: 'entry',
            text: `insert into entry (job, seq, v, kind, "by", at, said, client, body, prev, hash)
              select key, $2, 1, $3, $4, $5, null, $6, $7, $8, $9 from job where id = $1`,
            values: [
              job,
              seq + 1,
              entry?.kind,
              entry?.by,
              entry?.at,
              entry?.client,
              JSON.stringify(entry?.body),
              entry?.prev,
              entry?.hash,
            ],
          });
          await client.query({
            name: 'words',
            text: 'insert into words (job, seq, ref, salt, text) select key, $2, $3, $4, $5 from job where id = $1',
            values: [job, seq + 1, text?.ref, text?.salt, JSON.stringify(text?.text)],
          });
          await client.query({
            name: 'board',
            text: 'update board set last_seq = $2, updated = $3 where job = (select key from job where id = $1)',
            values: [job, seq + 1, entry?.at],
          });
          const found = soughtIn({ job, expected: seq, entries, texts, summary: null });
          await client.query({
            name: 'sought',
            text: `insert into sought (token, list, id, seq) select * from unnest($1::text[], $2::text[], $3::text[], $4::int[])
              on conflict do nothing`,
            values: [0, 1, 2, 3].map((column) => found.map((row) => row[column])),
          });
          await client.query({ name: 'told', text: `select pg_notify('bench', '')` });
          await client.query('commit');
          return 'kept';
        } finally {
          client.release();
        }
      },
      store.create,
      'p',
    );
    const ours = clients(store.append, store.create, 's');
    judge(
      done,
      await ratio({
        name: 'PostgreSQL: append under 64 clients / plain pool of 16',
        unit: 'appends/s',
        base: (ms) => perSecond(ms, 64, plain),
        subject: (ms) => perSecond(ms, 64, ours),
        atLeast: 3,
        ...ROUNDS,
      }),
    );
    await pool.end();
    await store.close();
  } finally {
    await server.stop();
  }
});

test(`a shop of ${ENTRIES} entries / one of 10,000`, async () => {
  const open = async (entries: number): Promise<{ store: Store; desk: Desk; jobs: string[] }> => {
    const store = await openSqlite(join(folder, `shop-${entries}.db`));
    for (const person of Object.values(PEOPLE)) await store.savePerson(personOf(person));
    const desk = createDesk({ store, shelf: SHELF, clock: () => new Date(), random: randomHex });
    return { store, desk, jobs: await fill(store, desk, entries) };
  };
  const [small, large] = [await open(10_000), await open(ENTRIES)];
  let count = 0;
  const turn = async ({ desk, jobs }: typeof small): Promise<void> => {
    count++;
    const job = jobs[count % 30] ?? '';
    await desk.reply('ines', job, { kind: 'command', name: 'note', text: 'Rust.', client: `n${count}` });
  };
  const board = async ({ desk }: typeof small): Promise<void> => {
    await desk.jobs('ruth');
  };
  const queue = async ({ desk }: typeof small): Promise<void> => {
    await desk.review.queue('ruth');
  };
  const cold = async ({ store, jobs }: typeof small): Promise<void> => {
    count++;
    const job = jobs[30 + ((count * 7919) % (jobs.length - 30))] ?? '';
    expect((await store.read(job)).entries).toHaveLength(40);
  };
  const results: Ratio[] = [];
  for (const [what, one] of [
    ['turn', turn],
    ['board page', board],
    ['review queue', queue],
    ['reading one old record', cold],
  ] as const)
    results.push(
      await ratio({
        name: `SQLite: ${what} at ${ENTRIES.toLocaleString('en')} entries / at 10,000`,
        unit: 'ms',
        base: (ms) => milliseconds(ms, () => one(small)),
        subject: (ms) => milliseconds(ms, () => one(large)),
        // Two hundred times the file doesn't fit the same cache: an old record may have to come from the disk.
        atMost: what === 'reading one old record' ? 2 : 1.3,
        ...ROUNDS,
      }),
    );
  await small.store.close();
  await large.store.close();
  judge(done, ...results);
});
