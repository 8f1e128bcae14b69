import { judgement } from './judgement.ts';

export const tabs = judgement({
  id: 'tabs',
  semantics: 1,
  takes: ['tabs', 'label'],
  limits: [],
  outcomes: ['found', 'unclear', 'undecided'],
  run: () => ({ outcome: 'undecided', findings: [] }),
  probe: () => [{}],
});
