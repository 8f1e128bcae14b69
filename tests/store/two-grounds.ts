/** Two files and a PostgreSQL database of each test's own, and the stores that it opened, closed after it. */
import { afterEach, beforeEach } from 'vitest';
import type { Store } from '../../engine/store/index.ts';
import { type PostgresGround, postgresGround } from './postgres-ground.ts';
import { type SqliteGround, sqliteGround } from './sqlite-ground.ts';

export function twoGrounds(): {
  grounds(): [SqliteGround, SqliteGround];
  postgres(): PostgresGround;
  /** Closed by `closeAll`, at the latest after the test. */
  keep(store: Promise<Store>): Promise<Store>;
  closeAll(): Promise<void>;
} {
  let now: { files: [SqliteGround, SqliteGround]; postgres: PostgresGround } | null = null;
  const opened: Store[] = [];
  const here = () => {
    if (!now) throw new Error('no ground');
    return now;
  };
  const closeAll = async (): Promise<void> => {
    for (const store of opened.splice(0)) await store.close();
  };
  beforeEach(async () => {
    now = { files: [await sqliteGround(), await sqliteGround()], postgres: await postgresGround() };
  });
  afterEach(async () => {
    await closeAll();
    const { files, postgres } = here();
    for (const ground of [...files, postgres]) await ground.remove();
  });
  return {
    grounds: () => here().files,
    postgres: () => here().postgres,
    closeAll,
    async keep(store) {
      opened.push(await store);
      return store;
    },
  };
}
