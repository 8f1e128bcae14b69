/** A capacitor's print cut into numbers, words and signs. */
import { fold, isDigit, isLetter, lower } from '../fold.ts';
import { scanNumber } from '../number.ts';
import { unitOf } from '../unit.ts';

export type LabelToken = {
  /** As typed, folded. */ text: string /** Nothing between it and the token before. */;
  tight: boolean;
} & (
  | { kind: 'number' /** null where the number can be read in two ways. */; value: string | null }
  | { kind: 'word' | 'sign' }
);

/** Units of a print that are none of ours: frequency, fault current, temperature, life. */
export const OTHER_UNITS = new Set('hz afc ka °c °f c f h hr hrs hours kvar mm cm g kg lbs'.split(' '));

/** Words are lower case except for the m of a unit; `±` stands for "+/-" and "+-". */
export function labelTokens(text: string): LabelToken[] {
  const plain = fold(text);
  const tokens: LabelToken[] = [];
  let at = 0;
  let tight = false;
  while (at < plain.length) {
    const c = plain.charAt(at);
    if (c === ' ') {
      tight = false;
      at++;
      continue;
    }
    const end = endOfToken(plain, at);
    tokens.push(tokenOf(plain.slice(at, end), tight));
    tight = true;
    at = end;
  }
  return tokens;
}

function endOfToken(plain: string, at: number): number {
  const c = plain.charAt(at);
  if (c === '+' || c === '-') {
    const other = c === '+' ? '-' : '+';
    if (plain[at + 1] === '/' && plain[at + 2] === other) return at + 3;
    return c === '+' && plain[at + 1] === '-' ? at + 2 : at + 1;
  }
  const mark = c === '.' || (c === ',' && !isWordLetter(plain.charAt(at - 1)));
  if (isDigit(c) || (mark && isDigit(plain.charAt(at + 1)))) return scanNumber(plain, at)?.end ?? at + 1;
  return isWordLetter(c) ? endOfWord(plain, at) : at + 1;
}

/** Letters; and the digits after them where they are no unit ("CBB65A-1", "P2"), or one letter that stands alone ("S2"). */
function endOfWord(plain: string, at: number): number {
  let end = at;
  while (isWordLetter(plain.charAt(end))) end++;
  const word = plain.slice(at, end);
  const unit = unitOf(word) !== null || OTHER_UNITS.has(lower(word));
  if (!isDigit(plain.charAt(end)) || (unit && (word.length > 1 || isDigit(plain.charAt(at - 1))))) return end;
  while (isWordLetter(plain.charAt(end)) || isDigit(plain.charAt(end)) || isTail(plain, end)) end++;
  return end;
}

const isWordLetter = (c: string): boolean => c === '°' || isLetter(c);
const isTail = (plain: string, at: number): boolean => plain[at] === '-' && isDigit(plain.charAt(at + 1));

function tokenOf(text: string, tight: boolean): LabelToken {
  if (text.length > 1 && (text.startsWith('+') || text.startsWith('-'))) return { kind: 'sign', text: '±', tight };
  const number = scanNumber(text);
  // ",5" may be a half, or a comma on the wrong side.
  const sure = number?.ok && !text.startsWith(',');
  if (number && !/^[+-]/.test(text)) return { kind: 'number', text, tight, value: sure ? number.value : null };
  if (isWordLetter(text.charAt(0))) return { kind: 'word', text, tight };
  return { kind: 'sign', text: text === '\n' || text === ';' ? ',' : text, tight };
}
