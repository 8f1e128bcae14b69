/** The reading of entries. */
import type { Database } from 'better-sqlite3';
import { Damaged, type JobRow, type Store } from '../port.ts';
import { ENTRY_COLUMNS, toEntries, toTexts, WORDS_COLUMNS } from '../rows.ts';
import type { Ends } from './ends.ts';
import { guarded } from './trouble.ts';

const OF_JOB = 'where job = (select key from job where id = ?)';

export function createReading(db: Database, ends: Ends): Pick<Store, 'read' | 'readAfter' | 'byClient' | 'jobs'> {
  const entries = db.prepare(`select ${ENTRY_COLUMNS} from entry ${OF_JOB} and seq > ? order by seq`).raw();
  const words = db.prepare(`select ${WORDS_COLUMNS} from words ${OF_JOB} and seq > ? order by rowid`).raw();
  // A job has some tens of entries: going through them costs less than one more index on every append.
  const byClient = db.prepare(`select ${ENTRY_COLUMNS} from entry ${OF_JOB} and client = ? order by seq`).raw();
  const jobs = db.prepare<[], JobRow>(`
    select job.id as job, entry.seq as lastSeq, entry.at as updated from job
    join entry on entry.job = job.key and entry.seq = (select max(seq) from entry where entry.job = job.key)
    order by updated desc, entry.rowid desc`);

  const readAfter: Store['readAfter'] = (job, seq) =>
    ofJob(job, () => {
      const at = ends.version();
      if (seq > 0 && ends.isEnd(job, seq)) return { entries: [], texts: [] };
      // Entries first: words that another process adds in between are then too many, never too few.
      const found = toEntries(job, entries.all(job, seq), seq);
      if (seq + found.length > 0) ends.set(job, seq + found.length, at);
      return { entries: found, texts: found.length === 0 ? [] : toTexts(job, words.all(job, seq)) };
    });
  return {
    read: (job) => readAfter(job, 0),
    readAfter,
    byClient: (job, client) => ofJob(job, () => toEntries(job, byClient.all(job, client), null)),
    jobs: () => guarded(() => jobs.all()),
  };
}

/** A damaged page of the file is said of the job that was to be read from it: the others are readable. */
async function ofJob<T>(job: string, work: () => T): Promise<T> {
  return guarded(work).catch((error: unknown) => {
    if (error instanceof Damaged && error.job === null)
      throw new Damaged('A part of the file that holds this record is damaged.', job, null, { cause: error });
    throw error;
  });
}
