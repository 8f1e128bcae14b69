/** What somebody could do to an exported job: change it, and make every hash fit again. */
import { GENESIS, hashOf } from '../../engine/chain.ts';
import { flowOf, type JobFile, photosOf, settingsOf, writeJobFile } from '../../engine/report/file.ts';
import type { ShopKey } from '../../engine/report/key.ts';
import { digestOf, sealed } from '../../engine/report/seal.ts';
import type { Entry } from '../../engine/schema.ts';

export type Exported = Omit<JobFile, 'entries'> & { entries: Entry[] };
export const opened = (text: string): Exported => JSON.parse(text) as Exported;
export const bytesOf = (file: Exported): Uint8Array => Buffer.from(writeJobFile(file));

/** Numbered and linked anew: the chain verifies whatever was done to the entries. */
export function rechained(entries: readonly Entry[]): Entry[] {
  let prev = GENESIS;
  return entries.map((entry, i) => {
    const bare = { ...entry, seq: i + 1, prev };
    prev = hashOf(bare);
    return { ...bare, hash: prev };
  });
}

/** Everything in the file fits everything else again; only the signature can tell. */
export function rewritten(file: Exported, change: (entries: Entry[]) => Entry[]): Exported {
  const entries = rechained(change(structuredClone(file.entries)));
  const head = { flow: flowOf(entries) ?? file.flow, settings: settingsOf(entries), photos: photosOf(entries) };
  const seal = file.seal && {
    ...file.seal,
    length: entries.length,
    head: entries.at(-1)?.hash ?? GENESIS,
    shown: digestOf(file.shown),
  };
  return { ...file, ...head, entries, seal };
}
export const signedBy = (key: ShopKey, file: Exported): Exported => ({
  ...file,
  seal: sealed(key, file.job, file.entries.length, file.entries.at(-1)?.hash ?? GENESIS, file.shown),
});

/** Puts another figure in the place of one that was recorded. */
export const withFigure =
  (place: string, part: string, value: string) =>
  (entries: Entry[]): Entry[] =>
    entries.map((entry) => {
      if (entry.kind !== 'answered' || !entry.body.place.endsWith(place)) return entry;
      const was = entry.body.parts[part];
      if (was?.kind !== 'figure') return entry;
      const parts = { ...entry.body.parts, [part]: { ...was, value, typed: value } };
      return { ...entry, body: { ...entry.body, parts } };
    });
export const withRule =
  (rule: 'plain' | 'doubt') =>
  (entries: Entry[]): Entry[] =>
    entries.map((entry) =>
      entry.kind === 'set' && entry.body.what === 'settings'
        ? { ...entry, body: { ...entry.body, settings: { ...entry.body.settings, rule } } }
        : entry,
    );
