import { judgement } from './judgement.ts';

export const sight = judgement({
  id: 'sight',
  semantics: 1,
  takes: ['look'],
  limits: [],
  outcomes: ['condemned', 'clean', 'undecided'],
  run: () => ({ outcome: 'undecided', findings: [] }),
  probe: () => [{}],
});
