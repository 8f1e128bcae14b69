import { judgement } from '../judgement.ts';
import { past, reads, untaken, volts } from '../probing.ts';
import { figureOf } from '../read.ts';
import { finding, say } from '../say.ts';

/**
 * A breaker under load: `amps` through it and `drop` across it, beside its `rating` and the plate's `mop`, A and V. A drop
 * above its limit is a bad breaker or lug; more amps than its rating, or a rating above MOP, is no fault of the breaker.
 */
export const breaker = judgement({
  id: 'breaker',
  semantics: 1,
  takes: ['readings', 'plate'],
  limits: ['drop'],
  outcomes: ['weak', 'over', 'sound', 'undecided'],
  run({ readings, plate }, { drop: most }) {
    const amps = figureOf(readings, 'amps', 'A')?.abs() ?? null;
    const drop = figureOf(readings, 'drop', 'V')?.abs() ?? null;
    const [rating, mop] = [figureOf(plate, 'rating', 'A'), figureOf(plate, 'mop', 'A')];
    if (amps === null || drop === null || rating === null || rating.lte(0)) {
      const text = 'Amps through it, volts across it and its rating are all needed.';
      return {
        outcome: 'undecided',
        findings: [finding({ name: 'Breaker', reading: 'no reading', word: 'missing', text })],
      };
    }
    const [a, d, r] = [say(amps, 'A'), say(drop, 'V'), say(rating, 'A')];
    const large = mop?.gt(0) === true && rating.gt(mop);
    const load = finding({
      ...{ name: 'Load', reading: a, limits: `${r} or less`, word: amps.gt(rating) ? 'above its rating' : 'within' },
      ...{ text: `${a} through a breaker of ${r}.`, source: 'the rating on the breaker' },
    });
    const across = finding({
      ...{ name: 'Across the breaker', reading: d, limits: `${say(most.value, 'V')} or less` },
      ...{
        word: drop.gt(most.value) ? 'drops' : 'within',
        text: `${d} across it while it carries the load.`,
        source: most.source,
      },
    });
    const size = finding({
      ...{
        name: 'Size',
        reading: r,
        limits: mop ? `${say(mop, 'A')} or less` : null,
        word: large ? 'above MOP' : 'within',
      },
      ...{
        text: large && mop ? `${r} is above MOP of ${say(mop, 'A')}.` : `${r} is not above MOP, as far as it is known.`,
        source: 'MOP on the nameplate',
      },
    });
    const findings = [load, across, size];
    if (amps.gt(rating) || large) return { outcome: 'over', findings };
    return { outcome: drop.gt(most.value) ? 'weak' : 'sound', findings };
  },
  probe({ drop }) {
    const at = (amps: number, across: Parameters<typeof past>[0], more: { rating?: number; mop?: number } = {}) => ({
      readings: { ...reads({ amps }, 'A'), ...volts({ drop: across }) },
      plate: reads({ rating: 30, mop: 40, ...more }, 'A'),
    });
    return [
      at(20, drop.value),
      at(20, past(drop.value, '0.01')),
      at(30, 0),
      at(31, 0),
      at(20, 0, { rating: 45 }),
      { ...at(20, 0), plate: { rating: untaken } },
      {},
    ];
  },
});
