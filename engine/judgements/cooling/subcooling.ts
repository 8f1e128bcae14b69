import { Exact, type Range } from '../../calc/exact.ts';
import { subcooling as subcoolingOf } from '../../calc/refrigerant/superheat.ts';
import type { Parts } from '../../schema.ts';
import { judgement, type Limit } from '../judgement.ts';
import { chose, read, untaken } from '../probing.ts';
import { figureOf } from '../read.ts';
import { around, judgeLine, LINE_OUTCOMES } from './line-target.ts';
import { refrigerantOf, saturationOf } from './refrigerant.ts';

const LIMITS = ['within', 'low', 'high', 'impossible'] as const;
type SubcoolingLimits = Readonly<Record<(typeof LIMITS)[number], Limit>>;

/**
 * Subcooling against its target. Takes `refrigerant`, liquid psig (or the saturation °F that the gauge shows) and line
 * °F, and the label's target where there is one; else the common range.
 */
export const subcooling = judgement({
  id: 'subcooling',
  semantics: 1,
  takes: ['refrigerant', 'readings', 'target'],
  limits: LIMITS,
  outcomes: LINE_OUTCOMES,
  run({ refrigerant, readings, target }, limits) {
    const name = refrigerantOf(refrigerant);
    return judgeLine({
      name: 'Subcooling',
      refrigerant: name,
      saturation: saturationOf(readings, name, 'liquid'),
      line: { fahrenheit: figureOf(readings, 'line', '°F'), missing: 'The liquid line’s temperature was not read.' },
      difference: subcoolingOf,
      target: subcoolingTarget(target, limits),
      impossible: limits.impossible,
    });
  },
  probe: (limits) => probeReadings(limits),
});

/** What it should be: the label’s figure, else the common range. */
export function subcoolingTarget(
  target: Parts | undefined,
  limits: Pick<SubcoolingLimits, 'within' | 'low' | 'high'>,
): { readonly range: Range; readonly source: string } {
  const label = figureOf(target, 'target', 'Δ°F');
  if (label !== null) return { range: around(label, limits.within), source: 'the equipment’s label' };
  return {
    range: { low: new Exact(limits.low.value), high: new Exact(limits.high.value) },
    source: limits.low.source,
  };
}

function probeReadings(limits: SubcoolingLimits): Partial<Record<'refrigerant' | 'readings' | 'target', Parts>>[] {
  const saturation = 105;
  const at = (subcooling: Exact): Parts => ({
    saturation: read(saturation, '°F'),
    line: read(new Exact(saturation).minus(subcooling), '°F'),
  });
  const label: Parts = { target: read(10, 'Δ°F') };
  const both = (low: Exact, high: Exact, more: { target?: Parts }) =>
    [low, low.minus('0.1'), high, high.plus('0.1')].map((value) => ({ readings: at(value), ...more }));
  const { low, high } = around(new Exact(10), limits.within);
  const gauge: Parts = { liquid: read(340, 'psig'), line: read(95, '°F') };
  return [
    ...both(low, high, { target: label }),
    ...both(new Exact(limits.low.value), new Exact(limits.high.value), {}),
    { readings: at(new Exact(limits.impossible.value).neg()), target: label },
    { readings: at(new Exact(limits.impossible.value).neg().minus('0.1')), target: label },
    { refrigerant: { refrigerant: chose('r-410a') }, readings: gauge },
    { refrigerant: { refrigerant: chose('r-290') }, readings: { ...gauge, liquid: read(200, 'psig') } },
    { refrigerant: { refrigerant: chose('r-410a') }, readings: { ...gauge, line: untaken } },
    { refrigerant: { refrigerant: chose('r-410a') }, readings: { ...gauge, liquid: read(-14.7, 'psig') } },
    { readings: gauge },
    {},
  ];
}
