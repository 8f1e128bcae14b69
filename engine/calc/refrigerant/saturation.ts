/**
 * Saturation of a refrigerant: the pressure at which it boils and condenses at a temperature, both ways.
 * Pressures are absolute; a gauge's reading is converted first (`../units.ts`).
 */
import { Decimal } from 'decimal.js';
import { Exact, type Figure } from '../exact.ts';
import { convert } from '../units.ts';
import type { Refrigerant } from './refrigerants.ts';
import { type Curve, type Equation, FLUIDS, type Points } from './saturation-curves.ts';

/** `low`, `high`: outside −40…150 °F, where nothing was checked. `critical`: there is no saturation from there on. */
export type Saturated =
  | { readonly ok: true; readonly value: Exact }
  | { readonly ok: false; readonly why: 'low' | 'high' | 'critical' };

/** Digits enough for a power series that is asked ten times for one answer. */
const Quick = Decimal.clone({ precision: 20, rounding: Decimal.ROUND_HALF_EVEN });
const LOWEST_FAHRENHEIT = -40;
const HIGHEST_FAHRENHEIT = 150;
const STEP_FAHRENHEIT = 10;
const kelvinOf = (fahrenheit: Figure): Decimal => new Quick(convert(fahrenheit, '°F', 'K'));
const LOWEST = kelvinOf(LOWEST_FAHRENHEIT);
const HIGHEST = kelvinOf(HIGHEST_FAHRENHEIT);

/** How far a saturation pressure of this refrigerant may be off, in %; a temperature about 0.6 °F for each %. */
export const accuracyPercentOf = (refrigerant: Refrigerant): string => FLUIDS[refrigerant].accuracyPercent;

/** kPa absolute at a temperature in °F. */
export function saturationKilopascals(refrigerant: Refrigerant, curve: Curve, fahrenheit: Figure): Saturated {
  const line = FLUIDS[refrigerant].curves[curve];
  const kelvin = kelvinOf(fahrenheit);
  if (kelvin.lt(LOWEST)) return { ok: false, why: 'low' };
  if (line.kind === 'equation' && kelvin.gte(line.reducingKelvin)) return { ok: false, why: 'critical' };
  if (kelvin.gt(HIGHEST)) return { ok: false, why: 'high' };
  return { ok: true, value: new Exact(logarithm(line, kelvin).exp()) };
}

/** °F at a pressure in kPa absolute: the inverse, to a millionth of a degree. */
export function saturationFahrenheit(refrigerant: Refrigerant, curve: Curve, kilopascals: Figure): Saturated {
  const line = FLUIDS[refrigerant].curves[curve];
  const pressure = new Quick(kilopascals);
  if (pressure.lte(0)) return { ok: false, why: 'low' };
  if (line.kind === 'equation' && pressure.gte(line.reducingKilopascals)) return { ok: false, why: 'critical' };
  const wanted = pressure.ln();
  // A hair on both sides: the pressure of an end, kept to 20 digits, is inside.
  if (wanted.lt(logarithm(line, LOWEST).minus('1e-15'))) return { ok: false, why: 'low' };
  if (wanted.gt(logarithm(line, HIGHEST).plus('1e-15'))) return { ok: false, why: 'high' };
  const kelvin = line.kind === 'points' ? between(line, wanted) : search(line, wanted);
  return { ok: true, value: convert(new Exact(kelvin), 'K', '°F') };
}

/** ln of kPa at a temperature within the range. */
const logarithm = (line: Equation | Points, kelvin: Decimal): Decimal =>
  line.kind === 'equation' ? byEquation(line, kelvin) : byPoints(line, kelvin);

function byEquation({ reducingKelvin, reducingKilopascals, terms }: Equation, kelvin: Decimal): Decimal {
  const theta = new Quick(1).minus(kelvin.div(reducingKelvin));
  const sum = terms.reduce((all, [n, t]) => all.plus(theta.pow(t).times(n)), new Quick(0));
  return new Quick(reducingKilopascals).ln().plus(new Quick(reducingKelvin).div(kelvin).times(sum));
}

interface Point {
  /** 1/T in 1/K, in which ln p is nearly a straight line. */
  readonly inverse: Decimal;
  readonly ln: Decimal;
}
const pointAt = ({ kilopascals }: Points, i: number): Point => ({
  inverse: new Quick(1).div(kelvinOf(LOWEST_FAHRENHEIT + i * STEP_FAHRENHEIT)),
  ln: new Quick(kilopascals[i] ?? Number.NaN).ln(),
});
/** The piece of the line in which `inside` first holds for the upper end. */
function piece(line: Points, inside: (upper: Point) => boolean): [Point, Point] {
  let i = 1;
  while (i < line.kilopascals.length - 1 && !inside(pointAt(line, i))) i++;
  return [pointAt(line, i - 1), pointAt(line, i)];
}

function byPoints(line: Points, kelvin: Decimal): Decimal {
  const inverse = new Quick(1).div(kelvin);
  const [a, b] = piece(line, (upper) => upper.inverse.lte(inverse));
  return straight(inverse, a.inverse, b.inverse, a.ln, b.ln);
}

function between(line: Points, ln: Decimal): Decimal {
  const [a, b] = piece(line, (upper) => upper.ln.gte(ln));
  return new Quick(1).div(straight(ln, a.ln, b.ln, a.inverse, b.inverse));
}

const straight = (x: Decimal, x0: Decimal, x1: Decimal, y0: Decimal, y1: Decimal): Decimal =>
  x.minus(x0).div(x1.minus(x0)).times(y1.minus(y0)).plus(y0);

/** Secant in 1/T: the curve is so nearly straight there that a handful of steps is enough. */
function search(line: Equation, wanted: Decimal): Decimal {
  const at = (kelvin: Decimal): Point => ({ inverse: new Quick(1).div(kelvin), ln: byEquation(line, kelvin) });
  let a = at(LOWEST);
  let b = at(HIGHEST);
  for (let i = 0; i < MOST_STEPS && a.ln.minus(b.ln).abs().gt('1e-12'); i++) {
    const next = at(new Quick(1).div(straight(wanted, a.ln, b.ln, a.inverse, b.inverse)));
    [a, b] = [b, next];
  }
  return new Quick(1).div(b.inverse);
}
const MOST_STEPS = 30;
