/** The writing of entries. */
import type { Database } from 'better-sqlite3';
import { type Append, endOf, follows, lineOf, photosIn, writing } from '../appends.ts';
import type { Store } from '../port.ts';
import { ENTRY_COLUMNS, fromText, toRow, WORDS_COLUMNS } from '../rows.ts';
import { soughtIn } from '../sought.ts';
import { createWatchers } from '../watchers.ts';
import type { Commits } from './commits.ts';
import type { Ends } from './ends.ts';
import { soughtWriter } from './sought.ts';

export function createJournal(db: Database, commits: Commits, ends: Ends): Pick<Store, 'create' | 'append' | 'watch'> {
  const addJob = db.prepare('insert into job (id) values (?)');
  const keyOf = db.prepare<[string], number>('select key from job where id = ?').pluck();
  const lastOf = db.prepare<[number], number>('select coalesce(max(seq), 0) from entry where job = ?').pluck();
  const addEntry = db.prepare(`insert into entry (job, ${ENTRY_COLUMNS}) values (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)`);
  const addWords = db.prepare(`insert into words (job, seq, ${WORDS_COLUMNS}) values (?, ?, ?, ?, ?)`);
  const addPhoto = db.prepare(`insert into photo_of_job (photo, job, seq) values (?, ?, ?)
    on conflict do update set seq = excluded.seq`);
  const onBoard = db.prepare(`insert into board (job, last_seq, updated, closed, card, review, counts)
    values (?, ?, ?, ?, ?, ?, ?)
    on conflict do update set last_seq = excluded.last_seq, updated = excluded.updated, closed = excluded.closed,
      card = excluded.card, review = excluded.review, counts = excluded.counts`);
  const sought = soughtWriter(db);
  const { watch, tell } = createWatchers();

  function write(one: Append): 'kept' | 'conflict' {
    const known = keyOf.get(one.job);
    if (!follows(one, known === undefined ? undefined : lastOf.get(known))) return 'conflict';
    const key = known ?? Number(addJob.run(one.job).lastInsertRowid);
    for (const entry of one.entries) addEntry.run(key, ...toRow(entry));
    for (const text of one.texts) addWords.run(key, endOf(one), ...fromText(text));
    for (const [photo, , seq] of photosIn(one)) addPhoto.run(photo, key, seq);
    sought.add(soughtIn(one));
    const line = lineOf(one);
    if (line) onBoard.run(key, ...line);
    return 'kept';
  }

  return {
    ...writing(async (one) => {
      const [outcome, at] = await commits.write(() => [write(one), ends.version()] as const);
      if (outcome === 'kept') {
        ends.set(one.job, endOf(one), at);
        for (const entry of one.entries) tell(one.job, entry);
      }
      return outcome;
    }),
    watch,
  };
}
