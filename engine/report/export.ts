/** One job as one file, signed by the shop's key. */
import { TranscriptCorrupt } from '../errors.ts';
import { begin, type Standing, take } from '../replay.ts';
import type { Entry, Text } from '../schema.ts';
import { endsTurn, shownAfter } from './asked.ts';
import { flowOf, type JobFile, photosOf, type Shown, settingsOf, writeJobFile } from './file.ts';
import type { ShopKey } from './key.ts';
import { sealed } from './seal.ts';

/**
 * The file's text, ending in a newline. `entries` are a whole record that was replayed on `machine` before; without a
 * key it is unsigned, and `verify` says so.
 */
export function exportJob(
  machine: Standing['machine'],
  entries: readonly Entry[],
  texts: readonly Text[],
  key: ShopKey | null,
): string {
  const flow = flowOf(entries);
  const last = entries.at(-1);
  if (!flow || !last) throw new TranscriptCorrupt('the record does not begin with "opened"');
  const shown = shownBy(machine, entries);
  const file: JobFile = {
    nocool: 'job',
    v: 1,
    job: last.job,
    flow,
    settings: settingsOf(entries),
    photos: photosOf(entries),
    seal: key === null ? null : sealed(key, last.job, entries.length, last.hash, shown),
    shown,
    // By reference, because the order in which a database gives them is its own.
    texts: [...texts].sort((a, b) => (a.ref < b.ref ? -1 : 1)),
    entries: [...entries],
  };
  return writeJobFile(file);
}

/** What was asked after each turn. */
function shownBy(machine: Standing['machine'], entries: readonly Entry[]): Shown[] {
  const shown: Shown[] = [];
  let standing = begin(machine, entries[0]?.job ?? '');
  for (const [i, entry] of entries.entries()) {
    standing = take(standing, entry);
    if (endsTurn(entry, entries[i + 1])) shown.push(shownAfter(standing, entry));
  }
  return shown;
}
