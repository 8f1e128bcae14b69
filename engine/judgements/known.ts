import { judgement } from './judgement.ts';

export const known = judgement({
  id: 'known',
  semantics: 1,
  takes: ['fact'],
  limits: [],
  outcomes: ['known', 'unknown', 'undecided'],
  run: () => ({ outcome: 'undecided', findings: [] }),
  probe: () => [{}],
});
