/** Answers for every outcome of the insulation, and both sides of each limit. */
import type { Exact } from '../../calc/exact.ts';
import type { Parts } from '../../schema.ts';
import type { Limit } from '../judgement.ts';
import { chose, over, past, reads, untaken } from '../probing.ts';
import type { InsulationLimits } from './insulation-rule.ts';

export function probeInsulation(
  limits: InsulationLimits,
): Partial<
  Record<'state' | 'test' | 'temperature' | 'machine' | 'maker' | 'reading' | 'earlier' | 'earlierTest', Parts>
>[] {
  const of = (option: string): Parts => ({ choice: chose(option) });
  const at = (value: string | Exact): Parts => reads({ megohms: value }, 'MΩ');
  const base = { state: of('none'), test: of(limits.testVolts.value) };
  const under = (limit: Limit): Parts => at(past(limit.value, '-0.01'));
  const kinds = (['scroll', 'reciprocating', 'motor'] as const).flatMap((kind) => [
    { ...base, machine: of(kind), reading: at(limits[kind].value) },
    { ...base, machine: of(kind), reading: under(limits[kind]) },
  ]);
  const maker = reads({ maker: 5 }, 'MΩ');
  const low = { ...base, machine: of('scroll'), reading: under(limits.scroll) };
  return [
    base,
    ...kinds,
    { ...base, reading: at(limits.scroll.value) },
    { ...base, reading: under(limits.scroll) },
    { ...base, reading: at(limits.reciprocating.value) },
    { ...base, reading: under(limits.reciprocating) },
    { ...base, maker, reading: at('5') },
    { ...base, maker, reading: at('4.99') },
    ...[limits.good, limits.fair, limits.watch].flatMap((border) => [
      { ...base, reading: at(border.value) },
      { ...base, reading: under(border) },
      { ...base, reading: at(past(border.value, '0.01')) },
    ]),
    ...['104', '104.1', '77', '300', '300.1', '-60', '-60.1'].map((f) => ({
      ...base,
      machine: of('motor'),
      reading: at(limits.at40.value),
      temperature: reads({ winding: f }, '°F'),
    })),
    { ...base, machine: of('scroll'), reading: at('5'), temperature: reads({ winding: 77 }, '°F') },
    { ...base, reading: { megohms: over } },
    { ...low, earlier: low.reading },
    { ...low, state: of('cold'), earlier: low.reading },
    { ...low, state: of('heater'), earlier: low.reading },
    { ...low, earlier: { megohms: over } },
    { ...base, reading: at('100'), earlier: at('0.1'), earlierTest: of('meter') },
    { ...base, reading: at('100'), earlier: at('0.1'), earlierTest: base.test },
    { ...base, test: of('meter'), reading: at(limits.reciprocating.value) },
    { ...base, test: of(past(limits.testVolts.value, 1).toFixed()), reading: at('100') },
    { ...base, state: of('vacuum') },
    { ...base, state: of('electronics') },
    { ...base, state: of('cant') },
    { ...base, reading: { megohms: untaken } },
    {},
  ];
}
