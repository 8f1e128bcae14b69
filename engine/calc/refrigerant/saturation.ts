/**
 * Saturation of a refrigerant: the pressure at which it boils and condenses at a temperature, both ways.
 * Pressures are absolute; a gauge's reading is converted first (`../units.ts`).
 *
 * In binary floating point, since powers and logarithms have no exact decimals: good to eleven digits, where the curves
 * are good to four. Whoever compares rounds first, and no pressure in tenths of a psi lies so near to the middle
 * between two tenths of a degree that another machine's last bit could turn it (a test asks them all).
 */
import { Exact, type Figure } from '../exact.ts';
import type { Refrigerant } from './refrigerants.ts';
import { type Curve, type Equation, FLUIDS, type Points } from './saturation-curves.ts';

/** `low`, `high`: outside −40…150 °F, where nothing was checked. `critical`: there is no saturation from there on. */
export type Saturated =
  | { readonly ok: true; readonly value: Exact }
  | { readonly ok: false; readonly why: 'low' | 'high' | 'critical' };

const LOWEST_FAHRENHEIT = -40;
const HIGHEST_FAHRENHEIT = 150;
const STEP_FAHRENHEIT = 10;
const kelvinOf = (fahrenheit: number): number => ((fahrenheit + 459.67) * 5) / 9;
const fahrenheitOf = (kelvin: number): number => (kelvin * 9) / 5 - 459.67;
const LOWEST = kelvinOf(LOWEST_FAHRENHEIT);
const HIGHEST = kelvinOf(HIGHEST_FAHRENHEIT);
/** The pressure of an end is inside, however its last digits were rounded: a billionth, in ln p. */
const HAIR = 1e-9;

/** How far a saturation pressure of this refrigerant may be off, in %; a temperature about 0.6 °F for each %. */
export const accuracyPercentOf = (refrigerant: Refrigerant): string => FLUIDS[refrigerant].accuracyPercent;

/** kPa absolute at a temperature in °F. */
export function saturationKilopascals(refrigerant: Refrigerant, curve: Curve, fahrenheit: Figure): Saturated {
  const line = FLUIDS[refrigerant].curves[curve];
  const kelvin = kelvinOf(Number(fahrenheit));
  if (line.kind === 'equation' && kelvin >= line.reducingKelvin) return { ok: false, why: 'critical' };
  if (kelvin < LOWEST) return { ok: false, why: 'low' };
  return kelvin > HIGHEST ? { ok: false, why: 'high' } : found(Math.exp(logarithm(line, kelvin)));
}

/** °F at a pressure in kPa absolute: the inverse. */
export function saturationFahrenheit(refrigerant: Refrigerant, curve: Curve, kilopascals: Figure): Saturated {
  const line = FLUIDS[refrigerant].curves[curve];
  const pressure = Number(kilopascals);
  if (line.kind === 'equation' && pressure >= line.reducingKilopascals) return { ok: false, why: 'critical' };
  if (pressure <= 0) return { ok: false, why: 'low' };
  const wanted = Math.log(pressure);
  if (wanted < logarithm(line, LOWEST) - HAIR) return { ok: false, why: 'low' };
  if (wanted > logarithm(line, HIGHEST) + HAIR) return { ok: false, why: 'high' };
  return found(fahrenheitOf(line.kind === 'points' ? between(line, wanted) : search(line, wanted)));
}

const found = (value: number): Saturated => ({ ok: true, value: new Exact(value) });

/** ln of kPa at a temperature within the range. */
const logarithm = (line: Equation | Points, kelvin: number): number =>
  line.kind === 'equation' ? byEquation(line, kelvin) : byPoints(line, kelvin);

/** θ is above zero: the range ends below every Tr. */
function byEquation({ reducingKelvin, reducingKilopascals, terms }: Equation, kelvin: number): number {
  const theta = 1 - kelvin / reducingKelvin;
  const sum = terms.reduce((all, [n, t]) => all + n * theta ** t, 0);
  return Math.log(reducingKilopascals) + (reducingKelvin / kelvin) * sum;
}

interface Point {
  /** 1/T in 1/K, in which ln p is nearly a straight line. */
  readonly inverse: number;
  readonly ln: number;
}
const pointsOf = ({ kilopascals }: Points): Point[] =>
  kilopascals.map((pressure, i) => ({
    inverse: 1 / kelvinOf(LOWEST_FAHRENHEIT + i * STEP_FAHRENHEIT),
    ln: Math.log(pressure),
  }));

/** The point for which `reached` first holds, and the one before it. */
function around(line: Points, reached: (upper: Point) => boolean): [Point, Point] {
  const points = pointsOf(line);
  const upper = Math.max(1, points.findIndex(reached));
  const [a, b] = points.slice(upper - 1, upper + 1);
  if (!a || !b) throw new Error('a curve of fewer than two points');
  return [a, b];
}

function byPoints(line: Points, kelvin: number): number {
  const [a, b] = around(line, ({ inverse }) => inverse <= 1 / kelvin);
  return straight(1 / kelvin, a.inverse, b.inverse, a.ln, b.ln);
}

function between(line: Points, ln: number): number {
  const [a, b] = around(line, (upper) => upper.ln >= ln - HAIR);
  return 1 / straight(ln, a.ln, b.ln, a.inverse, b.inverse);
}

const straight = (x: number, x0: number, x1: number, y0: number, y1: number): number =>
  y0 + ((x - x0) / (x1 - x0)) * (y1 - y0);

/** Secant in 1/T: the curve is so nearly straight there that a handful of steps is enough. */
function search(line: Equation, wanted: number): number {
  const at = (inverse: number): Point => ({ inverse, ln: byEquation(line, 1 / inverse) });
  let [a, b] = [at(1 / LOWEST), at(1 / HIGHEST)];
  for (let i = 0; i < MOST_STEPS && Math.abs(b.ln - wanted) > CLOSE; i++)
    [a, b] = [b, at(straight(wanted, a.ln, b.ln, a.inverse, b.inverse))];
  return 1 / b.inverse;
}
const MOST_STEPS = 30;
const CLOSE = 1e-13;
