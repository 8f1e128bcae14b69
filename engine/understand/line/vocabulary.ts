/** What words mean beside an answer: its own, those of another answer, those that say nothing, those that deny. */
import type { Part } from '../../schema.ts';
import { tokensOf } from '../token.ts';
import type { OptionPart } from './lexicon.ts';
import { FILLERS } from './state.ts';

export interface Vocabulary {
  /** Words of its label, and with its other names. */
  readonly label: ReadonlySet<string>;
  readonly own: ReadonlySet<string>;
  /** What may be said beside it: its own words, those of the question, and what says nothing. */
  readonly beside: ReadonlySet<string>;
  /** What speaks against it: a limit, or a word that only another answer has. */
  readonly against: ReadonlySet<string>;
}

const words = (text: string): string[] => text.trim().split(/\s+/);
export const DENYING: ReadonlySet<string> = new Set(
  words(`no not never without isnt arent wasnt werent dont doesnt didnt wont hasnt havent aint cant cannot couldnt neither
    nor none maybe might perhaps possibly probably unsure if whether sin`),
);
/** Beside an answer's own words these change nothing: "all the wires are off now". */
export const HARMLESS: ReadonlySet<string> = new Set(
  words('n i we have ive weve got all both everything a an of them em im my just now already took taken sir out'),
);
/** Said at the end of a line, about all of it. */
export const CLOSING: ReadonlySet<string> = new Set(
  words('all ok okay good fine dead clean done great sounds looks clear'),
);
/** What limits a yes elsewhere in the message: "yes, but", "except the fan", "done?". */
const LIMITS = [
  ...DENYING,
  ...words('? but except only until unless still yet almost nearly before when after however though pero'),
];
const OPENING = [...DENYING, ...words('but except until unless almost yet')];

/** The vocabulary of one answer of a yes or a done. */
export function vocabularyOf(part: OptionPart, id: string): Vocabulary {
  const byId = vocabularies.get(part) ?? new Map<string, Vocabulary>();
  vocabularies.set(part, byId);
  const known = byId.get(id) ?? made(part, id);
  byId.set(id, known);
  return known;
}
const vocabularies = new WeakMap<OptionPart, Map<string, Vocabulary>>();

function made({ ask, options }: OptionPart, id: string): Vocabulary {
  const namesOf = (wanted: (one: string) => boolean): string[] =>
    options.filter((option) => wanted(option.id)).flatMap(({ label, words: also }) => [label, ...also]);
  const own = namesOf((one) => one === id);
  const beside = new Set([...FILLERS, ...HARMLESS, ...wordsOf([ask, ...own])]);
  for (const word of OPENING) beside.delete(word);
  const others = wordsOf(namesOf((one) => one !== id)).filter((word) => !beside.has(word) && word.length > 2);
  return {
    label: new Set(wordsOf(own.slice(0, 1)).filter((word) => !FILLERS.has(word))),
    own: new Set(wordsOf(own).filter((word) => !FILLERS.has(word))),
    beside,
    against: new Set([...LIMITS, ...others]),
  };
}

/**
 * Whether words that were not read change nothing in an answer: "all good", "done now", and what the answer itself
 * says. Figures never.
 */
export function saysNothing(piece: string, parts: readonly Part[]): boolean {
  const own = parts.flatMap((part) => (part.kind === 'confirm' ? [...vocabularyOf(part, 'yes').label] : []));
  const nothing = new Set([...own, ...CLOSING, ...HARMLESS, ...FILLERS]);
  return tokensOf(piece).every(({ kind, text }) => kind === 'mark' || (kind === 'word' && nothing.has(text)));
}

const wordsOf = (texts: readonly string[]): string[] =>
  texts.flatMap((text) => tokensOf(text).flatMap(({ kind, text: word }) => (kind === 'mark' ? [] : [word])));
