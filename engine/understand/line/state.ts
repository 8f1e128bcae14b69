/** A typed line being read: its tokens, and which of them already have a meaning. */

import type { Part } from '../../schema.ts';
import { type Token, tokensOf } from '../token.ts';
import type { Found, Lexicon } from './lexicon.ts';

export class Line {
  readonly text: string;
  readonly parts: readonly Part[];
  readonly lexicon: Lexicon;
  readonly tokens: readonly Token[];
  /** A temperature is asked, so that "19 degrees" is a figure with its unit. */
  readonly isWarm: boolean;
  readonly #used: Uint8Array;
  readonly #found: (Found | null | undefined)[] = [];

  constructor(text: string, parts: readonly Part[], lexicon: Lexicon) {
    this.text = text;
    this.parts = parts;
    this.lexicon = lexicon;
    const { fields, names } = this.lexicon;
    this.tokens = tokensOf(text, names, fields.length > 1 && fields.every(({ unit }) => unit === 'count'));
    this.isWarm = fields.some(({ unit }) => unit === '°F' || unit === 'Δ°F');
    this.#used = new Uint8Array(this.tokens.length);
  }

  use(from: number, to: number): void {
    this.#used.fill(1, from, to);
  }
  /** No part may take it, and it comes back unread. */
  keep(from: number, to: number): void {
    this.#used.fill(2, from, to);
  }
  isUsed(i: number): boolean {
    return this.#used[i] !== 0;
  }
  isFree(from: number, to: number): boolean {
    for (let i = from; i < to; i++) if (this.isUsed(i)) return false;
    return true;
  }
  /** The tokens of a stretch of the text: first, and the one behind the last. */
  tokensWithin(from: number, to: number): [number, number] {
    const first = this.tokens.findIndex((token) => token.start >= from);
    const behind = this.tokens.findIndex((token) => token.start >= to);
    return [first < 0 ? this.tokens.length : first, behind < 0 ? this.tokens.length : behind];
  }
  /** The words as typed. */
  slice(from: number, to: number): string {
    return this.text.slice(this.tokens[from]?.start ?? 0, this.tokens[to - 1]?.end ?? 0);
  }
  isMark(i: number, marks: string): boolean {
    const token = this.tokens[i];
    return token?.kind === 'mark' && marks.includes(token.text);
  }
  isWord(i: number, words: ReadonlySet<string>): boolean {
    const token = this.tokens[i];
    return token?.kind === 'word' && words.has(token.text);
  }
  /** The longest name at `i`. */
  find(i: number): Found | null {
    const known = this.#found[i];
    if (known !== undefined) return known;
    const found = this.lexicon.find(this.tokens, i);
    this.#found[i] = found;
    return found;
  }
  /** Keys of the fields that the words at `i` name. */
  fieldsAt(i: number): { keys: string[]; length: number } | null {
    const found = this.find(i);
    if (found === null) return null;
    const keys = found.meanings.flatMap((meaning) => (meaning.kind === 'field' ? [meaning.key] : []));
    return keys.length > 0 ? { keys, length: found.length } : null;
  }

  /** Whether a part is answered by a yes or a done. */
  answers(part: string): boolean {
    return this.lexicon.choices.some(({ key, kind }) => key === part && kind !== 'choose');
  }

  /** What has no meaning yet, in order, in the words typed. Parted where something understood stands between. */
  unread(): string[] {
    const pieces: string[] = [];
    let from = -1;
    let last = -1;
    const close = (): void => {
      if (from >= 0 && !this.#isFiller(from, last + 1)) pieces.push(this.slice(from, last + 1));
      from = -1;
    };
    this.tokens.forEach(({ kind, text }, i) => {
      if (this.#used[i] === 1 || (kind === 'mark' && PARTING.includes(text))) close();
      else if (kind !== 'mark' || (from >= 0 && !TRAILING.includes(text)) || BEARING.includes(text)) {
        if (from < 0) from = i;
        last = i;
      }
    });
    close();
    return pieces;
  }

  #isFiller(from: number, to: number): boolean {
    return this.tokens.slice(from, to).every((token) => token.kind === 'word' && FILLERS.has(token.text));
  }
}

/** Marks between which an answer stands for itself. */
export const PARTING = ',;|\n.!?';
const TRAILING = '/-()[]{}":=';
/** Marks that carry meaning where they stand alone. */
const BEARING = '-?';
export const FILLERS = new Set(['and', 'then', 'is', 'are', 'was', 'reads', 'y', 'the', 'it', 'its']);
