import { judgement } from '../judgement.ts';
import { chose, untaken } from '../probing.ts';
import { chosenOf } from '../read.ts';
import { finding } from '../say.ts';

type Holds = 'called' | 'runs' | 'dirty' | 'defrost' | 'box' | 'switch' | 'tripped';
/** What was found at the box → what that is, which decides how to go on. */
const FOUND: ReadonlyMap<string, readonly [Holds, string]> = new Map([
  ['nothing', ['called', 'It is called and nothing of the box holds it off: the start gear and the motor are next.']],
  ['runs', ['runs', 'It runs: what it moves, and where the cold goes, is the question.']],
  ['dirty', ['dirty', 'A condenser without air trips overloads and high pressure on a sound unit.']],
  ['defrost', ['defrost', 'In defrost the compressor stands still on purpose.']],
  ['fans', ['box', 'Evaporator fans that stand still freeze the coil: there the fault is.']],
  ['stat', ['box', 'Without a call, or with the solenoid shut, the compressor has nothing to run for.']],
  ['lp', ['switch', 'Low pressure says little charge, a cold coil or a shut valve; the switch only says it.']],
  ['hp', ['tripped', 'High pressure: dirt or a still fan before anything else.']],
  ['oil', ['switch', 'Oil that stayed away from the compressor; the switch only says it.']],
]);
const NOT_SAID = ['undecided', 'Nobody could say what holds it off: the condenser is looked at first.'] as const;

/** What holds a walk-in's or reach-in's compressor off, by what was found. Takes `seen`, one choice in its part `off`. */
export const boxHolds = judgement({
  id: 'box-holds',
  semantics: 2,
  takes: ['seen'],
  limits: [],
  outcomes: ['called', 'runs', 'dirty', 'defrost', 'box', 'switch', 'tripped', 'undecided'],
  run({ seen }) {
    const chosen = chosenOf(seen, 'off');
    const [outcome, text] = (chosen.length === 1 && FOUND.get(chosen[0] ?? '')) || NOT_SAID;
    const source = 'common practice, no single source';
    return { outcome, findings: [finding({ name: 'Held off by', reading: outcome, word: outcome, text, source })] };
  },
  probe: () => [
    ...[...FOUND.keys()].map((found) => ({ seen: { off: chose(found) } })),
    { seen: { off: chose('fans', 'stat') } },
    { seen: { off: chose('else') } },
    { seen: { off: untaken } },
    {},
  ],
});
