/** Brings the tables up to date, where they are not, and takes on the application's role, where there is one. */
import { Kysely, Migrator, PostgresDialect } from 'kysely';
import type pg from 'pg';
import { NotKept, refuseLater } from '../port.ts';
import { APP_ROLE, createLink } from './link.ts';
import { MIGRATIONS } from './migrations.ts';
import { asTrouble } from './trouble.ts';

/** The names of the steps that were taken, or null where there are no tables yet. */
async function taken(pool: pg.Pool): Promise<string[] | null> {
  const known = await pool.query<{ there: boolean }>(`select to_regclass('kysely_migration') is not null as there`);
  if (known.rows[0]?.there !== true) return null;
  const { rows } = await pool.query<{ name: string }>('select name from kysely_migration order by name');
  return rows.map(({ name }) => name);
}

export async function migrate(pool: pg.Pool): Promise<void> {
  const names = Object.keys(MIGRATIONS);
  const before = await taken(pool);
  refuseLater(before ?? [], MIGRATIONS);
  if (before?.length === names.length) return;
  // kysely takes a lock in the database, so that of several processes one migrates and the others find it done.
  const db = new Kysely<unknown>({ dialect: new PostgresDialect({ pool: lent(pool) }) });
  const provider = { getMigrations: async () => MIGRATIONS };
  const { error } = await new Migrator({ db, provider }).migrateToLatest();
  if (isNoRight(error))
    throw new NotKept('The tables are of another version. Start once as the owner of the database.', { cause: error });
  if (error !== undefined) throw error;
}

/** For whoever only reads: the tables stay as they are. Rejects with NotKept where they are not of this version. */
export async function refuseOther(url: string): Promise<void> {
  const link = createLink(url, { connections: 1, statementMs: 10_000 });
  try {
    const before = await taken(link.pool);
    if (before === null) throw new NotKept('There are no tables of nocool in this database.');
    refuseLater(before, MIGRATIONS);
    if (before.length < Object.keys(MIGRATIONS).length)
      throw new NotKept(
        'The tables are of an earlier version, and are left so. Start nocool once: it brings them up to date.',
      );
  } catch (error) {
    throw asTrouble(error);
  } finally {
    await link.end();
  }
}

/** The pool stays ours: kysely may not end it. */
const lent = (pool: pg.Pool) => ({ connect: () => pool.connect(), end: async () => undefined }) as unknown as pg.Pool;
const isNoRight = (error: unknown): boolean =>
  typeof error === 'object' && error !== null && 'code' in error && error.code === '42501';

/** Whether this login may act as the application's role: it then does, on every connection. */
export async function mayActAsApp(pool: pg.Pool): Promise<boolean> {
  const { rows } = await pool.query<{ may: boolean }>(
    `select exists (select from pg_roles where rolname = $1 and pg_has_role(current_user, oid, 'member')
       and has_table_privilege(oid, 'entry', 'insert')) as may`,
    [APP_ROLE],
  );
  return rows[0]?.may === true;
}
