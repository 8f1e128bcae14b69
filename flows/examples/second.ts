/** Worked calls with a second capacitor in the cabinet, and of what starts a compressor. */
import type { Example } from '../../engine/vocabulary.ts';
import { GOOD, LINE, MEANS, MOTORS, NEW_PART, PROVING, RUNS, WEAK, wiresOff } from './lines.ts';

const two = [
  ...['d', 'psc', 'yes', MEANS, 'yes', 'clean, 2 caps, 45+5 6% 440', PROVING, '9.3 / 0 0 0 / 0 / 9.3'],
  ...[LINE, 'no diagram', 'wires off', GOOD],
];
const FITTED = ['nothing', 'start parts fitted', 'wires back', ...RUNS];
const start = (
  title: string,
  kind: string,
  lines: readonly string[],
  verdicts: readonly string[],
  replaced = true,
): Example => ({
  title,
  lines: [...two, kind, 'off', '161-193 MFD 250 VAC', ...lines, ...MOTORS, ...(replaced ? FITTED : RUNS)],
  then: ['capacitor-good', ...verdicts, replaced ? 'repair-proven' : 'runs-nothing-found'],
  ends: 'done',
});

export const POTENTIAL: readonly Example[] = [
  start(
    'The start capacitor is low',
    'potential',
    ['start 120 bleed 15k contacts .1 coil 8k'],
    ['start-capacitor-fails'],
  ),
  start('The bleed resistor is open', 'potential', ['start 175 bleed ol contacts .1 coil 8k'], ['bleed-resistor-open']),
  start(
    'The relay’s contacts read 1.5 Ω at rest, and 0.2 Ω on zeroed leads: good',
    'potential',
    ['start 175 bleed 15k contacts 1.5 coil 8k', 'contacts 0.2 coil 8k'],
    [],
    false,
  ),
  start(
    'The relay’s contacts read 1.5 Ω at rest, and OL on bare metal: the relay',
    'potential',
    ['start 175 bleed 15k contacts 1.5 coil 8k', 'contacts ol coil 8k'],
    ['start-relay-fails'],
  ),
  {
    title: 'The relay’s contacts read 1.5 Ω twice: undecided, and nothing is started on it',
    lines: [
      ...[...two, 'potential', 'off', '161-193 MFD 250 VAC', 'start 175 bleed 15k contacts 1.5 coil 8k'],
      ...['contacts 1.4 coil 8k', ...MOTORS],
    ],
    then: ['capacitor-good', 'start-relay-undecided'],
    ends: 'raised',
  },
  start('All of it good', 'potential', ['start 175 bleed 15k contacts .1 coil 8k'], [], false),
  start(
    'Above its printed range twice: flagged, and it stays in',
    'potential',
    ['start 240 uf bleed 15k contacts .1 coil 8k', 'start 240 uf bleed 15k contacts .1 coil 8k'],
    ['start-capacitor-reads-high'],
    false,
  ),
];
export const CURRENT: readonly Example[] = [
  {
    title: 'Closed, and it was lying: its contacts condemn nothing, and nothing is started on them',
    lines: [
      ...[...two, 'start capacitor, current relay', 'off', '161-193 MFD 250 VAC'],
      ...['start 175 bleed 15k contacts .1 coil .3 lying', ...MOTORS],
    ],
    then: ['capacitor-good', 'start-relay-undecided'],
    ends: 'raised',
  },
  start(
    'The contacts are closed at rest',
    'start capacitor, current relay',
    ['start 175 bleed 15k contacts .1 coil .3 upright'],
    ['start-relay-fails'],
  ),
];
export const PTC: readonly Example[] = [
  start('It reads right and rattles', 'ptc', ['start 175 bleed 15k ptc 8 rattles'], ['start-relay-fails']),
  start('The PTC is open', 'ptc', ['start 175 bleed 15k ptc ol'], ['start-relay-fails']),
  start(
    'OL on the start capacitor leaves it open',
    'ptc',
    ['start ol bleed 15k ptc 8', 'start ol bleed 15k ptc 8'],
    ['start-capacitor-undecided'],
    false,
  ),
];

const seen = (look: string): string[] => [
  ...['d', 'psc', 'yes', MEANS, 'yes', `${look}, 2 caps, 45+5 6% 440`, PROVING, '9.3 / 0 0 0 / 0 / 9.3'],
  ...[LINE, 'no diagram', 'wires off'],
];
export const ANOTHER: readonly Example[] = [
  {
    title: 'The first one is weak, the second good: by the first one’s print alone',
    lines: [
      ...[
        ...two.slice(0, -1),
        WEAK,
        'run',
        'off',
        '5 µF 6% 370',
        'herm 4.96 case ol',
        ...MOTORS,
        'nothing',
        ...NEW_PART,
        ...RUNS,
      ],
    ],
    then: ['section-fails-value', 'capacitor-good', 'new-part-right', 'repair-proven'],
    ends: 'done',
  },
  {
    title: 'The start capacitor’s disc popped, the run capacitor beside it good',
    lines: [...seen('disc popped'), 'the other one', GOOD, 'yes start', ...MOTORS, ...FITTED],
    then: ['capacitor-good', 'start-capacitor-by-sight', 'repair-proven'],
    ends: 'done',
  },
  {
    title: 'The fan’s own run capacitor bulged, the first one good',
    lines: [...seen('bulged'), 'the other one', GOOD, 'yes run', ...MOTORS],
    then: ['capacitor-good', 'condemned-by-sight'],
  },
  {
    title: 'A run capacitor of its own for the fan, good',
    lines: [...two, 'run', 'off', '5 µF 6% 370', 'herm 4.96 case ol', ...MOTORS, ...RUNS],
    then: ['capacitor-good', 'capacitor-good', 'runs-nothing-found'],
    ends: 'done',
  },
  {
    title: 'The other capacitor keeps its wires',
    lines: [...two, 'potential', 'they don’t come off', ...MOTORS],
    then: ['capacitor-good', 'second-capacitor-undecided'],
    ends: 'raised',
  },
  {
    title: 'What the other capacitor is nobody can tell: neither a run part nor a start part is judged by guess',
    lines: [...two, 'not sure', ...MOTORS],
    then: ['capacitor-good', 'second-capacitor-undecided'],
    ends: 'raised',
  },
];

/** Two capacitors, the second one the fan's own. */
const OWN = ['run', 'off', '5 µF 6% 370'];
const OWN_FITS = ['5 µF 6% 370', 'other 5 uf 440, cap 5.02', 'fitted'];
export const OTHER_PART: readonly Example[] = [
  {
    title:
      'The second one is weak, the first good: the new part goes by the second one’s print, the first one’s is refused',
    lines: [
      ...[...two, ...OWN, 'herm 3.9 case ol', ...MOTORS, 'nothing', '5 µF 6% 370', 'other 45+5 440 45.1'],
      ...['other 5 uf 440, cap 5.02', 'fitted', 'wires back', ...RUNS],
    ],
    then: ['capacitor-good', 'section-fails-value', 'new-part-right', 'repair-proven'],
    ends: 'done',
  },
  {
    title: 'Both are weak: each new part by its own print',
    lines: [
      ...[...two.slice(0, -1), WEAK, ...OWN, 'herm 3.9 case ol', ...MOTORS, 'nothing'],
      ...[...NEW_PART.slice(0, 2), ...OWN_FITS, 'wires back', ...RUNS],
    ],
    then: ['section-fails-value', 'section-fails-value', 'new-part-right', 'new-part-right', 'repair-proven'],
    ends: 'done',
  },
  {
    title: 'The second one’s part is not on the truck',
    lines: [...two, ...OWN, 'herm 3.9 case ol', ...MOTORS, 'nothing', '5 µF 6% 370', 'none on the truck'],
    then: ['capacitor-good', 'section-fails-value', 'no-part'],
    ends: 'left',
  },
];

/** The fan's winding is open on a cool motor, beside what is said of the capacitors. */
const NEW_FAN = ['spin free', 'fan 15 ol ol frame ol', 'cool', 'nothing', 'motor fitted'];
export const MOTOR_PART: readonly Example[] = [
  {
    title: 'The new motor asks for another capacitor than the old one: its plate decides',
    lines: [
      ...[...wiresOff('c'), GOOD, ...NEW_FAN, '45+7.5 6% 440', 'other 45+5 440 herm 45.2 fan 5.01'],
      ...['other 45+7.5 440 herm 45.2 fan 7.52', 'fitted', 'wires back', ...RUNS],
    ],
    then: ['capacitor-good', 'fan-winding-open', 'new-part-right', 'repair-proven'],
    ends: 'done',
  },
  {
    title: 'Two singles, HERM’s condemned as well: the fan’s goes by the motor’s plate, HERM’s by its own print',
    lines: [
      ...['c', 'psc', 'neither', 'yes', MEANS, 'yes', 'clean, 2 caps, 45 6% 440', PROVING, '9.3 / 0 0 / 9.3'],
      ...[LINE, 'no diagram', 'wires off', 'herm 36.1 case ol', ...OWN, 'herm 4.96 case ol', ...NEW_FAN],
      ...['5 uf 6% 440', 'other 5 uf 440 herm 5.02', 'fitted', 'still in', 'other 45 uf 440 herm 45.2', 'fitted'],
      ...['wires back', ...RUNS],
    ],
    then: [
      ...['section-fails-value', 'capacitor-good', 'fan-winding-open'],
      ...['new-part-right', 'new-part-right', 'repair-proven'],
    ],
    ends: 'done',
  },
];

/** Three singles of one cabinet. */
const THREE = [
  ...['d', 'psc', 'yes', MEANS, 'yes', 'clean, 3 caps, 45 6% 440', PROVING, '9.3 / 0 0 0 / 9.3'],
  ...[LINE, 'no diagram', 'wires off', 'herm 45.2 case ol'],
];
export const THREE_CONDEMNED: readonly Example[] = [
  {
    title: 'The second and the third are weak: one print is kept of them, so a senior says which part goes where',
    lines: [...[...THREE, ...OWN, 'herm 3.9 case ol', ...OWN, 'herm 3.8 case ol', ...MOTORS, 'nothing']],
    then: ['capacitor-good', 'section-fails-value', 'section-fails-value', 'two-other-capacitors-fail'],
    ends: 'left',
  },
];
