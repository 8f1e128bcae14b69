import { act, flow, form, found, include, judge, printed, several, verdict } from '../../engine/vocabulary.ts';
import { NO_WIRING, wiringLost } from '../endings.ts';
import { BLOWER_REPAIR } from '../examples/blower.ts';
import { LIMITS } from '../limits.ts';
import { newBlowerPart, newMotorPart } from '../repair/new-part.ts';
import { FITTED, WIRES_BACK } from '../repair/words.ts';
import { BLOWER_MOTOR } from './dead-tests.ts';

/** From what was found at the blower to the parts in place: why it failed, the right part, fitted and wired back. */
export const blowerRepair = flow({
  id: 'blower-repair',
  version: 1,
  title: 'Why, and the right part for the blower',
  exits: ['fitted', 'left'],
  examples: BLOWER_REPAIR,
  steps: {
    why: form({
      say: 'Why did it fail? A part that failed is a symptom too.',
      body: ['Look before you fit: filter, coil, wheel, bearings, the old part’s print and the diagram on the door.'],
      why: 'Too little air, a stiff wheel or too low a rating kill the next part as well.',
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
          filter: {
            label: 'Filter clogged',
            words: ['filter', 'dirty filter', 'filter dirty', 'clogged filter', 'plugged filter', 'filter plugged'],
          },
          coil: { label: 'Coil dirty', words: ['coil', 'dirty coil'] },
          wheel: {
            label: 'Wheel dirty or rubbing',
            words: ['wheel', 'dirty wheel', 'wheel dirty', 'rubbing', 'wheel rubs'],
          },
          motor: { label: 'Motor hot or slow', words: ['motor hot', 'hot motor', 'motor slow', 'slow motor', 'hot'] },
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
        print: printed('Rating on the diagram or the motor, where it differs', {
          optional: true,
          as: 'cabinet:diagram',
        }),
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
      verdict: 'second-blower-part-in-a-season',
      title: 'The blower’s second one in a season: a senior looks at why',
      says: ['A run capacitor was fitted at this blower not long ago. The part is not the cause.'],
      next: ['Go on with the repair.', 'A senior reads why: air, wheel, bearings, the part’s rating.'],
      who: 'senior',
      judged: ['history'],
      evidence: ['why'],
      raises: 'verdict',
      then: 'diagram',
    }),
    diagram: judge('diagram', {
      of: { label: '@cabinet:label', diagram: '@cabinet:diagram', motor: '@cabinet:motor-label' },
      limits: {},
      quiet: ['same', 'undecided'],
      then: { same: 'parts', differs: 'wrong', undecided: 'parts' },
    }),
    wrong: verdict({
      verdict: 'wrong-blower-part-fitted',
      title: 'The wrong part was in: diagram and motor decide',
      says: ['The print on the old part is not what the diagram or the motor’s nameplate asks for.'],
      next: ['Fit by the diagram.', 'A senior sees it: the motor ran on the wrong part.'],
      who: 'senior',
      judged: ['diagram'],
      evidence: ['@cabinet:label', 'why'],
      raises: 'verdict',
      then: 'parts',
    }),
    parts: found({ among: { motor: { verdicts: BLOWER_MOTOR, to: 'motor' } }, none: 'new' }),
    motor: act('fit', {
      say: 'Fit the new blower motor.',
      renews: ['cabinet:motor-label'],
      body: [
        'Same volts, amps, speeds, rotation and frame as the nameplate asks for.',
        'The wheel centred in its housing, set screw on the flat. Unused speed leads capped one by one.',
      ],
      callouts: [{ level: 'danger', text: 'A bare unused speed lead carries volts while the blower runs.' }],
      why: 'A motor with the wrong rotation or speed starves the coil. The capacitor is renewed with the motor.',
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
      next: 'with-motor',
    }),
    'with-motor': include(newMotorPart, {
      exits: { fits: 'fit', none: 'no-part' },
      needs: {},
      again: { times: 3, spent: 'no-part' },
    }),
    new: include(newBlowerPart, {
      exits: { fits: 'fit', none: 'no-part' },
      needs: {},
      again: { times: 3, spent: 'no-part' },
    }),
    fit: act('fit', {
      say: 'Fit the new part.',
      renews: ['cabinet:label'],
      body: ['Strapped, clear of the wheel and of sharp edges.'],
      yes: 'Fitted, strapped',
      words: [...FITTED],
      cant: { label: 'It doesn’t fit', to: 'no-part' },
      next: 'rewire',
    }),
    rewire: act('rewire', {
      say: 'Put the wires back from the record, and tug each connector.',
      body: [
        'Both on the capacitor, the leads on their speed and common; nothing on record: by the diagram on the door.',
        'None slides: a loose tab burns.',
      ],
      recalls: { 'Noted before they came off': '@round:colours', 'Photo of the wiring': '@round:wiring' },
      yes: 'Wires back as recorded, all tight',
      words: [...WIRES_BACK],
      cant: NO_WIRING,
      next: '!fitted',
    }),
    lost: wiringLost('rewire'),
    'no-part': verdict({
      verdict: 'no-blower-part',
      title: 'The part is not here: the unit stays off',
      says: ['The verdict stands. The repair waits for the part.'],
      next: [
        'Leave it locked or make it safe, door on. The outdoor unit stays off too: without air it ices.',
        'Type stop and say how it is left. The dispatcher brings the part.',
      ],
      who: 'junior',
      judged: [],
      evidence: ['why'],
      then: '!left',
    }),
  },
});
