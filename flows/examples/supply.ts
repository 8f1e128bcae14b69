/** Worked calls of the supply and the breaker, under power. */
import type { Example } from '../../engine/vocabulary.ts';
import { BLOCK, GATES } from './control.ts';
import { DEAD_AGAIN, RUNS, THREE_RUN } from './lines.ts';
import { THREE_BLOCK, THREE_GATES } from './three.ts';
import { INSULATED } from './trips.ts';

const HUMS = ['b', 'psc', 'growls', ...GATES, ...BLOCK];
const NEUTRAL = [
  ...[
    'b',
    'psc',
    'growls',
    'yes',
    'breaker, no other feed, one leg and neutral, outlet',
    'yes',
    'clean, 1 cap, 45+5 6% 440',
  ],
  ...['121 / 0 0 0 0 / 121', '9.3 / 0.6 0.1 0.5 / 9.3', ...BLOCK],
];
const THREE = ['b', '3-phase', 'growls', ...THREE_GATES, ...THREE_BLOCK];
export const SUPPLY: readonly Example[] = [
  {
    title: 'It hums, nothing turns, and a leg is lost',
    lines: [...HUMS, 'clear', '4 119 118'],
    then: ['capacitor-good', 'leg-lost'],
    ends: 'left',
  },
  {
    title: 'One leg and neutral, and volts on the neutral',
    lines: [...NEUTRAL, 'clear', 'hn 119 hg 121 ng 9'],
    then: ['capacitor-good', 'neutral-not-sound'],
    ends: 'left',
  },
  {
    title: 'One leg and neutral, and the neutral gone',
    lines: [...NEUTRAL, 'clear', 'hn 3 hg 121 ng 2'],
    then: ['capacitor-good', 'neutral-not-sound'],
    ends: 'left',
  },
  {
    title: 'It falls below its limit while it starts',
    lines: [...HUMS, 'clear', '236 118 118 min 188', 'starts rest 236 unit 187 feed 188'],
    then: ['capacitor-good', 'supply-out'],
    ends: 'raised',
  },
  {
    title: 'T1 to T2 falls at the start while the line holds: it runs, and a pole that drops 1.4 V is found under load',
    lines: [
      ...[...HUMS, 'clear', '240 120 120 min 232 t1t2 180', ...RUNS, '1.4 0.2', ...DEAD_AGAIN],
      ...['contactor fitted', 'wires back'],
    ],
    then: ['capacitor-good', 'load-side-falls-at-start', 'contact-drop'],
  },
  {
    title: 'T1 to T2 falls at the start, and every pole is fine under load: the wiring, a senior',
    lines: [...HUMS, 'clear', '240 120 120 min 232 t1t2 180', ...RUNS, '0.2 0.2'],
    then: ['capacitor-good', 'load-side-falls-at-start', 'drop-in-the-wiring'],
    ends: 'raised',
  },
  {
    title: 'A leg reads nothing to ground, also on bare metal: hands off, a senior',
    lines: [...HUMS, 'clear', '240 0 120', '240 0 120'],
    then: ['capacitor-good', 'no-ground-at-the-unit'],
    ends: 'raised',
  },
  {
    title: 'A leg reads nothing to ground on paint, and its volts on bare metal',
    lines: [...HUMS, 'clear', '240 0 120', '240 120 120', ...RUNS],
    then: ['capacitor-good', 'runs-nothing-found'],
    ends: 'done',
  },
  {
    title: 'One leg and neutral, and hot to ground reads nothing, also on bare metal',
    lines: [...NEUTRAL, 'clear', 'hn 119 hg 0 ng 0', 'hn 119 hg 0 ng 0'],
    then: ['capacitor-good', 'no-ground-at-the-unit'],
    ends: 'raised',
  },
  {
    title: 'Out of limits at rest',
    lines: [...HUMS, 'clear', '262 131 131', 'idle unit 262 feed 262'],
    then: ['capacitor-good', 'supply-out'],
    ends: 'raised',
  },
  {
    title: 'Not read: the restart has to show it',
    lines: [...HUMS, 'clear', 'cant', ...RUNS],
    then: ['capacitor-good', 'supply-not-read', 'runs-nothing-found'],
    ends: 'done',
  },
  {
    title: 'Not today',
    lines: [...HUMS, 'not today'],
    then: ['capacitor-good', 'left-off'],
    ends: 'left',
  },
  {
    title: 'Three-phase, one line missing: off',
    lines: [...THREE, 'clear', '208 104 104'],
    then: ['single-phasing'],
    ends: 'raised',
  },
  {
    title: 'Three-phase, the lines too far apart',
    lines: [...THREE, 'clear', '230 206 230'],
    then: ['supply-unbalanced'],
    ends: 'raised',
  },
  {
    title: 'Three-phase, more than 2 % apart: reported',
    lines: [...THREE, 'clear', '230 222 230', ...THREE_RUN],
    then: ['supply-unbalance-reported', 'runs-nothing-found'],
    ends: 'done',
  },
];

const LATER = ['h', 'psc', 'after minutes', ...GATES, ...BLOCK, ...INSULATED, 'closed', 'trips after a while'];
export const BREAKER: readonly Example[] = [
  {
    title: 'Below its rating, and it drops volts: the breaker',
    lines: [...LATER, 'rating 40 mop 40', 'qualified', 'load 22 drop 0.6'],
    then: ['capacitor-good', 'breaker-weak'],
    ends: 'raised',
  },
  {
    title: 'The load is above its rating',
    lines: [...LATER, 'rating 20 mop 40', 'qualified', 'load 23 drop 0.1'],
    then: ['capacitor-good', 'load-above-the-breaker'],
    ends: 'raised',
  },
  {
    title: 'It trips again at once: an electrician',
    lines: ['h', 'psc', 'at once', ...GATES, ...BLOCK, ...INSULATED, 'closed', 'trips again'],
    then: ['capacitor-good', 'breaker-not-measured'],
    ends: 'raised',
  },
];

const LOW = [...HUMS, 'clear', '236 118 118 min 188'];
export const LOCATED: readonly Example[] = [
  {
    title: 'It falls at the start, and a pole of the means loses it: located',
    lines: [...LOW, 'starts rest 236 unit 187 poles 0.1 44'],
    then: ['capacitor-good', 'supply-out'],
    ends: 'raised',
  },
  {
    title: 'Nothing drew at the second reading: a drop shows only under load, undecided',
    lines: [...LOW, 'idle unit 190 feed 236 poles 0 0'],
    then: ['capacitor-good', 'supply-not-located'],
    ends: 'raised',
  },
  {
    title: 'It doesn’t repeat: one reading decides no supply',
    lines: [...LOW, 'starts rest 236 unit 226 feed 235'],
    then: ['capacitor-good', 'supply-not-located'],
    ends: 'raised',
  },
  {
    title: 'Not qualified for the second reading: undecided',
    lines: [...LOW, 'can’t'],
    then: ['capacitor-good', 'supply-not-located'],
    ends: 'raised',
  },
];
