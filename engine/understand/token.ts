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
 * "/", ";", ":", "=", are marks. A name of `names` with a number glued to it is two ("herm43.8", "43.8herm"). With
 * `counts` a comma always parts: a list of whole numbers has no decimals.
 */
export function tokensOf(text: string, names: ReadonlySet<string> = NO_NAMES, counts = false): Token[] {
  const plain = lower(fold(text));
  const tokens: Token[] = [];
  for (let at = 0; at < plain.length; ) {
    const c = plain.charAt(at);
    if (c === ' ') {
      at++;
      continue;
    }
    const numeric = beginsNumber(plain, at);
    const picture = numeric ? 0 : lengthOfPicture(plain, at);
    const end = numeric ? endOfNumber(plain, at, names) : picture > 0 ? at + picture : endOfOther(plain, at, names);
    if (numeric && isColumns(plain.slice(at, end), counts)) tokens.push(...columns(plain, at, end));
    else if (picture > 0)
      tokens.push({ kind: 'word', text: String.fromCodePoint(plain.codePointAt(at) ?? 0), start: at, end });
    else tokens.push(tokenOf(plain, at, end, numeric));
    at = end;
  }
  return tokens;
}
const NO_NAMES: ReadonlySet<string> = new Set();
const endOfOther = (plain: string, at: number, names: ReadonlySet<string>): number =>
  isWordCharacter(plain.charAt(at)) ? endOfWord(plain, at, names) : at + 1;

/** A thumb or the like is a word; its colour and its joiners say nothing. */
function lengthOfPicture(plain: string, at: number): number {
  if (plain.charCodeAt(at) < 0x2000) return 0;
  return PICTURE.exec(plain.slice(at, at + 12))?.[0].length ?? 0;
}
const PICTURE = /^\p{Extended_Pictographic}(?:[\u{1f3fb}-\u{1f3ff}]|\ufe0f)*/u;

/**
 * "36.1,5.02,4.4": with a point in it its commas part columns. Not where they may part thousands: "1,234.5", "1.234,5".
 */
const isColumns = (text: string, counts: boolean): boolean =>
  text.length <= LONGEST_ROW && (counts ? WHOLE_COLUMNS : COLUMNS).test(text) && !THOUSANDS.test(text);
const LONGEST_ROW = 200;
const COLUMNS = /^(?=[^.]*\.)[<>+-]?(?:(?:\d+(?:\.\d+)?|\.\d+),)+(?:\d+(?:\.\d+)?|\.\d+)(?![\d.,])[^,.]*$/;
const WHOLE_COLUMNS = /^(?:\d{1,2},)+\d{1,2}$/;
const THOUSANDS = /^\D?\d{1,3}(?:(?:,\d{3})+\.\d+|(?:\.\d{3})+,\d+)(?!\d)/;

function columns(plain: string, from: number, to: number): Token[] {
  const tokens: Token[] = [];
  for (let start = from; start < to; ) {
    const comma = plain.indexOf(',', start);
    const end = comma < 0 || comma > to ? to : comma;
    tokens.push({ kind: 'number', text: plain.slice(start, end), start, end });
    if (end < to) tokens.push({ kind: 'mark', text: ',', start: end, end: end + 1 });
    start = end + 1;
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
  // One letter is rather a unit: "19f".
  const tail = /[a-z]{2,16}$/.exec(plain.slice(Math.max(from + 1, at - 17), at))?.[0] ?? '';
  return names.has(tail) && unitOf(tail) === null ? at - tail.length : at;
}

function isInsideNumber(plain: string, at: number): boolean {
  const c = plain.charAt(at);
  // "14:08" is a time: one token, so that its hours are no reading.
  if (c === ',' || c === ':') return isDigit(plain.charAt(at - 1)) && isDigit(plain.charAt(at + 1));
  return !BREAKS.includes(c);
}

/** "o.l.", "o.l" and "o/l" are one word, and a dot ends any other. */
function endOfWord(plain: string, from: number, names: ReadonlySet<string>): number {
  if (plain.startsWith('o.l', from)) return from + 3;
  if (plain.startsWith('o/l', from) && !isLetter(plain.charAt(from + 3))) return from + 3;
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
