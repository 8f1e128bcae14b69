/** The terminal as a script or another program drives it: here, or as a process of its own where it is killed. */
import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { createInterface } from 'node:readline';
import { PassThrough, type Readable, type Writable } from 'node:stream';
import { text } from 'node:stream/consumers';
import { runTerminal } from '../../bot/terminal/run.ts';
import type { Entry, Prompt, Refusal } from '../../engine/index.ts';
import { bundle } from '../process.ts';

process.env.TZ = 'UTC';
export const program: string = await bundle(new URL('../../bot/terminal/main.ts', import.meta.url));

export interface Told {
  readonly prompt: Prompt;
  readonly entries: Entry[];
  readonly refusal: Refusal | null;
  readonly info: string[] | null;
  readonly error?: string;
}
interface Started {
  readonly input: Writable;
  readonly output: Readable;
  readonly errors: Readable;
  readonly ended: Promise<number | null>;
  readonly kill?: () => void;
}

/** What main.ts does with the streams of its process; a process starts in seconds, this in milliseconds. */
function here(args: readonly string[]): Started {
  const [input, output, errors] = [new PassThrough(), new PassThrough(), new PassThrough()];
  const ended = runTerminal(args, { input, output, errors, tty: false, colour: false }).finally(() => {
    output.end();
    errors.end();
  });
  return { input, output, errors, ended };
}
function asProcess(args: readonly string[], env: Record<string, string> = {}): Started {
  const child = spawn(process.execPath, [program, ...args], { env: { ...process.env, TZ: 'UTC', ...env } });
  child.stdin.on('error', () => undefined);
  const ended = once(child, 'exit').then(([code]) => code as number | null);
  return {
    ...{ input: child.stdin, output: child.stdout, errors: child.stderr, ended },
    kill: () => child.kill('SIGKILL'),
  };
}

export class Program {
  readonly #started: Started;
  readonly #told: AsyncIterator<string>;
  stderr = '';

  constructor(...args: string[]) {
    this.#started = this.start(['--json', ...args]);
    this.#started.errors.on('data', (data) => {
      this.stderr += String(data);
    });
    this.#told = createInterface({ input: this.#started.output })[Symbol.asyncIterator]();
  }
  protected start(args: readonly string[]): Started {
    return here(args);
  }

  /** The next object; throws where a line is no JSON or the program has ended. */
  async next(): Promise<Told> {
    const { done, value } = await this.#told.next();
    if (done) throw new Error(`it ended: ${this.stderr}`);
    return JSON.parse(value) as Told;
  }
  /** Lines that are no reply: nothing comes back. */
  set(line: string): this {
    this.#started.input.write(`${line}\n`);
    return this;
  }
  say(line: string | object): Promise<Told> {
    this.set(typeof line === 'string' ? line : JSON.stringify(line));
    return this.next();
  }
  /** Several lines, each of which has to be taken; what the last one told. */
  async types(...lines: string[]): Promise<Told> {
    let last: Told | null = null;
    for (const line of lines) {
      last = await this.say(line);
      if (last.error !== undefined || last.refusal) throw new Error(`"${line}": ${last.error ?? last.refusal?.text}`);
    }
    if (!last) throw new Error('nothing was typed');
    return last;
  }
  /** No more lines: the exit code, after checking that nothing else was told. */
  async end(): Promise<number | null> {
    this.#started.input.end();
    const code = await this.#started.ended;
    const rest = await this.#told.next();
    if (!rest.done) throw new Error(`it told more: ${rest.value}`);
    return code;
  }
  /** Whoever read goes away: the exit code. */
  leave(): Promise<number | null> {
    this.#started.output.destroy();
    return this.#started.ended;
  }
  protected async stop(): Promise<void> {
    this.#started.kill?.();
    await this.#started.ended;
  }
}
/** As it is started for real, so that it can be killed. */
export class OwnProcess extends Program {
  protected override start(args: readonly string[]): Started {
    return asProcess(args);
  }
  kill(): Promise<void> {
    return this.stop();
  }
}

type Came = { code: number | null; stdout: string; stderr: string };
async function toTheEnd({ input, output, errors, ended }: Started, lines: string): Promise<Came> {
  const told = Promise.all([text(output), text(errors)]);
  input.end(lines);
  const [code, [stdout, stderr]] = await Promise.all([ended, told]);
  return { code, stdout, stderr };
}
/** Runs to the end on this input. */
export const run = (args: readonly string[], input = ''): Promise<Came> => toTheEnd(here(args), input);
/** The same as a process of its own. */
export const runAlone = (args: readonly string[], input = '', env: Record<string, string> = {}): Promise<Came> =>
  toTheEnd(asProcess(args, env), input);

/** Minutes after the first line of a scripted call. */
export const at = (minutes: number): string =>
  `--at ${new Date(Date.parse('2026-07-14T15:00:00Z') + minutes * 60_000).toISOString()}`;

export const verdicts = (...told: readonly Told[]): string[] =>
  told.flatMap(({ entries }) => entries.flatMap((e) => (e.kind === 'concluded' ? [e.body.verdict] : [])));
export const strip = ({ prompt }: Told): string => prompt.isolation.map((line) => line.words).join();
