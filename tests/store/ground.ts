/** What a contract stands on: a fresh database for each test, and stores on it that are closed afterwards. */
import { afterEach, beforeEach } from 'vitest';
import type { Store } from '../../engine/store/port.ts';

/** One fresh database. */
export interface Ground {
  /** A store on it; each call is a connection of its own. */
  open(): Promise<Store>;
  /** Past the port, as somebody with the database's own tools would. */
  sql(statement: string): Promise<unknown>;
  remove(): Promise<void>;
}

export function onGround(makeGround: () => Promise<Ground>) {
  let ground: Ground;
  const opened = new Set<Store>();
  beforeEach(async () => {
    ground = await makeGround();
  });
  const close = async (store: Store): Promise<void> => {
    opened.delete(store);
    await store.close();
  };
  afterEach(async () => {
    await Promise.all([...opened].map(close));
    await ground.remove();
  });
  return {
    async open(): Promise<Store> {
      const store = await ground.open();
      opened.add(store);
      return store;
    },
    close,
    sql: (statement: string): Promise<unknown> => ground.sql(statement),
  };
}
