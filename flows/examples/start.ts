/** Worked calls that begin the manual: what is seen decides, and make-dead proves. */
import type { Example } from '../../engine/vocabulary.ts';
import {
  again,
  CLOSED,
  COMPRESSOR,
  GOOD,
  LINE,
  MEANS,
  MOTORS,
  ONE_DEAD,
  PROVING,
  RESIDUAL,
  RUNS,
  wiresOff,
} from './lines.ts';

export const ROUND: readonly Example[] = [
  {
    title: 'Out of scope: noted, and whom it belongs to',
    lines: ['d', 'vrf', 'code 12, nothing opened'],
    then: ['out-of-scope'],
    ends: 'raised',
  },
];

const FAN_HIGH = '240 239 comp 13.1 fan 1.6';
export const ROOT: readonly Example[] = [
  {
    title: 'Three rounds without a proven repair',
    lines: [
      ...wiresOff(),
      ...[GOOD, ...MOTORS, ...CLOSED, FAN_HIGH, 'off'],
      ...[...again(), GOOD, ...MOTORS, 'closed', FAN_HIGH, 'off'],
      ...[...again(), GOOD, ...MOTORS, 'closed', FAN_HIGH, 'off'],
    ],
    then: ['capacitor-good', 'capacitor-good', 'capacitor-good', 'rounds-spent'],
    ends: 'raised',
  },
];

export const MAKE_DEAD: readonly Example[] = [
  {
    title: 'Induced volts collapse under the tool, a charged section is discharged again',
    lines: [
      ...['d', 'psc', 'yes', MEANS, 'yes', 'clean, 1 cap, 45+5 6% 440'],
      ...['121 / 0 14 0 / 0 0 / 121', '121 / 0.6 / 121', '9.3 / 0.4 31 30 / 9.3', RESIDUAL],
      ...[LINE, 'no diagram', 'wires off', GOOD, ...MOTORS, ...RUNS],
    ],
    then: ['capacitor-good', 'runs-nothing-found'],
    ends: 'done',
  },
  {
    title: 'No capacitor seen on a unit that needs one: looked again, and it is found before any probe',
    lines: [
      ...['d', 'psc', 'yes', MEANS, 'yes', 'clean, 0 caps', 'clean, 1 cap, 45+5 6% 440', PROVING, RESIDUAL],
      ...[LINE, 'no diagram', 'wires off', GOOD, ...MOTORS, ...RUNS],
    ],
    then: ['capacitor-good', 'runs-nothing-found'],
    ends: 'done',
  },
  {
    title: 'None to be found on a unit that needs one: hands out, a senior decides',
    lines: ['d', 'psc', 'yes', MEANS, 'yes', 'clean, 0 caps', 'clean, 0 caps'],
    then: [],
    ends: 'held',
  },
  {
    title: 'Live with a lost leg: closed up, back to the means',
    lines: ['d', 'psc', 'yes', MEANS, 'yes', 'clean, 1 cap, 45+5 6% 440', '121 / 2 118 119 / 118 118 / 121'],
    then: [],
  },
];

export const MOTORS_EXAMPLES: readonly Example[] = [
  {
    title: 'The fan binds: its motor and a new capacitor',
    lines: [
      ...[...wiresOff(), GOOD, 'stiff, scrapes', COMPRESSOR, 'nothing', 'motor fitted'],
      ...['45+5 6% 440', 'other 45+5 440 herm 45.2 fan 5.01', 'fitted', 'wires back', ...RUNS],
    ],
    then: ['capacitor-good', 'fan-bearings', 'new-part-right', 'repair-proven'],
    ends: 'done',
  },
  {
    title: 'The blade rubs: cleared, it spins free, and no motor is condemned',
    lines: [...wiresOff(), GOOD, 'rubs', 'cleared', COMPRESSOR, ...RUNS],
    then: ['capacitor-good', 'fan-blade-cleared', 'repair-proven'],
    ends: 'done',
  },
  {
    title: 'It doesn’t turn: clear of everything, still stiff: bearings',
    lines: [
      ...[...wiresOff(), GOOD, 'stuck', 'stiff', COMPRESSOR, 'nothing', 'motor fitted'],
      ...['45+5 6% 440', 'other 45+5 440 herm 45.2 fan 5.01', 'fitted', 'wires back', ...RUNS],
    ],
    then: ['capacitor-good', 'fan-bearings', 'new-part-right', 'repair-proven'],
    ends: 'done',
  },
  {
    title: 'An electronic fan is stiff by hand: no motor on that, and its windings are not asked',
    lines: ['b', 'ecm', ...ONE_DEAD, 'stiff', COMPRESSOR],
    then: ['capacitor-good', 'electronic-fan-stiff'],
    ends: 'raised',
  },
  {
    title: 'The blade rubs and can’t be cleared: nothing is started, a senior',
    lines: [...wiresOff(), GOOD, 'rubs', 'bent blade', COMPRESSOR],
    then: ['capacitor-good', 'fan-blade-rubs'],
    ends: 'raised',
  },
];
