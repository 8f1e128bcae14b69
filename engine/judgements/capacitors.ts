import { judgement } from './judgement.ts';
import { read } from './probing.ts';
import { figureOf } from './read.ts';
import { finding, say } from './say.ts';

/** Whether there is any capacitor to discharge. */
export const capacitors = judgement({
  id: 'capacitors',
  semantics: 1,
  takes: ['look'],
  limits: [],
  outcomes: ['none', 'some', 'undecided'],
  run({ look }) {
    const count = figureOf(look, 'count', 'count');
    if (count === null || count.lt(0)) {
      const text = 'Nobody counted the capacitors.';
      return {
        outcome: 'undecided',
        findings: [finding({ name: 'Capacitors', reading: 'no count', word: 'missing', text })],
      };
    }
    const outcome = count.isZero() ? 'none' : 'some';
    const text = count.isZero() ? 'No capacitor was seen.' : `Capacitors seen: ${say(count, '').trim()}.`;
    return {
      outcome,
      findings: [finding({ name: 'Capacitors', reading: say(count, '').trim(), word: outcome, text })],
    };
  },
  probe: () => [
    { look: { count: read(0, 'count') } },
    { look: { count: read(1, 'count') } },
    { look: { count: read(4, 'count') } },
    {},
  ],
});
