/** Links that open one report. */
import type { Database } from 'better-sqlite3';
import type { Share, Store } from '../port.ts';
import type { Commits } from './commits.ts';
import { guarded } from './trouble.ts';

export type Shares = Pick<Store, 'saveShare' | 'share' | 'shares' | 'endShare'>;
const ROW = 'hash, job, audience, "by", made, expires';

export function createShares(db: Database, commits: Commits): Shares {
  const save = putShare(db);
  const one = db.prepare<[string, string], Share>(`select ${ROW} from share where hash = ? and expires > ?`);
  const ofJob = db.prepare<[string, string], Share>(
    `select ${ROW} from share where job = ? and expires > ? order by made desc, hash`,
  );
  const end = db.prepare('delete from share where hash = ?');
  return {
    saveShare: (share) => commits.write(() => save(share)),
    share: (hash, now) => guarded(() => one.get(hash, now) ?? null),
    shares: (job, now) => guarded(() => ofJob.all(job, now)),
    endShare: (hash) => commits.write(() => void end.run(hash)),
  };
}

/** One more, as it is; the same again has no effect. */
export function putShare(db: Database): (share: Share) => void {
  const save = db.prepare(`insert into share (${ROW}) values (?, ?, ?, ?, ?, ?) on conflict do nothing`);
  return ({ hash, job, audience, by, made, expires }) => void save.run(hash, job, audience, by, made, expires);
}
export const everyShare = (db: Database): Share[] =>
  db.prepare<[], Share>(`select ${ROW} from share order by hash`).all();
