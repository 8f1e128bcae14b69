/** What this phone keeps: replies until the server has them, and the last view of each job. In IndexedDB, or in memory. */
import { type DBSchema, type IDBPDatabase, openDB } from 'idb';
import type { JobView } from '../../../engine/desk/types.ts';
import type { Reply } from '../../../engine/index.ts';

export interface NewReply {
  readonly person: string;
  readonly job: string;
  /** As it was given. It is sent with the same client id as often as it takes, so that it counts once. */
  readonly reply: Reply;
  /** The question's words, and the answer's, for the person who waits. */
  readonly title: string;
  readonly says: string;
  /** By part: pictures that are sent before the answer that they belong to. */
  readonly photos: Readonly<Record<string, Blob>>;
  /** Milliseconds by this device's clock. */
  readonly given: number;
  /** There was no contact when it was given. */
  readonly offline: boolean;
  /** Why the server did not take it, where it came back. */
  readonly back: { readonly code: string; readonly text: string } | null;
}
export interface KeptReply extends NewReply {
  /** The order in which they were given, and are sent. */
  readonly order: number;
}

export interface KeptView {
  readonly id: string;
  readonly view: JobView;
  /** When it came, in milliseconds by this device's clock. */
  readonly at: number;
}

interface Shape extends DBSchema {
  replies: { key: number; value: NewReply & { order?: number } };
  views: { key: string; value: KeptView };
}

export interface Shelf {
  add(reply: NewReply): Promise<KeptReply>;
  /** In the order in which they were given. */
  all(person: string): Promise<KeptReply[]>;
  change(reply: KeptReply): Promise<void>;
  remove(order: number): Promise<void>;
  view(person: string, job: string): Promise<KeptView | null>;
  keepView(person: string, view: JobView, at: number): Promise<void>;
  /** Views of everybody but this person; of everybody, where nobody is left. */
  forgetViews(but: string | null): Promise<void>;
  /** False where a reload loses what is kept. */
  readonly lasts: boolean;
}

const idOf = (person: string, job: string): string => `${person} ${job}`;

let opened: Promise<Shelf> | undefined;
export function openShelf(): Promise<Shelf> {
  opened ??= openDB<Shape>('nocool', 1, {
    upgrade(db) {
      db.createObjectStore('replies', { keyPath: 'order', autoIncrement: true });
      db.createObjectStore('views', { keyPath: 'id' });
    },
    // Another tab with a newer page wants to change the shape: let it.
    blocking: (_now, _next, event) => (event.target as IDBDatabase).close(),
  }).then(onDisk, inMemory);
  return opened;
}

const onDisk = (db: IDBPDatabase<Shape>): Shelf => ({
  lasts: true,
  async add(reply) {
    return { ...reply, order: await db.add('replies', reply) };
  },
  async all(person) {
    const found = (await db.getAll('replies')) as KeptReply[];
    return found.filter((each) => each.person === person);
  },
  async change(reply) {
    await db.put('replies', reply);
  },
  remove: (order) => db.delete('replies', order),
  async view(person, job) {
    return (await db.get('views', idOf(person, job))) ?? null;
  },
  async keepView(person, view, at) {
    await db.put('views', { id: idOf(person, view.job), view, at });
  },
  async forgetViews(but) {
    const ids = await db.getAllKeys('views');
    await Promise.all(
      ids.filter((id) => but === null || !id.startsWith(`${but} `)).map((id) => db.delete('views', id)),
    );
  },
});

/** A browser that keeps nothing, such as one in a private window: all is the same until the page is left. */
function inMemory(): Shelf {
  let [replies, count]: [KeptReply[], number] = [[], 0];
  return {
    lasts: false,
    async add(reply) {
      const kept = { ...reply, order: ++count };
      replies.push(kept);
      return kept;
    },
    all: async (person) => replies.filter((each) => each.person === person),
    async change(reply) {
      replies = replies.map((each) => (each.order === reply.order ? reply : each));
    },
    async remove(order) {
      replies = replies.filter((each) => each.order !== order);
    },
    view: async () => null,
    keepView: async () => undefined,
    forgetViews: async () => undefined,
  };
}
