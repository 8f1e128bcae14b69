/** Worked calls of the dead block: fuses, contactor, ground, and whether there is a capacitor at all. */
import type { Example } from '../../engine/vocabulary.ts';
import { dead, GOOD, MOTORS, RUNS, wiresOff } from './lines.ts';

const block = (line: string): string[] => [...dead(), line, 'no diagram', 'wires off', GOOD, ...MOTORS];
/** `again`: the second reading, coil and contacts. */
const contactor = (title: string, line: string, again: string, verdict: string): Example => ({
  title,
  lines: [
    ...dead(),
    line,
    again,
    'no diagram',
    'wires off',
    GOOD,
    ...MOTORS,
    'contactor',
    'contactor fitted',
    'wires back',
    ...RUNS,
  ],
  then: [verdict, 'capacitor-good', 'repair-proven'],
  ends: 'done',
});

export const DEAD_BLOCK: readonly Example[] = [
  contactor(
    'The contactor’s coil is open',
    'fuses 0.1 0.1 contacts .1 .1 coil ol t1g ol t2g ol',
    'contacts .1 .1 coil ol, prints 24',
    'contactor-coil-open',
  ),
  contactor(
    'The contactor’s coil is shorted',
    'fuses 0.1 0.1 contacts .1 .1 coil 1.2 t1g ol t2g ol',
    'contacts .1 .1 coil 1.3, prints 240',
    'contactor-coil-shorted',
  ),
  contactor(
    'A contact reads high with the armature pressed in',
    'fuses 0.1 0.1 contacts .1 3.2 coil 12.6 t1g ol t2g ol',
    'contacts .1 3.1 coil 12.6, prints 24',
    'contactor-contacts',
  ),
  {
    title: 'A coil of 12.6 kΩ, then 12.6 Ω on bright metal: nothing is wrong with it',
    lines: [
      ...[...dead(), 'fuses 0.1 0.1 contacts .1 .1 coil 12.6k t1g ol t2g ol', 'contacts .1 .1 coil 12.6, prints 24'],
      ...['no diagram', 'wires off', GOOD, ...MOTORS, ...RUNS],
    ],
    then: ['capacitor-good', 'runs-nothing-found'],
    ends: 'done',
  },
  {
    title: 'A coil of 24 V that reads 6 Ω twice: nothing is started on it',
    lines: [
      ...[...dead(), 'fuses 0.1 0.1 contacts .1 .1 coil 6 t1g ol t2g ol', 'contacts .1 .1 coil 6.1, prints 24'],
      ...['no diagram', 'wires off', GOOD, ...MOTORS],
    ],
    then: ['contactor-undecided', 'capacitor-good'],
    ends: 'raised',
  },
  {
    title: 'A blown fuse without a cause: it stays off',
    lines: [
      ...block('fuses 0.1 ol contacts .1 .1 coil 12.6 t1g ol t2g ol'),
      ...['ready, reciprocating, 500', '120', '9.3 / 0.4 / 9.3'],
    ],
    then: ['fuse-blown', 'capacitor-good', 'fuse-without-cause'],
    ends: 'raised',
  },
  {
    title: 'Low to ground, and no motor explains it',
    lines: [...block('fuses 0.1 0.1 contacts .1 .1 coil 12.6 t1g 8000 t2g ol'), 'comp ol fan ol heater ol cable ol'],
    then: ['low-to-ground', 'capacitor-good', 'ground-gone'],
    ends: 'raised',
  },
  {
    title: 'Fuses, contactor and ground not taken; nothing found',
    lines: [...block('skip the meter’s ohms range is out'), ...RUNS],
    then: ['fuses-contactor-ground-not-taken', 'capacitor-good', 'runs-nothing-found'],
    ends: 'done',
  },
];

const UNMARKED = [...dead(), 'fuses 0.1 0.1 contacts .1 .1 coil 12.6 t1g ol t2g ol', 'no diagram', 'unreadable'];
export const TERMINALS: readonly Example[] = [
  {
    title: 'Three readings prove which terminal is which',
    lines: [
      ...UNMARKED,
      '1 4 3',
      '5.03 4.52 44.6',
      'herm 44.6 fan 5.03 case ol',
      'fan 5.03 hf 4.52',
      ...MOTORS,
      ...RUNS,
    ],
    then: ['capacitor-good', 'runs-nothing-found'],
    ends: 'done',
  },
  {
    title: 'Neither tabs nor readings tell the terminals apart',
    lines: [...UNMARKED, '4 3 3', 'skip no range', ...MOTORS],
    then: ['terminals-unknown'],
    ends: 'raised',
  },
];

export const RUN_CAPACITOR: readonly Example[] = [
  {
    title: 'A bulged top condemns it by sight',
    lines: [
      ...wiresOff('d', 'bulged, 1 cap, 45+5 6% 440'),
      ...[...MOTORS, 'age', 'other 45+5 440 herm 45.3 fan 5.04', 'fitted', 'wires back', ...RUNS],
    ],
    then: ['condemned-by-sight', 'new-part-right', 'repair-proven'],
    ends: 'done',
  },
  {
    title: 'The wires do not come off',
    lines: [...wiresOff().slice(0, -1), 'they don’t come off', ...MOTORS],
    then: ['wires-stuck'],
    ends: 'raised',
  },
  {
    title: 'No rating anywhere, and not shorted',
    lines: [...wiresOff('d', 'clean, 1 cap'), 'skip gone', 'skip not there either', 'herm ol fan ol', ...MOTORS],
    then: ['rating-unknown'],
    ends: 'raised',
  },
  {
    title: 'Three tries that do not settle',
    lines: [
      ...wiresOff(),
      ...['herm 44.6 fan 5.03 hf 4.52 case 5 M', 'herm 49.8 fan 5.03 hf 4.57 case ol'],
      ...['herm 44.6 fan 5.03 hf 3.1 case ol', ...MOTORS],
    ],
    then: ['readings-spent'],
    ends: 'raised',
  },
];
