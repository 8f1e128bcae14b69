import { act, choose, flow } from '../../engine/vocabulary.ts';
import { BUS_HOLDS, drives, rested } from '../blower/drive.ts';
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
      callouts: [BUS_HOLDS],
      why: 'A wheel that starts takes fingers.',
      as: 'cabinet:drive',
      anew: true,
      options: drives('wash', 'rested', '!not'),
    }),
    rested: rested('wash', '!not'),
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
