/** Insulation of windings, against published limits, their order and worked corrections. */
import { factorTo40, megohmsAt40, oldRuleMegohms } from '../../engine/calc/insulation.ts';
import { leakMilliamps, ohmsForAmps } from '../../engine/calc/leakage.ts';
import { LIMITS } from '../../flows/limits.ts';
import { choice, parts } from '../judgements/fixture.ts';
import { type Check, checks } from './check.ts';
import { judged } from './judged.ts';
import { byMathjs } from './mathjs.ts';

const RECIPROCATING = 'a reciprocating compressor maker’s service handbook, page 49 (secondary source)';
const SCROLL = 'a scroll compressor maker’s bulletin cited by a training article (secondary source)';
const VACUUM = 'a compressor maker’s rule confirmed by a training article (secondary source)';
const TEST_VOLTS = 'test voltages by winding voltage, copy of a motor-repair body’s table (secondary source)';

type Reading = number | 'OL';
const outcome = (
  machine: string,
  reading: Reading,
  more: { earlier?: Reading; state?: string; test?: string; maker?: number } = {},
): string =>
  judged('insulation', {
    state: choice('choice', more.state ?? 'none'),
    test: choice('choice', more.test ?? '500'),
    machine: choice('choice', machine),
    reading: parts('MΩ', { megohms: reading }),
    ...(more.earlier === undefined ? {} : { earlier: parts('MΩ', { megohms: more.earlier }) }),
    ...(more.maker === undefined ? {} : { maker: parts('MΩ', { maker: more.maker }) }),
  }).outcome;
const word = (
  what: string,
  input: string,
  published: string,
  ours: Check['ours'],
  source: string,
  status: Check['status'] = 'V2',
): Check => ({ what, input, published, ours, unit: '', source, status });
const band = (megohms: number): string =>
  judged('insulation', {
    state: choice('choice', 'none'),
    test: choice('choice', '500'),
    reading: parts('MΩ', { megohms }),
  }).findings.at(-1)?.word ?? '';

checks('insulation', [
  {
    what: 'corrected to 40 °C',
    input: '20 MΩ at 25 °C',
    published: '7.0711',
    ours: () => megohmsAt40(20, 25),
    unit: 'MΩ',
    source: 'halving for every 10 °C, arithmetic; the formula of IEEE 43 is from memory',
    status: 'M',
    oracle: byMathjs('20 * 0.5^((40 - 25) / 10)'),
  },
  {
    what: 'one step of ten degrees',
    input: '30 °C to 40 °C',
    published: '0.5',
    ours: () => factorTo40(30),
    unit: '',
    source: 'IEEE 43 formula, value from memory',
    status: 'M',
  },
  {
    what: 'old rule, kV + 1',
    input: '0.23 kV',
    published: '1.23',
    ours: () => oldRuleMegohms('0.23'),
    unit: 'MΩ',
    source: 'IEEE 43, windings from before about 1970, in a test body’s quiz (secondary source)',
    status: 'V2',
    oracle: byMathjs('number(230 V, kV) + 1'),
  },
  {
    what: 'random-wound motor, at least',
    input: 'IEEE 43, below 1 kV',
    published: '5',
    ours: () => LIMITS.fanWindings.clear.value,
    unit: 'MΩ',
    source: 'IEEE 43-2013 in a motor-repair body’s page (secondary source)',
    status: 'V2',
  },
  {
    what: 'test voltage',
    input: 'winding below 1000 V',
    published: '500',
    ours: () => LIMITS.insulation.testVolts.value,
    unit: 'V',
    source: TEST_VOLTS,
    status: 'V2',
  },
  word('reciprocating, on the limit', '2 MΩ', 'good', () => outcome('reciprocating', 2), RECIPROCATING),
  word('reciprocating, below, once', '1.99 MΩ', 'low', () => outcome('reciprocating', 1.99), RECIPROCATING),
  word(
    'reciprocating, a ground fault',
    '1.99 MΩ twice',
    'grounded',
    () => outcome('reciprocating', 1.99, { earlier: 1.99 }),
    RECIPROCATING,
  ),
  word('scroll, on the limit', '0.5 MΩ', 'good', () => outcome('scroll', 0.5), SCROLL),
  word('scroll, below', '0.49 MΩ', 'low', () => outcome('scroll', 0.49), SCROLL),
  word('scroll, where a reciprocating one fails', '1.5 MΩ', 'good', () => outcome('scroll', 1.5), SCROLL),
  word(
    'kind unknown, between both makers',
    '1.5 MΩ',
    'undecided',
    () => outcome('cant', 1.5),
    `${SCROLL}; ${RECIPROCATING}`,
  ),
  word(
    'a maker’s figure comes first',
    'chiller manual 50 MΩ, read 49',
    'low',
    () => outcome('scroll', 49, { maker: 50 }),
    'a large-chiller manual (secondary source)',
  ),
  word(
    'a maker’s figure comes first',
    'chiller manual 50 MΩ, read 50',
    'good',
    () => outcome('scroll', 50, { maker: 50 }),
    'a large-chiller manual (secondary source)',
  ),
  word('vacuum', 'reading or not', 'refused', () => outcome('scroll', 100, { state: 'vacuum' }), VACUUM),
  word(
    'electronics connected',
    '500 V',
    'refused',
    () => outcome('scroll', 100, { state: 'electronics' }),
    'common practice',
    'CP',
  ),
  word('1000 V tester', 'winding below 1000 V', 'refused', () => outcome('scroll', 100, { test: '1000' }), TEST_VOLTS),
  word(
    '250 V tester',
    'winding below 1000 V',
    'good',
    () => outcome('scroll', 100, { test: '250' }),
    'our setting: less is allowed',
    'CHOICE',
  ),
  word(
    'an ohmmeter says less',
    '100 MΩ',
    'none-found',
    () => outcome('scroll', 100, { test: 'meter' }),
    'our setting',
    'CHOICE',
  ),
  word('cold shell', '0.2 MΩ', 'warm-first', () => outcome('scroll', 0.2, { state: 'cold' }), 'common practice', 'CP'),
  ...(
    [
      [150, 'good'],
      [75, 'fair'],
      [30, 'watch'],
      [5, 'suspect'],
    ] as const
  ).map(([megohms, name]) =>
    word('the trade’s band', `${megohms} MΩ`, name, () => band(megohms), 'trade charts, common practice', 'CP'),
  ),
  {
    what: 'a band condemns',
    input: 'reciprocating, 5 MΩ, “suspect” in trade charts',
    published: 'grounded',
    ours: () => outcome('reciprocating', 5, { earlier: 5 }),
    unit: '',
    source: 'trade charts, wrong as a verdict: makers go down to 2 MΩ',
    status: 'CP',
    wrong: true,
  },
  {
    what: 'leakage',
    input: '11 kΩ at 120 V',
    published: '11',
    ours: () => leakMilliamps(120, 11_000),
    unit: 'mA',
    source: 'Ohm’s law, arithmetic',
    status: 'PHYS',
    oracle: byMathjs('number(120 V / (11 kohm), mA)'),
  },
  {
    what: 'a ground that trips a breaker',
    input: '40 A at 120 V',
    published: '3',
    ours: () => ohmsForAmps(120, 40),
    unit: 'Ω',
    source: 'Ohm’s law, arithmetic',
    status: 'PHYS',
    oracle: byMathjs('number(120 V / (40 A), ohm)'),
  },
  word(
    'what 11 kΩ explains',
    'breaker 40 A',
    'a GFCI’s trip',
    () => explained(11_000),
    'Ohm’s law; class A GFCI from memory',
    'PHYS',
  ),
  word('what 3 Ω explains', 'breaker 40 A', 'a breaker’s trip', () => explained(3), 'Ohm’s law', 'PHYS'),
]);

function explained(t2g: number): string {
  const readings = parts('Ω', { t1g: 'OL', t2g });
  return judged('loads-to-ground', { readings, plate: parts('A', { mop: 40 }) }).findings.at(-1)?.word ?? '';
}
