/** The numbers of a line as they stand: with a name, without one, or in a way that can be read twice. */
import { numberWord } from '../number.ts';
import { FILLERS, type Line, PARTING } from './state.ts';
import { valueEnd } from './values.ts';
import { CLOSING } from './vocabulary.ts';

export interface Span {
  from: number;
  to: number;
}
export interface Named extends Span {
  key: string;
  value: Span;
}
/** A name that several fields share, with fewer values behind it than fields. */
interface Shared {
  keys: readonly string[];
  given: readonly string[];
}

export class FieldScan {
  /** A count before its word: "1 cap". Sure, whatever else stands in the line. */
  readonly counted: Named[] = [];
  readonly named: Named[] = [];
  readonly loose: Span[] = [];
  readonly shared: Shared[] = [];
  /** Fields that are spoken of in a way that can be read twice. */
  readonly unsure = new Set<string>();
  /** Fields that have a value by their name. */
  readonly valued = new Set<string>();
  /** A name has no value. */
  dangling = false;
  /** "44 ,5" may be two numbers or a slip in one: no number without a name is sure. */
  twoWays = false;

  readonly #line: Line;
  readonly #anyRequired: boolean;
  readonly #decimalCommas: boolean;
  /** Where in `loose` the numbers begin that follow each other without a word: "44 5 3 rusty" is none of them. */
  #runFrom = 0;
  /** Behind a word that is not understood, a number belongs to that word. */
  #foreign = false;
  /** Directly behind a named number, a number is one too many. */
  #touching = false;

  constructor(line: Line) {
    this.#line = line;
    this.#anyRequired = line.lexicon.fields.some(({ optional }) => !optional);
    this.#decimalCommas = line.tokens.some(({ kind, text }) => kind === 'number' && /\d,\d/.test(text));
    for (let i = 0; i < line.tokens.length; ) i = this.#step(i);
  }

  /** Reads what stands at `i`; returns where to go on. */
  #step(i: number): number {
    const line = this.#line;
    const token = line.tokens[i];
    if (line.isUsed(i) || token?.kind === 'mark') {
      if (line.isUsed(i) || line.isMark(i, PARTING)) this.#foreign = false;
      if (line.isUsed(i) || line.isMark(i, `${PARTING}/`)) this.#touching = false;
      return i + 1;
    }
    const counted = this.#countBefore(i);
    if (counted > 0) return counted;
    const name = line.fieldsAt(i);
    if (name) return this.#readNamed(i, i + name.length, name.keys);
    const option = line.find(i);
    // "240" may be the name of an option; where numbers must be given it is one of them.
    const isOption = option !== null && (option.length > 1 || token?.kind === 'word' || !this.#anyRequired);
    const end = isOption ? 0 : valueEnd(line, i, this.#touching);
    if (end > 0) return this.#readNumber(i, end);
    const answers =
      option?.meanings.some((meaning) => meaning.kind === 'option' && line.answers(meaning.part)) ?? false;
    this.#runFrom = this.loose.length;
    if (answers) this.#foreign = false;
    else if (option !== null || !line.isWord(i, FILLERS)) this.#foreign = true;
    this.#touching = false;
    return i + (option?.length ?? 1);
  }

  /** The value; for a name that several fields share, the values of those that have none yet. */
  #readNamed(from: number, after: number, keys: readonly string[]): number {
    const line = this.#line;
    const left = keys.filter((key) => !this.valued.has(key));
    const wanted = left.length > 0 ? left : keys;
    let at = after;
    while (line.isMark(at, ':=→') || line.isWord(at, IS)) at++;
    const values: Span[] = [];
    for (let next = at; values.length < wanted.length; next = this.#overJoin(at)) {
      const end = valueEnd(line, next, true);
      if (end === 0) break;
      values.push({ from: next, to: end });
      at = end;
    }
    this.#foreign = false;
    this.#touching = true;
    this.#runFrom = this.loose.length;
    if (values.length === 0 && this.#isNoFigure(wanted[0], at)) {
      values.push({ from: at, to: at + 1 });
      at++;
    }
    if (values.length === 0) {
      this.dangling = true;
      return after;
    }
    // "herm 36.1?" is no reading yet.
    if (line.isMark(at, '?')) this.unsure.add(wanted[values.length - 1] ?? '');
    // "fan 5 .8", "herm 44 5": a slip of the space bar, or one number too many.
    if (line.tokens[at]?.kind === 'number' && valueEnd(line, at, true) > 0) return at;
    if (this.#isForeignCount(wanted[0], at)) this.unsure.add(wanted[0] ?? '');
    const given = wanted.slice(0, values.length);
    if (values.length < wanted.length) this.shared.push({ keys, given });
    values.forEach((value, n) => {
      this.valued.add(given[n] ?? '');
      this.named.push({ key: given[n] ?? '', from: n === 0 ? from : value.from, to: value.to, value });
    });
    return at;
  }

  /** "case short", "fuses good": said of a reading instead of its figure, so the figure is asked and not passed over. */
  #isNoFigure(key: string | undefined, at: number): boolean {
    const line = this.#line;
    return key !== undefined && !this.#isCount(key) && line.isWord(at, NO_FIGURES) && line.find(at) === null;
  }

  /** Between the values of one name: "fuses .1/.1", "contacts .1 and .1", ".1, .1"; not ".1, 12.6 coil", ".1, .2, .3". */
  #overJoin(at: number): number {
    const line = this.#line;
    const end = this.#isJoin(at) ? valueEnd(line, at + 1, false) : 0;
    const goesOn = line.isMark(at, ',') && line.isMark(end, ',/') && valueEnd(line, end + 1, false) > 0;
    return end > 0 && !goesOn && this.#nameEnd(end) === 0 ? at + 1 : at;
  }
  /** A slash with a space beside it parts the groups of a line. */
  #isJoin(at: number): boolean {
    const { tokens } = this.#line;
    const tight = tokens[at - 1]?.end === tokens[at]?.start && tokens[at]?.end === tokens[at + 1]?.start;
    return this.#line.isMark(at, '&,') || this.#line.isWord(at, AND) || (tight && this.#line.isMark(at, '/'));
  }

  #readNumber(from: number, to: number): number {
    const named = this.#gluedBefore(from, to) || this.#nameBehind(from, to);
    if (named > 0) return named;
    if (this.#isTwoWays(from)) this.twoWays = true;
    if (!this.#standsAlone(to)) this.loose.length = this.#runFrom;
    else if (!this.#foreign && !this.#touching) this.loose.push({ from, to });
    return to;
  }

  /** "1 cap", "two caps": only a whole number before the word of a count. "1 start cap" is one more, or the same. */
  #countBefore(from: number): number {
    const line = this.#line;
    const text = line.tokens[from]?.text ?? '';
    if (!/^\d{1,2}$/.test(text) && numberWord(text) === null) return 0;
    for (let to = from + 1; to <= from + LONGEST_PRAISE && line.tokens[to]?.kind === 'word'; to++) {
      const name = line.fieldsAt(to);
      const [key] = name?.keys ?? [];
      if (!name || key === undefined || !this.#isCount(key)) continue;
      const end = to + name.length;
      if (to > from + 1) this.unsure.add(key);
      else this.counted.push({ key, from, to: end, value: { from, to } });
      const behind = line.tokens[end];
      return behind?.kind === 'number' && !line.isUsed(end) && this.#couldBeCount(end) ? to : end;
    }
    return 0;
  }
  #isCount(key: string): boolean {
    return this.#line.lexicon.fields.some((field) => field.key === key && field.unit === 'count');
  }
  /** A whole number that nothing but a mark follows. */
  #couldBeCount(i: number): boolean {
    const next = this.#line.tokens[i + 1];
    return /^\d{1,2}$/.test(this.#line.tokens[i]?.text ?? '') && (next === undefined || next.kind === 'mark');
  }
  /** "cap 1 start cap": the number belongs to what follows. */
  #isForeignCount(key: string | undefined, end: number): boolean {
    const line = this.#line;
    const next = line.tokens[end];
    return key !== undefined && this.#isCount(key) && next?.kind === 'word' && line.find(end) === null;
  }

  /** "43.8herm": its name is glued to it, so it is no other's. */
  #gluedBefore(from: number, end: number): number {
    const line = this.#line;
    const name = line.fieldsAt(end);
    if (name?.keys.length !== 1 || line.tokens[end]?.start !== line.tokens[end - 1]?.end) return 0;
    const to = end + name.length;
    return line.isMark(to, ':=') ? 0 : this.#name(name.keys[0] ?? '', from, end, to);
  }

  /** "13.1 comp, .9 on the fan": a number and its name, and nothing else between two marks. */
  #nameBehind(from: number, end: number): number {
    const line = this.#line;
    const begins = from === 0 || line.isMark(from - 1, `${PARTING}/`);
    const to = begins ? this.#nameEnd(end) : 0;
    return to > 0 ? this.#name(line.fieldsAt(this.#overOn(end))?.keys[0] ?? '', from, end, to) : 0;
  }
  /** Where the name ends that stands at `at`, if it is one field's and the breath ends with it; else 0. */
  #nameEnd(at: number): number {
    const line = this.#line;
    const name = line.fieldsAt(this.#overOn(at));
    const to = this.#overOn(at) + (name?.length ?? 0);
    const ends = to >= line.tokens.length || line.isMark(to, `${PARTING}/`);
    return ends && name?.keys.length === 1 ? to : 0;
  }
  #overOn(at: number): number {
    let to = at;
    while (this.#line.isWord(to, ON)) to++;
    return to;
  }

  #name(key: string, from: number, end: number, to: number): number {
    this.valued.add(key);
    this.named.push({ key, from, to, value: { from, to: end } });
    this.#touching = true;
    this.#foreign = false;
    return to;
  }

  /** A leading comma behind a number, in a line that has no other decimal comma. */
  #isTwoWays(i: number): boolean {
    const { tokens } = this.#line;
    return tokens[i]?.text.startsWith(',') === true && tokens[i - 1]?.kind === 'number' && !this.#decimalCommas;
  }

  /** A number without a name may not be part of a phrase: "12 turns", "121 + 3", "121?". */
  #standsAlone(end: number): boolean {
    const line = this.#line;
    if (end >= line.tokens.length || line.isUsed(end)) return true;
    if (line.tokens[end]?.kind === 'mark') return line.isMark(end, '/,;|→\n.!()');
    if (valueEnd(line, end, true) > 0 || line.fieldsAt(end) !== null || line.isWord(end, FILLERS)) return true;
    let at = end;
    while (line.isWord(at, CLOSING)) at++;
    return at > end && (at >= line.tokens.length || line.isMark(at, PARTING));
  }
}

const words = (text: string): ReadonlySet<string> => new Set(text.split(' '));
const IS = words('is was are reads read reading at pulls pulling draws drawing measures measured shows showing');
const NO_FIGURES = words(
  'short shorted shorts shorting zero good ok okay fine bad nothing none grounded leaks leaky leaking',
);
const ON = words('on at for the');
const AND = words('and');
/** Words between a number and what it counts: "1 old start cap". */
const LONGEST_PRAISE = 3;
