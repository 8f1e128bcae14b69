import { act, flow, form, found, include, judge, printed, several, verdict } from '../engine/vocabulary.ts';
import { REPLACED } from './capacitor-verdicts.ts';
import { CONTACTOR, MOTOR } from './dead-block.ts';
import { REPAIR } from './examples/repair.ts';
import { LIMITS } from './limits.ts';
import { newPart } from './new-part.ts';
import { START_GEAR } from './start-gear.ts';
import { UNDER_LOAD } from './under-load.ts';

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
      body: ['Look before you fit: fan, coil, contactor, the old part’s print and the wiring diagram.'],
      why: 'Heat, a stiff fan, bad volts or too low a rating kill the next part as well.',
      source: ['What kills a capacitor: common practice, no single source'],
      parts: {
        cause: several('What you see', {
          nothing: { label: 'Nothing that explains it', alone: true, words: ['nothing', 'age', 'no cause'] },
          coil: { label: 'Coil dirty', words: ['coil', 'dirty coil', 'cottonwood', 'matted'] },
          fan: { label: 'Fan stiff, hot or slow', words: ['fan hot', 'stiff fan'] },
          contactor: { label: 'Contactor pitted', words: ['pitted', 'contactor'] },
          volts: { label: 'Volts high or sagging', words: ['volts', 'high volts', 'sagging'] },
          rating: { label: 'Old part rated too low in volts', words: ['too low', '370'] },
          tab: { label: 'Tab or wire burnt, old mark', words: ['tab', 'burnt tab'] },
          recent: { label: 'Replaced not long ago', words: ['recent', 'replaced recently'] },
        }),
        print: printed('Rating on the wiring diagram, where it differs', { optional: true, as: 'round:diagram' }),
      },
      next: 'history',
    }),
    history: judge('history', {
      of: {},
      limits: LIMITS.history,
      quiet: ['none'],
      then: { none: 'diagram', earlier: 'diagram', season: 'second', undecided: 'diagram' },
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
      then: 'diagram',
    }),
    diagram: judge('diagram', {
      of: { label: '@cabinet:label', diagram: '@round:diagram' },
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
      evidence: ['@cabinet:label', 'why'],
      raises: 'verdict',
      then: 'parts',
    }),
    parts: found({
      among: {
        motor: { verdicts: MOTOR, to: 'motor' },
        capacitor: { verdicts: [...REPLACED, ...UNDER_LOAD], to: 'new' },
      },
      none: 'others',
    }),
    motor: act('fit', {
      say: 'Fit the new fan motor.',
      body: [
        'Same volts, amps, speed, rotation and frame as the nameplate asks for.',
        'Its blade at the old depth, set screw on the flat. Leads not tied to anything yet.',
      ],
      why: 'A motor with the wrong rotation or speed starves the coil. The capacitor is renewed with the motor.',
      source: ['A new capacitor with a new motor: common practice, no single source'],
      yes: 'Motor fitted',
      words: ['fitted'],
      cant: { label: 'No such motor on the truck', words: ['no motor'], to: 'no-part' },
      next: 'new',
    }),
    new: include(newPart, {
      exits: { fits: 'fit', none: 'no-part' },
      needs: {},
      again: { times: 3, spent: 'no-part' },
    }),
    fit: act('fit', {
      say: 'Fit the new part.',
      body: [
        'Strapped, upright where the maker asks for it, clear of the fan and of sharp edges.',
        'Two singles: a lead joins both C.',
      ],
      yes: 'Fitted, strapped',
      words: ['fitted'],
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
      words: ['fitted'],
      cant: { label: 'No such contactor on the truck', words: ['no contactor'], to: 'no-part' },
      next: 'gear',
    }),
    gear: found({ among: { start: { verdicts: START_GEAR, to: 'start' } }, none: 'rewire' }),
    start: act('fit', {
      say: 'Fit the start capacitor and its relay.',
      body: [
        'The relay by its pick-up and coil code, never by its looks. The same printed range, the same or higher volts.',
        'A bleed resistor across the start capacitor. Measured within its range before it goes in.',
      ],
      yes: 'Start parts fitted',
      words: ['fitted'],
      cant: { label: 'No such parts on the truck', words: ['no relay'], to: 'no-part' },
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
      words: ['wires back', 'rewired', 'tight'],
      next: '!fitted',
    }),
    'no-part': verdict({
      verdict: 'no-part',
      title: 'The part is not here: the unit stays off',
      says: ['The verdict stands. The repair waits for the part.'],
      next: [
        'Leave it locked or make it safe, cover on.',
        'Type stop and say how it is left. The dispatcher brings the part.',
      ],
      who: 'junior',
      judged: [],
      evidence: ['why'],
      then: '!left',
    }),
  },
});
