/** How the tables came to be. Forward only: a step that has been released is never edited, the next one mends it. */
import { type Kysely, type Migration, sql } from 'kysely';

const FIRST = [
  // The public id stays out of the entries: an integer key makes appends about twice as fast.
  sql`create table job (key integer primary key, id text not null unique) strict`,
  sql`create table entry (
    job integer not null references job (key), seq integer not null, v integer not null, kind text not null,
    "by" text not null, at text not null, said text, client text, body text not null, prev text not null,
    hash text not null) strict`,
  sql`create unique index entry_of_job on entry (job, seq)`,
  sql`create trigger entry_is_not_changed before update on entry
    begin select raise(abort, 'an entry is never changed'); end`,
  sql`create trigger entry_is_not_removed before delete on entry
    begin select raise(abort, 'an entry is never removed'); end`,
  // INSERT OR REPLACE would pass by both: it removes the old row without asking the trigger on delete.
  sql`create trigger entry_follows_the_last before insert on entry
    when new.seq <> 1 + coalesce((select max(seq) from entry where job = new.job), 0)
      or exists (select 1 from entry where rowid = new.rowid)
    begin select raise(abort, 'an entry follows the last one'); end`,
  // Words may be removed on a caller's wish, never changed. `seq` is the last entry of the append they came with.
  sql`create table words (
    job integer not null references job (key), ref text not null, seq integer not null, salt text not null,
    text text not null) strict`,
  sql`create unique index words_of_job on words (job, ref)`,
  sql`create trigger words_are_not_changed before update on words
    begin select raise(abort, 'words are never changed'); end`,
  sql`create table person (id text primary key, body text not null) strict`,
  sql`create table settings (key integer primary key check (key = 1), body text not null) strict`,
  sql`create table link (hash text primary key, person text not null, expires text not null) strict`,
  sql`create table session (hash text primary key, person text not null, expires text not null) strict`,
  sql`create table meta (key text primary key, value text not null) strict`,
];

const run = (statements: typeof FIRST): Migration => ({
  async up(db: Kysely<unknown>) {
    for (const statement of statements) await statement.execute(db);
  },
});

const SHEETS = [
  sql`create table sheet (
    list text not null, id text not null, version integer not null, body text not null,
    primary key (list, id)) strict, without rowid`,
];

const BOARD = [
  // Held by foreign keys already, but those are off in other programs that open the file.
  sql`create trigger job_is_not_changed before update on job begin select raise(abort, 'a job is never changed'); end`,
  sql`create trigger job_is_not_removed before delete on job begin select raise(abort, 'a job is never removed'); end`,
  sql`create trigger job_is_not_replaced before insert on job
    when exists (select 1 from job where key = new.key or id = new.id)
    begin select raise(abort, 'a job is never replaced'); end`,
  // For the list of jobs. Made from the entries and nothing else: it may be emptied, and is filled again at the start.
  sql`create table board (
    job integer primary key references job (key), last_seq integer not null, updated text not null,
    closed integer not null, card text) strict`,
  sql`create index board_in_order on board (closed, updated)`,
  sql`create table photo (hash text primary key, bytes blob not null) strict`,
  sql`create trigger photo_is_not_changed before update on photo
    begin select raise(abort, 'a photo is never changed'); end`,
  sql`create index link_by_end on link (expires)`,
  sql`create index session_by_end on session (expires)`,
];

const SAYINGS = [
  // `taken`: until when one process is at it. Rows without a place are still to be said.
  sql`create table saying (
    nr integer primary key, id text not null unique, chat text not null, lane text not null, body text not null,
    tries integer not null default 0, taken text, at text) strict`,
  sql`create index saying_in_order on saying (chat, lane, nr)`,
  sql`create index saying_unsaid on saying (chat, lane, nr) where at is null`,
  sql`create unique index saying_by_place on saying (chat, at)`,
  sql`create table heard (chat text not null, lane text not null, seq integer not null, primary key (chat, lane)) strict,
    without rowid`,
];

const REVIEW = [
  // null: no review is due. 0: nobody knows yet, the desk has to look; so it is with every card of an earlier version.
  sql`alter table board add column review integer`,
  sql`update board set card = null, review = 0 where closed = 0`,
  sql`create index board_by_review on board (review, updated, job) where review is not null`,
];

const SOUGHT = [
  // By which words a job or a unit is found. Derived; `seq`: with which append they came, so that they go with its words.
  sql`create table sought (
    token text not null, list text not null, id text not null, seq integer not null,
    primary key (token, list, id)) strict, without rowid`,
  sql`create index sought_of on sought (list, id)`,
];

const SHARES = [
  sql`create table share (
    hash text primary key, job text not null, audience text not null, "by" text not null, made text not null,
    expires text not null) strict, without rowid`,
  sql`create index share_of_job on share (job, expires)`,
  sql`create index share_by_end on share (expires)`,
];

const COUNTS = [
  // What an ended job counts under, as the desk says it; beside it the same as rows, which the database keeps by itself.
  sql`alter table board add column counts text`,
  sql`create table tally (
    kind text not null, day text not null, what text not null, job integer not null,
    primary key (kind, day, what, job)) strict, without rowid`,
  sql`create index tally_of_job on tally (job, kind, what)`,
  sql`create trigger board_is_counted after insert on board when new.counts is not null begin
    insert into tally select json_extract(value, '$[0]'), json_extract(new.counts, '$.day'), json_extract(value, '$[1]'),
      new.job from json_each(new.counts, '$.under'); end`,
  sql`create trigger board_is_counted_anew after update of counts on board when new.counts is not old.counts begin
    delete from tally where job = new.job;
    insert into tally select json_extract(value, '$[0]'), json_extract(new.counts, '$.day'), json_extract(value, '$[1]'),
      new.job from json_each(new.counts, '$.under'); end`,
  sql`create trigger board_is_not_counted after delete on board begin delete from tally where job = old.job; end`,
  // Nobody knows yet what earlier jobs count under: the desk has to look.
  sql`update board set card = null, review = 0`,
];

const DEVICES = [
  sql`alter table session add column made text`,
  sql`alter table session add column device text`,
  sql`create index session_of_person on session (person, expires)`,
];

const WORDS = [
  // INSERT OR REPLACE would pass by the trigger on update.
  sql`create trigger words_are_not_replaced before insert on words
    when exists (select 1 from words where (job = new.job and ref = new.ref) or rowid = new.rowid)
    begin select raise(abort, 'words are never replaced'); end`,
];

const PHOTOS = [
  // The same of photos.
  sql`create trigger photo_is_not_replaced before insert on photo
    when exists (select 1 from photo where hash = new.hash or rowid = new.rowid)
    begin select raise(abort, 'a photo is never replaced'); end`,
];

const PHOTOS_OF_JOBS = [
  // By which jobs a photo is named, and the last entry that does. Written with the entries, so that forgetting reads few.
  sql`create table photo_of_job (
    photo text not null, job integer not null, seq integer not null, primary key (photo, job)) strict, without rowid`,
];

export const MIGRATIONS: Record<string, Migration> = {
  '001-first': run(FIRST),
  '002-sheets': run(SHEETS),
  '003-board': run(BOARD),
  '004-sayings': run(SAYINGS),
  '005-review': run(REVIEW),
  '006-sought': run(SOUGHT),
  '007-shares': run(SHARES),
  '008-counts': run(COUNTS),
  '009-devices': run(DEVICES),
  '010-words': run(WORDS),
  '011-photos': run(PHOTOS),
  '012-photos-of-jobs': run(PHOTOS_OF_JOBS),
};
