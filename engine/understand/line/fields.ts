/**
 * The numbers of a line, given to the fields they belong to: by name in any order, or by their order alone.
 *
 * Nothing is guessed: numbers without a name count only if they are exactly as many as asked, or as many as the fields
 * before the first named one, or between two named ones. A name without a value beside a number without a name gives nothing, because the number
 * may stand before its name. A field named twice is a contradiction and gives nothing.
 */
import type { FieldPart } from '../field.ts';
import { FILLERS, type Line, PARTING } from './state.ts';
import { valueEnd } from './values.ts';

interface Span {
  from: number;
  to: number;
}
interface Named extends Span {
  key: string;
  value: Span;
}

/** Raw text by field key. What it gives is used; the rest stays for others or unread. */
export function claimFields(line: Line): Record<string, string> {
  const scan = new FieldScan(line);
  const given: Record<string, string> = {};
  for (const { key, from, to, value } of [...scan.named(), ...scan.placed()]) {
    given[key] = line.slice(value.from, value.to);
    line.use(from, to);
  }
  return given;
}

class FieldScan {
  readonly #line: Line;
  /** A count before its word: "1 cap". Sure, whatever else stands in the line. */
  readonly #counted: Named[] = [];
  readonly #named: Named[] = [];
  readonly #loose: Span[] = [];
  /** Where in `#loose` the numbers begin that follow each other without a word: "44 5 3 rusty" is none of them. */
  #runFrom = 0;
  #dangling = false;
  /** Behind a word that is not understood, a number belongs to that word. */
  #foreign = false;
  /** Directly behind a named number, a number is one too many. */
  #touching = false;
  /** "44 ,5" may be two numbers or a slip in one: no number without a name is sure. */
  #twoWays = false;

  readonly #anyRequired: boolean;

  constructor(line: Line) {
    this.#line = line;
    this.#anyRequired = required(line.lexicon.fields).length > 0;
    for (let i = 0; i < line.tokens.length; ) i = this.#step(i);
  }

  named(): Named[] {
    const times = new Map<string, number>();
    for (const { key } of [...this.#counted, ...this.#named]) times.set(key, (times.get(key) ?? 0) + 1);
    const sure = this.#dangling && this.#loose.length > 0 ? this.#counted : [...this.#counted, ...this.#named];
    return sure.filter(({ key }) => times.get(key) === 1);
  }

  /** Numbers without a name, by order. */
  placed(): Named[] {
    if (this.#loose.length === 0 || this.#dangling || this.#twoWays) return [];
    const { fields } = this.#line.lexicon;
    const taken = new Set([...this.#counted, ...this.#named].map(({ key }) => key));
    const missing = fields.filter(({ key }) => !taken.has(key));
    const candidates: (readonly FieldPart[])[] = this.#named.length === 0 ? [required(missing), missing] : [];
    if (this.#named.length > 0) {
      const firstNamed = fields.findIndex(({ key }) => this.#named.some((found) => found.key === key));
      const leading = fields.slice(0, firstNamed).filter(({ key }) => !taken.has(key));
      const allBefore = (this.#loose.at(-1)?.from ?? 0) < (this.#named[0]?.from ?? 0);
      if (allBefore) candidates.push(required(leading), leading);
      if (missing.length === 1) candidates.push(missing);
      candidates.push(this.#byGaps(missing, true), this.#byGaps(missing, false));
    }
    const fitting = candidates.find(({ length }) => length === this.#loose.length) ?? [];
    return this.#loose.flatMap((value, n) => {
      const key = fitting[n]?.key;
      return key === undefined ? [] : [{ key, ...value, value }];
    });
  }

  /**
   * Names in the order of the question, and between them as many numbers as fields lie between: "121 / 0 0 0 / 2nd feed
   * 0 0 0 / 121". Empty where it doesn't come out.
   */
  #byGaps(missing: readonly FieldPart[], onlyRequired: boolean): readonly FieldPart[] {
    const { fields } = this.#line.lexicon;
    const place = ({ key }: { key: string }): number => fields.findIndex((field) => field.key === key);
    const names = this.#named.map((found) => ({ at: found.from, place: place(found) }));
    if (names.some((name, n) => name.place <= (names[n - 1]?.place ?? -1))) return [];
    const gapOf = (at: number): number => names.filter((name) => name.at < at).length;
    const wanted = onlyRequired ? required(missing) : missing;
    const gapOfField = (field: FieldPart): number => names.filter((name) => name.place < place(field)).length;
    const fits =
      wanted.length === this.#loose.length &&
      this.#loose.every(({ from }, n) => {
        const field = wanted[n];
        return field !== undefined && gapOfField(field) === gapOf(from);
      });
    return fits ? wanted : [];
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
    const name = line.fieldsAt(i);
    if (name) return this.#readNamed(i, i + name.length, name.keys);
    const option = line.find(i);
    // "240" may be the name of an option; where numbers must be given it is one of them.
    const isOption = option !== null && (option.length > 1 || token?.kind === 'word' || !this.#anyRequired);
    const end = isOption ? 0 : valueEnd(line, i, this.#touching);
    if (end > 0) return this.#readNumber(i, end);
    const answers =
      option?.meanings.some((meaning) => meaning.kind === 'option' && line.answers(meaning.part)) ?? false;
    this.#runFrom = this.#loose.length;
    this.#foreign = !answers && (option !== null || !line.isWord(i, FILLERS));
    this.#touching = false;
    return i + (option?.length ?? 1);
  }

  /** The value; for a name that several fields share, as many values as fields. */
  #readNamed(from: number, after: number, keys: readonly string[]): number {
    const line = this.#line;
    let at = after;
    while (line.isMark(at, ':=') || line.isWord(at, IS)) at++;
    const values: Span[] = [];
    for (let end = 1; values.length < keys.length && end > 0; ) {
      end = valueEnd(line, at, true);
      if (end > 0) values.push({ from: at, to: end });
      at = Math.max(at, end);
    }
    this.#foreign = false;
    this.#touching = true;
    this.#runFrom = this.#loose.length;
    if (values.length === 0) this.#dangling = true;
    if (values.length < keys.length) return values.length > 0 ? at : after;
    // "fan 5 .8": a slip of the space bar, or one number too many.
    if (line.beginsWithMark(at)) return at + 1;
    values.forEach((value, n) => {
      this.#named.push({ key: keys[n] ?? '', from: n === 0 ? from : value.from, to: value.to, value });
    });
    return at;
  }

  #readNumber(from: number, to: number): number {
    const counted = this.#countBefore(from, to) || this.#gluedBefore(from, to);
    if (counted > 0) return counted;
    if (this.#isTwoWays(from)) this.#twoWays = true;
    if (!this.#standsAlone(to)) this.#loose.length = this.#runFrom;
    else if (!this.#foreign && !this.#touching) this.#loose.push({ from, to });
    return to;
  }

  /** "1 cap": only a whole number before the word of a count, which has no value behind it. */
  #countBefore(from: number, end: number): number {
    const line = this.#line;
    const name = line.fieldsAt(end);
    if (name?.keys.length !== 1) return 0;
    const [key = ''] = name.keys;
    const counts = line.lexicon.fields.some((field) => field.key === key && field.unit === 'count');
    const whole = end === from + 1 && /^\d+$/.test(line.tokens[from]?.text ?? '');
    if (!counts || !whole) return 0;
    const to = end + name.length;
    if (line.isMark(to, ':=') || valueEnd(line, to, false) > 0) return 0;
    this.#counted.push({ key, from, to, value: { from, to: end } });
    return to;
  }

  /** "43.8herm": its name is glued to it, so it is no other's. */
  #gluedBefore(from: number, end: number): number {
    const line = this.#line;
    const name = line.fieldsAt(end);
    if (name?.keys.length !== 1 || line.tokens[end]?.start !== line.tokens[end - 1]?.end) return 0;
    const to = end + name.length;
    if (line.isMark(to, ':=')) return 0;
    this.#named.push({ key: name.keys[0] ?? '', from, to, value: { from, to: end } });
    this.#touching = true;
    return to;
  }

  /** A leading comma behind a number, in a line that has no other decimal comma. */
  #isTwoWays(i: number): boolean {
    const { tokens } = this.#line;
    const comma = tokens[i]?.text.startsWith(',') && tokens[i - 1]?.kind === 'number';
    return comma === true && !tokens.some(({ kind, text }) => kind === 'number' && /\d,\d/.test(text));
  }

  /** A number without a name may not be part of a phrase: "12 turns", "121 + 3", "121?". */
  #standsAlone(end: number): boolean {
    const line = this.#line;
    if (end >= line.tokens.length || line.isUsed(end)) return true;
    if (line.tokens[end]?.kind === 'mark') return line.isMark(end, '/,;\n.!()');
    return valueEnd(line, end, true) > 0 || line.fieldsAt(end) !== null || line.isWord(end, FILLERS);
  }
}

const required = <F extends { optional: boolean }>(fields: readonly F[]): F[] =>
  fields.filter(({ optional }) => !optional);
const IS = new Set(['is', 'was', 'reads', 'reading', 'at']);
