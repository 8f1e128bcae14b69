/** A whole shop goes from one database to another, into a backup and back. */
import { spawn } from 'node:child_process';
import { existsSync } from 'node:fs';
import { open, readdir, readFile, rm, writeFile } from 'node:fs/promises';
import { basename } from 'node:path';
import { text } from 'node:stream/consumers';
import { beforeAll, describe, expect, test } from 'vitest';
import { DEFAULT_SETTINGS } from '../../engine/memory.ts';
import { backup } from '../../engine/store/backup.ts';
import { copyShop } from '../../engine/store/copy.ts';
import { Damaged, NotKept, openSqlite, type Store } from '../../engine/store/index.ts';
import { restore } from '../../engine/store/restore.ts';
import { bundle } from '../process.ts';
import type { SqliteGround } from './sqlite-ground.ts';
import { twoGrounds } from './two-grounds.ts';
import { record, written } from './written.ts';

const { grounds, postgres, keep, closeAll } = twoGrounds();

/** Jobs of one to six entries, words of two people, some of them removed, a photo, somebody signed in, a sheet. */
async function fill(store: Store): Promise<void> {
  await store.savePerson({
    id: 'ines',
    name: 'Ines Vale',
    initials: 'IV',
    roles: ['technician'],
    certified: true,
    meter: null,
    active: true,
  });
  await store.saveSettings({ ...DEFAULT_SETTINGS, hertz: '50' });
  await store.saveSession('s', 'ines', '2030-01-01T00:00:00.000Z', {
    made: '2029-01-01T00:00:00.000Z',
    device: 'phone',
  });
  await store.saveSheet('truck', 'van 2', 0, { carries: ['35+5 µF'] });
  await store.saveSheet('truck', 'van 2', 1, { carries: [] });
  await store.willSay({ chat: 'c', lane: 'j', seq: 3 }, [
    { id: 'a', body: { n: 1 } },
    { id: 'b', body: { n: 2 } },
  ]);
  await store.said('a', 'there');
  await store.saveShare({ hash: 'h', job: 'j', audience: 'shop', by: 'ines', made: '2026', expires: '2030' });
  await store.setMeta('demo', 'no');
  await store.savePhoto(Buffer.from('a photo'));
  for (let i = 1; i <= 6; i++) {
    const whole = record(`job-${i}`, i);
    await store.create(`job-${i}`, whole.entries, whole.texts, { closed: i === 3, card: `card ${i}` });
    const next = written(`job-${i}`, whole.entries.at(-1), { by: 'tomas', words: 'Half a pair \ud83d, a NUL \0.' });
    await store.append(`job-${i}`, i, next.entries, next.texts, { closed: i === 3, card: `card ${i}, grown` });
  }
  await store.forget({ job: 'job-5' });
}
const everything = async (store: Store): Promise<string> => {
  const jobs = await store.jobs();
  const pages = await Promise.all(jobs.map(({ job }) => store.read(job)));
  const photos = await Promise.all((await store.photos()).map((hash) => store.photo(hash)));
  return JSON.stringify([jobs, pages, await store.board(100), await store.shop(), photos]);
};
const fail = (work: Promise<unknown>): Promise<unknown> =>
  work.then(
    () => 'no error',
    (error: unknown) => error,
  );

describe('a shop that moves', () => {
  test('is the same to the byte in PostgreSQL and back in SQLite', async () => {
    const [from, back] = grounds();
    const [here, there, again] = [await keep(from.open()), await keep(postgres().open()), await keep(back.open())];
    await fill(here);
    expect(await copyShop(here, there)).toEqual({ jobs: 6, entries: 27, photos: 1, trouble: [] });
    expect(await everything(there)).toBe(await everything(here));
    await copyShop(there, again);
    expect(await everything(again)).toBe(await everything(here));
    // Whose words they are went with them.
    expect([await here.forget({ person: 'tomas' }), await again.forget({ person: 'tomas' })]).toEqual([5, 5]);
    expect(await everything(again)).toBe(await everything(here));
  });

  test('goes on where it was broken off, and takes what was written since', async () => {
    const [from, to] = grounds();
    const [here, there] = [await keep(from.open()), await keep(to.open())];
    await fill(here);
    const half = await here.read('job-4');
    await there.create('job-4', half.entries.slice(0, 2), half.texts.slice(0, 2));
    await copyShop(here, there);
    const next = written('job-1', (await here.read('job-1')).entries.at(-1));
    await here.append('job-1', 2, next.entries, next.texts);
    await copyShop(here, there);
    expect(await there.read('job-1')).toEqual(await here.read('job-1'));
    expect(await there.read('job-4')).toEqual(half);
  });

  test('does not mix with another shop', async () => {
    const [from, to] = grounds();
    const [here, there] = [await keep(from.open()), await keep(to.open())];
    await fill(here);
    const strange = record('strange', 1);
    await there.create('strange', strange.entries, strange.texts);
    expect(String(await fail(copyShop(here, there)))).toBe(
      'NotKept: The other database holds a job of its own: strange.',
    );
    await here.create('strange', record('strange', 1).entries, []);
    expect(String(await fail(copyShop(here, there)))).toContain('another record of job strange');
  });
});

describe('a backup', () => {
  test('is made while others write: everything acknowledged before is in it, and every chain verifies', async () => {
    const [shop] = grounds();
    const appender = await bundle(new URL('./appender.ts', import.meta.url));
    const child = spawn(process.execPath, [appender, shop.file, 'ines', '0', 'busy-1', 'busy-2']);
    try {
      let said = '';
      const enough = new Promise<void>((resolve) => {
        child.stdout.on('data', (data) => {
          said += data;
          if (said.split('\n').length > 40) resolve();
        });
      });
      child.stdin.write('go\n');
      await enough;
      const before = said.trimEnd().split('\n').slice(1, -1);
      const file = `${shop.folder}/backup.db`;
      expect((await backup(shop.file, file)).trouble).toEqual([]);
      expect((await readdir(shop.folder)).filter((name) => name.startsWith('backup'))).toEqual(['backup.db']);
      const copy = await keep(openSqlite(file));
      const found = new Set<string>();
      for (const job of ['busy-1', 'busy-2'])
        for (const e of (await copy.read(job)).entries) found.add(`${job} ${e.seq} ${e.hash}`);
      expect(before.filter((line) => !found.has(line))).toEqual([]);
    } finally {
      child.kill('SIGKILL');
    }
  });

  test.each(['SQLite', 'PostgreSQL'])('of %s holds the whole shop', async (which) => {
    const [shop, place] = grounds();
    const here = await keep(which === 'SQLite' ? shop.open() : postgres().open());
    await fill(here);
    const file = `${place.folder}/backup.db`;
    const check = await backup(which === 'SQLite' ? shop.file : postgres().url, file);
    expect(check).toEqual({ jobs: 6, entries: 27, photos: 1, trouble: [] });
    expect(await everything(await keep(openSqlite(file)))).toBe(await everything(here));
    expect(await fail(backup(shop.file, file))).toBeInstanceOf(NotKept);
  });

  test('is made of a damaged shop as well: what is wrong is said', async () => {
    const [shop] = grounds();
    const here = await keep(shop.open());
    await fill(here);
    await shop.sql(`drop trigger entry_is_not_changed; update entry set "by" = 'nobody' where job = 2 and seq = 2`);
    const file = `${shop.folder}/backup.db`;
    expect((await backup(shop.file, file)).trouble).toEqual(['The chain breaks (job job-2, entry 2): altered.']);
    expect(await everything(await keep(openSqlite(file)))).toBe(await everything(here));
  });
});

describe('restoring', () => {
  const NOW = new Date('2026-11-25T10:20:30.456Z');
  /** A shop, its backup, and one more job since. */
  const shopWithBackup = async (): Promise<{ shop: SqliteGround; file: string; then: string; now: string }> => {
    const [shop] = grounds();
    const here = await shop.open();
    await fill(here);
    const then = await everything(here);
    const file = `${shop.folder}/backup.db`;
    await backup(shop.file, file);
    const more = record('since', 2);
    await here.create('since', more.entries, more.texts);
    const now = await everything(here);
    await here.close();
    return { shop, file, then, now };
  };

  test('puts the backup in place and keeps what was there', async () => {
    const { shop, file, then, now } = await shopWithBackup();
    const bytes = await readFile(file);
    const done = await restore(file, shop.file, NOW);
    expect(done).toMatchObject({ jobs: 6, trouble: [], before: `${shop.file}.before-2026-11-25T102030` });
    expect(await everything(await keep(shop.open()))).toBe(then);
    expect(await everything(await keep(openSqlite(done.before ?? '')))).toBe(now);
    expect(await readFile(file)).toEqual(bytes);
  });

  test('makes the database where there is none, and fills an empty PostgreSQL database', async () => {
    const { shop, file, then } = await shopWithBackup();
    expect((await restore(file, `${shop.folder}/new.db`, NOW)).before).toBeNull();
    expect(await everything(await keep(openSqlite(`${shop.folder}/new.db`)))).toBe(then);
    await restore(file, postgres().url, NOW);
    const there = await keep(postgres().open());
    expect(await everything(there)).toBe(then);
    expect(String(await fail(restore(file, postgres().url, NOW)))).toContain('Stop nocool first');
    const own = record('own', 1);
    await there.create('own', own.entries, own.texts);
    await closeAll();
    expect(String(await fail(restore(file, postgres().url, NOW)))).toContain('holds a job of its own: own');
  });

  test('replaces nothing where the backup is damaged', async () => {
    const { shop, file, now } = await shopWithBackup();
    const bytes = await readFile(file);
    const half = bytes.subarray(0, bytes.length / 2);
    const torn = Buffer.from(bytes);
    torn.fill(0x5a, 12 * 4096, 13 * 4096);
    for (const damaged of [half, torn, Buffer.from('A shopping list.\n'.repeat(999))]) {
      await writeFile(file, damaged);
      expect(await fail(restore(file, shop.file, NOW))).toBeInstanceOf(Damaged);
    }
    await writeFile(file, bytes);
    const altered = await openSqlite(file);
    await altered.close();
    const { default: Database } = await import('better-sqlite3');
    const db = new Database(file);
    db.exec(
      `drop trigger entry_is_not_changed; update entry set at = '2026-07-14T15:00:00.001Z' where job = 1 and seq = 1`,
    );
    db.close();
    expect(String(await fail(restore(file, shop.file, NOW)))).toContain(
      'The chain breaks (job job-1, entry 1): altered.',
    );
    expect(await everything(await keep(shop.open()))).toBe(now);
    expect((await readdir(shop.folder)).filter((name) => name.includes('before') || name.includes('part'))).toEqual([]);
  });

  test('replaces nothing while anybody has the database open', async () => {
    const { shop, file, now } = await shopWithBackup();
    const user = await keep(shop.open());
    expect(String(await fail(restore(file, shop.file, NOW)))).toContain('The database is in use. Stop nocool first.');
    expect(await everything(user)).toBe(now);
    await closeAll();
    await restore(file, shop.file, NOW);
  });

  test('broken off at any step, leaves a whole database under its name', async () => {
    const program = await bundle(new URL('../../engine/desk/commands/restore.ts', import.meta.url));
    const stop = `${grounds()[1].folder}/stop.mjs`;
    // Dead without a word before the so-and-so-many-th change of the folder, as at a power cut.
    await writeFile(
      stop,
      `import fs from 'node:fs'; import { syncBuiltinESMExports } from 'node:module';
      let left = Number(process.env.STEPS);
      for (const name of ['renameSync', 'linkSync', 'rmSync', 'copyFileSync']) {
        const real = fs[name];
        fs[name] = (...args) => (left-- > 0 ? real(...args) : process.kill(process.pid, 'SIGKILL'));
      }
      syncBuiltinESMExports();`,
    );
    const { shop, file, then, now } = await shopWithBackup();
    await closeAll();
    const seen: string[] = [];
    for (let steps = 0; seen.at(-1) !== then; steps++) {
      const child = spawn(process.execPath, ['--import', stop, program, file], {
        env: { ...process.env, NOCOOL_DB: shop.file, STEPS: String(steps) },
      });
      await new Promise((done) => child.on('close', done));
      expect(existsSync(shop.file), `after ${steps} steps`).toBe(true);
      seen.push(await everything(await keep(shop.open())));
      await closeAll();
      for (const name of await readdir(shop.folder))
        if (/before|part/.test(name)) await rm(`${shop.folder}/${name}`, { recursive: true });
    }
    expect(seen.length).toBeGreaterThan(2);
    expect(new Set(seen)).toEqual(new Set([now, then]));
  }, 120_000);

  test('puts a damaged database aside', async () => {
    const { shop, file, then } = await shopWithBackup();
    const handle = await open(shop.file, 'r+');
    await handle.write(Buffer.alloc(4096, 0x5a), 0, 4096, 0);
    await handle.close();
    await restore(file, shop.file, NOW);
    expect(await everything(await keep(shop.open()))).toBe(then);
  });
});

describe('as commands', () => {
  const programs: Record<string, string> = {};
  beforeAll(async () => {
    for (const name of ['backup', 'restore', 'move', 'forget'])
      programs[name] = await bundle(new URL(`../../engine/desk/commands/${name}.ts`, import.meta.url));
  });
  async function run(
    name: string,
    args: readonly string[],
    env: Record<string, string>,
  ): Promise<[number | null, string]> {
    const { DATABASE_URL: _, ...rest } = process.env;
    const child = spawn(process.execPath, [programs[name] ?? '', ...args], { env: { ...rest, ...env } });
    const [out, err] = [text(child.stdout), text(child.stderr)];
    const code = await new Promise<number | null>((resolve) => child.on('close', resolve));
    return [code, (await out) + (await err)];
  }

  test('they say what they did, and their exit codes what went wrong', async () => {
    const [shop, other] = grounds();
    const here = await shop.open();
    await fill(here);
    await here.close();
    const env = { NOCOOL_DB: shop.file };
    const file = `${other.folder}/backup.db`;
    const sound = '6 jobs, 27 entries, 1 photos, all sound.\n';
    expect(await run('backup', [file], env)).toEqual([0, `${file}: ${sound}`]);
    expect(await run('backup', [file], env)).toEqual([3, `nocool: There is a file ${file} already.\n`]);
    const url = postgres().url.replace('nocool@', 'nocool:secret@');
    const shown = postgres().url.replace('nocool@', 'nocool:…@');
    expect(await run('move', [shop.file, url], {})).toEqual([0, `${shown}: ${sound}${shop.file} is as it was.\n`]);
    expect(await run('move', [shop.file, `${shop.folder}/./${basename(shop.file)}`], {})).toEqual([
      3,
      'nocool: FROM and TO are the same. Nothing was moved.\n',
    ]);
    expect(await run('forget', ['person', 'ines'], { DATABASE_URL: url })).toEqual([
      0,
      '16 texts removed. Backups made before still hold them.\n',
    ]);
    expect(await run('forget', ['person', 'nobody'], env)).toEqual([3, 'nocool: There is no person nobody.\n']);
    expect(await run('restore', [file], { NOCOOL_DB: other.file })).toEqual([0, `${other.file}: ${sound}`]);
    expect(existsSync(other.file)).toBe(true);
    expect((await run('restore', [`${file}.not`], env))[0]).toBe(3);
    const wrong = { backup: [], restore: ['--help'], move: ['one'], forget: ['unit', '1'] };
    const said = await Promise.all(Object.entries(wrong).map(([name, args]) => run(name, args, env)));
    expect(said).toEqual(
      Object.keys(wrong).map((name) => [2, expect.stringContaining(`usage: npm run -s ${name} -- `)]),
    );
  }, 120_000);

  test('without a database there is nothing to back up or move, and none is made', async () => {
    const [, other] = grounds();
    for (const [name, args] of [
      ['backup', [`${other.folder}/b.db`]],
      ['move', [other.file, `${other.folder}/c.db`]],
    ] as const)
      expect(await run(name, args, { NOCOOL_DB: other.file })).toEqual([
        3,
        `nocool: There is no database ${other.file}.\n`,
      ]);
    expect(await readdir(other.folder)).toEqual([]);
  }, 60_000);
});
