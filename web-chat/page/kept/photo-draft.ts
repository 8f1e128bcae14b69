/** Photos that were taken and not given yet, kept on this phone over a reload: of one question for each person and job. */
import { type DBSchema, type IDBPDatabase, openDB } from 'idb';
import type { Photos } from '../parts/values.ts';

interface Taken {
  readonly id: string;
  /** Which question they belong to. */
  readonly question: string;
  readonly photos: Photos;
}
interface Shape extends DBSchema {
  taken: { key: string; value: Taken };
}

// A database of its own: a new shape of it never closes the one that holds replies.
let opened: Promise<IDBPDatabase<Shape> | null> | undefined;
function open(): Promise<IDBPDatabase<Shape> | null> {
  opened ??= openDB<Shape>('nocool-photos', 1, {
    upgrade: (db) => void db.createObjectStore('taken', { keyPath: 'id' }),
    blocking: (_now, _next, event) => (event.target as IDBDatabase).close(),
    // A browser that keeps nothing, or is full, loses the photo on a reload and nothing else.
  }).catch(() => null);
  return opened;
}
const idOf = (person: string, job: string): string => `${person} ${job}`;

/** What was taken for this question; what is left of another one is removed. */
export async function readPhotos(person: string, job: string, question: string): Promise<Photos | null> {
  try {
    const kept = await (await open())?.get('taken', idOf(person, job));
    if (kept && kept.question !== question) await dropPhotos(person, job);
    return kept?.question === question ? kept.photos : null;
  } catch {
    return null;
  }
}

export async function keepPhotos(person: string, job: string, question: string, photos: Photos): Promise<void> {
  if (Object.keys(photos).length === 0) return dropPhotos(person, job);
  await quietly((db) => db.put('taken', { id: idOf(person, job), question, photos }));
}

export const dropPhotos = (person: string, job: string): Promise<void> =>
  quietly((db) => db.delete('taken', idOf(person, job)));

/** Photos of everybody but this person; of everybody, where nobody is left. */
export const forgetPhotos = (but: string | null): Promise<void> =>
  quietly(async (db) => {
    const ids = await db.getAllKeys('taken');
    const theirs = ids.filter((id) => but === null || !id.startsWith(`${but} `));
    await Promise.all(theirs.map((id) => db.delete('taken', id)));
  });

async function quietly(work: (db: IDBPDatabase<Shape>) => Promise<unknown>): Promise<void> {
  try {
    const db = await open();
    if (db) await work(db);
  } catch {
    // As above.
  }
}
