/** Readings for every outcome of the supply, and both sides of each limit. */
import { Exact, type Figure } from '../../calc/exact.ts';
import type { Parts } from '../../schema.ts';
import { chose, past, untaken, volts } from '../probing.ts';
import type { SupplyLimits } from './range.ts';

type Given = Partial<Record<'line' | 'plate' | 'machine', Parts>>;
type Line = Readonly<Record<string, Figure>>;
const STEP = '0.01';

export function probeSupply(limits: SupplyLimits): Given[] {
  const plate: Parts = { volts: chose('208/230') };
  const scroll: Parts = { choice: chose('scroll') };
  const legs = (of: Line) => volts({ l1l2: 240, l1g: 120, l2g: 120, ...of });
  const three = (of: Line) => volts({ l1l2: 230, l2l3: 230, l1l3: 230, ...of });
  const hot = (of: Line) => volts({ hn: 115, hg: 115, ng: 0, ...of });
  const { low, lowScroll, lowThree, high, present, neutral, sag, contacts, report, stop, singlePhase } = limits;
  const below = (limit: { value: string }): Exact => past(limit.value, `-${STEP}`);
  const above = (limit: { value: string }): Exact => past(limit.value, STEP);
  const sagged = new Exact(100).minus(sag.value).times('2.4');
  const rated = new Exact(100).minus(limits.ratedWithin.value).div(100);
  // Two lines of 230 and one below, by x: the mean falls by x/3, and the largest deviation is 2x/3.
  const apart = (percent: string): Exact =>
    new Exact(percent).times(690).div(new Exact(200).plus(percent)).toDecimalPlaces(2, Exact.ROUND_DOWN);
  const half = new Exact(230).times(singlePhase.value).div(100);
  const lines = [
    legs({}),
    ...[low, high, present].map(({ value }) => legs({ l1l2: value })),
    ...[low, present].map((limit) => legs({ l1l2: below(limit) })),
    legs({ l1l2: above(high) }),
    legs({ l1l2: 120, l2g: below(present) }),
    ...['l1g', 'l2g'].map((key) => legs({ [key]: below(present) })),
    legs({ l1l2: 0, l1g: present.value, l2g: present.value }),
    legs({ l1l2: 0, l1g: below(present), l2g: below(present) }),
    legs({ min: sagged }),
    legs({ min: sagged.minus(STEP) }),
    legs({ l1l2: low.value, min: low.value }),
    legs({ l1l2: low.value, min: below(low) }),
    legs({ min: 235, t1t2: past(235, 0).minus(contacts.value) }),
    legs({ min: 235, t1t2: past(235, STEP).minus(contacts.value) }),
    legs({ t1t2: sagged }),
    legs({ t1t2: sagged.minus(STEP) }),
    { ...legs({}), min: untaken },
    { ...legs({}), l1g: untaken },
    three({}),
    three({ l1g: 133, l2g: 133, l3g: 133 }),
    three({ l1g: 120, l2g: 120, l3g: 208 }),
    three({ l1g: 120, l2g: 120, l3g: 180 }),
    three({ l1g: 100, l2g: 120, l3g: 190 }),
    three({ l1l2: below(lowThree), l2l3: below(lowThree), l1l3: below(lowThree) }),
    three({ l1l2: lowThree.value, l2l3: lowThree.value, l1l3: lowThree.value }),
    ...[report, stop].flatMap(({ value }) => {
      const x = apart(value);
      return [three({ l1l3: new Exact(230).minus(x) }), three({ l1l3: new Exact(230).minus(x).minus(STEP) })];
    }),
    three({ l2l3: half, l1l3: half }),
    three({ l2l3: half.plus(STEP), l1l3: half.plus(STEP) }),
    three({ l2l3: half.plus(STEP), l1l3: half, l1g: 133, l2g: 133, l3g: 0 }),
    three({ l1l2: 0, l2l3: 0, l1l3: 0, l1g: 0, l2g: 0, l3g: 0 }),
    three({ l1l2: 0, l2l3: 0, l1l3: 0, l1g: 120, l2g: 120, l3g: 120 }),
    three({ min: 230, t1t2: 200 }),
    volts({ l1l2: 230, l2l3: 230 }),
  ].map((line): Given => ({ line, plate }));
  const low115 = rated.times(limits.rated115.value);
  return [
    ...lines,
    { line: legs({ l1l2: lowScroll.value }), plate, machine: scroll },
    { line: legs({ l1l2: below(lowScroll) }), plate, machine: scroll },
    { line: legs({ l1l2: rated.times(230) }), plate: { volts: chose('230') } },
    { line: legs({ l1l2: rated.times(230).minus(STEP) }), plate: { volts: chose('230') } },
    { line: hot({ hn: low115 }) },
    { line: hot({ hn: low115.minus(STEP) }) },
    { line: hot({ ng: neutral.value }) },
    { line: hot({ ng: above(neutral) }) },
    { line: hot({ hg: below(present) }) },
    { line: hot({ hn: 0 }) },
    { line: hot({ hn: 0, hg: 0 }) },
    { line: legs({}) },
    { line: three({ l1l2: 460, l2l3: 460, l1l3: 460 }) },
    {},
  ];
}
