/** Jobs and units by words, from a table that is derived and may be thrown away. */
import type { Database } from 'better-sqlite3';
import type { BoardRow, SheetList, Store } from '../port.ts';
import { json } from '../rows.ts';
import { entryLike, SOUGHT_KINDS, type SoughtRow, tokensIn, unitTokens } from '../sought.ts';
import { ROW } from './board.ts';
import { guarded } from './trouble.ts';

/** Behind every word that begins so: no character of a text comes after it. */
const END = '\uffff';
const matching = (list: 'job' | SheetList, n: number): string =>
  Array.from({ length: n }, () => `select id from sought where token >= ? and token < ? and list = '${list}'`).join(
    ' intersect ',
  );
const bounds = (beginnings: readonly string[]): string[] => beginnings.flatMap((word) => [word, `${word}${END}`]);

/** Words of a job, or of a unit as it is named now. */
export function soughtWriter(db: Database): {
  add(rows: readonly SoughtRow[]): void;
  name(id: string, body: unknown): void;
} {
  const add = db.prepare('insert into sought (token, list, id, seq) values (?, ?, ?, ?) on conflict do nothing');
  const drop = db.prepare(`delete from sought where list = 'equipment' and id = ?`);
  return {
    add: (rows) => {
      for (const row of rows) add.run(...row);
    },
    name: (id, body) => {
      drop.run(id);
      for (const row of unitTokens('equipment', id, body)) add.run(...row);
    },
  };
}

type Row = Omit<BoardRow, 'closed'> & { readonly closed: number };

export function createSought(db: Database): Pick<Store, 'find' | 'findUnits'> {
  return {
    find: (beginnings, limit) =>
      guarded(() => {
        if (beginnings.length === 0) return [];
        const sql = `select ${ROW} where job.id in (${matching('job', beginnings.length)})
          order by board.updated desc limit ?`;
        const rows = db.prepare<unknown[], Row>(sql).all(...bounds(beginnings), limit);
        return rows.map((row) => ({ ...row, closed: row.closed === 1 }));
      }),
    findUnits: (beginnings, limit) =>
      guarded(() => {
        if (beginnings.length === 0) return [];
        const sql = `select id, version, body from sheet where list = 'equipment'
          and id in (${matching('equipment', beginnings.length)}) order by id limit ?`;
        const rows = db.prepare<unknown[], { id: string; version: number; body: string }>(sql);
        return rows
          .all(...bounds(beginnings), limit)
          .map(({ id, version, body }) => ({ id, version, body: json(body) }));
      }),
  };
}

/** Once, for a shop that was kept before its words were looked up. */
export function fillSought(db: Database): void {
  const done = db.prepare(`select 1 from meta where key = 'sought'`).pluck();
  if (done.get() !== undefined) return;
  const { add, name } = soughtWriter(db);
  const words = db.prepare<[string], { ref: string; text: string }>(
    'select ref, text from words where job = (select key from job where id = ?)',
  );
  const kinds = SOUGHT_KINDS.map((kind) => `'${kind}'`).join(', ');
  const entries = db.prepare<[string], { seq: number; kind: string; body: string }>(
    `select seq, kind, body from entry where job = (select key from job where id = ?) and kind in (${kinds})`,
  );
  for (const job of db.prepare<[], string>('select id from job').pluck().all()) {
    const texts = new Map(words.all(job).map(({ ref, text }) => [ref, json(text, job) as string]));
    for (const { seq, kind, body } of entries.all(job))
      add([...new Set(tokensIn(entryLike(kind, body, job), texts))].map((token) => [token, 'job', job, seq]));
  }
  const units = db.prepare<[], { id: string; body: string }>(`select id, body from sheet where list = 'equipment'`);
  for (const { id, body } of units.all()) name(id, json(body));
  db.prepare(`insert into meta (key, value) values ('sought', '1')`).run();
}
