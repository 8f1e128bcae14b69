import { include, judge, measure, ohms, verdict } from '../../engine/vocabulary.ts';
import { asDriven, rested } from '../blower/drive.ts';
import { LIMITS } from '../limits.ts';
import { shortOutdoors } from './short-outdoors.ts';

export const LEFT_TO_SENIOR = 'Nothing is condemned. A senior sees this call.';
export const BLANKED =
  'The thermostat runs on this source too, so a blank display is one more sign of it, never a proof.';

/** No 24 V: fuse, shorts outward and the secondary, dead. */
export const deadTest = {
  drive: asDriven('dead-line', 'rested', 'not-read'),
  rested: rested('dead-line', 'not-read'),
  'dead-line': measure({
    say: 'No 24 V. Board fuse, the transformer’s two windings, Y to C outward: one line of ohms.',
    body: [
      'Fuse out of its holder. One wire off each winding of the transformer. Field wires lifted from the board: Y to C outward reads the coil outdoors.',
      'Type ol for over range.',
    ],
    why: 'A blown board fuse has a short behind it, which is found before a new one goes in.',
    source: ['Y to C outward 8 to 20 Ω is the coil alone, under 4 Ω a short: common practice, no single source'],
    circuit: 'part',
    fields: {
      fuse1: ohms('Board fuse', { words: ['fuse', 'board fuse'] }),
      secondary: ohms('Transformer secondary', { words: ['sec', 'secondary'] }),
      primary: ohms('Transformer primary, its winding', { optional: true, words: ['pri', 'primary'] }),
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
      'primary-open': 'fuse-alone',
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
      coil: 'whole',
      open: 'whole',
      'secondary-open': 'fed',
      'primary-open': 'fed',
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
  whole: verdict({
    verdict: 'control-source-reads-whole',
    title: 'No 24 V under power, and fuse and transformer read whole: a joint, the board, or a reading',
    says: ['What makes the 24 V reads whole with the power off, and too little came out with it on.', BLANKED],
    next: ['Joints, the board’s own parts and R to C read once more would decide it.', LEFT_TO_SENIOR],
    who: 'senior',
    judged: ['source', 'source-again', 'fuse', 'secondary'],
    evidence: ['board', 'primary-too', 'dead-line'],
    raises: 'verdict',
    then: '!raised',
  }),
  // An open secondary is the transformer only where the primary had its volts and none came out.
  fed: judge('transformer', {
    of: { readings: 'board', primary: 'primary-too', tap: 'board', va: 'board' },
    limits: LIMITS.transformer,
    then: {
      good: 'not-fed',
      open: 'transformer-open',
      primary: 'not-fed',
      tap: 'not-fed',
      overload: 'not-fed',
      weak: 'not-fed',
      contradicts: 'not-fed',
      'ask-primary': 'not-fed',
      undecided: 'not-fed',
    },
  }),
  'not-fed': verdict({
    verdict: 'transformer-primary-not-read',
    title: 'A winding of the transformer reads OL, and nobody knows the primary to have its volts: undecided',
    says: ['A transformer is open only where its primary has its volts and none come out.', BLANKED],
    next: ['The primary’s volts under power, beside its tap, would decide it.', LEFT_TO_SENIOR],
    who: 'senior',
    judged: ['fed', 'fuse', 'secondary'],
    evidence: ['board', 'primary-too', 'dead-line'],
    raises: 'verdict',
    then: '!raised',
  }),
  'transformer-open': verdict({
    verdict: 'transformer-open',
    title: 'The 24 V transformer is open: replace it, the short first',
    says: ['One of its windings reads OL, the fuse is good, and volts come into its primary.', BLANKED],
    next: [
      'Y to C outward reads no short: then the new one goes in, same primary, VA and fuse.',
      'It waits for the part.',
    ],
    who: 'junior',
    judged: ['fed', 'fuse', 'secondary'],
    evidence: ['board', 'primary-too', 'dead-line'],
    then: '!left',
  }),
};
