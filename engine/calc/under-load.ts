/**
 * Capacitance from the amps in its lead and the volts across it, with what two meters leave open. Source: physics;
 * each doubt is its maker's ±(p % + n counts), taken as rectangular, so the ends of both make the window.
 */
import { microfaradsUnderLoad } from './amps.ts';
import { doubtOf } from './doubt.ts';
import { Exact, type Figure, type Range } from './exact.ts';

/** A meter's accuracy on one range; `resolution` in the unit of the reading. */
export interface Accuracy {
  readonly percent: Figure;
  readonly counts: number;
  readonly resolution: Figure;
}
export interface UnderLoad {
  readonly microfarads: Exact;
  readonly window: Range;
}

/** A reading and its doubt; a size is never below zero. */
function ends(reading: Figure, { percent, counts, resolution }: Accuracy): Range {
  const doubt = doubtOf(percent, counts, resolution, reading);
  return { low: Exact.max(0, new Exact(reading).minus(doubt)), high: new Exact(reading).plus(doubt) };
}

/** µF and where it may lie; null where the volts may be zero within their doubt: then nothing bounds it. */
export function underLoad(
  amps: Figure,
  clamp: Accuracy,
  volts: Figure,
  voltmeter: Accuracy,
  hertz: Figure,
): UnderLoad | null {
  const [i, v] = [ends(amps, clamp), ends(volts, voltmeter)];
  if (v.low.lte(0)) return null;
  return {
    microfarads: microfaradsUnderLoad(amps, volts, hertz),
    window: { low: microfaradsUnderLoad(i.low, v.high, hertz), high: microfaradsUnderLoad(i.high, v.low, hertz) },
  };
}
