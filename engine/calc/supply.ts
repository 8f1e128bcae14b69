/** Supply voltage: limits by the nameplate, drop and unbalance. */
import { Exact, type Figure, type Range } from './exact.ts';

/**
 * ±percent of a single rated voltage, in V.
 * Source: NEMA MG 1-12.44.1, motors run at ±10 % of rated voltage.
 */
export function ratedRangeVolts(ratedVolts: Figure, percent: Figure): Range {
  const part = new Exact(ratedVolts).times(percent).div(100);
  return { low: new Exact(ratedVolts).minus(part), high: new Exact(ratedVolts).plus(part) };
}

/** Fall from one voltage to another in % of the first (not zero). Arithmetic. */
export const dropPercent = (fromVolts: Figure, toVolts: Figure): Exact =>
  new Exact(fromVolts).minus(toVolts).times(100).div(fromVolts);

/** 100·max|Vi − mean| / mean in %. At least one voltage, mean not zero; throws on none. Source: NEMA. */
export function unbalancePercent(volts: readonly Figure[]): Exact {
  if (volts.length === 0) throw new Error('no voltages');
  const all = volts.map((v) => new Exact(v));
  const mean = all.reduce((sum, v) => sum.plus(v), new Exact(0)).div(all.length);
  return Exact.max(...all.map((v) => v.minus(mean).abs()))
    .times(100)
    .div(mean);
}
