import { fitsOtherRating } from '../../calc/supply.ts';
import { judgement } from '../judgement.ts';
import { figureOf } from '../read.ts';
import { finding } from '../say.ts';
import { judgeHotNeutral, judgeThree, judgeTwoLegs } from './lines.ts';
import { probeSupply } from './probe.ts';
import { rangeOf, type Seen, SUPPLY_LIMITS } from './range.ts';

const OUTCOMES = [
  'good',
  'which-plate',
  'absent',
  'leg-lost',
  'neutral',
  'no-ground',
  'single-phasing',
  'unbalanced',
  'out',
  'sag',
  'contacts',
  'report',
  'undecided',
] as const;

/**
 * The supply of a unit, V. Two legs: `l1l2`, `l1g`, `l2g`. 115 V: `hn`, `hg`, `ng`. Three-phase: `l1l2`, `l2l3`, `l1l3` and
 * to ground. During the start: `min` the lowest of the line, `t1t2` the lowest at the load side. Limits by the plate's
 * volts, the phase and the kind of compressor; where nobody read the plate and the line fits another than 208/230 V, it is
 * asked first. Signs are dropped.
 */
export const supply = judgement({
  id: 'supply',
  semantics: 3,
  takes: ['line', 'plate', 'machine'],
  limits: SUPPLY_LIMITS,
  outcomes: OUTCOMES,
  run({ line, plate, machine }, limits) {
    const has = (key: string): boolean => figureOf(line, key, 'V') !== null;
    const three = has('l2l3') || has('l1l3');
    const range = rangeOf(plate, machine, three ? 'three' : has('hn') ? 'neutral' : 'single', limits);
    const seen: Seen = { line, range, limits };
    const judged = three
      ? judgeThree(seen)
      : has('hn')
        ? judgeHotNeutral(seen)
        : has('l1l2')
          ? judgeTwoLegs(seen)
          : null;
    if (!judged) {
      const text = 'The supply was not read in full.';
      return {
        outcome: 'undecided',
        findings: [finding({ name: 'Supply', reading: 'no reading', word: 'missing', text })],
      };
    }
    const across = figureOf(line, 'l1l2', 'V')?.abs();
    if (judged.outcome === 'out' && range.assumed && across && fitsOtherRating(across, limits.ratedWithin.value))
      return { outcome: 'which-plate', findings: judged.findings };
    return judged;
  },
  probe: (limits) => probeSupply(limits),
});
