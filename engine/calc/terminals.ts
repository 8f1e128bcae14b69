/**
 * Which terminal of an unmarked dual part is which, from the three pairwise readings. Two sections share C, so the
 * third pair reads them in series: 1/x + 1/y = 1/z. Physics; the doubt is the meter maker's, taken as rectangular.
 */
import type { Meter } from '../schema.ts';
import { windowMicrofarads } from './doubt.ts';
import { Exact, type Figure } from './exact.ts';
import { seriesMicrofarads, tripleFits } from './series.ts';

export type Terminal = 'X' | 'Y' | 'Z';
/** Readings between two terminals each, µF, above zero. */
export interface PairwiseMicrofarads {
  readonly xy: Figure;
  readonly xz: Figure;
  readonly yz: Figure;
}
/** One way to name the terminals that the readings allow within their doubt. */
export interface Naming {
  readonly c: Terminal;
  readonly herm: Terminal;
  readonly fan: Terminal;
  /** Reading HERM–FAN less HERM and FAN in series, µF. */
  readonly residualMicrofarads: Exact;
}
export interface Terminals {
  readonly is: 'determined' | 'ambiguous' | 'does-not-fit';
  /** The naming that has the smallest reading as HERM–FAN: the series of two is smaller than each of them. */
  readonly nearest: Naming;
  /** Every naming within the doubt, the one with the smallest residual first. */
  readonly fitting: readonly Naming[];
}

const ALL: readonly Terminal[] = ['X', 'Y', 'Z'];

/** The reading between two terminals, whichever way round. */
function between(readings: PairwiseMicrofarads, a: Terminal, b: Terminal): Exact {
  const pair = [a, b].sort().join('');
  return new Exact(pair === 'XY' ? readings.xy : pair === 'XZ' ? readings.xz : readings.yz);
}

/** The two namings with this C: the larger section is HERM. Two where the doubt can't tell which is larger. */
function namings(meter: Meter, readings: PairwiseMicrofarads, c: Terminal): Naming[] {
  const others = ALL.filter((t) => t !== c);
  const both: Naming[] = [others, [...others].reverse()].flatMap(([herm, fan]) => {
    if (!herm || !fan) return [];
    const [h, f] = [between(readings, c, herm), between(readings, c, fan)];
    const couldBeLarger = windowMicrofarads(meter, h).high.gte(windowMicrofarads(meter, f).low);
    const residualMicrofarads = between(readings, herm, fan).minus(seriesMicrofarads(h, f));
    return couldBeLarger ? [{ c, herm, fan, residualMicrofarads }] : [];
  });
  return both.sort((a, b) => between(readings, c, b.herm).cmp(between(readings, c, a.herm)));
}

/** Names the terminals: determined, ambiguous within the doubt, or no naming fits. Readings must be above zero. */
export function terminalsOf(meter: Meter, readings: PairwiseMicrofarads): Terminals {
  const all = ALL.flatMap((c) => namings(meter, readings, c));
  const fits = (n: Naming): boolean =>
    tripleFits(meter, between(readings, n.c, n.herm), between(readings, n.c, n.fan), between(readings, n.herm, n.fan));
  const fitting = all.filter(fits).sort((a, b) => a.residualMicrofarads.abs().cmp(b.residualMicrofarads.abs()));
  const bySize = [...all].sort((a, b) => between(readings, a.herm, a.fan).cmp(between(readings, b.herm, b.fan)));
  const [nearest] = bySize;
  if (!nearest) throw new Error('no naming of three terminals');
  const is = fitting.length === 0 ? 'does-not-fit' : fitting.length === 1 ? 'determined' : 'ambiguous';
  return { is, nearest, fitting };
}
