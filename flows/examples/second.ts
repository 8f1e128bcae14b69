/** Worked calls with a second capacitor in the cabinet, and of what starts a compressor. */
import type { Example } from '../../engine/vocabulary.ts';
import { GOOD, LINE, MEANS, MOTORS, PROVING, RUNS } from './lines.ts';

const two = [
  ...['d', 'psc', 'yes', MEANS, 'yes', 'clean, 2 caps, 45+5 6% 440', PROVING, '9.3 / 0 0 0 / 0 / 9.3'],
  ...[LINE, 'wires off', GOOD],
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
  start(
    'The contacts are closed at rest',
    'start capacitor, current relay',
    ['start 175 bleed 15k contacts .1 coil .3'],
    ['start-relay-fails'],
  ),
];
export const PTC: readonly Example[] = [
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
  ...[LINE, 'wires off'],
];
export const ANOTHER: readonly Example[] = [
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
    lines: [...two, 'potential', 'they don’t come off', ...MOTORS, ...RUNS],
    then: ['capacitor-good', 'second-capacitor-undecided', 'runs-nothing-found'],
    ends: 'done',
  },
];
