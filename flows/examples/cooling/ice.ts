/** Worked calls that begin with ice. */
import type { Example } from '../../../engine/vocabulary.ts';
import { PLACED } from '../blower.ts';
import { GATES } from '../control.ts';
import { BOTH, HIGH_SPLIT, LIVE } from './lines.ts';

export const ICE: readonly Example[] = [
  {
    title: 'Thawed, then the filter: changed and proven',
    lines: [
      ...['ice', 'house', 'off, fan on', 'drain open', 'thawed', 'psc', 'filter plugged', ...BOTH],
      ...[HIGH_SPLIT, 'new filter', ...LIVE],
    ],
    then: ['thawed', 'airflow-short', 'air-side-righted', 'repair-proven'],
    ends: 'done',
  },
  {
    title: 'Iced because no air passes: on to the blower',
    lines: [
      'iced up',
      'attic',
      'no air',
      'outdoor off',
      'nothing',
      'ecm',
      'off now',
      'rested',
      'qualified',
      ...PLACED,
      '25.8',
      'variable',
    ],
    then: ['ice-without-air', 'electronic-blower-handed-over'],
    ends: 'raised',
  },
  {
    title: 'The outdoor unit doesn’t stop: off at its means, thawed, then why it runs on',
    lines: [
      ...['frozen', 'house', 'wont go off', 'drain open', 'thawed', 'psc', 'blower on', '24', ...GATES, 'coil 0'],
      ...['contacts ol ol'],
    ],
    then: ['ice-and-wont-stop', 'thawed', 'runs-on-undecided'],
    ends: 'raised',
  },
  {
    title: 'Not sure whether it stands: looked, and no air comes',
    lines: ['frozen', 'house', 'not sure', 'no air', 'wont go off', 'psc', 'blower off', '24', ...GATES, 'coil 118'],
    then: ['ice-without-air', 'outdoor-stays-on', 'control-volts-foreign'],
    ends: 'raised',
  },
  {
    title: 'Water caught, still ice after hours: somebody comes back',
    lines: ['frozen coil', 'indoor', 'blower on', 'pan full', 'bucket under it', 'still frozen'],
    then: ['still-thawing'],
    ends: 'left',
  },
  {
    title: 'It can’t thaw safely here',
    lines: ['ice', 'indoor', 'off, fan on', 'would run over', 'not safe'],
    then: ['thaw-not-safe'],
    ends: 'raised',
  },
];
