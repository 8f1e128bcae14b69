/** One file that holds a whole shop, made while others go on writing, and checked before it gets its name. */
import { copyFileSync, existsSync } from 'node:fs';
import { checkShop, type ShopCheck } from './check.ts';
import { copyShop } from './copy.ts';
import { intoPlace, isOlder, snapshot, withDraft, withFile, withStore } from './file.ts';
import { isPostgres, openStore } from './open.ts';
import { NotKept } from './port.ts';
import { guarded } from './sqlite/trouble.ts';

/**
 * The database is only read, also where an earlier version wrote it. What is damaged is listed, and the file is made all the same: it holds everything else.
 *
 * @param where the database in use: a file or a postgres:// address
 * @param to the file to make, which must not exist
 */
export async function backup(where: string, to: string): Promise<ShopCheck> {
  if (existsSync(to)) throw new NotKept(`There is a file ${to} already.`);
  if (!isPostgres(where) && !existsSync(where)) throw new NotKept(`There is no database ${where}.`);
  return withDraft(to, async (draft) => {
    const left = isPostgres(where) ? await fromPostgres(where, draft) : await snapshot(where, draft).then(() => []);
    // What an earlier version wrote is brought up to date in another copy alone: the backup is as that version can read it.
    const older = await isOlder(draft, where);
    if (older) copyFileSync(draft, `${draft}.checked`);
    const check = await withStore(older ? `${draft}.checked` : draft, checkShop);
    // Without a log: the file is all there is of it, and it opens where nothing can be written.
    await guarded(() => withFile(draft, (db) => void db.pragma('journal_mode = delete')));
    intoPlace(draft, to);
    return { ...check, trouble: [...new Set([...left, ...check.trouble])] };
  });
}

/** Job by job: each is a whole beginning of its record, since records only grow. Gives what could not be read. */
async function fromPostgres(where: string, to: string): Promise<readonly string[]> {
  const { refuseOther } = await import('./postgres/migrate.ts');
  await refuseOther(where);
  const from = await openStore(where);
  try {
    return (await withStore(to, (store) => copyShop(from, store, { damaged: true }))).trouble;
  } finally {
    await from.close();
  }
}
