/** The reading of entries, and the list of jobs. */

import { countsText } from '../appends.ts';
import type { BoardRow, QueueMark, Store } from '../port.ts';
import { toEntries, toTexts } from '../rows.ts';
import type { Link } from './link.ts';
import { SQL } from './sql.ts';

type Reading = Pick<Store, 'read' | 'readAfter' | 'byClient' | 'jobs' | 'board' | 'queue' | 'saveSummary'>;
export type Line = [
  job: string,
  lastSeq: number,
  updated: string,
  closed: number,
  card: string | null,
  review: number | null,
  counts: string | null,
];
export const toLine = ([job, lastSeq, updated, closed, card, review, counts]: Line): BoardRow => ({
  job,
  lastSeq,
  updated,
  closed: closed === 1,
  card,
  review,
  counts,
});

/** Before every row. */
const START: QueueMark = { review: -1, updated: '', nr: 0 };

export function createReading(link: Link): Reading {
  const readAfter: Store['readAfter'] = async (job, seq) => {
    // Entries first: words that another process adds in between are then too many, never too few.
    const found = toEntries(job, await link.read('entries', SQL.entries, [job, seq]), seq);
    if (found.length === 0) return { entries: found, texts: [] };
    return { entries: found, texts: toTexts(job, await link.read('words', SQL.words, [job, seq])) };
  };
  return {
    read: (job) => readAfter(job, 0),
    readAfter,
    byClient: async (job, client) => toEntries(job, await link.read('by-client', SQL.byClient, [job, client]), null),
    async jobs() {
      const rows = await link.read<[string, number, string]>(
        'jobs',
        `select job.id, e.seq, e.at from job
         cross join lateral (select seq, at from entry where job = job.key order by seq desc limit 1) as e
         order by e.at desc, job.key desc`,
      );
      return rows.map(([job, lastSeq, updated]) => ({ job, lastSeq, updated }));
    },
    async board(closed) {
      const open = await link.read<Line>('board-open', SQL.boardOpen);
      const done = await link.read<Line>('board-closed', SQL.boardClosed, [closed]);
      return [...open, ...done].map(toLine).sort((a, b) => (a.updated < b.updated ? 1 : -1));
    },
    async queue(after, limit) {
      const { review, updated, nr } = after ?? START;
      const rows = await link.read<[...Line, number]>('queue', SQL.queue, [review, updated, nr, limit]);
      return rows.map(([job, last, at, closed, card, place, counts, key]) => ({
        ...toLine([job, last, at, closed, card, place, counts]),
        review: place ?? 0,
        nr: key,
      }));
    },
    async saveSummary(job, seq, { closed, card, review, counts }) {
      await link.again('save-summary', SQL.saveSummary, [
        closed ? 1 : 0,
        card,
        review ?? null,
        countsText(counts),
        job,
        seq,
      ]);
    },
  };
}

/**
 * Adds the jobs that the list lacks, those that end with a signature as closed. Counts first: at most starts it lacks none,
 * and then nothing is written.
 */
export async function fillBoard(link: Link): Promise<void> {
  const [same] = await link.read<[boolean]>(
    'board-is-whole',
    'select (select count(*) from board) = (select count(*) from job)',
  );
  if (same?.[0] === true) return;
  await link.again(
    'fill-board',
    `insert into board (job, last_seq, updated, closed, card, review)
     select job.key, e.seq, e.at, case e.kind when 'signed' then 1 else 0 end, null,
       0 from job
     cross join lateral (select seq, at, kind from entry where job = job.key order by seq desc limit 1) as e
     on conflict do nothing`,
  );
}
