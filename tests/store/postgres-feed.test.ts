/** What a PostgreSQL database tells its watchers, whatever else goes on in its cluster and wherever it came from. */
import { setTimeout } from 'node:timers/promises';
import pg from 'pg';
import { afterEach, beforeEach, expect, test } from 'vitest';
import type { Entry } from '../../engine/schema.ts';
import type { Store } from '../../engine/store/index.ts';
import { openPostgres } from '../../engine/store/postgres/open.ts';
import { newDatabase, type PostgresGround, postgresGround } from './postgres-ground.ts';
import { written } from './written.ts';

let ground: PostgresGround;
let store: Store;
const stores: Store[] = [];
const open = async (): Promise<void> => {
  store = await openPostgres(ground.url);
  stores.push(store);
};
const close = async (): Promise<void> => {
  for (const one of stores.splice(0)) await one.close();
};
const clients: pg.Client[] = [];
beforeEach(async () => {
  ground = await postgresGround();
});
afterEach(async () => {
  for (const client of clients.splice(0)) await client.end();
  await close();
  await ground.remove();
});
/** A connection of somebody else, to be left open. */
async function elsewhere(url: string): Promise<pg.Client> {
  const client = new pg.Client({ connectionString: url });
  await client.connect();
  clients.push(client);
  return client;
}
/** Rows of `entry` that were read so far, however they were found. */
async function rowsRead(): Promise<number> {
  const ours = `select 1 from pg_stat_activity where datname = current_database() and application_name = 'nocool'`;
  // The counters of a connection are added up when it ends, which is a little after we let go of it.
  while (((await ground.sql(ours)) as unknown[]).length > 0) await setTimeout(20);
  const [row] = (await ground.sql(
    `select (seq_tup_read + idx_tup_fetch)::int as n from pg_stat_user_tables where relname = 'entry'`,
  )) as { n: number }[];
  return row?.n ?? 0;
}
/** Appends so many notes to a job, one after another; what a watcher heard meanwhile. */
async function grow(job: string, last: Entry | undefined, many: number): Promise<string[]> {
  const heard: string[] = [];
  const stop = store.watch((of, { seq }) => heard.push(`${of} ${seq}`));
  let end = last;
  for (let i = 0; i < many; i++) {
    const { entries, texts } = written(job, end);
    if (end === undefined) await store.create(job, entries, texts);
    else expect(await store.append(job, end.seq, entries, texts)).toBe('kept');
    [end] = entries;
  }
  stop();
  return heard;
}
const named = (job: string, from: number, many: number): string[] =>
  Array.from({ length: many }, (_, i) => `${job} ${from + i}`);

test('a database restored from a dump tells what is new and nothing that is old, and reads no table anew', async () => {
  await open();
  await grow('a', undefined, 3);
  const end = (await store.read('a')).entries.at(-1);
  // As a dump brings them: numbers of transactions of another cluster, from before this one's next on, in every one of
  // the next thousand, and far above.
  await ground.sql(`set session_replication_role = replica;
    insert into job (id) select 'old-' || n from generate_series(1, 300) as n;
    insert into entry (job, seq, v, kind, "by", at, body, prev, hash, xid)
      select key, seq, 1, 'noted', 'ines', '2026-07-14T15:00:00.000Z', '{}', '', '',
        (pg_current_xact_id()::text::bigint - 500 + key * 10 + seq)::text::xid8
      from job, generate_series(1, 10) as seq where id like 'old-%';
    insert into board (job, last_seq, updated, closed) select key, 10, '2026', 0 from job where id like 'old-%'`);
  await close();
  await open();
  await close();
  const before = await rowsRead();
  await open();
  expect(await grow('b', undefined, 40)).toEqual(named('b', 1, 40));
  expect(await grow('a', end, 40)).toEqual(named('a', 4, 40));
  // An old job that goes on here.
  const old = { ...written('old-7', undefined).entries[0], seq: 10 } as Entry;
  expect(await grow('old-7', old, 5)).toEqual(named('old-7', 11, 5));
  await close();
  expect((await rowsRead()) - before).toBeLessThan(85 * 15);
});

test('a transaction that stays open elsewhere in the cluster makes no append read more', async () => {
  const other = await elsewhere(await newDatabase());
  await other.query('begin; select pg_current_xact_id()');
  await open();
  await close();
  const before = await rowsRead();
  await open();
  expect(await grow('a', undefined, 120)).toEqual(named('a', 1, 120));
  await close();
  expect((await rowsRead()) - before).toBeLessThan(120 * 10);
});

test('what was begun earlier and is committed later than others is told then, once', async () => {
  await open();
  await grow('a', undefined, 2);
  const late = await elsewhere(ground.url);
  await late.query(`begin; insert into job (id) values ('late'); insert into entry (job, seq, v, kind, "by", at, body, prev, hash)
    select key, 1, 1, 'noted', 'ines', '2026', '{}', '', 'h' from job where id = 'late'`);
  const heard: string[] = [];
  store.watch((job, { seq }) => heard.push(`${job} ${seq}`));
  await grow('b', undefined, 3);
  await late.query('commit');
  await grow('c', undefined, 3);
  expect(heard).toEqual([...named('b', 1, 3), 'late 1', ...named('c', 1, 3)]);
});

test('an entry that can’t be read is passed over: of all others one goes on hearing', async () => {
  await open();
  await grow('a', undefined, 1);
  const heard: string[] = [];
  store.watch((job, { seq }) => heard.push(`${job} ${seq}`));
  await ground.sql(`insert into entry (job, seq, v, kind, "by", at, body, prev, hash)
    select key, 2, 1, 'noted', 'ines', '2026', '{', '', 'h' from job where id = 'a'`);
  await grow('b', undefined, 2);
  expect(heard).toEqual(named('b', 1, 2));
  await expect(store.read('a')).rejects.toThrow('(job a, entry 2)');
});
