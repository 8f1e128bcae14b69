/**
 * A hazard wins over everything, so every text is read for one, from any state.
 *
 * Denied danger counts nothing ("no smoke", "don't smell gas"), but only where the denial stands right before it.
 * In doubt the danger counts: a needless card costs one tap.
 */
import { bare, fold, isDigit, isLetter, lower } from '../fold.ts';
import { CLEAR, DENIALS, type Hazard, MAYBE, NOW, type Weight } from './words.ts';

export interface HazardRead {
  level: 'now' | 'maybe';
  hazard: Hazard;
}

/**
 * The hazard in a text, or null. `offered` holds what can be tapped here: a text that is one of these and nothing else
 * is an answer. `now` wins over `maybe`, the first of its kind counts. Never throws.
 */
export function readHazard(text: string, offered: readonly string[]): HazardRead | null {
  const said = lower(text.trim());
  if (offered.some((option) => lower(option.trim()) === said)) return null;
  const words = wordsOf(text);
  let maybe: HazardRead | null = null;
  let deniedUpTo = -1;
  for (let i = 0; i < words.length; ) {
    const found = longestAt(words, i);
    if (!found) {
      i++;
      continue;
    }
    const end = i + found.length;
    const denied =
      found.weight !== 'clear' && (isDenied(words, i, end) || (deniedUpTo >= 0 && isCarried(words, deniedUpTo, i)));
    if (denied) deniedUpTo = end;
    else if (found.weight === 'now') return { level: 'now', hazard: found.hazard };
    else if (found.weight === 'maybe') maybe ??= { level: 'maybe', hazard: found.hazard };
    i = end;
  }
  return maybe;
}

interface Word {
  text: string;
  /** A comma, full stop or the like stands before it. */
  parted: boolean;
  /** A slash joins it to the word before. */
  slashed: boolean;
}
interface Phrase {
  words: string[];
  weight: Weight;
  hazard: Hazard;
}

/** Words without accents and apostrophes; three or more of the same letter are one ("smoooke"). */
function wordsOf(text: string): Word[] {
  const plain = bare(lower(fold(text)));
  const words: Word[] = [];
  let current = '';
  let parted = false;
  let slashed = false;
  for (let i = 0; i <= plain.length; i++) {
    const c = plain.charAt(i);
    if (c !== '' && (isLetter(c) || isDigit(c))) current += c;
    else if (c !== "'") {
      if (current !== '') words.push({ text: calm(current), parted, slashed });
      if (current !== '') [parted, slashed] = [false, false];
      current = '';
      if (c === '/') slashed = true;
      else if (c !== ' ' && c !== '-') parted = true;
    }
  }
  return words;
}

const calm = (word: string): string => {
  let out = '';
  for (let i = 0; i < word.length; ) {
    let end = i + 1;
    while (word[end] === word[i]) end++;
    out += end - i >= 3 ? word.charAt(i) : word.slice(i, end);
    i = end;
  }
  return out;
};

function longestAt(words: readonly Word[], i: number): (Phrase & { length: number }) | null {
  for (const phrase of PHRASES.get(words[i]?.text ?? '') ?? [])
    if (phrase.words.every((word, k) => words[i + k]?.text === word && (k === 0 || !words[i + k]?.parted)))
      return { ...phrase, length: phrase.words.length };
  return null;
}

/** "Never seen smoke like this" tells of smoke. "One" denies only as "no one". */
function isDenied(words: readonly Word[], at: number, end: number): boolean {
  if (words[end]?.text === 'like') return false;
  return DENIALS.some(({ by, over }) => {
    for (let i = at; i > 0 && at - i < LONGEST_GAP && !words[i]?.parted; i--) {
      const before = words[i - 1]?.text ?? '';
      if (by.has(before)) return before !== 'one' || words[i - 2]?.text === 'no';
      if (!over.has(before)) return false;
    }
    return false;
  });
}

/** "no smoke or flames", "no smoke/flames": the denial reaches over "or" and a slash, not over a comma. */
const isCarried = (words: readonly Word[], from: number, to: number): boolean =>
  !words[to]?.parted &&
  (to === from
    ? words[to]?.slashed === true
    : to - from === 1 && ['or', 'nor', 'ni', 'o'].includes(words[from]?.text ?? ''));

const LONGEST_GAP = 5;

/** By first word, the longest first. */
const PHRASES = new Map<string, Phrase[]>();
const put = (phrase: string, weight: Weight, hazard: Hazard): void => {
  const words = phrase.split(/\s+/);
  const [first = ''] = words;
  PHRASES.set(first, [...(PHRASES.get(first) ?? []), { words, weight, hazard }]);
};
/** Slips of a thumb: two letters swapped, one doubled; in long words one left out. Never where it makes another word of the list. */
function slips(word: string): string[] {
  if (word.includes(' ') || word.length < 5) return [];
  const out: string[] = [];
  for (let i = 0; i < word.length; i++) {
    const [head, c, next, tail] = [word.slice(0, i), word.charAt(i), word.charAt(i + 1), word.slice(i + 2)];
    out.push(head + next + c + tail, head + c + c + next + tail);
    if (word.length >= 7) out.push(head + next + tail);
  }
  return out;
}
for (const [hazard, phrases] of NOW) for (const phrase of phrases) put(phrase, 'now', hazard);
for (const [hazard, phrases] of MAYBE) for (const phrase of phrases) put(phrase, 'maybe', hazard);
for (const phrase of CLEAR) put(phrase, 'clear', 'other');
const known = new Set(PHRASES.keys());
for (const [weight, table] of [
  ['now', NOW],
  ['maybe', MAYBE],
] as const)
  for (const [hazard, phrases] of table)
    for (const phrase of phrases)
      for (const slip of new Set(slips(phrase))) if (!known.has(slip)) put(slip, weight, hazard);
for (const phrases of PHRASES.values()) phrases.sort((a, b) => b.words.length - a.words.length);
