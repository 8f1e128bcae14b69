import { judgement } from '../judgement.ts';
import { chose, untaken } from '../probing.ts';
import { chosenOf } from '../read.ts';
import { finding } from '../say.ts';

const TEXTS = {
  found: 'The search found a leak.',
  none: 'The whole circuit was searched and no leak was found.',
  undecided: 'The search doesn’t decide it. Until then it counts as a leak.',
} as const;

/** What a certified person's search came to: `search`, part `result`. */
export const leakSearch = judgement({
  id: 'leak-search',
  semantics: 1,
  takes: ['search'],
  limits: [],
  outcomes: ['found', 'none', 'undecided'],
  run({ search }) {
    const [result] = chosenOf(search, 'result');
    const outcome = result === 'found' || result === 'none' ? result : 'undecided';
    return {
      outcome,
      findings: [
        finding({
          name: 'Leak search',
          reading: outcome === 'undecided' ? 'open' : outcome,
          word: outcome,
          text: TEXTS[outcome],
        }),
      ],
    };
  },
  probe: () => [
    { search: { result: chose('found') } },
    { search: { result: chose('none') } },
    { search: { result: chose('unsure') } },
    { search: { result: untaken } },
    {},
  ],
});
