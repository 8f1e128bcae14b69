/**
 * npm run restore -- FILE [--empty] [--damaged]: a backup becomes the shop. It is checked first as a whole; what was there
 * before is kept beside it under another name. A file whose log lies beside it is taken with that. Stop the server first.
 *
 * --empty: also a backup without a job in place of a shop that has some. --damaged: also a backup of which something is
 * damaged; each is listed, and what can't be read is not in the shop. Exit codes: 0 restored · 2 wrong usage · 3 the database
 * is in use or can't be written, FILE is no database of nocool, or a PostgreSQL database holds what FILE does not · 4 the
 * backup is damaged (nothing was replaced) · 5 restored with --damaged, and something is damaged.
 */
import { nameOf } from '../../store/index.ts';
import { restore } from '../../store/restore.ts';
import { databaseOf } from '../database.ts';
import { command, say, sayFound } from '../database-command.ts';

await command(
  'npm run -s restore -- FILE [--empty] [--damaged]',
  1,
  async ([file = ''], said) => {
    const database = databaseOf(process.env, null);
    const allowed = { empty: said.has('--empty'), damaged: said.has('--damaged') };
    const restored = await restore(file, database, new Date(), allowed);
    sayFound(nameOf(database), restored);
    if (restored.before !== null) say(`What was there before is ${restored.before}.`);
  },
  ['--empty', '--damaged'],
);
