import { choose, confirm, flow, include, judge } from '../../engine/vocabulary.ts';
import { BUS_RESTS } from '../examples/fan.ts';
import { LIMITS } from '../limits.ts';

const BUS_REST = `${LIMITS.busRest.least.value} minutes`;

/** Hands go into a cabinet with a blower: its own motor may hold a charge. */
export const BUS_HOLDS = {
  level: 'danger',
  text: 'An electronic motor’s own bus holds for five minutes and more. Not sure counts as electronic.',
} as const;

/** What drives the blower, and where each answer leads. */
export const drives = <const P extends string, const E extends string, const U extends string>(
  psc: P,
  ecm: E,
  unsure: U,
) => ({
  psc: { label: 'PSC with a run capacitor', words: ['psc', 'capacitor'], to: psc },
  ecm: { label: 'Electronically commutated', words: ['ecm', 'electronic', 'variable speed'], to: ecm },
  unsure: { label: 'Not sure', words: ['dont know', 'not sure', 'unsure'], to: unsure },
});

/** Since when the means is off: by the record's times, not by a tap on waited. One try; too early asks once more. */
export const busRests = flow({
  id: 'bus-rests',
  version: 1,
  title: 'The motor’s bus rests',
  exits: ['rested', 'not', 'again'],
  examples: BUS_RESTS,
  steps: {
    off: choose({
      say: 'Power off at the means, and the motor’s bus has to empty before hands go near. Since when is it off?',
      body: [`${BUS_REST} by the times of this record, or what the motor’s label says where that is more.`],
      callouts: [BUS_HOLDS],
      why: 'The motor’s own bus has to empty.',
      source: [`At least ${BUS_REST}, or what the motor’s label says: common practice`],
      options: {
        now: { label: 'Off just now', words: ['off now', 'just now', 'just off', 'now'], to: 'rest' },
        earlier: {
          label: `Off for ${BUS_REST} or more`,
          words: ['waited', '5 minutes', 'five minutes', 'off long ago', 'over 5 minutes', 'rested'],
          to: 'over',
        },
      },
      cant: '!not',
    }),
    rest: confirm({
      say: `Hands off, door on, until it has been off for ${BUS_REST}.`,
      yes: `Off for ${BUS_REST}`,
      words: ['waited', '5 minutes', 'five minutes', 'rested'],
      // The times of the record decide whether it was.
      unsure: 'over',
      next: 'over',
    }),
    over: judge('minutes-since', {
      of: { since: 'off', reading: 'off', waited: 'rest', before: '~off', off: '@round:observation' },
      limits: LIMITS.busRest,
      quiet: ['over', 'wait', 'undecided'],
      then: { over: '!rested', wait: '!again', undecided: '!not' },
    }),
  },
});

/** An electronic motor’s bus empties before the door comes off. */
export const rested = <const T extends string, const U extends string>(next: T, unsure: U) =>
  include(busRests, {
    exits: { rested: next, not: unsure },
    needs: {},
    again: { times: 2, spent: unsure },
  });
