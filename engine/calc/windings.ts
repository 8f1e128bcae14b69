/**
 * Windings of a motor from the ohms of its three pairs, wires off. Source: a textbook's chapter on motor windings: the two
 * windings meet at C, so S–R reads their sum; the start winding has more ohms than the run winding.
 */
import { doubtOf } from './doubt.ts';
import { Exact, type Figure } from './exact.ts';
import { notBelowZero } from './refuse.ts';

/** How far an ohmmeter may be off: ±(percent of reading + counts · resolution). */
export interface OhmsDoubt {
  readonly percent: Figure;
  readonly counts: number;
  readonly resolutionOhms: Figure;
}
export const doubtOhms = (doubt: OhmsDoubt, readingOhms: Figure): Exact =>
  doubtOf(doubt.percent, doubt.counts, doubt.resolutionOhms, readingOhms);

/** Whether the meter can tell this reading from a short: its doubt doesn't reach zero. */
export const isAboveDoubt = (doubt: OhmsDoubt, readingOhms: Exact): boolean =>
  readingOhms.gt(doubtOhms(doubt, readingOhms));

/** How the largest pair compares with the sum of the two others. */
export interface SumRule {
  /** Largest − (one + other), Ω with its sign. */
  readonly misfitOhms: Exact;
  /** The doubts of the three readings together, Ω. A misfit of this size fits. */
  readonly doubtOhms: Exact;
  readonly fits: boolean;
}
export function sumRule(doubt: OhmsDoubt, largest: Figure, one: Figure, other: Figure): SumRule {
  const [l, a, b] = [largest, one, other].map((r) => notBelowZero(r, 'a resistance')) as [Exact, Exact, Exact];
  const misfit = l.minus(a.plus(b));
  const room = [l, a, b].reduce((sum, r) => sum.plus(doubtOhms(doubt, r)), new Exact(0));
  return { misfitOhms: misfit, doubtOhms: room, fits: misfit.abs().lte(room) };
}

/** How far the largest pair is from the others' sum, in % of that sum (not zero). */
export const misfitPercent = (largest: Figure, one: Figure, other: Figure): Exact => {
  const sum = new Exact(one).plus(other);
  return new Exact(largest).minus(sum).abs().times(100).div(sum);
};

/** Ω of one pair and the names of its two ends. */
export interface Pair {
  readonly ends: readonly [string, string];
  readonly ohms: Exact;
}
export interface Terminals {
  readonly common: string;
  readonly start: string;
  readonly run: string;
  readonly rule: SumRule;
  /** Whether the meter tells the terminals apart: each pair and the next smaller one differ by more than both doubts. */
  readonly told: boolean;
}

/**
 * C, S and R among three terminals: the largest pair is S–R, the third terminal is C, and of the two others the larger
 * is C–S. Pairs of one size are taken in the order given; `told` and the rule say whether that means anything.
 */
export function terminalsFromOhms(pairs: readonly [Pair, Pair, Pair], doubt: OhmsDoubt): Terminals {
  const [largest, toStart, toRun] = [...pairs].sort((a, b) => b.ohms.cmp(a.ohms)) as [Pair, Pair, Pair];
  const [one, other] = largest.ends;
  const start = toStart.ends.includes(one) ? one : other;
  const apart = (a: Exact, b: Exact): boolean => a.minus(b).gt(doubtOhms(doubt, a).plus(doubtOhms(doubt, b)));
  return {
    common: toStart.ends[0] === start ? toStart.ends[1] : toStart.ends[0],
    start,
    run: start === one ? other : one,
    rule: sumRule(doubt, largest.ohms, toStart.ohms, toRun.ohms),
    told: apart(largest.ohms, toStart.ohms) && apart(toStart.ohms, toRun.ohms),
  };
}

/** Which of the three pairs read and which are open (OL), by what is open. */
export type OpenPattern = 'none' | 'common' | 'start' | 'run' | 'all' | 'impossible';

/**
 * The pattern of open pairs: with a lead or winding open, both pairs through it are. One open pair alone contradicts the
 * two others, which lead around it.
 */
export function openPattern(open: { readonly cr: boolean; readonly cs: boolean; readonly sr: boolean }): OpenPattern {
  const { cr, cs, sr } = open;
  if (cr && cs) return sr ? 'all' : 'common';
  if (cs && sr) return 'start';
  if (cr && sr) return 'run';
  return cr || cs || sr ? 'impossible' : 'none';
}

/** Spread of readings in % of their mean: 100·(largest − smallest) / mean. Throws where all are zero. */
export function spreadPercent(ohms: readonly Figure[]): Exact {
  const all = ohms.map((r) => notBelowZero(r, 'a resistance'));
  const sum = all.reduce((total, r) => total.plus(r), new Exact(0));
  if (sum.isZero()) throw new RangeError('all resistances are zero');
  return Exact.max(...all)
    .minus(Exact.min(...all))
    .times(100 * all.length)
    .div(sum);
}

/** Whether three pairs are equal: their spread is within a share (%), or the doubts of the largest and smallest meet. */
export function areEqual(ohms: readonly [Exact, Exact, Exact], percent: Figure, doubt: OhmsDoubt): boolean {
  const [least, most] = [Exact.min(...ohms), Exact.max(...ohms)];
  if (most.minus(least).lte(doubtOhms(doubt, least).plus(doubtOhms(doubt, most)))) return true;
  return spreadPercent(ohms).lte(percent);
}
