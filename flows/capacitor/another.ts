import { act, choose, flow, include, judge, label, noted, pictured, verdict } from '../../engine/vocabulary.ts';
import { ANOTHER } from '../examples/second.ts';
import { LIMITS } from '../limits.ts';
import { currentRelay, potentialRelay, ptc } from '../refrigeration/start-gear.ts';
import { singleReadings } from './single-readings.ts';

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
    // What was seen is one fact of the cabinet; by sight a part is condemned by its own looks.
    seen: judge('sight', {
      of: { look: '@cabinet:condition' },
      limits: {},
      quiet: ['clean', 'condemned', 'undecided'],
      then: { condemned: 'several', clean: 'kind', undecided: 'kind' },
    }),
    several: judge('more', {
      of: { look: '@cabinet:count' },
      limits: { than: LIMITS.count.one },
      quiet: ['more', 'no-more', 'undecided'],
      // A single one is asked for here only where it is a start part.
      then: { more: 'this-one', 'no-more': 'popped', undecided: 'this-one' },
    }),
    'this-one': choose({
      say: 'Bulge, oil, popped disc or burnt-through terminal: is it on this other capacitor?',
      body: ['A start part prints a range, is usually black plastic, and has a relay beside it.'],
      why: 'By sight one part is condemned, not its neighbour.',
      options: {
        no: {
          label: 'No, or not sure',
          words: ['no', 'not this one', 'run cap', 'run capacitor', 'not sure'],
          to: 'kind',
        },
        start: {
          label: 'Yes, and it is a start capacitor',
          words: ['start', 'start cap', 'start capacitor', 'yes start'],
          to: 'popped',
        },
        run: { label: 'Yes, and it is a run capacitor', words: ['run', 'yes run', 'fan capacitor'], to: 'by-sight' },
      },
    }),
    popped: verdict({
      verdict: 'start-capacitor-by-sight',
      title: 'The start capacitor is condemned by sight: replace it',
      says: ['A popped disc, oil, a bulge or a burnt-through terminal condemns it. A reading is optional.'],
      next: [
        'Replace the relay with it, by its code: contacts that weld burst start capacitors.',
        'Finish the dead tests. A second fault is usual.',
        'Not proven until the restart numbers are in.',
      ],
      who: 'junior',
      judged: ['seen'],
      evidence: ['@cabinet:condition', 'this-one'],
      then: '!done',
    }),
    'by-sight': verdict({
      verdict: 'condemned-by-sight',
      title: 'The other run capacitor is condemned by sight: replace it',
      says: ['A bulged top, oil, a popped vent or a burnt-through terminal condemns it. A reading is optional.'],
      next: ['Measure the new part dead before you fit it.', 'Finish the dead tests. A second fault is usual.'],
      who: 'junior',
      judged: ['seen'],
      evidence: ['@cabinet:condition', 'this-one'],
      then: '!done',
    }),
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
      cant: 'not-tested',
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
