/** Entries to keep: a job is opened, then notes are made on it. */
import { GENESIS, seal, textRef } from '../../engine/chain.ts';
import type { Draft, Entry, Text } from '../../engine/schema.ts';

export interface Written {
  entries: Entry[];
  texts: Text[];
}
let count = 0;

/** What comes next on a job's record: one entry with words of its own. */
export function written(
  job: string,
  last: Entry | undefined,
  more: { words?: string; client?: string; by?: string } = {},
): Written {
  const { words = 'Rust under the fan leads.', client = `c${++count}`, by = 'ines' } = more;
  const { ref, row } = textRef(words, '00112233445566778899aabbccddeeff', `${by}.${client}`);
  const draft: Draft = last
    ? { kind: 'noted', body: { as: 'note', text: ref } }
    : {
        kind: 'opened',
        body: { manual: 'no-cool', version: 1, fingerprint: 'f00d', semantics: 1, title: ref, training: false },
      };
  const at = new Date(Date.UTC(2026, 6, 14, 15) + (last?.seq ?? 0) * 1000).toISOString();
  const head = { job, seq: last?.seq ?? 0, prev: last?.hash ?? GENESIS, by, at, said: null, client };
  return { entries: seal([draft], head), texts: [row] };
}

/** An answer that names a photo. */
export function pictured(job: string, last: Entry, ...hashes: string[]): Entry[] {
  const parts = Object.fromEntries(hashes.map((hash, i) => [`photo${i}`, { kind: 'photo' as const, hash }]));
  const head = { job, seq: last.seq, prev: last.hash, by: 'ines', at: last.at, said: null, client: `p${++count}` };
  return seal([{ kind: 'answered', body: { place: 'p', parts } }], head);
}

/** A whole record of so many entries. */
export function record(job: string, entries: number): Written {
  const whole: Written = { entries: [], texts: [] };
  for (let i = 0; i < entries; i++) {
    const next = written(job, whole.entries.at(-1));
    whole.entries.push(...next.entries);
    whole.texts.push(...next.texts);
  }
  return whole;
}
