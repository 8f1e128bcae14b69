/** The terminal for people: a question, a line, the next question. */
import { createInterface, type Interface } from 'node:readline';
import type { Readable, Writable } from 'node:stream';
import type { JobView, Turn } from '../../engine/desk/index.ts';
import type { Conclusion, Entry, GivenParts, Part, Prompt } from '../../engine/index.ts';
import { paint, wrap } from './layout.ts';
import { EXIT } from './options.ts';
import { render, type Surroundings, strip } from './render.ts';
import { visible } from './safe-text.ts';
import type { Session } from './session.ts';
import { troubleOf } from './trouble.ts';

export interface TalkParts {
  readonly session: Session;
  readonly input: Readable;
  readonly output: Writable & { readonly columns?: number };
  /** A person sits there: the line is edited, the screen is kept true while nobody types. */
  readonly tty: boolean;
  readonly colour: boolean;
  /** Said before the first question, and after the last. */
  readonly hello: readonly string[];
  readonly goodbye: readonly string[];
}
const LOOK_EVERY_MS = 2000;
const [NARROWEST, WIDEST] = [40, 100];

/** Runs until the person leaves; gives the exit code. */
export async function talk({ session, input, output, tty, colour, hello, goodbye }: TalkParts): Promise<number> {
  const say = (lines: readonly string[]): void => {
    const wrapped = wrap(lines.join('\n'), Math.max(NARROWEST, Math.min(WIDEST, (output.columns || WIDEST) - 1)));
    output.write(`${colour ? paint(wrapped) : wrapped}\n`);
  };
  const screen = new Screen(session);
  say([...hello.map(visible), '', ...screen.question(session.prompt.verdicts)]);
  const lines = createInterface({ input, output, terminal: tty, prompt: '> ' });
  const taken = lines[Symbol.asyncIterator]();
  const alone = createTurns();
  const looking = tty ? setInterval(() => void alone(look).catch(fail), LOOK_EVERY_MS) : null;
  /** An isolation grows old and others write, whether or not anybody types here. */
  const look = async (): Promise<void> => {
    if (await session.refresh()) aside(lines, output, () => say(['', ...screen.question(screen.freshVerdicts())]));
  };
  const failures: unknown[] = [];
  const fail = (error: unknown): void => {
    failures.push(error);
    lines.close();
  };
  let code: number = EXIT.ended;
  const answer = async (line: string): Promise<void> => {
    if (line.trim() === '') {
      session.forget();
      return say(['', ...screen.question([])]);
    }
    try {
      const turn = await session.type(line);
      code = EXIT.ended;
      say(screen.after(turn));
    } catch (error) {
      const trouble = troubleOf(error);
      code = trouble.code;
      say([`NOT KEPT: ${visible(trouble.text)}`]);
    }
  };
  lines.prompt();
  for (let next = await taken.next(); !next.done; next = await taken.next()) {
    const line = next.value;
    if (!tty) output.write(`${visible(line)}\n`);
    if (/^\s*(quit|exit)\s*$/i.test(line)) break;
    if (/^\s*summary\s*$/i.test(line)) {
      say(summaryLines(session.view.summary));
      lines.prompt();
      continue;
    }
    await alone(() => answer(line));
    lines.prompt();
  }
  if (looking) clearInterval(looking);
  lines.close();
  if (failures.length > 0) throw failures[0];
  say(['', ...goodbye.map(visible)]);
  return code;
}

function summaryLines(summary: JobView['summary']): string[] {
  if (summary === null) return ['  The summary is there once the call has ended.'];
  const { customer, shop } = summary;
  return ['For the customer:', ...customer.map(indented), '', 'For the shop:', ...shop.map(indented)];
}
const indented = (line: string): string => `  ${visible(line)}`;

/** Runs one work after another: what somebody else writes may not come between a line and its answer. */
function createTurns(): <T>(work: () => Promise<T>) => Promise<T> {
  let last: Promise<unknown> = Promise.resolve();
  return (work) => {
    const next = last.then(work);
    last = next.catch(() => undefined);
    return next;
  };
}

/** Writes above the line that is being typed. */
function aside(lines: Interface, output: Writable, write: () => void): void {
  output.write('\r\u001b[K');
  write();
  lines.prompt(true);
}

/** What is on the screen, so that a question is not printed twice and a verdict is not announced twice. */
class Screen {
  readonly #session: Session;
  readonly #announced = new Set<string>();
  #printed: Prompt | null = null;

  constructor(session: Session) {
    this.#session = session;
  }

  after(turn: Turn): string[] {
    const session = this.#session;
    const said = [
      ...readBack(turn),
      ...(turn.info ?? []).map((text) => `  ${visible(text)}`),
      ...(turn.refusal === null ? [] : [`NOT TAKEN: ${visible(turn.refusal.text)}`]),
    ];
    const fresh = this.freshVerdicts();
    if (fresh.length > 0 || !this.#isPrinted()) return [...said, '', ...this.question(fresh)];
    return [
      ...said,
      ...(said.length === 0 ? ['  Noted.'] : []),
      ...draftLines(session.draft, session.prompt.parts),
      ...strip(session.prompt, this.#around()),
    ];
  }

  question(verdicts: readonly Conclusion[]): string[] {
    const { prompt, draft } = this.#session;
    for (const verdict of this.#session.view.prompt.verdicts) this.#announced.add(JSON.stringify(verdict));
    this.#printed = prompt;
    return [
      ...render({ ...prompt, verdicts: [...verdicts] }, this.#around()).split('\n'),
      ...draftLines(draft, prompt.parts),
    ];
  }

  freshVerdicts(): Conclusion[] {
    return this.#session.view.prompt.verdicts.filter((verdict) => !this.#announced.has(JSON.stringify(verdict)));
  }

  #isPrinted(): boolean {
    const { prompt } = this.#session;
    const key = (p: Prompt): string =>
      JSON.stringify([p.seq, p.place, p.kind, p.amends, p.question, p.notices, p.isolation.map((line) => line.words)]);
    return this.#printed !== null && key(this.#printed) === key(prompt);
  }

  #around(): Surroundings {
    const { view, person } = this.#session;
    return { me: person.id, names: (id) => view.people[id]?.name ?? id, question: view.question };
  }
}

/** How a line was read, in the words of the ticket, so that a slip of the thumb shows before anything rests on it. */
function readBack({ view, entries }: Turn): string[] {
  const made = new Set(entries.flatMap((e) => (e.kind === 'noted' && e.body.as === 'unclear' ? [] : e.seq)));
  return view.ticket.flatMap(({ seq, kind, title, says }) =>
    made.has(seq) && READ_BACK.has(kind) && says.length > 0
      ? `  ${kind === 'answered' ? 'Taken' : visible(title)}: ${says.map(visible).join(' · ')}`
      : [],
  );
}
const READ_BACK: ReadonlySet<Entry['kind']> = new Set(['answered', 'amended', 'noted']);

function draftLines(draft: GivenParts, parts: readonly Part[]): string[] {
  const said = Object.entries(draft).flatMap(([key, given]) => {
    const part = parts.find((p) => p.key === key);
    if (!part) return [];
    const words = [given]
      .flat()
      .map((id) => ('options' in part ? part.options.find((o) => o.id === id)?.label : id) ?? id);
    return [`${part.ask}: ${words.join(', ')}`];
  });
  return said.length === 0
    ? []
    : [visible(`  Kept of what you typed: ${said.join('; ')}. Type the rest; Enter alone drops it.`)];
}
