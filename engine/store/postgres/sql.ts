/** Every statement that runs at each turn or page. A test asks the database that none goes through a whole table. */
import { FORGOTTEN } from '../forgotten.ts';
import { ENTRY_COLUMNS, WORDS_COLUMNS } from '../rows.ts';

const OF_JOB = 'where job = (select key from job where id = $1)';
const LINE = 'job.id, board.last_seq, board.updated, board.closed, board.card, board.review, board.counts';
const FROM = 'from board join job on job.key = board.job';
export const ROW = `${LINE} ${FROM}`;
const OF_ENTRY = ENTRY_COLUMNS.split(', ').map((column) => `entry.${column}`);

/** On which those who listen hear that there is something new. */
export const CHANNEL = 'nocool_entries';

/**
 * A whole batch of appends: one statement is one commit. New jobs, the entries in their order, words, the lines of the
 * list; then a word to those who listen, which goes out with the commit. By job, so that of two batches on the same jobs
 * one waits for the other, and not each for the other.
 */
const append = (more: string): string => `with
  born as (insert into job (id) select unnest($1::text[]) returning key, id),
  named as (select key, id from born union all select key, id from job where id = any($2::text[])),
  grown as (insert into entry (job, ${ENTRY_COLUMNS})
    select named.key, e.seq, e.v, e.kind, e."by", e.at, e.said, e.client, e.body, e.prev, e.hash
    from unnest($3::text[], $4::int[], $5::int[], $6::text[], $7::text[], $8::text[], $9::text[], $10::text[],
      $11::text[], $12::text[], $13::text[])
      with ordinality as e (id, seq, v, kind, "by", at, said, client, body, prev, hash, nr)
    join named on named.id = e.id order by named.key, e.nr),
  worded as (insert into words (job, seq, ${WORDS_COLUMNS})
    select named.key, w.seq, w.ref, w.salt, w.text
    from unnest($14::text[], $15::int[], $16::text[], $17::text[], $18::text[])
      with ordinality as w (id, seq, ref, salt, text, nr)
    join named on named.id = w.id order by named.key, w.nr),
  listed as (insert into board (job, last_seq, updated, closed, card, review, counts)
    select named.key, b.last_seq, b.updated, b.closed, b.card, b.review, b.counts
    from unnest($19::text[], $20::int[], $21::text[], $22::int[], $23::text[], $24::int[],
      $25::text[]) as b (id, last_seq, updated, closed, card, review, counts)
    join named on named.id = b.id order by named.key
    on conflict (job) do update set last_seq = excluded.last_seq, updated = excluded.updated,
      closed = excluded.closed, card = excluded.card, review = excluded.review,
      counts = excluded.counts),
  found_by as (insert into sought (token, list, id, seq)
    select token, list, id, min(seq) from unnest($26::text[], $27::text[], $28::text[], $29::int[])
      as s (token, list, id, seq) group by token, list, id order by token, list, id
    on conflict do nothing)${more}
  select pg_notify($30, '')`;
/** Only of a batch that names photos: by which jobs each is named. */
const PICTURED = `,
  pictured as (insert into photo_of_job (photo, job, seq)
    select p.photo, named.key, max(p.seq) from unnest($31::text[], $32::text[], $33::int[]) as p (photo, id, seq)
    join named on named.id = p.id group by p.photo, named.key order by p.photo, named.key
    on conflict (photo, job) do update set seq = excluded.seq)`;

export const SQL = {
  entries: `select ${ENTRY_COLUMNS} from entry ${OF_JOB} and seq > $2 order by seq`,
  words: `select ${WORDS_COLUMNS} from words ${OF_JOB} and seq > $2 order by nr`,
  // A job has some tens of entries: going through them costs less than one more index on every append.
  byClient: `select ${ENTRY_COLUMNS} from entry ${OF_JOB} and client = $2 order by seq`,
  boardOpen: `select ${ROW} where closed = 0 order by updated desc, board.job desc`,
  boardClosed: `select ${ROW} where closed = 1 order by updated desc, board.job desc limit $1`,
  queue: `select ${LINE}, board.job ${FROM} where review is not null
    and (review, updated, board.job) > ($1, $2, $3) order by review, updated, board.job limit $4`,
  saveSummary: `update board set closed = $1, card = $2, review = $3, counts = $4
    where job = (select key from job where id = $5) and last_seq = $6`,
  /** Where each job of a batch ends. */
  ends: `select id, key, (select coalesce(max(seq), 0) from entry where job = job.key) from unnest($1::text[]) as asked
    join job on job.id = asked`,
  append: append(''),
  appendPhotos: append(PICTURED),
  /** What is visible at this moment: `xmin:xmax:running,running`, by numbers of transactions. */
  now: 'select pg_current_snapshot()::text',
  /**
   * What is visible now and was not in a snapshot before: of transactions that were running then, or had not begun. Each
   * is a range of numbers from $1 to $2, null for the end of all. So nothing is read twice, however long a transaction
   * stays open anywhere in the cluster. A database restored from a dump brings numbers of another cluster: they may be
   * higher than any here, and where they are not, the row's own `xmin` says that another transaction has written it.
   * Ranges by themselves (`offset 0`), because of a range the planner expects few rows: also a plan that it made when the
   * tables were small, and keeps, goes by the index.
   */
  since: `select here.now::text, job.id, ${OF_ENTRY.join(', ')}
    from (select pg_current_snapshot() as now) as here
    left join (unnest($1::xid8[], $2::xid8[]) as gap (first, last)
      cross join lateral (select * from entry where xid >= gap.first
        and xid <= coalesce(gap.last, pg_snapshot_xmax(pg_current_snapshot())) and xid::xid = xmin offset 0) as entry
      join job on job.key = entry.job) on true
    order by entry.job, entry.seq`,
  /** Up to its last entry a job is forgotten. */
  forgotten: `insert into meta (key, value) select '${FORGOTTEN}' || job.id,
    coalesce((select max(seq) from entry where job = job.key), 0)::text from job where id = $1
    on conflict (key) do update set value = excluded.value`,
  // Another job may name the same picture: it is that job's evidence too, until that one is forgotten.
  forgetPhotos: `delete from photo where hash = any($1::text[]) and not exists (
    select 1 from photo_of_job as named join job on job.key = named.job where named.photo = photo.hash and job.id <> $2
      and named.seq > coalesce((select value::integer from meta where key = '${FORGOTTEN}' || job.id), 0))`,
} as const;
