/**
 * Moist air at sea level, 14.696 psia, by psychrolib (equations of ASHRAE Fundamentals 2017, ch. 1).
 *
 * The library keeps its unit system in the instance, and what it exports is one instance that anybody may turn to SI.
 * So we make one of our own, set once: the functions here depend on nothing but their arguments.
 */
import psychrolib from 'psychrolib';

const air = new (psychrolib.constructor as new () => typeof psychrolib)();
air.SetUnitSystem(air.IP);

const SEA_LEVEL_PSIA = 14.696;

export interface MoistAir {
  readonly dryBulbFahrenheit: number;
  readonly wetBulbFahrenheit: number;
  /** lb of water per lb of dry air. */
  readonly humidityRatio: number;
  /** Btu per lb of dry air. */
  readonly enthalpyBtuPerPound: number;
  readonly relativeHumidityPercent: number;
}

/** The driest that the library tells apart from no water at all. */
const LEAST_RATIO = 1e-7;
const inRange = (fahrenheit: number): boolean => fahrenheit >= 0 && fahrenheit <= 150;

/** Air of this dry-bulb and wet-bulb, °F. Null outside 0…150 °F, and where no air has the two: wet above dry, or too far below. */
export function byWetBulb(dryBulbFahrenheit: number, wetBulbFahrenheit: number): MoistAir | null {
  if (!inRange(dryBulbFahrenheit) || !inRange(wetBulbFahrenheit) || wetBulbFahrenheit > dryBulbFahrenheit) return null;
  const ratio = air.GetHumRatioFromTWetBulb(dryBulbFahrenheit, wetBulbFahrenheit, SEA_LEVEL_PSIA);
  return ratio > LEAST_RATIO ? of(dryBulbFahrenheit, wetBulbFahrenheit, ratio) : null;
}

/** Air of this dry-bulb, °F, and relative humidity, %. Null outside 0…150 °F or 0…100 %. The wet-bulb is good to 0.002 °F. */
export function byHumidity(dryBulbFahrenheit: number, relativeHumidityPercent: number): MoistAir | null {
  if (!inRange(dryBulbFahrenheit) || !(relativeHumidityPercent >= 0 && relativeHumidityPercent <= 100)) return null;
  const ratio = air.GetHumRatioFromRelHum(dryBulbFahrenheit, relativeHumidityPercent / 100, SEA_LEVEL_PSIA);
  return of(dryBulbFahrenheit, air.GetTWetBulbFromHumRatio(dryBulbFahrenheit, ratio, SEA_LEVEL_PSIA), ratio);
}

/** Btu/lb of air at a temperature in °F within 0…150 and a relative humidity in %: it rises with both. */
export const enthalpyBtuPerPound = (dryBulbFahrenheit: number, relativeHumidityPercent: number): number =>
  air.GetMoistAirEnthalpy(
    dryBulbFahrenheit,
    air.GetHumRatioFromRelHum(dryBulbFahrenheit, relativeHumidityPercent / 100, SEA_LEVEL_PSIA),
  );

const of = (dryBulbFahrenheit: number, wetBulbFahrenheit: number, humidityRatio: number): MoistAir => ({
  dryBulbFahrenheit,
  wetBulbFahrenheit,
  humidityRatio,
  enthalpyBtuPerPound: air.GetMoistAirEnthalpy(dryBulbFahrenheit, humidityRatio),
  relativeHumidityPercent: 100 * air.GetRelHumFromHumRatio(dryBulbFahrenheit, humidityRatio, SEA_LEVEL_PSIA),
});
