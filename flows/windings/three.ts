import { choose, flow, judge, measure, ohms, probes, verdict } from '../../engine/vocabulary.ts';
import { THREE_WINDINGS } from '../examples/three.ts';
import { LIMITS } from '../limits.ts';
import { COMPRESSOR_HEAT, lowAtItsLeads, openAtHarness, untilCool, windingsNotTaken } from './verdicts.ts';

/** The three pairs of a three-phase compressor, at its harness or at its terminals. */
export const THREE_PAIRS = {
  first: ohms('T1 to T2', { words: ['t1-t2', 't1t2', 'uv'] }),
  second: ohms('T2 to T3', { words: ['t2-t3', 't2t3', 'vw'] }),
  third: ohms('T1 to T3', { words: ['t1-t3', 't1t3', 'uw'] }),
  frame: ohms('To ground, the lowest', { words: ['ground', 'gnd', 'g', 'to ground', 'shell'] }),
} as const;
export const THREE_LEADS = probes(
  'Ω',
  ['T1', 'T2', 'the same'],
  ['T2', 'T3', 'the same'],
  ['T1', 'T3', 'the same'],
  ['T1', 'bare ground', 'OL at meter volts'],
);

/** A three-phase compressor, from its harness: three equal pairs; one try, which may ask for another. */
export const threeWindings = flow({
  id: 'three-windings',
  version: 1,
  title: 'Three-phase windings',
  exits: ['done', 'again'],
  examples: THREE_WINDINGS,
  steps: {
    pairs: measure({
      say: 'Three-phase compressor in ohms: its three pairs, then any of them to ground.',
      body: [
        'Leads off at the load side. Three equal pairs are right; there is no start and no run. Type ol for over range.',
      ],
      callouts: [
        {
          level: 'danger',
          text: 'A hermetic terminal can vent. Its cover stays on; only a senior has it opened, locked out, face out of line.',
        },
      ],
      why: 'Three pairs that differ, or one open, show a winding or a lead before power comes back.',
      source: ['Equal within 5 % or the meter’s doubt: our setting'],
      picture: THREE_LEADS,
      circuit: 'part',
      fields: THREE_PAIRS,
      cant: 'not-taken',
      next: 'judged',
    }),
    judged: judge('three-windings', {
      of: { readings: 'pairs', earlier: '~pairs', warm: 'warm' },
      limits: LIMITS.threeWindings,
      says: { repeat: 'The three are not equal. Zero the leads and repeat.' },
      then: {
        good: '!done',
        'ask-warm': 'warm',
        'until-cool': 'until-cool',
        'protector-open': 'protector',
        open: 'open',
        grounded: 'grounded',
        repeat: '!again',
        undecided: 'undecided',
      },
    }),
    warm: choose({
      say: 'All three pairs are open. Is the compressor’s shell hot or cool?',
      body: ['The back of the hand near it, no touch.'],
      why: 'A hot motor’s protector opens all pairs and closes again after hours.',
      options: {
        hot: { label: 'Hot', words: ['warm', 'very hot'], to: 'judged' },
        cool: { label: 'Cool', words: ['cold', 'ambient', 'not hot'], to: 'judged' },
        unsure: { label: 'Not sure', words: ['not sure', 'cant tell', 'cant reach it', 'dont know'], to: 'judged' },
      },
    }),
    protector: verdict({
      verdict: 'overload-open',
      title: 'An overload of the compressor is open: no failed compressor',
      says: ['All three pairs are open on a hot shell.'],
      next: [
        'Let it cool, which takes hours. Then the pairs read again.',
        'Find why it got hot: a lost line, coil, fan, volts.',
      ],
      who: 'junior',
      judged: ['judged'],
      evidence: ['pairs', 'warm'],
      then: '!done',
    }),
    open: openAtHarness('pairs', '~pairs', 'warm'),
    grounded: lowAtItsLeads('compressor', 'pairs', '~pairs'),
    'until-cool': untilCool(COMPRESSOR_HEAT, 'pairs', 'warm'),
    undecided: verdict({
      verdict: 'compressor-windings-undecided',
      title: 'The compressor’s windings are undecided',
      says: ['The readings don’t settle it. Pairs that differ never condemn by themselves.'],
      next: ['A better ohmmeter, or the plug itself, would decide it.'],
      who: 'junior',
      judged: ['judged'],
      evidence: ['pairs', '~pairs', 'warm'],
      then: '!done',
    }),
    'not-taken': windingsNotTaken('pairs'),
  },
});
