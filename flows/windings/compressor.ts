import { choose, flow, judge, measure, ohms, probes, verdict } from '../../engine/vocabulary.ts';
import { COMPRESSOR_WINDINGS } from '../examples/windings.ts';
import { LIMITS } from '../limits.ts';
import { COMPRESSOR_HEAT, lowAtItsLeads, openAtHarness, untilCool, windingsNotTaken } from './verdicts.ts';

const VENT = {
  level: 'danger',
  text: 'A hermetic terminal can vent. Its cover stays on; only a senior has it opened, locked out, face out of line.',
} as const;
export const SUM = 'Start to run is the sum of the other two: textbook; a meter’s doubt of 1 % + 3 counts each is ours';

/** The three pairs of a single-phase compressor, at the harness or at its terminals. */
export const COMPRESSOR_PAIRS = {
  cr: ohms('C to R', { words: ['c-r', 'r-c', 'rc', 'run'] }),
  cs: ohms('C to S', { words: ['c-s', 's-c', 'sc', 'start'] }),
  sr: ohms('S to R', { words: ['s-r', 'rs', 'r-s'] }),
} as const;
export const COMPRESSOR_LEADS = probes(
  'Ω',
  ['C', 'R', 'the smallest'],
  ['C', 'S', 'larger'],
  ['S', 'R', 'the sum of both'],
  ['C', 'bare ground', 'OL at meter volts'],
);

/** A single-phase compressor, from the harness ends: one try, which may ask for another. */
export const compressorWindings = flow({
  id: 'compressor-windings',
  version: 1,
  title: 'Compressor windings',
  exits: ['done', 'again'],
  examples: COMPRESSOR_WINDINGS,
  steps: {
    pairs: measure({
      say: 'Compressor windings in ohms, from the harness ends.',
      body: [
        'R and C at the contactor’s load side, S at HERM. Wires off.',
        'C to R, C to S, S to R, then any of them to ground. Type ol for over range.',
      ],
      callouts: [VENT],
      why: 'An open, grounded or odd winding shows before power comes back. A sum that doesn’t fit never condemns.',
      source: [SUM],
      picture: COMPRESSOR_LEADS,
      circuit: 'part',
      fields: {
        ...COMPRESSOR_PAIRS,
        g: ohms('To ground, the lowest', { words: ['ground', 'grounds', 'gnd', 'to ground', 'shell', 'frame'] }),
      },
      cant: 'not-taken',
      next: 'judged',
    }),
    judged: judge('compressor-windings', {
      of: { readings: 'pairs', earlier: '~pairs', shell: 'shell' },
      limits: LIMITS.compressorWindings,
      says: { repeat: 'The three don’t fit together. Zero the leads, check which end is which, and repeat.' },
      then: {
        good: '!done',
        'ask-shell': 'shell',
        'until-cool': 'until-cool',
        'overload-open': 'overload',
        'common-lead': 'common',
        'open-start': 'open',
        'open-run': 'open',
        'all-open': 'all-open',
        grounded: 'grounded',
        repeat: '!again',
        undecided: 'undecided',
      },
    }),
    shell: choose({
      say: 'Is the compressor’s shell hot or cold?',
      body: ['The back of the hand near it, no touch. Hot is clearly above the outdoor air.'],
      why: 'An internal overload opens when the motor is hot and closes again after hours. That is no failed compressor.',
      options: {
        hot: { label: 'Hot', words: ['warm', 'real hot', 'very hot', 'burning hot', 'caliente'], to: 'judged' },
        cold: {
          label: 'Cold',
          words: ['cool', 'ambient', 'room temp', 'room temperature', 'not hot', 'frio'],
          to: 'judged',
        },
        unsure: { label: 'Not sure', words: ['not sure', 'cant tell', 'cant reach it', 'dont know'], to: 'judged' },
      },
    }),
    overload: verdict({
      verdict: 'overload-open',
      title: 'An overload of the compressor is open: no failed compressor',
      says: ['Both C pairs are open while S to R reads, on a hot shell.'],
      next: [
        'Let it cool, which takes hours. Then C to R reads again.',
        'Find why it got hot: capacitor, fan, coil, volts.',
      ],
      who: 'junior',
      judged: ['judged'],
      evidence: ['pairs', 'shell'],
      then: '!done',
    }),
    common: verdict({
      verdict: 'common-lead-open',
      title: 'C is open on a cold shell: the lead or the plug first',
      says: [
        'S to R reads, so the winding is there. On a cold shell the C lead, its plug or an outside overload is open.',
      ],
      next: ['A senior leads on to the plug. Nothing is condemned.'],
      who: 'senior',
      judged: ['judged'],
      evidence: ['pairs', 'shell'],
      raises: 'verdict',
      then: '!done',
    }),
    open: openAtHarness('pairs', '~pairs'),
    'all-open': verdict({
      verdict: 'all-windings-open',
      title: 'All three pairs are open: the plug first',
      says: ['Three open pairs are the plug off, or an overload in all leads.'],
      next: ['A senior leads on to the plug. Nothing is condemned.'],
      who: 'senior',
      judged: ['judged'],
      evidence: ['pairs', '~pairs'],
      raises: 'verdict',
      then: '!done',
    }),
    grounded: lowAtItsLeads('compressor', 'pairs', '~pairs'),
    'until-cool': untilCool(COMPRESSOR_HEAT, 'pairs', 'shell'),
    undecided: verdict({
      verdict: 'compressor-windings-undecided',
      title: 'The compressor’s windings are undecided',
      says: ['The readings don’t settle it. A sum that doesn’t fit never condemns.'],
      next: ['A better ohmmeter, or the plug itself, would decide it.'],
      who: 'junior',
      judged: ['judged'],
      evidence: ['pairs', '~pairs', 'shell'],
      then: '!done',
    }),
    'not-taken': windingsNotTaken('pairs'),
  },
});
