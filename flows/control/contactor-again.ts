import { measure, ohms, one, probes } from '../../engine/vocabulary.ts';
import { THREE_PHASE } from '../unit.ts';

const POLE = { words: ['contacts', 'contact', 'poles', 'points'] } as const;

/** Which coil it is, where no volts at it have told: the band of its ohms is that of 24 V. */
export const COIL_PRINTS = {
  rated: one('The coil prints', {
    '24': { label: '24 V', words: ['24v', '24 v', 'prints 24'] },
    '120': { label: '120 V', words: ['120v', '120 v', 'prints 120'] },
    '208': { label: '208 V', words: ['208v', '208 v', 'prints 208'] },
    '240': { label: '240 V', words: ['240v', '240 v', 'prints 240'] },
    other: { label: 'Two figures, or not to be read', words: ['208/240', 'unreadable', 'no print', 'two figures'] },
  }),
};

/**
 * A contactor that read bad once is read once more before it is condemned: a probe on lacquer, an armature pressed in
 * halfway and a wire left on read so too. `prints` asks what the coil is for, where nobody has read its volts.
 */
export const contactorAgain = <const N extends string, const C extends string>(
  next: N,
  cant: C,
  prints: typeof COIL_PRINTS | Record<string, never>,
) =>
  measure<N | C, '@class'>({
    say: 'The contactor once more: coil with both wires off, each contact with the armature pressed in fully.',
    body: ['Leads together first: near 0 Ω. Then on bright metal. Type ol for over range.'],
    why: 'A probe on lacquer reads OL on a good coil. What reads bad twice is bad.',
    source: ['24 V coil 8 to 20 Ω, contact at most 1 Ω: common practice, no single source'],
    picture: probes(
      'Ω',
      ['L1', 'T1, pressed in', '1 Ω or less'],
      ['Coil, both wires off', 'Coil, other end', '8 to 20 Ω on 24 V'],
    ),
    circuit: 'part',
    fields: {
      pole1: ohms('First contact, pressed in', POLE),
      pole2: ohms('Second contact, pressed in', { optional: true, ...POLE }),
      pole3: ohms('Third contact, pressed in', { optional: true, ...POLE, when: THREE_PHASE }),
      coil: ohms('Contactor coil'),
      ...prints,
    },
    cant,
    next,
  });
