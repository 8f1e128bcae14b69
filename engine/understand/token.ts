/** A typed line cut into words, numbers and marks, each with its place in the text. */
import { bare, fold, isDigit, isLetter, lower } from './fold.ts';
import { unitOf } from './unit.ts';

export interface Token {
  readonly kind: 'word' | 'number' | 'mark';
  /** Lower case; a word without accents and apostrophes, so that "can't" is "cant". */
  readonly text: string;
  readonly start: number;
  readonly end: number;
}

/**
 * A word breaks at a hyphen between letters ("pull-out" is two), so that both spellings compare. What begins like a
 * number stays whole ("38.4uF", "88-106", "1O.2"): a field or a label says whether it is one. A comma between two
 * digits is a decimal comma, and so is one before a digit that nothing touches on its left (",9"); any other comma, and
 * "/", ";", ":", "=", are marks. A name of `names` with a number glued to it is two ("herm43.8", "43.8herm").
 */
export function tokensOf(text: string, names: ReadonlySet<string> = new Set()): Token[] {
  const plain = lower(fold(text));
  const tokens: Token[] = [];
  for (let at = 0; at < plain.length; ) {
    const c = plain.charAt(at);
    if (c === ' ') {
      at++;
      continue;
    }
    const numeric = beginsNumber(plain, at);
    const end = numeric ? endOfNumber(plain, at, names) : isWordCharacter(c) ? endOfWord(plain, at, names) : at + 1;
    tokens.push(tokenOf(plain, at, end, numeric));
    at = end;
  }
  return tokens;
}

/** Words and numbers joined for comparing: "L1–G", "l1 g" and "l1g" are the same, "l 1" is not. */
export const joined = (tokens: readonly Token[]): string => tokens.reduce(join, '');

export const join = (before: string, { kind, text }: Token): string => {
  if (kind === 'mark') return before;
  return before !== '' && isDigit(text.charAt(0)) ? `${before} ${text}` : before + text;
};

/** A digit, also behind a sign, a decimal mark, or a comparison (">500M", "> 500M"). */
const beginsNumber = (plain: string, from: number): boolean => isDigit(plain.charAt(firstDigit(plain, from)));
function firstDigit(plain: string, from: number): number {
  let at = from;
  if ('<>'.includes(plain.charAt(at))) at += plain[at + 1] === ' ' ? 2 : 1;
  else if ('+-'.includes(plain.charAt(at))) at++;
  // "FAN,8" and "44,,8" may be two columns.
  const free = from === 0 || ' \n/:=('.includes(plain.charAt(from - 1));
  return plain[at] === '.' || (plain[at] === ',' && free) ? at + 1 : at;
}

/** A name that is glued behind it stays outside. */
function endOfNumber(plain: string, from: number, names: ReadonlySet<string>): number {
  let at = firstDigit(plain, from) + 1;
  while (at < plain.length && isInsideNumber(plain, at)) at++;
  while (at > from + 1 && '.!?)'.includes(plain.charAt(at - 1))) at--;
  const tail = /[a-z]{1,16}$/.exec(plain.slice(Math.max(from + 1, at - 17), at))?.[0] ?? '';
  return names.has(tail) && unitOf(tail) === null ? at - tail.length : at;
}

function isInsideNumber(plain: string, at: number): boolean {
  const c = plain.charAt(at);
  // "14:08" is a time: one token, so that its hours are no reading.
  if (c === ',' || c === ':') return isDigit(plain.charAt(at - 1)) && isDigit(plain.charAt(at + 1));
  return !BREAKS.includes(c);
}

/** "o.l." and "o.l" are one word, and a dot ends any other. */
function endOfWord(plain: string, from: number, names: ReadonlySet<string>): number {
  if (plain.startsWith('o.l', from)) return from + 3;
  let letters = from;
  while (isLetter(plain.charAt(letters))) letters++;
  let at = Math.max(letters, from + 1);
  while (at < plain.length && isWordCharacter(plain.charAt(at))) at++;
  const glued = letters > from && beginsNumber(plain, letters) && !'+-'.includes(plain.charAt(letters));
  return glued && names.has(plain.slice(from, letters)) && !names.has(plain.slice(from, at)) ? letters : at;
}

const BREAKS = ' \n/,;:=()[]{}"';
const isWordCharacter = (c: string): boolean => isLetter(c) || isDigit(c) || "'°%∞".includes(c);

function tokenOf(plain: string, start: number, end: number, numeric: boolean): Token {
  const raw = plain.slice(start, end);
  if (numeric || raw === '_') return { kind: 'number', text: raw, start, end };
  if (!isWordCharacter(raw.charAt(0))) return { kind: 'mark', text: raw, start, end };
  return { kind: 'word', text: bare(raw).replaceAll("'", ''), start, end };
}
