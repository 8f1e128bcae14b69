import { judgement } from './judgement.ts';

export const sectionValues = judgement({
  id: 'section-values',
  semantics: 1,
  takes: ['label', 'readings', 'third', 'before', 'beforeThird', 'wires', 'exact', 'tabs'],
  limits: ['openShare', 'habit'],
  outcomes: [
    'pass',
    'conditional-pass',
    'repeat',
    'fails',
    'ask-third',
    'fan-undecided',
    'pair',
    'swapped',
    'too-high',
    'too-high-twice',
    'wires',
    'ohms',
    'open',
    'exact',
    'contradiction',
    'undecided',
  ],
  run: () => ({ outcome: 'undecided', findings: [] }),
  probe: () => [{}],
});
