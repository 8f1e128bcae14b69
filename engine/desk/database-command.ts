/** What the commands about a whole database have in common: usage, trouble in one line, exit codes. */
import type { ShopCheck } from '../store/check.ts';
import { Damaged, NotKept } from '../store/index.ts';

export const EXIT = { done: 0, usage: 2, notHad: 3, damaged: 4, partly: 5 } as const;
export const say = (line: string): void => void process.stdout.write(`${line}\n`);

/** How a whole shop was found. What is damaged goes to the errors, a line each, and the exit code says that there is some. */
export function sayFound(name: string, { jobs, entries, photos, trouble }: ShopCheck): void {
  say(
    `${name}: ${jobs} jobs, ${entries} entries, ${photos} photos, ${trouble.length === 0 ? 'all' : 'not all'} sound.`,
  );
  if (trouble.length === 0) return;
  process.stderr.write(trouble.map((line) => `nocool: ${line}\n`).join(''));
  process.exitCode = EXIT.partly;
}

/** Runs `work` with exactly so many arguments and those of its `words` that were said; sets the exit code. */
export async function command(
  usage: string,
  wanted: number,
  work: (args: readonly string[], said: ReadonlySet<string>) => Promise<void>,
  words: readonly string[] = [],
): Promise<void> {
  const all = process.argv.slice(2);
  const said = new Set(all.filter((arg) => words.includes(arg)));
  const args = all.filter((arg) => !said.has(arg));
  if (args.length !== wanted || args.some((arg) => arg === '' || arg.startsWith('-'))) {
    process.stderr.write(`usage: ${usage}\n`);
    process.exitCode = EXIT.usage;
    return;
  }
  try {
    await work(args, said);
  } catch (error) {
    const had = error instanceof Damaged || error instanceof NotKept || (error instanceof Error && 'errno' in error);
    if (!had) throw error;
    // The end of the sentence is for those who send replies.
    const text = (error as Error).message.replace(' Nothing was kept. Send it again.', '');
    process.stderr.write(`nocool: ${text}\n`);
    process.exitCode = error instanceof Damaged ? EXIT.damaged : EXIT.notHad;
  }
}
