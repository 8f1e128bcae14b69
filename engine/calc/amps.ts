/** Currents against the nameplate, and capacitance from running amps. */
import { Exact, type Figure } from './exact.ts';
import { aboveZero } from './refuse.ts';

/** A current as a share of a nameplate current (RLA, FLA or LRA, not zero): 1 is equal. Arithmetic. */
export const shareOf = (amps: Figure, plateAmps: Figure): Exact => new Exact(amps).div(plateAmps);

/**
 * µF from the amps in a capacitor's lead and the volts across that capacitor (not zero): I / (2π·f·V). Physics. The
 * line voltage must not stand in for it: the capacitor carries more.
 */
export const microfaradsUnderLoad = (amps: Figure, voltsAcross: Figure, hertz: Figure): Exact =>
  new Exact(amps).times(1_000_000).div(Exact.acos(-1).times(2).times(hertz).times(voltsAcross));

/**
 * The most continuous amps that the compressor's protector lets pass, from its RLA. Usually 1.56·RLA; some makers divide
 * by 1.44. Source: a trade tip page and a glossary (secondary sources).
 */
export const mccAmps = (rlaAmps: Figure, ratio: Figure): Exact =>
  aboveZero(rlaAmps, 'RLA').times(aboveZero(ratio, 'the ratio'));

/** RLA from the maximum continuous current: MCC / ratio. */
export const rlaAmps = (mccAmps: Figure, ratio: Figure): Exact =>
  aboveZero(mccAmps, 'MCC').div(aboveZero(ratio, 'the ratio'));

/** Where a compressor's current stands, in the order in which it is looked at. */
export type Running = 'not running' | 'not starting' | 'above MCC' | 'above RLA' | 'running';

/** What a compressor's current is compared with. `null`: the plate doesn't say. */
export interface CompressorPlate {
  readonly rlaAmps: Exact | null;
  readonly lraAmps: Exact | null;
  /** Printed, or from RLA. */
  readonly mccAmps: Exact | null;
}

/**
 * The word for a compressor's amps; null where the plate can't tell running from stalled. RLA is no limit. Near LRA wins
 * over MCC: a rotor that doesn't turn is over both.
 * @param nearLockedShare share of LRA from which it counts as not starting
 * @param idleAmps below this it draws nothing
 */
export function runningOf(
  amps: Exact,
  plate: CompressorPlate,
  nearLockedShare: Figure,
  idleAmps: Figure,
): Running | null {
  if (amps.lt(idleAmps)) return 'not running';
  if (plate.lraAmps && shareOf(amps, plate.lraAmps).gte(nearLockedShare)) return 'not starting';
  if (plate.mccAmps?.lt(amps)) return 'above MCC';
  if (plate.rlaAmps?.lt(amps)) return plate.lraAmps ? 'above RLA' : null;
  return plate.rlaAmps || plate.lraAmps ? 'running' : null;
}
