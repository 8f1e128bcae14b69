/** What the judgements of windings share: three pairs in ohms, the ohmmeter's doubt, and what was told beside them. */
import type { Exact } from '../../calc/exact.ts';
import type { OhmsDoubt } from '../../calc/windings.ts';
import type { Parts } from '../../schema.ts';
import type { Limit } from '../judgement.ts';
import { type Reading, readingOf } from '../read.ts';
import { finding, say } from '../say.ts';

/** The ohmmeter's accuracy: ±(percent of reading + counts · resolution). */
export const OHMMETER_LIMITS = ['percent', 'counts', 'resolution'] as const;
export type OhmmeterLimits = Readonly<Record<(typeof OHMMETER_LIMITS)[number], Limit>>;

export const doubtBy = ({ percent, counts, resolution }: OhmmeterLimits): OhmsDoubt => ({
  percent: percent.value,
  counts: Number(counts.value),
  resolutionOhms: resolution.value,
});

export type Three = readonly [Reading, Reading, Reading];
export type Whole = readonly [Exact, Exact, Exact];

/** A reading in ohms. Nothing has less than none, so a figure below zero is no reading. */
export function ohmsOf(parts: Parts | undefined, key: string): Reading {
  const reading = readingOf(parts, key, 'Ω');
  return reading.kind === 'figure' && reading.value.lt(0) ? { kind: 'none' } : reading;
}
export const threeOf = (parts: Parts | undefined, keys: readonly [string, string, string]): Three => [
  ohmsOf(parts, keys[0]),
  ohmsOf(parts, keys[1]),
  ohmsOf(parts, keys[2]),
];

/** The figures of the three pairs; null where one is OL or was not read. */
export function wholeOf([a, b, c]: Three): Whole | null {
  return a.kind === 'figure' && b.kind === 'figure' && c.kind === 'figure' ? [a.value, b.value, c.value] : null;
}
/** Whether two lines of the same pairs read OL in different ones: then one of them was read wrong. */
export const openApart = (now: Three, before: Three): boolean =>
  [now, before].every((three) => !isMissing(three) && three.some((r) => r.kind === 'over')) &&
  now.some((r, i) => (r.kind === 'over') !== (before[i]?.kind === 'over'));
export const apartFinding = finding({
  name: 'Windings, both lines',
  reading: '–',
  word: 'apart',
  text: 'The two lines are open in different pairs: one of them was read wrong. Neither condemns anything.',
});
export const isMissing = (three: Three): boolean => three.some((r) => r.kind === 'none');

/** In the unit a meter would show: Ω, kΩ, MΩ. All that was kept is said, so that no figure is rounded onto a limit. */
export function sayOhms(ohms: Exact): string {
  if (ohms.gte(1_000_000)) return say(ohms.div(1_000_000), 'MΩ', 9);
  return ohms.gte(1000) ? say(ohms.div(1000), 'kΩ', 6) : say(ohms, 'Ω', 3);
}
export const sayReading = (reading: Reading): string =>
  reading.kind === 'figure' ? sayOhms(reading.value) : reading.kind === 'over' ? 'OL' : 'no reading';
export const sayPairs = (names: readonly [string, string, string], three: Three): string =>
  three.map((reading, i) => `${names[i]} ${sayReading(reading)}`).join(', ');

/** The options chosen in any part of an answer: a question with one choice may name its part as it likes. */
export const told = (parts: Parts | undefined): readonly string[] =>
  Object.values(parts ?? {}).flatMap((part) => (part.kind === 'choice' ? part.chosen : []));

/** Whether a motor was found hot or cool. */
export type Heat = 'hot' | 'cool' | 'unknown';
export const heatOf = (warm: Parts | undefined): Heat =>
  told(warm).includes('hot') ? 'hot' : told(warm).includes('cool') ? 'cool' : 'unknown';

export const DOUBT_SOURCE = 'S–R is the sum of C–S and C–R, a textbook’s rule';
