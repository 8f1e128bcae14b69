/** A text cut into words for the reading of danger: lower case, without accents and apostrophes, slips put right. */
import { bare, fold, isDigit, isLetter, lower } from '../fold.ts';
import { spelled } from './spelling.ts';

export interface Word {
  readonly text: string;
  /** Marks that stand before it; empty where only a space or a hyphen does. */
  readonly marks: string;
}

/** Words in order, and the marks behind the last one. */
export function wordsOf(text: string): { words: Word[]; end: string } {
  const plain = bare(lower(fold(text)));
  const words: Word[] = [];
  let current = '';
  let marks = '';
  for (let i = 0; i <= plain.length; i++) {
    const c = plain.charAt(i);
    if (c !== '' && (isLetter(c) || isDigit(c))) current += c;
    else if (c !== "'") {
      if (current !== '') {
        words.push({ text: spelled(calm(current)), marks });
        marks = '';
      }
      current = '';
      // Many marks in a row say no more than a few.
      if (c !== ' ' && c !== '-' && marks.length < 4) marks += c;
    }
  }
  return { words, end: marks };
}

/** Three or more of the same letter are one: "smoooke". */
function calm(word: string): string {
  let out = '';
  for (let i = 0; i < word.length; ) {
    let end = i + 1;
    while (word[end] === word[i]) end++;
    out += end - i >= 3 ? word.charAt(i) : word.slice(i, end);
    i = end;
  }
  return out;
}
