/** Worked calls that begin with “both run” and end elsewhere. */
import type { Example } from '../../../engine/vocabulary.ts';
import { COMPRESSOR } from '../lines.ts';
import { GOOD_SPLIT, LIVE, TO_MOTORS } from './lines.ts';

const MOTORS = ['spin free', COMPRESSOR, 'fan 14 31 45 frame ol'];
export const BOTH_RUN: readonly Example[] = [
  {
    title: 'Only the fan runs: on to the dead tests',
    lines: ['e', 'psc', 'nothing', '17.9 96 1.2', 'qualified', 'comp 0.8 heat 0', ...TO_MOTORS, ...MOTORS, ...LIVE],
    then: ['compressor-stands', 'capacitor-good', 'runs-nothing-found'],
    ends: 'done',
  },
  {
    title: 'It stalls: off, then the dead tests',
    lines: ['e', 'psc', 'nothing', '17.9 96 1.2', 'qualified', 'comp 88', ...TO_MOTORS, ...MOTORS, ...LIVE],
    then: ['compressor-stalled', 'capacitor-good', 'runs-nothing-found'],
    ends: 'done',
  },
  {
    title: 'Electric heat runs against the cooling',
    lines: ['e', 'psc', 'nothing', '17.9 96 1.2', 'qualified', 'comp 13.1 heat strips 21'],
    then: ['heat-while-cooling'],
    ends: 'raised',
  },
  {
    title: 'No clamp today: weaker, and on with the air',
    lines: ['e', 'psc', 'nothing', '17.9 96 1.2', 'no clamp', GOOD_SPLIT, ...LIVE],
    then: ['running-not-measured', 'cools-as-it-should', 'runs-nothing-found'],
    ends: 'done',
  },
];
