import { judgement } from '../judgement.ts';
import { chose } from '../probing.ts';
import { chosenOf } from '../read.ts';

/** Whether a call about the same trouble is open already: then no second one is opened. */
export const calledBefore = judgement({
  id: 'called-before',
  semantics: 1,
  takes: ['before'],
  limits: [],
  outcomes: ['open', 'new', 'undecided'],
  run({ before }) {
    const [answer] = chosenOf(before, 'before');
    return { outcome: answer === 'open' ? 'open' : answer === 'new' ? 'new' : 'undecided', findings: [] };
  },
  probe: () => [{ before: { before: chose('open') } }, { before: { before: chose('new') } }, {}],
});
