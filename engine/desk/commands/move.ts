/**
 * npm run move -- FROM TO [--damaged]: the whole shop into another database, each a file or a postgres:// address. Every job
 * is read back and compared. Broken off, it goes on when it is run again; what was removed or revoked in FROM since goes from
 * TO as well. Stop the server first: nobody may have either open. --damaged: what can't be read is left out and listed. Exit
 * codes: 0 moved · 2 wrong usage · 3 a database can't be had or is in use, or TO holds what FROM does not · 4 a job
 * does not verify · 5 moved with --damaged, and something is damaged.
 */
import { nameOf } from '../../store/index.ts';
import { move } from '../../store/move.ts';
import { command, say, sayFound } from '../database-command.ts';

await command(
  'npm run -s move -- FROM TO [--damaged]   (each a file or a postgres:// address)',
  2,
  async ([from = '', to = ''], said) => {
    sayFound(nameOf(to), await move(from, to, { damaged: said.has('--damaged') }));
    say(`${nameOf(from)} is as it was.`);
  },
  ['--damaged'],
);
