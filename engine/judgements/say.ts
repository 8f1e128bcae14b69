/** How a figure and a finding are written. Numbers carry their unit after a thin space, a minus is a minus sign. */
import { Exact, type Figure, type Range } from '../calc/exact.ts';
import type { Finding } from '../schema.ts';

const THIN = '\u2009';
const MINUS = '\u2212';

/** A figure without trailing zeros, at most `digits` decimals; with `least`, at least that many. */
export function digits(value: Figure, most: number, least = 0): string {
  const rounded = new Exact(value).toDecimalPlaces(most, Exact.ROUND_HALF_EVEN);
  const text = (rounded.isZero() ? new Exact(0) : rounded).toFixed(Math.max(least, rounded.decimalPlaces()));
  return text.replace('-', MINUS);
}
/** A figure and its unit. Readings are written as they were kept, so the default is the most that is ever kept. */
export const say = (value: Figure, unit: string, most = 4, least = 0): string =>
  `${digits(value, most, least)}${THIN}${unit}`;

/** Minutes that have gone by, never more than have: 4 min 59 s are not the five that a limit asks for. */
export const sayGone = (minutes: Exact): string => say(minutes.toDecimalPlaces(1, Exact.ROUND_DOWN), 'min', 1);

export const sayRange = (range: Range, unit: string, most = 4, least = 2): string =>
  `${digits(range.low, most, least)}\u2013${digits(range.high, most, least)}${THIN}${unit}`;
/** With its sign, for deviations: +0.8 %, −19.8 %. */
export function saySigned(value: Figure, unit: string, most: number, least = most): string {
  const text = say(value, unit, most, least);
  return text.startsWith(MINUS) || new Exact(value).toDecimalPlaces(most).isZero() ? text : `+${text}`;
}
/** A share 0…1 as whole percent. 0 and 100 are said only where they are meant. */
export function sayShare(share: Exact): string {
  if (share.gt(0) && share.lt('0.01')) return `under ${say(1, '%')}`;
  if (share.lt(1) && share.gt('0.99')) return `over ${say(99, '%')}`;
  return say(share.times(100), '%', 0);
}
export const finding = (of: Pick<Finding, 'name' | 'reading' | 'word' | 'text'> & Partial<Finding>): Finding => ({
  limits: null,
  doubt: null,
  source: null,
  ...of,
});
