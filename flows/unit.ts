/** What several pages ask of the unit, or ask only on one kind of unit. */
import { amps, form, judge, one } from '../engine/vocabulary.ts';

/** Every kind that `unit-class` tells: where a page only goes on by it, nobody has to read that it did. */
export const KINDS = ['psc', 'ecm', 'three-phase', 'refrigeration', 'closed', 'undecided'] as const;
type Kind = (typeof KINDS)[number];
/** The kind of unit decides the way: most go one, each that goes another is named. */
export const byKind = <const M extends string, const O extends Readonly<Partial<Record<Kind, string>>>>(
  most: M,
  others: O,
) =>
  judge('unit-class', {
    of: { unit: '@class' },
    limits: {},
    quiet: KINDS,
    then: {
      ...{ psc: most, ecm: most, 'three-phase': most, refrigeration: most, closed: most, undecided: most },
      ...(others as Readonly<Record<Kind, M | (O[keyof O] & string)>>),
    },
  });
/** Asked where there are three lines. */
export const THREE_PHASE = { fact: '@class', part: 'choice', is: ['three-phase'] } as const;

/** A condensing unit that keeps a box cold. */
export const BOXED = { fact: '@class', part: 'choice', is: ['refrigeration'] } as const;
export const NOT_BOXED = { fact: '@class', part: 'choice', not: ['refrigeration'] } as const;

const VOLTS = {
  '208/230': { label: '208/230 V', words: ['208/230v', '208-230v', '208-230'] },
  '230': { label: '230 V', words: ['230v'] },
  '460': { label: '460 V', words: ['460v', '480v'] },
  '575': { label: '575 V', words: ['575v', '600v'] },
  '115': { label: '115 V', words: ['115v', '120v'] },
} as const;
/** Where nobody says it, 208/230 V is taken and said to be. */
export const NAMEPLATE_VOLTS = one('Volts printed, where not 208/230', VOLTS, { optional: true, as: 'volts' });
/** What an indoor unit's nameplate prints. */
export const INDOOR_VOLTS = {
  '208/230': { label: '208/230 V', words: ['208', '230', '240'] },
  '115': { label: '115 V', words: ['120', '110'] },
};
/** Asked where the line fits another nameplate and nobody has read it. */
export const whichPlate = <const T extends string>(next: T, cant: T) =>
  form({
    say: 'The line doesn’t fit 208/230 V. What does the nameplate print?',
    why: 'The limits of the line are those of the nameplate. The wrong volts on a unit burn it.',
    parts: { volts: one('Volts printed', VOLTS, { as: 'volts' }) },
    cant,
    next,
  });
/** The nameplate's amps, each kept for the whole job. */
export const PLATE = {
  rla: amps('RLA', { optional: true, as: 'rla', over: false, words: ['rated', 'rated load', 'comp', 'compressor'] }),
  lra: amps('LRA', { optional: true, as: 'lra', over: false, words: ['locked', 'locked rotor'] }),
  fla: amps('Fan FLA', { optional: true, as: 'fla', over: false, words: ['fan', 'fan fla', 'full load'] }),
} as const;
