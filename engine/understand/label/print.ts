/** The tokens of a print, and which of its numbers already have a role. */
import { Decimal } from 'decimal.js';
import { fold, lower } from '../fold.ts';
import { unitOf } from '../unit.ts';
import { type LabelToken, labelTokens } from './token.ts';
import { unitsBehind } from './units-first.ts';

/** Wider than any typed number, so that conversion by powers of ten is exact. */
const Exact = Decimal.clone({ precision: 200 });
const LONGEST_NUMBER = 60;

export class LabelPrint {
  readonly tokens: readonly LabelToken[];
  readonly #taken = new Set<number>();

  readonly #texts: readonly string[];
  readonly #numbers = new Map<number, Decimal>();

  constructor(text: string) {
    this.tokens = labelTokens(unitsBehind(fold(text)).replace(/a\.\s?f\.\s?c\.?/gi, 'AFC'));
    this.#texts = this.tokens.map((token) => lower(token.text));
  }

  /** Lower case text of a token; empty beyond the ends. */
  text(i: number): string {
    return this.#texts[i] ?? '';
  }
  says(words: ReadonlySet<string>): boolean {
    return this.#texts.some((text) => words.has(text));
  }
  isTight(i: number): boolean {
    return this.tokens[i]?.tight ?? false;
  }
  isNumber(i: number): boolean {
    return this.tokens[i]?.kind === 'number';
  }
  /** A number that has no role yet. */
  isOpen(i: number): boolean {
    return this.isNumber(i) && !this.#taken.has(i);
  }
  isTwoWays(i: number): boolean {
    const token = this.tokens[i];
    return token?.kind === 'number' && (token.value === null || token.text.length > LONGEST_NUMBER);
  }
  open(): number[] {
    return this.tokens.flatMap((_, i) => (this.isOpen(i) ? [i] : []));
  }
  /** Zero for what is no number, or is one in two ways: plausible for nothing. */
  number(i: number): Decimal {
    const known = this.#numbers.get(i);
    if (known) return known;
    const token = this.tokens[i];
    const number = new Exact(token?.kind === 'number' && !this.isTwoWays(i) ? (token.value ?? '0') : '0');
    this.#numbers.set(i, number);
    return number;
  }
  claim(i: number): Decimal {
    this.#taken.add(i);
    return this.number(i);
  }

  /** Open numbers directly before a word that `is` so. */
  before(is: (word: string) => boolean): number[] {
    return this.open().filter((i) => is(this.text(i + 1)));
  }

  /** A number and those joined to it on the left by one of `signs`, while `fits`; in the order of the print. */
  chainBack(last: number, signs: readonly string[], fits: (n: Decimal) => boolean): number[] {
    const chain = [last];
    let i = last;
    while (signs.includes(this.text(i - 1)) && this.isOpen(i - 2) && fits(this.number(i - 2))) {
      i -= 2;
      chain.unshift(i);
    }
    return chain;
  }

  /** Two open numbers that fit, with one of `signs` between, and no third joined to them. */
  pairs(signs: readonly string[], fits: (n: Decimal) => boolean): [number, number][] {
    const open = (i: number): boolean => this.isOpen(i) && fits(this.number(i));
    const joined = (i: number): boolean => signs.includes(this.text(i + 1)) && open(i) && open(i + 2);
    return this.open().flatMap((i): [number, number][] =>
      joined(i) && !joined(i - 2) && !joined(i + 2) ? [[i, i + 2]] : [],
    );
  }

  /** "HERM 45 FAN 5": one open number after each. */
  afterWord(...names: ReadonlySet<string>[]): number[] | null {
    const found = names.map((name) => this.open().filter((i) => name.has(this.text(i - 1))));
    return found.every((at) => at.length === 1) ? found.flat() : null;
  }

  /** Sections by their unit, in µF: "45 µF", "45+5 µF", "45 µF + 5 µF", "45 µF + 5". */
  withCapacitanceUnit(): Decimal[] | 'start' | 'which-unit' | 'unclear' {
    const found: Decimal[] = [];
    for (const i of this.open()) {
      const unit = unitOf(this.tokens[i + 1]?.text ?? '');
      if (!this.isOpen(i) || this.tokens[i + 1]?.kind !== 'word' || unit?.of !== 'µF') continue;
      if (unit.doubt) return 'which-unit';
      if (['-', 'to'].includes(this.text(i - 1)) && this.isOpen(i - 2))
        return this.number(i - 2).lt(this.number(i)) ? 'start' : 'unclear';
      const chain = this.chainBack(i, JOINS, () => true);
      if (JOINS.includes(this.text(i + 2)) && this.isOpen(i + 3) && this.isBareSection(i + 3)) chain.push(i + 3);
      if (chain.some((j) => this.isTwoWays(j))) return 'unclear';
      found.push(...chain.map((j) => this.claim(j).times(unit.factor)));
    }
    return found;
  }

  private isBareSection(i: number): boolean {
    return this.number(i).lte(60) && unitOf(this.tokens[i + 1]?.text ?? '')?.of !== 'µF';
  }
}

const JOINS = ['+', '/', '&', 'and'];
