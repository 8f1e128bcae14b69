/**
 * npm run key: the public half of the shop's key, for whoever verifies its exports. `-- --all` prints those of older keys
 * too, `-- --renew` makes another key. Exit codes: 0 printed · 2 wrong usage · 3 the key can't be had.
 */
import { KeyTrouble, keyPlace, knownKeys, openKey, renewKey } from '../../report/key.ts';
import { plain } from '../../report/line.ts';
import { databaseOf, keptBeside } from '../database.ts';

const complain = (line: string): void => void process.stderr.write(`${plain(line)}\n`);

function main(argv: readonly string[]): number {
  const [what, ...more] = argv;
  if (more.length > 0 || !['--all', '--renew', undefined].includes(what)) {
    complain('usage: npm run -s key [-- --all | --renew]');
    return 2;
  }
  const place = keyPlace(process.env, keptBeside(process.env, databaseOf(process.env, null)));
  const key = what === '--renew' ? renewKey(place) : openKey(place);
  const keys = what === '--all' ? knownKeys(place) : [key.name];
  for (const name of keys) process.stdout.write(`${name}\n`);
  return 0;
}

try {
  process.exitCode = main(process.argv.slice(2));
} catch (error) {
  if (!(error instanceof KeyTrouble)) throw error;
  complain(error.message);
  process.exitCode = 3;
}
