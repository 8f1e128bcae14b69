/** A desk process from outside: asks it, kills it, and tells what was never answered. */
import { type ChildProcessWithoutNullStreams, spawn } from 'node:child_process';
import { once } from 'node:events';
import { createInterface } from 'node:readline';
import type { Answered, Asked } from './desk-process.ts';

export type Outcome = Answered | { readonly n: number; readonly trouble: string } | 'gone';

export class Worker {
  readonly #child: ChildProcessWithoutNullStreams;
  readonly #waiting = new Map<number, (outcome: Outcome) => void>();
  #ended = false;
  /** What it said on its error output: nothing, as long as it meets no bug. */
  errors = '';

  private constructor(program: string, where: string) {
    this.#child = spawn(process.execPath, [program, where]);
    this.#child.stderr.on('data', (text) => {
      this.errors += text;
    });
    this.#child.stdin.on('error', () => undefined);
    this.#child.on('close', () => {
      this.#ended = true;
      for (const resolve of this.#waiting.values()) resolve('gone');
      this.#waiting.clear();
    });
  }
  static async start(program: string, where: string): Promise<Worker> {
    const worker = new Worker(program, where);
    const lines = createInterface({ input: worker.#child.stdout });
    await Promise.race([once(lines, 'line'), once(worker.#child, 'close')]);
    if (worker.#ended) throw new Error(`it did not start: ${worker.errors}`);
    lines.on('line', (line) => {
      const answer = JSON.parse(line) as Exclude<Outcome, 'gone'>;
      worker.#waiting.get(answer.n)?.(answer);
      worker.#waiting.delete(answer.n);
    });
    return worker;
  }
  ask(asked: Asked): Promise<Outcome> {
    if (this.#ended) return Promise.resolve('gone');
    return new Promise((resolve) => {
      this.#waiting.set(asked.n, resolve);
      this.#child.stdin.write(`${JSON.stringify(asked)}\n`);
    });
  }
  /** At once, with whatever it has in hand; resolves when it is gone. */
  async kill(): Promise<void> {
    if (this.#ended) return;
    const gone = once(this.#child, 'close');
    this.#child.kill('SIGKILL');
    await gone;
  }
}
