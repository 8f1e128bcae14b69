/**
 * Decimals for the trade's arithmetic. Limits are exact (45 µF less 6 % is 42.3 µF, not nearly), so the precision is
 * far above what any print or meter shows: products of two figures of 25 digits are exact.
 */
import { Decimal } from 'decimal.js';

export const Exact = Decimal.clone({ precision: 50, rounding: Decimal.ROUND_HALF_EVEN });
export type Exact = Decimal;
export type Figure = Decimal.Value;

/** A closed range; both ends belong to it. */
export interface Range {
  readonly low: Exact;
  readonly high: Exact;
}
export const within = (value: Exact, range: Range): boolean => value.gte(range.low) && value.lte(range.high);
export const overlap = (a: Range, b: Range): boolean => a.low.lte(b.high) && b.low.lte(a.high);
