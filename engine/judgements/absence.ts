import { judgement } from './judgement.ts';

export const absence = judgement({
  id: 'absence',
  semantics: 1,
  takes: ['line', 'means'],
  limits: [
    'dead',
    'live',
    'sourceMin',
    'sourceWithin',
    'outlet',
    'line208',
    'line230',
    'line240',
    'unit120',
    'unit240',
  ],
  outcomes: ['live', 'lost-leg', 'first-proving', 'second-proving', 'ghost', 'dead', 'undecided'],
  run: () => ({ outcome: 'undecided', findings: [] }),
  probe: () => [{}],
});
