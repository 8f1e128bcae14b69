/** A backup becomes the shop: checked as a whole first, and what was there before is kept beside it. */
import { copyFileSync, existsSync, linkSync, rmSync } from 'node:fs';
import Database from 'better-sqlite3';
import { intoPlace, removeFile, withStore } from './backup.ts';
import { checkShop, type ShopCheck } from './check.ts';
import { copyShop } from './copy.ts';
import { isPostgres, openStore } from './open.ts';
import { Damaged, NotKept } from './port.ts';
import { guarded } from './sqlite/trouble.ts';

export interface Restored extends ShopCheck {
  /** Where the database went that was there before; null where there was none. */
  readonly before: string | null;
}

/**
 * @param from the backup, which is only read
 * @param where the database in use: a file that nobody may have open, or the address of a PostgreSQL database without jobs
 * @param now for the name under which the database that was there is kept
 */
export async function restore(from: string, where: string, now: Date): Promise<Restored> {
  if (!existsSync(from)) throw new NotKept(`There is no file ${from}.`);
  // Beside its later place, so that it gets there by its name alone; of PostgreSQL, beside the backup.
  const draft = `${isPostgres(where) ? from : where}.part`;
  removeFile(draft);
  try {
    copyFileSync(from, draft);
    await guarded(() => sound(draft));
    const check = await withStore(draft, checkShop);
    if (check.trouble.length > 0) throw new Damaged(check.trouble.join('\n'));
    const before = isPostgres(where)
      ? await intoPostgres(draft, where)
      : await guarded(() => replace(draft, where, now));
    return { ...check, before };
  } finally {
    removeFile(draft);
  }
}

function sound(file: string): void {
  const db = new Database(file, { fileMustExist: true });
  try {
    const said = db.pragma('integrity_check(1)', { simple: true });
    if (said !== 'ok') throw new Damaged(`The file is damaged: ${said}`);
  } finally {
    db.close();
  }
}

async function intoPostgres(draft: string, where: string): Promise<null> {
  const to = await openStore(where);
  try {
    if ((await to.jobs()).length > 0) throw new NotKept('The database holds jobs. Restore into an empty one.');
    await withStore(draft, (from) => copyShop(from, to));
    return null;
  } finally {
    await to.close();
  }
}

function replace(draft: string, file: string, now: Date): string | null {
  if (!existsSync(file)) {
    intoPlace(draft, file);
    return null;
  }
  const before = `${file}.before-${now.toISOString().replace(/\..*$/, '').replaceAll(':', '')}`;
  if (existsSync(before)) throw new NotKept(`There is a file ${before} already.`);
  const held = hold(file);
  try {
    // A second name first, so that whatever breaks off here leaves a database under the one that is looked for.
    const ends = ['-wal', '-shm', ''].filter((end) => existsSync(file + end));
    for (const end of ends) alsoAs(file + end, before + end);
    // The old log would be taken for the new file's.
    for (const end of ends) if (end !== '') rmSync(file + end);
    intoPlace(draft, file);
    return before;
  } finally {
    held?.close();
  }
}

function alsoAs(file: string, name: string): void {
  try {
    linkSync(file, name);
  } catch {
    // Not every file system has two names for one file.
    copyFileSync(file, name);
  }
}

/** Nobody else has it open, and nobody opens it meanwhile: what they would write there would be lost. */
function hold(file: string): Database.Database | null {
  const db = new Database(file, { timeout: 500 });
  try {
    // Leaving WAL takes the whole file for oneself; it fails where anybody else has it open, idle or not.
    if (db.pragma('journal_mode = delete', { simple: true }) !== 'delete') throw new Error('still in use');
    db.pragma('locking_mode = exclusive');
    db.exec('begin exclusive');
    return db;
  } catch (error) {
    db.close();
    const code = error instanceof Database.SqliteError ? error.code : '';
    // A damaged file is why one restores: it is put aside as it is.
    if (code.startsWith('SQLITE_CORRUPT') || code.startsWith('SQLITE_NOTADB')) return null;
    throw new NotKept('The database is in use. Stop nocool first.', { cause: error });
  }
}
