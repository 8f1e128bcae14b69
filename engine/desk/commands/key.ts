/**
 * npm run key: the public half of the shop's key, for whoever verifies its exports. `-- --all` prints those of older keys
 * too, `-- --renew` makes another key, `-- --revoke KEY` ends the trust in an older one. Exit codes: 0 printed · 2 wrong usage · 3 the key can't be had.
 */
import { isKeyName, KeyTrouble, keyPlace, knownKeys, openKey, renewKey, revokeKey } from '../../report/key.ts';
import { plain } from '../../report/line.ts';
import { NotKept } from '../../store/index.ts';
import { databaseOf, keptBeside } from '../database.ts';

const complain = (line: string): void => void process.stderr.write(`${plain(line)}\n`);

function main(argv: readonly string[]): number {
  const [what, named, ...more] = argv;
  const alone = ['--all', '--renew', undefined].includes(what) && named === undefined;
  if (more.length > 0 || !(alone || (what === '--revoke' && isKeyName(named ?? '')))) {
    complain('usage: npm run -s key [-- --all | --renew | --revoke ed25519:…]');
    return 2;
  }
  const place = keyPlace(process.env, keptBeside(process.env, databaseOf(process.env, null)));
  if (what === '--revoke') revokeKey(place, named ?? '');
  const key = what === '--renew' ? renewKey(place) : openKey(place);
  const keys = what === '--all' || what === '--revoke' ? knownKeys(place) : [key.name];
  for (const name of keys) process.stdout.write(`${name}\n`);
  return 0;
}

try {
  process.exitCode = main(process.argv.slice(2));
} catch (error) {
  if (!(error instanceof KeyTrouble || error instanceof NotKept)) throw error;
  complain(error.message);
  process.exitCode = 3;
}
