/**
 * npm run export -- JOB…: each job as one signed file. Exit codes: 0 exported · 2 wrong usage, or no such job or person, or
 * not theirs to export · 3 the database, the key or the folder can't be had · 4 a record is damaged (the others were exported).
 */
import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { parseArgs } from 'node:util';
import { SHELF } from '../../../flows/index.ts';
import { KeyTrouble, keyPlace, openKey } from '../../report/key.ts';
import { plain } from '../../report/line.ts';
import type { Store } from '../../store/port.ts';
import { isUnreadable } from '../card.ts';
import { databaseOf, keptBeside, openExisting } from '../database.ts';
import { createDesk, type Desk, NoRight, NotFound, NotKept, randomHex } from '../index.ts';

const HELP = `Writes jobs as files that npm run verify checks.

  npm run -s export -- [--db FILE] [--as PERSON] [--to FOLDER] JOB…
  npm run -s export -- [--db FILE] [--as PERSON] --to FOLDER --all

  JOB          a job's id, or the beginning of it
  --all        every job that this person may export
  --to FOLDER  a file named after the job in this folder. Left out, with one JOB: to stdout
  --as PERSON  whose rights count, by id. Left out: the first owner
  --db FILE    the database. Left out: DATABASE_URL, NOCOOL_DB, else data/nocool.db

Exit codes: 0 exported, 2 wrong usage or not allowed, 3 database, key or folder can't be had, 4 a record is damaged.
`;
const EXIT = { exported: 0, usage: 2, notHad: 3, damaged: 4 } as const;
const complain = (line: string): void => void process.stderr.write(`${plain(line)}\n`);
/** What the caller did wrong, in one line. */
class Usage extends Error {}

interface Wanted {
  readonly jobs: readonly string[];
  readonly all: boolean;
  readonly to: string | null;
  readonly as: string | null;
  readonly db: string | null;
}

async function main(argv: readonly string[]): Promise<number> {
  const wanted = parsed(argv);
  if (wanted === 'help') {
    process.stdout.write(HELP);
    return EXIT.exported;
  }
  const database = databaseOf(process.env, wanted.db);
  const store = await openExisting(database);
  try {
    return await run(store, wanted, keyPlace(process.env, keptBeside(process.env, database)));
  } finally {
    await store.close();
  }
}

async function run(store: Store, { jobs, all, to, as }: Wanted, place: string): Promise<number> {
  const people = (await store.people()).filter((p) => p.active);
  const person = people.find((p) => (as === null ? p.roles.includes('owner') : p.id === as));
  if (!person)
    throw new Usage(
      as === null ? 'There is no owner here: name somebody by --as.' : `There is nobody with the id "${as}".`,
    );
  const desk = createDesk({ store, shelf: SHELF, clock: () => new Date(), random: randomHex, key: openKey(place) });
  const known = (await store.jobs()).map((row) => row.job);
  const chosen = all ? known : jobs.map((named) => oneOf(known, named));
  if (to !== null) mkdirSync(to, { recursive: true });
  let code: number = EXIT.exported;
  let done = 0;
  for (const job of chosen) {
    const text = await exported(desk, person.id, job, all);
    if (typeof text === 'number') code = Math.max(code, text);
    else {
      done += 1;
      if (to === null) process.stdout.write(text);
      else writeFileSync(join(to, `${job}.json`), text);
    }
  }
  if (to !== null) complain(`${done} of ${chosen.length} jobs exported to ${to}.`);
  return code;
}

/** The text, or the exit code where there is none: with --all, what is not theirs is left out. */
async function exported(desk: Desk, by: string, job: string, all: boolean): Promise<string | number> {
  try {
    return await desk.exportJob(by, job);
  } catch (error) {
    if (error instanceof NoRight && all) return EXIT.exported;
    if (!isUnreadable(error)) throw error;
    complain(`${job}: ${error.message}`);
    return EXIT.damaged;
  }
}

function oneOf(known: readonly string[], named: string): string {
  const found = known.filter((job) => job.startsWith(named));
  if (found.length === 1 && found[0] !== undefined) return found[0];
  throw new Usage(found.length === 0 ? `There is no job "${named}".` : `${found.length} jobs begin with "${named}".`);
}

function parsed(argv: readonly string[]): Wanted | 'help' {
  const { values, positionals } = read(argv);
  if (values.help) return 'help';
  const { all = false, to = null, as = null, db = null } = values;
  for (const [name, value] of Object.entries({ to, as, db }))
    if (value === '') throw new Usage(`--${name} needs a value.`);
  if (positionals.some((p) => p === '')) throw new Usage('An empty name is no job.');
  if (all === positionals.length > 0) throw new Usage(all ? 'Either --all or jobs, not both.' : 'Which job?');
  if (to === null && (all || positionals.length > 1)) throw new Usage('Several jobs need a folder: --to FOLDER.');
  return { jobs: positionals, all, to, as, db };
}
function read(argv: readonly string[]) {
  try {
    return parseArgs({
      args: [...argv],
      allowPositionals: true,
      options: {
        all: { type: 'boolean' },
        to: { type: 'string' },
        as: { type: 'string' },
        db: { type: 'string' },
        help: { type: 'boolean', short: 'h' },
      },
    });
  } catch (error) {
    if (error instanceof TypeError) throw new Usage(error.message);
    throw error;
  }
}

/** Trouble that ends the run, in one line. Anything else is a bug and is thrown on. */
function ending(error: unknown): number {
  if (!(error instanceof Error)) throw error;
  const mistake = error instanceof Usage || error instanceof NoRight || error instanceof NotFound;
  const notHad = error instanceof KeyTrouble || error instanceof NotKept || 'errno' in error;
  if (!mistake && !notHad && !isUnreadable(error)) throw error;
  complain(error.message);
  if (error instanceof Usage) complain('Type npm run -s export -- --help for how it is used.');
  return mistake ? EXIT.usage : notHad ? EXIT.notHad : EXIT.damaged;
}

process.exitCode = await main(process.argv.slice(2)).catch(ending);
