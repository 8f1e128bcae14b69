import { choose, confirm, flow, include, judge } from '../../engine/vocabulary.ts';
import { BUS_RESTS } from '../examples/fan.ts';
import { LIMITS } from '../limits.ts';
import { KINDS } from '../unit.ts';

const BUS_REST = `${LIMITS.busRest.least.value} minutes`;
const RESTED = ['waited', '5 minutes', 'five minutes', 'rested', 'long enough'] as const;

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

/** What this page has asked already: hands go into the same cabinet once more. */
export const asDriven = <const P extends string, const E extends string, const U extends string>(
  psc: P,
  ecm: E,
  unsure: U,
) =>
  judge('unit-class', {
    of: { unit: '@cabinet:drive' },
    limits: {},
    quiet: KINDS,
    then: { psc, ecm, 'three-phase': unsure, refrigeration: unsure, closed: unsure, undecided: unsure },
  });

/** From the moment it is said to be off, by the record’s own times: nothing else tells how long its bus has rested. */
export const busRests = flow({
  id: 'bus-rests',
  version: 1,
  title: 'The motor’s bus rests',
  exits: ['rested', 'not'],
  examples: BUS_RESTS,
  steps: {
    off: choose({
      say: 'Power off at the means now, door on, hands off: the motor’s bus has to empty. Is it off?',
      body: [`From this answer on ${BUS_REST}, or what the motor’s label says where that is more.`],
      callouts: [BUS_HOLDS],
      why: 'The motor’s own bus has to empty. How long it has been off before, no record tells.',
      source: [`At least ${BUS_REST}, or what the motor’s label says: common practice`],
      options: {
        now: { label: 'It is off', words: ['off now', 'its off', 'just now', 'just off', 'off'], to: 'rest' },
        not: { label: 'It can’t be turned off here', words: ['cant turn it off', 'not off', 'not'], to: '!not' },
      },
      cant: '!not',
      whileOff: true,
    }),
    rest: confirm({
      say: `Hands off, door on, until it has been off for ${BUS_REST}.`,
      yes: `Off for ${BUS_REST}`,
      words: RESTED,
      // The times of the record decide whether it was.
      unsure: 'over',
      next: 'over',
      whileOff: true,
      waits: { since: 'off', least: LIMITS.busRest.least },
    }),
    over: judge('minutes-since', {
      of: { since: 'off', reading: 'off', waited: 'rest', before: null, off: null },
      limits: LIMITS.busRest,
      quiet: ['over', 'wait', 'undecided'],
      then: { over: '!rested', wait: 'longer', undecided: 'longer' },
    }),
    longer: confirm({
      say: `By the times of this record it has not been off for ${BUS_REST} yet. Wait until it has.`,
      body: ['The clock beside your first “off” counts, not this one.'],
      callouts: [BUS_HOLDS],
      why: 'A bus that still holds burns and throws.',
      yes: `Off for ${BUS_REST} now`,
      words: RESTED,
      unsure: 'over-now',
      next: 'over-now',
      whileOff: true,
      waits: { since: 'off', least: LIMITS.busRest.least },
    }),
    'over-now': judge('minutes-since', {
      of: { since: 'off', reading: 'off', waited: 'longer', before: null, off: null },
      limits: LIMITS.busRest,
      quiet: ['over', 'wait', 'undecided'],
      then: { over: '!rested', wait: '!not', undecided: '!not' },
    }),
  },
});

/** An electronic motor’s bus empties before the door comes off. */
export const rested = <const T extends string, const U extends string>(next: T, unsure: U) =>
  include(busRests, { exits: { rested: next, not: unsure }, needs: {} });
