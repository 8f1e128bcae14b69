/** What may become the shop: a file with its log, also where nothing may be written; nothing that holds no shop. */
import { chmod, copyFile, mkdir, readdir, readFile, rm, writeFile } from 'node:fs/promises';
import Database from 'better-sqlite3';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { backup } from '../../engine/store/backup.ts';
import { NotKept, openSqlite, type Store } from '../../engine/store/index.ts';
import { restore } from '../../engine/store/restore.ts';
import { type SqliteGround, sqliteGround } from './sqlite-ground.ts';
import { record } from './written.ts';

const NOW = new Date('2026-11-25T10:20:30.456Z');
let ground: SqliteGround;
const opened: Store[] = [];
beforeEach(async () => {
  ground = await sqliteGround();
});
afterEach(async () => {
  for (const store of opened.splice(0)) await store.close();
  await ground.remove();
});
const fail = (work: Promise<unknown>): Promise<unknown> =>
  work.then(
    () => 'no error',
    (error: unknown) => error,
  );
async function shopOf(file: string, jobs: number): Promise<Store> {
  const store = await openSqlite(file);
  opened.push(store);
  for (let i = 0; i < jobs; i++) {
    const { entries, texts } = record(`job-${i}`, 3);
    await store.create(`job-${i}`, entries, texts);
  }
  return store;
}
const jobsIn = async (file: string): Promise<number> => {
  const store = await openSqlite(file);
  try {
    return (await store.jobs()).length;
  } finally {
    await store.close();
  }
};
/** As a server leaves it that dies: most of it only in the log. */
async function died(folder: string): Promise<string> {
  await mkdir(folder);
  const live = `${ground.folder}/live.db`;
  await shopOf(live, 5);
  for (const end of ['', '-wal']) await copyFile(live + end, `${folder}/a.db${end}`);
  return `${folder}/a.db`;
}

test('a file that a server left when it died is taken with its log', async () => {
  const file = await died(`${ground.folder}/left`);
  const [bytes, log] = [await readFile(file), await readFile(`${file}-wal`)];
  expect(await restore(file, ground.file, NOW)).toMatchObject({ jobs: 5, entries: 15 });
  expect(await jobsIn(ground.file)).toBe(5);
  expect([await readFile(file), await readFile(`${file}-wal`)]).toEqual([bytes, log]);
});

test('so it is on a medium that can’t be written, and so is a backup', async () => {
  const folder = `${ground.folder}/left`;
  const file = await died(folder);
  const kept = `${folder}/kept.db`;
  await backup(file, kept);
  await rm(`${file}-shm`, { force: true });
  await chmod(ground.folder, 0o777);
  await chmod(folder, 0o555);
  const root = process.geteuid?.() === 0;
  if (root) process.seteuid?.(65534);
  try {
    for (const [from, to] of [
      [file, `${ground.folder}/one.db`],
      [kept, `${ground.folder}/two.db`],
    ] as const)
      expect(await restore(from, to, NOW)).toMatchObject({ jobs: 5, trouble: [] });
  } finally {
    if (root) process.seteuid?.(0);
    await chmod(folder, 0o755);
  }
});

test('what holds no shop of ours replaces nothing', async () => {
  await (await shopOf(ground.file, 3)).close();
  opened.splice(0);
  const [nothing, other] = [`${ground.folder}/nothing.db`, `${ground.folder}/other.db`];
  await writeFile(nothing, '');
  const db = new Database(other);
  db.exec('create table recipe (name text)');
  db.close();
  for (const file of [nothing, other]) {
    const error = await fail(restore(file, ground.file, NOW));
    expect(error).toBeInstanceOf(NotKept);
    expect(String(error)).toContain(`${file} is no database of nocool.`);
  }
  expect(String(await fail(restore(ground.file, ground.file, NOW)))).toContain('not a backup');
  expect(await jobsIn(ground.file)).toBe(3);
  expect((await readdir(ground.folder)).filter((name) => /before|part/.test(name))).toEqual([]);
});

test('a backup without a job replaces a shop that has some only where that is said', async () => {
  await (await shopOf(ground.file, 3)).close();
  await (await shopOf(`${ground.folder}/new.db`, 0)).close();
  opened.splice(0);
  const file = `${ground.folder}/empty.db`;
  await backup(`${ground.folder}/new.db`, file);
  expect(String(await fail(restore(file, ground.file, NOW)))).toContain('holds no job, and the shop holds 3');
  expect(await jobsIn(ground.file)).toBe(3);
  expect((await readdir(ground.folder)).filter((name) => name.includes('before'))).toEqual([]);
  const done = await restore(file, ground.file, NOW, { empty: true });
  expect([await jobsIn(ground.file), await jobsIn(done.before ?? '')]).toEqual([0, 3]);
});

test('nobody’s file is in the way of a draft', async () => {
  const live = `${ground.folder}/live.db`;
  await (await shopOf(live, 2)).close();
  opened.splice(0);
  const part = `${ground.file}.part`;
  await backup(live, part);
  await backup(live, ground.file);
  expect(await jobsIn(part)).toBe(2);
  expect(await restore(part, ground.file, NOW)).toMatchObject({ jobs: 2 });
  expect(await jobsIn(part)).toBe(2);
});
