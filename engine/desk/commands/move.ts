/**
 * npm run move -- FROM TO [--damaged]: the whole shop into another database, each a file or a postgres:// address. Every job
 * is read back and compared. Broken off, it goes on when it is run again. Stop the server first. --damaged: what can't be
 * read is left out and listed. Exit codes: 0 moved · 2 wrong usage · 3 a database can't be had, or TO holds what FROM does
 * not · 4 a job does not verify · 5 moved with --damaged, and something is damaged.
 */
import { resolve } from 'node:path';
import { checkShop } from '../../store/check.ts';
import { copyShop } from '../../store/copy.ts';
import { Damaged, isPostgres, NotKept, nameOf, openStore } from '../../store/index.ts';
import { openExisting } from '../database.ts';
import { command, say, sayFound } from '../database-command.ts';

await command(
  'npm run -s move -- FROM TO [--damaged]   (each a file or a postgres:// address)',
  2,
  async ([from = '', to = ''], said) => {
    const damaged = said.has('--damaged');
    const place = (where: string): string => (isPostgres(where) ? where : resolve(where));
    if (place(from) === place(to)) throw new NotKept('FROM and TO are the same. Nothing was moved.');
    const source = await openExisting(from);
    try {
      const target = await openStore(to);
      try {
        const copied = await copyShop(source, target, { damaged });
        const check = await checkShop(target);
        const trouble = [...new Set([...copied.trouble, ...check.trouble])];
        if (trouble.length > 0 && !damaged) throw new Damaged(trouble.join('\n'));
        sayFound(nameOf(to), { ...check, trouble });
        say(`${nameOf(from)} is as it was.`);
      } finally {
        await target.close();
      }
    } finally {
      await source.close();
    }
  },
  ['--damaged'],
);
