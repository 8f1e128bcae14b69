import { act, flow, found, include, judge, verdict } from '../../engine/vocabulary.ts';
import { UNDER_LOAD } from '../capacitor/under-load.ts';
import { FAILED } from '../capacitor/verdicts.ts';
import { CONTACTOR, MOTOR, OUTSIDE } from '../dead/block.ts';
import { NO_WIRING, noPart, wiringLost } from '../endings.ts';
import { REPAIR } from '../examples/repair.ts';
import { LIMITS } from '../limits.ts';
import { START_GEAR } from '../refrigeration/start-gear.ts';
import { newMotor } from './motor.ts';
import { newOtherPart, newPart } from './new-part.ts';
import { FIRST, SECOND, THIRD } from './which.ts';
import { why } from './why.ts';
import { FITTED, WIRES_BACK } from './words.ts';

/** From what was found to the parts in place: why it failed, the right part, fitted and wired back. */
export const repair = flow({
  id: 'repair',
  version: 1,
  title: 'Why, and the right part',
  exits: ['fitted', 'left'],
  examples: REPAIR,
  steps: {
    ...why,
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
    ...newMotor,
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
      words: [...FITTED],
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
      words: [...FITTED],
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
      words: [...FITTED],
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
      words: [...WIRES_BACK],
      cant: NO_WIRING,
      next: '!fitted',
    }),
    lost: wiringLost('rewire'),
    'no-part': noPart('why'),
  },
});
