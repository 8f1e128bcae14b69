/**
 * The writing of entries. Whatever arrives within one turn of the event loop goes to the disk in one commit, since the
 * flush costs more than everything else together; each is answered only after that commit.
 */
import type { Database } from 'better-sqlite3';
import type { Entry, Text } from '../../schema.ts';
import type { Store, Summary } from '../port.ts';
import { ENTRY_COLUMNS, fromText, toRow, WORDS_COLUMNS } from '../rows.ts';
import { createWatchers } from '../watchers.ts';
import { asTrouble, isTrouble } from './trouble.ts';

interface Waiting {
  readonly job: string;
  /** null: the job is new. */
  readonly expected: number | null;
  readonly entries: readonly Entry[];
  readonly texts: readonly Text[];
  readonly summary: Summary | null;
  resolve(outcome: 'kept' | 'conflict'): void;
  reject(error: unknown): void;
}
type Outcome = 'kept' | 'conflict' | { readonly bug: unknown };

export interface Journal extends Pick<Store, 'create' | 'append' | 'watch'> {
  /** Commits what waits, now. */
  flush(): void;
}

export function createJournal(db: Database): Journal {
  const addJob = db.prepare('insert into job (id) values (?)');
  const keyOf = db.prepare<[string], number>('select key from job where id = ?').pluck();
  const lastOf = db.prepare<[number], number>('select coalesce(max(seq), 0) from entry where job = ?').pluck();
  const addEntry = db.prepare(`insert into entry (job, ${ENTRY_COLUMNS}) values (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)`);
  const addWords = db.prepare(`insert into words (job, seq, ${WORDS_COLUMNS}) values (?, ?, ?, ?, ?)`);

  // Without a summary the card is gone, and whether the job is closed is not known any more.
  const onBoard = db.prepare(`insert into board (job, last_seq, updated, closed, card) values (?, ?, ?, ?, ?)
    on conflict do update set last_seq = excluded.last_seq, updated = excluded.updated, closed = excluded.closed,
      card = excluded.card`);

  const { watch, tell } = createWatchers();
  let waiting: Waiting[] = [];

  const write = ({ job, expected, entries, texts, summary }: Waiting): 'kept' | 'conflict' => {
    const key = expected === null ? Number(addJob.run(job).lastInsertRowid) : keyOf.get(job);
    if (key === undefined) throw new Error(`there is no job ${job}`);
    const last = expected ?? 0;
    if (lastOf.get(key) !== last) return 'conflict';
    for (const [i, entry] of entries.entries()) {
      if (entry.job !== job || entry.seq !== last + 1 + i)
        throw new Error(`entry ${entry.seq} of job ${entry.job} can't follow entry ${last + i} of job ${job}`);
      addEntry.run(key, ...toRow(entry));
    }
    for (const text of texts) addWords.run(key, last + entries.length, ...fromText(text));
    const end = entries.at(-1);
    if (end) onBoard.run(key, end.seq, end.at, summary?.closed ? 1 : 0, summary?.card ?? null);
    return 'kept';
  };
  // Inside another transaction this is a savepoint: what one append has written goes, the others stay.
  const alone = db.transaction(write);
  const together = db.transaction((batch: readonly Waiting[]): Outcome[] =>
    batch.map((one) => {
      try {
        return alone(one);
      } catch (bug) {
        if (isTrouble(bug) || !db.inTransaction) throw bug;
        return { bug };
      }
    }),
  ).immediate;

  function flush(): void {
    if (waiting.length === 0) return;
    const batch = waiting;
    waiting = [];
    let outcomes: Outcome[];
    try {
      outcomes = together(batch);
    } catch (error) {
      for (const one of batch) one.reject(asTrouble(error));
      return;
    }
    for (const [i, one] of batch.entries()) {
      const outcome = outcomes[i] ?? 'conflict';
      if (typeof outcome === 'object') one.reject(outcome.bug);
      else one.resolve(outcome);
      if (outcome === 'kept') for (const entry of one.entries) tell(one.job, entry);
    }
  }

  const put = (
    job: string,
    expected: number | null,
    entries: readonly Entry[],
    texts: readonly Text[],
    summary?: Summary,
  ) =>
    new Promise<'kept' | 'conflict'>((resolve, reject) => {
      if (waiting.length === 0) setImmediate(flush);
      waiting.push({ job, expected, entries, texts, summary: summary ?? null, resolve, reject });
    });

  return {
    async create(job, entries, texts, summary) {
      await put(job, null, entries, texts, summary);
    },
    append: put,
    watch,
    flush,
  };
}
