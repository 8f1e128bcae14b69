/** Worked calls of a cable that is open at its outdoor end. */
import type { Example } from '../../engine/vocabulary.ts';
import { BOARD, INDOOR_AGAIN } from './control.ts';
import { RUNS } from './lines.ts';

/** Sound at the indoor board and on its way; the outdoor unit is proved dead anew. */
const END = [
  ...[...BOARD, 'r-c 26.1 y-c 26', ...INDOOR_AGAIN, 'sound here'],
  ...['yes', 'clean, 1 cap, 45+5 6% 440', '121 / 0.2 0 0.1 / 0 0 / 121', '9.3 / 0.6 0.1 0.5 / 9.3'],
];
const ABSENT = 'no-call-outdoors';
export const CABLE_END: readonly Example[] = [
  {
    title: 'A push-on broken at the strip: re-made dead, the call read anew, proven',
    lines: [...END, 'broken', 'remade', 'closed and on', 'just now', 'five minutes', 'y-c 25.9', ...RUNS],
    then: [ABSENT, 'thermostat-cable-mended', 'repair-proven'],
    ends: 'done',
  },
  {
    title: 'Nothing to see at the strip: a spare pair, and it still carries nothing',
    lines: [...END, 'nothing here', 'spare pair', 'spare on', 'spare on', 'closed and on', 'left alone', 'y-c 0'],
    then: [ABSENT, 'thermostat-cable-open'],
    ends: 'left',
  },
  {
    title: 'Too short to re-make, and who may pull a new one nobody knows: it stays off',
    lines: [...END, 'broken', 'too short', 'not sure'],
    then: [ABSENT, 'thermostat-cable-open'],
    ends: 'left',
  },
  {
    title: '0 V within five minutes of the call: not mended, and not called open',
    lines: [...END, 'broken', 'remade', 'closed and on', 'just now', 'not sure', 'y-c 0'],
    then: [ABSENT, 'cable-not-retested'],
    ends: 'raised',
  },
];
export const PAIR_INDOORS: readonly Example[] = [
  {
    title: 'A spare pair on at both ends, each under its own lock: the call arrives, proven',
    lines: [
      ...END,
      'nothing here',
      'spare pair',
      'spare on',
      'spare on',
      'closed and on',
      'left alone',
      'y-c 25.4',
      ...RUNS,
    ],
    then: [ABSENT, 'thermostat-cable-mended', 'repair-proven'],
    ends: 'done',
  },
];
