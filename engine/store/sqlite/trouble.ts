/** What SQLite complains about, told apart: trouble of the machine, a damaged file, a bug. */
import Database from 'better-sqlite3';
import { Damaged, NotKept } from '../port.ts';

/** By primary result code; an extended one (SQLITE_IOERR_FSYNC) begins with it. */
const NOT_KEPT: Record<string, string> = {
  BUSY: 'The record is locked by another program.',
  LOCKED: 'The record is locked by another program.',
  FULL: 'The disk is full.',
  READONLY: 'The record is read-only.',
  PERM: 'The record can’t be opened for writing.',
  AUTH: 'The record can’t be opened for writing.',
  CANTOPEN: 'The record can’t be opened.',
  IOERR: 'The disk reports an error.',
  NOMEM: 'The server is out of memory.',
  NOLFS: 'The disk can’t hold a file this large.',
  PROTOCOL: 'The record is locked by another program.',
};
const DAMAGED = new Set(['CORRUPT', 'NOTADB']);

const codeOf = (error: unknown): string =>
  error instanceof Database.SqliteError ? (error.code.split('_')[1] ?? '') : '';

/** True where the whole commit is lost, not only the statement: SQLite may have rolled back on its own. */
export const isTrouble = (error: unknown): boolean =>
  Object.hasOwn(NOT_KEPT, codeOf(error)) || DAMAGED.has(codeOf(error));

/** The error as the port names it; a bug stays what it is. */
export function asTrouble(error: unknown): unknown {
  const code = codeOf(error);
  if (DAMAGED.has(code)) return new Damaged('The record’s file is damaged.', null, null, { cause: error });
  const why = Object.hasOwn(NOT_KEPT, code) ? NOT_KEPT[code] : undefined;
  return why === undefined ? error : new NotKept(`${why} Nothing was kept. Send it again.`, { cause: error });
}

/** Runs one piece of work of the database; rejects with the port's errors. */
export async function guarded<T>(work: () => T): Promise<T> {
  try {
    return work();
  } catch (error) {
    throw asTrouble(error);
  }
}
