import { older } from '../facts.ts';
import type { Place } from '../flatten.ts';
import { shownFindings } from '../known.ts';
import { memoryOf, planOf, type Standing } from '../replay.ts';
import type { Entry } from '../schema.ts';
import type { Shown } from '../vocabulary.ts';

/** A residual line that came sooner than its discharge takes. Times in s. */
export interface FastGate {
  readonly seq: number;
  /** Since the question stood. */
  readonly took: number;
  /** How long the tool is held on each pair, and on how many. */
  readonly hold: number;
  readonly pairs: number;
}

/** Figures of a residual line that are the meter's proof, not a pair. */
const BATTERY: readonly string[] = ['batteryBefore', 'batteryAfter'];

/** An answer with a residual line: at a gate that shows how long to hold the tool. */
export const isDischarge = (standing: Standing, entry: Entry): boolean => holdAt(standing, entry) !== null;

function holdAt(standing: Standing, entry: Entry): { readonly place: Place; readonly shown: Shown } | null {
  if (entry.kind !== 'answered' || entry.body.skipped) return null;
  const place = planOf(standing).places.get(entry.body.place);
  if (!place?.gate || !('parts' in place.step)) return null;
  const shown = place.step.shows?.find(({ judgement }) => judgement === 'hold');
  return shown ? { place, shown } : null;
}

/**
 * Whether an answer gives residual volts sooner than the shown hold time on every pair of its line takes. `before` is
 * where the job stood when it came; `earlier` are the entries up to then. Nobody is barred by it: a senior asks.
 */
export function fastGate(before: Standing, earlier: readonly Entry[], entry: Entry): FastGate | null {
  const found = holdAt(before, entry);
  const memory = memoryOf(before);
  const asked = earlier[memory.since - 1];
  if (!found || !asked || entry.kind !== 'answered') return null;
  const { place, shown } = found;
  const decay = shownFindings(shown, place, memory).flatMap(({ figures }) =>
    figures?.kind === 'decay' ? figures : [],
  )[0];
  // The figure that is counted down; where no rating is known, the one that is shown instead.
  const hold = Number(decay?.holdSeconds ?? shown.limits.unknown?.value ?? 0);
  const pairs = Object.entries(entry.body.parts).filter(
    ([key, value]) => value.kind === 'figure' && !BATTERY.includes(key),
  ).length;
  const took = Math.max(0, Date.parse(older(entry.at, entry.said)) - Date.parse(asked.at)) / 1000;
  return took < hold * pairs ? { seq: entry.seq, took, hold, pairs } : null;
}
