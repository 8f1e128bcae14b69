/** Supply voltage: limits by the nameplate, drop, lost leg and unbalance. */
import { Exact, type Figure, type Range, within } from './exact.ts';
import { aboveZero, notBelowZero } from './refuse.ts';

/**
 * ±percent of a single rated voltage, in V.
 * Source: NEMA MG 1-12.44.1, motors run at ±10 % of rated voltage.
 */
export function ratedRangeVolts(ratedVolts: Figure, percent: Figure): Range {
  const part = new Exact(ratedVolts).times(percent).div(100);
  return { low: new Exact(ratedVolts).minus(part), high: new Exact(ratedVolts).plus(part) };
}

/**
 * The range for the voltages printed on a nameplate, in V; null where none is printed. 208/230 has limits of its own by
 * phase and kind, which the caller gives. Any other pair of ratings runs from the lower one −percent to the higher +percent.
 * Source: a compressor maker's nameplate-voltage bulletin (secondary source) for 208/230; NEMA MG 1-12.44.1 for the rest.
 */
export function nameplateRangeVolts(ratedVolts: readonly Figure[], percent: Figure, dual: Range): Range | null {
  const rated = ratedVolts.map((v) => aboveZero(v, 'a rated voltage'));
  if (rated.length === 0) return null;
  const [lowest, highest] = [Exact.min(...rated), Exact.max(...rated)];
  if (lowest.eq(208) && highest.eq(230)) return dual;
  return { low: ratedRangeVolts(lowest, percent).low, high: ratedRangeVolts(highest, percent).high };
}

/** What a nameplate of such equipment prints beside 208/230 V. Source: equipment ratings of ANSI C84.1, from memory. */
const OTHER_RATINGS = ['115', '460', '575'] as const;

/** Whether a reading in V fits a nameplate other than 208/230 V, so that the plate has to be read before it is judged. */
export const fitsOtherRating = (volts: Figure, percent: Figure): boolean =>
  OTHER_RATINGS.some((rated) => within(new Exact(volts), ratedRangeVolts(rated, percent)));

/** Fall from one voltage to another in % of the first (not zero). Arithmetic. */
export const dropPercent = (fromVolts: Figure, toVolts: Figure): Exact =>
  new Exact(fromVolts).minus(toVolts).times(100).div(fromVolts);

/**
 * 100·max|Vi − mean| / mean in %. At least one voltage, none below zero and not all zero; throws otherwise. Amps of three
 * legs are compared the same way. Source: NEMA.
 */
export function unbalancePercent(volts: readonly Figure[]): Exact {
  if (volts.length === 0) throw new Error('no voltages');
  const all = volts.map((v) => notBelowZero(v, 'a voltage'));
  const sum = all.reduce((total, v) => total.plus(v), new Exact(0));
  const mean = aboveZero(sum, 'the mean').div(all.length);
  return Exact.max(...all.map((v) => v.minus(mean).abs()))
    .times(100)
    .div(mean);
}

/** Extra temperature rise of a three-phase motor in %, about 2·(unbalance in %)². Source: rule quoted from NEMA MG 1. */
export const extraRisePercent = (unbalance: Figure): Exact => notBelowZero(unbalance, 'the unbalance').pow(2).times(2);

/** MG 1's curve, read off the graph: only the point at 2 % is seen in a secondary source, the others are from memory. */
const DERATING = ['1', '1', '0.95', '0.88', '0.82', '0.75'] as const;

/** Share of rated power that is left at an unbalance in %, straight between the curve's points; null above 5 %: don't run. */
export function deratingShare(unbalance: Figure): Exact | null {
  const exact = notBelowZero(unbalance, 'the unbalance');
  const whole = exact.floor();
  const to = DERATING[exact.ceil().toNumber()];
  if (to === undefined) return null;
  const from = DERATING[whole.toNumber()] ?? to;
  return new Exact(from).plus(new Exact(to).minus(from).times(exact.minus(whole)));
}

/** What three readings of a supply of two legs say, V without sign. */
export type Legs = 'absent' | 'lost' | 'present';

/**
 * Whether one of two legs is missing. Through a load the lost leg takes the other's potential, so leg to leg reads next to
 * nothing while both read to ground; without a load it reads nothing to ground.
 * @param lowVolts what leg to leg must reach to be a supply
 * @param presentVolts from here on a pair counts as alive
 */
export function legsOf(l1l2: Exact, l1g: Exact, l2g: Exact, lowVolts: Figure, presentVolts: Figure): Legs {
  const alive = (volts: Exact): boolean => volts.gte(presentVolts);
  if (![l1l2, l1g, l2g].some(alive)) return 'absent';
  if (l1l2.gte(lowVolts)) return 'present';
  return !alive(l1l2) || !alive(l1g) || !alive(l2g) ? 'lost' : 'present';
}

/** Three readings without sign. */
export type ThreeVolts = readonly [Exact, Exact, Exact];
const rising = (volts: ThreeVolts): ThreeVolts => [...volts].sort((a, b) => a.cmp(b)) as [Exact, Exact, Exact];

/**
 * Single-phasing of three lines: one line to line is inside its range and both others are at most this share (%) of it. A
 * motor with one line open halves the voltage over the two windings in series.
 */
export function isSinglePhased(lineToLineVolts: ThreeVolts, range: Range, atMostPercent: Figure): boolean {
  const [, middle, high] = rising(lineToLineVolts);
  return within(high, range) && middle.lte(high.times(atMostPercent).div(100));
}

/**
 * The high leg of a delta with one winding tapped: it reads √3 times what the two others read to ground, and these are
 * alike. Both within a share in %. Null where three volts don't show it; a share of nothing is no share, so a zero among
 * them never does. Geometry.
 */
export function highLegTimes(
  toGroundVolts: ThreeVolts,
  withinPercent: Figure,
): { readonly volts: Exact; readonly times: Exact } | null {
  const [low, middle, high] = rising(toGroundVolts);
  const near = (value: Exact, expected: Exact): boolean => dropPercent(expected, value).abs().lte(withinPercent);
  const times = high.times(2).div(low.plus(middle));
  return near(middle, low) && near(times, new Exact(3).sqrt()) ? { volts: high, times } : null;
}
