/** Jobs and units by words, from a table that is derived and may be thrown away. */
import type { BoardRow, SheetList, Store } from '../port.ts';
import { json } from '../rows.ts';
import { entryLike, SOUGHT_KINDS, type SoughtRow, tokensIn, unitTokens } from '../sought.ts';
import type { Link } from './link.ts';
import { type Line, toLine } from './reading.ts';
import { ROW } from './sql.ts';

/** Behind every word that begins so: no character of a text comes after it. */
const END = '\uffff';
const matching = (list: 'job' | SheetList, n: number): string =>
  Array.from(
    { length: n },
    (_, i) => `select id from sought where token >= $${2 * i + 1} and token < $${2 * i + 2} and list = '${list}'`,
  ).join(' intersect ');
const bounds = (beginnings: readonly string[]): string[] => beginnings.flatMap((word) => [word, `${word}${END}`]);

export const FIND = {
  jobs: (n: number): string => `select ${ROW} where job.id in (${matching('job', n)})
    order by board.updated desc limit $${2 * n + 1}`,
  units: (n: number): string => `select id, version, body from sheet where list = 'equipment'
    and id in (${matching('equipment', n)}) order by id limit $${2 * n + 1}`,
} as const;

const INSERT = `insert into sought (token, list, id, seq)
  select * from unnest($1::text[], $2::text[], $3::text[], $4::int[]) on conflict do nothing`;
const columns = (rows: readonly SoughtRow[]): unknown[][] => [0, 1, 2, 3].map((i) => rows.map((row) => row[i]));

/** A unit as it is named now. */
export const naming = (id: string, body: unknown): { text: string; values: unknown[] }[] => [
  { text: `delete from sought where list = 'equipment' and id = $1`, values: [id] },
  { text: INSERT, values: columns(unitTokens('equipment', id, body)) },
];

export function createSought(link: Link): Pick<Store, 'find' | 'findUnits'> {
  return {
    async find(beginnings, limit): Promise<BoardRow[]> {
      const n = beginnings.length;
      if (n === 0) return [];
      return (await link.read<Line>(`find-${n}`, FIND.jobs(n), [...bounds(beginnings), limit])).map(toLine);
    },
    async findUnits(beginnings, limit) {
      const n = beginnings.length;
      if (n === 0) return [];
      const rows = await link.read<[string, number, string]>(`find-units-${n}`, FIND.units(n), [
        ...bounds(beginnings),
        limit,
      ]);
      return rows.map(([id, version, body]) => ({ id, version, body: json(body) }));
    },
  };
}

/** Once, for a shop that was kept before its words were looked up. */
export async function fillSought(link: Link): Promise<void> {
  const [done] = await link.read('sought-filled', `select 1 from meta where key = 'sought'`);
  if (done) return;
  const entries = await link.read<[id: string, seq: number, kind: string, body: string]>(
    'sought-entries',
    `select job.id, seq, kind, body from entry join job on job.key = entry.job where kind = any($1::text[])`,
    [[...SOUGHT_KINDS]],
  );
  const words = await link.read<[id: string, ref: string, text: string]>(
    'sought-words',
    'select job.id, ref, text from words join job on job.key = words.job',
  );
  const texts = new Map<string, Map<string, string>>();
  for (const [job, ref, text] of words)
    texts.set(job, (texts.get(job) ?? new Map<string, string>()).set(ref, json(text, job) as string));
  const none = new Map<string, string>();
  const rows = entries.flatMap(([job, seq, kind, body]) =>
    tokensIn(entryLike(kind, body, job), texts.get(job) ?? none).map((token): SoughtRow => [token, 'job', job, seq]),
  );
  const units = await link.read<[string, string]>(
    'sought-units',
    `select id, body from sheet where list = 'equipment'`,
  );
  const named = units.flatMap(([id, body]) => unitTokens('equipment', id, json(body)));
  await link.together([
    { text: INSERT, values: columns([...rows, ...named]) },
    { text: `insert into meta (key, value) values ('sought', '1') on conflict do nothing`, values: [] },
  ]);
}
