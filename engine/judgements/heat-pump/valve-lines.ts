import { judgement } from '../judgement.ts';
import { past, read, untaken } from '../probing.ts';
import { figureOf } from '../read.ts';
import { finding, say } from '../say.ts';

/**
 * Lines at a reversing valve that is commanded to cool, °F: the large line to the coil indoors (`vapour`) against the
 * small one (`liquid`), and the cold line before (`in`) and behind the valve (`out`), where hot gas that leaks through
 * warms it.
 */
export const valveLines = judgement({
  id: 'valve-lines',
  semantics: 1,
  takes: ['lines'],
  limits: ['through'],
  outcomes: ['stuck', 'bypass', 'cooling', 'undecided'],
  run({ lines }, { through }) {
    const at = (key: string) => figureOf(lines, key, '°F');
    const [vapour, liquid, before, behind] = [at('vapour'), at('liquid'), at('in'), at('out')];
    const warmed = before && behind ? behind.minus(before) : null;
    const hot = vapour && liquid ? vapour.gt(liquid) : null;
    const of = (outcome: 'stuck' | 'bypass' | 'cooling' | 'undecided', reading: string, text: string) => ({
      outcome,
      findings: [
        finding({
          name: 'Lines at the reversing valve',
          reading,
          limits: `warmed through the valve by ${say(through.value, '°F')} or less`,
          word: outcome === 'undecided' ? 'not judged' : outcome,
          text,
          source: through.source,
        }),
      ],
    });
    const lined = vapour && liquid ? `large ${say(vapour, '°F')}, small ${say(liquid, '°F')}` : 'no reading';
    if (hot) return of('stuck', lined, 'The large line is the hot one: the valve stands in heating.');
    if (warmed?.gt(through.value))
      return of(
        'bypass',
        say(warmed, '°F'),
        `The cold line is ${say(warmed, '°F')} warmer behind the valve: hot gas leaks through it.`,
      );
    if (hot === null || warmed === null) return of('undecided', lined, 'It takes all four temperatures.');
    return of('cooling', lined, 'The valve stands in cooling, and nothing leaks through it.');
  },
  probe: ({ through }) => {
    const cold = { vapour: read(52, '°F'), liquid: read(98, '°F') };
    const at = (behind: string) => ({ in: read(50, '°F'), out: read(past(50, behind), '°F') });
    return [
      { lines: { ...cold, ...at(through.value) } },
      { lines: { ...cold, ...at(String(past(through.value, '0.1'))) } },
      { lines: { vapour: read(160, '°F'), liquid: read(95, '°F'), ...at('1') } },
      { lines: { vapour: read(95, '°F'), liquid: read(95, '°F'), ...at('1') } },
      { lines: { vapour: read('95.1', '°F'), liquid: read(95, '°F'), ...at('1') } },
      { lines: { vapour: untaken, liquid: read(95, '°F'), ...at('1') } },
      { lines: { ...cold, in: untaken, out: read(55, '°F') } },
      { lines: at(String(past(through.value, '0.1'))) },
      {},
    ];
  },
});
