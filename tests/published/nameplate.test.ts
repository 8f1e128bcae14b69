/** LRA, RLA, MCC, MCA and MOP against published answers, the wrong ones too. */
import { mccAmps, rlaAmps, shareOf } from '../../engine/calc/amps.ts';
import { fuseBoundAmps, mcaAmps, STANDARD_AMPS, standardAmpsDown } from '../../engine/calc/circuit.ts';
import { parts } from '../judgements/fixture.ts';
import { type Check, checks } from './check.ts';
import { judged } from './judged.ts';
import { byMathjs } from './mathjs.ts';

const NEC = 'NEC 440.22(A), code quiz of a trade magazine (secondary source)';
const MANUAL = 'NEC 440 as quoted by a chiller manual, page 32 (secondary source)';
const UL = 'UL basis RLA = MCC/1.56, tip page of a trade page (secondary source)';
const amps = (
  what: string,
  input: string,
  published: string,
  ours: Check['ours'],
  expression: string,
  source: string,
  status: Check['status'] = 'V2',
): Check => ({
  ...{ what, input, published, ours, source, status, unit: 'A' },
  oracle: byMathjs(expression),
});
const down = (rla: string | number, others: string | number, factor: string): number | null =>
  standardAmpsDown(fuseBoundAmps(rla, others, factor));
/** The largest standard size not above a bound, by mathjs over the printed list. */
const downBy = (bound: string): string => `max(filter([${STANDARD_AMPS.join(', ')}], f(x) = x <= ${bound}))`;
const running = (comp: number): string =>
  judged('running-amps', { amps: parts('A', { comp }), plate: parts('A', { rla: 17.9, lra: 96 }) }).outcome;
const plate = (of: Readonly<Record<string, number>>): string => judged('nameplate', { plate: parts('A', of) }).outcome;
const word = (
  what: string,
  input: string,
  published: string,
  ours: Check['ours'],
  source: string,
  status: Check['status'],
): Check => ({
  ...{ what, input, published, ours, unit: '', source, status },
});

checks('nameplate', [
  amps('fuse to begin with', 'RLA 20, fan 2.5', '37.5', () => fuseBoundAmps(20, '2.5', '1.75'), '1.75 * 20 + 2.5', NEC),
  amps(
    'fuse to begin with, standard',
    'RLA 20, fan 2.5',
    '35',
    () => String(down(20, '2.5', '1.75')),
    downBy('37.5'),
    NEC,
  ),
  amps('fuse at most', 'RLA 20, fan 2.5', '47.5', () => fuseBoundAmps(20, '2.5'), '2.25 * 20 + 2.5', NEC),
  amps('fuse at most, standard', 'RLA 20, fan 2.5', '45', () => String(down(20, '2.5', '2.25')), downBy('47.5'), NEC),
  amps('MCA', 'RLA 20, fan 2.5', '27.5', () => mcaAmps(20, '2.5'), '1.25 * 20 + 2.5', MANUAL),
  amps('MCA', 'RLA 17.9, fan 1.2', '23.575', () => mcaAmps('17.9', '1.2'), '1.25 * 17.9 + 1.2', MANUAL),
  amps('MOP', 'RLA 17.9, fan 1.2', '41.475', () => fuseBoundAmps('17.9', '1.2'), '2.25 * 17.9 + 1.2', MANUAL),
  amps('MOP, standard', 'RLA 17.9, fan 1.2', '40', () => String(down('17.9', '1.2', '2.25')), downBy('41.475'), MANUAL),
  amps('RLA from MCC', '31.2 A / 1.56', '20.000', () => rlaAmps('31.2', '1.56'), '31.2 / 1.56', UL),
  amps('RLA from MCC', '31.2 A / 1.44', '21.667', () => rlaAmps('31.2', '1.44'), '31.2 / 1.44', UL),
  amps(
    'MCC from RLA',
    '156 % of 20 A',
    '31.2',
    () => mccAmps(20, '1.56'),
    '20 * 156 / 100',
    'glossary: no continuous current in excess of 156 % of the rated load amps (secondary source)',
  ),
  {
    what: 'MOP rounded up',
    input: 'bound 37.5 A',
    published: '40',
    ours: () => String(standardAmpsDown('37.5')),
    unit: 'A',
    source: NEC,
    status: 'V2',
    wrong: true,
  },
  {
    what: 'MOP rounded up',
    input: 'bound 47.5 A',
    published: '50',
    ours: () => String(standardAmpsDown('47.5')),
    unit: 'A',
    source: NEC,
    status: 'V2',
    wrong: true,
  },
  {
    what: 'standard sizes',
    input: 'up to 100 A',
    published: '15 20 25 30 35 40 45 50 60 70 80 90 100',
    ours: () => STANDARD_AMPS.join(' '),
    unit: '',
    source: 'NEC 240.6, value from memory',
    status: 'M',
  },
  { ...amps('share of LRA', '95 of 96 A', '0.990', () => shareOf(95, 96), '95 / 96', 'arithmetic', 'PHYS'), unit: '' },
  {
    ...amps('share of RLA', '14 of 17.9 A', '0.782', () => shareOf(14, '17.9'), '14 / 17.9', 'arithmetic', 'PHYS'),
    unit: '',
  },
  word(
    'locked rotor',
    '95 A, LRA 96, RLA 17.9',
    'not-starting',
    () => running(95),
    'near LRA is a locked rotor: common practice',
    'CP',
  ),
  word(
    'running',
    '14 A, LRA 96, RLA 17.9',
    'running',
    () => running(14),
    '60 to 85 % of RLA is usual: common practice',
    'CP',
  ),
  word(
    'over RLA is no fault',
    '18.8 A, RLA 17.9',
    'running',
    () => running(18.8),
    'RLA is computed and no limit: tip page of a trade page (secondary source)',
    'V2',
  ),
  word('past 156 % of RLA', '27.93 A, RLA 17.9', 'above-mcc', () => running(27.93), UL, 'V2'),
  word('at 156 % of RLA', '27.924 A, RLA 17.9', 'running', () => running(27.924), UL, 'V2'),
  word(
    'LRA is about 5 times running',
    'RLA 20, LRA 100',
    'plausible',
    () => plate({ rla: 20, lra: 100 }),
    'a question-and-answer page (secondary source)',
    'V2',
  ),
  word(
    'a plate as the examples print it',
    'RLA 20, LRA 110, FLA 2.5, MCA 27.5, MOP 45',
    'plausible',
    () => plate({ rla: 20, lra: 110, fla: 2.5, mca: 27.5, mop: 45 }),
    NEC,
    'V2',
  ),
  word('MOP above the most', 'RLA 20, FLA 2.5, MOP 50', 'odd', () => plate({ rla: 20, fla: 2.5, mop: 50 }), NEC, 'V2'),
]);
