/** Start capacitors and their gear: a worked walk-in call, the trade's table, physics beside it. */

import { energyJoules, peakVolts, secondsTo } from '../../engine/calc/discharge.ts';
import { windowMicrofarads, wordOf } from '../../engine/calc/doubt.ts';
import { Exact } from '../../engine/calc/exact.ts';
import { judgements } from '../../engine/judgements/index.ts';
import type { Judgement, Limit } from '../../engine/judgements/judgement.ts';
import type { Parts } from '../../engine/schema.ts';
import { LIMITS } from '../../flows/limits.ts';
import { FORCE, labelled, METER, parts } from '../judgements/fixture.ts';
import { type Check, checks } from './check.ts';
import { byMathjs } from './mathjs.ts';

const PRACTICE = { source: 'common practice, no single source', status: 'CP' as const };
const phys = (
  what: string,
  input: string,
  published: string,
  unit: string,
  ours: Check['ours'],
  more: Partial<Check> = {},
): Check => ({
  ...{ what, input, published, unit, ours, source: 'physics, arithmetic', status: 'PHYS' as const },
  ...more,
});
const ALL = {
  'start-capacitor': LIMITS.startCapacitor,
  'bleed-resistor': LIMITS.bleedResistor,
  'potential-relay': LIMITS.potentialRelay,
  'current-relay': LIMITS.currentRelay,
} as const;
const outcome = (id: keyof typeof ALL, given: Partial<Record<string, Parts>>) => (): string => {
  const j = judgements[id] as unknown as Judgement<string, string, string>;
  const limits = ALL[id] as Readonly<Record<string, Limit>>;
  return j.run(Object.fromEntries(j.takes.map((name) => [name, given[name]])), limits, FORCE).outcome;
};
const ohms = (of: Record<string, number | string>): Parts => parts('Ω', of);
/** ±(1.9 % + 2 counts) at 1 µF. */
const COARSE = { ...METER, fine: '1', coarse: '1' };
const RANGE = { low: new Exact(189), high: new Exact(227) };
const label = labelled('227', { below: '16.7401', above: '0', volts: '330', range: { low: '189', high: '227' } });
const read = (start: number, earlier?: number) =>
  outcome('start-capacitor', {
    ...{ label, readings: parts('µF', { start }) },
    ...(earlier === undefined ? {} : { earlier: parts('µF', { start: earlier }) }),
  });
const word = (reading: number): string => wordOf(reading, windowMicrofarads(COARSE, reading), RANGE);

checks('start gear', [
  phys('doubt, low end', '201 µF at 1 µF resolution', '195', 'µF', () => windowMicrofarads(COARSE, 201).low),
  phys('doubt, high end', '201 µF at 1 µF resolution', '207', 'µF', () => windowMicrofarads(COARSE, 201).high),
  phys('by its printed range 189–227', '201 µF', 'pass', '', () => word(201)),
  phys('by its printed range 189–227', '201 µF', 'pass', '', read(201), PRACTICE),
  phys('by its printed range 189–227', '189 µF', 'pass', '', read(189), PRACTICE),
  phys('by its printed range 189–227', '150 µF', 'low', '', read(150), PRACTICE),
  phys('by its printed range 189–227', '240 µF', 'repeat', '', read(240), PRACTICE),
  phys('by its printed range 189–227', '240 µF twice', 'high', '', read(240, 240), PRACTICE),
  phys('run capacitor of the set', '24.6 of 25 µF ±6 %', 'pass', '', () =>
    wordOf('24.6', windowMicrofarads(METER, '24.6'), { low: new Exact('23.5'), high: new Exact('26.5') }),
  ),
  phys('hold to 5 V at 20 kΩ', '227 µF 330 V', '20.6', 's', () => secondsTo(peakVolts(330), 5, 227, 20_000), {
    oracle: byMathjs('227e-6*20e3*log(sqrt(2)*330/5)'),
  }),
  phys('energy', '227 µF at 467 V', '24.7', 'J', () => energyJoules(227, peakVolts(330)), {
    oracle: byMathjs('227e-6*330^2'),
  }),
  phys('peak volts', '√2·330 V', '467', 'V', () => peakVolts(330), { oracle: byMathjs('sqrt(2)*330') }),
  phys(
    'through its bleed resistor to 5 V',
    '227 µF, 15 kΩ',
    '15.4',
    's',
    () => secondsTo(peakVolts(330), 5, 227, 15_000),
    { oracle: byMathjs('227e-6*15e3*log(sqrt(2)*330/5)') },
  ),
  phys(
    'bleed resistor alone',
    '15.0 kΩ',
    'good',
    '',
    outcome('bleed-resistor', { readings: ohms({ bleed: 15_000 }) }),
    PRACTICE,
  ),
  phys(
    'bleed resistor alone',
    'OL',
    'open',
    '',
    outcome('bleed-resistor', { readings: ohms({ bleed: 'OL' }) }),
    PRACTICE,
  ),
  phys(
    '15 kΩ across the capacitor is its resistor, not a leak',
    '15.0 kΩ',
    'one-end-off',
    '',
    outcome('bleed-resistor', { readings: ohms({ across: 15_000 }) }),
    PRACTICE,
  ),
  phys(
    'potential relay',
    '1–2 OL, 5–2 5.4 kΩ',
    'contacts-open',
    '',
    outcome('potential-relay', { readings: ohms({ contacts: 'OL', coil: 5_400 }) }),
    PRACTICE,
  ),
  phys(
    'potential relay',
    '1–2 0.2 Ω, 5–2 5.4 kΩ',
    'good',
    '',
    outcome('potential-relay', { readings: ohms({ contacts: 0.2, coil: 5_400 }) }),
    PRACTICE,
  ),
  phys(
    'potential relay',
    '1–2 0.2 Ω, 5–2 OL',
    'coil-open',
    '',
    outcome('potential-relay', { readings: ohms({ contacts: 0.2, coil: 'OL' }) }),
    PRACTICE,
  ),
  phys(
    'current relay judged as a potential relay',
    'contacts OL at rest',
    'contacts-closed',
    '',
    outcome('current-relay', { readings: ohms({ contacts: 'OL', coil: 0.5 }) }),
    { ...PRACTICE, wrong: true },
  ),
  phys(
    'current relay',
    'contacts closed at rest',
    'contacts-closed',
    '',
    outcome('current-relay', { readings: ohms({ contacts: 0.2, coil: 0.5 }) }),
    PRACTICE,
  ),
]);
