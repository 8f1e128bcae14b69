/** A fresh SQLite file in a folder of its own, on the real disk. */
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import Database from 'better-sqlite3';
import { openSqlite } from '../../engine/store/index.ts';
import type { Ground } from './ground.ts';

export interface SqliteGround extends Ground {
  readonly folder: string;
  readonly file: string;
}

export async function sqliteGround(): Promise<SqliteGround> {
  const folder = await mkdtemp(join(tmpdir(), 'nocool-'));
  const file = join(folder, 'shop.db');
  return {
    folder,
    file,
    open: () => openSqlite(file),
    async sql(statement) {
      const db = new Database(file);
      try {
        return db.exec(statement);
      } finally {
        db.close();
      }
    },
    remove: () => rm(folder, { recursive: true }),
  };
}
