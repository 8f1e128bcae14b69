/** What verify can say of a file: one word each, with its exit code. The higher the code, the more serious. */

export const OUTCOMES = {
  identical: 0,
  unreadable: 3,
  'no job file': 4,
  'key not pinned': 10,
  'unknown flow version': 11,
  'signature missing': 12,
  'recomputed differently': 13,
  'signed by another key': 14,
  rewritten: 15,
  reordered: 16,
  truncated: 17,
  altered: 18,
} as const;
export type Word = keyof typeof OUTCOMES;

export interface Trouble {
  readonly word: Exclude<Word, 'identical'>;
  /** seq of the entry; null where it is about the whole file. */
  readonly at: number | null;
  /** What the file says and what was computed, where both can be told. */
  readonly old: string | null;
  readonly now: string | null;
  readonly says: string;
}
/** All that was found, the most serious first; none: identical. */
export interface Verified {
  readonly job: string | null;
  readonly flow: string | null;
  readonly entries: number;
  /** Words that the entries name and the file no longer has. */
  readonly removed: number;
  readonly key: string | null;
  /** Of each entry, where the chain holds: two files of one job agree as far as both go. */
  readonly hashes: readonly string[];
  readonly troubles: readonly Trouble[];
}

type Found = Pick<Verified, 'troubles'>;
export const wordOf = (v: Found): Word => v.troubles[0]?.word ?? 'identical';
export const codeOf = (v: Found): number => OUTCOMES[wordOf(v)];
export const bySeriousness = (a: Trouble, b: Trouble): number => OUTCOMES[b.word] - OUTCOMES[a.word];

/** `altered at 7: …`, as it is printed. */
export function troubleLine({ word, at, old, now, says }: Trouble): string {
  const place = at === null ? '' : ` at ${at}`;
  const both = old === null || now === null ? '' : ` Old: ${old}. New: ${now}.`;
  return `${word}${place}: ${says}${both}`;
}
