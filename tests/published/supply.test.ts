/** Supply voltage, drop and unbalance against published figures, the wrong ones too; ngspice and mathjs beside them. */
import {
  deratingShare,
  dropPercent,
  extraRisePercent,
  ratedRangeVolts,
  unbalancePercent,
} from '../../engine/calc/supply.ts';
import { LIMITS } from '../../flows/limits.ts';
import { choice, parts } from '../judgements/fixture.ts';
import { type Check, checks } from './check.ts';
import { judged } from './judged.ts';
import { byMathjs } from './mathjs.ts';
import { between, solveAc } from './spice.ts';

const MG1 = 'NEMA MG 1-12.44.1, text in Condensed MG 1-2011';
const BULLETIN = 'compressor maker’s nameplate-voltage bulletin (secondary source)';
const NEMA = 'NEMA definition, worked example of a manual (secondary source)';

const unbalance = (
  volts: readonly number[],
  published: string,
  source: string,
  status: Check['status'],
  more: Partial<Check> = {},
): Check => ({
  what: 'unbalance',
  input: volts.join('/'),
  published,
  ours: () => unbalancePercent(volts),
  unit: '%',
  source,
  status,
  oracle: byMathjs(`v = [${volts.join(', ')}]; m = mean(v); max(abs(v - m)) / m * 100`),
  ...more,
});
const word = (
  what: string,
  input: string,
  published: string,
  ours: Check['ours'],
  source: string,
  status: Check['status'] = 'V2',
): Check => ({ what, input, published, ours, unit: '', source, status });

const single = (l1l2: number, machine?: string): string =>
  judged('supply', {
    line: parts('V', { l1l2, l1g: 120, l2g: 120 }),
    plate: choice('volts', '208/230'),
    ...(machine ? { machine: choice('choice', machine) } : {}),
  }).outcome;
const three = (l1l2: number, l2l3: number, l1l3: number, plate = '208/230'): string =>
  judged('supply', { line: parts('V', { l1l2, l2l3, l1l3 }), plate: choice('volts', plate) }).outcome;

/** Both legs at 120 V against each other; `open` ohms stand for a fuse, 10 MΩ to ground for the meter. */
const lostLeg = async (): Promise<string> => {
  const volts = await solveAc([
    ...['v1 a 0 dc 0 ac 120 0', 'v2 s 0 dc 0 ac 120 180', 'rfuse s b 1e9'],
    ...['rload a b 20', 'rmeter b 0 1e7'],
  ]);
  const line = { l1l2: between(volts, 'a', 'b'), l1g: between(volts, 'a', '0'), l2g: between(volts, 'b', '0') };
  return judged('supply', { line: parts('V', line), plate: choice('volts', '208/230') }).outcome;
};
/** A wye motor whose third line has blown its fuse. */
const singlePhased = async (): Promise<string> => {
  const volts = await solveAc([
    ...['v1 a 0 dc 0 ac 132.8 0', 'v2 b 0 dc 0 ac 132.8 -120', 'v3 s 0 dc 0 ac 132.8 120', 'rfuse s c 1e9'],
    ...['ra a n 3', 'rb b n 3', 'rc c n 3', 'rm n 0 1e7'],
  ]);
  const [l1l2, l2l3, l1l3] = [between(volts, 'a', 'b'), between(volts, 'b', 'c'), between(volts, 'a', 'c')];
  return judged('supply', { line: parts('V', { l1l2, l2l3, l1l3 }), plate: choice('volts', '208/230') }).outcome;
};
/** A three-phase line with 0.2 Ω in each wire and one load of 10 Ω between the first two. */
const unevenLoad = async (): Promise<string> => {
  const volts = await solveAc([
    ...['v1 sa 0 dc 0 ac 132.8 0', 'v2 sb 0 dc 0 ac 132.8 -120', 'v3 c 0 dc 0 ac 132.8 120'],
    ...['ra sa a 0.2', 'rb sb b 0.2', 'rl a b 10'],
  ]);
  return unbalancePercent([between(volts, 'a', 'b'), between(volts, 'b', 'c'), between(volts, 'a', 'c')]).toFixed(9);
};
/** The same by phasors: the load's current drops 0.2 Ω in both wires. */
const UNEVEN = [
  'ea = 132.8',
  'eb = 132.8 * exp(-i * 2 * pi / 3)',
  'ec = 132.8 * exp(i * 2 * pi / 3)',
  'k = (ea - eb) / 10.4',
  'a = ea - 0.2 * k',
  'b = eb + 0.2 * k',
  'x = abs(a - b)',
  'y = abs(b - ec)',
  'z = abs(a - ec)',
  'm = (x + y + z) / 3',
  'max(abs(x - m), abs(y - m), abs(z - m)) / m * 100',
];
/** A locked rotor of 96 A at 240 V, half of it reactive by angle (60°), behind 0.12 Ω. */
const startSag = async (): Promise<string> => {
  const volts = await solveAc(['v1 s 0 dc 0 ac 240 0', 'rs s a 0.12', 'rm a x 1.25', 'lm x 0 5.742913m']);
  return dropPercent(240, between(volts, 'a', '0')).toFixed(9);
};
const SAG = '(1 - abs((1.25 + i * 2 * pi * 60 * 0.005742913) / (1.37 + i * 2 * pi * 60 * 0.005742913))) * 100';

checks('supply', [
  ...(
    [
      [230, '207.0', '253.0'],
      [208, '187.2', '228.8'],
      [460, '414', '506'],
      [115, '103.5', '126.5'],
    ] as const
  ).flatMap(([rated, low, high]): Check[] => [
    {
      what: 'rated voltage less 10 %',
      input: `${rated} V`,
      published: low,
      ours: () => ratedRangeVolts(rated, LIMITS.supply.ratedWithin.value).low,
      unit: 'V',
      source: MG1,
      status: 'V',
      oracle: byMathjs(`${rated} * 0.9`),
    },
    {
      what: 'rated voltage and 10 %',
      input: `${rated} V`,
      published: high,
      ours: () => ratedRangeVolts(rated, LIMITS.supply.ratedWithin.value).high,
      unit: 'V',
      source: MG1,
      status: 'V',
      oracle: byMathjs(`${rated} * 1.1`),
    },
  ]),
  word('460 V motor', '414 V', 'good', () => three(414, 414, 414, '460'), MG1, 'V'),
  word('460 V motor', '413.99 V', 'out', () => three(413.99, 413.99, 413.99, '460'), MG1, 'V'),
  word('460 V motor', '506 V', 'good', () => three(506, 506, 506, '460'), MG1, 'V'),
  word('460 V motor', '506.01 V', 'out', () => three(506.01, 506.01, 506.01, '460'), MG1, 'V'),
  word('208/230 V welded hermetic', '197 V', 'good', () => single(197), BULLETIN),
  word('208/230 V welded hermetic', '196.99 V', 'out', () => single(196.99), BULLETIN),
  word('208/230 V welded hermetic', '253 V', 'good', () => single(253), BULLETIN),
  word('208/230 V welded hermetic', '253.01 V', 'out', () => single(253.01), BULLETIN),
  word('208/230 V scroll', '188 V', 'good', () => single(188, 'scroll'), BULLETIN),
  word('208/230 V scroll', '187.99 V', 'out', () => single(187.99, 'scroll'), BULLETIN),
  word('208/230 V semi-hermetic', '188 V', 'good', () => single(188, 'semi-hermetic'), BULLETIN),
  word('208/230 V three-phase', '187 V', 'good', () => three(187, 187, 187), BULLETIN),
  word('208/230 V three-phase', '186.99 V', 'out', () => three(186.99, 186.99, 186.99), BULLETIN),
  word('208/230 V three-phase', '253.01 V', 'out', () => three(253.01, 253.01, 253.01), BULLETIN),
  unbalance([462, 463, 455], '1.086957', 'arithmetic', 'PHYS'),
  unbalance([462, 463, 455], '1.1', NEMA, 'V2'),
  unbalance([203, 210, 212], '2.5600', 'arithmetic', 'PHYS'),
  unbalance([203, 210, 212], '2.5', `${NEMA}, from figures rounded on the way`, 'V2', { within: 0.1 }),
  unbalance([460, 467, 450], '1.960784', 'arithmetic', 'PHYS'),
  unbalance([460, 467, 450], '1.96', NEMA, 'V2'),
  unbalance([480, 476, 472], '0.840336', 'arithmetic', 'PHYS'),
  unbalance([480, 476, 472], '0.84', NEMA, 'V2'),
  unbalance([220, 216, 213], '1.694915', 'arithmetic', 'PHYS'),
  unbalance([220, 216, 213], '1.8', 'a manual that rounded the average to 216 first (secondary source)', 'V2', {
    wrong: true,
  }),
  unbalance([400, 395, 388], '1.6061', 'arithmetic', 'PHYS'),
  unbalance([400, 395, 388], '1.45', 'a page that took 5.7 V for the largest deviation (secondary source)', 'V2', {
    wrong: true,
  }),
  {
    what: 'unbalance by one load on two of three lines',
    input: '230 V, 0.2 Ω a wire, 10 Ω between two',
    published: '1.9701',
    ours: unevenLoad,
    unit: '%',
    source: 'phasor algebra, volts by ngspice',
    status: 'PHYS',
    oracle: byMathjs(UNEVEN.join('; '), 1e-6),
  },
  {
    what: 'extra rise by unbalance',
    input: '1.086957 % (462/463/455)',
    published: '2.3629',
    ours: () => extraRisePercent(unbalancePercent([462, 463, 455])),
    unit: '%',
    source: 'rule 2·u² quoted from NEMA MG 1, arithmetic',
    status: 'PHYS',
    oracle: byMathjs('2 * (500 / 460)^2'),
  },
  {
    what: 'extra rise by unbalance',
    input: '3.5 %',
    published: '25',
    ours: () => extraRisePercent('3.5'),
    unit: '%',
    source: 'page of a motor service (secondary source)',
    status: 'V2',
    oracle: byMathjs('2 * 3.5^2'),
  },
  ...(
    [
      [1, '1.00', 'M'],
      [2, '0.95', 'V2'],
      [3, '0.88', 'M'],
      [4, '0.82', 'M'],
      [5, '0.75', 'M'],
    ] as const
  ).map(
    ([percent, published, status]): Check => ({
      what: 'power left at an unbalance',
      input: `${percent} %`,
      published,
      ours: () => String(deratingShare(percent)),
      unit: '',
      source:
        status === 'M'
          ? 'curve of NEMA MG 1, read off: value from memory'
          : '“near 0.95” on a page about the curve of NEMA MG 1 (secondary source)',
      status,
    }),
  ),
  {
    what: 'power left at an unbalance',
    input: '3 %',
    published: '0.90',
    within: 0.025,
    ours: () => String(deratingShare(3)),
    unit: '',
    source: 'another maker’s figure for the same curve (secondary source)',
    status: 'V2',
  },
  word(
    'unbalance above 5 %: don’t run',
    '230/230/212.9',
    'unbalanced',
    () => three(230, 230, 212.9),
    'NEMA: operation above 5 % not recommended (secondary source)',
  ),
  word(
    'unbalance up to 5 %',
    '230/230/213.2',
    'report',
    () => three(230, 230, 213.2),
    'NEMA: operation above 5 % not recommended (secondary source)',
  ),
  word(
    'unbalance must not exceed 2 %',
    '230/230/223.1',
    'good',
    () => three(230, 230, 223.2),
    'two unit manuals (secondary source)',
  ),
  word(
    'unbalance past 2 %',
    '230/230/223.1',
    'report',
    () => three(230, 230, 223.1),
    'two unit manuals (secondary source)',
  ),
  word(
    'a leg lost behind a load',
    '20 Ω between the legs, volts by ngspice',
    'leg-lost',
    lostLeg,
    'leg to leg near 0 with both to ground, physics',
    'PHYS',
  ),
  word(
    'a motor on two of three lines',
    'wye of 3 Ω, volts by ngspice',
    'single-phasing',
    singlePhased,
    'one pair right, two at half, physics',
    'PHYS',
  ),
  {
    what: 'sag while a locked rotor pulls',
    input: '240 V, 0.12 Ω, LRA 96 A at 60°',
    published: '2.4242',
    ours: startSag,
    unit: '%',
    source: 'phasor algebra, volts by ngspice',
    status: 'PHYS',
    oracle: byMathjs(SAG, 1e-6),
  },
  {
    what: 'service voltage, range A, lower end',
    input: '120 V base',
    published: '114',
    ours: () => ratedRangeVolts(120, 5).low,
    unit: 'V',
    source: 'ANSI C84.1, value from memory',
    status: 'M',
  },
  {
    what: 'service voltage, range A, upper end',
    input: '120 V base',
    published: '126',
    ours: () => ratedRangeVolts(120, 5).high,
    unit: 'V',
    source: 'ANSI C84.1, value from memory',
    status: 'M',
  },
]);
