import { act, flow } from '../../engine/vocabulary.ts';
import { BOARD_FUSE } from '../examples/control.ts';

/** The one new fuse of the indoor board, after its short was found: hands in the indoor unit again. */
export const boardFuse = flow({
  id: 'board-fuse',
  version: 1,
  title: 'Board fuse',
  exits: ['fitted', 'not'],
  examples: BOARD_FUSE,
  steps: {
    fitted: act('fit', {
      say: 'At the indoor board: field wires back on, then one new fuse of the printed size.',
      body: ['3 or 5 A as printed, never larger. A second one that blows: stop.'],
      why: 'The short is found and mended, so one fuse goes in, once.',
      yes: 'Wires on, one new fuse in',
      words: ['new fuse in', 'fuse in', 'fitted'],
      cant: { label: 'No fuse of that size here', words: ['no fuse', 'wrong size'], to: '!not' },
      next: '!fitted',
    }),
  },
});
