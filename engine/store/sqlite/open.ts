/** A shop's record in one SQLite file, which several processes of one machine may have open. */
import { mkdirSync } from 'node:fs';
import { dirname } from 'node:path';
import Database from 'better-sqlite3';
import { Kysely, Migrator, SqliteDialect } from 'kysely';
import type { Store } from '../port.ts';
import { createJournal } from './journal.ts';
import { MIGRATIONS } from './migrations.ts';
import { createReading } from './reading.ts';
import { createShop } from './shop.ts';
import { asTrouble, guarded } from './trouble.ts';

/**
 * Opens the file, makes it and its folder where they are missing, and brings its tables up to date.
 * Rejects with NotKept where it can't be written, with Damaged where it is no database.
 *
 * @param options.busyMs how long to wait for another process that is writing, in milliseconds. Nothing else happens in
 *   this process meanwhile, so it is short; a commit takes about one.
 */
export async function openSqlite(file: string, options: { busyMs?: number } = {}): Promise<Store> {
  mkdirSync(dirname(file), { recursive: true });
  const db = await guarded(() => new Database(file, { timeout: options.busyMs ?? 2000 }));
  try {
    if (db.pragma('journal_mode = wal', { simple: true }) !== 'wal')
      throw new Error(`${file} can't be kept in WAL mode`);
    // FULL, because an acknowledged reply survives a power cut; NORMAL would lose the last ones.
    db.pragma('synchronous = full');
    db.pragma('foreign_keys = on');
    await migrate(db);
    const journal = createJournal(db);
    return {
      ...createReading(db),
      ...createShop(db),
      create: journal.create,
      append: journal.append,
      watch: journal.watch,
      close: () =>
        guarded(() => {
          journal.flush();
          db.close();
        }),
    };
  } catch (error) {
    db.close();
    throw asTrouble(error);
  }
}

/** In one immediate transaction of our own: kysely takes no lock on SQLite, and two processes may start at once. */
async function migrate(db: Database.Database): Promise<void> {
  const kysely = new Kysely<unknown>({ dialect: new SqliteDialect({ database: db }) });
  const provider = { getMigrations: async () => MIGRATIONS };
  db.exec('begin immediate');
  const { error } = await new Migrator({ db: kysely, provider, disableTransactions: true }).migrateToLatest();
  if (error !== undefined) throw error;
  db.exec('commit');
}
