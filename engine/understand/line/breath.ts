/** The breaths of a line: what is said between two marks, and whether a name stands in it alone, denied, or asked. */
import { type Line, PARTING } from './state.ts';

interface Span {
  from: number;
  to: number;
}
interface Name extends Span {
  part: string;
}

export class BreathMap {
  readonly #line: Line;
  readonly #breaths: Span[] = [];
  /** Breath by token. */
  readonly #of: number[] = [];
  /** How long the name is that a token belongs to; 0 for none. */
  readonly #named: number[];
  readonly #owner: (string | null)[];

  constructor(line: Line, names: readonly Name[]) {
    this.#line = line;
    this.#named = line.tokens.map(() => 0);
    this.#owner = line.tokens.map(() => null);
    for (const { part, from, to } of names) {
      this.#named.fill(to - from, from, to);
      this.#owner.fill(part, from, to);
    }
    let from = 0;
    for (let i = 0; i <= line.tokens.length; i++) {
      // A mark inside a name parts nothing: "hum, nothing turns".
      const ends = i === line.tokens.length || (line.isMark(i, PARTING) && !this.#named[i]);
      this.#of.push(this.#breaths.length);
      if (!ends) continue;
      this.#breaths.push({ from, to: i });
      from = i + 1;
    }
  }

  at(i: number): Span {
    return this.#breaths[this.#of[i] ?? 0] ?? { from: i, to: i };
  }
  /** It names an option of another part than `part`. */
  namesOther(i: number, part: string): boolean {
    const owner = this.#owner[i] ?? null;
    return owner !== null && owner !== part;
  }
  /** It ends in a question mark, or begins as a question: "is it ok". */
  asks(i: number): boolean {
    const { from, to } = this.at(i);
    return this.#line.isMark(to, '?') || (this.#line.isWord(from, ASKING) && this.#line.isWord(from + 1, ASKED));
  }

  /**
   * Said as a guess: "psc i think", "i guess psc", "psc probably"; a guess that stands alone behind it speaks of it
   * too: "psc, i think". And "fan still running" is no fan that is still.
   */
  isGuessed(from: number, to: number): boolean {
    const line = this.#line;
    const { from: begin, to: end } = this.at(from);
    if (line.isWord(to - 1, STILL) && line.isWord(to, GOING)) return true;
    for (let j = Math.max(begin, from - REACH); j < from; j++)
      if (line.isWord(j, GUESSING) && (this.#named[j] ?? 0) < 2) return true;
    const only = (a: number, b: number): boolean => {
      let guessed = false;
      for (let j = a; j < b; j++) {
        if (line.isWord(j, GUESSING)) guessed = true;
        else if (!line.isWord(j, BESIDE_A_GUESS)) return false;
      }
      return guessed;
    };
    if (only(to, end)) return true;
    const next = this.at(end + 1);
    return to === end && end < line.tokens.length && only(next.from, next.to);
  }

  /** Every word is understood, belongs to a name, or is one of `vocabulary`. */
  holdsOnly(i: number, vocabulary: ReadonlySet<string>): boolean {
    const { from, to } = this.at(i);
    for (let j = from; j < to; j++) {
      const known = this.#line.isUsed(j) || (this.#named[j] ?? 0) > 0 || this.#line.tokens[j]?.kind === 'mark';
      if (!known && !this.#line.isWord(j, vocabulary)) return false;
    }
    return true;
  }

  /** Nothing but `subjects` stands before it. */
  leads(i: number, subjects: ReadonlySet<string>): boolean {
    let j = this.at(i).from;
    while (j < i && this.#line.isWord(j, subjects)) j++;
    return j === i;
  }

  /** A denying word stands shortly before it. The words of a longer name deny nothing else: "no other feed". */
  isDenied(i: number, denying: ReadonlySet<string>): boolean {
    const { from } = this.at(i);
    for (let j = i - 1; j >= from && j >= i - REACH; j--) {
      if (this.#line.isUsed(j) || (this.#named[j] ?? 0) > 1) return false;
      if (this.#line.isWord(j, denying)) return true;
    }
    return false;
  }

  /** One of `words`, or of the marks among them, stands outside `spans` without being understood. */
  anyLeft(words: ReadonlySet<string>, spans: readonly Span[]): boolean {
    const inside = new Set(spans.flatMap(({ from, to }) => [...Array(to - from).keys()].map((n) => from + n)));
    return this.#line.tokens.some(
      ({ text }, j) => words.has(text) && !this.#line.isUsed(j) && (this.#named[j] ?? 0) < 2 && !inside.has(j),
    );
  }
}

const REACH = 4;
const words = (text: string): ReadonlySet<string> => new Set(text.split(' '));
const ASKING = words('is are was do does did can could should shall may must');
const GUESSING = words(
  'think guess guessing probably maybe perhaps possibly likely suppose reckon hopefully believe creo quizas',
);
const BESIDE_A_GUESS = words('i we its it is im that so but just most very not sure');
const STILL = words('still');
const GOING = words(
  'running runs run spinning spins spin turning turns turn going moving moves blowing on works working humming hums',
);
const ASKED = words('it the that this they i we you my');
