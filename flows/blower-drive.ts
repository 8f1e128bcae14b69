import { confirm } from '../engine/vocabulary.ts';

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

/** An electronic motor’s bus empties before the door comes off. */
export const rested = <const T extends string>(next: T, unsure: T) =>
  confirm({
    say: 'Power off at the means for five minutes and more before the door comes off?',
    why: 'The motor’s own bus has to empty.',
    source: ['At least five minutes, or what the motor’s label says: common practice'],
    yes: 'Off for five minutes or more',
    words: ['waited', '5 minutes', 'five minutes'],
    no: { label: 'Not sure', to: unsure },
    next,
  });
