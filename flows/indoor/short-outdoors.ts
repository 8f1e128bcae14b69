import { act, flow, include, judge, measure, ohms, verdict } from '../../engine/vocabulary.ts';
import { SHORT_OUTDOORS } from '../examples/control.ts';
import { LIMITS } from '../limits.ts';
import { boardFuse } from './board-fuse.ts';

const SHORT = 'Under 4 Ω is a short: common practice, no single source';

/** A short on the 24 V side, sought from the outdoor strip: hands there, so under the outdoor unit's own isolation. */
export const shortOutdoors = flow({
  id: 'short-outdoors',
  version: 1,
  title: 'Short on the 24 V side',
  exits: ['settled', 'raised'],
  needs: ['dead-line', 'fuse', 'short'],
  examples: SHORT_OUTDOORS,
  steps: {
    lift: act('wires off', {
      say: 'At the outdoor strip: lift the cable’s Y and C, and keep them apart.',
      body: ['The indoor unit stays locked, its field wires off the board.'],
      why: 'Apart, the unit and the cable are read each by itself.',
      yes: 'Y and C are lifted',
      words: ['lifted', 'y lifted', 'y is off', 'off'],
      cant: { label: 'Not possible here', words: ['not possible'], to: 'alone' },
      next: 'where',
    }),
    where: measure({
      say: 'Y to C of the unit’s own side, the cable lifted.',
      body: ['Type ol for over range.'],
      why: 'One new fuse goes in when the short is found, not before.',
      source: [SHORT],
      circuit: 'part',
      fields: { outward: ohms('Y to C, the unit’s side', { words: ['y-c', 'out', 'unit side'] }) },
      cant: 'alone',
      next: 'located',
    }),
    located: judge('outward', {
      of: { readings: 'where' },
      limits: LIMITS.outward,
      says: {
        short: 'Short with the cable lifted: it is in the outdoor unit.',
        coil: 'No short with the cable lifted. The cable is read next.',
        open: 'No short with the cable lifted. The cable is read next.',
      },
      then: {
        short: 'mended',
        coil: 'run',
        open: 'run',
        'secondary-open': 'alone',
        'primary-open': 'alone',
        undecided: 'alone',
      },
    }),
    mended: act('rewire', {
      say: 'Find the short in the outdoor unit and mend it: rubbed wire, coil, solenoid. Then Y and C back on.',
      body: ['Read Y to C once more before the cable goes back on. Tug each.'],
      yes: 'Short found and mended',
      words: ['mended', 'found it', 'fixed', 'repaired'],
      cant: { label: 'Not found', words: ['not found', 'cant find it'], to: 'alone' },
      next: 'source',
    }),
    run: measure({
      say: 'Y to C of the cable, lifted at both ends.',
      why: 'What isn’t in the unit has to be read in the cable before it counts as found.',
      source: [SHORT],
      circuit: 'part',
      fields: { outward: ohms('Y to C of the cable', { words: ['y-c', 'out', 'cable'] }) },
      cant: 'alone',
      next: 'in-cable',
    }),
    'in-cable': judge('outward', {
      of: { readings: 'run' },
      limits: LIMITS.outward,
      says: { short: 'Short with both ends lifted: it is in the cable.' },
      then: {
        short: 'renewed',
        coil: 'alone',
        open: 'alone',
        'secondary-open': 'alone',
        'primary-open': 'alone',
        undecided: 'alone',
      },
    }),
    renewed: act('rewire', {
      say: 'Mend the cable or take a sound pair of it, both units locked. Then its outdoor end back on.',
      body: ['Rubbed places, staples, splices. Tug each.'],
      yes: 'Cable mended, outdoor end on',
      words: ['mended', 'found it', 'fixed', 'spare pair', 'repaired'],
      cant: { label: 'Not found', words: ['not found', 'cant find it'], to: 'alone' },
      next: 'source',
    }),
    // The fuse sits in the other cabinet.
    source: include(boardFuse, { cabinet: 'indoor', exits: { fitted: 'short-found', not: 'alone' }, needs: {} }),
    'short-found': verdict({
      verdict: 'control-short-found',
      title: 'A short on the 24 V side blew the board’s fuse: found and mended',
      says: ['The fuse read OL, and Y to C below 4 Ω where the short was found.'],
      next: ['One fuse. If it blows again: stop, a senior.', 'Not proven until the restart numbers are in.'],
      who: 'junior',
      judged: ['fuse', 'short', 'located', 'in-cable'],
      evidence: ['dead-line', 'where', 'mended', 'run', 'renewed'],
      then: '!settled',
    }),
    alone: verdict({
      verdict: 'board-fuse-short-not-located',
      title: 'A short on the 24 V side blew the board’s fuse, and it isn’t located: no new fuse yet',
      says: ['Y to C outward read a short from the board, and neither unit nor cable was found to be it.'],
      next: ['A senior leads the search wire by wire.', 'It stays off.'],
      who: 'senior',
      judged: ['fuse', 'short', 'located', 'in-cable'],
      evidence: ['dead-line', 'where', 'run'],
      raises: 'verdict',
      then: '!raised',
    }),
  },
});
