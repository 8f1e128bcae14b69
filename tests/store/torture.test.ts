/** A short form of `npm run torture`, which runs 200 rounds on SQLite and 50 on PostgreSQL, with the database killed too. */
import { expect, test } from 'vitest';
import { openStore } from '../../engine/store/index.ts';
import { postgresGround } from './postgres-ground.ts';
import { startPostgres } from './postgres-server.ts';
import { sqliteGround } from './sqlite-ground.ts';
import { type Tortured, torture } from './torture.ts';

const LONG = process.env.TORTURE === 'long';
const HOUR = 3_600_000;

function report(where: string, rounds: number, { replies, kills, resent }: Tortured): void {
  if (LONG)
    process.stdout.write(`${where}: ${rounds} rounds, ${kills} kills, ${replies} replies, ${resent} sent again\n`);
}

test(
  'SQLite: processes killed under load lose no acknowledged reply and double none',
  async () => {
    const ground = await sqliteGround();
    const rounds = LONG ? 200 : 2;
    const done = await torture(ground.file, () => ground.open(), rounds, LONG ? Date.now() : 7);
    report('SQLite', rounds, done);
    await ground.remove();
    expect(done.wrong).toEqual([]);
    expect(done.replies).toBeGreaterThan(10);
  },
  HOUR,
);

test(
  'PostgreSQL: processes killed under load lose no acknowledged reply and double none',
  async () => {
    if (!LONG) {
      const ground = await postgresGround();
      const done = await torture(ground.url, () => ground.open(), 2, 11);
      await ground.remove();
      expect(done.wrong).toEqual([]);
      expect(done.replies).toBeGreaterThan(10);
      return;
    }
    const server = await startPostgres();
    try {
      const where = `${server.url}postgres`;
      const done = await torture(
        where,
        () => openStore(where),
        50,
        Date.now(),
        () => server.crash(),
      );
      report('PostgreSQL', 50, done);
      expect(done.wrong).toEqual([]);
    } finally {
      await server.stop();
    }
  },
  HOUR,
);
