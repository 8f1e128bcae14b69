/**
 * What a meter's accuracy leaves open, and the word for a reading with that doubt.
 *
 * Source of the doubt: the meter maker's ±(p % of reading + n counts). Model (our choice, named wherever it decides): the
 * true value lies anywhere in reading ± doubt alike (rectangular). Words: ILAC-G8, non-binary rule.
 */
import type { Meter } from '../schema.ts';
import { Exact, type Figure, type Range, within } from './exact.ts';

export type Word = 'pass' | 'conditional pass' | 'conditional fail' | 'fail';

/** Resolution in µF at this reading: fine below the meter's split, coarse from the split on. */
export const resolutionMicrofarads = (meter: Meter, readingMicrofarads: Figure): Exact =>
  new Exact(new Exact(readingMicrofarads).lt(meter.split) ? meter.fine : meter.coarse);

/** ± doubt of one reading, in the reading's unit. */
export const doubtOf = (percent: Figure, counts: number, resolution: Figure, reading: Figure): Exact =>
  new Exact(reading).abs().times(percent).div(100).plus(new Exact(resolution).times(counts));

/** ± doubt in µF of one capacitance reading on this meter. */
export const doubtMicrofarads = (meter: Meter, readingMicrofarads: Figure): Exact =>
  doubtOf(meter.percent, meter.counts, resolutionMicrofarads(meter, readingMicrofarads), readingMicrofarads);

/** Where the true value may lie, in µF. A capacitance is never below zero. */
export function windowMicrofarads(meter: Meter, readingMicrofarads: Figure): Range {
  const reading = new Exact(readingMicrofarads);
  const doubt = doubtMicrofarads(meter, reading);
  return { low: Exact.max(0, reading.minus(doubt)), high: reading.plus(doubt) };
}

/** Share (0 to 1) of the window that lies inside the limits: P(in tolerance) in the rectangular model. */
export function shareInside(window: Range, limits: Range): Exact {
  const width = window.high.minus(window.low);
  if (width.lte(0)) return new Exact(within(window.low, limits) ? 1 : 0);
  const inside = Exact.min(window.high, limits.high).minus(Exact.max(window.low, limits.low));
  return Exact.max(0, inside).div(width);
}

/** The four-way word. A reading on a limit is in; a window that only touches a limit from inside is wholly in. */
export function wordOf(reading: Figure, window: Range, limits: Range): Word {
  if (within(new Exact(reading), limits)) {
    return window.low.gte(limits.low) && window.high.lte(limits.high) ? 'pass' : 'conditional pass';
  }
  return window.high.lt(limits.low) || window.low.gt(limits.high) ? 'fail' : 'conditional fail';
}

/** The plain two-way word: in or out by the label alone. */
export const plainWord = (reading: Figure, limits: Range): 'pass' | 'fail' =>
  within(new Exact(reading), limits) ? 'pass' : 'fail';
