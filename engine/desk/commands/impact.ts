/**
 * npm run impact: what the pages as they are now would have said of finished jobs. Exit codes: 0 no verdict would change ·
 * 1 some would (they are listed) · 2 wrong usage · 3 the database or a file can't be read · 4 a record is damaged, or
 * does not fit its pages (it is named, and the others are gone over).
 */
import { readFileSync, statSync } from 'node:fs';
import { parseArgs } from 'node:util';
import { SHELF } from '../../../flows/index.ts';
import { verifyChain } from '../../chain.ts';
import { compile, type Machine } from '../../compile.ts';
import { fingerprint } from '../../fingerprint.ts';
import { filesAt } from '../../report/bulk.ts';
import { flowOf, LARGEST, readJobFile } from '../../report/file.ts';
import { type Impact, impact, isFinished } from '../../report/impact.ts';
import { plain } from '../../report/line.ts';
import type { Entry } from '../../schema.ts';
import type { Manual } from '../../vocabulary.ts';
import { isUnreadable } from '../card.ts';
import { databaseOf, openExisting } from '../database.ts';
import { NotKept } from '../index.ts';

const HELP = `Goes over finished jobs on the pages as they are now, and lists the verdicts that would change.

  npm run -s impact -- [--db FILE] [--json]
  npm run -s impact -- [--json] FILE…

  --db FILE  the database. Left out: NOCOOL_DB, else data/nocool.db
  FILE       an exported job, or a folder of them; the database is then left alone
  --json     one JSON object a line for each verdict that would change

Exit codes: 0 none would change, 1 some would, 2 wrong usage, 3 something can't be read, 4 a record is damaged
or does not fit its pages.
`;
const EXIT = { same: 0, changed: 1, usage: 2, notHad: 3, damaged: 4 } as const;
const say = (line: string): void => void process.stdout.write(`${line}\n`);
const complain = (line: string): void => void process.stderr.write(`${plain(line)}\n`);

/** A job's entries, or why there are none. */
type Job = { readonly name: string } & (
  | { readonly entries: readonly Entry[] }
  | { readonly wrong: string; code: number }
);

async function* ofDatabase(database: string): AsyncGenerator<Job> {
  const store = await openExisting(database);
  try {
    for (const { job } of await store.jobs()) {
      yield await store.read(job).then(
        ({ entries }) => ({ name: job, entries }),
        (error: unknown) => {
          if (!isUnreadable(error)) throw error;
          return { name: job, wrong: error.message, code: EXIT.damaged };
        },
      );
    }
  } finally {
    await store.close();
  }
}

async function* ofFiles(paths: readonly string[]): AsyncGenerator<Job> {
  for (const path of paths) {
    const files = filesAt(path);
    if ('wrong' in files) yield { name: path, wrong: files.wrong, code: EXIT.notHad };
    else for (const name of files.list) yield ofFile(name);
  }
}
function ofFile(name: string): Job {
  const bytes = readBytes(name);
  if (bytes === null) return { name, wrong: 'it can’t be read.', code: EXIT.notHad };
  const file = readJobFile(bytes);
  if ('wrong' in file) return { name, wrong: file.wrong, code: EXIT.notHad };
  return { name, entries: file.entries as readonly Entry[] };
}
function readBytes(name: string): Uint8Array | null {
  try {
    return statSync(name).size > LARGEST ? null : readFileSync(name);
  } catch {
    return null;
  }
}

async function main(argv: readonly string[]): Promise<number> {
  const read = parsed(argv);
  if (typeof read === 'string') return usage(read);
  const { values, positionals } = read;
  if (values.help) {
    process.stdout.write(HELP);
    return EXIT.same;
  }
  if (values.db !== undefined && positionals.length > 0) return usage('Either --db or files, not both.');
  const jobs = positionals.length > 0 ? ofFiles(positionals) : ofDatabase(databaseOf(process.env, values.db ?? null));
  const machineOf = machines();
  let code: number = EXIT.same;
  let [finished, verdicts] = [0, 0];
  for await (const job of jobs) {
    const trouble = 'wrong' in job ? job : unsound(job.entries);
    if (trouble !== null || 'wrong' in job) {
      complain(`${job.name}: ${trouble?.wrong ?? ''}`);
      code = Math.max(code, trouble?.code ?? EXIT.damaged);
      continue;
    }
    let found: Found | null;
    try {
      found = goneOver(job.entries, machineOf);
    } catch (error) {
      // A sound chain may hold what no page ever asked, in a file from anywhere: the next job is gone over all the same.
      complain(`${job.name}: the record does not fit its pages: ${error instanceof Error ? error.message : error}`);
      code = EXIT.damaged;
      continue;
    }
    if (!found) continue;
    finished += 1;
    verdicts += found.changes.length;
    if (found.changes.length > 0) code = Math.max(code, EXIT.changed);
    for (const change of found.changes) {
      if (values.json) say(JSON.stringify({ job: job.name, ...change, ends: found.ends, dropped: found.dropped }));
      else
        say(
          plain(
            `${job.name} (${found.versions}) ${change.place}: ${change.old ?? 'none'} → ${change.now ?? `none, stands at ${found.ends}`}`,
          ),
        );
    }
  }
  complain(`${finished} finished jobs gone over; ${verdicts} verdicts would change.`);
  return code;
}

type Found = Impact & { readonly versions: string };
/** Null where the job is not finished, or its manual is none of ours. */
function goneOver(entries: readonly Entry[], machineOf: (manual: Manual) => Machine): Found | null {
  const flow = flowOf(entries);
  const newest = SHELF.find((m) => m.id === flow?.manual);
  const own = SHELF.find((m) => fingerprint(m) === flow?.fingerprint);
  if (!newest || !isFinished(own ? machineOf(own) : null, entries)) return null;
  const versions = `${flow?.manual} ${flow?.version} → ${newest.version}`;
  return { ...impact(machineOf(newest), entries), versions };
}

function unsound(entries: readonly Entry[]): { wrong: string; code: number } | null {
  const chain = verifyChain(entries);
  if (chain.ok && entries[0]?.kind === 'opened') return null;
  return {
    wrong: chain.ok ? 'the record does not begin with "opened"' : `entry ${chain.at}: ${chain.why}`,
    code: EXIT.damaged,
  };
}

function machines(): (manual: Manual) => Machine {
  const made = new Map<Manual, Machine>();
  return (manual) => {
    const machine = made.get(manual) ?? compile(manual);
    made.set(manual, machine);
    return machine;
  };
}

function usage(text: string): number {
  complain(text);
  complain('Type npm run -s impact -- --help for how it is used.');
  return EXIT.usage;
}
function parsed(argv: readonly string[]) {
  try {
    return parseArgs({
      args: [...argv],
      allowPositionals: true,
      options: { db: { type: 'string' }, json: { type: 'boolean' }, help: { type: 'boolean', short: 'h' } },
    });
  } catch (error) {
    if (error instanceof TypeError) return error.message;
    throw error;
  }
}

process.exitCode = await main(process.argv.slice(2)).catch((error: unknown) => {
  if (!(error instanceof NotKept) && !isUnreadable(error)) throw error;
  complain(error.message);
  return error instanceof NotKept ? EXIT.notHad : EXIT.damaged;
});
