/** Readings for every outcome of the compressor's windings, and both sides of each limit. */
import { Exact } from '../../calc/exact.ts';
import type { Parts } from '../../schema.ts';
import { chose } from '../probing.ts';
import type { PairsLimits } from './compressor-pairs.ts';
import { type FrameLimits, frameEdges } from './frame.ts';
import { type Cell, leastAboveDoubt, less, more, mostThatFits, ohmParts } from './probing.ts';

type Given = Partial<Record<'readings' | 'earlier' | 'shell', Parts>>;

export function probeCompressor(limits: PairsLimits & FrameLimits): Given[] {
  const pairs = (cr: Cell, cs: Cell, sr: Cell, g: Cell = 'OL'): Parts => ohmParts({ cr, cs, sr, g });
  const most = mostThatFits(4, 11, limits);
  const least = leastAboveDoubt(limits);
  // Two of 100 and this one spread by exactly the share: (x − 100)·300 / (200 + x).
  const share = new Exact(limits.equal.value);
  const equal = share.times(200).plus(30_000).div(new Exact(300).minus(share)).toDecimalPlaces(3, Exact.ROUND_DOWN);
  const good = pairs(4, 11, 15);
  const overload = pairs('OL', 'OL', 15);
  const misfit = pairs(6, 7, 8);
  const lines = [
    good,
    pairs(4, 11, most),
    pairs(4, 11, more(most)),
    pairs(least, 11, least.plus(11)),
    pairs(less(least), 11, least.plus(11)),
    pairs(100, 100, equal),
    pairs(100, 100, more(equal)),
    pairs(11, 4, 15),
    pairs(15, 4, 11),
    misfit,
    overload,
    pairs(4, 'OL', 'OL'),
    pairs('OL', 11, 'OL'),
    pairs('OL', 'OL', 'OL'),
    pairs(4, 'OL', 15),
    ...frameEdges(limits).map((g) => pairs(4, 11, 15, g)),
    pairs(4, 11, 15, '_'),
    pairs(4, '_', 15),
  ];
  return [
    ...lines.map((readings) => ({ readings })),
    { readings: overload, shell: { choice: chose('hot') } },
    { readings: overload, shell: { choice: chose('cold') } },
    { readings: overload, shell: { choice: chose('cant') } },
    { readings: misfit, earlier: misfit },
    { readings: misfit, earlier: overload },
    { readings: overload, earlier: overload },
    { readings: pairs(4, 'OL', 'OL'), earlier: overload },
    { readings: good, earlier: misfit },
    {},
  ];
}
