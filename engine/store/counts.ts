/** The two questions about counts, as both databases are asked. `mark(n)` is how the n-th value is written. */
import type { Count } from './port.ts';

export type Mark = (n: number) => string;
const ALSO = 2;

/** Values: by, from, to, then `by, what` of each filter. */
export const countsSql = (also: number, mark: Mark): string =>
  `select tally.what, count(*) as jobs from tally
    where tally.kind = ${mark(1)} and tally.day between ${mark(2)} and ${mark(3)}${within(also, 3, mark)}
    group by tally.what order by jobs desc, tally.what`;

/** Values: by, from, to, what, then `by, what` of each other filter, then how many at most. */
export const countedJobsSql = (row: string, also: number, mark: Mark): string =>
  `select ${row} join tally on tally.job = board.job
    where tally.kind = ${mark(1)} and tally.day between ${mark(2)} and ${mark(3)} and tally.what = ${mark(4)}${within(also, 4, mark)}
    order by tally.day desc, board.job desc limit ${mark(4 + also * ALSO + 1)}`;

const within = (also: number, before: number, mark: Mark): string =>
  Array.from({ length: also }, (_, i) => {
    const at = before + i * ALSO;
    return ` and exists (select 1 from tally as t${i} where t${i}.job = tally.job and t${i}.kind = ${mark(at + 1)} and t${i}.what = ${mark(at + 2)})`;
  }).join('');

export const values = (also: readonly Count[]): string[] => also.flatMap(({ by, what }) => [by, what]);
