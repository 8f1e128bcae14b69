/** How the tables came to be. Forward only: a step that has been released is never edited, the next one mends it. */
import { type Kysely, type Migration, sql } from 'kysely';
import { APP_ROLE } from './link.ts';

// "C": instants and ids compare as bytes, as they do in SQLite, whatever the database's own language is.
const FIRST = [
  sql`create table job (key integer generated always as identity primary key, id text collate "C" not null unique)`,
  // `xid` orders commits for the feed: what a reader could not see yet has one that is not below its horizon.
  sql`create table entry (
    job integer not null references job (key), seq integer not null, v integer not null, kind text not null,
    "by" text collate "C" not null, at text collate "C" not null, said text, client text collate "C", body text not null,
    prev text not null, hash text not null, xid xid8 not null default pg_current_xact_id())`,
  sql`create unique index entry_of_job on entry (job, seq)`,
  sql`create index entry_by_commit on entry (xid)`,
  sql`create function refuse_change() returns trigger language plpgsql as
    $$ begin raise exception 'an entry of % is never changed or removed', tg_table_name using errcode = '42501'; end $$`,
  sql`create trigger entry_is_not_changed before update or delete on entry for each row execute function refuse_change()`,
  sql`create trigger entry_is_not_emptied before truncate on entry execute function refuse_change()`,
  sql`create trigger job_is_not_changed before update or delete on job for each row execute function refuse_change()`,
  sql`create trigger job_is_not_emptied before truncate on job execute function refuse_change()`,
  // 23505, as of the unique index: between two processes either may strike, and both mean that another was first.
  sql`create function follow_the_last() returns trigger language plpgsql as $$ begin
    if new.seq <> 1 + coalesce((select max(seq) from entry where job = new.job), 0) then
      raise exception 'an entry follows the last one' using errcode = '23505';
    end if;
    return new; end $$`,
  sql`create trigger entry_follows_the_last before insert on entry for each row execute function follow_the_last()`,
  // Words may be removed on a caller's wish, never changed. `seq` is the last entry of the append they came with.
  sql`create table words (
    job integer not null references job (key), ref text collate "C" not null, seq integer not null, salt text not null,
    text text not null, nr bigint generated always as identity)`,
  sql`create unique index words_of_job on words (job, ref)`,
  sql`create trigger words_are_not_changed before update on words for each row execute function refuse_change()`,
  // For the list of jobs. Made from the entries and nothing else: it may be emptied, and is filled again at the start.
  sql`create table board (
    job integer primary key references job (key), last_seq integer not null, updated text collate "C" not null,
    closed integer not null, card text)`,
  sql`create index board_in_order on board (closed, updated, job)`,
  sql`create table photo (hash text collate "C" primary key, bytes bytea not null)`,
  sql`create trigger photo_is_not_changed before update on photo for each row execute function refuse_change()`,
  sql`create table person (
    id text collate "C" primary key, body text not null, nr bigint generated always as identity)`,
  sql`create table settings (key integer primary key check (key = 1), body text not null)`,
  sql`create table sheet (
    list text collate "C" not null, id text collate "C" not null, version integer not null, body text not null,
    primary key (list, id))`,
  sql`create table link (hash text collate "C" primary key, person text not null, expires text collate "C" not null)`,
  sql`create index link_by_end on link (expires)`,
  sql`create table session (hash text collate "C" primary key, person text not null, expires text collate "C" not null)`,
  sql`create index session_by_end on session (expires)`,
  sql`create table meta (key text collate "C" primary key, value text not null)`,
];

/**
 * Rights besides the triggers. Even the owner of the tables has none to change an entry until he gives them to himself.
 * The role for the application is made where the one who migrates may make roles.
 */
const RIGHTS = [
  sql`revoke update, delete, truncate on job, entry from public, current_user`,
  sql`revoke update, truncate on words, photo from public, current_user`,
  sql.raw(`do $$ begin
    if not exists (select from pg_roles where rolname = '${APP_ROLE}')
      and (select rolsuper or rolcreaterole from pg_roles where rolname = current_user) then
      create role ${APP_ROLE} nologin;
    end if;
    exception when duplicate_object or unique_violation then null; end $$`),
  sql.raw(`do $$ begin
    if exists (select from pg_roles where rolname = '${APP_ROLE}') then
      execute format('grant usage on schema %I to ${APP_ROLE}', current_schema());
      grant select, insert on job, entry to ${APP_ROLE};
      grant select, insert, delete on words, photo to ${APP_ROLE};
      grant select, insert, update, delete on board, person, settings, sheet, link, session, meta to ${APP_ROLE};
      grant select on kysely_migration to ${APP_ROLE};
    end if; end $$`),
];

const run = (statements: typeof FIRST): Migration => ({
  async up(db: Kysely<unknown>) {
    for (const statement of statements) await statement.execute(db);
  },
});

const SAYINGS = [
  // `taken`: until when one process is at it. Rows without a place are still to be said.
  sql`create table saying (
    nr bigint generated always as identity primary key, id text collate "C" not null unique, chat text collate "C" not null,
    lane text collate "C" not null, body text not null, tries integer not null default 0, taken text collate "C",
    at text collate "C")`,
  sql`create index saying_in_order on saying (chat, lane, nr)`,
  sql`create index saying_unsaid on saying (chat, lane, nr) where at is null`,
  sql`create unique index saying_by_place on saying (chat, at)`,
  sql`create table heard (
    chat text collate "C" not null, lane text collate "C" not null, seq integer not null, primary key (chat, lane))`,
  sql.raw(`do $$ begin
    if exists (select from pg_roles where rolname = '${APP_ROLE}') then
      grant select, insert, update, delete on saying, heard to ${APP_ROLE};
    end if; end $$`),
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
    token text collate "C" not null, list text collate "C" not null, id text collate "C" not null, seq integer not null,
    primary key (token, list, id))`,
  sql`create index sought_of on sought (list, id)`,
  sql.raw(`do $$ begin
    if exists (select from pg_roles where rolname = '${APP_ROLE}') then
      grant select, insert, update, delete on sought to ${APP_ROLE};
    end if; end $$`),
];

const SHARES = [
  sql`create table share (
    hash text collate "C" primary key, job text collate "C" not null, audience text not null, "by" text not null,
    made text collate "C" not null, expires text collate "C" not null)`,
  sql`create index share_of_job on share (job, expires)`,
  sql`create index share_by_end on share (expires)`,
  sql.raw(`do $$ begin
    if exists (select from pg_roles where rolname = '${APP_ROLE}') then
      grant select, insert, update, delete on share to ${APP_ROLE};
    end if; end $$`),
];

const COUNTS = [
  // What an ended job counts under, as the desk says it; beside it the same as rows, which the database keeps by itself.
  sql`alter table board add column counts text`,
  sql`create table tally (
    kind text collate "C" not null, day text collate "C" not null, what text collate "C" not null, job integer not null,
    primary key (kind, day, what, job))`,
  sql`create index tally_of_job on tally (job, kind, what)`,
  sql`create function count_board() returns trigger language plpgsql as $$ begin
    if tg_op <> 'INSERT' then
      if tg_op = 'UPDATE' and new.counts is not distinct from old.counts then return null; end if;
      delete from tally where job = old.job;
    end if;
    if tg_op <> 'DELETE' and new.counts is not null then
      insert into tally (kind, day, what, job)
        select one->>0, new.counts::jsonb->>'day', one->>1, new.job from jsonb_array_elements(new.counts::jsonb->'under') as one;
    end if;
    return null; end $$`,
  sql`create trigger board_is_counted after insert or update or delete on board for each row execute function count_board()`,
  // Nobody knows yet what earlier jobs count under: the desk has to look.
  sql`update board set card = null, review = 0`,
  sql.raw(`do $$ begin
    if exists (select from pg_roles where rolname = '${APP_ROLE}') then
      grant select, insert, update, delete on tally to ${APP_ROLE};
    end if; end $$`),
];

const DEVICES = [
  sql`alter table session add column made text collate "C"`,
  sql`alter table session add column device text`,
  sql`create index session_of_person on session (person, expires)`,
];

const PHOTOS_OF_JOBS = [
  // By which jobs a photo is named, and the last entry that does. Written with the entries, so that forgetting reads few.
  sql`create table photo_of_job (
    photo text collate "C" not null, job integer not null, seq integer not null,
    primary key (photo, job))`,
  sql.raw(`do $$ begin
    if exists (select from pg_roles where rolname = '${APP_ROLE}') then
      grant select, insert, update, delete on photo_of_job to ${APP_ROLE};
    end if; end $$`),
];

export const MIGRATIONS: Record<string, Migration> = {
  '001-first': run(FIRST),
  '002-rights': run(RIGHTS),
  '003-sayings': run(SAYINGS),
  '004-review': run(REVIEW),
  '005-sought': run(SOUGHT),
  '006-shares': run(SHARES),
  '007-counts': run(COUNTS),
  '008-devices': run(DEVICES),
  '010-photos-of-jobs': run(PHOTOS_OF_JOBS),
};
