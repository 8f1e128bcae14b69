import { choose, judge, measure, volts } from '../../engine/vocabulary.ts';
import { LIMITS } from '../limits.ts';

/** No call at the board, and nobody read across the float: an open one reads the same as a thermostat that gives no call. */
export const FLOAT_STEPS = {
  'has-float': choose({
    say: 'Is a float switch in the call’s wires? Eyes only: at the pan, the drain line, the pump.',
    why: 'An open float holds the call back as a thermostat does. It comes before the thermostat is blamed.',
    options: {
      none: { label: 'None', words: ['no float', 'none', 'no'], to: 'thermostat' },
      there: { label: 'There is one', words: ['there', 'yes', 'float there', 'one'], to: 'across-float' },
      unsure: { label: 'Not sure', words: ['not sure', 'dont know', 'cant tell'], to: 'float-unread' },
    },
    cant: 'float-unread',
  }),
  'across-float': measure({
    say: 'Volts across the float switch, the call there.',
    callouts: [{ level: 'danger', text: 'Line voltage is present beside the board. No float is bridged.' }],
    why: 'Closed it shows next to nothing, open the full 24 V.',
    circuit: 'line',
    fields: { float: volts('Across the float switch', { over: false, words: ['float', 'across'] }) },
    cant: 'float-unread',
    next: 'path-again',
  }),
  'path-again': judge('call-path', {
    of: { readings: 'board', across: 'across-float' },
    limits: LIMITS.callPath,
    then: {
      cable: 'not-read',
      float: 'float-open',
      'ask-float': 'float-unread',
      thermostat: 'thermostat',
      undecided: 'float-unread',
    },
  }),
} as const;
