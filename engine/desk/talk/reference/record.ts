/** What holds of a record whoever wrote it: every acknowledged reply once, nothing else, and a chain of hashes. */
import { createHash } from 'node:crypto';
import type { Entry } from '../../../schema.ts';

/** RFC 8785 for what an entry holds: strings, whole numbers, lists, objects. */
const canonical = (v: unknown): string =>
  Array.isArray(v)
    ? `[${v.map(canonical).join(',')}]`
    : typeof v === 'object' && v !== null
      ? `{${Object.entries(v)
          .filter(([, one]) => one !== undefined)
          .sort(([a], [b]) => (a < b ? -1 : 1))
          .map(([k, one]) => `${JSON.stringify(k)}:${canonical(one)}`)
          .join(',')}}`
      : JSON.stringify(v);

/** Sentences that say where the chain breaks. */
export function chainBreaks(entries: readonly Entry[]): string[] {
  let prev = '0'.repeat(64);
  return entries.flatMap((entry, i) => {
    const { hash, ...rest } = entry;
    const good =
      entry.seq === i + 1 && entry.prev === prev && createHash('sha256').update(canonical(rest)).digest('hex') === hash;
    prev = hash;
    return good ? [] : [`entry ${i + 1} does not follow from the one before it`];
  });
}

/** What was promised to whoever sent a reply: these entries, by their hashes. */
export interface Promised {
  readonly by: string;
  readonly client: string;
  readonly hashes: readonly string[];
}
/** Every acknowledged reply has the entries that were promised, each once, and no others; nothing comes from nobody. */
export function notOnce(entries: readonly Entry[], promised: readonly Promised[], sent: ReadonlySet<string>): string[] {
  const wrong: string[] = [];
  for (const { by, client, hashes } of promised) {
    const kept = entries.filter((e) => e.by === by && e.client === client).map((e) => e.hash);
    if (kept.join() !== hashes.join())
      wrong.push(
        `${client} of ${by} was acknowledged with ${hashes.length} entries, and ${kept.length} are on the record`,
      );
  }
  for (const { seq, by, client } of entries)
    if (client === null || !sent.has(`${by} ${client}`)) wrong.push(`entry ${seq} of ${by} comes from no reply`);
  return wrong;
}
