import { judgement } from '../judgement.ts';
import { chose } from '../probing.ts';
import { chosenOf } from '../read.ts';
import { finding } from '../say.ts';

/** Reported, or called out in any words since: an alarm that nobody released counts like the answer. */
export const danger = judgement({
  id: 'danger',
  semantics: 1,
  takes: ['hazard'],
  limits: [],
  outcomes: ['gas', 'danger', 'clear', 'undecided'],
  run({ hazard }, _limits, { alarm }) {
    const reported = chosenOf(hazard, 'hazard').filter((option) => option !== 'none');
    if (reported.includes('gas') || alarm === 'gas') return { outcome: 'gas', findings: [] };
    if (reported.length > 0 || alarm) {
      const reading = reported.join(', ') || 'said in the call';
      const text = 'A hazard is reported: nobody checks anything at the unit.';
      return { outcome: 'danger', findings: [finding({ name: 'Hazard', reading, word: 'danger', text })] };
    }
    return { outcome: chosenOf(hazard, 'hazard').length === 0 ? 'undecided' : 'clear', findings: [] };
  },
  probe: () => [
    { hazard: { hazard: chose('gas') } },
    { hazard: { hazard: chose('smoke', 'sparks') } },
    { hazard: { hazard: chose('none') } },
    {},
  ],
});
