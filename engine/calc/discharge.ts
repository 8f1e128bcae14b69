/** A capacitor emptied through a resistor. Source: physics; V0 worst case = √2 × the part's AC rating. */
import { Exact, type Figure } from './exact.ts';

/** Peak volts of a sine of this RMS value: the most that a part of that AC rating can hold, in V. */
export const peakVolts = (rmsVolts: Figure): Exact => new Exact(2).sqrt().times(rmsVolts);

/** Time constant RC in s. */
export const tauSeconds = (microfarads: Figure, ohms: Figure): Exact =>
  new Exact(microfarads).times(ohms).div(1_000_000);

/** Volts left after a time: V0·e^(−t/RC). RC must be above zero. */
export const voltsAfter = (fromVolts: Figure, microfarads: Figure, ohms: Figure, seconds: Figure): Exact =>
  new Exact(seconds).div(tauSeconds(microfarads, ohms)).neg().exp().times(fromVolts);

/** Seconds from one voltage down to another: RC·ln(V0/V); 0 where it is already there. `toVolts` must be above zero. */
export function secondsTo(fromVolts: Figure, toVolts: Figure, microfarads: Figure, ohms: Figure): Exact {
  const ratio = new Exact(fromVolts).div(toVolts);
  return ratio.lte(1) ? new Exact(0) : ratio.ln().times(tauSeconds(microfarads, ohms));
}

/** How long to hold: whole seconds rounded up, never under the floor. */
export const holdSeconds = (seconds: Figure, floorSeconds: Figure): Exact =>
  Exact.max(new Exact(seconds).ceil(), floorSeconds);

/** Stored energy ½·C·V² in J. */
export const energyJoules = (microfarads: Figure, volts: Figure): Exact =>
  new Exact(microfarads).times(new Exact(volts).pow(2)).div(2_000_000);

/** Power at the first instant, V²/R, in W. A resistor meets it as a pulse that falls with e^(−2t/RC). */
export const peakWatts = (volts: Figure, ohms: Figure): Exact => new Exact(volts).pow(2).div(ohms);
