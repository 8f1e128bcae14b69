/** The shop's database, for a command that reads one: it never makes one where there is none. */
import { existsSync } from 'node:fs';
import { isPostgres, NotKept, openStore, placeOf, type Store } from '../store/index.ts';

type Env = Readonly<Record<string, string | undefined>>;
/** Named on the command line, by the environment, or where `npm start` keeps it. Throws NotKept where that can be none. */
export const databaseOf = (env: Env, named: string | null): string =>
  placeOf(named ?? (env.DATABASE_URL || fileOf(env)));
const fileOf = (env: Env): string => env.NOCOOL_DB || 'data/nocool.db';
/** The file beside which the shop's key lies: with PostgreSQL, where the database would be without it. */
export const keptBeside = (env: Env, database: string): string => (isPostgres(database) ? fileOf(env) : database);

/** Rejects with NotKept where there is none. */
export async function openExisting(database: string): Promise<Store> {
  if (!isPostgres(database) && !existsSync(database)) throw new NotKept(`There is no database ${database}.`);
  return openStore(database);
}
