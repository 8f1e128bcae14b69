import { choose, flow, judge, measure, ohms, probes, verdict } from '../engine/vocabulary.ts';
import { lowAtItsLeads, openAtHarness, windingsNotTaken } from './compressor-verdicts.ts';
import { COMPRESSOR_WINDINGS, FAN_WINDINGS } from './examples/windings.ts';
import { LIMITS } from './limits.ts';
import { KINDS } from './unit.ts';

const VENT = {
  level: 'danger',
  text: 'A hermetic terminal can vent. Its cover stays on; only a senior has it opened, locked out, face out of line.',
} as const;
const SUM = 'Start to run is the sum of the other two: textbook; a meter’s doubt of 1 % + 3 counts each is ours';

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
        unsure: { label: 'Not sure', words: ['not sure', 'cant tell', 'cant reach it', 'dont know'], to: 'undecided' },
      },
    }),
    overload: verdict({
      verdict: 'overload-open',
      title: 'The internal overload is open: no failed compressor',
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

/** A fan motor with a run capacitor: one try, which may ask for another. */
export const fanWindings = flow({
  id: 'fan-windings',
  version: 1,
  title: 'Fan motor windings',
  exits: ['done', 'again'],
  examples: FAN_WINDINGS,
  steps: {
    pairs: measure({
      say: 'Fan motor windings in ohms: its three leads in pairs, then any of them to the frame.',
      body: [
        'Leads off. Any order of the three pairs. Tens of ohms are usual.',
        'A fan on three lines, without a capacitor: three equal pairs are right.',
      ],
      why: 'With a run capacitor the largest pair is the sum of the other two. Open pairs on a hot motor are its protector.',
      source: [SUM, 'Three equal within 5 % or the meter’s doubt: our setting'],
      picture: probes(
        'Ω',
        ['First lead', 'Second lead', 'tens of Ω'],
        ['Second lead', 'Third lead', 'tens of Ω'],
        ['First lead', 'Third lead', 'two make the third'],
        ['Any lead', 'Frame', 'OL at meter volts'],
      ),
      circuit: 'part',
      fields: {
        first: ohms('First pair', { words: ['fan'] }),
        second: ohms('Second pair', { words: ['fan'] }),
        third: ohms('Third pair', { words: ['fan'] }),
        frame: ohms('To the frame, the lowest', { words: ['ground', 'gnd', 'g', 'to ground', 'shell', 'case'] }),
      },
      cant: 'not-taken',
      next: 'lines',
    }),
    lines: judge('unit-class', {
      of: { unit: '@class' },
      limits: {},
      quiet: KINDS,
      then: {
        psc: 'judged',
        ecm: 'judged',
        'three-phase': 'equal',
        refrigeration: 'judged',
        closed: 'judged',
        undecided: 'judged',
      },
    }),
    // A unit on three lines has a fan of three equal pairs, or one with a run capacitor, judged by its sum.
    equal: judge('three-windings', {
      of: { readings: 'pairs', earlier: null, warm: null },
      limits: LIMITS.threeFanWindings,
      quiet: ['ask-warm', 'protector-open', 'open', 'grounded', 'repeat'],
      then: {
        good: '!done',
        'ask-warm': 'judged',
        'protector-open': 'judged',
        open: 'judged',
        grounded: 'judged',
        repeat: 'judged',
        undecided: 'undecided',
      },
    }),
    judged: judge('fan-windings', {
      of: { readings: 'pairs', earlier: '~pairs', warm: 'warm' },
      limits: LIMITS.fanWindings,
      says: { repeat: 'The three don’t fit together. Zero the leads and repeat.' },
      then: {
        good: '!done',
        'ask-warm': 'warm',
        'protector-open': 'protector',
        open: 'open',
        'to-frame': 'frame',
        repeat: '!again',
        undecided: 'undecided',
      },
    }),
    warm: choose({
      say: 'Is the fan motor hot or cool?',
      body: ['The back of the hand near it, no touch.'],
      why: 'A hot motor’s protector opens all pairs and closes again when it cools.',
      options: {
        hot: { label: 'Hot', words: ['warm', 'real hot', 'very hot', 'burning hot', 'caliente'], to: 'judged' },
        cool: {
          label: 'Cool',
          words: ['cold', 'ambient', 'room temp', 'room temperature', 'not hot', 'frio'],
          to: 'judged',
        },
        unsure: { label: 'Not sure', words: ['not sure', 'cant tell', 'cant reach it', 'dont know'], to: 'undecided' },
      },
    }),
    protector: verdict({
      verdict: 'fan-protector-open',
      title: 'The fan motor’s protector is open: let it cool',
      says: ['Open on a hot motor is no verdict on the winding.'],
      next: ['Let it cool and measure again. Find why it got hot: capacitor, bearings, air.'],
      who: 'junior',
      judged: ['judged'],
      evidence: ['pairs', 'warm'],
      then: '!done',
    }),
    open: verdict({
      verdict: 'fan-winding-open',
      title: 'The fan motor’s winding is open: replace the motor',
      says: ['Open on a cool motor, at its own leads.'],
      next: [
        'Fit the motor that the nameplate asks for, with the capacitor it asks for, if it asks for one.',
        'Not proven until the restart numbers are in.',
      ],
      who: 'junior',
      judged: ['judged'],
      evidence: ['pairs', '~pairs', 'warm'],
      then: '!done',
    }),
    frame: lowAtItsLeads('fan motor', 'pairs', '~pairs'),
    undecided: verdict({
      verdict: 'fan-windings-undecided',
      title: 'The fan motor’s windings are undecided',
      says: ['The readings don’t settle it. A sum that doesn’t fit never condemns, nor do pairs that differ.'],
      next: ['A better ohmmeter would decide it.'],
      who: 'junior',
      judged: ['equal', 'judged'],
      evidence: ['pairs', '~pairs', 'warm'],
      then: '!done',
    }),
    'not-taken': verdict({
      verdict: 'fan-windings-not-taken',
      title: 'The fan motor’s windings were not measured',
      says: ['What follows is weaker for it. The restart’s amps have to show it.'],
      next: ['Go on.'],
      who: 'junior',
      judged: [],
      evidence: ['pairs'],
      then: '!done',
    }),
  },
});
