import { choose, include, judge, measure, ohms, verdict } from '../../engine/vocabulary.ts';
import { BUS_HOLDS, drives, rested } from '../blower/drive.ts';
import { LIMITS } from '../limits.ts';
import { shortOutdoors } from './short-outdoors.ts';

export const LEFT_TO_SENIOR = 'Nothing is condemned. A senior sees this call.';
export const BLANKED =
  'The thermostat runs on this source too, so a blank display is one more sign of it, never a proof.';

/** No 24 V: fuse, shorts outward and the secondary, dead. */
export const deadTest = {
  drive: choose({
    say: 'No 24 V. Next the board’s fuse and the transformer, dead. What drives the blower in this cabinet?',
    callouts: [BUS_HOLDS],
    as: 'cabinet:drive',
    anew: true,
    options: drives('dead-line', 'rested', 'not-read'),
  }),
  rested: rested('dead-line', 'not-read'),
  'dead-line': measure({
    say: 'Board fuse, transformer secondary, and Y to C outward: one line of ohms.',
    body: [
      'Fuse out of its holder. One secondary wire off. Field wires lifted from the board: Y to C outward reads the coil outdoors.',
      'Type ol for over range.',
    ],
    why: 'A blown board fuse has a short behind it, which is found before a new one goes in.',
    source: ['Y to C outward 8 to 20 Ω is the coil alone, under 4 Ω a short: common practice, no single source'],
    circuit: 'part',
    fields: {
      fuse1: ohms('Board fuse', { words: ['fuse', 'board fuse'] }),
      secondary: ohms('Transformer secondary', { words: ['sec', 'secondary'] }),
      outward: ohms('Y to C outward', { words: ['y-c', 'out', 'outward'] }),
    },
    cant: 'not-read',
    next: 'fuse',
  }),
  fuse: judge('fuses', {
    of: { readings: 'dead-line' },
    limits: LIMITS.boardFuse,
    then: { good: 'secondary', blown: 'short', between: 'not-read', undecided: 'secondary' },
  }),
  short: judge('outward', {
    of: { readings: 'dead-line' },
    limits: LIMITS.outward,
    then: {
      short: 'outdoors',
      coil: 'fuse-alone',
      open: 'fuse-alone',
      'secondary-open': 'fuse-alone',
      undecided: 'fuse-alone',
    },
  }),
  // The other end of those wires is in the other cabinet: its own isolation comes first.
  outdoors: include(shortOutdoors, {
    cabinet: 'outdoor',
    exits: { settled: '!settled', raised: '!raised' },
    needs: { 'dead-line': 'dead-line', fuse: 'fuse', short: 'short' },
  }),
  'fuse-alone': verdict({
    verdict: 'board-fuse-without-cause',
    title: 'A blown board fuse without a cause found: no new fuse yet',
    says: ['What blew it was not located.'],
    next: ['A senior leads the search wire by wire.', 'It stays off.'],
    who: 'senior',
    judged: ['fuse', 'short'],
    evidence: ['dead-line'],
    raises: 'verdict',
    then: '!raised',
  }),
  secondary: judge('outward', {
    of: { readings: 'dead-line' },
    limits: LIMITS.outward,
    then: {
      short: 'short-first',
      coil: 'not-read',
      open: 'not-read',
      'secondary-open': 'fed',
      undecided: 'not-read',
    },
  }),
  'short-first': verdict({
    verdict: 'control-short-behind-a-good-fuse',
    title: 'The 24 V side is shorted outward: the short first',
    says: ['Y to C outward reads under 4 Ω. Whatever else reads open, a new part would burn on that short.'],
    next: ['A senior leads the search: cable, coil, then the transformer.', 'It stays off.'],
    who: 'senior',
    judged: ['source', 'fuse', 'secondary'],
    evidence: ['board', 'dead-line'],
    raises: 'verdict',
    then: '!raised',
  }),
  // An open secondary is the transformer only where the primary had its volts and none came out.
  fed: judge('transformer', {
    of: { readings: 'board', tap: 'board', va: 'board' },
    limits: LIMITS.transformer,
    then: {
      good: 'not-fed',
      open: 'transformer-open',
      primary: 'not-fed',
      tap: 'not-fed',
      overload: 'not-fed',
      weak: 'not-fed',
      undecided: 'not-fed',
    },
  }),
  'not-fed': verdict({
    verdict: 'transformer-primary-not-read',
    title: 'The secondary reads OL, and nobody knows the primary to have its volts: undecided',
    says: ['A transformer is open only where its primary has its volts and none come out.', BLANKED],
    next: ['The primary’s volts under power, beside its tap, would decide it.', LEFT_TO_SENIOR],
    who: 'senior',
    judged: ['fed', 'fuse', 'secondary'],
    evidence: ['board', 'dead-line'],
    raises: 'verdict',
    then: '!raised',
  }),
  'transformer-open': verdict({
    verdict: 'transformer-open',
    title: 'The 24 V transformer is open: replace it, the short first',
    says: ['Its secondary reads OL, the fuse is good, and the primary has its volts.', BLANKED],
    next: [
      'Y to C outward reads no short: then the new one goes in, same primary, VA and fuse.',
      'It waits for the part.',
    ],
    who: 'junior',
    judged: ['source', 'fuse', 'secondary'],
    evidence: ['board', 'dead-line'],
    then: '!left',
  }),
};
