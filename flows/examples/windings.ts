/** Worked calls of the compressor's and the fan motor's windings. */
import type { Example } from '../../engine/vocabulary.ts';
import { GOOD, RUNS, wiresOff } from './lines.ts';
import { THREE_FAN } from './three.ts';

const compressor = (title: string, lines: readonly string[], then: readonly string[], ends: string): Example => ({
  title,
  lines: [...wiresOff(), GOOD, 'spin free', ...lines],
  then: ['capacitor-good', ...then],
  ends,
});
const WAITS = 'terminals-wait-for-a-senior';
export const COMPRESSOR_WINDINGS: readonly Example[] = [
  compressor(
    'Low to ground at the harness: the wire before the compressor',
    ['cr .9 cs 2.7 sr 3.6 g 0.2', 'comp 0.2 fan ol heater ol cable ol', 'ol', 'chafed', 'mended', 'ol', ...RUNS],
    ['low-to-ground', 'wire-chafed', 'repair-proven'],
    'done',
  ),
  compressor(
    'C open on a hot shell: the overload, left to cool',
    ['cr ol cs ol sr 3.6 g ol', 'hot', '17.9 96 1.2', 'stays off'],
    ['overload-open', 'left-off'],
    'left',
  ),
  compressor(
    'C open, and nobody can say how hot: counted as hot',
    ['cr ol cs ol sr 3.6 g ol', 'not sure', '17.9 96 1.2', 'stays off'],
    ['compressor-open-until-cool', 'left-off'],
    'left',
  ),
  compressor(
    'C open on a cold shell: lead or plug',
    ['cr ol cs ol sr 3.6 g ol', 'cold', 'no senior'],
    ['common-lead-open', WAITS],
    'raised',
  ),
  compressor(
    'The start winding open',
    ['cr .9 cs ol sr ol g ol', 'no senior'],
    ['winding-open-at-harness', WAITS],
    'raised',
  ),
  compressor('All three pairs open', ['cr ol cs ol sr ol g ol', 'no senior'], ['all-windings-open', WAITS], 'raised'),
  compressor(
    'A sum that does not fit, twice',
    ['cr .9 cs 2.7 sr 9 g ol', 'cr .9 cs 2.7 sr 9 g ol', ...RUNS],
    ['compressor-windings-undecided', 'runs-nothing-found'],
    'done',
  ),
  compressor(
    'Not measured, and it runs',
    ['skip no room for the leads', ...RUNS],
    ['compressor-windings-not-taken', 'runs-nothing-found'],
    'done',
  ),
];

const fan = (title: string, lines: readonly string[], then: readonly string[], ends: string): Example => ({
  title,
  lines: [...wiresOff('c'), GOOD, 'spin free', ...lines],
  then: ['capacitor-good', ...then],
  ends,
});
const MOTOR = [
  'nothing',
  'motor fitted',
  '45+5 6% 440',
  'other 45+5 440 herm 45.2 fan 5.01',
  'fitted',
  'wires back',
  ...RUNS,
];
export const FAN_WINDINGS: readonly Example[] = [
  ...THREE_FAN,
  fan(
    'Open on a cool motor: the motor',
    ['fan 15 ol ol frame ol', 'cool', ...MOTOR],
    ['fan-winding-open', 'new-part-right', 'repair-proven'],
    'done',
  ),
  fan(
    'Open on a hot motor: its protector, cooled and read again',
    ['fan ol ol ol frame ol', 'hot', '17.9 96 1.2', 'cooled', '15', 'closed', '240 239 comp 13.1 fan .9 split 19'],
    ['fan-protector-open', 'overload-without-cause'],
    'raised',
  ),
  fan(
    'Open, and nobody can say how hot: counted as hot',
    ['fan ol ol ol frame ol', 'cant tell', '17.9 96 1.2', 'not yet'],
    ['fan-open-until-cool', 'left-off'],
    'left',
  ),
  fan(
    'Open on a hot motor, and when it is cool it still doesn’t read: no power on it',
    ['fan ol ol ol frame ol', 'hot', '17.9 96 1.2', 'cooled', 'ol'],
    ['fan-protector-open', 'overload-still-open'],
    'raised',
  ),
  fan(
    'Low to its frame at the ends of its leads, alone, and past their run: the motor',
    ['fan 15 33 48 frame 900', 'comp ol fan 900 heater ol cable ol', '900', ...MOTOR],
    ['low-to-ground', 'fan-to-frame', 'new-part-right', 'repair-proven'],
    'done',
  ),
  fan(
    'A sum that does not fit, twice',
    ['fan 15 33 90 frame ol', 'fan 15 33 90 frame ol', ...RUNS],
    ['fan-windings-undecided', 'runs-nothing-found'],
    'done',
  ),
  fan(
    'Not measured, and it runs',
    ['skip leads spliced', ...RUNS],
    ['fan-windings-not-taken', 'runs-nothing-found'],
    'done',
  ),
];
