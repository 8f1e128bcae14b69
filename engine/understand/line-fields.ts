/**
 * The numbers of a line, given to the fields they belong to: by name in any order, or by their order alone.
 *
 * Nothing is guessed: numbers without a name count only if they are exactly as many as asked, or as many as the fields
 * before the first named one. A name without a value beside a number without a name gives nothing, because the number
 * may stand before its name.
 */
import { isClimbing, isOver } from './field.ts';
import { isDigit } from './fold.ts';
import { FILLERS, type Line, PARTING } from './line-state.ts';
import { unitOf } from './unit.ts';

interface Found {
  key: string;
  from: number;
  to: number;
  valueFrom: number;
  valueTo: number;
}
interface Loose {
  from: number;
  to: number;
}

/** Raw text by field key. What it gives is used; the rest stays for others or unread. */
export function claimFields(line: Line): Record<string, string> {
  const scan = new FieldScan(line);
  const given: Record<string, string> = {};
  for (const { key, from, to, valueFrom, valueTo } of [...scan.certain, ...scan.named(), ...scan.placed()]) {
    given[key] = line.slice(valueFrom, valueTo);
    line.use(from, to);
  }
  return given;
}

class FieldScan {
  /** A count before its word: "1 cap". */
  readonly certain: Found[] = [];
  readonly #line: Line;
  readonly #named: Found[] = [];
  readonly #loose: Loose[] = [];
  #dangling = false;

  constructor(line: Line) {
    this.#line = line;
    this.#scan();
  }

  /** Named once; twice is a contradiction and gives nothing. */
  named(): Found[] {
    if (this.#dangling && this.#loose.length > 0) return [];
    const all = [...this.certain, ...this.#named];
    return this.#named.filter(({ key }) => all.filter((other) => other.key === key).length === 1);
  }

  /** Numbers without a name, by order. */
  placed(): Found[] {
    if (this.#loose.length === 0 || this.#dangling) return [];
    const taken = new Set([...this.certain, ...this.#named].map(({ key }) => key));
    const missing = this.#line.lexicon.fields.filter(({ key }) => !taken.has(key));
    const required = missing.filter(({ optional }) => !optional);
    const first = this.#line.lexicon.fields.findIndex(({ key }) => this.#named.some((found) => found.key === key));
    const leading = missing.filter((field) => this.#line.lexicon.fields.indexOf(field) < first);
    const before = this.#loose.every(({ from }) => this.#named.every((found) => from < found.from));
    const candidates =
      this.#named.length === 0
        ? [required, missing]
        : [
            ...(before ? [leading.filter(({ optional }) => !optional), leading] : []),
            ...(missing.length === 1 ? [missing] : []),
          ];
    const fields = candidates.find(({ length }) => length === this.#loose.length) ?? [];
    return fields.flatMap(({ key }, n) => {
      const loose = this.#loose[n];
      return loose ? [{ key, ...loose, valueFrom: loose.from, valueTo: loose.to }] : [];
    });
  }

  #scan(): void {
    const line = this.#line;
    // Behind a word that is not understood, a number belongs to that word. Behind a named number, it is one too many.
    let foreign = false;
    let touching = false;
    for (let i = 0; i < line.tokens.length; ) {
      const token = line.tokens[i];
      if (!token) break;
      if (line.isUsed(i) || token.kind === 'mark') {
        if (line.isUsed(i) || PARTING.includes(token.text)) foreign = false;
        if (line.isUsed(i) || PARTING.includes(token.text) || token.text === '/') touching = false;
        i++;
        continue;
      }
      const name = line.fieldsAt(i);
      if (name) {
        i = this.#readNamed(i, i + name.length, name.keys);
        foreign = false;
        touching = true;
        continue;
      }
      const found = line.lexicon.find(line.tokens, i);
      const end = found && (found.length > 1 || token.kind === 'word') ? 0 : this.#valueEnd(i, i > 0 && touching);
      if (end > 0) {
        const counted = this.#countAfter(i, end);
        if (counted > 0) i = counted;
        else {
          if (!foreign && !touching && this.#standsAlone(end)) this.#loose.push({ from: i, to: end });
          i = end;
        }
        continue;
      }
      const answer = found?.meanings.some(
        (m) => m.kind === 'option' && line.lexicon.choices.some((p) => p.key === m.part && p.kind !== 'choose'),
      );
      foreign = !answer && (found !== null || !line.isWord(i, FILLERS));
      touching = false;
      i += found?.length ?? 1;
    }
  }

  /** The value, or for a name that several fields share as many values as fields. Returns where to go on. */
  #readNamed(from: number, after: number, keys: readonly string[]): number {
    const line = this.#line;
    let at = after;
    while (line.isMark(at, ':=') || line.isWord(at, IS)) at++;
    const values: Loose[] = [];
    for (let end = this.#valueEnd(at, true); end > 0 && values.length < keys.length; end = this.#valueEnd(at, true)) {
      values.push({ from: at, to: end });
      at = end;
    }
    const [first] = values;
    if (!first) this.#dangling = true;
    if (values.length !== keys.length) return first ? at : after;
    values.forEach((value, n) => {
      this.#named.push({
        key: keys[n] ?? '',
        from: n === 0 ? from : value.from,
        to: value.to,
        valueFrom: value.from,
        valueTo: value.to,
      });
    });
    return at;
  }

  /** "1 cap": only a whole number before the word of a count, which has no value behind it. */
  #countAfter(from: number, end: number): number {
    const line = this.#line;
    const name = line.fieldsAt(end);
    const [key] = name?.keys ?? [];
    const isCount = line.lexicon.fields.some((field) => field.key === key && field.unit === 'count');
    if (!name || !key || !isCount || name.keys.length > 1 || end !== from + 1) return 0;
    if (![...(line.tokens[from]?.text ?? '')].every(isDigit)) return 0;
    const to = end + name.length;
    if (line.isMark(to, ':=') || this.#valueEnd(to, false) > 0) return 0;
    this.certain.push({ key, from, to, valueFrom: from, valueTo: end });
    return to;
  }

  /** A number without a name may not be part of a phrase: "12 turns", "121 + 3", "121?". */
  #standsAlone(end: number): boolean {
    const line = this.#line;
    const next = line.tokens[end];
    if (!next || line.isUsed(end)) return true;
    if (next.kind === 'mark') return '/,;\n.()'.includes(next.text);
    return this.#valueEnd(end, true) > 0 || line.fieldsAt(end) !== null;
  }

  /** End of the value at `i` with its unit; 0 where none begins. `named`: words that only mean OL behind a name. */
  #valueEnd(i: number, named: boolean): number {
    const line = this.#line;
    const token = line.tokens[i];
    if (!token || line.isUsed(i) || token.kind === 'mark' || line.fieldsAt(i)) return 0;
    let end = token.kind === 'number' ? i + 1 : 0;
    let words = token.text;
    const tail = token.text.replace(/^[<>+-]* ?[0-9.,]*/, '');
    let unit = token.kind === 'number' ? tail : '';
    for (let j = i; j < i + 3; j++) {
      const next = line.tokens[j];
      if (!next || line.isUsed(j) || (j > i && (next.kind !== 'word' || line.fieldsAt(j)))) break;
      if (j > i) {
        words += ` ${next.text}`;
        unit += next.text;
      }
      if (token.kind === 'number') {
        if (j > i && unitOf(unit)) end = j + 1;
        else if (j > i && isOver(words)) end = j + 1;
      } else if ((named || OVER_ALONE.has(token.text)) && (isOver(words) || isClimbing(words))) end = j + 1;
    }
    return end;
  }
}

const IS = new Set(['is', 'was', 'reads', 'reading', 'at']);
const OVER_ALONE = new Set(['ol', 'o.l']);
