/** What a changed manual would have said: the answers of a finished job, gone over on the pages as they are now. */
import { TranscriptMismatch } from '../errors.ts';
import { begin, memoryOf, placeIdOf, planOf, type Standing, take } from '../replay.ts';
import { concludeAt } from '../route.ts';
import type { Conclusion, Entry } from '../schema.ts';
import { endsTurn } from './asked.ts';
import { dueVerdict, verdictWords } from './recompute.ts';

/** `null`: there was none, or there would be none. */
export interface Change {
  readonly place: string;
  readonly old: string | null;
  readonly now: string | null;
}
export interface Impact {
  readonly changes: readonly Change[];
  /** Where the job would stand now: an ending, or a question that nobody was asked then. */
  readonly ends: string;
  /** Answers to steps that the manual no longer has. */
  readonly dropped: number;
}

type Verdicts = ReadonlyMap<string, string>;

export function impact(machine: Standing['machine'], entries: readonly Entry[]): Impact {
  const now = new Map<string, string>();
  let standing = begin(machine, entries[0]?.job ?? '');
  let dropped = 0;
  for (const [i, entry] of entries.entries()) {
    if (entry.kind === 'answered' && !asksAt(standing, entry.body.place)) dropped += 1;
    // Its own verdicts are what is asked about: they are drawn anew below.
    else if (entry.kind !== 'concluded') standing = taken(standing, entry);
    if (!endsTurn(entry, entries[i + 1])) continue;
    for (let due = dueVerdict(standing); due; due = dueVerdict(standing)) {
      const body = concludeAt(planOf(standing), due, memoryOf(standing));
      now.set(body.place, verdictWords(body));
      standing = take(standing, drawn(entry, body));
    }
  }
  return { changes: compared(verdictsOf(entries), now), ends: placeIdOf(standing), dropped };
}

/** On the manual it was written on; where that is no longer on the shelf, a record with a verdict counts. */
export function isFinished(own: Standing['machine'] | null, entries: readonly Entry[]): boolean {
  if (own === null) return entries.some((e) => e.kind === 'concluded');
  const standing = entries.reduce(take, begin(own, entries[0]?.job ?? ''));
  return planOf(standing).endings.includes(placeIdOf(standing)) || memoryOf(standing).signed;
}

const asksAt = (s: Standing, place: string): boolean => {
  const step = planOf(s).places.get(place)?.step;
  return step !== undefined && 'parts' in step;
};

/** An entry that no longer means anything changes nothing. */
function taken(standing: Standing, entry: Entry): Standing {
  try {
    return take(standing, entry);
  } catch (error) {
    if (error instanceof TranscriptMismatch) return standing;
    throw error;
  }
}

/** Never stored. It keeps the number of the entry before, because answers are found by theirs. */
const drawn = (after: Entry, body: Conclusion): Entry => ({ ...after, kind: 'concluded', body });

const verdictsOf = (entries: readonly Entry[]): Verdicts =>
  new Map(entries.flatMap((e) => (e.kind === 'concluded' ? [[e.body.place, verdictWords(e.body)] as const] : [])));

/** Verdicts of one place are held against each other; those left over are paired in the order they were drawn. */
function compared(was: Verdicts, now: Verdicts): Change[] {
  const gone = [...was].filter(([place]) => !now.has(place));
  const come = [...now].filter(([place]) => !was.has(place));
  const other = [...was].filter(([place, words]) => now.has(place) && now.get(place) !== words);
  return [
    ...other.map(([place, old]) => ({ place, old, now: now.get(place) ?? null })),
    ...gone.map(([place, old], i) => ({ place, old, now: come[i]?.[1] ?? null })),
    ...come.slice(gone.length).map(([place, words]) => ({ place, old: null, now: words })),
  ];
}
