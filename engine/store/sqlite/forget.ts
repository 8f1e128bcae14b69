/** Removal of words and personal data, from the tables and from what SQLite keeps of removed rows. */
import { type Database, SqliteError } from 'better-sqlite3';
import type { Person } from '../../desk/types.ts';
import type { Entry } from '../../schema.ts';
import { FORGETS, FORGOTTEN, forgotten, photosNamed, unitsNamed, unnamed } from '../forgotten.ts';
import type { Store } from '../port.ts';
import { json } from '../rows.ts';
import type { Ends } from './ends.ts';
import { guarded } from './trouble.ts';

export function createForget(db: Database, ends: Ends): Pick<Store, 'forget' | 'removals' | 'scrub'> {
  // Words came with the last entry of an append, and one append is one person's.
  const byPerson = `from words where (job, seq) in (select job, seq from entry where "by" = ?)`;
  const jobsOf = db.prepare<[string], number>(`select distinct job ${byPerson}`).pluck();
  const wordsOf = db.prepare(`delete ${byPerson}`);
  const keyOf = db.prepare<[string], number>('select key from job where id = ?').pluck();
  const wordsOn = db.prepare('delete from words where job = ?');
  const bodies = db.prepare<[number], string>(
    `select body from entry where job = ? and kind in ('answered', 'amended', 'set')`,
  );
  const notSought = db.prepare(`delete from sought where list = ? and id = ?`);
  const notSoughtBy = db.prepare(`delete from sought where list = 'job' and (id, seq) in
    (select job.id, entry.seq from entry join job on job.key = entry.job where entry."by" = ?)`);
  const unit = db.prepare<[string], string>(`select body from sheet where list = 'equipment' and id = ?`).pluck();
  const saveUnit = db.prepare(`update sheet set body = ?, version = version + 1 where list = 'equipment' and id = ?`);
  /** Up to its last entry it is forgotten. */
  const noteOf = db.prepare(`insert into meta (key, value)
    select '${FORGOTTEN}' || job.id, coalesce((select max(seq) from entry where job = job.key), 0) from job where key = ?
    on conflict (key) do update set value = excluded.value`);
  // Another job may name the same picture: it is that job's evidence too, until that one is forgotten.
  const noPhoto = db.prepare(`delete from photo where hash = ? and not exists (
    select 1 from photo_of_job as named join job on job.key = named.job where named.photo = photo.hash and named.job <> ?
      and named.seq > coalesce((select cast(value as integer) from meta where key = '${FORGOTTEN}' || job.id), 0))`);
  const noShare = db.prepare('delete from share where job = ?');
  const noCard = db.prepare('update board set closed = 0, card = null, review = 0, counts = null where job = ?');
  const person = db.prepare<[string], string>('select body from person where id = ?').pluck();
  const savePerson = db.prepare('update person set body = ? where id = ?');
  const signIns = ['link', 'session'].map((table) => db.prepare(`delete from ${table} where person = ?`));

  const mark = db.prepare(
    `insert into meta (key, value) values (?, '1') on conflict (key) do update set value = cast(value + 1 as text)`,
  );

  const counted = db.prepare<[string], string>('select value from meta where key = ?').pluck();
  /** Asked at every turn, and the same until this connection removes words or another one writes. */
  let known: { readonly at: number | null; readonly count: number } | null = null;

  const onJob = (job: string): number => {
    const key = keyOf.get(job);
    if (key === undefined) return 0;
    for (const text of bodies.pluck().all(key)) {
      const body = json(text, job) as Entry['body'];
      for (const hash of photosNamed(body)) noPhoto.run(hash, key);
      for (const id of unitsNamed(body)) {
        const sheet = unit.get(id);
        if (sheet !== undefined) saveUnit.run(unnamed(sheet), id);
        notSought.run('equipment', id);
      }
    }
    noteOf.run(key);
    noCard.run(key);
    notSought.run('job', job);
    noShare.run(job);
    return wordsOn.run(key).changes;
  };
  const ofPerson = (id: string): number => {
    for (const job of jobsOf.all(id)) noCard.run(job);
    const body = person.get(id);
    if (body !== undefined) savePerson.run(JSON.stringify(forgotten(json(body) as Person)), id);
    for (const signIn of signIns) signIn.run(id);
    notSoughtBy.run(id);
    return wordsOf.run(id).changes;
  };
  return {
    forget: (whose) =>
      guarded(() => {
        const work = db.transaction(() => {
          mark.run(FORGETS);
          return 'job' in whose ? onJob(whose.job) : ofPerson(whose.person);
        });
        const count = work.immediate();
        known = null;
        // The log of changes still holds the old pages. Another reader may hold them back; the next checkpoint then
        // takes them, at the latest when the last program closes the file.
        db.pragma('wal_checkpoint(truncate)');
        return count;
      }),
    removals: () =>
      guarded(() => {
        const at = ends.version();
        if (known === null || known.at !== at) known = { at, count: Number(counted.get(FORGETS) ?? 0) };
        return known.count;
      }),
    scrub: () =>
      guarded(() => {
        try {
          db.exec('vacuum');
          // Until every reader is done, the file keeps its old pages.
          const [done] = db.pragma('wal_checkpoint(truncate)') as { busy: number }[];
          return done?.busy === 0;
        } catch (error) {
          if (error instanceof SqliteError && ['SQLITE_BUSY', 'SQLITE_FULL', 'SQLITE_LOCKED'].includes(error.code))
            return false;
          throw error;
        }
      }),
  };
}
