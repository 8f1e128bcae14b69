/** The heat index of what was read, as category and as words. */

import {
  type HeatCategories,
  type HeatCategory,
  heatCategory,
  heatIndexFahrenheit,
} from '../../calc/air/heat-index.ts';
import { Exact, within } from '../../calc/exact.ts';
import type { Finding, Parts } from '../../schema.ts';
import type { Limit } from '../judgement.ts';
import { figureOf } from '../read.ts';
import { finding, say, sayRange } from '../say.ts';

export const HEAT_LIMITS = [
  'caution',
  'extremeCaution',
  'danger',
  'extremeDanger',
  'assumedHumidity',
  'coldest',
  'hottest',
] as const;
export type HeatLimits = Readonly<Record<(typeof HEAT_LIMITS)[number], Limit>>;

/** `category` is null where nobody read a temperature, or none that people live in. */
export interface FeltHeat {
  readonly category: HeatCategory | null;
  readonly finding: Finding;
}

const WORDS: Readonly<Record<HeatCategory, string>> = {
  none: 'no heat category',
  caution: 'caution',
  'extreme-caution': 'extreme caution',
  danger: 'danger',
  'extreme-danger': 'extreme danger',
};

export const categoriesOf = (limits: HeatLimits): HeatCategories => ({
  caution: limits.caution.value,
  extremeCaution: limits.extremeCaution.value,
  danger: limits.danger.value,
  extremeDanger: limits.extremeDanger.value,
});

export function feltHeat(air: Parts | undefined, limits: HeatLimits): FeltHeat {
  const indoor = figureOf(air, 'indoor', '°F');
  const fahrenheit = indoor ?? figureOf(air, 'outdoor', '°F');
  if (fahrenheit === null) return open('no reading', 'No temperature was read where the people are.');
  const lived = { low: new Exact(limits.coldest.value), high: new Exact(limits.hottest.value) };
  if (!within(fahrenheit, lived))
    return open(
      say(fahrenheit, '°F'),
      `${say(fahrenheit, '°F')} is outside ${sayRange(lived, '°F', 1, 0)}. Read it again.`,
    );
  const read = figureOf(air, 'rh', '%');
  if (read !== null && (read.lt(0) || read.gt(100)))
    return open(say(read, '%'), `${say(read, '%')} is no relative humidity.`);
  const humidity = read ?? new Exact(limits.assumedHumidity.value);
  const index = heatIndexFahrenheit(fahrenheit, humidity).toDecimalPlaces(1);
  const category = heatCategory(index, categoriesOf(limits));
  const where = indoor ? 'Indoors' : 'Outdoors';
  const said = `${where} ${say(fahrenheit, '°F')} at ${say(humidity, '%')} feels like ${say(index, '°F')}: ${WORDS[category]}.`;
  const assumed = read === null ? ' The humidity was not read, so this one is assumed.' : '';
  const begins = Object.values(categoriesOf(limits)).join(', ');
  return {
    category,
    finding: finding({
      name: 'Heat index',
      reading: say(index, '°F'),
      limits: `categories from ${begins}\u2009°F`,
      word: WORDS[category],
      text: `${said}${assumed}`,
      source: limits.caution.source,
    }),
  };
}

const open = (reading: string, text: string): FeltHeat => ({
  category: null,
  finding: finding({ name: 'Heat index', reading, word: 'not judged', text }),
});
