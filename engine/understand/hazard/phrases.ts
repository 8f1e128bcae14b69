/** All words of danger by their first word, the longest first. */
import { CLEAR } from './words-clear.ts';
import { MAYBE } from './words-maybe.ts';
import { type Hazard, NOW } from './words-now.ts';

export interface Phrase {
  readonly words: readonly string[];
  readonly weight: 'now' | 'maybe' | 'clear';
  readonly hazard: Hazard;
}

export const PHRASES: ReadonlyMap<string, readonly Phrase[]> = byFirstWord();

function byFirstWord(): Map<string, Phrase[]> {
  const found = new Map<string, Phrase[]>();
  const put = (phrase: string, weight: Phrase['weight'], hazard: Hazard): void => {
    const words = phrase.split(/\s+/);
    const [first = ''] = words;
    found.set(first, [...(found.get(first) ?? []), { words, weight, hazard }]);
  };
  for (const [hazard, phrases] of NOW) for (const phrase of phrases) put(phrase, 'now', hazard);
  for (const [hazard, phrases] of MAYBE) for (const phrase of phrases) put(phrase, 'maybe', hazard);
  for (const phrase of CLEAR) put(phrase, 'clear', 'other');
  for (const phrases of found.values()) phrases.sort((a, b) => b.words.length - a.words.length);
  return found;
}
