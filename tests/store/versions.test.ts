/** A database of another version: a later one is refused in a sentence, an earlier one is backed up as it is. */
import Database from 'better-sqlite3';
import { Kysely, Migrator, PostgresDialect, SqliteDialect } from 'kysely';
import pg from 'pg';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { backup } from '../../engine/store/backup.ts';
import { NotKept, openStore } from '../../engine/store/index.ts';
import { MIGRATIONS as OF_POSTGRES } from '../../engine/store/postgres/migrations.ts';
import { restore } from '../../engine/store/restore.ts';
import { MIGRATIONS as OF_SQLITE } from '../../engine/store/sqlite/migrations.ts';
import { newDatabase } from './postgres-ground.ts';
import { type SqliteGround, sqliteGround } from './sqlite-ground.ts';

let ground: SqliteGround;
beforeEach(async () => {
  ground = await sqliteGround();
});
afterEach(() => ground.remove());
const fail = (work: Promise<unknown>): Promise<unknown> =>
  work.then(
    () => 'no error',
    (error: unknown) => error,
  );
const JOB = `insert into job (id) values ('old');
  insert into entry (job, seq, v, kind, "by", at, body, prev, hash) select key, 1, 1, 'noted', 'ines', '2026', '{}', '', '' from job`;

/** As the version before this one left it, with a job. */
async function before(dialect: SqliteDialect | PostgresDialect, all: typeof OF_SQLITE): Promise<void> {
  const db = new Kysely<unknown>({ dialect });
  const migrations = Object.fromEntries(Object.entries(all).slice(0, -1));
  const provider = { getMigrations: async () => migrations };
  expect((await new Migrator({ db, provider }).migrateToLatest()).error).toBeUndefined();
  await db.destroy();
}
const steps = (file: string): unknown => {
  const db = new Database(file);
  try {
    return db.prepare('select count(*) from kysely_migration').pluck().get();
  } finally {
    db.close();
  }
};

test('a SQLite shop of an earlier version is backed up as it is, and checked', async () => {
  await before(new SqliteDialect({ database: new Database(ground.file) }), OF_SQLITE);
  await ground.sql(JOB);
  const file = `${ground.folder}/backup.db`;
  expect(await backup(ground.file, file)).toMatchObject({ jobs: 1, trouble: [expect.stringContaining('job old')] });
  const all = Object.keys(OF_SQLITE).length;
  expect([steps(ground.file), steps(file)]).toEqual([all - 1, all - 1]);
  await restore(file, `${ground.folder}/new.db`, new Date(), { damaged: true });
  expect([steps(`${ground.folder}/new.db`), steps(file)]).toEqual([all, all - 1]);
});

test('a PostgreSQL shop of an earlier version stays as it is: that is said', async () => {
  const url = await newDatabase();
  await before(new PostgresDialect({ pool: new pg.Pool({ connectionString: url }) }), OF_POSTGRES);
  const error = await fail(backup(url, `${ground.folder}/backup.db`));
  expect(error).toBeInstanceOf(NotKept);
  expect(String(error)).toContain('of an earlier version');
  const client = new pg.Client({ connectionString: url });
  await client.connect();
  const { rows } = await client.query('select name from kysely_migration');
  await client.end();
  expect(rows).toHaveLength(Object.keys(OF_POSTGRES).length - 1);
});

test.each(['SQLite', 'PostgreSQL'])('what a later version wrote in %s is refused, and left alone', async (which) => {
  const where = which === 'SQLite' ? ground.file : await newDatabase();
  await (await openStore(where)).close();
  const later = `insert into kysely_migration values ('999-later', '2027-01-01T00:00:00.000Z')`;
  if (which === 'SQLite') await ground.sql(later);
  else {
    const client = new pg.Client({ connectionString: where });
    await client.connect();
    await client.query(later);
    await client.end();
  }
  const file = `${ground.folder}/backup.db`;
  for (const work of [() => openStore(where), () => backup(where, file)]) {
    const error = await fail(work());
    expect(error).toBeInstanceOf(NotKept);
    expect(String(error)).toContain('A later version of nocool has written this database: 999-later.');
  }
  if (which === 'SQLite')
    expect(await fail(restore(where, `${ground.folder}/new.db`, new Date()))).toBeInstanceOf(NotKept);
});
