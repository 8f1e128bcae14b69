import { act, choose, confirm, flow } from '../../engine/vocabulary.ts';
import { BEHIND_PANEL } from '../examples/cooling/behind-panel.ts';

/** Coil, wheel or pan behind a panel of the indoor unit: hands go in there under its own lock alone. */
export const behindPanel = flow({
  id: 'behind-panel',
  version: 1,
  title: 'Behind the indoor panel',
  exits: ['cleaned', 'not'],
  examples: BEHIND_PANEL,
  steps: {
    drive: choose({
      say: 'Hands go into the indoor unit, so it is proved dead first. What drives the blower?',
      callouts: [
        {
          level: 'danger',
          text: 'An electronic motor’s own bus holds for five minutes and more. Not sure counts as electronic.',
        },
      ],
      why: 'A wheel that starts takes fingers.',
      options: {
        psc: { label: 'PSC with a run capacitor', words: ['psc', 'capacitor'], to: 'wash' },
        ecm: { label: 'Electronically commutated', words: ['ecm', 'electronic', 'variable speed'], to: 'rested' },
        unsure: { label: 'Not sure', words: ['dont know', 'not sure', 'unsure'], to: '!not' },
      },
    }),
    rested: confirm({
      say: 'Power off at the means for five minutes and more before the door comes off?',
      why: 'The motor’s own bus has to empty.',
      source: ['At least five minutes, or what the motor’s label says: common practice'],
      yes: 'Off for five minutes or more',
      words: ['waited', '5 minutes', 'five minutes'],
      no: { label: 'Not sure', to: '!not' },
      next: 'wash',
    }),
    wash: act('part out', {
      say: 'Indoor unit dead: clean the coil, the wheel, the pan. Then the panels back on.',
      body: [
        'A cleaner made for coils, rinsed; no bleach, no scent. Water stays off motor and wires.',
        'Hands on no wire. A wheel that has to come out: not today.',
      ],
      yes: 'Cleaned, panels on',
      words: ['cleaned', 'coil cleaned', 'wheel cleaned', 'rinsed'],
      cant: { label: 'Not today', words: ['not today', 'later', 'another visit'], to: '!not' },
      next: '!cleaned',
    }),
  },
});
