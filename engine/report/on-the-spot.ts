/** A record gone over anew while somebody looks on: every verdict computed again from its entries and compared, byte for byte. */
import { verifyChain } from '../chain.ts';
import type { Standing } from '../replay.ts';
import type { Entry } from '../schema.ts';
import { sha256 } from './digest.ts';
import { type Difference, recompute } from './recompute.ts';

interface RecomputedVerdict {
  seq: number;
  title: string;
  /** SHA-256 of its RFC 8785 JSON: as it stands in the record, and as it was computed now. */
  recorded: string;
  computed: string;
}
export interface Recomputed {
  entries: number;
  /** Hash of the last entry. */
  head: string;
  verdicts: RecomputedVerdict[];
  /** Null where everything came to the same; else the first entry that did not. */
  difference: Difference | null;
}

/** `entries` as they are kept, not as anybody remembers them. */
export function recomputed(machine: Standing['machine'], entries: readonly Entry[]): Recomputed {
  const chain = verifyChain(entries, sha256);
  const head = entries.at(-1)?.hash ?? '';
  if (!chain.ok) {
    const difference = { at: chain.at, old: 'a sound chain of hashes', now: chain.why };
    return { entries: entries.length, head, verdicts: [], difference };
  }
  const verdicts: RecomputedVerdict[] = [];
  const difference = recompute(machine, entries, null, (seq, recorded, computed) => {
    const entry = entries[seq - 1];
    const title = entry?.kind === 'concluded' ? entry.body.title : '';
    verdicts.push({ seq, title, recorded: sha256(recorded), computed: sha256(computed) });
  });
  return { entries: entries.length, head, verdicts, difference };
}
