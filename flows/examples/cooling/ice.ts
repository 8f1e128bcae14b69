/** Worked calls that begin with ice. */
import type { Example } from '../../../engine/vocabulary.ts';
import { PLACED } from '../blower.ts';
import { BOTH, HIGH_SPLIT, LIVE } from './lines.ts';

export const ICE: readonly Example[] = [
  {
    title: 'Thawed, then the filter: changed and proven',
    lines: [
      ...['ice', 'off, fan on', 'drain open', 'thawed', 'psc', 'filter plugged', ...BOTH],
      ...[HIGH_SPLIT, 'new filter', ...LIVE],
    ],
    then: ['thawed', 'airflow-short', 'air-side-righted', 'repair-proven'],
    ends: 'done',
  },
  {
    title: 'Iced because no air passes: on to the blower',
    lines: [
      'iced up',
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
    title: 'The outdoor unit doesn’t stop',
    lines: ['frozen', 'wont go off'],
    then: ['ice-and-wont-stop'],
    ends: 'raised',
  },
  {
    title: 'Water caught, still ice after hours: somebody comes back',
    lines: ['frozen coil', 'blower on', 'pan full', 'bucket under it', 'still frozen'],
    then: ['still-thawing'],
    ends: 'left',
  },
  {
    title: 'It can’t thaw safely here',
    lines: ['ice', 'off, fan on', 'would run over', 'not safe'],
    then: ['thaw-not-safe'],
    ends: 'raised',
  },
];
