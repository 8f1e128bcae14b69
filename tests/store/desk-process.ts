/**
 * A desk in a process of its own, as a server's: takes one request a line, answers one line when it is durable, until it
 * is killed. argv: the database. `{n, by, client, title}` opens, `{n, by, client, job, seq, text}` replies; the answer is
 * `{n, job, seq, kept: [[seq, hash]…]}` or `{n, trouble}`.
 */
import { randomBytes } from 'node:crypto';
import { writeSync } from 'node:fs';
import { createInterface } from 'node:readline';
import { createDesk, NotKept } from '../../engine/desk/index.ts';
import { openStore } from '../../engine/store/index.ts';
import { SHELF } from '../../flows/index.ts';

export interface Asked {
  readonly n: number;
  readonly by: string;
  readonly client: string;
  readonly title?: string;
  readonly job?: string;
  readonly seq?: number;
  readonly text?: string;
}
export interface Answered {
  readonly n: number;
  readonly job: string;
  readonly seq: number;
  readonly kept: [seq: number, hash: string][];
}

const store = await openStore(process.argv[2] ?? '');
const desk = createDesk({
  store,
  shelf: SHELF,
  clock: () => new Date(),
  random: (n) => randomBytes(n).toString('hex'),
});
async function answer({ n, by, client, title, job, seq = 0, text = '' }: Asked): Promise<object> {
  try {
    const turn =
      job === undefined
        ? await desk.open(by, { title: title ?? '', client })
        : await desk.reply(by, job, { kind: 'text', client, seq, text });
    // A job that was there already answers with what it holds: its opening is the same for everybody.
    const entries = job === undefined ? (await store.read(turn.view.job)).entries.slice(0, 1) : turn.entries;
    return { n, job: turn.view.job, seq: turn.view.prompt.seq, kept: entries.map((e) => [e.seq, e.hash]) };
  } catch (error) {
    if (error instanceof NotKept) return { n, trouble: error.message };
    throw error;
  }
}
// Written straight to the pipe: what is printed was acknowledged, and what waits in no buffer can be lost.
const print = (line: object): void => void writeSync(1, `${JSON.stringify(line)}\n`);
createInterface({ input: process.stdin }).on('line', (line) => {
  void answer(JSON.parse(line) as Asked).then(print);
});
print({ ready: true });
