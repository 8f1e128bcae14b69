import { act, choose, flow, include, label, noted, pictured, verdict } from '../engine/vocabulary.ts';
import { ANOTHER } from './examples/second.ts';
import { singleReadings } from './single-readings.ts';
import { currentRelay, potentialRelay, ptc } from './start-gear.ts';

const WIRES = {
  body: ['Record the wiring first: a photo, or the colour on each terminal.', 'By the connector, never by the wire.'],
  also: {
    colours: noted('Colours', { optional: true, as: 'round:other-colours' }),
    photo: pictured('Photo of the wiring', { optional: true, as: 'round:other-wiring' }),
  },
} as const;
const gear = { exits: { done: '!done' }, needs: { label: 'range' }, again: { times: 2, spent: '!done' } } as const;

/** A second capacitor in the same cabinet: a start part with its relay, or a run part of its own. */
export const anotherCapacitor = flow({
  id: 'another-capacitor',
  version: 1,
  title: 'Another capacitor',
  exits: ['done'],
  examples: ANOTHER,
  steps: {
    kind: choose({
      say: 'The other capacitor: what is it?',
      body: ['A start part prints a range, is usually black plastic, and has a relay beside it.'],
      options: {
        potential: {
          label: 'Start capacitor, potential relay (5, 2, 1)',
          words: ['potential', 'potential relay'],
          to: 'resistor',
        },
        current: {
          label: 'Start capacitor, current relay',
          words: ['current', 'current relay'],
          to: 'resistor-current',
        },
        ptc: {
          label: 'Start assist with a PTC',
          words: ['ptc', 'ptcr', 'solid state'],
          to: 'resistor-ptc',
        },
        run: {
          label: 'Run capacitor, one section',
          words: ['run', 'run cap', 'run capacitor', 'fan capacitor', 'fan cap', 'fan run cap', 'single'],
          to: 'wires',
        },
        none: { label: 'No second capacitor after all', words: ['not one', 'no second'], to: '!done' },
      },
    }),
    resistor: act('wires off', {
      say: 'Wires off the start capacitor and the relay, its bleed resistor off at one end.',
      ...WIRES,
      yes: 'Off',
      words: ['wires off', 'resistor one end off'],
      cant: { label: 'They don’t come off', to: 'not-tested' },
      next: 'range',
    }),
    'resistor-current': act('wires off', {
      say: 'Wires off the start capacitor and the relay, its bleed resistor off at one end.',
      ...WIRES,
      yes: 'Off',
      words: ['wires off', 'resistor one end off'],
      cant: { label: 'They don’t come off', to: 'not-tested' },
      next: 'range-current',
    }),
    'resistor-ptc': act('wires off', {
      say: 'Wires off the start assist, its bleed resistor off at one end.',
      ...WIRES,
      yes: 'Off',
      words: ['wires off', 'resistor one end off'],
      cant: { label: 'They don’t come off', to: 'not-tested' },
      next: 'range-ptc',
    }),
    range: label({ ...RANGE(), next: 'potential', cant: 'potential' }),
    'range-current': label({ ...RANGE(), next: 'current', cant: 'current' }),
    'range-ptc': label({ ...RANGE(), next: 'ptc', cant: 'ptc' }),
    potential: include(potentialRelay, gear),
    current: include(currentRelay, { ...gear, needs: { label: 'range-current' } }),
    ptc: include(ptc, { ...gear, needs: { label: 'range-ptc' } }),
    wires: act('wires off', {
      say: 'Take the wires off this run capacitor.',
      ...WIRES,
      yes: 'Off',
      words: ['wires off'],
      cant: { label: 'They don’t come off', to: 'not-tested' },
      next: 'print',
    }),
    print: label({
      say: 'The print on this run capacitor.',
      body: ['Type it as printed, for example 5 µF ±6 % 370 VAC.'],
      why: 'The marking on the part governs.',
      cant: 'not-tested',
      next: 'run',
    }),
    run: include(singleReadings, {
      exits: { done: '!done' },
      needs: { label: 'print' },
      again: { times: 3, spent: 'not-tested' },
    }),
    'not-tested': verdict({
      verdict: 'second-capacitor-undecided',
      title: 'The other capacitor is undecided',
      says: ['Its wires, its print or its readings are missing. Nothing is condemned.'],
      next: ['A senior sees this call.', 'Finish the dead tests.'],
      who: 'senior',
      judged: [],
      evidence: ['kind', 'print'],
      raises: 'verdict',
      then: '!done',
    }),
  },
});

function RANGE() {
  return {
    say: 'The print on the start capacitor: its range and volts.',
    body: ['Type it as printed, for example 161-193 MFD 250 VAC.'],
    why: 'A start capacitor is judged by its printed range.',
    start: true,
  } as const;
}
