/** A shop of which something is damaged: its backup is made, and goes where it is wanted on an explicit word alone. */
import { open } from 'node:fs/promises';
import Database from 'better-sqlite3';
import { describe, expect, test } from 'vitest';
import { backup } from '../../engine/store/backup.ts';
import { copyShop } from '../../engine/store/copy.ts';
import { Damaged, openSqlite, type Store } from '../../engine/store/index.ts';
import { restore } from '../../engine/store/restore.ts';
import { twoGrounds } from './two-grounds.ts';
import { record } from './written.ts';

const NOW = new Date('2026-11-25T10:20:30.456Z');
const { grounds, postgres, keep } = twoGrounds();
const fail = (work: Promise<unknown>): Promise<unknown> =>
  work.then(
    () => 'no error',
    (error: unknown) => error,
  );
async function fill(store: Store, jobs: number): Promise<void> {
  for (let i = 0; i < jobs; i++) {
    const { entries, texts } = record(`job-${i}`, 3);
    await store.create(`job-${i}`, entries, texts);
  }
}

describe.each(['SQLite', 'PostgreSQL'])('of %s', (which) => {
  test('one damaged photo: the backup holds all else and says so; restored where that is allowed', async () => {
    const [from, to] = grounds();
    const ground = which === 'SQLite' ? from : postgres();
    const here = await keep(ground.open());
    await fill(here, 3);
    const [a, b] = [await here.savePhoto(Buffer.from('one')), await here.savePhoto(Buffer.from('two'))];
    await ground.sql(`delete from photo where hash = '${a}'`);
    await ground.sql(`insert into photo select '${a}', bytes from photo where hash = '${b}'`);

    const file = `${to.folder}/backup.db`;
    const said = [`The photo ${a.slice(0, 12)} is damaged.`];
    expect(await backup(which === 'SQLite' ? from.file : postgres().url, file)).toMatchObject({
      ...{ jobs: 3, entries: 9, trouble: said },
    });
    const kept = await keep(openSqlite(file));
    expect([(await kept.jobs()).length, await kept.photo(b)]).toEqual([3, new Uint8Array(Buffer.from('two'))]);
    if (which === 'PostgreSQL') return;

    expect(await fail(restore(file, to.file, NOW))).toBeInstanceOf(Damaged);
    expect(await restore(file, to.file, NOW, { damaged: true })).toMatchObject({ jobs: 3, trouble: said });
    expect((await (await keep(to.open())).jobs()).length).toBe(3);
  });

  test('a shop with a damaged photo moves where that is allowed', async () => {
    const [from, to] = grounds();
    const ground = which === 'SQLite' ? from : postgres();
    const [here, there] = [await keep(ground.open()), await keep(to.open())];
    await fill(here, 3);
    const [a, b] = [await here.savePhoto(Buffer.from('one')), await here.savePhoto(Buffer.from('two'))];
    await ground.sql(`delete from photo where hash = '${a}'`);
    await ground.sql(`insert into photo select '${a}', bytes from photo where hash = '${b}'`);
    expect(await fail(copyShop(here, there))).toBeInstanceOf(Damaged);
    expect((await copyShop(here, there, { damaged: true })).trouble).toEqual([
      `The photo ${a.slice(0, 12)} is damaged.`,
    ]);
    expect([(await there.jobs()).length, await there.photos()]).toEqual([3, [b]]);
  });
});

test.each(['SQLite', 'PostgreSQL'])('the last entries of a job deleted in %s: the backup says so', async (which) => {
  const [from, to] = grounds();
  const ground = which === 'SQLite' ? from : postgres();
  const here = await keep(ground.open());
  await fill(here, 3);
  const past = which === 'SQLite' ? 'drop trigger entry_is_not_removed' : 'set session_replication_role = replica';
  await ground.sql(`${past}; delete from entry where job = (select key from job where id = 'job-1') and seq > 1;
    delete from entry where job = (select key from job where id = 'job-2')`);
  const { trouble } = await backup(which === 'SQLite' ? from.file : postgres().url, `${to.folder}/backup.db`);
  expect([...trouble].sort()).toEqual([
    'Entries are missing at the end, 2 of 3 (job job-1, entry 2).',
    'Entries are missing at the end, 3 of 3 (job job-2, entry 1).',
  ]);
});

test('a page overwritten: the backup holds every job that can be read, and names the others', async () => {
  const [from, to] = grounds();
  const here = await from.open();
  await fill(here, 60);
  await here.close();
  const db = new Database(from.file);
  const leaf = `select pageno from dbstat where name = 'entry' and pagetype = 'leaf' limit 1 offset 3`;
  const page = Number(db.prepare(leaf).pluck().get());
  db.close();
  const handle = await open(from.file, 'r+');
  await handle.write(Buffer.alloc(4096, 0x5a), 0, 4096, (page - 1) * 4096);
  await handle.close();

  const file = `${to.folder}/backup.db`;
  const { trouble } = await backup(from.file, file);
  expect(trouble.length).toBeGreaterThan(0);
  expect(trouble.length).toBeLessThan(15);
  expect(await fail(restore(file, to.file, NOW))).toBeInstanceOf(Damaged);
  expect((await restore(file, to.file, NOW, { damaged: true })).trouble).toEqual(expect.arrayContaining([...trouble]));
  const back = await keep(to.open());
  const lost = new Set(trouble.map((line) => /\(job (\S+)\)/.exec(line)?.[1]));
  for (let i = 0; i < 60; i++) if (!lost.has(`job-${i}`)) expect((await back.read(`job-${i}`)).entries).toHaveLength(3);

  // Into PostgreSQL go the jobs that can be read.
  expect((await restore(file, postgres().url, NOW, { damaged: true })).jobs).toBe(60);
  expect((await (await keep(postgres().open())).jobs()).length).toBe(60 - lost.size);
});
