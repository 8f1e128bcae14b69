/** What PostgreSQL does besides the contract: several processes, lost connections, trouble, rights. */
import { setTimeout } from 'node:timers/promises';
import pg from 'pg';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { verifyChain } from '../../engine/chain.ts';
import { NotKept, type Store } from '../../engine/store/index.ts';
import { APP_ROLE } from '../../engine/store/postgres/link.ts';
import { openPostgres } from '../../engine/store/postgres/open.ts';
import { newDatabase, type PostgresGround, postgresGround } from './postgres-ground.ts';
import { record, written } from './written.ts';

let ground: PostgresGround;
const stores: Store[] = [];
const open = async (url = ground.url, options = {}): Promise<Store> => {
  const store = await openPostgres(url, options);
  stores.push(store);
  return store;
};
beforeEach(async () => {
  ground = await postgresGround();
});
afterEach(async () => {
  for (const store of stores.splice(0)) await store.close();
  await ground.remove();
});
const fail = (work: Promise<unknown>): Promise<unknown> =>
  work.then(
    () => 'no error',
    (error: unknown) => error,
  );
const others = `datname = current_database() and application_name = 'nocool'`;
/** Throws out whoever is connected to this database, as an administrator or a failing network does. */
const throwOut = (which = 'true'): Promise<unknown> =>
  ground.sql(`select pg_terminate_backend(pid) from pg_stat_activity where ${others} and ${which}`);
const until = async (so: () => boolean): Promise<void> => {
  for (const end = Date.now() + 15_000; !so(); await setTimeout(20)) if (Date.now() > end) throw new Error('not so');
};

describe('several processes on one PostgreSQL database', () => {
  test('each hears what the others write, in the order of each job, once', async () => {
    const [here, there, third] = [await open(), await open(), await open()];
    const heard: Record<string, number[]> = {};
    here.watch((job, { seq }) => {
      heard[job] = [...(heard[job] ?? []), seq];
    });
    const grow = async (job: string): Promise<void> => {
      let next = written(job, undefined);
      await there.create(job, next.entries, next.texts);
      for (let seq = 1; seq < 12; seq++) {
        next = written(job, next.entries[0]);
        // Whoever writes next, here or there, the order is that of the job.
        const writer = [here, there, third][seq % 3] ?? here;
        expect(await writer.append(job, seq, next.entries, next.texts)).toBe('kept');
      }
    };
    const jobs = ['a', 'b', 'c', 'd', 'e'];
    await Promise.all(jobs.map(grow));
    await until(() => jobs.every((job) => heard[job]?.length === 12));
    const all = Array.from({ length: 12 }, (_, i) => i + 1);
    expect(heard).toEqual(Object.fromEntries(jobs.map((job) => [job, all])));
  });

  test('what is said while a listener is away is made good, in order and without gaps', async () => {
    const [here, there] = [await open(), await open()];
    const heard: number[] = [];
    here.watch((_, { seq }) => heard.push(seq));
    const first = record('a', 1);
    await there.create('a', first.entries, first.texts);
    await until(() => heard.length === 1);
    let last = first.entries[0];
    for (let seq = 1; seq <= 8; seq++) {
      if (seq % 2 === 1) await throwOut(`query = 'listen nocool_entries'`);
      const next = written('a', last);
      await there.append('a', seq, next.entries, next.texts);
      last = next.entries[0];
    }
    await until(() => heard.length === 9);
    expect(heard).toEqual([1, 2, 3, 4, 5, 6, 7, 8, 9]);
  });

  test('two that write on the same jobs in opposite order: one wins each, nobody waits for ever, nothing is refused', async () => {
    const [here, there] = [await open(), await open()];
    const jobs = Array.from({ length: 20 }, (_, i) => `job-${i}`);
    const lasts = new Map(jobs.map((job) => [job, record(job, 1)]));
    await Promise.all(jobs.map((job) => here.create(job, lasts.get(job)?.entries ?? [], [])));
    for (let seq = 1; seq < 8; seq++) {
      const write = async (store: Store, job: string): Promise<[string, string]> => {
        const first = lasts.get(job)?.entries[0];
        const next = written(job, first && { ...first, seq });
        const outcome = await store.append(job, seq, next.entries, next.texts);
        return [job, outcome];
      };
      const outcomes = await Promise.all([
        ...jobs.map((job) => write(here, job)),
        ...jobs.toReversed().map((job) => write(there, job)),
      ]);
      for (const job of jobs)
        expect(
          outcomes
            .filter(([of]) => of === job)
            .map(([, outcome]) => outcome)
            .sort(),
        ).toEqual(['conflict', 'kept']);
    }
    for (const job of jobs) expect((await here.read(job)).entries.map((e) => e.seq)).toEqual([1, 2, 3, 4, 5, 6, 7, 8]);
  });

  test('two that open an empty database at one moment both find it in order', async () => {
    const url = await newDatabase();
    const both = await Promise.all([open(url), open(url), open(url)]);
    const { entries, texts } = record('a', 2);
    await both[0]?.create('a', entries, texts);
    expect(await both[2]?.read('a')).toEqual({ entries, texts });
  });
});

describe('a lost connection', () => {
  test('in the middle of appends: each is kept once or said to be in conflict, none is lost, none doubled', async () => {
    const store = await open();
    const jobs = Array.from({ length: 12 }, (_, i) => `job-${i}`);
    let over = false;
    const acknowledged: string[] = [];
    const grow = async (job: string): Promise<void> => {
      let next = written(job, undefined);
      await store.create(job, next.entries, next.texts);
      for (let seq = 1; !over; seq++) {
        next = written(job, next.entries[0]);
        expect(await store.append(job, seq, next.entries, next.texts)).toBe('kept');
        acknowledged.push(`${job} ${seq + 1} ${next.entries[0]?.hash}`);
      }
    };
    const work = Promise.all(jobs.map(grow));
    for (let i = 0; i < 6; i++) {
      await setTimeout(60 + 30 * i);
      await throwOut();
    }
    over = true;
    await work;
    const found = new Set<string>();
    for (const job of jobs) {
      const { entries, texts } = await store.read(job);
      expect([verifyChain(entries), texts.length]).toEqual([{ ok: true }, entries.length]);
      for (const e of entries) found.add(`${job} ${e.seq} ${e.hash}`);
    }
    expect(acknowledged.filter((line) => !found.has(line))).toEqual([]);
    expect(found.size).toBe(acknowledged.length + jobs.length);
  });

  test('to a database that stays away is said within seconds; it is not said that nothing was kept', async () => {
    const store = await open();
    const { entries, texts } = record('a', 1);
    await store.create('a', entries, texts);
    const admin = ground.url.replace(/\/[^/]*$/, '/postgres');
    const name = new URL(ground.url).pathname.slice(1);
    const client = new pg.Client({ connectionString: admin });
    await client.connect();
    await client.query(`alter database ${name} with allow_connections false`);
    await client.query(`select pg_terminate_backend(pid) from pg_stat_activity where datname = '${name}'`);
    const next = written('a', entries[0]);
    const began = performance.now();
    const [write, read] = await Promise.all([
      fail(store.append('a', 1, next.entries, next.texts)),
      fail(store.read('a')),
    ]);
    expect(performance.now() - began).toBeLessThan(25_000);
    await client.query(`alter database ${name} with allow_connections true`);
    await client.end();
    expect(String(write)).toBe(
      'NotKept: The database can’t be reached, and whether it was kept is not known. Send it again: it counts once.',
    );
    expect(write).toMatchObject({ certain: false });
    expect(read).toMatchObject({ name: 'NotKept', certain: true });
    expect(await store.append('a', 1, next.entries, next.texts)).toBe('kept');
  });
});

describe('trouble is said in words, and nothing of it is kept', () => {
  test.each([
    ['postgres://nocool@127.0.0.1:1/shop', 'The database can’t be reached.'],
    ['postgres://nocool@nowhere.invalid/shop', 'The database can’t be reached.'],
    ['NAME', 'There is no such database.'],
  ])('%s', async (url, words) => {
    const at = url === 'NAME' ? `${ground.url}_not` : url;
    const error = await fail(openPostgres(at));
    expect(error).toBeInstanceOf(NotKept);
    expect(String(error)).toContain(words);
  });

  test('a database that may only be read', async () => {
    const name = new URL(ground.url).pathname.slice(1);
    const a = record('a', 1);
    await (await open()).create('a', a.entries, a.texts);
    await ground.sql(`alter database ${name} set default_transaction_read_only = on`);
    const store = await open();
    const next = written('a', a.entries[0]);
    expect(String(await fail(store.append('a', 1, next.entries, next.texts)))).toBe(
      'NotKept: The record is read-only. Nothing was kept. Send it again.',
    );
    expect(await store.read('a')).toEqual(a);
    await ground.sql(`set transaction read write; alter database ${name} reset default_transaction_read_only`);
  });

  test('a table that somebody else holds', async () => {
    const store = await open(ground.url, { statementMs: 300 });
    const a = record('a', 1);
    await store.create('a', a.entries, a.texts);
    const other = new pg.Client({ connectionString: ground.url });
    await other.connect();
    await other.query('begin; lock table entry in share mode');
    const next = written('a', a.entries[0]);
    expect(String(await fail(store.append('a', 1, next.entries, next.texts)))).toBe(
      'NotKept: The database took too long. Nothing was kept. Send it again.',
    );
    await other.end();
    expect(await store.append('a', 1, next.entries, next.texts)).toBe('kept');
  });

  test('a database that a later version has written', async () => {
    const url = await newDatabase();
    await (await openPostgres(url)).close();
    const client = new pg.Client({ connectionString: url });
    await client.connect();
    await client.query(`insert into kysely_migration values ('999-later', '2027-01-01T00:00:00.000Z')`);
    await client.end();
    await expect(openPostgres(url)).rejects.toThrow('A later version of nocool has written this database: 999-later');
  });
});

describe('rights, besides the triggers', () => {
  const asApp = async (statement: string, url = ground.url): Promise<unknown> => {
    const client = new pg.Client({ connectionString: url });
    await client.connect();
    try {
      await client.query(`set role ${APP_ROLE}`);
      return await client.query(statement);
    } finally {
      await client.end();
    }
  };

  test.each([
    `update entry set body = '{}'`,
    'delete from entry',
    'truncate entry cascade',
    'delete from job',
    `update words set text = '"other"'`,
    'alter table entry disable trigger all',
    'drop table entry cascade',
    'set session_replication_role = replica',
  ])('the application’s role may not: %s', async (statement) => {
    await expect(asApp(statement)).rejects.toMatchObject({ code: '42501' });
  });

  test('whoever connects as a superuser works in that role', async () => {
    await open();
    const rows = (await ground.sql(
      `select count(*)::int as n from pg_locks, pg_stat_activity as a where a.pid = pg_locks.pid and ${others}`,
    )) as unknown[];
    expect(rows).toHaveLength(1);
    // A trigger that is switched off by the owner is not the last thing that holds.
    await ground.sql('alter table entry disable trigger all');
    await expect(asApp('delete from entry')).rejects.toMatchObject({ code: '42501' });
    await ground.sql('alter table entry enable trigger all');
  });

  test('a login that is in that role and owns nothing is enough, once the tables are there', async () => {
    await ground.sql(`do $$ begin create role shop_login login in role ${APP_ROLE};
      exception when duplicate_object then null; end $$`);
    const url = ground.url.replace('nocool@', 'shop_login@');
    const store = await open(url);
    const { entries, texts } = record('a', 2);
    await store.create('a', entries, texts, { closed: false, card: 'card' });
    await store.setMeta('demo', 'no');
    await store.savePhoto(Buffer.from('photo'));
    expect([await store.forget({ job: 'a' }), await store.expire('2027'), (await store.board(1)).length]).toEqual([
      2, 0, 1,
    ]);
    const empty = (await newDatabase()).replace('nocool@', 'shop_login@');
    const error = await fail(openPostgres(empty));
    expect(String(error)).toContain('Start once as the owner of the database.');
  });
});
