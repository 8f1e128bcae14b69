/**
 * The normal model of a measurement, for comparison only: the product's own verdicts take the doubt as rectangular.
 * Source: JCGM 106:2012 §7 (conformance probability), ILAC-G8:09/2019 and ISO 14253-1 (guard bands).
 */
import { Exact, type Figure } from './exact.ts';

/** Below this a term of the series no longer counts: 45 digits, where the working precision is 50. */
const SMALLEST = new Exact('1e-45');
/** From here 1 − erf is below 1e−63. */
const FAR = 12;

/** erf(x) = 2/√π·e^(−x²)·Σ 2ⁿ·x^(2n+1)/(2n+1)!!. All terms have one sign, so nothing cancels. */
export function erf(x: Figure): Exact {
  const at = new Exact(x);
  if (at.abs().gt(FAR)) return new Exact(at.isNegative() ? -1 : 1);
  const twoSquares = at.pow(2).times(2);
  let term = at;
  let sum = at;
  for (let odd = 3; term.abs().gt(SMALLEST); odd += 2) {
    term = term.times(twoSquares).div(odd);
    sum = sum.plus(term);
  }
  return sum.times(2).div(Exact.acos(-1).sqrt()).times(at.pow(2).neg().exp());
}

/** Φ(z): the share of a standard normal distribution below z. */
export const normalCdf = (z: Figure): Exact =>
  erf(new Exact(z).div(new Exact(2).sqrt()))
    .plus(1)
    .div(2);

/** z with Φ(z) = p, by Newton's steps; p between 0.0001 and 0.9999, else it throws. */
export function normalQuantile(p: Figure): Exact {
  const share = new Exact(p);
  if (share.lt('0.0001') || share.gt('0.9999')) throw new Error('share out of range');
  let z = new Exact(0);
  for (let step = 0; step < 40; step++) {
    const density = z.pow(2).div(-2).exp().div(Exact.acos(-1).times(2).sqrt());
    const move = share.minus(normalCdf(z)).div(density);
    // A whole step from far off overshoots the flat ends of the curve.
    z = z.plus(Exact.max(-1, Exact.min(1, move)));
    if (move.abs().lt('1e-30')) break;
  }
  return z;
}

/** Standard uncertainty of a specification ±a without a distribution: a/√3. GUM 4.3.7. */
export const standardUncertainty = (halfWidth: Figure): Exact => new Exact(halfWidth).div(new Exact(3).sqrt());

/** Either end may be missing: a one-sided tolerance. */
export interface Tolerance {
  readonly low?: Figure;
  readonly high?: Figure;
}

/** pc = Φ((TU − y)/u) − Φ((TL − y)/u); u above zero. A one-sided tolerance drops its term. */
export function conformance(reading: Figure, uncertainty: Figure, { low, high }: Tolerance): Exact {
  const below = (limit: Figure): Exact => normalCdf(new Exact(limit).minus(reading).div(uncertainty));
  return (high === undefined ? new Exact(1) : below(high)).minus(low === undefined ? 0 : below(low));
}

/** The most that is accepted wrongly at a limit with a guard band of r·U, U = k·u: Φ(−r·k). */
export const falseAccept = (guardTimes: Figure, coverage: Figure = 2): Exact =>
  normalCdf(new Exact(guardTimes).times(coverage).neg());

/** With a guard band of k·u on both sides of each limit: inside by it, outside by it, or neither. */
export function guardedWord(
  reading: Figure,
  uncertainty: Figure,
  { low, high }: Tolerance,
  coverage: Figure = 2,
): 'pass' | 'fail' | 'undecided' {
  const guard = new Exact(uncertainty).times(coverage);
  const [least, most] = [new Exact(reading).minus(guard), new Exact(reading).plus(guard)];
  if ((low !== undefined && most.lt(low)) || (high !== undefined && least.gt(high))) return 'fail';
  return (low === undefined || least.gte(low)) && (high === undefined || most.lte(high)) ? 'pass' : 'undecided';
}
