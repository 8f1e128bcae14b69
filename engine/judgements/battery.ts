import { Exact } from '../calc/exact.ts';
import type { Finding } from '../schema.ts';
import type { Limit } from './judgement.ts';
import { finding, say, sayRange } from './say.ts';

/** Volts of a battery, beside the range that it has to lie in. */
type Says = (shown: string, range: string) => string;

/** A battery read beside DC volts: within its range it proves the meter on DC. `word`: what one out of it is called. */
export function battery(
  name: string,
  read: Exact | null,
  limits: Readonly<Record<'batteryMin' | 'batteryMax', Limit>>,
  says: { readonly proved: Says; readonly out: Says; readonly word?: string },
): { readonly is: 'missing' | 'proved' | 'out'; readonly finding: Finding } {
  const range = { low: new Exact(limits.batteryMin.value), high: new Exact(limits.batteryMax.value) };
  const value = read?.abs() ?? null;
  const is = value === null ? 'missing' : value.gte(range.low) && value.lte(range.high) ? 'proved' : 'out';
  const reading = value ? say(value, 'V') : 'no reading';
  const band = sayRange(range, 'V', 2, 0);
  const text = is === 'missing' ? 'The battery was not read.' : says[is](reading, band);
  const word = is === 'out' ? (says.word ?? is) : is;
  return { is, finding: finding({ name, reading, limits: band, word, text, source: limits.batteryMin.source }) };
}
