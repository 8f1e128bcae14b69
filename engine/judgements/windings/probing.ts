/** Readings in ohms for the probes of windings. */
import { Exact, type Figure } from '../../calc/exact.ts';
import type { Parts } from '../../schema.ts';
import { over, read, untaken } from '../probing.ts';
import { doubtBy, type OhmmeterLimits } from './look.ts';

export type Cell = Figure | 'OL' | '_';

/** A figure, OL, or `_` for left out, each in ohms. */
export const ohmParts = (of: Readonly<Record<string, Cell>>): Parts =>
  Object.fromEntries(
    Object.entries(of).map(([key, cell]) => [key, cell === 'OL' ? over : cell === '_' ? untaken : read(cell, 'Ω')]),
  );

const STEP = '0.001';

/** The largest third pair that still fits the sum of two others: it is off by its own doubt and both of theirs. */
export function mostThatFits(one: Figure, other: Figure, limits: OhmmeterLimits): Exact {
  const { percent, counts, resolutionOhms } = doubtBy(limits);
  const share = new Exact(percent).div(100);
  const sum = new Exact(one).plus(other);
  const fixed = new Exact(resolutionOhms).times(counts).times(3);
  return sum.times(share.plus(1)).plus(fixed).div(new Exact(1).minus(share)).toDecimalPlaces(3, Exact.ROUND_DOWN);
}

/** The least reading that the meter tells from a short. */
export function leastAboveDoubt(limits: OhmmeterLimits): Exact {
  const { percent, counts, resolutionOhms } = doubtBy(limits);
  const border = new Exact(resolutionOhms).times(counts).div(new Exact(1).minus(new Exact(percent).div(100)));
  return border.toDecimalPlaces(3, Exact.ROUND_DOWN).plus(STEP);
}
export const more = (value: Figure): Exact => new Exact(value).plus(STEP);
export const less = (value: Figure): Exact => new Exact(value).minus(STEP);
