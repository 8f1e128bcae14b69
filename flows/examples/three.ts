/** Worked calls of three-phase compressors and of terminals. */
import type { Example } from '../../engine/vocabulary.ts';
import { GATES } from './control.ts';
import { CLOSED, GOOD, LINE, RUNS, THREE_RUN } from './lines.ts';

export const PROVED = '121 / 0 0 0 0 0 0 / 0 0 0 / 121';
/** Make-dead on three lines, no capacitor in reach. */
export const THREE_GATES = ['yes', 'breaker, no other feed, three lines, outlet', 'yes', 'clean, 0 caps', PROVED];
export const THREE_LINE = 'fuses 0.1 0.1 0.1 contacts .1 .1 .1 coil 12.6 t1g ol t2g ol t3g ol';
const WHOLE = '1.2 1.2 1.2 ol';
const FAN = 'fan 14 31 45 frame ol';
export const THREE_BLOCK = [THREE_LINE, 'spin free', WHOLE, FAN];
const at = (...pairs: string[]): string[] => [
  'b',
  '3-phase',
  'growls',
  ...THREE_GATES,
  THREE_LINE,
  'spin free',
  ...pairs,
];

/** A fan on three lines, from its pairs on. */
export const THREE_FAN: readonly Example[] = [
  {
    title: 'A fan on three lines: three equal pairs are right',
    lines: [...at(WHOLE), 'fan 14 14 14 frame ol', 'clear', '230 230 230', ...THREE_RUN],
    then: ['runs-nothing-found'],
    ends: 'done',
  },
  {
    title: 'A fan on three lines, open on a cool motor: the new one has no capacitor',
    lines: [
      ...[...at(WHOLE), 'fan 14 ol ol frame ol', 'cool', 'nothing', 'motor fitted', 'no capacitor'],
      ...['wires back', ...THREE_RUN],
    ],
    then: ['fan-winding-open', 'repair-proven'],
    ends: 'done',
  },
];
export const THREE_WINDINGS: readonly Example[] = [
  {
    title: 'All three open on a hot shell: its protector',
    lines: [...at('ol ol ol ol', 'hot'), FAN, '17.9 96 1.2', 'not yet'],
    then: ['overload-open', 'left-off'],
    ends: 'left',
  },
  {
    title: 'All three open, and nobody can say how hot: counted as hot',
    lines: [...at('ol ol ol ol', 'not sure'), FAN, '17.9 96 1.2', 'not yet'],
    then: ['compressor-open-until-cool', 'left-off'],
    ends: 'left',
  },
  {
    title: 'One winding open at the harness: the terminals wait for a senior',
    lines: [...at('1.2 ol ol ol'), FAN, 'no senior'],
    then: ['winding-open-at-harness', 'terminals-wait-for-a-senior'],
    ends: 'raised',
  },
  {
    title: 'Low to ground, and also clear of every edge: the insulation test, and a senior',
    lines: [...at('1.2 1.2 1.2 4k'), FAN, 'comp 4k fan ol heater ol cable ol', '4k', 'no tool for it'],
    then: ['low-to-ground', 'compressor-low-to-ground', 'insulation-not-taken'],
    ends: 'raised',
  },
  {
    title: 'Pairs that differ twice condemn nothing',
    lines: [...at('1.2 1.2 40 ol', '1.2 1.2 40 ol'), FAN, 'clear', '230 230 230', ...THREE_RUN],
    then: ['compressor-windings-undecided', 'runs-nothing-found'],
    ends: 'done',
  },
  {
    title: 'Not measured',
    lines: [...at('cant reach it'), FAN, 'clear', '230 230 230', ...THREE_RUN],
    then: ['compressor-windings-not-taken', 'runs-nothing-found'],
    ends: 'done',
  },
  {
    title: '460 V: the plate is asked before the line is judged',
    lines: [
      ...['b', '3-phase', 'growls', ...THREE_GATES, ...THREE_BLOCK, 'clear', '462 463 455', '460', ...CLOSED],
      '462 463 455 comp 8.1 8.2 8.0 fan .9 split 18',
    ],
    then: ['runs-nothing-found'],
    ends: 'done',
  },
  {
    title: 'It runs, and its legs draw too far apart: a senior',
    lines: [
      ...['b', '3-phase', 'growls', ...THREE_GATES, ...THREE_BLOCK, 'clear', '230 230 230', ...CLOSED],
      '230 230 230 comp 16.1 13.2 11 fan .9',
    ],
    then: ['legs-apart'],
    ends: 'raised',
  },
];

const OPEN = ['d', 'psc', ...GATES, LINE, 'no diagram', 'wires off', GOOD, 'spin free', 'cr ol cs ol sr ol g ol'];
const COLD = [...OPEN, 'senior agreed', 'cold'];
const THREE_COLD = [...at('1.2 ol ol ol'), FAN, 'senior agreed', 'cold'];
export const TERMINALS: readonly Example[] = [
  {
    title: 'Whole at the terminals: the plug, mended',
    lines: [...COLD, 'cr .9 cs 2.7 sr 3.6 g ol', 'mended', ...RUNS],
    then: ['capacitor-good', 'all-windings-open', 'compressor-plug-or-lead', 'repair-proven'],
    ends: 'done',
  },
  {
    title: 'Not before it is cold',
    lines: [...OPEN, 'senior agreed', 'hot'],
    then: ['capacitor-good', 'all-windings-open', 'compressor-has-to-cool'],
    ends: 'left',
  },
  {
    title: 'Open at its own terminals, cold: a senior confirms',
    lines: [...COLD, 'cr .9 cs ol sr ol g ol', 'cr .9 cs ol sr ol g ol'],
    then: ['capacitor-good', 'all-windings-open', 'compressor-winding-open'],
    ends: 'raised',
  },
  {
    title: 'The overload stays open, cold',
    lines: [...COLD, 'cr ol cs ol sr 3.6 g ol', 'cr ol cs ol sr 3.6 g ol'],
    then: ['capacitor-good', 'all-windings-open', 'overload-stays-open'],
    ends: 'raised',
  },
  {
    title: 'Three-phase, one winding open at the terminals: three equal pairs are asked for, and a senior confirms',
    lines: [...THREE_COLD, 'ol ol 1.2 ol', 'ol ol 1.2 ol'],
    then: ['winding-open-at-harness', 'compressor-winding-open'],
    ends: 'raised',
  },
  {
    title: 'Three-phase, whole at the terminals: the plug or a lead, mended',
    lines: [...THREE_COLD, WHOLE, 'mended', ...THREE_RUN],
    then: ['winding-open-at-harness', 'compressor-plug-or-lead', 'repair-proven'],
    ends: 'done',
  },
  {
    title: 'Three-phase, all three pairs open at the terminals, cold: its overload stays open',
    lines: [...THREE_COLD, 'ol ol ol ol', 'ol ol ol ol'],
    then: ['winding-open-at-harness', 'overload-stays-open'],
    ends: 'raised',
  },
  {
    title: 'Three-phase, open once at the terminals and whole on zeroed leads: no compressor is condemned',
    lines: [...THREE_COLD, 'ol ol ol ol', WHOLE, 'mended', ...THREE_RUN],
    then: ['winding-open-at-harness', 'compressor-plug-or-lead', 'repair-proven'],
    ends: 'done',
  },
  {
    title: 'Open once at the terminals, and not read again: it waits',
    lines: [...COLD, 'cr ol cs ol sr ol g ol', 'skip leads broke'],
    then: ['capacitor-good', 'all-windings-open', 'terminals-wait-for-a-senior'],
    ends: 'raised',
  },
  {
    title: 'Open at the terminals twice, in different pairs: one line was read wrong, and it waits',
    lines: [...COLD, 'cr .9 cs ol sr ol g ol', 'cr ol cs 2.7 sr ol g ol'],
    then: ['capacitor-good', 'all-windings-open', 'terminals-wait-for-a-senior'],
    ends: 'raised',
  },
  {
    title: 'Three-phase, open at the terminals twice, in different pairs: it waits',
    lines: [...THREE_COLD, 'ol ol 1.2 ol', '1.2 ol ol ol'],
    then: ['winding-open-at-harness', 'terminals-wait-for-a-senior'],
    ends: 'raised',
  },
  {
    title: 'Low to ground at the terminals',
    lines: [...COLD, 'cr .9 cs 2.7 sr 3.6 g 4k'],
    then: ['capacitor-good', 'all-windings-open', 'compressor-grounded'],
    ends: 'raised',
  },
];
