/** Worked calls of inverters: closed, or dead with the bus proved, then over to a senior. */
import type { Example } from '../../engine/vocabulary.ts';

const OPENED = [
  ...[
    'd',
    'mini-split',
    'code E5, both powered',
    'have them',
    'yes',
    'breaker, no other feed, two legs, outlet',
    'yes',
  ],
  ...['led out', '121 / 0 0 0 / 0 0 / 121'],
];
export const INVERTER: readonly Example[] = [
  {
    title: 'It stays closed and goes to a senior with its code',
    lines: ['d', 'mini-split', 'both powered', 'stays closed'],
    then: ['inverter-handed-over'],
    ends: 'raised',
  },
  {
    title: 'A blown fuse: never just a new one',
    lines: [...OPENED, '9.3 / 2.1 / 9.3', 'fuses ol 0.1', 'plug off', '0.8 0.8 0.8 ol', 'outdoor 10.2k one piece'],
    then: ['inverter-fuse-blown', 'inverter-handed-over'],
    ends: 'raised',
  },
];
export const BUS_DEAD: readonly Example[] = [
  {
    title: 'The bus at 38 V: five minutes more, then 3.4 V',
    lines: [
      ...[...OPENED, '9.3 / 38 / 9.3', 'led out', '121 / 0 0 0 / 0 0 / 121', '9.3 / 3.4 / 9.3'],
      ...['fuses 0.1 0.1', 'plug off', '0.8 0.8 0.8 ol', 'coil 9.8k'],
    ],
    then: ['inverter-handed-over'],
    ends: 'raised',
  },
];
