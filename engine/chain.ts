/** The hash chain over a job's entries: SHA-256 over the RFC 8785 JSON of each entry, which holds the hash before it. */
import { sha256 } from '@noble/hashes/sha2.js';
import { bytesToHex, utf8ToBytes } from '@noble/hashes/utils.js';
import { canonicalJson } from './canonical.ts';
import { type Draft, type Entry, parseEntry, type Text, type TextRef } from './schema.ts';

/** `prev` of the first entry. */
export const GENESIS = '0'.repeat(64);

export interface Head {
  readonly job: string;
  /** seq and hash of the entry before; 0 and GENESIS where there is none. */
  readonly seq: number;
  readonly prev: string;
  readonly by: string;
  readonly at: string;
  readonly said: string | null;
  readonly client: string | null;
}

/** SHA-256 over the UTF-8 of a text, as 64 hex digits. On a server the machine's own is several times as fast. */
export type Digest = (text: string) => string;
export const digestOf: Digest = (text) => bytesToHex(sha256(utf8ToBytes(text)));

/** SHA-256, as 64 hex digits, over an entry's RFC 8785 JSON without its own `hash`. */
export const hashOf = (entry: Omit<Entry, 'hash'> & { hash?: string }, digest: Digest = digestOf): string =>
  digest(canonicalJson(entry, 'hash'));

/** Numbers what was decided from `head.seq` + 1 on, and links it. Throws where a draft holds what JSON can't say. */
export function seal(drafts: readonly Draft[], head: Head, digest: Digest = digestOf): Entry[] {
  let prev = head.prev;
  return drafts.map((draft, i) => {
    const bare = {
      v: 1 as const,
      job: head.job,
      seq: head.seq + 1 + i,
      by: head.by,
      at: head.at,
      said: head.said,
      client: head.client,
      prev,
      ...draft,
    };
    const entry = { ...bare, hash: hashOf(bare as Entry, digest) } as Entry;
    prev = entry.hash;
    return entry;
  });
}

/**
 * Where a chain breaks first. `at` is the seq that should stand there: the place counted from 1, except for
 * truncated-start, where it is the seq of the first entry that is left.
 */
export type ChainCheck =
  | { ok: true }
  | { ok: false; at: number; why: 'altered' | 'truncated-start' | 'reordered' | 'not-an-entry' };

/**
 * Recomputes every hash of one whole job. `reordered`: numbers out of order, one twice or one missing. An end cut off
 * can't be seen from the chain alone; a beginning can.
 */
export function verifyChain(entries: readonly unknown[], digest: Digest = digestOf): ChainCheck {
  const broken = (at: number, why: Exclude<ChainCheck, { ok: true }>['why']): ChainCheck => ({ ok: false, at, why });
  let before: Entry | null = null;
  for (const [i, row] of entries.entries()) {
    let entry: Entry;
    let hash: string;
    try {
      entry = parseEntry(row);
      // Over the row as it stands: a name that reading leaves out (`__proto__`) would else hang on unseen.
      hash = hashOf(row as Entry, digest);
    } catch {
      return broken(i + 1, 'not-an-entry');
    }
    if (i === 0 && entry.seq > 1 && !entries.some(isFirst)) return broken(entry.seq, 'truncated-start');
    if (entry.seq !== i + 1) return broken(i + 1, 'reordered');
    const follows = entry.prev === (before?.hash ?? GENESIS) && entry.job === (before?.job ?? entry.job);
    if (!follows || hash !== entry.hash) return broken(entry.seq, 'altered');
    before = entry;
  }
  return { ok: true };
}
const isFirst = (row: unknown): boolean => typeof row === 'object' && row !== null && 'seq' in row && row.seq === 1;

/** Words beside the record: the reference for the body, the row for the texts. hash = SHA-256(salt ‖ text), in UTF-8. */
export function textRef(
  text: string,
  salt: string,
  ref: string,
  digest: Digest = digestOf,
): { ref: TextRef; row: Text } {
  return { ref: { ref, hash: digest(salt + text) }, row: { ref, salt, text } };
}
/** Every salt is 16 bytes in hex: of another length, the beginning of the words could stand in it, and the hash still fit. */
const SALT = /^[0-9a-f]{32}$/;
export const verifyText = (ref: TextRef, row: Text): boolean =>
  row.ref === ref.ref && SALT.test(row.salt) && digestOf(row.salt + row.text) === ref.hash;
