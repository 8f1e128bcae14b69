/** Limits of a capacitor section by the tolerance printed on it. Source: the print on the part; arithmetic. */
import { Exact, type Figure, type Range } from './exact.ts';

/**
 * Lower and upper limit in µF, exact. A reading on a limit is in.
 * @param ratedMicrofarads printed µF of this section
 * @param belowPercent tolerance downwards in %, a positive figure
 * @param abovePercent tolerance upwards in %, a positive figure
 */
export function limitsMicrofarads(ratedMicrofarads: Figure, belowPercent: Figure, abovePercent: Figure): Range {
  const rated = new Exact(ratedMicrofarads);
  const hundredth = rated.div(100);
  return { low: rated.minus(hundredth.times(belowPercent)), high: rated.plus(hundredth.times(abovePercent)) };
}

/** How far a reading lies from its rated value, in % of the rated value; negative below. Rated must not be zero. */
export function deviationPercent(reading: Figure, rated: Figure): Exact {
  return new Exact(reading).minus(rated).times(100).div(rated);
}
