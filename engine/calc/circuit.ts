/**
 * A unit's circuit: the least ampacity of its wires and its largest fuse or breaker, from the plate's amps. What is printed
 * wins over any of this. Source: NEC 440.22(A) as quoted by a trade quiz and a maker's manual (secondary sources).
 */
import type { Exact, Figure } from './exact.ts';
import { aboveZero, notBelowZero } from './refuse.ts';

/** Of the largest motor's RLA, for the wires. */
export const MCA_FACTOR = '1.25';
/** Of the largest motor's RLA, for the fuse: where one begins, and how far one may go if it doesn't hold. */
export const FUSE_FACTORS = { begin: '1.75', most: '2.25' } as const;
/** Standard fuses and breakers up to 100 A. Source: NEC 240.6, values from memory. */
export const STANDARD_AMPS = [15, 20, 25, 30, 35, 40, 45, 50, 60, 70, 80, 90, 100] as const;

const withOthers = (factor: Figure, largestRlaAmps: Figure, otherAmps: Figure): Exact =>
  aboveZero(largestRlaAmps, 'RLA').times(factor).plus(notBelowZero(otherAmps, 'the other loads'));

/** MCA in A: 1.25·largest RLA + the other loads. */
export const mcaAmps = (largestRlaAmps: Figure, otherAmps: Figure): Exact =>
  withOthers(MCA_FACTOR, largestRlaAmps, otherAmps);

/** The bound of the fuse in A, before it is rounded: factor·largest RLA + the other loads. */
export const fuseBoundAmps = (largestRlaAmps: Figure, otherAmps: Figure, factor: Figure = FUSE_FACTORS.most): Exact =>
  withOthers(aboveZero(factor, 'the factor'), largestRlaAmps, otherAmps);

/** The largest standard size not above a bound in A; null below the smallest or from the next size above the list on. */
export function standardAmpsDown(boundAmps: Figure): number | null {
  const bound = notBelowZero(boundAmps, 'the bound');
  if (bound.gte(110)) return null;
  return STANDARD_AMPS.findLast((size) => bound.gte(size)) ?? null;
}
