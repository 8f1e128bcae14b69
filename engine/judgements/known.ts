import type { Value } from '../schema.ts';
import { judgement } from './judgement.ts';
import { chose, print, read, untaken } from './probing.ts';

/** OL, a photo and words are no value to compute with; "can't" is no answer. */
const isReal = (value: Value): boolean =>
  value.kind === 'label' ||
  value.kind === 'figure' ||
  (value.kind === 'choice' && value.chosen.some((option) => option !== 'cant'));

/** Whether a fact is known. Never undecided. */
export const known = judgement({
  id: 'known',
  semantics: 1,
  takes: ['fact'],
  limits: [],
  outcomes: ['known', 'unknown', 'undecided'],
  run: ({ fact }) => ({ outcome: Object.values(fact ?? {}).some(isReal) ? 'known' : 'unknown', findings: [] }),
  probe: () => [
    { fact: print({ herm: '45', fan: '5' }) },
    { fact: { figure: read(17.9, 'A') } },
    { fact: { choice: chose('psc') } },
    { fact: { figure: untaken } },
    {},
  ],
});
