/** Stretches that the calls about cooling share, each line one reply of a technician. */
import { GOOD, LINE, MEANS, PROVING, RESIDUAL } from '../lines.ts';

const PLATE = '17.9 96 1.2';
export const FIGURES = '240 239 comp 13.1 fan .9 split 19';
/** The restart of a call whose plate isn't known yet. */
export const PROVE = [PLATE, 'closed', FIGURES];
/** And of one whose plate is. */
export const LIVE = ['closed', FIGURES];
export const BOTH = [PLATE, 'qualified', 'comp 13.1 heat 0'];
/** From the observation to the split. */
export const toSplit = (seen = 'nothing'): string[] => ['e', 'psc', seen, ...BOTH];
export const WEAK_SPLIT = 'return 75 supply 63 wb 63';
export const GOOD_SPLIT = 'return 75 supply 56 wb 63';
export const HIGH_SPLIT = 'return 75 supply 50 wb 63';
/** On to the circuit: nothing seen that explains it. */
export const toCircuit = (): string[] => [...toSplit(), WEAK_SPLIT, 'nothing, small line 98 outdoor 85'];
/** A certified person with gauges on R-410A behind an expansion valve. */
export const toGauges = (which = '410a txv'): string[] => [...toCircuit(), 'certified', which, 'all four'];
/** Make-dead of the outdoor unit, and its dead tests up to a good capacitor: the motors come next. */
export const TO_MOTORS = [
  'yes',
  MEANS,
  'yes',
  'clean, 1 cap, 45+5 6% 440',
  PROVING,
  RESIDUAL,
  LINE,
  'no diagram',
  'wires off',
  GOOD,
];
