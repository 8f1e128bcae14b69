/**
 * A process of its own that appends until it is killed, or until it has kept so many entries, and prints a line for
 * each one that was acknowledged: `job seq hash`.
 *
 *   appender <file> <who> <entries, or 0 for ever> <job>…
 *
 * It says `ready` first and opens the file when anything comes on its input, so that several start at one moment.
 */
import { once } from 'node:events';
import { writeSync } from 'node:fs';
import { openSqlite } from '../../engine/store/index.ts';
import { written } from './written.ts';

const [file = '', who = '', wanted = '0', ...jobs] = process.argv.slice(2);
writeSync(1, 'ready\n');
await once(process.stdin, 'data');
// A busy disk may keep one waiting for its turn longer than a person would; nobody is starved here.
const store = await openSqlite(file, { busyMs: 30_000 });

let sent = 0;
async function grow(job: string): Promise<void> {
  let { entries } = await store.read(job);
  for (let kept = 0; wanted === '0' || kept < Number(wanted); ) {
    const last = entries.at(-1);
    // The process that opened the job counts its own replies: ours must not bear the same names.
    const next = written(job, last, { by: who, client: `p${process.pid}-${++sent}` });
    if (last === undefined) {
      try {
        await store.create(job, next.entries, next.texts);
      } catch (error) {
        // Another process may have created it at this moment; then its record is there.
        ({ entries } = await store.read(job));
        if (entries.length === 0) throw error;
        continue;
      }
    } else if ((await store.append(job, last.seq, next.entries, next.texts)) === 'conflict') {
      ({ entries } = await store.read(job));
      continue;
    }
    // Written straight to the pipe: what is printed was acknowledged, and what waits in no buffer can be lost.
    for (const entry of next.entries) writeSync(1, `${job} ${entry.seq} ${entry.hash}\n`);
    entries = next.entries;
    kept++;
  }
}
await Promise.all(jobs.map(grow));
await store.close();
process.exit();
