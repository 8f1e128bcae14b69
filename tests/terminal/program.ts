/** The terminal as its own process, as a script or another program drives it. */
import { type ChildProcessWithoutNullStreams, spawn } from 'node:child_process';
import { once } from 'node:events';
import { createInterface } from 'node:readline';
import type { Entry, Prompt, Refusal } from '../../engine/index.ts';
import { bundle } from '../process.ts';

export const program: string = await bundle(new URL('../../bot/terminal/main.ts', import.meta.url));

export interface Told {
  readonly prompt: Prompt;
  readonly entries: Entry[];
  readonly refusal: Refusal | null;
  readonly info: string[] | null;
  readonly error?: string;
}

export class Program {
  readonly child: ChildProcessWithoutNullStreams;
  readonly #told: AsyncIterator<string>;
  stderr = '';

  constructor(...args: string[]) {
    this.child = spawn(process.execPath, [program, '--json', ...args], { env: { ...process.env, TZ: 'UTC' } });
    this.child.stderr.on('data', (data) => {
      this.stderr += String(data);
    });
    this.#told = createInterface({ input: this.child.stdout })[Symbol.asyncIterator]();
  }

  /** The next object; throws where a line is no JSON or the program has ended. */
  async next(): Promise<Told> {
    const { done, value } = await this.#told.next();
    if (done) throw new Error(`it ended: ${this.stderr}`);
    return JSON.parse(value) as Told;
  }
  /** Lines that are no reply: nothing comes back. */
  set(line: string): this {
    this.child.stdin.write(`${line}\n`);
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
    this.child.stdin.end();
    const [code] = this.child.exitCode === null ? await once(this.child, 'exit') : [this.child.exitCode];
    const rest = await this.#told.next();
    if (!rest.done) throw new Error(`it told more: ${rest.value}`);
    return code as number | null;
  }
  async kill(): Promise<void> {
    this.child.kill('SIGKILL');
    await once(this.child, 'exit');
  }
}

/** Runs to the end on this input. */
export async function run(
  args: readonly string[],
  input = '',
  env: Record<string, string> = {},
): Promise<{ code: number; stdout: string; stderr: string }> {
  const child = spawn(process.execPath, [program, ...args], { env: { ...process.env, TZ: 'UTC', ...env } });
  let [stdout, stderr] = ['', ''];
  child.stdout.on('data', (data) => {
    stdout += String(data);
  });
  child.stderr.on('data', (data) => {
    stderr += String(data);
  });
  child.stdin.on('error', () => undefined);
  child.stdin.end(input);
  const [code] = await once(child, 'close');
  return { code: code as number, stdout, stderr };
}

/** Minutes after the first line of a scripted call. */
export const at = (minutes: number): string =>
  `--at ${new Date(Date.parse('2026-07-14T15:00:00Z') + minutes * 60_000).toISOString()}`;

export const verdicts = (...told: readonly Told[]): string[] =>
  told.flatMap(({ entries }) => entries.flatMap((e) => (e.kind === 'concluded' ? [e.body.verdict] : [])));
export const strip = ({ prompt }: Told): string => prompt.isolation.map((line) => line.words).join();
