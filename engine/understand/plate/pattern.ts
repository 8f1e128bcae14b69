/** What the patterns of a plate are made of. */
import type { PlateRole } from './parts.ts';

export interface PlateRule {
  readonly role: PlateRole;
  readonly unit: string;
  /** Its pattern, made where the first plate is read: a start needs none of them. */
  readonly source: string;
  /** Plausible values (our setting); outside, the piece stays unread. */
  readonly from: number;
  readonly to: number;
  /** Its groups are words, kept as typed. */
  readonly words: boolean;
}

/**
 * ".8" also directly behind its key, ",8" only where no letter touches it: "FLA,8" may be two columns. Behind a piece
 * that is taken either may be the middle of a number.
 */
export const POINT = '(?<!\\uffff)(?:\\.|(?<!\\p{L}),)';
/** A number behind its key, a sign or another number. */
export const V = `(\\d{1,5}(?:[.,]\\d{1,4})?|${POINT}\\d{1,4})(?!\\p{N}|[.,]\\d)`;
/** A number that no other numeral and no letter touches on its left: "10²" and "1O4" are none, "5 MFD/370 V" has two. */
export const N = `(?<![\\p{L}\\p{N}.,]|(?<!\\uffff)/)${V}`;
export const WORD_END = '(?![\\p{L}\\p{N}])';
export const VOLT = '(?:vac|v ac|volts? ac|volts?|v~|v)';
export const MICRO = '(?:μf|μfd|uf|ufd|mfds?|microfarads?)';
/** A dot that ends a key, and not the one that a figure begins with: "FLA. 8" is 8, "FLA .8" is 0.8. */
export const DOT = '\\.(?!\\d)';
/** A key and its value may be parted by a colon or by the end of a line. */
export const GAP = `(?:[ :=#]|${DOT}){0,4}\\n?[ :=]{0,3}`;

export const key = (words: string): string => `(?<![\\p{L}\\p{N}])(?:${words})(?!\\p{L})`;

export const between = (
  role: PlateRole,
  unit: string,
  pattern: string,
  [from, to]: readonly [number, number],
): PlateRule => ({ role, unit, source: pattern, from, to, words: false });

/** A number and its unit behind it. */
export const behind = (role: PlateRole, unit: string, words: string, range: readonly [number, number]): PlateRule =>
  between(role, unit, `${N} ?(?:${words})${WORD_END}`, range);

const UNITS = 'hz|ph|ø|v|vac|volts?|rpm|hp|psig?|lbs?|oz|kg|uf|μf|mfd|%|w|watts?|poles?';
/** A unit behind a figure. Where a figure follows it, it is the next key: "V 208-230 PH 1 HZ 60". */
export const OTHER_UNIT = ` ?(?:${UNITS})(?!\\p{L})(?!${GAP}\\d)`;

/** A key, then one to three numbers joined by slash or dash, then `tail`. A figure of another unit behind it is none of its. */
export const chain = (
  role: PlateRole,
  unit: string,
  words: string,
  range: readonly [number, number],
  tail = '',
): PlateRule =>
  between(
    role,
    unit,
    `${key(words)}${GAP}${V}(?:\\s?[/-]\\s?${V})?(?:\\s?[/-]\\s?${V})?${tail}(?!\\p{L}|\\s?[/-]\\s?\\d|${OTHER_UNIT})`,
    range,
  );

export const wordsAs = (role: PlateRole, pattern: string): PlateRule => ({
  role,
  unit: '',
  source: pattern,
  from: 0,
  to: 0,
  words: true,
});

const made = new Map<string, RegExp>();
export function patternOf({ source }: PlateRule): RegExp {
  const known = made.get(source) ?? new RegExp(source, 'gu');
  made.set(source, known);
  return known;
}
