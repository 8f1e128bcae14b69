/** Worked calls of what is looked and listened for before anything is opened. */
import type { Example } from '../../engine/vocabulary.ts';
import { GATES } from './control.ts';
import { COMPRESSOR, LINE, NEW_PART, RUNS } from './lines.ts';
import { THREE_GATES } from './three.ts';

const call = (title: string, lines: readonly string[], then: readonly string[], ends?: string): Example => ({
  ...{ title, lines, then, ...(ends === undefined ? {} : { ends }) },
});
const FAN = 'fan 14 31 45 frame ol';

export const FAN_RESTS: readonly Example[] = [
  call(
    'In defrost, watched to its end: the fan was meant to stand',
    ['c', 'psc', 'steam', 'started again', 'it cools'],
    ['fan-was-meant-to-stand'],
    'unrepaired',
  ),
  call(
    'A low-ambient control stopped it, and it starts again',
    ['c', 'ecm', 'low ambient control', 'runs again', 'it cools'],
    ['fan-was-meant-to-stand'],
    'unrepaired',
  ),
  call(
    'It starts again, and nobody can tell whether it cools',
    ['c', 'psc', 'low ambient control', 'runs again', 'too cold out'],
    ['fan-stood-cooling-not-seen'],
    'raised',
  ),
  call(
    'Fourteen minutes and it stands still: tested like any other',
    [
      ...['c', 'psc', 'frost', 'stands still', ...GATES, LINE, 'no diagram', 'wires off'],
      ...['herm 44.6 fan 2.9 hf 2.7 case ol', 'spin free', FAN, 'coil dirty', ...NEW_PART, ...RUNS],
    ],
    ['section-fails-value', 'new-part-right', 'repair-proven'],
    'done',
  ),
  call(
    'The fan was meant to stand, and the air isn’t cold all the same',
    ['c', 'psc', 'in defrost', 'started', 'not cold', 'nothing'],
    ['fan-stood-and-not-cold'],
  ),
  call(
    'Nobody watched it: not called normal, it stays off',
    ['c', 'psc', 'steam', 'cant watch', 'stays off'],
    ['fan-not-watched'],
    'left',
  ),
];

export const WHOSE_HUM: readonly Example[] = [
  call(
    'A growl: the dead tests, and a weak capacitor',
    [
      ...['b', 'psc', 'growls', ...GATES, LINE, 'no diagram', 'wires off', 'herm 36.1 fan 5.02 hf 4.4 case ol'],
      ...['spin free', COMPRESSOR, FAN, 'age', ...NEW_PART, ...RUNS],
    ],
    ['section-fails-value', 'new-part-right', 'repair-proven'],
    'done',
  ),
  call(
    'A faint, steady hum: the contactor’s coil first, and it doesn’t pull in',
    [
      ...['b', 'psc', 'faint', 'steady', '24', ...GATES, 'coil 23.1', 'stays out', 'contacts .1 .1 coil 12.4'],
      ...['nothing', 'contactor fitted', 'wires back', ...RUNS],
    ],
    ['contactor-jammed', 'repair-proven'],
    'done',
  ),
  call(
    'A faint hum, and it pulls in clean: then the dead tests',
    [
      ...['b', 'psc', 'faint', 'steady', '24', ...GATES, 'coil 24.1 rc 25', 'quiet', LINE, 'no diagram', 'wires off'],
      ...['herm 36.1 fan 5.02 hf 4.4 case ol', 'spin free', COMPRESSOR, FAN, 'age', ...NEW_PART, ...RUNS],
    ],
    ['section-fails-value', 'new-part-right', 'repair-proven'],
    'done',
  ),
];

/** The cabinet proved dead on three lines, and the probes placed in it. */
const PLACED = [...THREE_GATES, 'placed'];
export const PHASE_MONITOR: readonly Example[] = [
  call(
    'It shows a fault, and a line is missing: no part is tested',
    ['a', '3-phase', 'red light', 'qualified', ...PLACED, '231 118 113'],
    ['single-phasing'],
    'raised',
  ),
  call(
    'Dark, and no line has volts',
    ['a', '3-phase', 'dark', 'qualified', ...PLACED, '0 0 0', '240'],
    ['supply-absent'],
    'left',
  ),
  call(
    'Dark, and nothing on the line side either: a dead meter reads so too',
    ['a', '3-phase', 'dark', 'qualified', ...PLACED, '0 0 0', '0'],
    ['nothing-at-the-means'],
    'raised',
  ),
  call(
    'It shows a fault, and the lines are too far apart',
    ['a', '3-phase', 'fault', 'qualified', ...PLACED, '231 208 219'],
    ['supply-unbalanced'],
    'raised',
  ),
  call(
    'It shows a fault, and the lines read right: it stays in, and a senior leads on',
    ['f', '3-phase', 'fault', 'qualified', ...PLACED, '230 231 229'],
    ['phase-monitor-holds-off'],
    'raised',
  ),
  call(
    'It shows a fault, and no probe can be placed: nothing live, nothing started',
    ['a', '3-phase', 'fault', 'qualified', ...THREE_GATES, 'no clips'],
    ['phase-monitor-not-explained'],
    'raised',
  ),
  call(
    'It shows a fault, and nobody reads the lines: nothing is started',
    ['a', '3-phase', 'fault', 'not qualified'],
    ['phase-monitor-not-explained'],
    'raised',
  ),
  call(
    'It shows a fault at 180 V, before the means as well',
    ['a', '3-phase', 'fault', 'qualified', ...PLACED, '180 181 179', 'idle unit 180 feed 181'],
    ['supply-out'],
    'raised',
  ),
  call(
    'It shows a fault at 180 V once, and not again: undecided',
    ['a', '3-phase', 'fault', 'qualified', ...PLACED, '180 181 179', 'idle unit 229 feed 230'],
    ['supply-not-located'],
    'raised',
  ),
];
