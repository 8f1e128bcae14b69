import { judgement } from './judgement.ts';

export const hold = judgement({
  id: 'hold',
  semantics: 1,
  takes: ['label', 'look'],
  limits: ['residual', 'ohms', 'floor', 'unknown', 'watts'],
  outcomes: ['computed', 'unknown', 'undecided'],
  run: () => ({ outcome: 'undecided', findings: [] }),
  probe: () => [{}],
});
