/** Windings of single-phase and three-phase motors against published sets, the impossible one too, and nodal analysis. */

import { Exact } from '../../engine/calc/exact.ts';
import {
  doubtOhms,
  misfitPercent,
  type OhmsDoubt,
  type Pair,
  sumRule,
  terminalsFromOhms,
} from '../../engine/calc/windings.ts';
import { choice, parts } from '../judgements/fixture.ts';
import { type Check, checks } from './check.ts';
import { judged } from './judged.ts';
import { byMathjs, computed } from './mathjs.ts';

const TEXTBOOK = 'textbook on air conditioning, section 25.8, excerpt';
const TIP = 'tech tip of a distributor, 2 March 2020 (secondary source)';
const PAGES = 'two trade pages (secondary sources)';
const DOUBT: OhmsDoubt = { percent: 1, counts: 3, resolutionOhms: '0.1' };
type Cell = number | 'OL';

const named = (ohms: readonly [number, number, number]): string => {
  const pairs = [
    { ends: ['1', '2'], ohms: new Exact(ohms[0]) },
    { ends: ['1', '3'], ohms: new Exact(ohms[1]) },
    { ends: ['2', '3'], ohms: new Exact(ohms[2]) },
  ] satisfies [Pair, Pair, Pair];
  const { run, start, common } = terminalsFromOhms(pairs, DOUBT);
  return `R=${run} S=${start} C=${common}`;
};
const compressor = (cr: Cell, cs: Cell, sr: Cell, shell?: string, g: Cell = 'OL'): string =>
  judged('compressor-windings', {
    readings: parts('Ω', { cr, cs, sr, g }),
    ...(shell ? { shell: choice('choice', shell) } : {}),
  }).outcome;
const fan = (first: Cell, second: Cell, third: Cell, warm?: string): string =>
  judged('fan-windings', {
    readings: parts('Ω', { first, second, third, frame: 'OL' }),
    ...(warm ? { warm: choice('choice', warm) } : {}),
  }).outcome;
const equals = (first: Cell, second: Cell, third: Cell): string =>
  judged('three-windings', { readings: parts('Ω', { first, second, third, frame: 'OL' }) }).outcome;
const word = (
  what: string,
  input: string,
  published: string,
  ours: Check['ours'],
  source: string,
  status: Check['status'],
): Check => ({ what, input, published, ours, unit: '', source, status });

/** Ω between two nodes of a network by nodal analysis: one ampere in and out. Node 0 is the first end. */
const between = (conductances: string): number => computed(`x = lusolve(${conductances}, [1; 0]); x[1, 1]`);

checks('windings', [
  {
    what: 'S–R from C–S and C–R',
    input: 'C–S 11 Ω, C–R 4 Ω',
    published: '15',
    ours: () => new Exact(15).minus(sumRule(DOUBT, 15, 11, 4).misfitOhms),
    unit: 'Ω',
    source: TEXTBOOK,
    status: 'V',
    oracle: byMathjs('11 + 4'),
  },
  word('a set that fits', '4, 11, 15 Ω', 'good', () => compressor(4, 11, 15), TEXTBOOK, 'V'),
  word(
    'common to start shows more than common to run',
    '11, 4, 15 Ω',
    'repeat',
    () => compressor(11, 4, 15),
    TEXTBOOK,
    'V',
  ),
  word('terminals', '1–2 6.0, 1–3 2.0, 2–3 4.0 Ω', 'R=1 S=2 C=3', () => named([6, 2, 4]), TIP, 'V2'),
  word('a set that fits', '2.0, 4.0, 6.0 Ω', 'good', () => compressor(2, 4, 6), TIP, 'V2'),
  word(
    'terminals of the impossible set',
    '1–2 7, 2–3 8, 1–3 6 Ω',
    'R=3 S=2 C=1',
    () => named([7, 6, 8]),
    'largest pair is S–R, arithmetic',
    'PHYS',
  ),
  {
    what: 'misfit of the impossible set',
    input: '8 against 7 + 6 Ω',
    published: '38.5',
    ours: () => misfitPercent(8, 7, 6),
    unit: '%',
    source: 'sum rule, arithmetic',
    status: 'PHYS',
    oracle: byMathjs('(13 - 8) / 13 * 100'),
  },
  {
    ...word(
      '7, 8 and 6 Ω as a good set',
      'a web page’s example',
      'good',
      () => compressor(6, 7, 8),
      'a web page that breaks the sum rule',
      'V2',
    ),
    wrong: true,
  },
  word('7, 8 and 6 Ω', 'flagged as inconsistent', 'repeat', () => compressor(6, 7, 8), 'sum rule, arithmetic', 'PHYS'),
  word(
    'both pairs to C open, shell hot',
    'S–R 15 Ω',
    'overload-open',
    () => compressor('OL', 'OL', 15, 'hot'),
    PAGES,
    'V2',
  ),
  word(
    'both pairs to C open, shell cold',
    'S–R 15 Ω',
    'common-lead',
    () => compressor('OL', 'OL', 15, 'cold'),
    'common practice',
    'CP',
  ),
  word('S–R and C–S open', 'C–R 4 Ω', 'open-start', () => compressor(4, 'OL', 'OL'), TEXTBOOK, 'V'),
  word('S–R and C–R open', 'C–S 11 Ω', 'open-run', () => compressor('OL', 11, 'OL'), TEXTBOOK, 'V'),
  {
    what: 'doubt of a meter on small windings',
    input: '±(0.9 % + 2 counts of 0.1 Ω) at 0.5 Ω',
    published: '0.2',
    ours: () => doubtOhms({ percent: '0.9', counts: 2, resolutionOhms: '0.1' }, '0.5'),
    unit: 'Ω',
    source: 'arithmetic',
    status: 'PHYS',
    oracle: byMathjs('0.5 * 0.9 / 100 + 2 * 0.1'),
  },
  {
    what: 'S–R of a run winding of 1.2 and a start winding of 3.4 Ω',
    input: 'nodal analysis, C as the node between',
    published: '4.6',
    ours: () => new Exact('4.6').minus(sumRule(DOUBT, '4.6', '3.4', '1.2').misfitOhms),
    unit: 'Ω',
    source: 'Kirchhoff',
    status: 'PHYS',
    oracle: { name: 'mathjs', says: () => between('[1 / 1.2, -1 / 1.2; -1 / 1.2, 1 / 1.2 + 1 / 3.4]'), within: 1e-9 },
  },
  word('a wye of three windings', '1 Ω each, nodal analysis', 'good', () => equals(2, 2, 2), 'Kirchhoff', 'PHYS'),
  word(
    'a delta with one winding open',
    '10 Ω each, nodal analysis',
    'repeat',
    () => {
      const across = Number(between('[1 / 10, -1 / 10; -1 / 10, 2 / 10]').toFixed(6));
      return equals(10, 10, across);
    },
    'two in series across the open one, Kirchhoff',
    'PHYS',
  ),
  word('a fan with a run capacitor', '14, 31, 45 Ω', 'good', () => fan(14, 31, 45), 'sum rule, arithmetic', 'PHYS'),
  word(
    'a fan’s protector',
    'all open, hot',
    'protector-open',
    () => fan('OL', 'OL', 'OL', 'hot'),
    'common practice',
    'CP',
  ),
  word(
    'a ground at meter voltage',
    '0.4 MΩ',
    'grounded',
    () => compressor(4, 11, 15, undefined, 400_000),
    'a scroll maker accepts down to 0.5 MΩ (secondary source)',
    'V2',
  ),
]);
