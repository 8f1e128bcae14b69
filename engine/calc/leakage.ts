/** What current an ohm figure lets through. Source: Ohm's law. */
import type { Exact, Figure } from './exact.ts';
import { aboveZero, notBelowZero } from './refuse.ts';

/** mA through a resistance in Ω at a voltage in V. Throws at zero ohms: a short has no leakage to compute. */
export const leakMilliamps = (volts: Figure, ohms: Figure): Exact =>
  notBelowZero(volts, 'the voltage').times(1000).div(aboveZero(ohms, 'the resistance'));

/** The most Ω that let this many A through at a voltage in V: what a ground has to be to trip a breaker of that size. */
export const ohmsForAmps = (volts: Figure, amps: Figure): Exact =>
  notBelowZero(volts, 'the voltage').div(aboveZero(amps, 'the current'));
