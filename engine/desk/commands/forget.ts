/**
 * npm run forget -- job ID | person ID: removes what was typed on one job and on the call that opened it, with its photos and the unit's name, or all that one person ever
 * typed, with their name. The entries stay, with the salted hashes of the words, and every chain verifies. A server
 * that runs reads anew what it had in memory. Exit codes: 0 removed · 2 wrong usage · 3 the database can't be
 * had, or holds nothing of this id.
 */
import { isPostgres, NotKept } from '../../store/index.ts';
import { databaseOf, openExisting } from '../database.ts';
import { command, EXIT, say } from '../database-command.ts';
import { recordsOf } from '../dispatch/records.ts';

const USAGE = 'npm run -s forget -- job ID | person ID';
await command(USAGE, 2, async ([what = '', id = '']) => {
  if (what !== 'job' && what !== 'person') {
    process.stderr.write(`usage: ${USAGE}\n`);
    process.exitCode = EXIT.usage;
    return;
  }
  const database = databaseOf(process.env, null);
  const store = await openExisting(database);
  try {
    const there =
      what === 'job' ? (await store.read(id)).entries.length > 0 : (await store.people()).some((p) => p.id === id);
    if (!there) throw new NotKept(`There is no ${what} ${id}.`);
    const records = what === 'job' ? await recordsOf(store, id) : [];
    let count = what === 'job' ? 0 : await store.forget({ person: id });
    for (const job of records) count += await store.forget({ job });
    say(`${count} texts removed. Backups made before still hold them.`);
    if (!(await store.scrub()) && !isPostgres(database))
      say('The file still holds traces of them: stop the server, and say the same once more.');
  } finally {
    await store.close();
  }
});
