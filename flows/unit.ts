/** What several pages ask of the unit, or ask only on one kind of unit. */
import { amps } from '../engine/vocabulary.ts';

/** Every kind that `unit-class` tells: where a page only goes on by it, nobody has to read that it did. */
export const KINDS = ['psc', 'ecm', 'three-phase', 'refrigeration', 'closed', 'undecided'] as const;
/** Asked where there are three lines. */
export const THREE_PHASE = { fact: '@class', part: 'choice', is: ['three-phase'] } as const;

/** The nameplate's amps, each kept for the whole job. */
export const PLATE = {
  rla: amps('RLA', { optional: true, as: 'rla', over: false, words: ['rated', 'rated load', 'comp', 'compressor'] }),
  lra: amps('LRA', { optional: true, as: 'lra', over: false, words: ['locked', 'locked rotor'] }),
  fla: amps('Fan FLA', { optional: true, as: 'fla', over: false, words: ['fan', 'fan fla', 'full load'] }),
} as const;
