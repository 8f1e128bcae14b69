import { judgement } from './judgement.ts';
import { chose, untaken } from './probing.ts';
import { chosenOf } from './read.ts';
import { finding } from './say.ts';

const CLASSES = ['psc', 'ecm', 'three-phase', 'refrigeration'] as const;
const WORDS: Readonly<Record<(typeof CLASSES)[number] | 'closed', string>> = {
  psc: 'A run capacitor is expected.',
  ecm: 'A run capacitor for the compressor alone is expected; the fan has electronics.',
  'three-phase': 'Three lines; no run capacitor for the compressor.',
  refrigeration: 'Start gear is expected.',
  closed: 'An inverter, or nobody is sure: it stays closed.',
};

/** What kind of unit it is, so that a page can go on by it. Anything that is not sure to be opened is `closed`. */
export const unitClass = judgement({
  id: 'unit-class',
  semantics: 1,
  takes: ['unit'],
  limits: [],
  outcomes: [...CLASSES, 'closed', 'undecided'],
  run({ unit }) {
    const chosen = chosenOf(unit, 'choice');
    const known = CLASSES.find((one) => chosen.length === 1 && chosen[0] === one);
    const outcome = known ?? (chosen.length === 1 ? 'closed' : 'undecided');
    const text = outcome === 'undecided' ? 'Nobody said what kind of unit it is.' : WORDS[outcome];
    return {
      outcome,
      findings: [finding({ name: 'Kind of unit', reading: outcome, word: outcome, text })],
    };
  },
  probe: () => [
    ...[...CLASSES, 'inverter', 'unsure'].map((one) => ({ unit: { choice: chose(one) } })),
    { unit: { choice: chose('psc', 'ecm') } },
    { unit: { choice: untaken } },
    {},
  ],
});
