/**
 * Heat index of the US National Weather Service: what heat and humidity feel like, °F.
 * Source: wpc.ncep.noaa.gov/html/heatindex_equation.shtml, read. Good to about ±1.3 °F; at 80…87 °F with very high
 * humidity the printed chart is lower. In full sun it can feel up to 15 °F hotter.
 */
import { Exact, type Figure } from '../exact.ts';

/** Factor, power of T, power of RH. */
const TERMS = [
  ['-42.379', 0, 0],
  ['2.04901523', 1, 0],
  ['10.14333127', 0, 1],
  ['-0.22475541', 1, 1],
  ['-0.00683783', 2, 0],
  ['-0.05481717', 0, 2],
  ['0.00122874', 2, 1],
  ['0.00085282', 1, 2],
  ['-0.00000199', 2, 2],
] as const;

/** °F by air temperature in °F and relative humidity in %, 0…100: the simple form below 80 °F, else the regression with its two adjustments. */
export function heatIndexFahrenheit(fahrenheit: Figure, relativeHumidityPercent: Figure): Exact {
  const [t, rh] = [new Exact(fahrenheit), new Exact(relativeHumidityPercent)];
  const plain = simple(t, rh);
  return plain.lt(80) ? plain : regression(t, rh).plus(adjustment(t, rh));
}

/** The simple form, averaged with the temperature as the service does before it decides between the two. */
const simple = (t: Exact, rh: Exact): Exact =>
  t.minus(68).times('1.2').plus(t).plus(61).plus(rh.times('0.094')).div(2).plus(t).div(2);

const regression = (t: Exact, rh: Exact): Exact =>
  TERMS.reduce((sum, [factor, ofT, ofRh]) => sum.plus(t.pow(ofT).times(rh.pow(ofRh)).times(factor)), new Exact(0));

function adjustment(t: Exact, rh: Exact): Exact {
  // The service says from 80 °F on: so dry, the simple form holds up to there anyway.
  if (rh.lt(13) && t.lte(112)) {
    const root = new Exact(17).minus(t.minus(95).abs()).div(17).sqrt();
    return new Exact(13).minus(rh).div(4).times(root).neg();
  }
  if (rh.gt(85) && t.gte(80) && t.lte(87)) return rh.minus(85).div(10).times(new Exact(87).minus(t).div(5));
  return new Exact(0);
}

/** Where each category begins, °F of heat index: each holds its own beginning and not the next one's. */
export interface HeatCategories {
  readonly caution: Figure;
  readonly extremeCaution: Figure;
  readonly danger: Figure;
  readonly extremeDanger: Figure;
}
export const HEAT_CATEGORIES = ['none', 'caution', 'extreme-caution', 'danger', 'extreme-danger'] as const;
export type HeatCategory = (typeof HEAT_CATEGORIES)[number];

/** The category of a heat index, half-open: [from, next). */
export function heatCategory(heatIndexFahrenheit: Figure, from: HeatCategories): HeatCategory {
  const index = new Exact(heatIndexFahrenheit);
  if (index.gte(from.extremeDanger)) return 'extreme-danger';
  if (index.gte(from.danger)) return 'danger';
  if (index.gte(from.extremeCaution)) return 'extreme-caution';
  return index.gte(from.caution) ? 'caution' : 'none';
}
