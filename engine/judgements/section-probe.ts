/**
 * Answers for every outcome of the section values and both sides of each limit. One label throughout, so that any of
 * these lines may follow any other. Its sections are large enough to decide on the assumed meter too.
 */
import { Exact } from '../calc/exact.ts';
import { seriesMicrofarads } from '../calc/series.ts';
import type { Parts } from '../schema.ts';
import { chose, over, past, print, read, reads, untaken } from './probing.ts';
import type { SECTION_TAKES, SectionLimits } from './section-look.ts';

const HERM = '60';
const FAN = '30';
const label = print({ herm: HERM, fan: FAN });
const single = print({ herm: HERM, fan: null });
const hf = seriesMicrofarads(HERM, FAN);
const yes: Parts = { ok: chose('yes') };

export function probeSections({
  openShare,
  habit,
}: SectionLimits): readonly Partial<Record<(typeof SECTION_TAKES)[number], Parts>>[] {
  const both = (herm: Exact | string, fan: Exact | string): Parts => reads({ herm, fan }, 'µF');
  const three = (herm: Exact | string, fan: Exact | string, hf: Exact | string): Parts =>
    reads({ herm, fan, hf }, 'µF');
  const [low, high] = ['56.4', '63.6'];
  const below = past(low, '-0.0001');
  const open = new Exact(FAN).times(openShare.value).div(100);
  const offHabit = new Exact(HERM).times(new Exact(100).minus(habit.value)).div(100);
  const series = hf.toFixed(1);
  const good = both('60.1', '30.1');
  const overRange: Parts = { herm: over, ...reads({ fan: '30.1' }, 'µF') };
  const readings = [
    good,
    three('60.1', '30.1', series),
    three('60.1', '30.1', '30.1'),
    both(low, '30.1'),
    both(below, '30.1'),
    both(high, '30.1'),
    both(past(high, '0.0001'), '30.1'),
    both(offHabit, '30.1'),
    both(past(offHabit, '-0.0001'), '30.1'),
    both('40', '30.1'),
    both('80', '30.1'),
    both('60.1', '24'),
    both('60.1', series),
    both('30.1', '60.1'),
    both('50', '26.5'),
    both('60.1', open),
    both('60.1', past(open, '-0.0001')),
    both('0', '30.1'),
    both(HERM, FAN),
    overRange,
    { ...both('60.1', '30.1'), hf: over },
  ].map((readings) => ({ label, readings }));
  const inBand = both('60.1', series);
  return [
    ...readings,
    { label, readings: both('60.1', past(open, '-0.0001')), wires: yes },
    { label, readings: both('60.1', open), wires: yes },
    { label, readings: overRange, wires: yes },
    { label, readings: overRange, before: overRange, wires: yes },
    { label, readings: both('50', '26.5'), wires: yes },
    { label, readings: both('40', '20'), wires: yes, before: both('40', '20') },
    { label, readings: both(HERM, FAN), exact: yes },
    { label, readings: inBand, third: reads({ fan: '30.1', hf: series }, 'µF') },
    { label, readings: inBand, third: reads({ fan: series, hf: '15' }, 'µF') },
    { label, readings: inBand, third: reads({ fan: series, hf: series }, 'µF') },
    { label, readings: inBand, third: {} },
    { label, readings: both('40', series), third: { fan: untaken, hf: untaken } },
    { label, readings: good, tabs: reads({ t1: 4, t2: 3, t3: 1 }, 'count') },
    { label, readings: both(below, '30.1'), before: both(below, '30.1') },
    { label, readings: good, before: both(below, '30.1') },
    { label, readings: { ...reads({ herm: below }, 'µF'), fan: untaken }, before: both(below, '30.1') },
    { label, readings: both('80', '30.1'), before: both('80', '30.1') },
    { label, readings: both('30.1', '60.1'), before: both('30.1', '60.1') },
    { label, readings: three('60.1', '30.1', '30.1'), before: three('60.1', '30.1', '30.1') },
    { label: single, readings: reads({ herm: '60.1' }, 'µF') },
    { label: single, readings: reads({ herm: '40' }, 'µF') },
    { label, readings: { herm: untaken, fan: read('30.1', 'µF') } },
    { readings: good },
    {},
  ];
}
