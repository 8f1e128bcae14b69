/** Photos by the hash of their bytes. */
import { photoHash, soundPhoto } from '../photo-hash.ts';
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
