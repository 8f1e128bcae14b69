import { flow, judge, measure, ohms, probes, verdict } from '../../engine/vocabulary.ts';
import { CONTACTOR_DEAD } from '../examples/control.ts';
import { LIMITS } from '../limits.ts';
import { THREE_PHASE } from '../unit.ts';
import { contactorAgain } from './contactor-again.ts';

const PART = ['Same coil volts, poles and amps.', 'Not proven until the restart numbers are in.'];

/** A contactor that has its volts and doesn't pull in: its coil and contacts, dead, call off. */
export const contactorDead = flow({
  id: 'contactor-dead',
  version: 1,
  title: 'Contactor, dead',
  exits: ['replace', 'raised'],
  examples: CONTACTOR_DEAD,
  steps: {
    line: measure({
      say: 'Call off. One coil wire off: coil in ohms. Each contact with the armature pressed in.',
      body: ['Type ol for over range. Move the armature: does it stick, are there ants?'],
      why: 'Volts enough and not in: the coil is open, or the armature is jammed.',
      source: ['24 V coil 8 to 20 Ω, contact at most 1 Ω: common practice, no single source'],
      picture: probes(
        'Ω',
        ['L1', 'T1, pressed in', '1 Ω or less'],
        ['Coil, wire off', 'Coil, other end', '8 to 20 Ω on 24 V'],
      ),
      circuit: 'part',
      fields: {
        pole1: ohms('First contact, pressed in', { words: ['contacts', 'contact', 'poles', 'points'] }),
        pole2: ohms('Second contact, pressed in', {
          optional: true,
          words: ['contacts', 'contact', 'poles', 'points'],
        }),
        pole3: ohms('Third contact, pressed in', {
          optional: true,
          words: ['contacts', 'contact', 'poles', 'points'],
          when: THREE_PHASE,
        }),
        coil: ohms('Contactor coil'),
      },
      cant: 'not-read',
      next: 'judged',
    }),
    judged: judge('contactor', {
      of: { readings: 'line', first: null, released: null, rated: '@coil-volts' },
      limits: LIMITS.contactor,
      then: {
        good: 'jammed',
        'coil-open': 'again',
        'coil-shorted': 'again',
        contacts: 'again',
        welded: 'again',
        between: 'again',
        undecided: 'jammed',
      },
    }),
    again: contactorAgain('twice', 'not-read', {}),
    twice: judge('contactor', {
      of: { readings: 'again', first: 'line', released: null, rated: '@coil-volts' },
      limits: LIMITS.contactor,
      then: {
        good: 'jammed',
        'coil-open': 'coil-open',
        'coil-shorted': 'coil-shorted',
        contacts: 'contacts',
        welded: 'contacts',
        between: 'not-read',
        undecided: 'jammed',
      },
    }),
    jammed: verdict({
      verdict: 'contactor-jammed',
      title: 'The contactor is jammed or dirty: replace it',
      says: ['Enough volts at the coil, the coil is not open, and it does not pull in.'],
      next: ['Ants or dirt in the armature: say so to the customer.', ...PART],
      who: 'junior',
      judged: ['judged', 'twice'],
      evidence: ['line', 'again'],
      then: '!replace',
    }),
    'coil-open': verdict({
      verdict: 'contactor-coil-open',
      title: 'The contactor’s coil is open: replace the contactor',
      says: ['OL across the coil, twice: one wire off, then both.'],
      next: PART,
      who: 'junior',
      judged: ['judged', 'twice'],
      evidence: ['line', 'again'],
      then: '!replace',
    }),
    'coil-shorted': verdict({
      verdict: 'contactor-coil-shorted',
      title: 'The contactor’s coil is shorted: replace the contactor',
      says: [
        'Below 4 Ω, twice, its wires off. A 24 V coil reads 8 to 20 Ω, a coil of more volts far more. It blows its fuse.',
      ],
      next: ['Check the fuse that feeds it: on 24 V the low-voltage fuse.', ...PART],
      who: 'junior',
      judged: ['judged', 'twice'],
      evidence: ['line', 'again'],
      then: '!replace',
    }),
    contacts: verdict({
      verdict: 'contactor-contacts',
      title: 'The contactor’s contacts are done: replace the contactor',
      says: ['More than 1 Ω with the armature pressed in, twice. Pitting alone would condemn nothing.'],
      next: ['Are the terminals tight?', ...PART],
      who: 'junior',
      judged: ['judged', 'twice'],
      evidence: ['line', 'again'],
      then: '!replace',
    }),
    'not-read': verdict({
      verdict: 'contactor-undecided',
      title: 'The contactor is undecided',
      says: ['Enough volts and not in, and its ohms don’t tell why. Nothing is condemned.'],
      next: ['Coil ohms with one wire off, and a look at the armature, would decide it.', 'A senior sees this call.'],
      who: 'senior',
      judged: ['judged', 'twice'],
      evidence: ['line', 'again'],
      raises: 'verdict',
      then: '!raised',
    }),
  },
});
