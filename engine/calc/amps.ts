/** Currents against the nameplate, and capacitance from running amps. */
import { Exact, type Figure } from './exact.ts';

/** A current as a share of a nameplate current (RLA, FLA or LRA, not zero): 1 is equal. Arithmetic. */
export const shareOf = (amps: Figure, plateAmps: Figure): Exact => new Exact(amps).div(plateAmps);

/**
 * µF from the amps in a capacitor's lead and the volts across that capacitor (not zero): I / (2π·f·V). Physics. The
 * line voltage must not stand in for it: the capacitor carries more.
 */
export const microfaradsUnderLoad = (amps: Figure, voltsAcross: Figure, hertz: Figure): Exact =>
  new Exact(amps).times(1_000_000).div(Exact.acos(-1).times(2).times(hertz).times(voltsAcross));
