/**
 * npm run backup -- FILE: the whole shop in one new SQLite file, while the server runs. It is checked before it gets its
 * name: every chain, every word, every photo. Exit codes: 0 made · 2 wrong usage · 3 it can't be written, or there is a
 * file already · 4 something in the shop is damaged (each is listed, and no file is made).
 */
import { backup } from '../../store/backup.ts';
import { databaseOf, openExisting } from '../database.ts';
import { command, say } from '../database-command.ts';

await command('npm run -s backup -- FILE', 1, async ([file = '']) => {
  const database = databaseOf(process.env, null);
  // Says where there is none, and brings its tables up to date.
  await (await openExisting(database)).close();
  const { jobs, entries, photos } = await backup(database, file);
  say(`${file}: ${jobs} jobs, ${entries} entries, ${photos} photos, all sound.`);
});
