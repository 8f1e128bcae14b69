import {
  flow,
  judge,
  type Leads,
  label,
  measure,
  megohms,
  microfarads,
  one,
  type PartSpec,
  printed,
  shown,
  verdict,
} from '../../engine/vocabulary.ts';
import { BLOWER_PART } from '../examples/blower.ts';
import { PART } from '../examples/repair.ts';
import { MOTOR_PART, OTHER_PART } from '../examples/second.ts';
import { LIMITS } from '../limits.ts';

/** Whose print governs: the diagram's where it names the part, else that of the part that comes out. */
const OLD = { old: '@cabinet:label', diagram: '@cabinet:diagram' } as const;
/** A second capacitor has a print of its own, and the diagram's rating that was asked for is the first one's. */
const OTHER = { old: '@round:other-label', diagram: null } as const;

/** With a new motor its own plate decides, not what stood beside the old one. */
const MOTOR_PLATE = { old: '@cabinet:motor-label', diagram: null } as const;

interface Words {
  readonly rating: string;
  readonly of: typeof OLD | typeof OTHER | typeof MOTOR_PLATE;
  readonly example: string;
  readonly how: string;
  readonly fields: Readonly<Record<string, PartSpec<'~part'>>>;
  readonly picture: Leads;
}

/** Picked from what the truck carries, and measured dead before it goes in: the same for either cabinet. */
const steps = ({ rating, of, example, how, fields, picture }: Words) =>
  ({
    rating: label({
      say: rating,
      body: [`Type it as printed, for example ${example}.`],
      why: 'The same µF within the original’s tolerance, the same or higher volts. Nothing is fitted by guess.',
      as: of.old.slice(1),
      cant: '!none',
      next: 'part',
    }),
    part: measure({
      say: 'Pick the new part and measure it dead, before it is fitted.',
      body: [how, 'Type first, second or third for a line of the list, or other and its print.'],
      callouts: [{ level: 'warning', text: 'Never the next size up. A start capacitor is no run capacitor.' }],
      why: 'A new part may be bad or wrong. Measured dead is its proof; under load isn’t routine.',
      source: [
        'Same µF, same or higher volts: a maker’s tip reprinted by a trade page (secondary source) and common practice',
      ],
      circuit: 'part',
      shows: [shown('substitutes', { of, limits: LIMITS.substitutes })],
      fields: {
        pick: one('Which part', {
          first: { label: 'The first of the list', words: ['1st', 'exact'] },
          second: { label: 'The second', words: ['2nd', 'two singles'] },
          third: { label: 'The third', words: ['3rd'] },
          other: {
            label: 'Another part: its print',
            words: ['another', 'another one', 'different one', 'other one', 'new', 'new one', 'new part', 'otro'],
          },
        }),
        print: printed('Its print, where it is another part', { when: { part: 'pick', is: ['other'] } }),
        ...fields,
        case: megohms('Terminals to case', { words: ['shell', 'can', 'rim'], optional: true, unitNeeded: true }),
      },
      picture,
      cant: '!none',
      next: 'judged',
    }),
    judged: judge('new-part', {
      of: { ...of, part: 'part', earlier: '~part' },
      limits: LIMITS.newPart,
      says: {
        refused: 'That part may not go in here. Pick another one.',
        'no-choice': 'There is no such line in the list, or its print is missing. Pick again.',
        out: 'The new part does not read right. Zero the leads, or take another one.',
        undecided: 'A reading of the new part is missing.',
      },
      then: { good: 'right', refused: '!again', 'no-choice': '!again', out: '!again', undecided: '!again' },
    }),
    right: verdict({
      verdict: 'new-part-right',
      title: 'The new part is right, and reads right',
      says: ['Measured dead, before it is fitted: that is its proof.'],
      next: ['Fit it, strap it, wires back as recorded.'],
      who: 'junior',
      judged: ['judged'],
      evidence: [of.old, ...(of.diagram === null ? [] : [of.diagram]), 'part'],
      then: '!fits',
    }),
  }) as const;

const DUAL_FIELDS = {
  herm: microfarads('HERM to C', { words: ['h', 'hermetic', 'comp', 'hc', 'h-c', 'c-h', 'herm-c', 'c-herm'] }),
  fan: microfarads('FAN to C', { words: ['f', 'fc', 'f-c', 'c-f', 'fan-c', 'c-fan'], optional: true }),
  hf: microfarads('HERM to FAN', { words: ['h-f', 'f-h', 'herm-fan', 'fan-herm'], optional: true }),
} as const;
const DUAL_PICTURE = { kind: 'leads', part: 'dual', on: ['herm-c', 'fan-c', 'case'], between: 'capacitance' } as const;

const RATING = 'The rating to fit: from the old part, the wiring diagram or the nameplate.';
/** The new run capacitor of the outdoor unit. */
export const newPart = flow({
  id: 'new-part',
  version: 1,
  title: 'The right part',
  exits: ['fits', 'none', 'again'],
  examples: PART,
  steps: steps({
    rating: RATING,
    of: OLD,
    example: '30+5 µF ±6 % 440 VAC',
    how: 'HERM to C, FAN to C; two singles: each on its own. One section: leave FAN out.',
    fields: DUAL_FIELDS,
    picture: DUAL_PICTURE,
  }),
});

/** The new run capacitor of an indoor blower. */
export const newBlowerPart = flow({
  id: 'new-blower-part',
  version: 1,
  title: 'The right part for the blower',
  exits: ['fits', 'none', 'again'],
  examples: BLOWER_PART,
  steps: steps({
    rating: RATING,
    of: OLD,
    example: '7.5 µF ±6 % 440 VAC',
    how: 'Across its two terminals.',
    fields: { herm: microfarads('Across the terminals', { words: ['cap', 'value', 'across'] }) },
    picture: { kind: 'leads', part: 'single', on: ['across', 'case'], between: 'capacitance' },
  }),
});

/** The new run capacitor where the second one of the outdoor unit was condemned: by that one's print, not the first one's. */
export const newOtherPart = flow({
  id: 'new-other-part',
  version: 1,
  title: 'The right part for the other capacitor',
  exits: ['fits', 'none', 'again'],
  examples: OTHER_PART,
  steps: steps({
    rating: 'The rating to fit for the other capacitor: its own print, on the one that comes out.',
    of: OTHER,
    example: '5 µF ±6 % 440 VAC',
    how: 'Across its two terminals.',
    fields: { herm: microfarads('Across the terminals', { words: ['cap', 'value', 'across'] }) },
    picture: { kind: 'leads', part: 'single', on: ['across', 'case'], between: 'capacitance' },
  }),
});

/** The run capacitor that goes in with a new motor: by the plate of that motor. */
export const newMotorPart = flow({
  id: 'new-motor-part',
  version: 1,
  title: 'The capacitor for the new motor',
  exits: ['fits', 'none', 'again'],
  examples: MOTOR_PART,
  steps: steps({
    rating:
      'Which run capacitor does the new motor’s plate ask for? A dual: HERM from the old print, FAN from this plate.',
    of: MOTOR_PLATE,
    example: '7.5 µF 440 VAC, a dual 45+7.5 µF 440 VAC',
    how: 'HERM to C, FAN to C. A single, for the motor alone: across its terminals, FAN left out.',
    fields: {
      ...DUAL_FIELDS,
      herm: microfarads('HERM to C, or across a single', {
        words: ['h', 'hermetic', 'comp', 'hc', 'h-c', 'c-h', 'herm-c', 'c-herm', 'cap', 'value', 'across'],
      }),
    },
    picture: DUAL_PICTURE,
  }),
});
