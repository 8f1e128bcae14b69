/** A whole shop into another database, while nobody else has either of them open. */
import { existsSync, realpathSync } from 'node:fs';
import { checkShop, type ShopCheck } from './check.ts';
import { copyShop } from './copy.ts';
import { hold } from './file.ts';
import { isPostgres, openStore, placeOf } from './open.ts';
import { Damaged, NotKept, type Store } from './port.ts';
import { openHeld } from './sqlite/open.ts';

/**
 * Broken off or followed by changes in `from`, it is run again: then `to` is as `from` is now.
 *
 * @param from a file or a postgres:// address, which is there
 * @param to the same, which is made where it is missing
 * @param allowed.damaged what can't be read is left out and listed
 */
export async function move(from: string, to: string, allowed: { damaged?: boolean } = {}): Promise<ShopCheck> {
  // An address that is written wrong is named nowhere: it may hold a password.
  for (const where of [from, to]) placeOf(where);
  const place = (where: string): string => (isPostgres(where) || !existsSync(where) ? where : realpathSync(where));
  if (!isPostgres(from) && !existsSync(from)) throw new NotKept(`There is no database ${from}.`);
  if (place(from) === place(to)) throw new NotKept('FROM and TO are the same. Nothing was moved.');
  const check = await alone(from, (source) => alone(to, (target) => copied(source, target, allowed.damaged === true)));
  // There a database can't be held: whoever came meanwhile is still there.
  for (const where of [from, to]) if (isPostgres(where)) await refuseInUse(where);
  return check;
}

async function copied(source: Store, target: Store, damaged: boolean): Promise<ShopCheck> {
  const { trouble: left } = await copyShop(source, target, { damaged });
  const check = await checkShop(target);
  const trouble = [...new Set([...left, ...check.trouble])];
  if (trouble.length > 0 && !damaged) throw new Damaged(trouble.join('\n'));
  return { ...check, trouble };
}

async function alone<T>(where: string, work: (store: Store) => Promise<T>): Promise<T> {
  if (isPostgres(where)) await refuseInUse(where);
  // Makes it, with its tables, where it is missing.
  else if (!existsSync(where)) await (await openStore(where)).close();
  const store = await (isPostgres(where) ? openStore(where) : openHeld(hold(where)));
  try {
    return await work(store);
  } finally {
    await store.close();
  }
}

async function refuseInUse(url: string): Promise<void> {
  const { refuseInUse: refuse } = await import('./postgres/alone.ts');
  await refuse(url);
}
