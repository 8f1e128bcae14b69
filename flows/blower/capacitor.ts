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
} from '../../engine/vocabulary.ts';
import { singleReadings } from '../capacitor/single-readings.ts';
import { unread } from '../capacitor/unread.ts';
import { BLOWER_CAPACITOR } from '../examples/blower.ts';
import { LIMITS } from '../limits.ts';

/** The run capacitor of a PSC blower: two terminals, its own isolation. */
export const blowerCapacitor = flow({
  id: 'blower-capacitor',
  version: 1,
  title: 'Blower capacitor',
  exits: ['done'],
  examples: BLOWER_CAPACITOR,
  steps: {
    wires: act('wires off', {
      say: 'Record the wiring, then take both wires off the blower’s capacitor.',
      body: [
        'Take a photo, or note both colours. One wire at a time, by the connector with needle-nose pliers.',
        'Its two terminals are alike. A wire on it leaves the motor’s winding in parallel.',
      ],
      why: 'With a wire on, the meter reads a winding beside the capacitor.',
      also: {
        colours: noted('Colours of both wires', { optional: true, as: 'round:colours' }),
        photo: pictured('Photo of the wiring', { optional: true, as: 'round:wiring' }),
        print: printed('The print, where it can be read now', { optional: true, as: 'cabinet:label' }),
      },
      yes: 'Recorded, both wires off',
      words: [
        'wires off',
        'off',
        'all off',
        'both off',
        'photo wires wires off',
        'recorded',
        'marked and pulled',
        'pulled them',
        'pulled em',
      ],
      cant: {
        label: 'They don’t come off',
        words: ['stuck', 'wires stuck', 'wont come off', 'wires wont come off', 'cant get them off'],
        to: 'stuck',
      },
      next: 'sight',
    }),
    sight: judge('sight', {
      of: { look: '@cabinet:condition' },
      limits: {},
      quiet: ['clean'],
      then: { condemned: 'several', clean: 'print', undecided: 'print' },
    }),
    several: judge('more', {
      of: { look: '@cabinet:count' },
      limits: { than: LIMITS.count.one },
      quiet: ['more', 'no-more', 'undecided'],
      then: { more: 'this-one', 'no-more': 'by-sight', undecided: 'this-one' },
    }),
    'this-one': confirm({
      say: 'Bulge, oil, popped vent or burnt-through terminal: is it on the blower’s capacitor?',
      body: ['More than one capacitor is in here. Each is condemned by its own looks alone.'],
      why: 'By sight one part is condemned, not its neighbour.',
      yes: 'On this one',
      words: ['this one', 'on this one', 'blower', 'both'],
      no: {
        label: 'On another one, or not sure',
        words: ['other', 'another', 'the other one', 'not sure'],
        to: 'print',
      },
      next: 'by-sight',
    }),
    print: label({
      say: 'The print on the part, as on the label.',
      body: ['Type it as printed, for example 7.5 µF ±6 % 440 VAC.'],
      why: 'The marking on the part governs. Without a printed tolerance ±6 % is taken, and the record says so.',
      source: ['±6 % where none is printed: common practice, no single source'],
      as: 'cabinet:label',
      cant: 'diagram',
      next: 'kind',
    }),
    diagram: label({
      say: 'Unreadable print: the rating from the wiring diagram or the motor’s nameplate.',
      body: ['Inside the door or on the motor. Type it as printed there.'],
      why: 'Without a rating there is no verdict on the value. Open, shorted and by sight still stand.',
      as: 'cabinet:label',
      cant: 'unrated',
      next: 'kind',
    }),
    kind: judge('print-sections', {
      of: { label: '@cabinet:label' },
      limits: {},
      quiet: ['single'],
      says: { dual: 'A blower’s capacitor has one section. Without its own rating the ohms are read.' },
      then: { dual: 'unrated', single: 'one', undecided: 'unrated' },
    }),
    one: include(singleReadings, {
      exits: { done: '!done' },
      needs: { label: '@cabinet:label' },
      again: { times: 3, spent: 'spent' },
    }),
    unrated: measure({
      say: 'Ohms across its terminals, wires off. Watch whether it climbs.',
      body: ['Type ol where it climbs to over range.'],
      why: 'A short shows in ohms whatever the rating is.',
      circuit: 'part',
      fields: { hermc: ohms('Across the terminals', { words: ['herm', 'ohm', 'ohms'] }) },
      picture: { kind: 'leads', part: 'single', on: ['across'], between: 'ohms' },
      cant: 'no-rating',
      next: 'short',
    }),
    short: judge('section-ohms', {
      of: { ohms: 'unrated', readings: null, label: null },
      limits: LIMITS.ohms,
      then: { shorted: 'shorted', 'not-shorted': 'no-rating', undecided: 'no-rating' },
    }),
    ...unread(),
  },
});
