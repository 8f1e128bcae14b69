/** One file that holds a whole shop, made while others go on writing, and checked before it gets its name. */
import { existsSync } from 'node:fs';
import { checkShop, type ShopCheck } from './check.ts';
import { copyShop } from './copy.ts';
import { intoPlace, snapshot, withDraft, withFile, withStore } from './file.ts';
import { isPostgres, openStore } from './open.ts';
import { NotKept } from './port.ts';
import { guarded } from './sqlite/trouble.ts';

/**
 * What is damaged is listed, and the file is made all the same: it holds everything else.
 *
 * @param where the database in use: a file or a postgres:// address
 * @param to the file to make, which must not exist
 */
export async function backup(where: string, to: string): Promise<ShopCheck> {
  if (existsSync(to)) throw new NotKept(`There is a file ${to} already.`);
  return withDraft(to, async (draft) => {
    const left = isPostgres(where) ? await fromPostgres(where, draft) : await snapshot(where, draft).then(() => []);
    const check = await withStore(draft, checkShop);
    // Without a log: the file is all there is of it, and it opens where nothing can be written.
    await guarded(() => withFile(draft, (db) => void db.pragma('journal_mode = delete')));
    intoPlace(draft, to);
    return { ...check, trouble: [...new Set([...left, ...check.trouble])] };
  });
}

/** Job by job: each is a whole beginning of its record, since records only grow. Gives what could not be read. */
async function fromPostgres(where: string, to: string): Promise<readonly string[]> {
  const from = await openStore(where);
  try {
    return (await withStore(to, (store) => copyShop(from, store, { damaged: true }))).trouble;
  } finally {
    await from.close();
  }
}
