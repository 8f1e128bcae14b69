import { judgement } from './judgement.ts';

export const sectionOhms = judgement({
  id: 'section-ohms',
  semantics: 1,
  takes: ['ohms', 'readings', 'label'],
  limits: ['shorted'],
  outcomes: ['shorted', 'not-shorted', 'undecided'],
  run: () => ({ outcome: 'undecided', findings: [] }),
  probe: () => [{}],
});
