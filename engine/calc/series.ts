/** Capacitors in series and in parallel, and what that says about three readings of a dual part. Source: physics. */
import type { Meter } from '../schema.ts';
import { windowMicrofarads } from './doubt.ts';
import { Exact, type Figure, overlap, type Range } from './exact.ts';

/** a·b / (a + b) in µF; 0 where either is 0. HERM to FAN of a dual part with C open reads this. */
export function seriesMicrofarads(a: Figure, b: Figure): Exact {
  const sum = new Exact(a).plus(b);
  return sum.isZero() ? new Exact(0) : new Exact(a).times(b).div(sum);
}

/** a + b in µF. */
export const parallelMicrofarads = (a: Figure, b: Figure): Exact => new Exact(a).plus(b);

/** Whether 1/HERM + 1/FAN = 1/(HERM–FAN) within the doubt of all three readings (µF, none negative). */
export function tripleFits(meter: Meter, herm: Figure, fan: Figure, hermFan: Figure): boolean {
  const [h, f] = [windowMicrofarads(meter, herm), windowMicrofarads(meter, fan)];
  const expected = { low: seriesMicrofarads(h.low, f.low), high: seriesMicrofarads(h.high, f.high) };
  return overlap(expected, windowMicrofarads(meter, hermFan));
}

/**
 * Where a lead on HERM instead of C would put the reading of a FAN section that is good: from series(HERM, lower FAN
 * limit) to series(HERM, upper FAN limit), µF. A FAN reading whose doubt reaches into it may be HERM–FAN.
 */
export const hermFanBand = (hermRead: Range, fanLimits: Range): Range => ({
  low: seriesMicrofarads(hermRead.low, fanLimits.low),
  high: seriesMicrofarads(hermRead.high, fanLimits.high),
});
