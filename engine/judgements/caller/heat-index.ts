import { HEAT_CATEGORIES, type HeatCategory, heatCategory, heatIndexFahrenheit } from '../../calc/air/heat-index.ts';
import { Exact } from '../../calc/exact.ts';
import type { Parts } from '../../schema.ts';
import { judgement } from '../judgement.ts';
import { past, read, untaken } from '../probing.ts';
import { categoriesOf, feltHeat, HEAT_LIMITS, type HeatLimits } from './felt-heat.ts';

/**
 * The NWS category of the heat where people are: indoor °F (or outdoor, where that is all there is) and humidity %.
 * Without a humidity a common one is assumed, and said.
 */
export const heatIndex = judgement({
  id: 'heat-index',
  semantics: 1,
  takes: ['air'],
  limits: HEAT_LIMITS,
  outcomes: [...HEAT_CATEGORIES, 'undecided'],
  run({ air }, limits) {
    const felt = feltHeat(air, limits);
    return { outcome: felt.category ?? 'undecided', findings: [felt.finding] };
  },
  probe: (limits) => [
    ...probeHeat(limits).map(({ air }) => ({ air })),
    { air: { outdoor: read(96, '°F'), rh: read(65, '%') } },
    { air: { indoor: read(96, '°F') } },
    { air: { indoor: untaken, rh: read(65, '%') } },
    { air: { indoor: read(past(limits.hottest.value, '0.1'), '°F'), rh: read(65, '%') } },
    {},
  ],
});

/** Air at 50 % humidity on both sides of each category's beginning, by tenths of a degree. */
export function probeHeat(limits: HeatLimits): { air: Parts; category: HeatCategory }[] {
  const humidity = 50;
  const found: { air: Parts; category: HeatCategory }[] = [];
  let before: HeatCategory | null = null;
  for (let tenths = 700; tenths <= 1100; tenths++) {
    const fahrenheit = new Exact(tenths).div(10);
    const category = heatCategory(heatIndexFahrenheit(fahrenheit, humidity).toDecimalPlaces(1), categoriesOf(limits));
    const air = (at: Exact): Parts => ({ indoor: read(at, '°F'), rh: read(humidity, '%') });
    if (category !== before && before !== null) found.push({ air: air(fahrenheit.minus('0.1')), category: before });
    if (category !== before) found.push({ air: air(fahrenheit), category });
    before = category;
  }
  return found;
}
