import { judgement } from './judgement.ts';
import { chose, untaken } from './probing.ts';
import { chosenOf } from './read.ts';
import { finding } from './say.ts';

/** What condemns a capacitor by sight. Rust, dirt and age alone condemn nothing. Common practice. */
const CONDEMNS: Readonly<Record<string, string>> = {
  bulged: 'bulged top',
  oil: 'oil',
  vented: 'vent or disc popped',
  'burnt-through': 'terminal burnt through',
};

/** Whether a capacitor is condemned by what is seen. */
export const sight = judgement({
  id: 'sight',
  semantics: 1,
  takes: ['look'],
  limits: [],
  outcomes: ['condemned', 'clean', 'undecided'],
  run({ look }) {
    const chosen = chosenOf(look, 'condition');
    const bad = chosen.flatMap((option) => (Object.hasOwn(CONDEMNS, option) ? (CONDEMNS[option] ?? []) : []));
    const outcome = chosen.length === 0 ? 'undecided' : bad.length > 0 ? 'condemned' : 'clean';
    const text = {
      undecided: 'Nobody said what the part looks like.',
      condemned: `Seen: ${bad.join(', ')}. That condemns the part by sight.`,
      clean: 'Nothing seen that condemns the part. Rust, dirt and age alone condemn nothing.',
    }[outcome];
    const reading = bad.join(', ') || (chosen.length === 0 ? 'not looked at' : 'nothing that condemns');
    return {
      outcome,
      findings: [
        finding({ name: 'By sight', reading, word: outcome, text, source: 'common practice, no single source' }),
      ],
    };
  },
  probe: () => [
    ...Object.keys(CONDEMNS).map((option) => ({ look: { condition: chose(option) } })),
    { look: { condition: chose('rust', 'bulged') } },
    { look: { condition: chose('rust') } },
    { look: { condition: chose('clean') } },
    { look: { condition: untaken } },
    {},
  ],
});
