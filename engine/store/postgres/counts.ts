/** Counts of ended jobs, from a table that the database itself keeps beside the list of jobs. */
import { countedJobsSql, countsSql, values } from '../counts.ts';
import type { Store } from '../port.ts';
import type { Link } from './link.ts';
import { type Line, toLine } from './reading.ts';
import { ROW } from './sql.ts';

const mark = (n: number): string => `$${n}`;

export function createCounts(link: Link): Pick<Store, 'counts' | 'countedJobs'> {
  return {
    async counts(by, { from, to, also }) {
      const text = countsSql(also.length, mark);
      const rows = await link.read<[string, string]>(`counts-${also.length}`, text, [by, from, to, ...values(also)]);
      return rows.map(([what, jobs]) => ({ by, what, jobs: Number(jobs) }));
    },
    async countedJobs({ from, to, also: [first, ...rest] }, limit) {
      if (!first) return [];
      const text = countedJobsSql(ROW, rest.length, mark);
      const given = [first.by, from, to, first.what, ...values(rest), limit];
      return (await link.read<Line>(`counted-jobs-${rest.length}`, text, given)).map(toLine);
    },
  };
}
