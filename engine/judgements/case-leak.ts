import { judgement } from './judgement.ts';

export const caseLeak = judgement({
  id: 'case-leak',
  semantics: 1,
  takes: ['readings', 'alone', 'before', 'beforeAlone'],
  limits: ['fail', 'clear'],
  outcomes: ['clear', 'low', 'wet', 'leak', 'ask', 'undecided'],
  run: () => ({ outcome: 'undecided', findings: [] }),
  probe: () => [{}],
});
