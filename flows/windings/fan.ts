import { choose, flow, judge, measure, ohms, probes, verdict } from '../../engine/vocabulary.ts';
import { FAN_WINDINGS } from '../examples/windings.ts';
import { LIMITS } from '../limits.ts';
import { byKind } from '../unit.ts';
import { SUM } from './compressor.ts';
import { FAN_HEAT, lowAtItsLeads, untilCool } from './verdicts.ts';

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
    lines: byKind('judged', { 'three-phase': 'equal' }),
    // A unit on three lines has a fan of three equal pairs, or one with a run capacitor, judged by its sum.
    equal: judge('three-windings', {
      of: { readings: 'pairs', earlier: null, warm: null },
      limits: LIMITS.threeFanWindings,
      quiet: ['ask-warm', 'until-cool', 'protector-open', 'open', 'grounded', 'repeat'],
      then: {
        good: '!done',
        'ask-warm': 'judged',
        'until-cool': 'judged',
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
        'until-cool': 'until-cool',
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
        unsure: { label: 'Not sure', words: ['not sure', 'cant tell', 'cant reach it', 'dont know'], to: 'judged' },
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
        'Before it comes out: its plug apart, its leads looked along. A lead broken on the way reads the same.',
        'Fit the motor that the nameplate asks for, with the capacitor it asks for, if it asks for one.',
        'Not proven until the restart numbers are in.',
      ],
      who: 'junior',
      judged: ['judged'],
      evidence: ['pairs', '~pairs', 'warm'],
      then: '!done',
    }),
    frame: lowAtItsLeads('fan motor', 'pairs', '~pairs'),
    'until-cool': untilCool(FAN_HEAT, 'pairs', 'warm'),
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
