/**
 * npm run backup -- FILE: the whole shop in one new SQLite file, while the server runs. It is checked before it gets its
 * name: every chain, every word, every photo. Exit codes: 0 made · 2 wrong usage · 3 it can't be written, or there is a
 * file already · 4 the shop can't be read (no file is made) · 5 made, but something in the shop is damaged: each is listed,
 * and the file holds everything else.
 */
import { backup } from '../../store/backup.ts';
import { databaseOf, openExisting } from '../database.ts';
import { command, sayFound } from '../database-command.ts';

await command('npm run -s backup -- FILE', 1, async ([file = '']) => {
  const database = databaseOf(process.env, null);
  // Says where there is none, and brings its tables up to date.
  await (await openExisting(database)).close();
  sayFound(file, await backup(database, file));
});
