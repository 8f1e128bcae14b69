/** Photos by the hash of their bytes, in the same file: one backup holds all. */
import { type Database, SqliteError } from 'better-sqlite3';
import { photoHash, soundPhoto } from '../photo-hash.ts';
import { JOBS_AT_ONCE, NAMING, namedIn, PHOTOS_FILLED } from '../photo-jobs.ts';
import type { Store } from '../port.ts';
import { guarded } from './trouble.ts';

export function createPhotos(db: Database): Pick<Store, 'savePhoto' | 'photo' | 'photos'> {
  // Asks first: the trigger against replacing strikes before `on conflict` would.
  const save = db.prepare<{ hash: string; bytes: Buffer }>(`insert into photo (hash, bytes) select @hash, @bytes
    where not exists (select 1 from photo where hash = @hash)`);
  const one = db.prepare<[string], Buffer>('select bytes from photo where hash = ?').pluck();
  const all = db.prepare<[], string>('select hash from photo order by hash').pluck();
  return {
    savePhoto: (bytes) =>
      guarded(() => {
        const hash = photoHash(bytes);
        save.run({ hash, bytes: Buffer.from(bytes) });
        return hash;
      }),
    photo: (hash) =>
      guarded(() => {
        const bytes = one.get(hash);
        return bytes === undefined ? null : soundPhoto(hash, new Uint8Array(bytes));
      }),
    photos: () => guarded(() => all.all()),
  };
}

/**
 * Once, for a shop that was kept before it was written down which jobs name a photo. Outside of a transaction, since within
 * one SQLite writes nothing more once it has met a torn page: so such a page takes the jobs that are on it, and no others.
 */
export function fillPhotos(db: Database): void {
  if (db.prepare('select 1 from meta where key = ?').get(PHOTOS_FILLED) !== undefined) return;
  const last = db.prepare<[], number | null>('select max(key) from job').pluck().get() ?? 0;
  const naming = db
    .prepare<[number, number], [number, number, string]>(
      `select job, seq, body from entry where job > ? and job <= ? and ${NAMING}`,
    )
    .raw();
  const add = db.prepare(`insert into photo_of_job (photo, job, seq) values (?, ?, ?)
    on conflict do update set seq = excluded.seq where excluded.seq > seq`);
  const addAll = db.transaction((rows: readonly [string, number, number][]) => {
    for (const row of rows) add.run(...row);
  }).immediate;
  const look = (from: number, to: number): void => {
    let rows: [number, number, string][];
    try {
      rows = naming.all(from, to);
    } catch (error) {
      if (!(error instanceof SqliteError) || !error.code.startsWith('SQLITE_CORRUPT')) throw error;
      const middle = Math.floor((from + to) / 2);
      if (middle === from) return;
      look(from, middle);
      look(middle, to);
      return;
    }
    if (rows.length > 0) addAll(namedIn(rows));
  };
  for (let from = 0; from < last; from += JOBS_AT_ONCE) look(from, from + JOBS_AT_ONCE);
  db.prepare(`insert into meta (key, value) values (?, '1') on conflict do nothing`).run(PHOTOS_FILLED);
}
