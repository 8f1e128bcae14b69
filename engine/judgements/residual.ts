import { judgement } from './judgement.ts';

export const residual = judgement({
  id: 'residual',
  semantics: 1,
  takes: ['line', 'look'],
  limits: ['batteryMin', 'batteryMax', 'residual', 'agree'],
  outcomes: ['battery', 'too-high', 'disagree', 'discharged', 'undecided'],
  run: () => ({ outcome: 'undecided', findings: [] }),
  probe: () => [{}],
});
