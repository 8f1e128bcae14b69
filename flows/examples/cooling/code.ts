/** Worked calls about an error code. */
import type { Example } from '../../../engine/vocabulary.ts';
import { COMPRESSOR } from '../lines.ts';
import { PROVE, TO_MOTORS } from './lines.ts';

const DEAD = ['psc', ...TO_MOTORS];
export const CODE: readonly Example[] = [
  {
    title: 'The code told of a delay',
    lines: ['blinking', 'blinks 1', 'delay', 'runs now', ...PROVE],
    then: ['code-was-a-delay', 'runs-nothing-found'],
    ends: 'done',
  },
  {
    title: 'A lockout by pressure: on to the tests',
    lines: [
      ...['error code', 'blinks 4', 'high pressure', ...DEAD, 'spin free', COMPRESSOR, 'fan 14 31 45 frame ol'],
      ...['24', 'left alone', 'y-c 25.6 coil 0', 'delay .1 lp .1 hp 25.6', 'fan ran well'],
    ],
    then: ['code-points-on', 'capacitor-good', 'high-pressure-unexplained'],
    ends: 'raised',
  },
  {
    title: 'The table names the board: a senior, no part',
    lines: ['flashing light', 'blinks 7', 'board fault'],
    then: ['code-handed-over'],
    ends: 'raised',
  },
  {
    title: 'The table names a leak',
    lines: ['fault code', 'blinks 9', 'leak detected'],
    then: ['leak-code'],
    ends: 'raised',
  },
  {
    title: 'No table, and it runs and cools',
    lines: ['fault', 'blinks 2', 'no table', 'runs and cools', ...PROVE],
    then: ['code-without-fault', 'runs-nothing-found'],
    ends: 'done',
  },
];
