import { flow, include, judge, measure, ohms, verdict } from '../../engine/vocabulary.ts';
import { FUSE_SHORT } from '../examples/blower.ts';
import { LIMITS } from '../limits.ts';
import { shortOutdoors } from './short-outdoors.ts';

/** A board fuse that read OL beside a blower without a fault: the 24 V side from the board outward, dead as it is. */
export const fuseShort = flow({
  id: 'fuse-short',
  version: 1,
  title: 'Short behind a blown board fuse',
  exits: ['settled', 'raised'],
  needs: ['line', 'fuses'],
  examples: FUSE_SHORT,
  steps: {
    outward: measure({
      say: 'The board’s fuse is blown and the blower isn’t why. Field wires lifted from the board: Y to C outward.',
      body: ['It reads the coil outdoors through the cable. Type ol for over range.'],
      why: 'A blown board fuse has a short behind it, which is found before a new one goes in.',
      source: ['Y to C outward 8 to 20 Ω is the coil alone, under 4 Ω a short: common practice, no single source'],
      circuit: 'part',
      fields: { outward: ohms('Y to C outward', { words: ['y-c', 'out', 'outward'] }) },
      cant: 'alone',
      next: 'short',
    }),
    short: judge('outward', {
      of: { readings: 'outward' },
      limits: LIMITS.outward,
      then: {
        short: 'outdoors',
        coil: 'alone',
        open: 'alone',
        'secondary-open': 'alone',
        'primary-open': 'alone',
        undecided: 'alone',
      },
    }),
    // The other end of those wires is in the other cabinet: its own isolation comes first.
    outdoors: include(shortOutdoors, {
      cabinet: 'outdoor',
      exits: { settled: '!settled', raised: '!raised' },
      needs: { 'dead-line': 'line', fuse: 'fuses', short: 'short' },
    }),
    alone: verdict({
      verdict: 'board-fuse-without-cause',
      title: 'A blown board fuse without a cause found: no new fuse yet',
      says: ['Y to C outward reads no short, or was not read. What blew it was not located.'],
      next: ['A senior leads the search wire by wire: R, G, W and their cables.', 'It stays off.'],
      who: 'senior',
      judged: ['fuses', 'short'],
      evidence: ['line', 'outward'],
      raises: 'verdict',
      then: '!raised',
    }),
  },
});
