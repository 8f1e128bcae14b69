/**
 * Two processes of one machine on one SQLite file: each keeps entries for itself, and SQLite tells nobody. A store that
 * passes on what it has written, and whose watchers hear what the other passed on.
 */
import type { Entry } from '../schema.ts';
import type { Store } from './port.ts';
import { createWatchers } from './watchers.ts';

/** What one tells the other: data that a channel between processes takes. */
export interface News {
  readonly kind: 'entry';
  readonly job: string;
  readonly entry: Entry;
}
export const isNews = (message: unknown): message is News =>
  typeof message === 'object' && message !== null && (message as Partial<News>).kind === 'entry';

/** `pass` sends to the other process; `hear` takes what came from it. */
export function relayed(store: Store, pass: (news: News) => void): { store: Store; hear: (news: News) => void } {
  const watchers = createWatchers();
  store.watch((job, entry) => {
    watchers.tell(job, entry);
    pass({ kind: 'entry', job, entry });
  });
  return { store: { ...store, watch: watchers.watch }, hear: ({ job, entry }) => watchers.tell(job, entry) };
}
