/** What the words of a typed line may mean to one prompt: names of fields and of options. */
import type { Part } from '../../schema.ts';
import type { FieldPart } from '../field.ts';
import { join, joined, type Token, tokensOf } from '../token.ts';
import { plainWords } from './plain.ts';

export type Meaning =
  | { readonly kind: 'field'; readonly key: string }
  | {
      readonly kind: 'option';
      readonly part: string;
      readonly id: string /** One letter: counts only at the head. */;
      readonly letter: boolean;
      /** A word of the language for an option of a list: counts only where nothing else is said in its breath. */
      readonly plain?: boolean;
    };

export interface Found {
  readonly meanings: readonly Meaning[];
  /** How many tokens it takes. */
  readonly length: number;
}

export type OptionMeaning = Extract<Meaning, { kind: 'option' }>;
export const optionsOf = (found: Found): OptionMeaning[] =>
  found.meanings.filter((meaning) => meaning.kind === 'option');

export type OptionPart = Extract<Part, { kind: 'choose' | 'confirm' | 'act' }>;

export class Lexicon {
  readonly fields: readonly FieldPart[];
  readonly choices: readonly OptionPart[];
  /** Field names of one word, for a number glued to them. */
  readonly names = new Set<string>();
  readonly #meanings = new Map<string, Meaning[]>();
  /** Every beginning of every name, so that a search ends at the first word that fits none. */
  readonly #beginnings = new Set<string>();

  constructor(parts: readonly Part[]) {
    this.fields = parts.filter((part) => part.kind === 'field');
    this.choices = parts.filter((part) => part.kind === 'choose' || part.kind === 'confirm' || part.kind === 'act');
    for (const { key, words, ask } of this.fields)
      for (const name of [key, ...words, ask]) if (name.length > 0) this.#add(name, { kind: 'field', key });
    for (const part of this.choices) this.#addOptions(part);
    this.#addPlainAnswers();
  }

  /** The longest name at `at`. */
  find(tokens: readonly Token[], at: number): Found | null {
    if (tokens[at]?.kind === 'mark') return null;
    let found: Found | null = null;
    let name = '';
    let gap = 0;
    for (let i = at; i < tokens.length; i++) {
      const token = tokens[i];
      if (!token || (token.kind === 'mark' && !INSIDE.includes(token.text))) break;
      if (token.kind === 'mark') continue;
      const empty = i > at && EMPTY.has(token.text);
      const longer = join(name, meant(token));
      const meanings = this.#meanings.get(longer);
      if (meanings) found = { meanings, length: i - at + 1 };
      gap = empty ? gap + 1 : 0;
      if (gap > LONGEST_GAP) break;
      if (empty) continue;
      name = longer;
      if (!this.#beginnings.has(name)) break;
    }
    return found;
  }

  #addOptions(part: OptionPart): void {
    for (const option of part.options) {
      const meaning = { kind: 'option', part: part.key, id: option.id, letter: false } as const;
      for (const name of [...letterIn(part, option.id), option.label, withoutLetter(option.label), ...option.words]) {
        const letter = letterOf(name);
        const plain = part.kind === 'choose' && BARE.has(name.toLowerCase()) ? { plain: true } : {};
        this.#add(letter ?? name, { ...meaning, ...plain, letter: (letter ?? name).length === 1 });
        if (letter) this.#add(name, meaning);
      }
      // An id is the author's word: beside words that are not understood it is rather one of them.
      if (part.kind === 'choose') this.#add(option.id, { ...meaning, plain: true });
    }
  }

  /** Yes, no, can't and done, where one part alone can mean them; in a list beside the option's own words. */
  #addPlainAnswers(): void {
    const [part, ...more] = this.choices.filter(({ kind }) => kind !== 'choose');
    const plain = part && more.length === 0 ? [part] : [];
    for (const { kind, key, ask, options } of [...plain, ...this.choices.filter((other) => other.kind === 'choose')])
      for (const { id } of options)
        for (const word of plainWords(kind, id, ask))
          this.#add(word, {
            kind: 'option',
            part: key,
            id,
            letter: false,
            // "idk what it is" says what it says, "no idea" is no no.
            ...(kind === 'choose' && id !== 'unsure' ? { plain: true } : {}),
          });
  }

  #add(name: string, meaning: Meaning): void {
    const tokens = tokensOf(name).filter(({ kind }) => kind !== 'mark');
    const last = tokens.length - 1;
    const key = joined(tokens.filter(({ text }, i) => i === 0 || i === last || !EMPTY.has(text)).map(meant));
    if (key === '') return;
    if (meaning.kind === 'field') for (const { text } of tokens.length === 1 ? tokens : []) this.names.add(text);
    for (let end = 1; end <= key.length; end++) this.#beginnings.add(key.slice(0, end));
    const known = this.#meanings.get(key) ?? [];
    if (!known.some((other) => same(other, meaning))) this.#meanings.set(key, [...known, meaning]);
  }
}

const same = (a: Meaning, b: Meaning): boolean =>
  a.kind === 'field'
    ? b.kind === 'field' && a.key === b.key
    : b.kind === 'option' && a.part === b.part && a.id === b.id;

const letterIn = ({ kind }: OptionPart, id: string): string[] => (kind === 'choose' && id.length === 1 ? [id] : []);

/** In a list these answer only alone: "no idea" is no no. */
export const BARE: ReadonlySet<string> = new Set(['yes', 'no', 'none', 'nothing']);

/** Words inside a name that it goes by without: "the fan is still". At its end they belong to it: "it is". */
const EMPTY = new Set(['is', 'are', 'was', 'the']);
const LONGEST_GAP = 2;
/** "isn't", "won't" and "doesn't" say not, and "spinnin" is spinning. */
const meant = (token: Token): Token =>
  NEGATIVES.has(token.text)
    ? { ...token, text: 'not' }
    : /(?:nn|mm|pp|tt|ck)in$/.test(token.text)
      ? { ...token, text: `${token.text}g` }
      : token;
const NEGATIVES = new Set(['isnt', 'arent', 'wasnt', 'werent', 'aint', 'doesnt', 'dont', 'didnt', 'wont']);

/** Marks that may stand inside a name: "L1–G", "line, then fan". */
const INSIDE = '-/+&,()"’';

/** "a. outdoor unit silent" goes by its letter too. */
const letterOf = (label: string): string | null => {
  const [first, second] = tokensOf(label);
  return first?.text.length === 1 && second?.kind === 'mark' && '.)'.includes(second.text) ? first.text : null;
};
const withoutLetter = (label: string): string => (letterOf(label) ? label.slice(label.search(/[.)]/) + 1) : label);
