/** One file that holds a whole shop, made while others go on writing, and checked before it gets its name. */
import { closeSync, existsSync, fsyncSync, openSync, renameSync, rmSync } from 'node:fs';
import { dirname } from 'node:path';
import Database from 'better-sqlite3';
import { checkShop, type ShopCheck } from './check.ts';
import { copyShop } from './copy.ts';
import { isPostgres, openStore } from './open.ts';
import { Damaged, NotKept, type Store } from './port.ts';
import { openSqlite } from './sqlite/open.ts';
import { guarded } from './sqlite/trouble.ts';

/**
 * @param where the database in use: a file or a postgres:// address
 * @param to the file to make, which must not exist
 */
export async function backup(where: string, to: string): Promise<ShopCheck> {
  if (existsSync(to)) throw new NotKept(`There is a file ${to} already.`);
  const draft = `${to}.part`;
  removeFile(draft);
  try {
    if (isPostgres(where)) await fromPostgres(where, draft);
    else await guarded(() => snapshot(where, draft));
    const check = await withStore(draft, checkShop);
    if (check.trouble.length > 0) throw new Damaged(check.trouble.join('\n'));
    intoPlace(draft, to);
    return check;
  } finally {
    removeFile(draft);
  }
}

/** In one reading transaction: everything that was committed at one moment, while others write on. */
function snapshot(file: string, to: string): void {
  const db = new Database(file, { readonly: true, fileMustExist: true });
  try {
    db.prepare('vacuum into ?').run(to);
  } finally {
    db.close();
  }
}
/** Job by job: each is a whole beginning of its record, since records only grow. */
async function fromPostgres(where: string, to: string): Promise<void> {
  const from = await openStore(where);
  try {
    await withStore(to, (store) => copyShop(from, store));
  } finally {
    await from.close();
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
export const removeFile = (file: string): void => {
  for (const end of ['', '-wal', '-shm', '-journal']) rmSync(file + end, { force: true });
};
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
