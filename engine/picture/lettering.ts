/** How wide words come out, without a font at hand: never narrower than in our own face or a usual sans in its stead. */
import { plain } from './svg.ts';

const NARROW = /[\u2009\u202f .,:;'’|!iljI()[\]/-]/u;
const WIDE = /[mwMWO@%Ω—→]/u;
const BROAD = /[A-Z0-9_+=±×÷·µ√−–<>#$?&]/u;

/** Share of the size that one character takes, from the side of too much. */
const share = (character: string): number => {
  if (NARROW.test(character)) return 0.4;
  if (WIDE.test(character)) return 1;
  if (BROAD.test(character)) return 0.72;
  return (character.codePointAt(0) ?? 0) < 0x250 ? 0.63 : 1.1;
};
/** Width in px at this size. */
export const widthOf = (words: string, size = 14): number =>
  [...plain(words)].reduce((sum, character) => sum + share(character), 0) * size;

/** As much of the words as fits, with … where something was left out. */
export function shortened(words: string, width: number, size = 14): string {
  const whole = plain(words);
  if (widthOf(whole, size) <= width) return whole;
  let room = width - widthOf('…', size);
  const kept: string[] = [];
  for (const character of whole) {
    room -= share(character) * size;
    if (room < 0) break;
    kept.push(character);
  }
  return `${kept.join('').trimEnd()}…`;
}

/** Words on at most so many lines; the last one takes what is left, shortened. */
export function wrap(words: string, width: number, size = 14, most = 2): string[] {
  const lines: string[] = [];
  let line = '';
  const all = plain(words).split(' ');
  for (const [i, word] of all.entries()) {
    const longer = line === '' ? word : `${line} ${word}`;
    if (widthOf(longer, size) <= width || line === '') line = longer;
    else if (lines.length === most - 1) {
      line = `${line} ${all.slice(i).join(' ')}`;
      break;
    } else {
      lines.push(line);
      line = word;
    }
  }
  return [...lines, line].map((each) => shortened(each, width, size));
}

/** Where words of this width may be anchored in the middle without leaving the range. */
export const kept = (x: number, width: number, from: number, to: number): number =>
  Math.max(from + width / 2, Math.min(to - width / 2, x));
