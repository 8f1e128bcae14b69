/** The list of jobs, from a table that is derived from the entries and may be thrown away. */
import type { Database } from 'better-sqlite3';
import { countsText } from '../appends.ts';
import type { BoardRow, QueueMark, QueueRow, Store } from '../port.ts';
import { guarded } from './trouble.ts';

const LINE =
  'job.id as job, board.last_seq as lastSeq, board.updated, board.closed, board.card, board.review, board.counts';
const FROM = 'from board join job on job.key = board.job';
export const ROW = `${LINE} ${FROM}`;
const QUEUED = `${LINE}, board.job as nr ${FROM}`;

/** Every query that runs at each page or turn; a test asks the database that none goes through a whole table. */
export const BOARD_SQL = {
  open: `select ${ROW} where closed = 0 order by updated desc, board.job desc`,
  closed: `select ${ROW} where closed = 1 order by updated desc, board.job desc limit ?`,
  queue: `select ${QUEUED}
    where review is not null
    and (review, updated, board.job) > (?, ?, ?) order by review, updated, board.job limit ?`,
  save: `update board set closed = ?, card = ?, review = ?, counts = ? where job = (select key from job where id = ?) and last_seq = ?`,
} as const;

type Raw<T extends BoardRow> = Omit<T, 'closed'> & { readonly closed: number };
type Row = Raw<BoardRow>;
/** Before every row. */
const START: QueueMark = { review: -1, updated: '', nr: 0 };

export function createBoard(db: Database): Pick<Store, 'board' | 'queue' | 'saveSummary'> {
  const open = db.prepare<[], Row>(BOARD_SQL.open);
  const closed = db.prepare<[number], Row>(BOARD_SQL.closed);
  const queue = db.prepare<[number, string, number, number], Raw<QueueRow>>(BOARD_SQL.queue);
  const save = db.prepare(BOARD_SQL.save);
  return {
    board: (last) =>
      guarded(() =>
        [...open.all(), ...closed.all(last)]
          .map((row) => ({ ...row, closed: row.closed === 1 }))
          .sort((a, b) => (a.updated < b.updated ? 1 : -1)),
      ),
    queue: (after, limit) =>
      guarded(() => {
        const { review, updated, nr } = after ?? START;
        return queue.all(review, updated, nr, limit).map((row) => ({ ...row, closed: row.closed === 1 }));
      }),
    saveSummary: (job, seq, { closed: done, card, review, counts }) =>
      guarded(() => void save.run(done ? 1 : 0, card, review ?? null, countsText(counts), job, seq)),
  };
}

/**
 * Adds the jobs that the board lacks, those that end with a signature as closed. Counts first: at most starts it lacks none,
 * and then nothing is written.
 */
export function fillBoard(db: Database): void {
  const count = (table: string): unknown => db.prepare(`select count(*) from ${table}`).pluck().get();
  if (count('board') === count('job')) return;
  db.exec(`insert or ignore into board (job, last_seq, updated, closed, card, review)
    select job.key, entry.seq, entry.at, entry.kind = 'signed', null, 0 from job
    join entry on entry.job = job.key and entry.seq = (select max(seq) from entry where entry.job = job.key)`);
}
