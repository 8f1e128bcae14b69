/** Insulation resistance of windings, MΩ. What is enough depends on the machine and on who says so. */
import { Exact, type Figure } from './exact.ts';
import { aboveZero, notBelowZero } from './refuse.ts';

/** 0.5^((40 − T) / 10): insulation halves for every 10 °C more. Source: IEEE 43, thermoplastic, value from memory. */
export const factorTo40 = (celsius: Figure): Exact => new Exact('0.5').pow(new Exact(40).minus(celsius).div(10));

/** A reading in MΩ at a winding temperature in °C, as it would read at 40 °C. */
export const megohmsAt40 = (megohms: Figure, celsius: Figure): Exact =>
  notBelowZero(megohms, 'the reading').times(factorTo40(celsius));

/** The old rule for windings from before about 1970: kV + 1, in MΩ. Source: IEEE 43 (secondary source). */
export const oldRuleMegohms = (kilovolts: Figure): Exact => notBelowZero(kilovolts, 'the voltage').plus(1);

/** Who says what is enough: the maker's own figure, the kind of machine, or nobody: then the bands only advise. */
export interface Enough {
  readonly by: 'maker' | 'kind';
  readonly megohms: Exact;
}

/**
 * The limit that decides, in MΩ; a reading on it is in. A maker's figure comes before that of the kind; null where there
 * is neither. Throws at a limit of zero or below: it would pass anything.
 */
export function enoughMegohms(makerMegohms: Figure | null, kindMegohms: Figure | null): Enough | null {
  if (makerMegohms !== null) return { by: 'maker', megohms: aboveZero(makerMegohms, 'the maker’s figure') };
  return kindMegohms === null ? null : { by: 'kind', megohms: aboveZero(kindMegohms, 'the limit') };
}

/** The trade's bands. They advise and never condemn. Source: trade charts, common practice. */
export type InsulationBand = 'good' | 'fair' | 'watch' | 'suspect';

/** The band of a reading, given where good, fair and watch begin, in MΩ, falling. A reading on a border is in the lower one. */
export function bandOfMegohms(megohms: Exact, good: Figure, fair: Figure, watch: Figure): InsulationBand {
  if (megohms.gt(good)) return 'good';
  if (megohms.gte(fair)) return 'fair';
  return megohms.gte(watch) ? 'watch' : 'suspect';
}
