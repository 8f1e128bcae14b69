/** Forgetting beside others who write to the same PostgreSQL database. */
import { setTimeout } from 'node:timers/promises';
import pg from 'pg';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { seal } from '../../engine/chain.ts';
import type { Store } from '../../engine/store/index.ts';
import { openPostgres } from '../../engine/store/postgres/open.ts';
import { type PostgresGround, postgresGround } from './postgres-ground.ts';
import { pictured, record } from './written.ts';

let ground: PostgresGround;
let other: pg.Client;
const stores: Store[] = [];
const open = async (options = {}): Promise<Store> => {
  const store = await openPostgres(ground.url, options);
  stores.push(store);
  return store;
};
beforeEach(async () => {
  ground = await postgresGround();
  other = new pg.Client({ connectionString: ground.url });
  await other.connect();
});
afterEach(async () => {
  await other.end();
  for (const store of stores.splice(0)) await store.close();
  await ground.remove();
});
/** Until so many connections wait for a lock of somebody else. */
async function waiting(many: number): Promise<void> {
  const query = `select 1 from pg_stat_activity where datname = current_database() and wait_event_type = 'Lock'`;
  while (((await ground.sql(query)) as unknown[]).length < many) await setTimeout(20);
}

test('a unit’s sheet that is changed at the same moment keeps the change, and loses its name', async () => {
  const store = await open();
  const { entries, texts } = record('a', 1);
  await store.create('a', entries, texts);
  const about = { id: 'u1', name: '', version: 1, facts: {}, history: [] };
  const head = { job: 'a', seq: 1, prev: '', by: 'ines', at: '2026-07-14T15:00:01.000Z', said: null, client: 'u' };
  await store.append('a', 1, seal([{ kind: 'set', body: { what: 'equipment', equipment: about } }], head), []);
  await store.saveSheet('equipment', 'u1', 0, { name: '2 Mill Lane', facts: {} });
  await other.query(`begin; update sheet set version = 2, body = '{"name":"2 Mill Lane","facts":{"rla":"17.9"}}'`);
  const done = store.forget({ job: 'a' });
  await waiting(1);
  await other.query('commit');
  await done;
  expect(await store.sheet('equipment', 'u1')).toEqual({
    ...{ id: 'u1', version: 3, body: { name: '(removed)', facts: { rla: '17.9' } } },
  });
});

test('two jobs forgotten at one moment take the photo that both name along', async () => {
  const [one, two] = [await open(), await open()];
  const hash = await one.savePhoto(Buffer.from('of both'));
  for (const job of ['a', 'b']) {
    const { entries } = record(job, 1);
    const [first] = entries;
    if (first) await one.create(job, [first, ...pictured(job, first, hash)], []);
  }
  // Both are held up where the first of them would have gone through.
  await other.query('begin; lock table photo in exclusive mode');
  const both = Promise.all([one.forget({ job: 'a' }), two.forget({ job: 'b' })]);
  await waiting(2);
  await other.query('commit');
  await both;
  expect(await one.photo(hash)).toBeNull();
});

test('forgetting takes as long as it takes: no limit of a statement breaks it off', async () => {
  const store = await open({ statementMs: 1_500 });
  const { entries, texts } = record('a', 2);
  await store.create('a', entries, texts);
  await other.query('begin; lock table words in exclusive mode');
  const done = Promise.all([store.forget({ job: 'a' }), store.forget({ person: 'ines' })]);
  await setTimeout(4_000);
  await other.query('commit');
  // Whichever of the two came first has taken both.
  expect((await done).toSorted()).toEqual([0, 2]);
});
