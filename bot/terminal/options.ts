/** What may stand on the command line, and what it says about itself. */
import { parseArgs } from 'node:util';
import { readTime } from './clock.ts';

export interface Options {
  readonly as: string | null;
  readonly db: string | null;
  readonly job: string | null;
  readonly title: string | null;
  /** A call is taken, with the caller on the line. */
  readonly call: boolean;
  readonly at: string | null;
  readonly json: boolean;
}

export const EXIT = { ended: 0, usage: 2, notKept: 3, damaged: 4 } as const;

export const HELP = `A no-cool call at the terminal, line by line.

  npm run -s talk -- [options]

  --as PERSON    who types: an id or a name. Left out: the first technician of the database
  --db FILE      keep the job in this SQLite file, or at this postgres:// address, and continue the last job
                 under way of that person.
                 Left out: a file of its own in the temporary folder
  --job ID       continue this job (its id, or the beginning of it)
  --new "TITLE"  open a new job
  --call         take a call, with the caller on the line; its end opens a job
  --at TIME      the clock stands at this time, such as 2026-07-14T15:00:00Z
  --json         for programs, see below
  --help         this page

A database without people gets a small invented crew.
Type answers as on the screen, or stop, back, why, where, help. Enter alone shows the question again.
summary tells a finished call for the customer and the shop.
quit or ctrl-D leaves; the job stays.

With --json, stdout carries one JSON object a line and nothing else:
  {"prompt", "entries", "refusal", "info"}  at the start, and after each reply
  {"error"}                                 where a line could not be used; it goes on
stdin takes one reply a line: plain text, or a reply as JSON. A missing client id or seq is filled in.
Two kinds of line are no reply and get an answer only where they are wrong:
  --at TIME      the clock stands there from now on. First in the script, it dates the opening too
  --as PERSON    the following replies come from this person

Exit codes: 0 ended, 2 wrong usage, 3 the database can't be opened or the last reply was not kept,
4 the record is damaged or does not fit its manual.
`;

/** The options, the wish for help, or what is wrong with them. */
export function readOptions(argv: readonly string[]): Options | { help: true } | { wrong: string } {
  const read = parsed(argv);
  if (typeof read === 'string') return { wrong: read };
  if (read.help) return { help: true };
  const { as = null, db = null, job = null, json = false, call = false } = read;
  const title = read.new ?? null;
  for (const [name, value] of Object.entries({ as, db, job, new: title, at: read.at ?? null }))
    if (value !== null && value.trim() === '') return { wrong: `--${name} needs a value.` };
  if (job !== null && title !== null) return { wrong: 'Either --job or --new, not both.' };
  if (job !== null && db === null) return { wrong: '--job needs --db: a new database holds no job.' };
  const at = read.at === undefined ? null : readTime(read.at);
  if (read.at !== undefined && at === null) return { wrong: badTime(read.at) };
  if (call && (job !== null || title !== null)) return { wrong: 'Either --call, --job or --new.' };
  return { as, db, job, title, call, at, json };
}

export const badTime = (typed: string): string =>
  `"${typed}" is no time. Write it with its zone, for example 2026-07-14T15:00:00Z.`;

function parsed(argv: readonly string[]) {
  try {
    const { values } = parseArgs({
      args: [...argv],
      strict: true,
      allowPositionals: false,
      options: {
        as: { type: 'string' },
        db: { type: 'string' },
        job: { type: 'string' },
        new: { type: 'string' },
        call: { type: 'boolean' },
        at: { type: 'string' },
        json: { type: 'boolean' },
        help: { type: 'boolean', short: 'h' },
      },
    });
    return values;
  } catch (error) {
    if (error instanceof TypeError) return error.message;
    throw error;
  }
}
