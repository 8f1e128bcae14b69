import Database from 'better-sqlite3';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { openSqlite } from '../../engine/store/index.ts';
import { storeOn } from '../../engine/store/sqlite/open.ts';
import { storeContract } from './contract.ts';
import { listContract } from './list-contract.ts';
import { photoContract } from './photo-contract.ts';
import { type SqliteGround, sqliteGround } from './sqlite-ground.ts';
import { record, written } from './written.ts';

storeContract('SQLite', sqliteGround);
listContract('SQLite', sqliteGround);
photoContract('SQLite', sqliteGround);

describe('SQLite in particular', () => {
  let ground: SqliteGround;
  beforeEach(async () => {
    ground = await sqliteGround();
  });
  afterEach(() => ground.remove());

  test('flushes every commit to the disk', async () => {
    const db = new Database(ground.file);
    const store = await storeOn(db);
    // 2 is FULL: https://www.sqlite.org/pragma.html#pragma_synchronous
    expect(db.pragma('synchronous', { simple: true })).toBe(2);
    expect(db.pragma('journal_mode', { simple: true })).toBe('wal');
    expect(db.pragma('foreign_keys', { simple: true })).toBe(1);
    await store.close();
  });

  test('gathers the appends of one turn of the event loop in one commit', async () => {
    const store = await ground.open();
    const reader = new Database(ground.file, { readonly: true });
    const visible = reader.prepare('select count(*) from entry').pluck();
    const seen: unknown[] = [];
    store.watch(() => seen.push(visible.get()));
    const jobs = Array.from({ length: 20 }, (_, i) => `job-${i}`);
    const whole = jobs.map((job) => record(job, 1));
    await Promise.all(jobs.map((job, i) => store.create(job, whole[i]?.entries ?? [], whole[i]?.texts ?? [])));
    // The first one told of finds all twenty on the disk; the next turn is a commit of its own.
    expect(seen).toEqual(Array(20).fill(20));
    const next = written('job-0', whole[0]?.entries[0]);
    await store.append('job-0', 1, next.entries, next.texts);
    expect(seen).toEqual([...Array(20).fill(20), 21]);
    reader.close();
    await store.close();
  });

  test.each([
    `insert or replace into entry select job, 1, v, kind, "by", at, said, client, '{}', prev, hash from entry where seq = 1`,
    `insert or replace into entry (rowid, job, seq, v, kind, "by", at, body, prev, hash)
       select 1, job, 3, v, kind, "by", at, '{}', prev, hash from entry where seq = 2`,
    `update or replace entry set seq = 2 where seq = 1`,
  ])('refuses to replace: %s', async (statement) => {
    const store = await ground.open();
    const whole = record('job', 2);
    await store.create('job', whole.entries, whole.texts);
    await expect(ground.sql(statement)).rejects.toThrow();
    expect(await store.read('job')).toEqual(whole);
    await store.close();
  });

  test.each([
    `replace into photo select hash, x'00' from photo`,
    `insert or replace into photo (rowid, hash, bytes) select rowid, 'another', x'00' from photo`,
  ])('refuses to replace a photo: %s', async (statement) => {
    const store = await ground.open();
    const hash = await store.savePhoto(Buffer.from('a photo'));
    await expect(ground.sql(statement)).rejects.toThrow('a photo is never replaced');
    expect([await store.savePhoto(Buffer.from('a photo')), await store.photos()]).toEqual([hash, [hash]]);
    await store.close();
  });

  test('refuses a file that a later version has written', async () => {
    await (await ground.open()).close();
    await ground.sql(`insert into kysely_migration values ('999-later', '2027-01-01T00:00:00.000Z')`);
    await expect(ground.open()).rejects.toThrow('999-later');
  });

  test('makes the folder it is told to write in', async () => {
    const store = await openSqlite(`${ground.folder}/data/of/shop.db`);
    await store.setMeta('demo', 'loaded');
    expect(await store.meta('demo')).toBe('loaded');
    await store.close();
  });
});
