/** Worked calls of warm air in cooling. */
import type { Example } from '../../../engine/vocabulary.ts';
import { MEANS, PROVING, RESIDUAL } from '../lines.ts';
import { BOTH, GOOD_SPLIT, LIVE, PROVE } from './lines.ts';

const DEAD = ['yes', MEANS, 'yes', 'clean, 1 cap, 45+5 6% 440', PROVING, RESIDUAL];
const toCoil = (wiring = 'o'): string[] => ['blowing hot', 'psc', 'heat pump', wiring, 'set right', ...DEAD];
const commanded = (): string[] => [...toCoil(), 'coil 18', 'wire back', '24', 'five minutes', 'coil 25.1', 'closed up'];
const raised = (title: string, lines: readonly string[], verdict: string): Example => ({
  title,
  lines,
  then: [verdict],
  ends: 'raised',
});
export const WARM: readonly Example[] = [
  {
    title: 'The thermostat’s setting was the other one',
    lines: ['blowing hot', 'psc', 'heat pump', 'o', 'was wrong', ...PROVE],
    then: ['reversing-set-right', 'repair-proven'],
    ends: 'done',
  },
  {
    title: 'The coil is open: a new coil, proven',
    lines: [...toCoil(), 'coil ol', 'new coil in', ...PROVE],
    then: ['reversing-coil', 'repair-proven'],
    ends: 'done',
  },
  {
    title: 'The coil is shorted, and none is here',
    lines: [...toCoil(), 'coil 2.1', 'no coil'],
    then: ['reversing-coil', 'no-reversing-coil'],
    ends: 'left',
  },
  raised(
    'No command at a good coil',
    [...toCoil(), 'coil 18', 'wire back', '24', 'left alone', 'coil 0.2'],
    'reversing-not-commanded',
  ),
  raised(
    'No volts at a good coil right after the call was changed: they decide nothing',
    [...toCoil(), 'coil 18', 'wire back', '24', 'just now', 'not sure', 'coil 0'],
    'reversing-undecided',
  ),
  raised('Stuck in heating', [...commanded(), 'heat 0 big 160 small 95 before 60 after 61'], 'reversing-valve'),
  raised('Hot gas leaks through', [...commanded(), 'heat 0 big 55 small 98 before 55 after 66'], 'reversing-valve'),
  raised('Electric heat runs', [...commanded(), 'heat 21 big 55 small 98 before 55 after 56'], 'strip-heat-in-cooling'),
  {
    title: 'Its transformer is in the same cabinet: no command is read beside a locked line, undecided',
    lines: [...toCoil(), 'coil 18', 'wire back', 'package'],
    then: ['control-not-apart', 'reversing-undecided'],
    ends: 'raised',
  },
  raised('No diagram', ['blowing hot', 'psc', 'heat pump', 'no diagram'], 'reversing-undecided'),
  {
    title: 'Coil and command good, the lines another day',
    lines: [...commanded().slice(0, -1), 'stays off'],
    then: ['warm-left-off'],
    ends: 'left',
  },
  {
    title: 'The valve is in order: the next round, as air that isn’t cold',
    lines: [
      ...[...commanded(), 'heat 0 big 55 small 98 before 55 after 56'],
      ...['e', 'nothing', ...BOTH, GOOD_SPLIT, ...LIVE],
    ],
    then: ['reversing-valve-in-order', 'cools-as-it-should', 'runs-nothing-found'],
    ends: 'done',
  },
];
