/** Words and fields that several pages of the 24 V circuit share. */
import { confirm, volts } from '../../engine/vocabulary.ts';
import { LIMITS } from '../limits.ts';

export const HOPS = 'Closed under 0.5 V across, open from 20 V: common practice, no single source';
export const PULL_IN = 'Pull-in at 85 % of the rated coil volts: IEC 60947-4-1 (from memory) and common practice';
export const DELAY = 'Five minutes: the delay of most anti-short-cycle timers, common practice';
/** When the call was last changed: the record dates it, and the judge behind the reading counts from there. */
export const changed = <const N extends string, const E extends string>(now: N, earlier: E) =>
  ({
    now: { label: 'Changed just now', words: ['just now', 'now', 'changed now'], to: now },
    earlier: {
      label: 'Left alone for five minutes or more',
      words: ['over 5 minutes', 'more than 5', '5 minutes ago', 'five minutes', 'long ago', 'unchanged', 'left alone'],
      to: earlier,
    },
  }) as const;
/** The delay waited out. Whether it was is judged by the record's own times. */
export const delayOver = <const T extends string>(next: T, more: { body?: string[]; why?: string } = {}) =>
  confirm<T, 'call'>({
    waits: { since: 'call', least: LIMITS.delay.least },
    say: 'Wait until five minutes are over since the call was changed. Leave the call alone.',
    ...more,
    source: [DELAY],
    yes: 'The five minutes are over',
    words: ['waited', 'passed', 'over', '5 minutes', 'five minutes', 'done waiting'],
    unsure: next,
    next,
  });
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
/** Volts across each switch that may stand in series, one line. */
export const acrossSwitches = () => ({
  delay: volts('Across the delay', { over: false, optional: true, words: ['timer'] }),
  lp: volts('Across the low-pressure switch', { over: false, optional: true, words: ['low pressure', 'lps'] }),
  hp: volts('Across the high-pressure switch', { over: false, optional: true, words: ['high pressure', 'hps'] }),
  discharge: volts('Across the discharge thermostat', { over: false, optional: true, words: ['dtc'] }),
});
/** What to do where a closed switch takes the volts. */
export const SWITCH_DROPS = [
  'Its push-ons first, dead: tight and bright. Still above 0.5 V: the same switch, same setting. It waits for the part.',
  'One that opens the refrigerant’s circuit is for a certified person. None is bridged.',
  'It stays off until then. Tell the customer.',
];
/** The word by which a technician says which way a question of yes and no went. */
export const PULLS = {
  yes: ['pulls in', 'pulled in', 'pulls in clean', 'clean', 'its in', 'in'],
  no: ['stays out', 'doesnt pull in', 'not pulling in', 'nothing', 'wont pull in', 'out', 'dead'],
} as const;
