import { Exact } from '../../calc/exact.ts';
import { judgement } from '../judgement.ts';
import { past, reads, untaken } from '../probing.ts';
import { figureOf } from '../read.ts';
import { finding, say } from '../say.ts';

/** Electric heat while it should cool: amps of its feed (`amps`, part `heat`). There must be none. */
export const heatStrips = judgement({
  id: 'heat-strips',
  semantics: 1,
  takes: ['amps'],
  limits: ['none'],
  outcomes: ['off', 'on', 'undecided'],
  run({ amps }, { none }) {
    const heat = figureOf(amps, 'heat', 'A')?.abs() ?? null;
    const limits = `${say(none.value, 'A')} or less`;
    if (heat === null) {
      const text = 'The amps of the electric heat were not read. No strips: there is nothing to read.';
      return {
        outcome: 'undecided',
        findings: [finding({ name: 'Electric heat', reading: 'no reading', limits, word: 'not judged', text })],
      };
    }
    const outcome = heat.gt(none.value) ? 'on' : 'off';
    const drawn = `The electric heat draws ${say(heat, 'A')}`;
    const text =
      outcome === 'on' ? `${drawn} while it should cool. It heats what the coil cools.` : `${drawn}: it is off.`;
    const said = finding({
      name: 'Electric heat',
      reading: say(heat, 'A'),
      limits,
      word: outcome,
      text,
      source: none.source,
    });
    return { outcome, findings: [said] };
  },
  probe: ({ none }) => [
    { amps: reads({ heat: 0 }, 'A') },
    { amps: reads({ heat: none.value }, 'A') },
    { amps: reads({ heat: past(none.value, '0.001') }, 'A') },
    { amps: reads({ heat: new Exact(none.value).neg().minus(1) }, 'A') },
    { amps: { heat: untaken } },
    {},
  ],
});
