/** The shop's database, for a command that reads one: it never makes one where there is none. */
import { existsSync } from 'node:fs';
import { NotKept, openSqlite, type Store } from '../store/index.ts';

type Env = Readonly<Record<string, string | undefined>>;
/** Named on the command line, by the environment, or where `npm start` keeps it. */
export const databaseOf = (env: Env, named: string | null): string => named ?? (env.NOCOOL_DB || 'data/nocool.db');

/** Rejects with NotKept where there is none. */
export async function openExisting(database: string): Promise<Store> {
  if (!existsSync(database)) throw new NotKept(`There is no database ${database}.`);
  return openSqlite(database);
}
