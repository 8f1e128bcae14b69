/**
 * Where records end, as far as this connection knows, so that a turn needn't ask the tables whether another process has
 * gone on with its job.
 */
import type { Database } from 'better-sqlite3';
import { keepLatest } from '../../latest.ts';

export interface Ends {
  /** SQLite's data_version: another one after each commit of another connection, the same after all of our own. */
  version(): number | null;
  /** Nothing stands behind `seq`. False also where that is not known. */
  isEnd(job: string, seq: number): boolean;
  /** Read or written. `at`: the version as it was before, so that what came in between makes it doubtful. */
  set(job: string, seq: number, at: number | null): void;
}
/** More than are kept at hand. */
const KEPT = 1_000;

export function createEnds(db: Database): Ends {
  const asked = db.prepare<[], number>('pragma data_version').pluck();
  let now: { readonly at: number | null } | null = null;
  let ends = new Map<string, number>();
  let of: number | null = null;

  /** Once within a turn of the event loop: all that is asked in it is asked at the same moment. */
  function version(): number | null {
    if (now) return now.at;
    now = { at: asked.get() ?? null };
    setImmediate(() => {
      now = null;
    });
    return now.at;
  }
  /** What another connection has written makes all of it doubtful. */
  function known(): Map<string, number> {
    const at = version();
    if (at === null || at !== of) ends = new Map();
    of = at;
    return ends;
  }
  return {
    version,
    isEnd: (job, seq) => known().get(job) === seq,
    set(job, seq, at) {
      const all = known();
      if (at !== null && at === of) keepLatest(all, job, seq, KEPT);
    },
  };
}
