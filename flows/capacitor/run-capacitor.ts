import {
  act,
  confirm,
  flow,
  include,
  judge,
  label,
  measure,
  noted,
  ohms,
  pictured,
  printed,
  verdict,
} from '../../engine/vocabulary.ts';
import { RUN_CAPACITOR } from '../examples/block.ts';
import { LIMITS } from '../limits.ts';
import { readings } from './readings.ts';
import { oneSection } from './single-readings.ts';
import { terminals } from './terminals.ts';
import { unread } from './unread.ts';

const SIGHT = { of: { look: '@cabinet:condition' }, limits: {}, quiet: ['clean'] } as const;

const SEVERAL = {
  of: { look: '@cabinet:count' },
  limits: { than: LIMITS.count.one },
  quiet: ['more', 'no-more', 'undecided'],
} as const;
const ON_THIS_ONE = {
  say: 'Bulge, oil, popped vent or burnt-through terminal: is it on the run capacitor?',
  body: ['More than one capacitor is in here. Each is condemned by its own looks alone.'],
  why: 'By sight one part is condemned, not its neighbour.',
  yes: 'On this one',
  words: ['this one', 'on this one', 'run cap', 'run capacitor', 'both'],
} as const;
const NOT_THIS_ONE = {
  label: 'On another one, or not sure',
  words: ['other', 'another', 'the other one', 'start cap', 'start capacitor', 'not sure'],
} as const;

/** The run capacitor of a PSC unit, one section or two, from the wiring record to a verdict. */
export const runCapacitor = flow({
  id: 'run-capacitor',
  version: 1,
  title: 'Run capacitor',
  exits: ['done'],
  examples: RUN_CAPACITOR,
  steps: {
    'asked-for': label({
      say: 'What does the unit’s wiring diagram ask for as run capacitor?',
      body: [
        'Inside the cover or the control box, eyes only. For example 45+5 µF 440 VAC.',
        'In this part’s place: of a dual both values, of two single parts this one’s alone.',
        'With a new fan motor, FAN is what that motor’s plate asks for.',
        'No diagram, or it can’t be read: type no diagram.',
      ],
      why: 'A part may read right by its own print and still be the wrong one. The diagram decides what belongs here.',
      as: 'cabinet:diagram',
      mayLack: true,
      cant: 'wires',
      next: 'wires',
    }),
    wires: act('wires off', {
      say: 'Record the wiring, then take the wires off the run capacitor.',
      body: [
        'Take a photo, or note the colour on each terminal. Several wires on C are normal.',
        'One wire at a time, by the connector with needle-nose pliers, never by the wire.',
        'C is common, not compressor. HERM is the hermetic compressor. FAN is the outdoor fan.',
      ],
      why: 'With a wire on, the meter reads a winding beside the capacitor.',
      also: {
        colours: noted('Colours: C, HERM, FAN', { optional: true, as: 'round:colours' }),
        photo: pictured('Photo of the wiring', { optional: true, as: 'round:wiring' }),
        print: printed('The print, where it can be read now', { optional: true, as: 'cabinet:label' }),
      },
      yes: 'Recorded, wires off, marks readable',
      words: [
        'wires off',
        'off',
        'all off',
        'photo wires wires off',
        'wires off herm fan c',
        'marked',
        'recorded',
        'marked and pulled',
        'pulled the wires',
        'pulled them',
        'pulled em',
        'pic taken',
      ],
      no: {
        label: 'Wires off, terminal marks unreadable',
        words: [
          'unreadable',
          'no marks',
          'no markings',
          'marks gone',
          'not marked',
          'unmarked',
          'cant read the marks',
          'wires off cant read the marks',
          'wires off no marks',
        ],
        to: 'sight-unmarked',
      },
      cant: {
        label: 'They don’t come off',
        words: ['stuck', 'wires stuck', 'wont come off', 'wires wont come off', 'cant get them off', 'cant get em off'],
        to: 'stuck',
      },
      next: 'sight',
    }),
    sight: judge('sight', { ...SIGHT, then: { condemned: 'several', clean: 'print', undecided: 'print' } }),
    'sight-unmarked': judge('sight', {
      ...SIGHT,
      then: { condemned: 'several-unmarked', clean: 'terminals', undecided: 'terminals' },
    }),
    // What was seen is one fact of the cabinet: where several capacitors stand in it, it says nothing of this one yet.
    several: judge('more', { ...SEVERAL, then: { more: 'this-one', 'no-more': 'by-sight', undecided: 'this-one' } }),
    'several-unmarked': judge('more', {
      ...SEVERAL,
      then: { more: 'this-one-unmarked', 'no-more': 'by-sight', undecided: 'this-one-unmarked' },
    }),
    'this-one': confirm({ ...ON_THIS_ONE, no: { ...NOT_THIS_ONE, to: 'print' }, next: 'by-sight' }),
    'this-one-unmarked': confirm({ ...ON_THIS_ONE, no: { ...NOT_THIS_ONE, to: 'terminals' }, next: 'by-sight' }),
    terminals: include(terminals, {
      exits: { known: 'print', unknown: '!done' },
      needs: {},
      again: { times: 2, spent: 'no-terminals' },
    }),
    print: label({
      say: 'The print on the part, as on the label.',
      body: ['Type it as printed, for example 30+5 µF ±6 % 440 VAC. The larger value is HERM, the smaller FAN.'],
      why: 'The marking on the part governs. Without a printed tolerance ±6 % is taken, and the record says so.',
      source: ['±6 % where none is printed: common practice, no single source'],
      as: 'cabinet:label',
      cant: 'diagram',
      next: 'kind',
    }),
    diagram: label({
      say: 'Unreadable print: the rating from the wiring diagram or the nameplate.',
      body: ['Inside the cover or on the nameplate. Type it as printed there.'],
      why: 'Without a rating there is no verdict on the value. Open, shorted and by sight still stand.',
      as: 'cabinet:label',
      cant: 'unrated',
      next: 'kind',
    }),
    kind: judge('print-sections', {
      of: { label: '@cabinet:label' },
      limits: {},
      quiet: ['dual', 'single', 'undecided'],
      then: { dual: 'both', single: 'one', undecided: 'unrated' },
    }),
    both: include(readings, { exits: { done: '!done' }, needs: {}, again: { times: 3, spent: 'spent' } }),
    one: include(oneSection, {
      exits: { done: '!done' },
      needs: { label: '@cabinet:label' },
      again: { times: 3, spent: 'spent' },
    }),
    unrated: measure({
      say: 'Ohms across each section, wires off. Watch whether it climbs.',
      body: ['HERM to C, FAN to C. One section: leave FAN out. Type ol where it climbs to over range.'],
      why: 'A short shows in ohms whatever the rating is.',
      circuit: 'part',
      fields: {
        hermc: ohms('HERM to C', { words: ['herm', 'herm-c', 'h-c'] }),
        fanc: ohms('FAN to C', { words: ['fan', 'fan-c', 'f-c'], optional: true }),
      },
      picture: { kind: 'leads', part: 'dual', on: ['herm-c', 'fan-c'], between: 'ohms' },
      cant: 'no-rating',
      next: 'short',
    }),
    short: judge('section-ohms', {
      of: { ohms: 'unrated', readings: null, label: null },
      limits: LIMITS.ohms,
      then: { shorted: 'shorted', 'not-shorted': 'no-rating', undecided: 'no-rating' },
    }),
    'no-terminals': verdict({
      verdict: 'terminals-unknown',
      title: 'The terminals are not known: no verdict',
      says: ['Two sets of three readings don’t fit any naming of the terminals.'],
      next: ['Another meter, or the wiring diagram, would tell. A senior sees this call.', 'Finish the dead tests.'],
      who: 'senior',
      judged: [],
      evidence: ['wires'],
      raises: 'verdict',
      then: '!done',
    }),
    ...unread(),
  },
});
