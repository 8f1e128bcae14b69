/** What a copy takes away again: whatever was removed since in the database that it is a copy of. */
import type { Database } from 'better-sqlite3';
import type { Store } from '../port.ts';
import type { Commits } from './commits.ts';

export function createKept(db: Database, commits: Commits): Pick<Store, 'onlyWords' | 'onlyPhotos'> {
  const keyOf = db.prepare<[string], number>('select key from job where id = ?').pluck();
  const others = 'from words where job = @key and ref not in (select value from json_each(@refs))';
  const notSought = db.prepare(`delete from sought where list = 'job' and id = @job and seq in (select seq ${others})`);
  const noWords = db.prepare(`delete ${others}`);
  const noCard = db.prepare('update board set closed = 0, card = null, review = 0, counts = null where job = ?');
  const noPhotos = db.prepare('delete from photo where hash not in (select value from json_each(?))');
  return {
    onlyWords: (job, refs) =>
      commits.write(() => {
        const key = keyOf.get(job);
        if (key === undefined) return 0;
        const whose = { key, refs: JSON.stringify(refs) };
        notSought.run({ ...whose, job });
        const { changes } = noWords.run(whose);
        if (changes > 0) noCard.run(key);
        return changes;
      }),
    onlyPhotos: (hashes) => commits.write(() => noPhotos.run(JSON.stringify(hashes)).changes),
  };
}
