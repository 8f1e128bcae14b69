/**
 * Refusals of the arithmetic. A figure that makes no sense would come out as a figure that looks like one, so it is
 * thrown out instead. Judgements ask before they compute: to end up here is a bug, never a person's slip.
 */
import { Exact, type Figure } from './exact.ts';

/** The figure; throws RangeError where it is zero, negative or no finite number. */
export function aboveZero(value: Figure, what: string): Exact {
  const exact = new Exact(value);
  if (!exact.isFinite() || exact.lte(0)) throw new RangeError(`${what} must be above zero`);
  return exact;
}

/** The figure; throws RangeError where it is negative or no finite number. */
export function notBelowZero(value: Figure, what: string): Exact {
  const exact = new Exact(value);
  if (!exact.isFinite() || exact.lt(0)) throw new RangeError(`${what} must not be below zero`);
  return exact;
}
