/** Which range a supply has to keep: by the volts on the nameplate, the phase and the kind of compressor. */
import { Exact, type Range } from '../../calc/exact.ts';
import { nameplateRangeVolts, ratedRangeVolts } from '../../calc/supply.ts';
import type { Parts } from '../../schema.ts';
import type { Limit } from '../judgement.ts';
import { chosenOf } from '../read.ts';
import { told } from '../windings/look.ts';

export const SUPPLY_LIMITS = [
  'low',
  'lowScroll',
  'lowThree',
  'high',
  'rated115',
  'ratedWithin',
  'present',
  'neutral',
  'sag',
  'contacts',
  'report',
  'stop',
  'singlePhase',
  'highLeg',
] as const;
export type SupplyLimits = Readonly<Record<(typeof SUPPLY_LIMITS)[number], Limit>>;

export interface SupplyRange {
  readonly range: Range;
  readonly source: string;
  /** The nameplate's volts are not known, so one was taken. */
  readonly assumed: string | null;
}
export interface Seen {
  readonly line: Parts | undefined;
  readonly range: SupplyRange;
  readonly limits: SupplyLimits;
}

/** The volts printed: "208/230" is two ratings. */
const printed = (plate: Parts | undefined): readonly string[] =>
  chosenOf(plate, 'volts').flatMap((option) => option.match(/\d{2,3}/g) ?? []);

export function rangeOf(
  plate: Parts | undefined,
  machine: Parts | undefined,
  phase: 'single' | 'three' | 'neutral',
  limits: SupplyLimits,
): SupplyRange {
  const kind = told(machine);
  const scroll = kind.includes('scroll') || kind.includes('semi-hermetic');
  const low = phase === 'three' ? limits.lowThree : scroll ? limits.lowScroll : limits.low;
  const dual = { low: new Exact(low.value), high: new Exact(limits.high.value) };
  const volts = printed(plate);
  const named = nameplateRangeVolts(volts, limits.ratedWithin.value, dual);
  if (named) return { range: named, source: named === dual ? low.source : limits.ratedWithin.source, assumed: null };
  if (phase === 'neutral') {
    const rated = limits.rated115;
    return {
      range: ratedRangeVolts(rated.value, limits.ratedWithin.value),
      source: limits.ratedWithin.source,
      assumed: rated.value,
    };
  }
  return { range: dual, source: low.source, assumed: '208/230' };
}
