/**
 * A hazard wins over everything, so every text is read for one, from any state.
 *
 * Denied danger counts nothing ("no smoke", "don't smell gas"), but only where the denial stands right before it.
 * Danger of another time or place, asked about or supposed, asks one tap. In doubt the danger counts.
 */
import { lower } from '../fold.ts';
import { Contexts } from './context.ts';
import { PHRASES, type Phrase } from './phrases.ts';
import { refrigerantLeak } from './refrigerant.ts';
import { type Word, wordsOf } from './text.ts';
import { DENIALS } from './words-clear.ts';
import type { Hazard } from './words-now.ts';

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
  const { words, end: last } = wordsOf(text);
  const contexts = new Contexts(words, last);
  let maybe: HazardRead | null = null;
  let deniedUpTo = -1;
  for (let i = 0; i < words.length; ) {
    const found = longestAt(words, i);
    if (!found) {
      i++;
      continue;
    }
    const end = i + found.words.length;
    const { weight, hazard } = found;
    const denied =
      weight !== 'clear' && (isDenied(words, i, end) || (deniedUpTo >= 0 && isCarried(words, deniedUpTo, i)));
    if (denied) deniedUpTo = end;
    else if (weight === 'now' && !contexts.isElsewhere(i)) return { level: 'now', hazard };
    else if (weight !== 'clear') maybe ??= { level: 'maybe', hazard };
    // Worse may begin inside: "he fell off the roof".
    i = weight === 'maybe' && !denied ? i + 1 : end;
  }
  const leak = refrigerantLeak(words);
  if (leak < 0) return maybe;
  return contexts.isElsewhere(leak)
    ? (maybe ?? { level: 'maybe', hazard: 'refrigerant' })
    : { level: 'now', hazard: 'refrigerant' };
}

function longestAt(words: readonly Word[], i: number): Phrase | null {
  for (const phrase of PHRASES.get(words[i]?.text ?? '') ?? [])
    if (phrase.words.every((word, k) => words[i + k]?.text === word && (k === 0 || words[i + k]?.marks === '')))
      return phrase;
  return null;
}

const isParted = (word: Word | undefined): boolean => word !== undefined && word.marks.replaceAll('/', '') !== '';

/** "Never seen smoke like this", "never shocked this bad" tell of danger. "One" denies only as "no one" or "not one". */
function isDenied(words: readonly Word[], at: number, end: number): boolean {
  const [next, then] = [words[end]?.text ?? '', words[end + 1]?.text ?? ''];
  if (next === 'like' || ((next === 'this' || next === 'so') && BAD.has(then))) return false;
  return DENIALS.some(({ by, over }) => {
    for (let i = at; i > 0 && at - i < LONGEST_GAP && !isParted(words[i]); i--) {
      const before = words[i - 1]?.text ?? '';
      if (by.has(before)) return before !== 'one' || ['no', 'not'].includes(words[i - 2]?.text ?? '');
      if (!over.has(before)) return false;
    }
    return false;
  });
}

/** "no smoke or flames", "no smoke/flames": the denial reaches over "or" and a slash, not over a comma. */
const isCarried = (words: readonly Word[], from: number, to: number): boolean =>
  !isParted(words[to]) &&
  (to === from
    ? words[to]?.marks === '/'
    : to - from === 1 && ['or', 'nor', 'ni', 'o'].includes(words[from]?.text ?? ''));

const BAD = new Set(['bad', 'badly', 'much', 'thick', 'hard', 'strong']);
const LONGEST_GAP = 5;
