/** No turn, page or sign-in goes through a whole table: the databases themselves say how they find what is asked. */
import { randomBytes } from 'node:crypto';
import { setTimeout } from 'node:timers/promises';
import Database from 'better-sqlite3';
import pg from 'pg';
import { expect, test } from 'vitest';
import { createDesk } from '../../engine/desk/index.ts';
import type { Store } from '../../engine/store/index.ts';
import { openPostgres } from '../../engine/store/postgres/open.ts';
import { FIND } from '../../engine/store/postgres/sought.ts';
import { SQL } from '../../engine/store/postgres/sql.ts';
import { storeOn } from '../../engine/store/sqlite/open.ts';
import { SHELF } from '../../flows/index.ts';
import { personOf } from '../desk/shop.ts';
import { PEOPLE } from '../people.ts';
import { postgresGround } from './postgres-ground.ts';
import { sqliteGround } from './sqlite-ground.ts';
import { pictured, record } from './written.ts';

/** What a server does all day, from signing in to the list of calls. */
async function aDay(store: Store): Promise<void> {
  for (const person of Object.values(PEOPLE)) await store.savePerson(personOf(person));
  const random = (n: number): string => randomBytes(n).toString('hex');
  const desk = createDesk({ store, shelf: SHELF, clock: () => new Date(), random });
  await store.saveLink('link', 'ines', '2099');
  await store.useLink('link', '2026');
  await store.saveSession('session', 'ines', '2099');
  await store.session('session', '2026');
  const { view } = await desk.open('dana', { title: 'No cool', assign: 'ines', client: 'a' });
  const stop = await desk.watch('ruth', view.job, 0, () => undefined);
  await desk.reply('ines', view.job, { kind: 'command', name: 'note', text: 'Rust.', client: 'b' });
  await desk.look('ruth', view.job);
  await desk.jobs('ines');
  await desk.dispatch.board('dana');
  await desk.dispatch.find('dana', 'cool no');
  await desk.dispatch.known('dana', '555 0142');
  await desk.dispatch.alarms('dana');
  await store.findUnits(['brook', 'terrace'], 5);
  await desk.review.queue('ruth');
  const also = [
    { by: 'person', what: 'ines' },
    { by: 'verdict', what: 'weak' },
  ] as const;
  await store.counts('verdict', { from: '2026-01-01', to: '2026-01-02', also });
  await store.countedJobs({ from: '2026-01-01', to: '2026-01-02', also }, 50);
  await store.byClient(view.job, 'b');
  await store.saveSummary(view.job, 1, { closed: false, card: 'of an earlier end' });
  await store.photo(await store.savePhoto(Buffer.from('photo')));
  await store.saveSheet('truck', 'van 1', 0, { name: 'Van 1', items: [], applied: {} });
  await store.sheet('truck', 'van 1');
  await store.willSay({ chat: 'c', lane: view.job, seq: 3 }, [{ id: 'a', body: {} }]);
  await store.unsaid('c');
  await store.takeSaying('a', '2026', '2027');
  await store.said('a', 'there');
  await store.sayings('c', view.job);
  await store.sayingAt('c', 'there');
  await store.saveShare({ hash: 's', job: view.job, audience: 'customer', by: 'ines', made: '2026', expires: '2027' });
  await store.share('s', '2026');
  await store.shares(view.job, '2026');
  await store.endShare('s');
  await store.endSession('session');
  stop();
}
/** Two jobs name a photo, and one of them is forgotten. */
async function forgetting(store: Store): Promise<void> {
  const hash = await store.savePhoto(Buffer.from('of two'));
  for (const job of ['p', 'q']) {
    const [first] = record(job, 1).entries;
    if (first) await store.create(job, [first], []);
    if (first) await store.append(job, 1, pictured(job, first, hash), []);
  }
  await store.forget({ job: 'p' });
  expect(await store.photo(hash)).not.toBeNull();
}
/** These have one row, or one for each of a crew; everything of theirs is wanted whenever any is. */
const SMALL = /\b(person|settings|kysely_\w+)\b/;

test('SQLite: of all statements of a day, none scans a table', async () => {
  const ground = await sqliteGround();
  await (await ground.open()).close();
  const ran = new Set<string>();
  // What runs is what is written here, with its values in place: nothing is missed because a list forgot it.
  const db = new Database(ground.file, { verbose: (sql) => ran.add(String(sql)) });
  const store = await storeOn(db);
  ran.clear();
  await aDay(store);
  // An append that names no photo asks nothing about photos.
  const ofPhotos = (): string[] => [...ran].filter((sql) => sql.includes('photo_of_job'));
  expect(ofPhotos()).toEqual([]);
  await forgetting(store);
  expect(ofPhotos().length).toBeGreaterThan(2);
  const statements = [...ran].filter((sql) => /^\s*(select|insert|update|delete)/i.test(sql));
  expect(statements.length).toBeGreaterThan(25);
  const scans = statements.flatMap((sql) =>
    (db.prepare(`explain query plan ${sql}`).all() as { detail: string }[])
      .filter(
        ({ detail }) => /^SCAN \w/.test(detail) && !/^SCAN (CONSTANT ROW|SUBQUERY)/.test(detail) && !SMALL.test(detail),
      )
      .map(({ detail }) => `${detail}: ${sql}`),
  );
  expect(scans).toEqual([]);
  expect(db.prepare('explain query plan select * from entry where client = 1').all()).toEqual([
    expect.objectContaining({ detail: 'SCAN entry' }),
  ]);
  await store.close();
  await ground.remove();
});

test('PostgreSQL: with thousands of jobs there, no table is gone through in a day', async () => {
  const ground = await postgresGround();
  await ground.sql(`set session_replication_role = replica;
    insert into job (id) select 'filler-' || n from generate_series(1, 4000) as n;
    insert into entry (job, seq, v, kind, "by", at, body, prev, hash)
      select key, seq, 1, 'noted', 'ines', '2026-07-14T15:00:00.000Z', '{}', '', '' from job, generate_series(1, 5) as seq;
    insert into words (job, ref, seq, salt, text) select key, 'r' || seq, seq, '', '""' from job, generate_series(1, 5) as seq;
    insert into board select key, 5, '2026-07-14T15:00:00.' || lpad((key % 1000)::text, 3, '0') || 'Z', 1, '', null from job;
    update board set review = job where job % 2 = 0;
    insert into session select n, 'ines', '2099' from generate_series(1, 4000) as n;
    insert into link select n, 'ines', '2099' from generate_series(1, 4000) as n;
    insert into meta select n, '' from generate_series(1, 4000) as n;
    insert into photo_of_job select n, n, 1 from generate_series(1, 4000) as n;
    insert into photo select n, '' from generate_series(1, 4000) as n;
    insert into sheet select 'truck', n, 1, '{"name":"","items":[],"applied":{}}' from generate_series(1, 4000) as n;
    insert into saying (id, chat, lane, body, at) select 's' || n, 'c', n, '{}', n from generate_series(1, 4000) as n;
    insert into sought select 'w' || n, 'job', 'filler-' || n, 1 from generate_series(1, 4000) as n;
    insert into share select n, n, 'shop', '', '', '2027' from generate_series(1, 4000) as n;
    insert into tally select 'verdict', '2026-01-0' || (n % 9), 'v' || n, n from generate_series(1, 4000) as n;
    insert into heard select 'c', n, 1 from generate_series(1, 4000) as n;
    analyze`);
  const store = await openPostgres(ground.url);
  const ours = `select 1 from pg_stat_activity where datname = current_database() and application_name = 'nocool'`;
  const scans = async (): Promise<unknown> => {
    // The counters of a connection are added up when it ends, which is a little after we let go of it.
    while (((await ground.sql(ours)) as unknown[]).length > 0) await setTimeout(20);
    return ground.sql(`select relname, seq_scan from pg_stat_user_tables
      where relname not in ('person', 'settings') and relname not like 'kysely%' order by relname`);
  };
  const client = new pg.Client({ connectionString: ground.url });
  await client.connect();
  // Opening counts the jobs once.
  await store.close();
  const before = await scans();
  const link = await openPostgres(ground.url);
  await link.close();
  const opening = await scans();
  const day = await openPostgres(ground.url);
  await aDay(day);
  await forgetting(day);
  await day.close();
  const after = (await scans()) as { relname: string; seq_scan: string }[];
  const grown = (from: unknown, to: unknown): [string, number][] =>
    (to as { relname: string; seq_scan: string }[]).map(({ relname, seq_scan }, i) => [
      relname,
      Number(seq_scan) - Number((from as { seq_scan: string }[])[i]?.seq_scan),
    ]);
  expect(grown(opening, after)).toEqual(grown(before, opening));

  // What a person's page asks, as the planner sees it with the tables this full.
  const plan = async (sql: string, values: unknown[]): Promise<string> => {
    const { rows } = await client.query({ text: `explain ${sql}`, values, rowMode: 'array' });
    return rows.flat().join('\n');
  };
  const asked: [string, unknown[]][] = [
    [SQL.entries, ['filler-1', 0]],
    [SQL.words, ['filler-1', 0]],
    [SQL.byClient, ['filler-1', 'c']],
    [SQL.boardOpen, []],
    [SQL.boardClosed, [100]],
    [SQL.queue, [-1, '', 0, 21]],
    [SQL.queue, [200, '2026', 7, 21]],
    [SQL.ends, [['filler-1']]],
    [FIND.jobs(2), ['w123', 'w123\uffff', 'w1234', 'w1234\uffff', 30]],
    [FIND.units(1), ['w123', 'w123\uffff', 6]],
    [SQL.forgotten, ['filler-1']],
    [SQL.forgetPhotos, [['1', '2', '3'], 'filler-1']],
    [SQL.since, [['1000000'], [null]]],
    [
      SQL.since,
      [
        ['700', '701', '999999', '1000000'],
        ['700', '701', '999999', null],
      ],
    ],
  ];
  for (const [sql, values] of asked) expect(await plan(sql, values)).not.toContain('Seq Scan');
  expect(await plan('select * from entry where client = $1', ['c'])).toContain('Seq Scan on entry');
  await client.end();
  await ground.remove();
}, 60_000);
