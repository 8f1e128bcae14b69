/** Photos by the hash of their bytes, in the same file: one backup holds all. */
import type { Database } from 'better-sqlite3';
import { photoHash, soundPhoto } from '../photo-hash.ts';
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
