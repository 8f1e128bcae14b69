import { judgement } from './judgement.ts';

export const alternative = judgement({
  id: 'alternative',
  semantics: 1,
  takes: [],
  limits: [],
  outcomes: ['allowed', 'ask', 'undecided'],
  run: () => ({ outcome: 'undecided', findings: [] }),
  probe: () => [{}],
});
