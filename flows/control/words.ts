/** Words and fields that several pages of the 24 V circuit share. */
import { volts } from '../../engine/vocabulary.ts';
import { LIMITS } from '../limits.ts';

export const HOPS = 'Closed under 0.5 V across, open from 20 V: common practice, no single source';
export const PULL_IN = 'Pull-in at 85 % of the rated coil volts: IEC 60947-4-1 (from memory) and common practice';
export const DELAY = 'Five minutes: the delay of most anti-short-cycle timers, common practice';
/** A line terminal beside the control circuit: it has to stay dead. */
export const stillDead = () =>
  volts('L1 to L2, which must stay dead', {
    over: false,
    optional: true,
    most: LIMITS.absence.dead,
    words: ['l1-l2', 'line'],
  });
export const CONTROL_LIVE = {
  level: 'warning',
  text: 'Line locked and proved dead, 24 V present. Probes only: the contactor will pull in. More than 30 V, or more than 5 V on a line terminal: hands out.',
} as const;
/** The word by which a technician says which way a question of yes and no went. */
export const PULLS = {
  yes: ['pulls in', 'pulled in', 'pulls in clean', 'clean', 'its in', 'in'],
  no: ['stays out', 'doesnt pull in', 'not pulling in', 'nothing', 'wont pull in', 'out', 'dead'],
} as const;
