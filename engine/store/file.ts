/** One file that holds a whole database: drafted, taken from another, looked over, put in its place. */
import {
  closeSync,
  copyFileSync,
  existsSync,
  fsyncSync,
  mkdtempSync,
  openSync,
  readSync,
  renameSync,
  rmSync,
} from 'node:fs';
import { dirname, join } from 'node:path';
import Database from 'better-sqlite3';
import { Damaged, NotKept, type Store } from './port.ts';
import { isBehind, openSqlite } from './sqlite/open.ts';
import { asTrouble, guarded } from './sqlite/trouble.ts';

/** Where a file is made that gets its name later: in a folder of its own, so that nobody else's file is ever in the way. */
export async function withDraft<T>(beside: string, work: (draft: string) => Promise<T>): Promise<T> {
  const folder = mkdtempSync(`${beside}.part-`);
  try {
    return await work(join(folder, 'draft.db'));
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

export async function withStore<T>(file: string, work: (store: Store) => Promise<T>): Promise<T> {
  const store = await openSqlite(file);
  try {
    return await work(store);
  } finally {
    await store.close();
  }
}

export function withFile<T>(file: string, work: (db: Database.Database) => T, readonly = false): T {
  const db = new Database(file, { readonly, fileMustExist: true });
  try {
    return work(db);
  } finally {
    db.close();
  }
}

/** In one reading transaction: everything that was committed at one moment, while others write on. */
export async function snapshot(from: string, to: string): Promise<void> {
  try {
    withFile(from, (db) => void db.prepare('vacuum into ?').run(to), true);
  } catch (error) {
    if (!isSqlite(error, /^SQLITE_CORRUPT/)) throw asTrouble(error);
    rmSync(to, { force: true });
    await pageByPage(from, to);
  }
}
/** Where a page is damaged: none is understood, so that all others are there. */
async function pageByPage(from: string, to: string): Promise<void> {
  const db = new Database(from, { readonly: true, fileMustExist: true });
  try {
    await db.backup(to);
  } catch (error) {
    throw asTrouble(error);
  } finally {
    db.close();
  }
}

/** The whole of a file that is only read, with what its log holds and the file itself does not yet. */
export async function take(from: string, to: string): Promise<void> {
  if (isWhole(from)) return copyFileSync(from, to);
  try {
    await snapshot(from, to);
  } catch (error) {
    if (!(error instanceof NotKept && isSqlite(error.cause, /^SQLITE_(CANTOPEN|READONLY)/))) throw error;
    // A log can't be read where nothing may be written beside it: it is read beside the copy.
    rmSync(to, { force: true });
    for (const end of ['', '-wal', '-journal']) if (existsSync(from + end)) copyFileSync(from + end, to + end);
  }
}
const isSqlite = (error: unknown, code: RegExp): boolean =>
  error instanceof Database.SqliteError && code.test(error.code);

/**
 * In WAL mode and without a log: nobody has it open. It is taken as it is, since to open it would leave files beside it, and
 * fails on a medium that can't be written. Bytes 18 and 19, from 0: https://www.sqlite.org/fileformat2.html#file_format_version_numbers
 */
function isWhole(file: string): boolean {
  if (existsSync(`${file}-wal`)) return false;
  const head = Buffer.alloc(20);
  const handle = openSync(file, 'r');
  try {
    readSync(handle, head, 0, head.length, 0);
  } finally {
    closeSync(handle);
  }
  return head[18] === 2 && head[19] === 2;
}

/** What is wrong with it as a file, one line or none. */
export async function lookOver(file: string): Promise<string[]> {
  const said = await guarded(() => withFile(file, (db) => db.pragma('integrity_check(1)', { simple: true })));
  return said === 'ok' ? [] : [`The file is damaged: ${said}`];
}
/** Whether it was written by an earlier version. Rejects with NotKept where it is none of ours, or of a later one. */
export function isOlder(file: string, name: string): Promise<boolean> {
  return guarded(() =>
    withFile(file, (db) => {
      if (db.prepare(OURS).pluck().get() !== 3) throw new NotKept(`${name} is no database of nocool.`);
      return isBehind(db);
    }),
  );
}
const OURS = `select count(*) from sqlite_schema where type = 'table' and name in ('kysely_migration', 'job', 'entry')`;

/** On the disk first, so that the name never stands for half a file. */
export function intoPlace(draft: string, file: string): void {
  flush(draft);
  renameSync(draft, file);
  flush(dirname(file));
}
function flush(path: string): void {
  const handle = openSync(path, 'r');
  fsyncSync(handle);
  closeSync(handle);
}

/** Nobody else has it open, and nobody opens it meanwhile: what they would write there would be lost. Ends with its close. */
export function hold(file: string): Database.Database {
  const db = new Database(file, { timeout: 500 });
  try {
    // Leaving WAL takes the whole file for oneself; it fails where anybody else has it open, idle or not.
    if (db.pragma('journal_mode = delete', { simple: true }) !== 'delete') throw new Error('still in use');
    db.pragma('locking_mode = exclusive');
    // In this mode what was locked once stays so.
    db.exec('begin exclusive; commit');
    return db;
  } catch (error) {
    db.close();
    const trouble = asTrouble(error);
    throw trouble instanceof Damaged
      ? trouble
      : new NotKept('The database is in use. Stop nocool first.', { cause: error });
  }
}
