import { act, choose, confirm, flow, form, found, include, judge, several, verdict } from '../engine/vocabulary.ts';
import { FAILED, REPLACED } from './capacitor-verdicts.ts';
import { CONTACTOR, MOTOR, OUTSIDE } from './dead-block.ts';
import { NO_WIRING, noPart, wiringLost } from './endings.ts';
import { REPAIR } from './examples/repair.ts';
import { LIMITS } from './limits.ts';
import { newMotorPart, newOtherPart, newPart } from './new-part.ts';
import { START_GEAR } from './start-gear.ts';
import { UNDER_LOAD } from './under-load.ts';
import { KINDS } from './unit.ts';

/** Which of two capacitors was condemned: the new part goes by that one's print. */
const FIRST = REPLACED.map((verdict) => `block/run/${verdict}`);
const of = (which: string) => FAILED.map((verdict) => `block/${which}/${verdict}`);
const SECOND = of('another');
const THIRD = of('yet-another');
const OTHER = [...SECOND, ...THIRD];

/** From what was found to the parts in place: why it failed, the right part, fitted and wired back. */
export const repair = flow({
  id: 'repair',
  version: 1,
  title: 'Why, and the right part',
  exits: ['fitted', 'left'],
  examples: REPAIR,
  steps: {
    why: form({
      say: 'Why did it fail? A part that failed is a symptom too.',
      body: ['Look before you fit: fan, coil, contactor, the old part’s print.'],
      why: 'Heat, a stiff fan, bad volts or too low a rating kill the next part as well.',
      source: ['What kills a capacitor: common practice, no single source'],
      parts: {
        cause: several('What you see', {
          nothing: {
            label: 'Nothing that explains it',
            alone: true,
            words: [
              'nothing',
              'nothing obvious',
              'age',
              'old',
              'old age',
              'just old',
              'worn out',
              'no cause',
              'no reason',
            ],
          },
          coil: {
            label: 'Coil dirty',
            words: ['coil', 'dirty', 'dirty coil', 'plugged coil', 'coil plugged', 'cottonwood', 'matted'],
          },
          fan: {
            label: 'Fan stiff, hot or slow',
            words: [
              'fan hot',
              'fan slow',
              'slow fan',
              'hot fan',
              'fan motor hot',
              'fan motor slow',
              'stiff fan',
              'fan stiff',
              'fan is stiff',
            ],
          },
          contactor: {
            label: 'Contactor pitted',
            words: ['pitted', 'pitted contacts', 'contacts pitted', 'pitted contactor', 'contactor'],
          },
          volts: {
            label: 'Volts high or sagging',
            words: [
              'volts',
              'high volts',
              'voltage high',
              'high voltage',
              'low voltage',
              'voltage low',
              'surge',
              'power surge',
              'sagging',
            ],
          },
          rating: { label: 'Old part rated too low in volts', words: ['too low', '370'] },
          tab: { label: 'Tab or wire burnt, old mark', words: ['tab', 'burnt tab'] },
          recent: {
            label: 'Replaced not long ago',
            words: [
              'recent',
              'replaced recently',
              'replaced last year',
              'replaced last month',
              'replaced last season',
              'been replaced',
              'new last year',
            ],
          },
        }),
      },
      next: 'history',
    }),
    history: judge('history', {
      of: {},
      limits: LIMITS.history,
      quiet: ['none'],
      then: { none: 'failed', earlier: 'failed', season: 'second', undecided: 'failed' },
    }),
    second: verdict({
      verdict: 'second-in-a-season',
      title: 'The second one in a season: a senior looks at why',
      says: ['A run capacitor was fitted here not long ago. The part is not the cause.'],
      next: ['Go on with the repair.', 'A senior reads why: coil, fan, volts, the part’s make and rating.'],
      who: 'senior',
      judged: ['history'],
      evidence: ['why'],
      raises: 'verdict',
      then: 'failed',
    }),
    // One that read right by its own print was compared where it was read; one that failed is compared here.
    failed: found({
      among: {
        told: { verdicts: ['wrong-part-fitted'], to: 'parts' },
        capacitor: { verdicts: [...FAILED, ...UNDER_LOAD], to: 'diagram' },
      },
      none: 'parts',
    }),
    diagram: judge('diagram', {
      of: { label: '@cabinet:label', diagram: '@cabinet:diagram', motor: '@cabinet:motor-label' },
      limits: {},
      quiet: ['same', 'undecided'],
      then: { same: 'parts', differs: 'wrong', undecided: 'parts' },
    }),
    wrong: verdict({
      verdict: 'wrong-part-fitted',
      title: 'The wrong part was in: the diagram decides',
      says: ['The print on the old part is not what the wiring diagram asks for.'],
      next: ['Fit by the diagram.', 'A senior sees it: the compressor ran on the wrong part.'],
      who: 'senior',
      judged: ['diagram'],
      evidence: ['@cabinet:label', '@cabinet:diagram', 'why'],
      raises: 'verdict',
      then: 'parts',
    }),
    parts: found({
      among: {
        motor: { verdicts: MOTOR, to: 'motor' },
        capacitor: { verdicts: [...FIRST, ...UNDER_LOAD], to: 'new' },
      },
      none: 'second-part',
    }),
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
    'motor-kind': judge('unit-class', {
      of: { unit: '@class' },
      limits: {},
      quiet: KINDS,
      then: {
        psc: 'with-motor',
        ecm: 'still-in',
        'three-phase': 'asks',
        refrigeration: 'asks',
        closed: 'with-motor',
        undecided: 'with-motor',
      },
    }),
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
    new: include(newPart, {
      exits: { fits: 'fit', none: 'no-part' },
      needs: {},
      again: { times: 3, spent: 'no-part' },
    }),
    fit: act('fit', {
      say: 'Fit the new part.',
      // What is printed on the new one is read on it, should it ever be judged.
      renews: ['cabinet:label'],
      body: [
        'Strapped, upright where the maker asks for it, clear of the fan and of sharp edges.',
        'Two singles: a lead joins both C.',
      ],
      yes: 'Fitted, strapped',
      words: [
        'fitted',
        'installed',
        'put in',
        'put it in',
        'its in',
        'new one in',
        'mounted',
        'installed and strapped',
      ],
      cant: { label: 'It doesn’t fit', to: 'no-part' },
      next: 'second-part',
    }),
    'second-part': found({
      among: { third: { verdicts: THIRD, to: 'both' }, second: { verdicts: SECOND, to: 'new-other' } },
      none: 'others',
    }),
    // One print is kept of the others: two of them at once are not fitted by it.
    both: found({ among: { second: { verdicts: SECOND, to: 'two-others' } }, none: 'new-other' }),
    'two-others': verdict({
      verdict: 'two-other-capacitors-fail',
      title: 'Two more capacitors are condemned: each needs a part of its own, and a senior',
      says: ['The second and the third one. Neither stays in, and neither goes by the other’s print.'],
      next: [
        'A senior decides which part goes where, by the diagram. It stays off until all of them are in.',
        'Leave it locked or make it safe, cover on. Type stop and say how it is left.',
      ],
      who: 'senior',
      judged: [],
      evidence: ['why'],
      raises: 'verdict',
      then: '!left',
    }),
    'new-other': include(newOtherPart, {
      exits: { fits: 'fit-other', none: 'no-part' },
      needs: {},
      again: { times: 3, spent: 'no-part' },
    }),
    'fit-other': act('fit', {
      say: 'Fit the new part in the place of the other capacitor.',
      body: ['Strapped, upright where the maker asks for it, clear of the fan and of sharp edges.'],
      yes: 'Fitted, strapped',
      words: ['fitted', 'installed', 'put in', 'put it in', 'its in', 'new one in', 'mounted'],
      cant: { label: 'It doesn’t fit', to: 'no-part' },
      next: 'others',
    }),
    others: found({
      among: { contactor: { verdicts: CONTACTOR, to: 'contactor' } },
      none: 'gear',
    }),
    contactor: act('fit', {
      say: 'Fit the new contactor.',
      body: ['Same coil volts, poles and amps. Terminals tight, wires as recorded.'],
      yes: 'Contactor fitted',
      words: [
        'fitted',
        'installed',
        'put in',
        'put it in',
        'its in',
        'new one in',
        'mounted',
        'installed and strapped',
      ],
      cant: { label: 'No such contactor on the truck', words: ['no contactor'], to: 'no-part' },
      next: 'gear',
    }),
    gear: found({ among: { start: { verdicts: START_GEAR, to: 'start' } }, none: 'protector' }),
    start: act('fit', {
      say: 'Fit the start capacitor and its relay.',
      body: [
        'The relay by its pick-up and coil code, never by its looks. The same printed range, the same or higher volts.',
        'A bleed resistor across the start capacitor. Measured within its range before it goes in.',
      ],
      yes: 'Start parts fitted',
      words: [
        'fitted',
        'installed',
        'put in',
        'put it in',
        'its in',
        'new one in',
        'mounted',
        'installed and strapped',
      ],
      cant: { label: 'No such parts on the truck', words: ['no relay'], to: 'no-part' },
      next: 'protector',
    }),
    protector: found({ among: { overload: { verdicts: OUTSIDE, to: 'overload' } }, none: 'rewire' }),
    overload: act('fit', {
      say: 'Fit the new external overload.',
      body: ['By its number, never by its looks. Flat on the shell, its clip tight.'],
      yes: 'Overload fitted',
      words: ['fitted', 'installed', 'put in', 'its in', 'new one in'],
      cant: { label: 'No such overload on the truck', words: ['no overload'], to: 'no-part' },
      next: 'rewire',
    }),
    rewire: act('rewire', {
      say: 'Put the wires back from the record, and tug each connector.',
      body: [
        'C, HERM and FAN as recorded before they came off; nothing on record: by the wiring diagram.',
        'None slides: a loose tab burns.',
      ],
      recalls: {
        'Noted before they came off': '@round:colours',
        'Photo of the wiring': '@round:wiring',
        'Noted at the second capacitor': '@round:other-colours',
        'Photo of the second capacitor': '@round:other-wiring',
      },
      yes: 'Wires back as recorded, all tight',
      words: [
        'wires back',
        'wires back on',
        'wires on',
        'back on',
        'rewired',
        'reconnected',
        'hooked up',
        'hooked back up',
        'wired up',
        'wired back up',
        'back together',
        'tight',
        'tugged',
      ],
      cant: NO_WIRING,
      next: '!fitted',
    }),
    lost: wiringLost('rewire'),
    'no-part': noPart('why'),
  },
});
