import { REFRIGERANTS } from '../../calc/refrigerant/refrigerants.ts';
import { ignitionWarning, refrigerantOf } from '../cooling/refrigerant.ts';
import { judgement } from '../judgement.ts';
import { chose, untaken } from '../probing.ts';
import { finding } from '../say.ts';

/** Whether what is in the circuit may burn: asked before a hose goes on. Not known counts as may burn. */
export const burns = judgement({
  id: 'may-burn',
  semantics: 1,
  takes: ['which'],
  limits: [],
  outcomes: ['burns', 'calm', 'undecided'],
  run({ which }) {
    const name = refrigerantOf(which);
    if (name === null) {
      const text =
        'The refrigerant is not known here. Until the nameplate says otherwise it counts as one that may burn.';
      return {
        outcome: 'undecided',
        findings: [finding({ name: 'Refrigerant', reading: 'not known', word: 'may burn', text })],
      };
    }
    const warning = ignitionWarning(name);
    if (warning.length > 0) return { outcome: 'burns', findings: warning };
    const text = 'It does not burn. It still displaces air in a closed room.';
    return {
      outcome: 'calm',
      findings: [finding({ name, reading: 'A1', word: 'no flame', text, source: 'ASHRAE 34' })],
    };
  },
  probe: () => [
    ...REFRIGERANTS.map((name) => ({ which: { refrigerant: chose(name.toLowerCase()) } })),
    { which: { refrigerant: chose('other') } },
    { which: { refrigerant: untaken } },
    {},
  ],
});
