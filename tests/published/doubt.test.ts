/**
 * A meter's doubt and what may be decided with it. Our model is rectangular; the normal one stands beside it here, ours
 * against @stdlib and jstat. Where the two models disagree, neither is wrong: a bare ±a says nothing of its shape, and
 * one rectangular term is not normal. The product names the model it uses with each verdict.
 */
import normalCdfOf from '@stdlib/stats-base-dists-normal-cdf';
import normalQuantileOf from '@stdlib/stats-base-dists-normal-quantile';
import { jStat } from 'jstat';
import { doubtOf, shareInside, windowMicrofarads, wordOf } from '../../engine/calc/doubt.ts';
import { Exact } from '../../engine/calc/exact.ts';
import {
  conformance,
  falseAccept,
  guardedWord,
  normalCdf,
  normalQuantile,
  standardUncertainty,
} from '../../engine/calc/normal.ts';
import { limitsMicrofarads } from '../../engine/calc/tolerance.ts';
import type { Meter } from '../../engine/schema.ts';
import { type Check, checks } from './check.ts';
import { byMathjs } from './mathjs.ts';

/** ±(1.9 % + 2 × 0.1 µF), an invented specification. */
const METER: Meter = { percent: '1.9', counts: 2, fine: '0.1', coarse: '0.1', split: '10', known: true };
const LOW = '42.30';
const LIMITS = limitsMicrofarads(45, 6, 6);
/** Only the lower limit of 45 µF ±6 % matters for these readings. */
const lower = { low: new Exact(LOW), high: new Exact(1000) };

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
const stdlib = (says: () => number, within = 1e-9): NonNullable<Check['oracle']> => ({ name: '@stdlib', says, within });
const jstat = (says: () => number, within = 1e-9): NonNullable<Check['oracle']> => ({ name: 'jstat', says, within });

const GUM = 'GUM 4.3.7 (value from memory) and a calibrator maker’s seminar (secondary source); arithmetic';
const FORUM = 'trade forum, worked example of an accuracy (secondary source)';
const doubt = doubtOf('0.7', 2, '0.1', '120.0');
const u = standardUncertainty(doubt);

checks('doubt: of a meter', [
  phys('±(0.7 % + 2 counts)', '120.0 V', '1.0400', 'V', () => doubt, { oracle: byMathjs('120*0.007+2*0.1') }),
  phys('window, low', '±(0.7 % + 2 counts) at 120.0 V', '118.96', 'V', () => new Exact(120).minus(doubt), {
    source: FORUM,
    status: 'V2',
  }),
  phys('window, high', '±(0.7 % + 2 counts) at 120.0 V', '121.04', 'V', () => new Exact(120).plus(doubt), {
    source: FORUM,
    status: 'V2',
  }),
  phys('standard uncertainty a/√3', 'a 1.04 V', '0.600444', 'V', () => u, {
    source: GUM,
    status: 'V2',
    oracle: byMathjs('1.04/sqrt(3)'),
  }),
  phys('expanded, k = 2', 'a 1.04 V', '1.200889', 'V', () => u.times(2), { oracle: byMathjs('2*1.04/sqrt(3)') }),
  ...(
    [
      ['41.0', '0.9790', '0.565226'],
      ['42.0', '0.9980', '0.576196'],
      ['43.0', '1.0170', '0.587165'],
      ['44.0', '1.0360', '0.598135'],
    ] as const
  ).flatMap(([reading, a, of]) => {
    const half = doubtOf('1.9', 2, '0.1', reading);
    return [
      phys('±(1.9 % + 2 × 0.1 µF)', `${reading} µF`, a, 'µF', () => half, { oracle: byMathjs(`${reading}*0.019+0.2`) }),
      phys('standard uncertainty', `${reading} µF`, of, 'µF', () => standardUncertainty(half), {
        source: GUM,
        oracle: byMathjs(`(${reading}*0.019+0.2)/sqrt(3)`),
      }),
    ];
  }),
]);

const JCGM = 'JCGM 106:2012 §7 (formula); inputs of its §7.4 example in a secondary source; arithmetic';
const MEMORY = 'arithmetic only; the inputs are an example of JCGM 106 §7.3 from memory';
const quantile = (p: string, z: string): Check =>
  phys('one-sided z', p, z, '', () => normalQuantile(p), {
    source: 'standard normal distribution, tables',
    oracle: stdlib(() => normalQuantileOf(Number(p), 0, 1)),
  });
const accept = (r: string, published: string, more: Partial<Check> = {}): Check =>
  phys(
    'accepted wrongly at the limit, k = 2',
    `guard band ${r}·U`,
    published,
    '',
    () => falseAccept(r).toPrecision(6),
    {
      oracle: stdlib(() => normalCdfOf(-2 * Number(r), 0, 1), 1e-7),
      ...more,
    },
  );
const ILAC = 'ILAC-G8:09/2019, a laboratory’s decision rule (secondary source)';

checks('doubt: the normal model, for comparison', [
  phys(
    'Φ(1.5) − Φ(−0.611111)',
    'y 13.6, u 1.8, 12.5 to 16.3',
    '0.662630',
    '',
    () => conformance('13.6', '1.8', { low: '12.5', high: '16.3' }),
    {
      source: JCGM,
      status: 'V2',
      oracle: stdlib(() => normalCdfOf(16.3, 13.6, 1.8) - normalCdfOf(12.5, 13.6, 1.8)),
    },
  ),
  phys(
    'Φ(1.5) − Φ(−0.611111)',
    'the same, second oracle',
    '0.662630',
    '',
    () => conformance('13.6', '1.8', { low: '12.5', high: '16.3' }),
    {
      source: JCGM,
      status: 'V2',
      oracle: jstat(() => jStat.normal.cdf(16.3, 13.6, 1.8) - jStat.normal.cdf(12.5, 13.6, 1.8), 1e-7),
    },
  ),
  phys(
    'Φ(1.4)',
    'y −5.47, u 0.05, at most −5.40',
    '0.919243',
    '',
    () => conformance('-5.47', '0.05', { high: '-5.40' }),
    {
      source: MEMORY,
      oracle: stdlib(() => normalCdfOf(-5.4, -5.47, 0.05)),
    },
  ),
  phys(
    'Φ(2.290698)',
    'y 509.7, u 8.6, at least 490',
    '0.989010',
    '',
    () => conformance('509.7', '8.6', { low: '490' }),
    {
      source: MEMORY,
      oracle: jstat(() => 1 - jStat.normal.cdf(490, 509.7, 8.6), 1e-7),
    },
  ),
  quantile('0.80', '0.8416'),
  quantile('0.90', '1.2816'),
  quantile('0.95', '1.644854'),
  quantile('0.975', '1.959964'),
  quantile('0.99', '2.3263'),
  quantile('0.999', '3.0902'),
  phys('Φ(1.644854)', 'z of 95 %', '0.95', '', () => normalCdf('1.644854'), {
    oracle: jstat(() => jStat.normal.cdf(1.644854, 0, 1), 1e-7),
  }),
  accept('0', '0.5', { source: `${ILAC}: up to 50 % with simple acceptance`, status: 'V2' }),
  // The figure handed down, 0.0484573, is off in its last digit: Φ(−1.66) is 0.04845723 in all three programs.
  accept('0.83', '0.0484572', { source: 'ISO 14253-1:2017 guards by 0.83·U for 5 % (from memory); arithmetic' }),
  accept('1', '0.0227501', { source: `${ILAC}: under 2.5 % with w = U`, status: 'V2' }),
  accept('1.5', '0.00134990'),
  accept('3', '9.87e-10', { oracle: stdlib(() => normalCdfOf(-6, 0, 1), 1e-15) }),
  ...(
    [
      ['41.0', '0.010725'],
      // The figure handed down, 0.301302, is off in its last digit: Φ(−0.3·√3/0.998) is 0.3013030 in all three programs.
      ['42.0', '0.301303'],
      ['42.3', '0.500000'],
      ['43.0', '0.883402'],
      ['44.0', '0.997760'],
    ] as const
  ).map(([reading, p]) => {
    const of = standardUncertainty(doubtOf('1.9', 2, '0.1', reading));
    return phys('P(C ≥ 42.30)', `${reading} µF`, p, '', () => conformance(reading, of, { low: LOW }), {
      oracle: stdlib(() => 1 - normalCdfOf(42.3, Number(reading), of.toNumber())),
    });
  }),
  ...(
    [
      ['41.0', 'fail'],
      ['42.0', 'undecided'],
      ['43.0', 'undecided'],
      ['44.0', 'pass'],
    ] as const
  ).map(([reading, word]) =>
    phys(
      'guard band U on both sides',
      `${reading} µF on 45 ±6 %`,
      word,
      '',
      () => guardedWord(reading, standardUncertainty(doubtOf('1.9', 2, '0.1', reading)), LIMITS),
      {
        source: 'ISO 14253-1: inside by U to prove, outside by U to disprove (summary)',
        status: 'V2',
      },
    ),
  ),
]);

const G8 = 'ILAC-G8:09/2019 §4.2.3, non-binary rule (secondary source)';
const share = (reading: string) => shareInside(windowMicrofarads(METER, reading), lower);
const word = (reading: string): string => wordOf(reading, windowMicrofarads(METER, reading), LIMITS);

checks('doubt: our rectangular model and its words', [
  ...(
    [
      ['41.0', '0'],
      ['42.0', '0.349699'],
      ['42.3', '0.500000'],
      ['43.0', '0.844149'],
    ] as const
  ).map(([reading, p]) =>
    phys('clamp((y + a − TL)/2a)', `${reading} µF against 42.30`, p, '', () => share(reading), {
      oracle: byMathjs(`a=${reading}*0.019+0.2; max(0,min(1,(${reading}+a-42.3)/(2*a)))`),
    }),
  ),
  phys('the most that 41.0 may be', '41.0 µF', '41.979', 'µF', () => windowMicrofarads(METER, '41.0').high),
  // Both right for their model: the rectangular one has no tails, so a limit 0.3 µF off weighs more in it.
  phys('42.0 µF by the other model', 'rectangular against the normal figure', '0.301303', '', () => share('42.0'), {
    source: 'the normal model’s figure, JCGM 106',
    wrong: true,
  }),
  phys('43.0 µF by the other model', 'rectangular against the normal figure', '0.883402', '', () => share('43.0'), {
    source: 'the normal model’s figure, JCGM 106',
    wrong: true,
  }),
  ...(
    [
      ['44.0', 'pass'],
      ['42.8', 'conditional pass'],
      ['42.0', 'conditional fail'],
      ['41.0', 'fail'],
    ] as const
  ).map(([reading, of]) =>
    phys('four words', `${reading} µF on 45 ±6 %`, of, '', () => word(reading), { source: G8, status: 'V2' }),
  ),
  phys('to prove conformity, all of the doubt inside', '44.0 µF', 'pass', '', () => word('44.0'), {
    source: 'ISO 14253-1 (summary)',
    status: 'V2',
  }),
  phys('to prove non-conformity, all of it outside', '41.0 µF', 'fail', '', () => word('41.0'), {
    source: 'ISO 14253-1 (summary)',
    status: 'V2',
  }),
]);
