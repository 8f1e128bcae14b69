/**
 * npm run backup -- FILE: the whole shop in one new SQLite file, while the server runs. It is checked before it gets its
 * name: every chain, every word, every photo. The shop is only read; one that an earlier version wrote stays as it is. Exit
 * codes: 0 made · 2 wrong usage · 3 it can't be written, there is a file already, or the tables are of a later version, in PostgreSQL of
 * another one · 4 the shop can't be read (no file is made) · 5 made, but something in the shop is damaged: each is listed,
 * and the file holds everything else.
 */
import { backup } from '../../store/backup.ts';
import { databaseOf } from '../database.ts';
import { command, sayFound } from '../database-command.ts';

await command('npm run -s backup -- FILE', 1, async ([file = '']) => {
  const database = databaseOf(process.env, null);
  sayFound(file, await backup(database, file));
});
