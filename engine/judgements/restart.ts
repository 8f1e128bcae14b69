import { judgement } from './judgement.ts';

export const restart = judgement({
  id: 'restart',
  semantics: 1,
  takes: ['figures', 'plate'],
  limits: ['low', 'high', 'ratedWithin', 'nearLocked', 'idle'],
  outcomes: ['in', 'supply', 'not-starting', 'fan-high', 'undecided'],
  run: () => ({ outcome: 'undecided', findings: [] }),
  probe: () => [{}],
});
