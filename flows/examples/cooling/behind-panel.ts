/** Worked calls with hands behind a panel of the indoor unit. */
import type { Example } from '../../../engine/vocabulary.ts';
import { PROVING } from '../lines.ts';
import { HIGH_SPLIT, LIVE, PROVE, toSplit, WEAK_SPLIT } from './lines.ts';

/** The six prompts of make-dead at the indoor unit. */
const INDOOR = [
  ...['yes', 'breaker, no other feed, two legs, outlet', 'yes', 'clean, 1 cap, 7.5 6% 440', PROVING, '9.3 / 0.4 / 9.3'],
];

export const BEHIND_PANEL: readonly Example[] = [
  {
    title: 'A dirty coil and a high split: cleaned under the indoor unit’s own lock',
    lines: [...toSplit('coil dirty'), HIGH_SPLIT, 'behind a panel', 'psc', ...INDOOR, 'coil cleaned', ...LIVE],
    then: ['airflow-short', 'air-side-righted', 'repair-proven'],
    ends: 'done',
  },
  {
    title: 'A dirty wheel and a weak split, an electronic blower that rested: cleaned',
    lines: [
      ...[...toSplit('wheel dirty'), WEAK_SPLIT, 'behind a panel', 'ecm', 'off now', 'rested', ...INDOOR],
      ...['wheel cleaned', ...LIVE],
    ],
    then: ['air-side-righted', 'repair-proven'],
    ends: 'done',
  },
  {
    title: 'Nobody knows what drives the blower: it waits',
    lines: [...toSplit('coil dirty'), HIGH_SPLIT, 'behind a panel', 'not sure'],
    then: ['airflow-short', 'air-side-left'],
    ends: 'left',
  },
  {
    title: 'A wheel that has to come out waits',
    lines: [...toSplit('wheel dirty'), HIGH_SPLIT, 'behind a panel', 'psc', ...INDOOR, 'not today'],
    then: ['airflow-short', 'air-side-left'],
    ends: 'left',
  },
  {
    title: 'Dirty socks: coil and pan cleaned, the indoor unit dead',
    lines: ['l', 'dirty sock', 'clean it now', 'psc', ...INDOOR, 'coil cleaned', ...PROVE],
    then: ['coil-smell-cleaned', 'repair-proven'],
    ends: 'done',
  },
];
