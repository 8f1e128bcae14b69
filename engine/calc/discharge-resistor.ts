/**
 * Which resistor may discharge this part. The pulse decides, not the rating alone: V²/R at first, falling with
 * e^(−2t/RC), ½CV² in all. Source: physics; how much pulse a resistor takes is its maker's, or our setting.
 */
import { energyJoules, peakWatts, secondsTo } from './discharge.ts';
import { Exact, type Figure } from './exact.ts';

export interface ChargedPart {
  readonly microfarads: Figure;
  /** What it may hold, V DC: √2 × its AC rating in the worst case. */
  readonly fromVolts: Figure;
  /** Where it counts as discharged, V DC, above zero. */
  readonly toVolts: Figure;
}
export interface Resistor {
  readonly id: string;
  readonly ohms: Figure;
  readonly watts: Figure;
  /** The most that resistor and probes are rated for, V DC. */
  readonly volts: Figure;
}
export interface PulseLimits {
  /** Most times its watts that a resistor takes at the first instant. */
  readonly peakTimes: Figure;
  /** Energy it takes at once, as seconds at its rated watts. */
  readonly energySeconds: Figure;
  /** Longest that somebody holds a probe. */
  readonly holdSeconds: Figure;
}
export interface Suitability {
  readonly id: string;
  readonly peakWatts: Exact;
  readonly joules: Exact;
  /** Unrounded, from the worst case to where it counts as discharged. */
  readonly seconds: Exact;
  /** Everything that speaks against it; empty is suitable. */
  readonly against: readonly ('volts' | 'peak' | 'energy' | 'slow')[];
}

/** What a resistor (Ω and W above zero) meets on this part, and what speaks against it. On a limit is in. */
export function suitability(part: ChargedPart, resistor: Resistor, limits: PulseLimits): Suitability {
  const peak = peakWatts(part.fromVolts, resistor.ohms);
  const joules = energyJoules(part.microfarads, part.fromVolts);
  const seconds = secondsTo(part.fromVolts, part.toVolts, part.microfarads, resistor.ohms);
  const watts = new Exact(resistor.watts);
  const against: Suitability['against'] = [
    ...(new Exact(part.fromVolts).gt(resistor.volts) ? (['volts'] as const) : []),
    ...(peak.gt(watts.times(limits.peakTimes)) ? (['peak'] as const) : []),
    ...(joules.gt(watts.times(limits.energySeconds)) ? (['energy'] as const) : []),
    ...(seconds.gt(limits.holdSeconds) ? (['slow'] as const) : []),
  ];
  return { id: resistor.id, peakWatts: peak, joules, seconds, against };
}

/** Resistors for this part: the suitable ones first, the quickest of them in front, then by id. */
export function resistorsFor(part: ChargedPart, all: readonly Resistor[], limits: PulseLimits): Suitability[] {
  return all
    .map((resistor) => suitability(part, resistor, limits))
    .sort(
      (a, b) =>
        Math.sign(a.against.length) - Math.sign(b.against.length) || a.seconds.cmp(b.seconds) || (a.id < b.id ? -1 : 1),
    );
}

/** The largest Ω that reach a voltage in a time: t / (C·ln(V0/V)). `fromVolts` above `toVolts`, both above zero. */
export const mostOhms = (part: ChargedPart, seconds: Figure): Exact =>
  new Exact(seconds).times(1_000_000).div(new Exact(part.fromVolts).div(part.toVolts).ln().times(part.microfarads));

/** The smallest Ω whose first instant stays within a power: V²/W. `watts` above zero. */
export const leastOhms = (fromVolts: Figure, watts: Figure): Exact => new Exact(fromVolts).pow(2).div(watts);
