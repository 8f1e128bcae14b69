/** A no-cool call on a tty: puts desk, database and terminal together. */
import { randomUUID } from 'node:crypto';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { clockFor, createDesk, NotKept, randomHex } from '../../engine/desk/index.ts';
import { TranscriptCorrupt, TranscriptMismatch } from '../../engine/index.ts';
import { Damaged, nameOf, openStore, type Store } from '../../engine/store/index.ts';
import { SHELF } from '../../flows/index.ts';
import { createClock } from './clock.ts';
import { CREW, findPerson, firstPerson, meterWords, nobody } from './crew.ts';
import { beginWith } from './job.ts';
import { talkJson } from './json.ts';
import { Lines } from './lines.ts';
import { EXIT, HELP, type Options, readOptions } from './options.ts';
import { jsonLine, visible } from './safe-text.ts';
import { Session } from './session.ts';
import { talk } from './talk.ts';

const client = (): string => `tty-${randomUUID()}`;
const complain = (text: string): void => void process.stderr.write(`${visible(text)}\n`);

async function main(argv: readonly string[]): Promise<number> {
  const options = readOptions(argv);
  if ('help' in options) {
    process.stdout.write(HELP);
    return EXIT.ended;
  }
  if ('wrong' in options) return usage(options.wrong);
  const folder = options.db === null ? mkdtempSync(join(tmpdir(), 'nocool-talk-')) : null;
  const file = options.db ?? join(folder ?? '', 'call.sqlite');
  const store = await opened(file);
  try {
    return await run(store, file, options);
  } finally {
    await store.close();
    // A program's trial run leaves nothing behind; a person's job stays.
    if (folder !== null && options.json) rmSync(folder, { recursive: true, force: true });
  }
}

async function run(store: Store, file: string, options: Options): Promise<number> {
  if ((await store.people()).length === 0) for (const person of CREW) await store.savePerson(person);
  const clock = createClock(options.at, await clockFor(store));
  const desk = createDesk({ store, shelf: SHELF, clock: clock.now, random: randomHex });
  const people = await desk.people();
  const person = options.as === null ? firstPerson(people) : findPerson(people, options.as);
  if (!person) return usage(nobody(people, options.as ?? ''));
  const begin = beginWith(desk, options, client);
  if (options.json) {
    const write = (value: object): void => void process.stdout.write(`${jsonLine(value)}\n`);
    const lines = new Lines(process.stdin);
    const temporary = options.db === null;
    const ended = await talkJson({ desk, begin, person, clock, temporary, lines, write, client });
    return typeof ended === 'number' ? ended : usage(ended.wrong);
  }
  const begun = await begin(person);
  if ('wrong' in begun) return usage(begun.wrong);
  const { view } = begun;
  const tty = process.stdin.isTTY && process.stdout.isTTY;
  return talk({
    session: new Session(desk, person, view, client),
    input: process.stdin,
    output: process.stdout,
    tty,
    colour: tty && (process.env.NO_COLOR ?? '') === '',
    hello: [
      `${view.title} · ${person.name}, ${meterWords(person)}`,
      'Type your answer. help says what else works; quit leaves, the job stays.',
    ],
    goodbye: [
      'The job stays as it is. To go on:',
      `  npm run -s talk -- --db ${file} --job ${view.job.slice(0, 8)} --as ${person.id}`,
    ],
  });
}

const firstSentence = (text: string): string => text.replace(/(?<=\.) .*$/s, '');

/** Opens the database, or says which one can’t be; there is nothing yet to send again. */
async function opened(file: string): Promise<Store> {
  try {
    return await openStore(file);
  } catch (error) {
    if (error instanceof NotKept)
      throw new NotKept(`${nameOf(file)}: ${firstSentence(error.message)}`, { cause: error });
    throw error;
  }
}

function usage(text: string): number {
  complain(text);
  complain('Type npm run -s talk -- --help for the options.');
  return EXIT.usage;
}

/** Trouble that ends the run, in one line. Anything else is a bug and is thrown on. */
function ending(error: unknown): number {
  const damaged = error instanceof Damaged || error instanceof TranscriptCorrupt || error instanceof TranscriptMismatch;
  if (!damaged && !(error instanceof NotKept)) throw error;
  complain(error.message);
  return damaged ? EXIT.damaged : EXIT.notKept;
}

// Whoever read the output has gone; every reply that was answered is on the disk.
process.stdout.on('error', () => process.exit(EXIT.ended));
process.exitCode = await main(process.argv.slice(2)).catch(ending);
// A read that still waits would keep the process.
process.stdin.destroy();
