/** An entry as a row and back, in the same order of keys, so that its JSON is the same to the byte. */
import type { Entry, Text } from '../schema.ts';
import { Damaged, type Saying } from './port.ts';

type EntryRow = [
  seq: number,
  v: number,
  kind: string,
  by: string,
  at: string,
  said: string | null,
  client: string | null,
  body: string,
  prev: string,
  hash: string,
];
export const ENTRY_COLUMNS = 'seq, v, kind, "by", at, said, client, body, prev, hash';

export const toRow = (e: Entry): EntryRow => [
  e.seq,
  e.v,
  e.kind,
  e.by,
  e.at,
  e.said,
  e.client,
  JSON.stringify(e.body),
  e.prev,
  e.hash,
];

/** Whether shape and hash are sound is for the chain to say; here only what no entry can be made of is refused. */
export function toEntries(job: string, rows: readonly unknown[], after: number | null): Entry[] {
  return rows.map((row, i) => {
    const [seq, v, kind, by, at, said, client, body, prev, hash] = row as EntryRow;
    if (after !== null && seq !== after + 1 + i) throw new Damaged('An entry is missing.', job, after + 1 + i);
    return { v, job, seq, by, at, said, client, prev, kind, body: json(body, job, seq), hash } as Entry;
  });
}

export function json(text: string, job: string | null = null, seq: number | null = null): unknown {
  try {
    return JSON.parse(text);
  } catch (cause) {
    throw new Damaged('A row can’t be read.', job, seq, { cause });
  }
}

type WordsRow = [ref: string, salt: string, text: string];
export const WORDS_COLUMNS = 'ref, salt, text';
// As JSON, because a NUL or half a surrogate pair doesn't get through every database's text whole.
export const fromText = (t: Text): WordsRow => [t.ref, t.salt, JSON.stringify(t.text)];
export const toTexts = (job: string, rows: readonly unknown[]): Text[] =>
  (rows as WordsRow[]).map(([ref, salt, text]) => ({ ref, salt, text: json(text, job) as string }));

type SayingRow = [id: string, chat: string, lane: string, body: string, tries: number, at: string | null];
export const SAYING_COLUMNS = 'id, chat, lane, body, tries, at';
export const toSaying = ([id, chat, lane, body, tries, at]: SayingRow): Saying => ({
  id,
  chat,
  lane,
  body: json(body),
  tries,
  at,
});
export const fromSaying = (s: Saying): SayingRow => [s.id, s.chat, s.lane, JSON.stringify(s.body), s.tries, s.at];
export type { SayingRow };
