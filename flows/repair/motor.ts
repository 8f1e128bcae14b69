import { act, choose, confirm, found, include } from '../../engine/vocabulary.ts';
import { UNDER_LOAD } from '../capacitor/under-load.ts';
import { byKind } from '../unit.ts';
import { newMotorPart } from './new-part.ts';
import { FIRST, OTHER } from './which.ts';

/** A new fan motor, and the capacitor that its plate asks for. */
export const newMotor = {
  motor: act('fit', {
    say: 'Fit the new fan motor.',
    renews: ['cabinet:motor-label'],
    body: [
      'Same volts, amps, speed, rotation and frame as the nameplate asks for.',
      'Its blade at the old depth, set screw on the flat. Leads not tied to anything yet.',
    ],
    why: 'A motor with the wrong rotation or speed starves the coil. Its capacitor, if it has one, is renewed with it.',
    source: ['A new capacitor with a new motor: common practice, no single source'],
    yes: 'Motor fitted',
    words: [
      'motor in',
      'new motor in',
      'fitted',
      'installed',
      'put in',
      'put it in',
      'its in',
      'new one in',
      'mounted',
      'installed and strapped',
    ],
    cant: { label: 'No such motor on the truck', words: ['no motor'], to: 'no-part' },
    next: 'motor-kind',
  }),
  // A motor without a run capacitor gets none.
  'motor-kind': byKind('with-motor', { ecm: 'still-in', 'three-phase': 'asks', refrigeration: 'asks' }),
  asks: choose({
    say: 'Does the new motor’s plate ask for a run capacitor?',
    body: ['A three-phase, a shaded-pole or an electronic motor has none.'],
    why: 'Nothing is fitted by guess. Its plate decides, not what stood beside the old one.',
    options: {
      yes: {
        label: 'Yes, it prints µF',
        words: ['yes', 'it does', 'prints it', 'with capacitor', 'run capacitor', 'psc'],
        to: 'with-motor',
      },
      none: {
        label: 'None: this motor has no capacitor',
        words: ['none', 'no', 'no capacitor', 'without', 'three-phase', '3-phase', 'shaded pole', 'ecm'],
        to: 'still-in',
      },
    },
    cant: 'with-motor',
  }),
  'with-motor': include(newMotorPart, {
    exits: { fits: 'fit-with-motor', none: 'no-part' },
    needs: {},
    again: { times: 3, spent: 'no-part' },
  }),
  'fit-with-motor': act('fit', {
    say: 'Fit the new motor’s capacitor.',
    renews: ['cabinet:label', 'cabinet:diagram'],
    body: [
      'Strapped, upright where the maker asks for it, clear of the fan and of sharp edges.',
      'A single beside a dual: the dual’s FAN terminal stays empty, a lead joins both C.',
    ],
    yes: 'Fitted, strapped',
    words: ['fitted', 'installed', 'put in', 'put it in', 'its in', 'new one in', 'mounted'],
    cant: { label: 'It doesn’t fit', to: 'no-part' },
    next: 'condemned-too',
  }),
  // What went in with the motor may be the one that was condemned.
  'condemned-too': found({
    among: { capacitor: { verdicts: [...FIRST, ...OTHER, ...UNDER_LOAD], to: 'same-one' } },
    none: 'others',
  }),
  'same-one': confirm({
    say: 'A capacitor was condemned as well. Is it out now, with the motor?',
    why: 'A condemned part stays in nobody’s unit.',
    yes: 'It is out',
    words: ['out', 'its out', 'same one', 'replaced'],
    no: { label: 'Another one, still in', words: ['still in', 'another one', 'not sure'], to: 'still-in' },
    next: 'others',
  }),
  'still-in': found({
    among: { capacitor: { verdicts: [...FIRST, ...UNDER_LOAD], to: 'new' } },
    none: 'second-part',
  }),
};
