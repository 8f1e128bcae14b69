import { Exact, type Figure } from '../../calc/exact.ts';
import { digits, say } from '../say.ts';

/** Decimals that are added before a figure is given up: the finest step of anything that is kept is far coarser. */
const MORE = 6;

/** How many decimals show that a figure lies beside its limits: `least`, or more where rounding would put it on one. */
function placesBeside(value: Exact, limits: readonly Figure[], least: number): number {
  const lies = (places: number): boolean => {
    const rounded = value.toDecimalPlaces(places, Exact.ROUND_HALF_EVEN);
    return limits.every((limit) => value.eq(limit) || !rounded.eq(limit));
  };
  return Array.from({ length: MORE }, (_, more) => least + more).find(lies) ?? least + MORE;
}

/** A computed figure and its unit, never rounded onto a limit that it misses. */
export const sayBeside = (value: Exact, limits: readonly Figure[], unit: string, least: number): string =>
  say(value, unit, placesBeside(value, limits, least));
/** The same without a unit, for ratios. */
export const digitsBeside = (value: Exact, limits: readonly Figure[], least: number): string =>
  digits(value, placesBeside(value, limits, least));
