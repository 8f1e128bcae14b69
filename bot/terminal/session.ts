/** One person at one job: which question is on the screen, and what of a refused line is still good. */
import type { Desk, JobView, Person, Turn } from '../../engine/desk/index.ts';
import type { GivenParts, Prompt, Refusal, Reply } from '../../engine/index.ts';
import { parse, partsOf, type Shown } from './parse.ts';

/** The question stands after these: the same person tries again. Any other refusal is about more than the words. */
const TRY_AGAIN: ReadonlySet<Refusal['code']> = new Set([
  'not-a-number',
  'out-of-range',
  'which-unit',
  'which-quantity',
  'unknown-option',
  'missing',
  'unclear',
  'too-long',
  'reason-needed',
]);
const ANSWERS: ReadonlySet<string> = new Set(['answered', 'amended', 'withdrawn']);

export class Session {
  readonly #desk: Desk;
  readonly #client: () => string;
  #person: Person;
  #view: JobView;
  #shown: Shown;
  /** What was begun at the question that stands, while an earlier one is on the screen. */
  #begun: GivenParts = {};

  constructor(desk: Desk, person: Person, view: JobView, client: () => string) {
    this.#desk = desk;
    this.#person = person;
    this.#view = view;
    this.#client = client;
    this.#shown = { prompt: view.prompt, draft: {} };
  }

  get view(): JobView {
    return this.#view;
  }
  get person(): Person {
    return this.#person;
  }
  /** What the next line answers: the question that stands, or an earlier one again. */
  get prompt(): Prompt {
    return this.#shown.prompt;
  }
  get draft(): GivenParts {
    return this.#shown.draft;
  }
  /** Another person takes the keyboard; what the one before had begun to type is not theirs. */
  set person(person: Person) {
    this.#person = person;
    this.#begun = {};
    this.forget();
  }

  /** Sends what was typed. Throws as Desk.reply does. */
  type(line: string): Promise<Turn> {
    return this.send(parse(line, this.#shown, this.#client()));
  }

  async send(reply: Reply): Promise<Turn> {
    const turn = await this.#desk.reply(this.#person.id, this.#view.job, reply);
    const before = this.#shown;
    this.#shown = next(before, reply, turn);
    if (turn.again && before.prompt.amends === null) this.#begun = before.draft;
    if (!sameQuestion(this.#view.prompt, turn.view.prompt)) this.#begun = {};
    this.#view = turn.view;
    return turn;
  }

  /** From an earlier question back to the one that stands and what was begun there; from that one, to begin it anew. */
  forget(): void {
    this.#shown = { prompt: this.#view.prompt, draft: this.prompt.amends === null ? {} : this.#begun };
    this.#begun = {};
  }

  /** What stands by now: time passes and others write. True where the question on the screen is another one. */
  async refresh(): Promise<boolean> {
    const before = this.#view.prompt;
    this.#view = await this.#desk.look(this.#person.id, this.#view.job);
    const after = this.#view.prompt;
    if (sameQuestion(before, after) && before.last === after.last && strip(before) === strip(after)) return false;
    if (!sameQuestion(before, after) || this.#shown.prompt.amends === null)
      this.#shown = { prompt: after, draft: sameQuestion(before, after) ? this.#shown.draft : {} };
    return true;
  }
}

const sameQuestion = (a: Prompt, b: Prompt): boolean => a.seq === b.seq && a.place === b.place && a.kind === b.kind;
const strip = (p: Prompt): string => p.isolation.map((line) => line.words).join();

function next(shown: Shown, reply: Reply, turn: Turn): Shown {
  const { refusal, info, view } = turn;
  if (turn.again) return { prompt: turn.again, draft: {} };
  const amending = shown.prompt.amends !== null;
  const moved = amending ? shown.prompt.seq !== view.prompt.seq : !sameQuestion(shown.prompt, view.prompt);
  const answered = turn.entries.some((entry) => ANSWERS.has(entry.kind));
  const given = refusal !== null && !TRY_AGAIN.has(refusal.code);
  if (moved || answered || (amending && (given || (refusal === null && info === null))))
    return { prompt: view.prompt, draft: {} };
  return { prompt: amending ? shown.prompt : view.prompt, draft: draftAfter(shown, reply, refusal) };
}

/** A refused change brings the whole standing answer back; only what this person said of it is a draft. */
function draftAfter(shown: Shown, reply: Reply, refusal: Refusal | null): GivenParts {
  if (!refusal) return shown.draft;
  const own = partsOf(reply, shown);
  const good = Object.entries(refusal.draft).filter(([key]) => own.has(key));
  const wrong = new Set(refusal.parts);
  return Object.fromEntries(
    Object.entries({ ...shown.draft, ...Object.fromEntries(good) }).filter(([key]) => !wrong.has(key)),
  );
}
