/**
 * Signs that look like a figure and are none: "4S+5", "1O2", "17·9", "⁵", a Cyrillic Ч for a 4. A print in which one
 * stands where a figure may be is asked again, because the rest of it would read as another print.
 */
import { matches } from './matches.ts';

/** The first piece of a folded text that looks like a figure and is none, or null. */
export function lookalikeIn(plain: string): string | null {
  const strange = STRANGE.exec(plain);
  if (strange) return pieceAt(plain, strange.index);
  for (const { 0: piece, index } of matches(MIXED, plain)) {
    const refrigerant = /(?<![\p{L}\p{N}])r[- ]$/iu.test(plain.slice(Math.max(0, index - 3), index));
    if (refrigerant || REAL.test(piece) || !isFigureLike(plain, piece, index)) continue;
    return pieceAt(plain, index);
  }
  return null;
}

/** Numerals of other scripts, letters of other scripts, and foreign marks beside a figure. */
const STRANGE = new RegExp(
  [
    '(?![0-9])\\p{N}',
    '(?![a-zA-Z\\u00c0-\\u00ff\\u03bc\\u03a9\\u03c9\\u0394\\u03b4\\u03c6])\\p{L}',
    '(?<=[\\p{L}\\p{N}])~(?=\\d)(?!~(?:50|60)(?!\\d))',
    '(?<=\\d)[^\\x00-\\x7b\\x7d\\x7e\\p{L}\\p{N}±°×∅\\uffff]',
    '[^\\x00-\\x7b\\x7d\\x7e\\p{L}\\p{N}±°×∅~\\uffff](?=\\d)',
  ].join('|'),
  'u',
);
/** Only figures and the letters that pass for them. */
const MIXED = /(?<![\p{L}\p{N}])[0-9.,OoIlSsZzBGgqQ]{1,40}(?![\p{L}\p{N}])/gu;
/** Protection classes and units. */
const REAL = /^(?:s[0-3]|[0-9.,]+(?:lbs?|oz)?|[oilszbgq]{2,}|lbs?|oz)[.,]*$/i;

/** A figure in it, a sign beside it that joins figures ("45+S", "±S"), or a percent sign behind it. */
function isFigureLike(plain: string, piece: string, at: number): boolean {
  const before = plain.slice(Math.max(0, at - 2), at);
  const after = plain.slice(at + piece.length, at + piece.length + 2);
  const follows = plain.slice(at + piece.length, at + piece.length + 6);
  return /\d/.test(piece) || /\d[+/-]$|±$/.test(before) || /^[+/-]\d/.test(after) || BEFORE_UNIT.test(follows);
}

const BEFORE_UNIT = /^\s?(?:%|(?:lbs?|oz|kg|psig?|vac|volts?|hz|hp|rpm|mfd|uf|μf)(?![\p{L}]))/iu;

/** What stands between the spaces. */
function pieceAt(plain: string, at: number): string {
  let [from, to] = [at, at];
  while (from > 0 && at - from < LONGEST && !/\s/.test(plain.charAt(from - 1))) from--;
  while (to < plain.length && to - at < LONGEST && !/\s/.test(plain.charAt(to))) to++;
  return plain.slice(from, to);
}
const LONGEST = 20;
