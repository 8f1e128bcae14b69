/** Superheat and subcooling from a gauge and a clamp. Superheat counts from the dew line, subcooling from the bubble line. */
import { Exact, type Figure } from '../exact.ts';
import { convert } from '../units.ts';
import type { Refrigerant } from './refrigerants.ts';
import { type Saturated, saturationFahrenheit } from './saturation.ts';

/** °F at which this refrigerant's last liquid boils at a gauge pressure, sea level. */
export const dewFahrenheit = (refrigerant: Refrigerant, psig: Figure): Saturated =>
  saturationFahrenheit(refrigerant, 'dew', convert(psig, 'psig', 'kPa'));

/** °F at which this refrigerant's first vapour forms at a gauge pressure, sea level. */
export const bubbleFahrenheit = (refrigerant: Refrigerant, psig: Figure): Saturated =>
  saturationFahrenheit(refrigerant, 'bubble', convert(psig, 'psig', 'kPa'));

/** How much warmer the suction line is than its saturation, in °F of difference. By definition. */
export const superheat = (suctionLineFahrenheit: Figure, saturationFahrenheit: Figure): Exact =>
  new Exact(suctionLineFahrenheit).minus(saturationFahrenheit);

/** How much colder the liquid line is than its saturation, in °F of difference. By definition. */
export const subcooling = (saturationFahrenheit: Figure, liquidLineFahrenheit: Figure): Exact =>
  new Exact(saturationFahrenheit).minus(liquidLineFahrenheit);

/**
 * The superheat that a fixed orifice should show, in °F of difference: (3·WB − 80 − DB) / 2 with the return air's
 * wet-bulb and the outdoor dry-bulb. Common practice, no single source. Few degrees or less: too hot outside, or too
 * dry inside, to judge a charge by it.
 */
export const targetSuperheat = (returnWetBulbFahrenheit: Figure, outdoorFahrenheit: Figure): Exact =>
  new Exact(returnWetBulbFahrenheit).times(3).minus(80).minus(outdoorFahrenheit).div(2);
