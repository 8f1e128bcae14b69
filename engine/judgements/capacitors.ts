import { judgement } from './judgement.ts';

export const capacitors = judgement({
  id: 'capacitors',
  semantics: 1,
  takes: ['look'],
  limits: [],
  outcomes: ['none', 'some', 'undecided'],
  run: () => ({ outcome: 'undecided', findings: [] }),
  probe: () => [{}],
});
