/**
 * npm run restore -- FILE: a backup becomes the shop. It is checked first as a whole; what was there before is kept beside
 * it under another name. Stop the server first. Exit codes: 0 restored · 2 wrong usage · 3 the database is in use or can't
 * be written, or a PostgreSQL database holds jobs · 4 the backup is damaged (nothing was replaced).
 */
import { nameOf } from '../../store/index.ts';
import { restore } from '../../store/restore.ts';
import { databaseOf } from '../database.ts';
import { command, say } from '../database-command.ts';

await command('npm run -s restore -- FILE', 1, async (file = '') => {
  const database = databaseOf(process.env, null);
  const { jobs, entries, photos, before } = await restore(file, database, new Date());
  say(`${nameOf(database)}: ${jobs} jobs, ${entries} entries, ${photos} photos, all sound.`);
  if (before !== null) say(`What was there before is ${before}.`);
});
