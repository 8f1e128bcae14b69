/**
 * A number as people type it, read without guessing.
 *
 * A point or a comma is the decimal mark. Two marks are refused ("1.234,5"), and so is a comma before exactly three
 * digits ("1,234"), because it may part thousands; after a zero or at the head it can't ("0,234", ",9" are read). No
 * exponents.
 */
import { isDigit } from './fold.ts';

export type ScannedNumber =
  | { ok: true /** A plain decimal: "-0.9". */; value: string; end: number }
  | { ok: false; why: 'two-marks' | 'thousands'; end: number };

/** Reads a number at `from` of a folded text; null where none begins there. A trailing mark stays outside. */
export function scanNumber(text: string, from = 0): ScannedNumber | null {
  const signed = text[from] === '-' || text[from] === '+';
  const start = signed ? from + 1 : from;
  let end = start;
  while (end < text.length && isNumeral(text.charAt(end))) end++;
  while (end > start && !isDigit(text.charAt(end - 1))) end--;
  const run = text.slice(start, end);
  if (run === '') return null;
  const [whole = '', fraction = '', ...more] = run.replaceAll(',', '.').split('.');
  if (more.length > 0) return { ok: false, why: 'two-marks', end };
  if (run.includes(',') && fraction.length === 3 && /[1-9]/.test(whole)) return { ok: false, why: 'thousands', end };
  const digits = fraction === '' ? whole : `${whole || '0'}.${fraction}`;
  return { ok: true, value: text[from] === '-' ? `-${digits}` : digits, end };
}

/** A small whole number as a word, for what is counted; null for any other word. */
export const numberWord = (word: string): string | null => WORDS.get(word) ?? null;
const WORDS = new Map(
  ['zero', 'one un una uno', 'two dos', 'three tres', 'four cuatro', 'five cinco', 'six seis'].flatMap((words, n) =>
    words.split(' ').map((word): [string, string] => [word, String(n)]),
  ),
);

const isNumeral = (c: string): boolean => isDigit(c) || c === '.' || c === ',';
