/** Proving a meter on a known AC source: enough volts, and close to what that source should read. */
import { Exact, within } from '../calc/exact.ts';
import { ratedRangeVolts } from '../calc/supply.ts';
import type { Finding, Parts } from '../schema.ts';
import type { Limit } from './judgement.ts';
import { chosenOf, figureOf } from './read.ts';
import { finding, say, sayRange } from './say.ts';

const STATED = ['outlet', 'line208', 'line230', 'line240', 'unit120', 'unit240'] as const;
export const PROVING_LIMITS = ['sourceMin', 'sourceWithin', ...STATED] as const;
export type ProvingLimits = Readonly<Record<(typeof PROVING_LIMITS)[number], Limit>>;

export interface Proving {
  readonly is: 'good' | 'bad' | 'missing';
  readonly finding: Finding;
}

/** What the chosen source should read, in V; null where that is not known. */
function statedVolts(means: Parts | undefined, limits: ProvingLimits): Exact | null {
  const chosen = chosenOf(means, 'source')[0];
  const named = STATED.find((s) => s === chosen);
  if (named) return new Exact(limits[named].value);
  return chosen === 'other' ? (figureOf(means, 'stated', 'V')?.abs() ?? null) : null;
}

/** Judges one reading of the known source. On a limit is good. `name` is the finding's: before or after. */
export function prove(
  name: string,
  line: Parts | undefined,
  key: 'before' | 'after',
  means: Parts | undefined,
  limits: ProvingLimits,
): Proving {
  const reading = figureOf(line, key, 'V')?.abs() ?? null;
  const stated = statedVolts(means, limits);
  if (reading === null || stated === null) {
    const what = reading === null ? 'no reading' : say(reading, 'V');
    const text = reading === null ? 'The known source was not read.' : 'Nobody said what the known source should read.';
    return { is: 'missing', finding: finding({ name, reading: what, word: 'missing', text }) };
  }
  const range = ratedRangeVolts(stated, limits.sourceWithin.value);
  const least = say(limits.sourceMin.value, 'V');
  const enough = reading.gte(limits.sourceMin.value);
  const good = enough && within(reading, range);
  const why = enough
    ? `The source should read ${sayRange(range, 'V', 2, 0)}.`
    : `A known source reads at least ${least}.`;
  return {
    is: good ? 'good' : 'bad',
    finding: finding({
      name,
      reading: say(reading, 'V'),
      limits: `at least ${least}, ${sayRange(range, 'V', 2, 0)}`,
      word: good ? 'proved' : 'not proved',
      text: good
        ? `The meter read the known source at ${say(reading, 'V')}.`
        : `${say(reading, 'V')} does not prove the meter. ${why}`,
      source: enough ? limits.sourceWithin.source : limits.sourceMin.source,
    }),
  };
}
