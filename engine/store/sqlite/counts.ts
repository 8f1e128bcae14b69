/** Counts of ended jobs, from a table that the database itself keeps beside the list of jobs. */
import type { Database } from 'better-sqlite3';
import { countedJobsSql, countsSql, values } from '../counts.ts';
import type { BoardRow, Counted, Store } from '../port.ts';
import { ROW } from './board.ts';
import { guarded } from './trouble.ts';

const mark = (): string => '?';

export function createCounts(db: Database): Pick<Store, 'counts' | 'countedJobs'> {
  return {
    counts: (by, filter) =>
      guarded(() =>
        db
          .prepare<string[], Pick<Counted, 'what' | 'jobs'>>(countsSql(filter.also.length, mark))
          .all(by, filter.from, filter.to, ...values(filter.also))
          .map((row) => ({ by, ...row })),
      ),
    countedJobs(filter, limit) {
      const [first, ...rest] = filter.also;
      if (!first) return Promise.resolve([]);
      return guarded(() =>
        db
          .prepare<unknown[], Omit<BoardRow, 'closed'> & { readonly closed: number }>(
            countedJobsSql(ROW, rest.length, mark),
          )
          .all(first.by, filter.from, filter.to, first.what, ...values(rest), limit)
          .map((row) => ({ ...row, closed: row.closed === 1 })),
      );
    },
  };
}
