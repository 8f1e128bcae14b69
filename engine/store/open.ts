/** One way to open either database, by what names it. */
import { NotKept, type Store } from './port.ts';
import { openSqlite } from './sqlite/open.ts';

export const isPostgres = (where: string): boolean => /^postgres(ql)?:\/\//.test(where);

/**
 * `where` itself, if it can be a database. An address that is written wrong would else become a file of that name, and
 * its password the name of a folder. Throws NotKept.
 */
export function placeOf(where: string): string {
  if (isPostgres(where) || !/:\/\/|^["']/.test(where)) return where;
  throw new NotKept(
    'The database is named by a file, or by an address that begins with postgres:// and stands in no quotes. What is set is neither.',
  );
}

/** `where` is a postgres:// address or a file. Rejects as the one that it opens does, or with NotKept. */
export async function openStore(named: string): Promise<Store> {
  const where = placeOf(named);
  if (!isPostgres(where)) return openSqlite(where);
  // Loaded where it is needed: a shop on one machine starts without it.
  const { openPostgres } = await import('./postgres/open.ts');
  return openPostgres(where);
}

/**
 * The address without its password, for people and logs. A password may hold any sign, so what stands between the first
 * colon and the last @ is left out, and so are parameters.
 */
export const nameOf = (where: string): string =>
  isPostgres(where) ? where.replace(/(?<=:\/\/[^:@/?]*):.*@/s, ':…@').replace(/\?.*$/s, '?…') : where;
