/** One file that holds a whole shop, made while others go on writing, and checked before it gets its name. */
import { existsSync } from 'node:fs';
import { checkShop, type ShopCheck } from './check.ts';
import { copyShop } from './copy.ts';
import { intoPlace, snapshot, withDraft, withFile, withStore } from './file.ts';
import { isPostgres, openStore } from './open.ts';
import { Damaged, NotKept } from './port.ts';
import { guarded } from './sqlite/trouble.ts';

/**
 * @param where the database in use: a file or a postgres:// address
 * @param to the file to make, which must not exist
 */
export async function backup(where: string, to: string): Promise<ShopCheck> {
  if (existsSync(to)) throw new NotKept(`There is a file ${to} already.`);
  return withDraft(to, async (draft) => {
    if (isPostgres(where)) await fromPostgres(where, draft);
    else await guarded(() => snapshot(where, draft));
    const check = await withStore(draft, checkShop);
    if (check.trouble.length > 0) throw new Damaged(check.trouble.join('\n'));
    // Without a log: the file is all there is of it, and it opens where nothing can be written.
    await guarded(() => withFile(draft, (db) => void db.pragma('journal_mode = delete')));
    intoPlace(draft, to);
    return check;
  });
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
