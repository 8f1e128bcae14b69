/**
 * Resistance of a copper winding and its temperature: R₂ = R₁·(k + T₂) / (k + T₁), °C, k = 234.5 for annealed copper (IEC
 * texts use 235, from memory). Physics.
 */
import { Exact, type Figure } from './exact.ts';
import { aboveZero } from './refuse.ts';

export const COPPER_CELSIUS = '234.5';

/** k + T; throws where the formula has no meaning, at −k and below. */
const above = (celsius: Figure, constantCelsius: Figure): Exact =>
  aboveZero(new Exact(constantCelsius).plus(celsius), 'the temperature above the constant');

/** Ω of the same winding at another temperature. */
export const ohmsAt = (
  ohms: Figure,
  fromCelsius: Figure,
  toCelsius: Figure,
  constantCelsius: Figure = COPPER_CELSIUS,
): Exact =>
  aboveZero(ohms, 'the resistance').times(above(toCelsius, constantCelsius)).div(above(fromCelsius, constantCelsius));

/** °C of a winding from its Ω cold at a known temperature and its Ω hot. */
export const windingCelsius = (
  coldOhms: Figure,
  coldCelsius: Figure,
  hotOhms: Figure,
  constantCelsius: Figure = COPPER_CELSIUS,
): Exact =>
  aboveZero(hotOhms, 'the hot resistance')
    .times(above(coldCelsius, constantCelsius))
    .div(aboveZero(coldOhms, 'the cold resistance'))
    .minus(constantCelsius);

/** The same as a linear coefficient at a temperature, 1/°C: 1 / (k + T). */
export const copperPerCelsius = (celsius: Figure, constantCelsius: Figure = COPPER_CELSIUS): Exact =>
  new Exact(1).div(above(celsius, constantCelsius));
