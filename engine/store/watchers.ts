/** Who wants to hear of new entries in this process. */
import type { Entry } from '../schema.ts';
import type { Store } from './port.ts';

export interface Watchers extends Pick<Store, 'watch'> {
  readonly any: () => boolean;
  tell(job: string, entry: Entry): void;
}

export function createWatchers(): Watchers {
  const watchers = new Set<Parameters<Store['watch']>[0]>();
  return {
    any: () => watchers.size > 0,
    watch(onEntry) {
      // A function of its own, so that one that watches twice hears twice.
      const watcher: typeof onEntry = (job, entry) => onEntry(job, entry);
      watchers.add(watcher);
      return () => watchers.delete(watcher);
    },
    tell(job, entry) {
      for (const watcher of [...watchers]) {
        try {
          watcher(job, entry);
        } catch (bug) {
          // The entry is kept and the others have to hear of it; the bug surfaces on its own.
          queueMicrotask(() => {
            throw bug;
          });
        }
      }
    },
  };
}
