/**
 * Danger that is told of another time or place, asked about, or only supposed: one tap is asked instead of the card.
 * Only within the breath that names it, and never beside a word of now: "smoke again, same as last year".
 */
import type { Word } from './text.ts';

export class Contexts {
  readonly #words: readonly Word[];
  readonly #end: string;
  /** Of each word, where its breath begins; a breath ends where the next begins. */
  readonly #starts: number[] = [];
  readonly #known = new Map<number, boolean>();

  constructor(words: readonly Word[], end: string) {
    this.#words = words;
    this.#end = end;
    let start = 0;
    words.forEach(({ text, marks }, i) => {
      if (marks.replaceAll('/', '') !== '' || JOINING.has(text)) start = i;
      this.#starts.push(start);
    });
  }

  /** Whether the danger named at `i` is told of another time or place, asked about, or supposed. */
  isElsewhere(i: number): boolean {
    const start = this.#starts[i] ?? 0;
    return this.#isAway(start) || this.#isSupposed(start, i);
  }

  #isAway(start: number): boolean {
    const known = this.#known.get(start);
    if (known !== undefined) return known;
    let to = start + 1;
    while (to < this.#words.length && this.#starts[to] === start) to++;
    const said = ` ${this.#words
      .slice(start, to)
      .map(({ text }) => text)
      .join(' ')} `;
    const marks = this.#words[to]?.marks ?? this.#end;
    const away = (isPast(said) && !hasWord(said, PRESENT)) || (marks.includes('?') && isAsked(said));
    this.#known.set(start, away);
    return away;
  }

  /** "if it smokes"; not "not sure if that's smoke", and not "if it is off, why the smoke". */
  #isSupposed(start: number, at: number): boolean {
    for (let i = at - 1; i >= start && at - i <= REACH; i--) {
      const word = this.#words[i]?.text ?? '';
      if (CERTAIN.has(word)) return false;
      if (word === 'if' || word === 'unless') return !WONDERING.has(this.#words[i - 1]?.text ?? '');
    }
    return false;
  }
}

const words = (text: string): ReadonlySet<string> => new Set(text.trim().split(/\s+/));
const phrases = (text: string): string[] => text.split(',').map((phrase) => ` ${phrase.trim().replace(/\s+/g, ' ')} `);
const hasWord = (said: string, of: ReadonlySet<string>): boolean => said.split(' ').some((word) => of.has(word));

/** A breath ends before these. */
const JOINING = words('but because so pero porque');
const PRESENT =
  words(`again now still since is are am im its theres hes shes coming keeps just currently ahora todavia desde hay
  sigue`);
const CERTAIN = words('why now still again just');
const WONDERING = words('sure know tell wondering wonder');
const REACH = 8;

const AWAY =
  phrases(`yesterday, last night, last week, last month, last year, last summer, last winter, last spring, last fall,
  last season, last visit, last time, last job, last tech, last owner, last house, years back, months back, a while back, used to,
  in the past, previously, previous owner, previous unit, previous tech, another job, other job, different job, another house,
  different house, other house, next door, the neighbors, neighbors house, neighbors place, neighbors unit, across the street,
  down the street, on the news, on tv, in the video, in training, ayer, la semana pasada, el mes pasado, el ano pasado,
  el verano pasado, en la casa del vecino`);
const AGO = / (days?|weeks?|months?|years?|yrs?|summers?|winters?|seasons?) ago /;
const IN_YEAR = / in (19|20)\d\d /;
const HACE = / hace \S+ (dias?|semanas?|meses|mes|anos?) /;
const isPast = (said: string): boolean =>
  AWAY.some((phrase) => said.includes(phrase)) || AGO.test(said) || IN_YEAR.test(said) || HACE.test(said);

/** Questions that ask whether, as a dispatcher or a senior does. "Is that smoke?" tells of something seen. */
const ASKING =
  / (any|do you|did you|do they|did they|does anyone|did anyone|have you|has anyone|is anyone|is anybody|is there|are there|was there|did the customer|does the customer|is the customer|can you|am i going to|will it|will this|would it|can it) /;
const isAsked = (said: string): boolean => ASKING.exec(said)?.index === 0;
