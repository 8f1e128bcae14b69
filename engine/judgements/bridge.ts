import { judgement } from './judgement.ts';

export const bridge = judgement({
  id: 'bridge',
  semantics: 1,
  takes: ['bridge', 'line', 'means'],
  limits: ['dead', 'sourceMin', 'sourceWithin', 'outlet', 'line208', 'line230', 'line240', 'unit120', 'unit240'],
  outcomes: ['induced', 'real', 'proving', 'undecided'],
  run: () => ({ outcome: 'undecided', findings: [] }),
  probe: () => [{}],
});
