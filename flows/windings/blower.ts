import { choose, flow, judge, measure, ohms, verdict } from '../../engine/vocabulary.ts';
import { BLOWER_WINDINGS } from '../examples/blower.ts';
import { LIMITS } from '../limits.ts';
import { BLOWER_HEAT, untilCool } from './verdicts.ts';

/** A PSC blower motor with speed leads: one try, which may ask for another. */
export const blowerWindings = flow({
  id: 'blower-windings',
  version: 1,
  title: 'Blower windings',
  exits: ['done', 'again'],
  examples: BLOWER_WINDINGS,
  steps: {
    speeds: measure({
      say: 'Blower windings in ohms: common to each speed lead, then any of them to the frame.',
      body: [
        'Leads off the board or relay. The diagram on the door names common and the speeds.',
        'One speed only: leave the others out. Type ol for over range.',
      ],
      why: 'An open speed or a low reading to the frame shows before power comes back. The fastest speed reads the least.',
      source: ['Ohms rise from high to low speed: common practice, no single source'],
      circuit: 'part',
      fields: {
        high: ohms('Common to high', { words: ['hi', 'fast'] }),
        med: ohms('Common to medium', { words: ['medium', 'mid'], optional: true }),
        low: ohms('Common to low', { words: ['lo', 'slow'], optional: true }),
        frame: ohms('To the frame, the lowest', { words: ['ground', 'gnd', 'g', 'to ground', 'shell', 'case'] }),
      },
      cant: 'not-taken',
      next: 'judged',
    }),
    judged: judge('blower-windings', {
      of: { readings: 'speeds', earlier: '~speeds', warm: 'warm' },
      limits: LIMITS.blowerWindings,
      says: { repeat: 'These don’t fit together. Check which lead is which, zero the leads and repeat.' },
      then: {
        good: '!done',
        'ask-warm': 'warm',
        'until-cool': 'until-cool',
        'protector-open': 'protector',
        open: 'open',
        'to-frame': 'beyond',
        repeat: '!again',
        undecided: 'undecided',
      },
    }),
    // Its leads are in the reading, and they rub on the housing: the motor is low only past them.
    beyond: measure({
      say: 'To the frame again, past the run of its leads: from the motor’s end, the run lifted off everything it touches.',
      body: ['At the motor’s plug, apart; without one, the run held clear of housing and wheel up to the motor.'],
      why: 'Clears past the run: the wire is chafed. Still low: the motor.',
      source: ['The wire before the motor: common practice, no single source'],
      circuit: 'part',
      fields: { leads: ohms('Past the run, to the frame', { words: ['past', 'motor', 'at the motor', 'frame'] }) },
      cant: 'chafed',
      next: 'past',
    }),
    past: judge('leads-to-ground', {
      of: { readings: 'beyond', plate: null },
      limits: LIMITS.loadsToGround,
      then: { 'none-found': 'chafed', low: 'frame', undecided: 'chafed' },
    }),
    chafed: verdict({
      verdict: 'blower-low-to-ground',
      title: 'Low to the frame through the blower’s leads: not shown to be the motor',
      says: [
        'Low at the ends of its leads, and not low past their run, or not read there. No motor is condemned on it.',
      ],
      next: ['Where the run rubs is looked for. Nothing is energised until it is found.'],
      who: 'junior',
      judged: ['judged', 'past'],
      evidence: ['speeds', 'beyond'],
      then: '!done',
    }),
    warm: choose({
      say: 'Is the blower motor hot or cool?',
      body: ['The back of the hand near it, no touch.'],
      why: 'A hot motor’s protector opens every speed and closes again when it cools.',
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
      verdict: 'blower-protector-open',
      title: 'The blower motor’s protector is open: let it cool',
      says: ['Open on a hot motor is no verdict on the winding.'],
      next: ['Let it cool and measure again. Find why it got hot: capacitor, bearings, filter, coil.'],
      who: 'junior',
      judged: ['judged'],
      evidence: ['speeds', 'warm'],
      then: '!done',
    }),
    open: verdict({
      verdict: 'blower-winding-open',
      title: 'The blower motor’s winding is open: replace the motor',
      says: ['Open on a cool motor, at its own leads.'],
      next: [
        'Fit the motor that the nameplate asks for, with the capacitor it asks for.',
        'Not proven until the restart numbers are in.',
      ],
      who: 'junior',
      judged: ['judged'],
      evidence: ['speeds', '~speeds', 'warm'],
      then: '!done',
    }),
    frame: verdict({
      verdict: 'blower-to-frame',
      title: 'The blower motor reads low to its frame: replace the motor',
      says: ['Low to the frame, and still low at the motor, past the run of its leads.'],
      next: [
        'Never energise it.',
        'Fit the motor that the nameplate asks for, with the capacitor it asks for.',
        'Not proven until the restart numbers are in.',
      ],
      who: 'junior',
      judged: ['judged', 'past'],
      evidence: ['speeds', '~speeds', 'beyond'],
      then: '!done',
    }),
    'until-cool': untilCool(BLOWER_HEAT, 'speeds', 'warm'),
    undecided: verdict({
      verdict: 'blower-windings-undecided',
      title: 'The blower motor’s windings are undecided',
      says: ['The readings don’t settle it. An order that doesn’t fit never condemns.'],
      next: ['The diagram’s lead names and a better ohmmeter would decide it.'],
      who: 'junior',
      judged: ['judged'],
      evidence: ['speeds', '~speeds', 'warm'],
      then: '!done',
    }),
    'not-taken': verdict({
      verdict: 'blower-windings-not-taken',
      title: 'The blower motor’s windings were not measured',
      says: ['What follows is weaker for it. The restart’s amps have to show it.'],
      next: ['Go on.'],
      who: 'junior',
      judged: [],
      evidence: ['speeds'],
      then: '!done',
    }),
  },
});
