/**
 * npm run restore -- FILE [--empty]: a backup becomes the shop. It is checked first as a whole; what was there before is kept
 * beside it under another name. A file whose log lies beside it is taken with that. --empty: also a backup without a job in
 * place of a shop that has some. Stop the server first. Exit codes: 0 restored · 2 wrong usage · 3 the database is in use or
 * can't be written, FILE is no database of nocool, or a PostgreSQL database holds jobs · 4 the backup is damaged (nothing was
 * replaced).
 */
import { nameOf } from '../../store/index.ts';
import { restore } from '../../store/restore.ts';
import { databaseOf } from '../database.ts';
import { command, say } from '../database-command.ts';

const USAGE = 'npm run -s restore -- FILE [--empty]';
await command(
  USAGE,
  1,
  async ([file = ''], said) => {
    const database = databaseOf(process.env, null);
    const allowed = { empty: said.has('--empty') };
    const { jobs, entries, photos, before } = await restore(file, database, new Date(), allowed);
    say(`${nameOf(database)}: ${jobs} jobs, ${entries} entries, ${photos} photos, all sound.`);
    if (before !== null) say(`What was there before is ${before}.`);
  },
  ['--empty'],
);
