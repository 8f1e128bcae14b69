/**
 * npm run verify -- FILE…: checks exported jobs, offline. Says of each file in one word what it is; the words and their
 * exit codes are in `engine/report/outcome.ts`. Several files: the highest code.
 */
import { parseArgs } from 'node:util';
import { SHELF } from '../../../flows/index.ts';
import { type Of, verifyFiles } from '../../report/bulk.ts';
import { KeyTrouble, keyPlace, knownKeys } from '../../report/key.ts';
import { plain } from '../../report/line.ts';
import { codeOf, OUTCOMES, troubleLine, wordOf } from '../../report/outcome.ts';
import { keysNamed } from '../../report/pinned.ts';
import { createVerifier } from '../../report/verify.ts';
import { NotKept } from '../../store/index.ts';
import { databaseOf, keptBeside } from '../database.ts';

const HELP = `Checks exported jobs without database or network.

  npm run -s verify -- [--key KEY]… [--json] FILE…

  FILE        an exported job, or a folder: every .json in it
  --key KEY   a public key of the shop (ed25519:…), or a file of them; once for each key.
              Left out: the keys that the shop on this machine has had
  --json      one JSON object a line for each file

Exit codes, the highest where several files differ:
${Object.entries(OUTCOMES)
  .map(([word, code]) => `  ${String(code).padStart(2)}  ${word}`)
  .join('\n')}
   2  wrong usage
`;

const BAD_USAGE = 2;
const say = (line: string): void => void process.stdout.write(`${line}\n`);
const complain = (line: string): void => void process.stderr.write(`${plain(line)}\n`);

function main(argv: readonly string[]): number {
  const read = parsed(argv);
  if (typeof read === 'string') return usage(read);
  const { values, positionals } = read;
  if (values.help) {
    process.stdout.write(HELP);
    return 0;
  }
  if (positionals.length === 0) return usage('Which file?');
  const keys = keysNamed(values.key ?? []);
  if ('wrong' in keys) return usage(keys.wrong);
  const pinned = values.key
    ? keys.list
    : knownKeys(keyPlace(process.env, keptBeside(process.env, databaseOf(process.env, null))));
  const counts = new Map<string, number>();
  let worst = 0;
  for (const one of verifyFiles(createVerifier(SHELF, pinned), positionals)) {
    counts.set(wordOf(one), (counts.get(wordOf(one)) ?? 0) + 1);
    worst = Math.max(worst, codeOf(one));
    if (values.json) say(JSON.stringify({ outcome: wordOf(one), code: codeOf(one), ...one }));
    else print(one);
  }
  const all = [...counts.values()].reduce((a, b) => a + b, 0);
  if (!values.json && all > 1)
    say(`${all} files: ${[...counts].map(([word, count]) => `${count} ${word}`).join(', ')}`);
  return worst;
}

function print(one: Of): void {
  const [first, ...more] = one.troubles;
  const removed = one.removed === 0 ? '' : `; words of ${one.removed} places are not in the file`;
  const sound = `identical: ${one.entries} entries on ${one.flow}, signed by ${one.key}${removed}`;
  say(`${plain(one.file)}: ${plain(first ? troubleLine(first) : sound)}`);
  for (const trouble of more) say(`  also ${plain(troubleLine(trouble))}`);
}

function usage(text: string): number {
  complain(text);
  complain('Type npm run -s verify -- --help for how it is used.');
  return BAD_USAGE;
}

function parsed(argv: readonly string[]) {
  try {
    return parseArgs({
      args: [...argv],
      allowPositionals: true,
      options: {
        key: { type: 'string', multiple: true },
        json: { type: 'boolean' },
        help: { type: 'boolean', short: 'h' },
      },
    });
  } catch (error) {
    if (error instanceof TypeError) return error.message;
    throw error;
  }
}

// Whoever read the output has gone.
process.stdout.on('error', () => process.exit(OUTCOMES.unreadable));
try {
  process.exitCode = main(process.argv.slice(2));
} catch (error) {
  if (!(error instanceof KeyTrouble || error instanceof NotKept)) throw error;
  complain(error.message);
  process.exitCode = OUTCOMES.unreadable;
}
