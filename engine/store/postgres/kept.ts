/** What a copy takes away again: whatever was removed since in the database that it is a copy of. */
import type { Store } from '../port.ts';
import type { Link } from './link.ts';

const OTHERS = 'from words where job = (select key from job where id = $1) and ref <> all ($2::text[])';

export function createKept(link: Link): Pick<Store, 'onlyWords' | 'onlyPhotos'> {
  return {
    async onlyWords(job, refs) {
      const values = [job, refs];
      const [, , words] = await link.together([
        {
          text: `delete from sought where list = 'job' and id = $1 and seq in (select seq ${OTHERS})`,
          values,
        },
        {
          text: `update board set closed = 0, card = null, review = 0, counts = null
            where job = (select key from job where id = $1) and exists (select ${OTHERS})`,
          values,
        },
        { text: `delete ${OTHERS}`, values },
      ]);
      return words ?? 0;
    },
    async onlyPhotos(hashes) {
      const [gone] = await link.together([
        { text: 'delete from photo where hash <> all ($1::text[])', values: [hashes] },
      ]);
      return gone ?? 0;
    },
  };
}
