/**
 * Is this file what was recorded, and does it still come to the same? Needs the file, the shelf of manuals and the keys
 * that the reader trusts; no database, no network.
 */

import { canonicalJson } from '../canonical.ts';
import { GENESIS, verifyChain, verifyText } from '../chain.ts';
import { compile } from '../compile.ts';
import { fingerprint, SEMANTICS } from '../fingerprint.ts';
import type { Standing } from '../replay.ts';
import type { Entry } from '../schema.ts';
import type { Manual } from '../vocabulary.ts';
import { sha256 } from './digest.ts';
import { flowOf, type JobFile, photosOf, readJobFile, settingsOf, textRefsOf } from './file.ts';
import { bySeriousness, type Trouble, type Verified } from './outcome.ts';
import { recompute } from './recompute.ts';
import { digestOf, isSignatureOf } from './seal.ts';

export interface Verifier {
  verify(bytes: Uint8Array): Verified;
}

/** @param keys public keys that the reader got from the shop itself, old ones included; none: nobody vouches for a signature. */
export function createVerifier(shelf: readonly Manual[], keys: readonly string[]): Verifier {
  const machines = new Map<string, Standing['machine']>();
  const machineOf = (print: string): Standing['machine'] | undefined => {
    const known = machines.get(print);
    const manual = known ? undefined : shelf.find((m) => fingerprint(m, sha256) === print);
    if (!manual) return known;
    const machine = compile(manual);
    machines.set(print, machine);
    return machine;
  };
  return {
    verify(bytes) {
      const file = readJobFile(bytes);
      if ('wrong' in file) {
        const nothing = { job: null, flow: null, entries: 0, removed: 0, key: null, hashes: [] };
        return { ...nothing, troubles: [trouble('no job file', null, file.wrong)] };
      }
      const broken = chainTrouble(file);
      const entries = file.entries as readonly Entry[];
      // What a damaged record would compute to is worth nothing; whose signature it bears still is.
      const inside = broken ? [broken] : [...besideTroubles(file, entries), ...againTrouble(file, entries, machineOf)];
      const troubles = [...inside, ...sealTroubles(file, entries, keys, broken !== null)].sort(bySeriousness);
      return {
        job: file.job,
        flow: `${file.flow.manual} ${file.flow.version}`,
        entries: entries.length,
        removed: broken ? 0 : removedTexts(file, entries),
        key: file.seal?.key ?? null,
        hashes: broken ? [] : entries.map((entry) => entry.hash),
        troubles,
      };
    },
  };
}

const trouble = (
  word: Trouble['word'],
  at: number | null,
  says: string,
  both: { old: string; now: string } | null = null,
): Trouble => ({ word, at, says, old: both?.old ?? null, now: both?.now ?? null });

function chainTrouble({ entries, seal, job }: JobFile): Trouble | null {
  if (entries.length === 0) return trouble('truncated', 1, 'no entry is left.');
  const chain = verifyChain(entries, sha256);
  const seqs = entries.map((e) => (typeof e === 'object' && e !== null && 'seq' in e ? e.seq : null));
  if (!chain.ok) {
    const { at, why } = chain;
    if (why === 'truncated-start') return trouble('truncated', 1, `the record begins with entry ${at}.`);
    if (why === 'not-an-entry') return trouble('altered', at, 'this is no entry.');
    if (why === 'altered') return trouble('altered', at, 'its hash does not fit what it says, or the entry before.');
    if (seqs.includes(at)) return trouble('reordered', at, `entry ${String(seqs[at - 1])} stands in its place.`);
    return trouble('truncated', at, 'this entry is missing.');
  }
  const first = entries[0] as Entry;
  if (first.kind !== 'opened') return trouble('altered', 1, 'a record begins with "opened".');
  if (first.job !== job) return trouble('altered', null, 'the entries are of another job than the file says.');
  if (seal && entries.length < seal.length)
    return trouble('truncated', entries.length + 1, `${entries.length} of ${seal.length} entries are left.`);
  return null;
}

/** What stands beside the entries says the same as they do. */
function besideTroubles(file: JobFile, entries: readonly Entry[]): Trouble[] {
  const found: Trouble[] = [];
  const rows = new Map(file.texts.map((t) => [t.ref, t]));
  if (rows.size < file.texts.length) found.push(trouble('altered', null, 'some words stand in the file twice.'));
  const named = new Set<string>();
  for (const entry of entries) {
    for (const ref of textRefsOf(entry)) {
      named.add(ref.ref);
      const row = rows.get(ref.ref);
      if (row && !verifyText(ref, row)) found.push(trouble('altered', entry.seq, 'its words are not those recorded.'));
    }
  }
  if (file.texts.some((t) => !named.has(t.ref))) found.push(trouble('altered', null, 'words that no entry names.'));
  const says: readonly [string, unknown, unknown][] = [
    ['flow', file.flow, flowOf(entries)],
    ['settings', file.settings, settingsOf(entries)],
    ['photos', file.photos, photosOf(entries)],
  ];
  for (const [name, written, recorded] of says) {
    if (canonicalJson(written) !== canonicalJson(recorded))
      found.push(trouble('altered', null, `its ${name} are not those of the entries.`));
  }
  return found;
}

function againTrouble(
  file: JobFile,
  entries: readonly Entry[],
  machineOf: (print: string) => Standing['machine'] | undefined,
): Trouble[] {
  const flow = flowOf(entries);
  const machine = flow ? machineOf(flow.fingerprint) : undefined;
  if (!flow || !machine || flow.semantics !== SEMANTICS) {
    const { manual, version, fingerprint: print, semantics } = flow ?? file.flow;
    return [
      trouble(
        'unknown flow version',
        1,
        `${manual} ${version} (${print.slice(0, 12)}, semantics ${semantics}) is not on the shelf.`,
      ),
    ];
  }
  const { id, version } = machine.plan.manual;
  if (flow.manual !== id || flow.version !== version)
    return [trouble('altered', 1, `this fingerprint is of ${id} ${version}.`)];
  const different = recompute(machine, entries, file.shown);
  if (!different) return [];
  return [trouble('recomputed differently', different.at, 'the same entries come to something else now.', different)];
}

function sealTroubles(file: JobFile, entries: readonly Entry[], keys: readonly string[], broken: boolean): Trouble[] {
  const { seal } = file;
  if (!seal)
    return [trouble('signature missing', null, 'it was exported without the shop’s key, or the seal was cut out.')];
  if (!isSignatureOf(file, seal)) return [trouble('rewritten', null, `the seal is not what ${seal.key} signed.`)];
  const found: Trouble[] = [];
  // A damaged chain says by itself what is wrong with it.
  const head = entries.at(-1)?.hash ?? GENESIS;
  if (!broken && (seal.length !== entries.length || seal.head !== head))
    found.push(trouble('rewritten', null, 'every hash fits, but this is not the record that was signed.'));
  if (seal.shown !== digestOf(file.shown))
    found.push(trouble('altered', null, 'what was asked is not what was signed.'));
  if (keys.length === 0)
    found.push(
      trouble('key not pinned', null, `it fits ${seal.key}; ask the shop whether that is its key, then pin it.`),
    );
  else if (!keys.includes(seal.key))
    found.push(trouble('signed by another key', null, `${seal.key} is none of the pinned keys.`));
  return found;
}

function removedTexts(file: JobFile, entries: readonly Entry[]): number {
  const here = new Set(file.texts.map((t) => t.ref));
  return new Set(entries.flatMap((e) => textRefsOf(e).map((r) => r.ref)).filter((ref) => !here.has(ref))).size;
}
