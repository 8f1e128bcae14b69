/** A superheat or subcooling against its target: the shape that both judgements share. */
import { Exact, type Range } from '../../calc/exact.ts';
import type { Refrigerant } from '../../calc/refrigerant/refrigerants.ts';
import type { Finding } from '../../schema.ts';
import type { Judged, Limit } from '../judgement.ts';
import { finding, say, sayRange } from '../say.ts';
import { ignitionWarning, type Saturation } from './refrigerant.ts';

export const LINE_OUTCOMES = ['low', 'normal', 'high', 'undecided'] as const;
type Outcome = (typeof LINE_OUTCOMES)[number];

/** What it should be and where that comes from, or why nobody knows. */
export type Target =
  | { readonly range: Range; readonly source: string }
  | { readonly range: null; readonly text: string };

export const around = (target: Exact, within: Limit): Range => ({
  low: target.minus(within.value),
  high: target.plus(within.value),
});

export interface Read {
  readonly name: 'Superheat' | 'Subcooling';
  readonly refrigerant: Refrigerant | null;
  readonly saturation: Saturation;
  readonly line: { readonly fahrenheit: Exact | null; readonly missing: string };
  readonly difference: (saturationFahrenheit: Exact, lineFahrenheit: Exact) => Exact;
  readonly target: Target;
  /** So far on the wrong side of its saturation that a reading has to be wrong. */
  readonly impossible: Limit;
}

export function judgeLine(read: Read): Judged<Outcome> {
  const { saturation, line } = read;
  const said = (judged: Pick<Finding, 'reading' | 'word' | 'text'> & Partial<Finding>): Finding =>
    finding({ ...judged, name: read.refrigerant ? `${read.name}, ${read.refrigerant}` : read.name });
  const of = (outcome: Outcome, judged: Finding): Judged<Outcome> => ({
    outcome,
    findings: [...ignitionWarning(read.refrigerant), judged],
  });
  if (saturation.is === 'open')
    return of('undecided', said({ reading: 'no reading', word: 'not judged', text: saturation.text }));
  if (line.fahrenheit === null)
    return of('undecided', said({ reading: 'no reading', word: 'not judged', text: line.missing }));
  const value = read.difference(saturation.fahrenheit, line.fahrenheit);
  const plainly = `Saturation is ${say(saturation.fahrenheit, '°F')}, the line ${say(line.fahrenheit, '°F')}: ${say(value, '°F')}.`;
  const common = { reading: say(value, '°F'), doubt: saturation.doubt };
  if (value.lt(new Exact(read.impossible.value).neg())) {
    const text = `${plainly} That cannot be in a line that holds what it should: read pressure, refrigerant and clamp again.`;
    return of('undecided', said({ ...common, word: 'not judged', text, source: saturation.source }));
  }
  const { target } = read;
  if (target.range === null) {
    const text = `${plainly} ${target.text}`;
    return of('undecided', said({ ...common, word: 'not judged', text, source: saturation.source }));
  }
  const outcome = value.lt(target.range.low) ? 'low' : value.gt(target.range.high) ? 'high' : 'normal';
  const limits = sayRange(target.range, '°F', 2, 0);
  const text = `${plainly} It should be ${limits}.`;
  const source = `${target.source}; saturation: ${saturation.source}`;
  return of(outcome, said({ ...common, limits, word: outcome, text, source }));
}
