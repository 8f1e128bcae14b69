import { judgement } from '../judgement.ts';
import { finding } from '../say.ts';
import { CAUSES, likelyCauses } from './cause-points.ts';
import { SEEN, sightings, told } from './seen.ts';

const SOURCE = 'common practice, no single source';
/** So far down the list a cause still says who should go. */
const WEIGHTY = 2;

/**
 * What a caller's observations speak for, the likeliest first, each with the observations behind it. `certified`: the
 * refrigerant is among the first, so a person who holds the certification should go. It condemns nothing.
 */
export const likelyCausesOfCall = judgement({
  id: 'likely-causes',
  semantics: 1,
  takes: [...SEEN],
  limits: [],
  outcomes: ['ranked', 'certified', 'undecided'],
  run(given) {
    const likely = likelyCauses(sightings(given));
    if (likely.length === 0) {
      const text = 'Nothing that was said points to a cause.';
      return { outcome: 'undecided', findings: [finding({ name: 'Causes', reading: 'none', word: 'open', text })] };
    }
    const findings = likely.map(({ cause, because }, i) =>
      finding({
        name: CAUSES[cause],
        reading: because.join('; '),
        word: cause === 'charge' ? 'certified person' : i === 0 ? 'likeliest' : 'likely',
        text: `${i === 0 ? 'Likeliest' : 'Then'}: ${CAUSES[cause]}. ${because.map((says) => `${says}.`).join(' ')}`,
        source: SOURCE,
      }),
    );
    const certified = likely.slice(0, WEIGHTY).some(({ cause }) => cause === 'charge');
    return { outcome: certified ? 'certified' : 'ranked', findings };
  },
  probe: () => [
    told({ outdoor: 'hum-still', breaker: 'tripped' }),
    told({ outdoor: 'runs', signs: ['ice'] }),
    told({ display: 'blank', signs: ['water', 'noise'] }),
    told({ outdoor: 'unsure' }),
    {},
  ],
});
