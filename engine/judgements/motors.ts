import { judgement } from './judgement.ts';
import { chose, untaken } from './probing.ts';
import { chosenOf } from './read.ts';
import { finding } from './say.ts';

/** What is seen that points at one motor; anything else points at both. Common practice. */
const POINTS: Readonly<Record<string, 'compressor' | 'fan'>> = { c: 'fan', d: 'compressor' };

/** Whose windings are measured while the unit is dead, from the observation that the call began with. */
export const motors = judgement({
  id: 'motors',
  semantics: 1,
  takes: ['seen'],
  limits: [],
  outcomes: ['compressor', 'fan', 'both', 'undecided'],
  run({ seen }) {
    const chosen = chosenOf(seen, 'choice');
    const motors = new Set(chosen.map((id) => (Object.hasOwn(POINTS, id) ? POINTS[id] : undefined) ?? 'both'));
    const [first, second] = motors;
    const outcome = first === undefined ? 'undecided' : second === undefined ? first : 'both';
    const text = {
      compressor: 'The fan runs and the compressor does not. The compressor’s windings are measured.',
      fan: 'The compressor runs and the fan does not. The fan’s windings are measured.',
      both: 'Neither motor is cleared by what was seen. The windings of both are measured.',
      undecided: 'Nobody said what the unit does.',
    }[outcome];
    const reading = { compressor: 'fan runs', fan: 'compressor runs', both: 'neither', undecided: 'not seen' }[outcome];
    const source = outcome === 'undecided' ? null : 'common practice, no single source';
    return {
      outcome,
      findings: [finding({ name: 'Motors to measure', reading, word: outcome, text, source })],
    };
  },
  probe: () => [
    { seen: { choice: chose('c') } },
    { seen: { choice: chose('d') } },
    { seen: { choice: chose('a') } },
    { seen: { choice: chose('c', 'd') } },
    { seen: { choice: chose() } },
    { seen: { choice: untaken } },
    {},
  ],
});
