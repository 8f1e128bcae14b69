/**
 * The temperature split (return less supply) that an air conditioner in order shows. Our own model, since no table of
 * one authority is at hand; it is derived from the heat that air carries (`heat.ts`):
 *
 * - a ton is 12 000 Btu/h and moves so many CFM, so the coil takes Q / (4.5·CFM) Btu out of each pound;
 * - it does so at the rating's return air, 67 °F wet-bulb, and some percent more or less for each degree beside it;
 * - the air leaves nearly saturated, which turns its enthalpy into its temperature;
 * - where the coil stays dry, only a share of the nominal capacity is there, all of it sensible: the split is at most
 *   share·Q / (1.08·CFM).
 *
 * Against the four capacities of a trade-training article at 80 °F and 57, 63, 67, 72 °F wet-bulb (splits of 25.1, 24.7,
 * 20.7, 16.5) it is within 1.4 °F.
 */

import { Exact, type Figure } from '../exact.ts';
import { differenceBtuPerPound, differenceFahrenheit } from './heat.ts';
import { enthalpyBtuPerPound, type MoistAir } from './moist-air.ts';

export interface SplitModel {
  readonly cfmPerTon: Figure;
  /** Relative humidity in % with which the air leaves a wet coil. */
  readonly leavingHumidityPercent: Figure;
  /** Total capacity, % for each °F of the return's wet-bulb above the rating's. */
  readonly capacityPercentPerDegree: Figure;
  /** Sensible capacity of a dry coil, % of the nominal. */
  readonly dryCoilPercent: Figure;
}

const TON_BTU_PER_HOUR = 12_000;
const RATING_WET_BULB_FAHRENHEIT = 67;

/** The expected split in °F of difference, to a tenth. Above zero for any air that the model of moist air knows. */
export function expectedSplit(returned: MoistAir, model: SplitModel): Exact {
  const beside = new Exact(returned.wetBulbFahrenheit).minus(RATING_WET_BULB_FAHRENHEIT);
  const capacity = beside.times(model.capacityPercentPerDegree).plus(100).times(TON_BTU_PER_HOUR).div(100);
  const taken = differenceBtuPerPound(capacity, model.cfmPerTon).toNumber();
  const leaving = temperatureOf(returned.enthalpyBtuPerPound - taken, Number(model.leavingHumidityPercent));
  const wet = new Exact(returned.dryBulbFahrenheit).minus(leaving);
  const dry = differenceFahrenheit(new Exact(TON_BTU_PER_HOUR).times(model.dryCoilPercent).div(100), model.cfmPerTon);
  return Exact.min(wet, dry).toDecimalPlaces(1);
}

/** °F at which air of this humidity has this enthalpy, by halving: enthalpy rises with temperature. */
function temperatureOf(enthalpy: number, humidityPercent: number): number {
  let [low, high] = [0, 150];
  for (let i = 0; i < HALVINGS; i++) {
    const middle = (low + high) / 2;
    if (enthalpyBtuPerPound(middle, humidityPercent) > enthalpy) high = middle;
    else low = middle;
  }
  return low;
}
/** 150 °F halved so often is a millionth of a degree. */
const HALVINGS = 28;
