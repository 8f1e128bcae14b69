/** A no-cool call on a terminal: puts desk, database and streams together. */
import { randomUUID } from 'node:crypto';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Readable, Writable } from 'node:stream';
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

/** Where a call is typed and shown. */
export interface Terminal {
  readonly input: Readable;
  readonly output: Writable & { readonly columns?: number };
  readonly errors: Writable;
  /** A person sits there. */
  readonly tty: boolean;
  readonly colour: boolean;
}
const client = (): string => `tty-${randomUUID()}`;

/** Runs one call to its end, or says in one line what is wrong; gives the exit code. Throws what is a bug. */
export async function runTerminal(argv: readonly string[], terminal: Terminal): Promise<number> {
  const complain = (text: string): void => void terminal.errors.write(`${visible(text)}\n`);
  try {
    const ended = await start(argv, terminal);
    if (typeof ended === 'number') return ended;
    complain(ended.wrong);
    complain('Type npm run -s talk -- --help for the options.');
    return EXIT.usage;
  } catch (error) {
    const damaged =
      error instanceof Damaged || error instanceof TranscriptCorrupt || error instanceof TranscriptMismatch;
    if (!damaged && !(error instanceof NotKept)) throw error;
    complain(error.message);
    return damaged ? EXIT.damaged : EXIT.notKept;
  }
}

type Ended = number | { readonly wrong: string };

async function start(argv: readonly string[], terminal: Terminal): Promise<Ended> {
  const options = readOptions(argv);
  if ('help' in options) {
    terminal.output.write(HELP);
    return EXIT.ended;
  }
  if ('wrong' in options) return options;
  const folder = options.db === null ? mkdtempSync(join(tmpdir(), 'nocool-talk-')) : null;
  const file = options.db ?? join(folder ?? '', 'call.sqlite');
  const store = await opened(file);
  try {
    return await run(store, file, options, terminal);
  } finally {
    await store.close();
    // A program's trial run leaves nothing behind; a person's job stays.
    if (folder !== null && options.json) rmSync(folder, { recursive: true, force: true });
  }
}

async function run(store: Store, file: string, options: Options, terminal: Terminal): Promise<Ended> {
  const { input, output, tty, colour } = terminal;
  if ((await store.people()).length === 0) for (const person of CREW) await store.savePerson(person);
  const clock = createClock(options.at, await clockFor(store));
  const desk = createDesk({ store, shelf: SHELF, clock: clock.now, random: randomHex });
  const people = await desk.people();
  const person = options.as === null ? firstPerson(people) : findPerson(people, options.as);
  if (!person) return { wrong: nobody(people, options.as ?? '') };
  const begin = beginWith(desk, options, client);
  if (options.json) {
    const write = (value: object): void => void output.write(`${jsonLine(value)}\n`);
    return talkJson({
      desk,
      begin,
      person,
      clock,
      temporary: options.db === null,
      lines: new Lines(input),
      write,
      client,
    });
  }
  const begun = await begin(person);
  if ('wrong' in begun) return begun;
  const { view } = begun;
  return talk({
    ...{ session: new Session(desk, person, view, client), input, output, tty, colour },
    hello: [
      `${view.title} · ${person.name}, ${meterWords(person)}`,
      ...(view.call?.vulnerable == null ? [] : [`At the address: ${view.call.vulnerable}`]),
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
