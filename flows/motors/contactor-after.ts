import { act, flow } from '../../engine/vocabulary.ts';
import { NO_WIRING, noPart, wiringLost } from '../endings.ts';
import { CONTACTOR_AFTER } from '../examples/repair.ts';

/** A contactor whose pole drops too much under load, where its dead test may be good: a new one, dead again from the lock. */
export const contactorAfter = flow({
  id: 'contactor-after',
  version: 1,
  title: 'New contactor',
  exits: ['fitted', 'left'],
  examples: CONTACTOR_AFTER,
  steps: {
    contactor: act('fit', {
      say: 'Fit the new contactor.',
      body: [
        'Same coil volts, poles and amps. Each wire to the terminal that it came from.',
        'The old lugs: burnt or loose ones dropped volts as well.',
      ],
      why: 'Under load a pole dropped more than 1 V. Dead ohms don’t show that, and they don’t clear it.',
      yes: 'Contactor fitted',
      words: ['fitted', 'installed', 'put in', 'put it in', 'its in', 'new one in', 'mounted'],
      cant: { label: 'No such contactor on the truck', words: ['no contactor'], to: 'no-part' },
      next: 'wired',
    }),
    wired: act('rewire', {
      say: 'Wires as they were, terminals tight: tug each connector.',
      body: ['Line side, load side, coil. None slides: a loose tab burns.'],
      yes: 'Wired, all tight',
      words: ['wires back', 'wires on', 'rewired', 'tight', 'tugged'],
      cant: NO_WIRING,
      next: '!fitted',
    }),
    'no-part': noPart('contactor'),
    lost: wiringLost('contactor', 'wired'),
  },
});
