import { act, flow, include } from '../../engine/vocabulary.ts';
import { NO_WIRING, noPart, wiringLost } from '../endings.ts';
import { MOTOR_AFTER } from '../examples/fan.ts';
import { newMotorPart } from '../repair/new-part.ts';

/** The fan motor that failed on volts: a new one with its own capacitor, dead again from the lock. */
export const motorAfter = flow({
  id: 'motor-after',
  version: 1,
  title: 'New fan motor',
  exits: ['fitted', 'left'],
  examples: MOTOR_AFTER,
  steps: {
    motor: act('fit', {
      say: 'Fit the new fan motor.',
      renews: ['cabinet:motor-label'],
      body: [
        'Same volts, amps, speed, rotation and frame as the nameplate asks for.',
        'Its blade at the old depth, set screw on the flat. Leads not tied to anything yet.',
      ],
      why: 'A motor with the wrong rotation or speed starves the coil. The capacitor is renewed with the motor.',
      source: ['A new capacitor with a new motor: common practice, no single source'],
      yes: 'Motor fitted',
      words: ['motor in', 'new motor in', 'fitted', 'installed', 'its in', 'mounted'],
      cant: { label: 'No such motor on the truck', words: ['no motor'], to: 'no-part' },
      next: 'new',
    }),
    new: include(newMotorPart, {
      exits: { fits: 'capacitor', none: 'no-part' },
      needs: {},
      again: { times: 2, spent: 'no-part' },
    }),
    capacitor: act('fit', {
      say: 'Fit the new capacitor.',
      renews: ['cabinet:label', 'cabinet:diagram'],
      body: ['Strapped, clear of the fan and of sharp edges.'],
      yes: 'Fitted, strapped',
      words: ['fitted', 'installed', 'put in', 'its in', 'mounted'],
      cant: { label: 'It doesn’t fit', to: 'no-part' },
      next: 'rewire',
    }),
    rewire: act('rewire', {
      say: 'Wires by the diagram of the motor and the unit, and tug each connector.',
      body: ['C, HERM and FAN as recorded before they came off.'],
      recalls: { 'Noted before they came off': '@round:colours', 'Photo of the wiring': '@round:wiring' },
      yes: 'Wired, all tight',
      words: ['wires back', 'wires on', 'rewired', 'wired', 'tight', 'tugged'],
      cant: NO_WIRING,
      next: '!fitted',
    }),
    lost: wiringLost('rewire'),
    'no-part': noPart('motor'),
  },
});
