/** Residual DC on a dual part: the three pairs are one loop, so they have to agree. Source: Kirchhoff. */
import { Exact, type Figure } from './exact.ts';

/**
 * Whether HERM–FAN is the difference of HERM–C and FAN–C within a tolerance, all in V DC. People often leave the sign
 * off, so the bare sizes may fit instead.
 */
export function residualsAgree(hermC: Figure, fanC: Figure, hermFan: Figure, toleranceVolts: Figure): boolean {
  const [hc, fc] = [new Exact(hermC), new Exact(fanC)];
  const size = new Exact(hermFan).abs();
  const fits = (expected: Exact): boolean => size.minus(expected.abs()).abs().lte(toleranceVolts);
  return fits(hc.minus(fc)) || fits(hc.abs().minus(fc.abs()));
}
