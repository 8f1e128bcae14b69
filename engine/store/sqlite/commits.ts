/**
 * Whatever is to be written within one turn of the event loop goes to the disk in one commit, since the flush costs more
 * than everything else together; each is answered only after that commit.
 */
import type { Database } from 'better-sqlite3';
import { asTrouble, isTrouble } from './trouble.ts';

export interface Commits {
  /** Resolves with what the work returned once that is on the disk. What it threw undoes its own writes and no others. */
  write<T>(work: () => T): Promise<T>;
  /** Commits what waits, now. */
  flush(): void;
}
interface Waiting {
  readonly work: () => unknown;
  resolve(value: unknown): void;
  reject(error: unknown): void;
}

export function createCommits(db: Database): Commits {
  let waiting: Waiting[] = [];

  // Inside another transaction this is a savepoint: what one piece of work has written goes, the others stay.
  const alone = db.transaction((work: () => unknown) => work());
  /** What each has to be told once all of it is kept. */
  const together = db.transaction((batch: readonly Waiting[]): (() => void)[] =>
    batch.map(({ work, resolve, reject }) => {
      try {
        const value = alone(work);
        return () => resolve(value);
      } catch (bug) {
        if (isTrouble(bug) || !db.inTransaction) throw bug;
        return () => reject(bug);
      }
    }),
  ).immediate;

  function flush(): void {
    if (waiting.length === 0) return;
    const batch = waiting;
    waiting = [];
    try {
      for (const tell of together(batch)) tell();
    } catch (error) {
      for (const one of batch) one.reject(asTrouble(error));
    }
  }
  return {
    write: <T>(work: () => T) =>
      new Promise<T>((resolve, reject) => {
        if (waiting.length === 0) setImmediate(flush);
        waiting.push({ work, resolve: resolve as Waiting['resolve'], reject });
      }),
    flush,
  };
}
