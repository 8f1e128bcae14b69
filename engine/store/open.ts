/** One way to open either database, by what names it. */
import type { Store } from './port.ts';
import { openSqlite } from './sqlite/open.ts';

export const isPostgres = (where: string): boolean => /^postgres(ql)?:\/\//.test(where);

/** `where` is a postgres:// address or a file. Rejects as the one that it opens does. */
export async function openStore(where: string): Promise<Store> {
  if (!isPostgres(where)) return openSqlite(where);
  // Loaded where it is needed: a shop on one machine starts without it.
  const { openPostgres } = await import('./postgres/open.ts');
  return openPostgres(where);
}

/** The address without its password, for people and logs. */
export const nameOf = (where: string): string => (isPostgres(where) ? where.replace(/:[^:@/]*@/, ':…@') : where);
