import { Exact } from '../../calc/exact.ts';
import type { Parts } from '../../schema.ts';
import { judgement } from '../judgement.ts';
import { chose, past, read, untaken } from '../probing.ts';
import { figureOf } from '../read.ts';
import { finding, say, sayRange } from '../say.ts';
import { seenIn } from './seen.ts';

/**
 * Whether the condenser is short of air: what was seen of coil, fan and surroundings (`look`), with the liquid line's °F
 * above the outdoor °F (its parts `liquid`, `outdoor`). Dirt alone condemns nothing, and a warm liquid line alone doesn't
 * say why.
 */
export const condenser = judgement({
  id: 'condenser',
  semantics: 1,
  takes: ['look'],
  limits: ['low', 'high', 'far'],
  outcomes: ['short-of-air', 'dirty', 'warm', 'cool', 'normal', 'undecided'],
  run({ look }, { low, high, far }) {
    const seen = seenIn(look);
    const [liquid, outdoor] = [figureOf(look, 'liquid', '°F'), figureOf(look, 'outdoor', '°F')];
    const above = liquid && outdoor ? liquid.minus(outdoor) : null;
    const usual = { low: new Exact(low.value), high: new Exact(high.value) };
    const of = (outcome: 'short-of-air' | 'dirty' | 'warm' | 'cool' | 'normal' | 'undecided', text: string) => ({
      outcome,
      findings: [
        finding({
          name: 'Liquid line above outdoor air',
          reading: above ? say(above, '°F') : 'no reading',
          limits: `${sayRange(usual, '°F', 1, 0)}; short of air above ${say(far.value, '°F')}`,
          word: outcome === 'undecided' ? 'not judged' : outcome,
          text,
          source: above ? far.source : null,
        }),
        finding({ name: 'Condenser', reading: seen.words, word: seen.is, text: `Seen: ${seen.words}.` }),
      ],
    });
    if (above?.gt(far.value))
      return seen.is === 'something'
        ? of('short-of-air', 'The liquid line is far above the outdoor air, and what was seen explains it.')
        : of('warm', 'The liquid line is far above the outdoor air, and nothing was seen that explains it.');
    if (seen.is === 'something')
      return of('dirty', 'It is put right first: a dirty condenser looks like a wrong charge.');
    if (above === null || seen.is === 'open')
      return of('undecided', 'It takes both: a look at the condenser and the two temperatures.');
    if (above.gt(usual.high)) return of('warm', 'The liquid line is warmer than usual. Pressures decide.');
    return above.lt(usual.low)
      ? of('cool', 'The liquid line is cooler than usual. Pressures decide, never this alone.')
      : of('normal', 'The condenser has its air.');
  },
  probe({ low, high, far }) {
    const at = (above: Exact): Parts => ({ liquid: read(above.plus(90), '°F'), outdoor: read(90, '°F') });
    const limits = [low, high, far].flatMap(({ value }) => [past(value, '-0.1'), new Exact(value), past(value, '0.1')]);
    const looks = ['matted', 'outdoor-fan', 'recirculation', 'nothing', 'unsure'].map(
      (id): Parts => ({ seen: chose(id) }),
    );
    return [
      ...looks.flatMap((look) => limits.map((above) => ({ look: { ...look, ...at(above) } }))),
      ...looks.map((look) => ({ look: { ...look, liquid: untaken, outdoor: read(90, '°F') } })),
      { look: at(new Exact(10)) },
      {},
    ];
  },
});
