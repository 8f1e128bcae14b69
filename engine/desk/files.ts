/** Jobs as read from the store: kept as long as there is room, brought up to date at each use. */
import { compile, type Machine } from '../compile.ts';
import { TranscriptMismatch } from '../errors.ts';
import { fingerprint } from '../fingerprint.ts';
import { keepLatest } from '../latest.ts';
import { replay, type Standing, take } from '../replay.ts';
import { sha256 } from '../report/digest.ts';
import { mayConcern } from '../review/attention.ts';
import { type FastGate, fastGate, isDischarge } from '../review/fast-gate.ts';
import type { Entry, Text, Units } from '../schema.ts';
import type { Store } from '../store/port.ts';
import type { Manual } from '../vocabulary.ts';
import { nothingWorded, type Worded } from './ticket.ts';
import { NotFound } from './types.ts';

/** A job as read: its entries, the words behind them, and where it stands. */
export interface File {
  readonly entries: readonly Entry[];
  readonly texts: Map<string, string>;
  readonly standing: Standing;
  readonly known: Known;
  /** Gates that came too fast: seen as each answer came, because where the job stood then is gone later. */
  readonly fast: readonly FastGate[];
}
/**
 * What is known of a job's entries without looking at each of them again, which at every turn would cost more than the
 * turn itself. Shared by a job's files as it grows, since entries are only added.
 */
export interface Known {
  /** Lines of the ticket, for each of the units that somebody reads them in. */
  readonly lines: Map<string, Worded>;
  /** Whose replies are kept, up to `upTo` entries: as `replyKey` names them. */
  readonly replies: Set<string>;
  /** Entries that a senior may have to look at, up to `upTo`: as `mayConcern` picks them. */
  readonly concerns: Entry[];
  upTo: number;
}
export const nothingKnown = (): Known => ({ lines: new Map(), replies: new Set(), concerns: [], upTo: 0 });
/** Lines as they were put in words for somebody who prefers these units; to be added to. */
export function linesIn({ lines }: Known, units: Units | undefined): Worded {
  const key = units === undefined ? '' : `${units.temperature} ${units.pressure}`;
  const known = lines.get(key) ?? nothingWorded();
  lines.set(key, known);
  return known;
}
export const replyKey = (by: string, client: string | null): string => JSON.stringify([by, client]);
const CACHED = 500;

/** Those of a file, kept or about to be. */
export const concernsOf = ({ entries, known }: File): readonly Entry[] => [
  ...known.concerns,
  ...entries.slice(known.upTo).filter(mayConcern),
];

export interface Files {
  /** The machine of the manual that a job is pinned to. Throws TranscriptMismatch where it is not on the shelf. */
  machineFor(print: string): Machine;
  /** From the cache, brought up to what the store holds; another process may have written. Throws NotFound. */
  load(job: string): Promise<File>;
  /** Of entries that are kept, and of no others. */
  remember(job: string, file: File): File;
  /** `after`: where the job stands then, where that is known already. */
  grown(file: File, entries: readonly Entry[], texts: readonly Text[], after?: Standing): File;
  drop(job: string): void;
}

export function createFiles(store: Store, shelf: readonly Manual[], compiled = compile): Files {
  const machines = new Map<string, Machine>();
  const cache = new Map<string, File>();

  const machineFor = (print: string): Machine => {
    const manual = shelf.find((m) => fingerprint(m, sha256) === print);
    if (!manual) throw new TranscriptMismatch(`no manual on the shelf has the fingerprint ${print.slice(0, 12)}`);
    const known = machines.get(print) ?? compiled(manual);
    machines.set(print, known);
    return known;
  };

  const remember = (job: string, file: File): File => {
    const { known, entries } = file;
    for (const entry of entries.slice(known.upTo)) {
      known.replies.add(replyKey(entry.by, entry.client));
      if (mayConcern(entry)) known.concerns.push(entry);
    }
    known.upTo = Math.max(known.upTo, entries.length);
    keepLatest(cache, job, file, CACHED);
    return file;
  };

  let removals = 0;
  const load = async (job: string): Promise<File> => {
    const known = cache.get(job);
    if (known) {
      const [more, now] = await Promise.all([store.readAfter(job, known.entries.length), store.removals()]);
      // Words were removed for good, by another program: what is in memory would be written down again.
      if (now !== removals) {
        removals = now;
        cache.clear();
        return load(job);
      }
      return more.entries.length === 0 ? known : remember(job, grown(known, more.entries, more.texts));
    }
    const { entries, texts } = await store.read(job);
    const first = entries[0];
    if (!first) throw new NotFound('There is no such job.');
    const print = first.kind === 'opened' ? first.body.fingerprint : '';
    const fast: FastGate[] = [];
    const standing = replay(machineFor(print), entries, sha256, (before, entry) => {
      const gate = fastGate(before, entries, entry);
      if (gate) fast.push(gate);
    });
    return remember(job, {
      entries,
      texts: new Map(texts.map((t) => [t.ref, t.text])),
      standing,
      known: nothingKnown(),
      fast,
    });
  };
  const grown: Files['grown'] = (file, entries, texts, after = entries.reduce(take, file.standing)) => {
    // In place, though it may not be kept after all: nobody asks for words that no entry names.
    for (const { ref, text } of texts) file.texts.set(ref, text);
    return {
      entries: [...file.entries, ...entries],
      texts: file.texts,
      known: file.known,
      fast: [...file.fast, ...fastAmong(file, entries)],
      standing: { ...after, lastHash: entries.at(-1)?.hash ?? file.standing.lastHash },
    };
  };
  return { machineFor, load, remember, grown, drop: (job) => void cache.delete(job) };
}

/** One append answers one question at most; only what came before it in the same append is gone over. */
function fastAmong(file: File, added: readonly Entry[]): FastGate[] {
  const at = added.findIndex((e) => isDischarge(file.standing, e));
  const entry = added[at];
  if (!entry) return [];
  const before = added.slice(0, at).reduce(take, file.standing);
  return [fastGate(before, [...file.entries, ...added.slice(0, at)], entry) ?? []].flat();
}
