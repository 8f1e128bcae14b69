/** A shop's record in one SQLite file, which several processes of one machine may have open. */
import { existsSync, mkdirSync } from 'node:fs';
import { dirname, resolve } from 'node:path';
import { setTimeout } from 'node:timers/promises';
import Database from 'better-sqlite3';
import { Kysely, Migrator, SqliteDialect } from 'kysely';
import { NotKept, refuseLater, type Store } from '../port.ts';
import { createBoard, fillBoard } from './board.ts';
import { createCommits } from './commits.ts';
import { createCounts } from './counts.ts';
import { createEnds } from './ends.ts';
import { createForget } from './forget.ts';
import { createJournal } from './journal.ts';
import { createKept } from './kept.ts';
import { MIGRATIONS } from './migrations.ts';
import { createPhotos, fillPhotos } from './photos.ts';
import { createReading } from './reading.ts';
import { createSayings } from './sayings.ts';
import { createShares } from './shares.ts';
import { createShop } from './shop.ts';
import { createSought, fillSought } from './sought.ts';
import { asTrouble, guarded } from './trouble.ts';

/**
 * Opens the file, makes it and its folder where they are missing, and brings its tables up to date.
 * Rejects with NotKept where it can't be written, with Damaged where it is no database.
 *
 * @param options.busyMs how long to wait for another process that is writing, in milliseconds. Nothing else happens in
 *   this process meanwhile, so it is short; a commit takes about one.
 */
export async function openSqlite(file: string, options: { busyMs?: number } = {}): Promise<Store> {
  const db = await guarded(() => {
    makeFolder(dirname(resolve(file)));
    return new Database(file, { timeout: options.busyMs ?? 2000 });
  });
  return openHeld(db);
}
/** The same on a connection that is there already, and that is closed where it can't be opened. */
export async function openHeld(db: Database.Database): Promise<Store> {
  try {
    return await storeOn(db);
  } catch (error) {
    db.close();
    throw asTrouble(error);
  }
}

/** The store on a connection that is already open and from now on belongs to it. */
export async function storeOn(db: Database.Database): Promise<Store> {
  await toWal(db);
  // FULL, because an acknowledged reply survives a power cut; NORMAL would lose the last ones.
  db.pragma('synchronous = full');
  db.pragma('foreign_keys = on');
  // What is removed is overwritten, not only let go: removed words are gone from the file.
  db.pragma('secure_delete = on');
  await migrate(db);
  const commits = createCommits(db);
  const ends = createEnds(db);
  const close = (): void => {
    commits.flush();
    db.close();
  };
  return {
    ...createReading(db, ends),
    ...createBoard(db),
    ...createSought(db),
    ...createShop(db, commits, ends),
    ...createPhotos(db),
    ...createSayings(db).port,
    ...createShares(db, commits),
    ...createCounts(db),
    ...createForget(db, ends),
    ...createKept(db, commits),
    ...createJournal(db, commits, ends),
    close: () => guarded(close),
  };
}

/** Tries for as long as a lock is waited for: SQLite itself does not wait where two switch a new file at one moment. */
async function toWal(db: Database.Database): Promise<void> {
  const until = performance.now() + Number(db.pragma('busy_timeout', { simple: true }));
  for (;;) {
    try {
      if (db.pragma('journal_mode = wal', { simple: true }) === 'wal') return;
      throw new Error(`no WAL mode for ${db.name}`);
    } catch (error) {
      const busy = error instanceof Database.SqliteError && error.code.startsWith('SQLITE_BUSY');
      if (!busy || performance.now() > until) throw error;
    }
    await setTimeout(20);
  }
}

/** Whether its tables are still to be brought up to date. Throws NotKept where a later version has written it. */
export function isBehind(db: Database.Database): boolean {
  const known = `select count(*) from sqlite_schema where type = 'table' and name = 'kysely_migration'`;
  const taken =
    db.prepare(known).pluck().get() === 1 ? db.prepare('select name from kysely_migration').pluck().all() : [];
  refuseLater(taken.map(String), MIGRATIONS);
  return taken.length < Object.keys(MIGRATIONS).length;
}

/** In one immediate transaction of our own: kysely takes no lock on SQLite, and two processes may start at once. */
async function migrate(db: Database.Database): Promise<void> {
  const kysely = new Kysely<unknown>({ dialect: new SqliteDialect({ database: db }) });
  const provider = { getMigrations: async () => MIGRATIONS };
  db.exec('begin immediate');
  isBehind(db);
  const { error } = await new Migrator({ db: kysely, provider, disableTransactions: true }).migrateToLatest();
  if (error !== undefined) throw error;
  fillBoard(db);
  fillSought(db);
  // Asks for the right to write: on a read-only file an immediate transaction is silently one that reads.
  db.exec('delete from meta where key is null; commit');
  fillPhotos(db);
}

/** One folder at a time: Node's own recursive mkdir never returns where a system folder takes no new one. */
function makeFolder(folder: string): void {
  if (existsSync(folder)) return;
  makeFolder(dirname(folder));
  try {
    mkdirSync(folder);
  } catch (cause) {
    // Another process may have made it meanwhile.
    if (!existsSync(folder)) throw new NotKept(`The folder ${folder} can’t be made.`, { cause });
  }
}
