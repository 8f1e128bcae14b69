/** Photos by the hash of their bytes. */
import { photoHash, soundPhoto } from '../photo-hash.ts';
import { JOBS_AT_ONCE, NAMING, namedIn, PHOTOS_FILLED } from '../photo-jobs.ts';
import type { Store } from '../port.ts';
import type { Link } from './link.ts';

export function createPhotos(link: Link): Pick<Store, 'savePhoto' | 'photo' | 'photos'> {
  return {
    async savePhoto(bytes) {
      const hash = photoHash(bytes);
      const text = 'insert into photo (hash, bytes) values ($1, $2) on conflict do nothing';
      await link.again('save-photo', text, [hash, Buffer.from(bytes)]);
      return hash;
    },
    async photo(hash) {
      const [row] = await link.read<[Buffer]>('photo', 'select bytes from photo where hash = $1', [hash]);
      return row === undefined ? null : soundPhoto(hash, new Uint8Array(row[0]));
    },
    photos: async () =>
      (await link.read<[string]>('photos', 'select hash from photo order by hash')).map(([hash]) => hash),
  };
}

/**
 * Once, for a shop that was kept before it was written down which jobs name a photo. Of several processes that do it at one
 * moment, all write the same.
 */
export async function fillPhotos(link: Link): Promise<void> {
  const [done] = await link.read('photos-filled', 'select 1 from meta where key = $1', [PHOTOS_FILLED]);
  if (done) return;
  await link.long(async (ask) => {
    const { rows: last } = await ask<[number | null]>('select max(key) from job', []);
    for (let from = 0; from < (last[0]?.[0] ?? 0); from += JOBS_AT_ONCE) {
      const { rows } = await ask<[number, number, string]>(
        `select job, seq, body from entry where job > $1 and job <= $2 and ${NAMING}`,
        [from, from + JOBS_AT_ONCE],
      );
      const named = namedIn(rows);
      if (named.length > 0)
        await ask(
          `insert into photo_of_job (photo, job, seq) select * from unnest($1::text[], $2::int[], $3::int[])
           on conflict (photo, job) do update set seq = excluded.seq where excluded.seq > photo_of_job.seq`,
          [0, 1, 2].map((column) => named.map((row) => row[column])),
        );
    }
    await ask(`insert into meta (key, value) values ($1, '1') on conflict do nothing`, [PHOTOS_FILLED]);
  });
}
