/** The 24 V circuit against published figures and the trade's bands; mathjs beside the arithmetic. */
import { ampsOf, impedanceOhms, isClassTwo, secondaryVolts, shareVolts } from '../../engine/calc/control-circuit.ts';
import { judgements } from '../../engine/judgements/index.ts';
import type { Judgement, Limit } from '../../engine/judgements/judgement.ts';
import type { Parts } from '../../engine/schema.ts';
import { LIMITS } from '../../flows/limits.ts';
import { choice, FORCE, parts, yes } from '../judgements/fixture.ts';
import { type Check, checks } from './check.ts';
import { byMathjs } from './mathjs.ts';

const NEC = 'NEC 725 and chapter 9 table 11, in a trade journal and a controls maker’s manual (secondary source)';
const PICKUP = 'IEC 60947-4-1, value from memory';
const VA = 'a parts page: 7.3 VA sealed, 27 VA inrush at 24 V (secondary source)';
const PRACTICE = { source: 'common practice, no single source', status: 'CP' as const };
const phys = (
  what: string,
  input: string,
  published: string,
  unit: string,
  ours: Check['ours'],
  more: Partial<Check> = {},
): Check => ({
  ...{ what, input, published, unit, ours, source: 'arithmetic', status: 'PHYS' as const },
  ...more,
});

const ALL = {
  fuses: LIMITS.fuses,
  contactor: LIMITS.contactor,
  'coil-volts': LIMITS.coilVolts,
  hop: LIMITS.hop,
  transformer: LIMITS.transformer,
} as const;
/** The outcome with the manual's own limits. */
const outcome = (id: keyof typeof ALL, given: Partial<Record<string, Parts>>) => (): string => {
  const j = judgements[id] as unknown as Judgement<string, string, string>;
  const limits = ALL[id] as Readonly<Record<string, Limit>>;
  return j.run(Object.fromEntries(j.takes.map((name) => [name, given[name]])), limits, FORCE).outcome;
};
const volts = (of: Record<string, number>): Parts => parts('V', of);
const ohms = (of: Record<string, number | string>): Parts => parts('Ω', of);

checks('control: figures', [
  phys('class 2, amps', '100 VA at 24 V', '4.1667', 'A', () => ampsOf(100, 24), { oracle: byMathjs('100/24') }),
  phys('transformer, amps', '40 VA at 24 V', '1.6667', 'A', () => ampsOf(40, 24), { oracle: byMathjs('40/24') }),
  phys('transformer, amps', '75 VA at 24 V', '3.125', 'A', () => ampsOf(75, 24), { oracle: byMathjs('75/24') }),
  phys('class 2', '24 V, 40 VA', 'yes', '', () => (isClassTwo(24, 40) ? 'yes' : 'no'), { source: NEC, status: 'V2' }),
  phys('class 2', '30 V, 100 VA', 'yes', '', () => (isClassTwo(30, 100) ? 'yes' : 'no'), { source: NEC, status: 'V2' }),
  phys('class 2', '24 V, 150 VA', 'no', '', () => (isClassTwo(24, 150) ? 'yes' : 'no'), { source: NEC, status: 'V2' }),
  phys('class 2', '120 V, 40 VA', 'no', '', () => (isClassTwo(120, 40) ? 'yes' : 'no'), { source: NEC, status: 'V2' }),
  phys('pull-in, lowest', '85 % of 24 V', '20.4', 'V', () => shareVolts(24, 85, 110).low, {
    oracle: byMathjs('24*0.85'),
  }),
  phys('pull-in, highest', '110 % of 24 V', '26.4', 'V', () => shareVolts(24, 85, 110).high, {
    oracle: byMathjs('24*1.1'),
  }),
  phys('pull-in 85 to 110 %', '24 V', '20.4', 'V', () => shareVolts(24, 85, 110).low, { source: PICKUP, status: 'M' }),
  phys('pull-in 85 to 110 %', '24 V', '26.4', 'V', () => shareVolts(24, 85, 110).high, { source: PICKUP, status: 'M' }),
  phys('drop-out, highest', '75 % of 24 V', '18.0', 'V', () => shareVolts(24, 20, 75).high, {
    source: PICKUP,
    status: 'M',
  }),
  phys('drop-out, lowest', '20 % of 24 V', '4.8', 'V', () => shareVolts(24, 20, 75).low, {
    source: PICKUP,
    status: 'M',
  }),
  phys('coil, sealed', '7.3 VA at 24 V', '0.304167', 'A', () => ampsOf('7.3', 24), {
    source: VA,
    status: 'V2',
    oracle: byMathjs('7.3/24'),
  }),
  phys('coil, |Z| sealed', '7.3 VA at 24 V', '78.904', 'Ω', () => impedanceOhms('7.3', 24), {
    source: VA,
    status: 'V2',
    oracle: byMathjs('24^2/7.3'),
  }),
  phys('coil, inrush', '27 VA at 24 V', '1.125', 'A', () => ampsOf(27, 24), {
    source: VA,
    status: 'V2',
    oracle: byMathjs('27/24'),
  }),
  // An AC coil is inductive: 24 V over its DC ohms is no current of it.
  phys('coil, sealed, from its DC ohms', '24 V over 12.6 Ω', '1.90', 'A', () => ampsOf('7.3', 24), {
    source: 'a usual slip',
    wrong: true,
  }),
  phys('240 tap on 208, of its volts', 'share', '0.867', '', () => secondaryVolts(1, 240, 208), {
    oracle: byMathjs('208/240'),
  }),
  phys('240 tap on 208, secondary', '24 V', '20.8', 'V', () => secondaryVolts(24, 240, 208), {
    oracle: byMathjs('24*208/240'),
  }),
  phys('208 tap on 240, secondary', '24 V', '27.69', 'V', () => secondaryVolts(24, 208, 240), {
    oracle: byMathjs('24*240/208'),
  }),
]);

const dead = { pole1: 0.1, pole2: 0.1 };
const hopped = { start: 25.6, delay: 25.6, lp: 25.6, hp: 0, coil: 0 };
checks('control: words', [
  phys(
    'fuse out of its holder',
    '0.1 and 0.2 Ω',
    'good',
    '',
    outcome('fuses', { readings: ohms({ fuse1: 0.1, fuse2: 0.2 }) }),
    PRACTICE,
  ),
  phys(
    'fuse out of its holder',
    'OL',
    'blown',
    '',
    outcome('fuses', { readings: ohms({ fuse1: 'OL', fuse2: 0.2 }) }),
    PRACTICE,
  ),
  phys(
    'contactor',
    'contacts 0.1, coil 12.6 Ω',
    'good',
    '',
    outcome('contactor', { readings: ohms({ ...dead, coil: 12.6 }) }),
    PRACTICE,
  ),
  phys(
    'contactor',
    'coil OL',
    'coil-open',
    '',
    outcome('contactor', { readings: ohms({ ...dead, coil: 'OL' }) }),
    PRACTICE,
  ),
  phys(
    'contactor',
    'coil 3.9 Ω',
    'coil-shorted',
    '',
    outcome('contactor', { readings: ohms({ ...dead, coil: 3.9 }) }),
    PRACTICE,
  ),
  phys(
    'contactor',
    '1.1 Ω pressed in',
    'contacts',
    '',
    outcome('contactor', { readings: ohms({ ...dead, pole1: 1.1, coil: 12 }) }),
    PRACTICE,
  ),
  phys(
    'coil of 120 V judged by the 24 V band',
    '120 V, 12.6 Ω',
    'good',
    '',
    outcome('contactor', { readings: ohms({ ...dead, coil: 12.6 }), rated: choice('volts', '120') }),
    { ...PRACTICE, wrong: true },
  ),
  phys(
    '24 V across the coil and not in',
    '24.1 V',
    'not-in',
    '',
    outcome('coil-volts', { readings: volts({ coil: 24.1 }), pulled: choice('ok', 'no') }),
    {
      source: 'fault logic of a trade page: coil or mechanics (secondary source)',
      status: 'V2',
    },
  ),
  phys('coil at pull-in', '20.4 V', 'good', '', outcome('coil-volts', { readings: volts({ coil: 20.4 }) }), PRACTICE),
  phys(
    'coil at pull-in',
    '20.39 V, R–C 24',
    'drop',
    '',
    outcome('coil-volts', { readings: volts({ coil: 20.39, rc: 24 }) }),
    PRACTICE,
  ),
  phys(
    'coil at pull-in',
    '19.6 V, R–C 20.8',
    'source',
    '',
    outcome('coil-volts', { readings: volts({ coil: 19.6, rc: 20.8 }) }),
    PRACTICE,
  ),
  phys(
    '0 V at the coil within the delay',
    '0 V',
    'wait',
    '',
    outcome('coil-volts', { readings: volts({ coil: 0 }) }),
    PRACTICE,
  ),
  phys(
    '0 V at the coil within the delay',
    '0 V',
    'absent',
    '',
    outcome('coil-volts', { readings: volts({ coil: 0 }) }),
    { ...PRACTICE, wrong: true },
  ),
  phys(
    'along the switches',
    '25.6 V to the low-pressure switch, 0 after the next',
    'hp',
    '',
    outcome('hop', { readings: volts(hopped), waited: yes }),
    PRACTICE,
  ),
  phys(
    'across the switches',
    'delay 0.1, LP 0.1, HP 25.6 V',
    'hp',
    '',
    outcome('hop', { across: volts({ delay: 0.1, lp: 0.1, hp: 25.6 }), waited: yes }),
    PRACTICE,
  ),
  phys(
    'no call',
    '0 V at the strip after 5 min',
    'nothing',
    '',
    outcome('hop', { readings: volts({ start: 0 }), waited: yes }),
    PRACTICE,
  ),
  phys(
    'transformer',
    '208 V on the 240 V tap, 20.8 V',
    'tap',
    '',
    outcome('transformer', { readings: volts({ loaded: 20.8, primary: 208 }), tap: choice('tap', '240') }),
    PRACTICE,
  ),
  phys(
    'transformer',
    '240 V in, 0 out',
    'open',
    '',
    outcome('transformer', { readings: volts({ loaded: 0, primary: 240 }) }),
    PRACTICE,
  ),
  phys('transformer, idle alone', '27 V', 'good', '', outcome('transformer', { readings: volts({ idle: 27 }) }), {
    ...PRACTICE,
    wrong: true,
  }),
  phys(
    'transformer',
    '2.0 A on 40 VA',
    'overload',
    '',
    outcome('transformer', {
      readings: { ...volts({ loaded: 19.5, primary: 240 }), ...parts('A', { amps: 2 }) },
      va: choice('va', '40'),
      tap: choice('tap', '240'),
    }),
    PRACTICE,
  ),
]);
