/** Real trouble: another program's lock, a full disk, no right to write, damage. Killed processes: processes.test.ts. */
import { createHash } from 'node:crypto';
import { chmod, open, readFile, writeFile } from 'node:fs/promises';
import Database from 'better-sqlite3';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { verifyChain } from '../../engine/chain.ts';
import { checkShop } from '../../engine/store/check.ts';
import { Damaged, NotKept, openSqlite, type Store } from '../../engine/store/index.ts';
import { storeOn } from '../../engine/store/sqlite/open.ts';
import { smallDisk } from './small-disk.ts';
import { type SqliteGround, sqliteGround } from './sqlite-ground.ts';
import { record, written } from './written.ts';

let ground: SqliteGround;
let store: Store | undefined;
beforeEach(async () => {
  ground = await sqliteGround();
});
afterEach(async () => {
  await store?.close();
  store = undefined;
  await ground.remove();
});
const fail = async (work: Promise<unknown>): Promise<unknown> =>
  work.then(
    () => 'no error',
    (error: unknown) => error,
  );

test('a folder that can’t be made is said at once', async () => {
  await writeFile(ground.file, 'a file, not a folder');
  expect(await fail(openSqlite(`${ground.file}/below/call.sqlite`))).toBeInstanceOf(NotKept);
});

describe('a store that can’t keep it says so, keeps nothing, and works again afterwards', () => {
  test('while another program holds the lock', async () => {
    const kept = await openSqlite(ground.file, { busyMs: 150 });
    store = kept;
    const a = record('a', 1);
    await kept.create('a', a.entries, a.texts);
    const heard: number[] = [];
    kept.watch((_, e) => heard.push(e.seq));

    const other = new Database(ground.file);
    other.exec('begin immediate');
    const [next, b] = [written('a', a.entries[0]), record('b', 1)];
    const began = performance.now();
    const errors = await Promise.all([
      fail(kept.append('a', 1, next.entries, next.texts)),
      fail(kept.create('b', b.entries, b.texts)),
    ]);
    expect(performance.now() - began).toBeGreaterThan(140);
    for (const error of errors) expect(error).toBeInstanceOf(NotKept);
    expect(String(errors[0])).toBe(
      'NotKept: The record is locked by another program. Nothing was kept. Send it again.',
    );
    expect(await fail(kept.setMeta('demo', 'loaded'))).toBeInstanceOf(NotKept);
    expect(await kept.read('a')).toEqual(a);
    expect([await kept.read('b'), heard]).toEqual([{ entries: [], texts: [] }, []]);

    other.exec('rollback');
    other.close();
    expect(await kept.append('a', 1, next.entries, next.texts)).toBe('kept');
    expect(heard).toEqual([2]);
  });

  test('while it is opened under another program’s lock', async () => {
    await (await ground.open()).close();
    const other = new Database(ground.file);
    other.exec('begin immediate');
    expect(await fail(openSqlite(ground.file, { busyMs: 50 }))).toBeInstanceOf(NotKept);
    other.close();
    store = await ground.open();
  });

  test('while the disk is full', async () => {
    const db = new Database(ground.file);
    const kept = await storeOn(db);
    store = kept;
    const a = record('a', 1);
    await kept.create('a', a.entries, a.texts);
    db.pragma(`max_page_count = ${db.pragma('page_count', { simple: true })}`);
    // The small one alone would fit; it shares the commit of the large one, and neither is half kept.
    const small = written('a', a.entries[0]);
    const large = written('b', undefined, { words: 'x'.repeat(100_000) });
    const errors = await Promise.all([
      fail(kept.append('a', 1, small.entries, small.texts)),
      fail(kept.create('b', large.entries, large.texts)),
    ]);
    expect(errors.map(String)).toEqual(Array(2).fill('NotKept: The disk is full. Nothing was kept. Send it again.'));
    expect(await kept.read('a')).toEqual(a);
    expect(await kept.read('b')).toEqual({ entries: [], texts: [] });

    db.pragma('max_page_count = 1000000');
    expect(await kept.append('a', 1, small.entries, small.texts)).toBe('kept');
    await kept.create('b', large.entries, large.texts);
    expect(verifyChain((await kept.read('a')).entries)).toEqual({ ok: true });
  });

  test('while others have filled the disk: what was acknowledged is there, and it goes on when there is room', async () => {
    const disk = smallDisk(2_048);
    try {
      const kept = await storeOn(disk.db);
      const a = record('a', 1);
      await kept.create('a', a.entries, a.texts);
      disk.fill();
      const acknowledged = [...a.entries];
      let error: unknown = null;
      // There is still room in what the log of changes has taken already.
      for (let i = 0; i < 500 && error === null; i++) {
        const next = written('a', acknowledged.at(-1), { words: 'x'.repeat(2_000) });
        error = await kept.append('a', acknowledged.length, next.entries, next.texts).then(
          () => null,
          (trouble: unknown) => trouble,
        );
        if (error === null) acknowledged.push(...next.entries);
      }
      expect(String(error)).toBe('NotKept: The disk is full. Nothing was kept. Send it again.');
      expect((await kept.read('a')).entries).toEqual(acknowledged);
      expect(await kept.board(10)).toMatchObject([{ job: 'a', lastSeq: acknowledged.length }]);

      disk.free();
      const again = written('a', acknowledged.at(-1));
      expect(await kept.append('a', acknowledged.length, again.entries, again.texts)).toBe('kept');
      expect(verifyChain((await kept.read('a')).entries)).toEqual({ ok: true });
      expect(disk.db.pragma('integrity_check', { simple: true })).toBe('ok');
      await kept.close();
    } finally {
      disk.remove();
    }
  });

  test('while the connection may only read', async () => {
    const db = new Database(ground.file);
    const kept = await storeOn(db);
    store = kept;
    const a = record('a', 1);
    db.pragma('query_only = on');
    const error = await fail(kept.create('a', a.entries, a.texts));
    expect(String(error)).toBe('NotKept: The record is read-only. Nothing was kept. Send it again.');
    db.pragma('query_only = off');
    await kept.create('a', a.entries, a.texts);
    expect(await kept.read('a')).toEqual(a);
  });

  test.each(['file', 'folder'])('where there is no right to write: the %s', async (which) => {
    await (await ground.open()).close();
    await chmod(ground.file, 0o444);
    await chmod(ground.folder, which === 'folder' ? 0o555 : 0o777);
    // Root may write anywhere, so that it has to be somebody else for a moment.
    const root = process.geteuid?.() === 0;
    if (root) process.seteuid?.(65534);
    try {
      expect(await fail(openSqlite(ground.file, { busyMs: 50 }))).toBeInstanceOf(NotKept);
    } finally {
      if (root) process.seteuid?.(0);
      await chmod(ground.folder, 0o777);
      await chmod(ground.file, 0o644);
    }
    store = await ground.open();
  });
});

describe('damage is not trouble and not a bug', () => {
  const damage = async (statement: string): Promise<void> => {
    store = await ground.open();
    const { entries, texts } = record('job', 3);
    await store.create('job', entries, texts);
    await ground.sql(`drop trigger entry_is_not_changed; drop trigger entry_is_not_removed; ${statement}`);
  };

  test.each([
    [`update entry set body = substr(body, 1, 9) where seq = 2`, 2],
    ['delete from entry where seq = 2', 2],
    ['delete from entry where seq = 1', 1],
  ])('%s', async (statement, seq) => {
    await damage(statement);
    const error = await fail(store?.read('job') ?? Promise.resolve());
    expect(error).toBeInstanceOf(Damaged);
    expect(error).toMatchObject({ job: 'job', seq });
  });

  test('an entry that reads well but is another is for the chain to find', async () => {
    await damage(`update entry set "by" = 'tomas' where seq = 2`);
    expect(verifyChain((await store?.read('job'))?.entries ?? [])).toEqual({ ok: false, at: 2, why: 'altered' });
  });

  test('a file that is no database', async () => {
    await writeFile(ground.file, 'This is a shopping list.\n'.repeat(1000));
    expect(await fail(ground.open())).toBeInstanceOf(Damaged);
  });

  test('a file with a page overwritten', async () => {
    const kept = await ground.open();
    const { entries, texts } = record('job', 200);
    await kept.create('job', entries, texts);
    await kept.close();
    const file = await open(ground.file, 'r+');
    const { size } = await file.stat();
    // From the ninth page on: the schema before it can still be read.
    for (let at = 8 * 4096; at < size; at += 4096) await file.write(Buffer.alloc(4096, 0x5a), 0, 4096, at);
    await file.close();
    const again = await fail(ground.open().then(async (s) => s.read('job').finally(() => s.close())));
    expect(again).toBeInstanceOf(Damaged);
  });

  test.each([
    [''],
    // Before what later versions have looked up in the entries.
    [
      `drop table photo_of_job; delete from kysely_migration where name like '%-photos-of-jobs';
      delete from meta where key = 'photos'`,
    ],
  ])('one page of many: the jobs on it are named, all others are read, the list still comes. %s', async (earlier) => {
    const kept = await ground.open();
    const jobs = Array.from({ length: 60 }, (_, i) => `job-${i}`);
    for (const job of jobs) {
      const { entries, texts } = record(job, 4);
      await kept.create(job, entries, texts, { closed: false, card: job });
    }
    await kept.close();
    const db = new Database(ground.file);
    db.exec(earlier);
    const leaf = `select pageno from dbstat where name = 'entry' and pagetype = 'leaf' limit 1 offset 3`;
    const page = Number(db.prepare(leaf).pluck().get());
    db.close();
    const file = await open(ground.file, 'r+');
    await file.write(Buffer.alloc(4096, 0x5a), 0, 4096, (page - 1) * 4096);
    await file.close();

    store = await ground.open();
    const damaged: string[] = [];
    for (const job of jobs) {
      const read = await store.read(job).catch((error: unknown) => error);
      if (read instanceof Damaged && read.job === job) damaged.push(job);
      else expect(verifyChain((read as { entries: unknown[] }).entries)).toEqual({ ok: true });
    }
    expect(damaged.length).toBeGreaterThan(0);
    expect(damaged.length).toBeLessThan(jobs.length / 4);
    expect((await store.board(0)).map(({ card }) => card).sort()).toEqual([...jobs].sort());
    const said = (await checkShop(store)).trouble.map((line) => /\(job (\S+)\)/.exec(line)?.[1]);
    expect(said.sort()).toEqual(damaged.sort());
    const more = written('job-0', (await store.read('job-0')).entries.at(-1));
    expect(await store.append('job-0', 4, more.entries, more.texts)).toBe('kept');
  });

  test('what was forgotten is nowhere in the files any more', async () => {
    store = await ground.open();
    const words = 'The key is under the third flower pot.';
    const { entries, texts } = written('job', undefined, { words });
    await store.create('job', entries, texts, { closed: false, card: words });
    const bytes = async (): Promise<string> =>
      (await Promise.all(['', '-wal'].map((end) => readFile(ground.file + end, 'latin1')))).join('');
    expect(await bytes()).toContain(words);
    await store.forget({ job: 'job' });
    expect(await bytes()).not.toContain(words);
    expect(verifyChain((await store.read('job')).entries)).toEqual({ ok: true });
  });

  test('nor in what pages keep of rows that moved, of hundreds of jobs, once the file is scrubbed', async () => {
    store = await ground.open();
    const marks: string[] = [];
    for (let job = 0; job < 240; job++) {
      const whole = record(`job-${job}`, 6);
      const texts = whole.texts.map((text, i) => {
        const mark = createHash('sha256').update(`${job} ${i}`).digest('hex').slice(0, 12);
        if (job % 2 === 0) marks.push(mark);
        return { ...text, text: `${mark} ${'und so weiter '.repeat(i)}` };
      });
      await store.create(`job-${job}`, whole.entries, texts, { closed: true, card: JSON.stringify(texts[0]) });
    }
    for (let job = 0; job < 240; job += 2) await store.forget({ job: `job-${job}` });
    expect(await store.scrub()).toBe(true);
    const bytes = (await Promise.all(['', '-wal'].map((end) => readFile(ground.file + end, 'latin1')))).join('');
    expect(marks.filter((mark) => bytes.includes(mark))).toEqual([]);
  });

  test('somebody else reads the file: the scrubbing says that it has to be said again', async () => {
    store = await ground.open();
    const { entries, texts } = written('job', undefined);
    await store.create('job', entries, texts);
    const other = new Database(ground.file);
    other.exec('begin');
    other.prepare('select count(*) from entry').get();
    expect(await store.scrub()).toBe(false);
    other.close();
    expect(await store.scrub()).toBe(true);
  });
});
