/** What a substitute is looked for and found in: the part wanted, the stock, a choice, a refusal. µF, V AC, %. */
import type { Exact, Figure, Range } from './exact.ts';

export type CapacitorKind = 'run' | 'start';
/** IEC P and S classes, UL's "protected"; ranked by our setting: P0 = S0 = none, P2 = S2 = protected. */
export type Protection = 'none' | 'P0' | 'P1' | 'P2' | 'S0' | 'S1' | 'S2' | 'S3' | 'protected';
/** Class of operation, IEC 60252-1: A 30 000 h, B 10 000 h, C 3 000 h, D 1 000 h. */
export type LifeClass = 'A' | 'B' | 'C' | 'D';
/** A start capacitor's printed range in µF. */
export interface PrintedRange {
  readonly lowMicrofarads: Figure;
  readonly highMicrofarads: Figure;
}

interface Print {
  readonly kind: CapacitorKind;
  /** One figure, or two that share C, in any order. A start part with a range may give none, or its upper end. */
  readonly sectionsMicrofarads: readonly Figure[];
  /** Rated AC volts; the higher one of "440/370". */
  readonly volts: Figure;
  readonly range?: PrintedRange;
  readonly protection?: Protection;
  readonly lifeClass?: LifeClass;
}
export interface Wanted extends Print {
  readonly belowPercent: Figure;
  readonly abovePercent: Figure;
}
export interface StockItem extends Print {
  readonly id: string;
  /** How many are left; below one is none. */
  readonly count: number;
}

/** One section of a stock item; `section` counts from 0 in the item's own order. */
export interface Element {
  readonly id: string;
  readonly section: number;
  readonly microfarads: Exact;
}
/** What stands for one wanted section: one element, or two in parallel. */
export interface Fill {
  readonly wantedMicrofarads: Exact;
  readonly elements: readonly Element[];
  readonly microfarads: Exact;
  readonly deviationPercent: Exact;
}
export interface Choice {
  /** `same`: one part with the sections wanted. `singles`: one part each, C joined by a jumper. `parallel`: two tied. */
  /** `section-unused`: a section of a dual stays free; only where nothing else is admissible. */
  readonly way: 'same' | 'singles' | 'parallel' | 'section-unused';
  /** One per wanted section, the larger first. */
  readonly fills: readonly Fill[];
  /** How many of each item it takes, by id. */
  readonly parts: readonly { readonly id: string; readonly count: number }[];
  readonly partCount: number;
  /** Largest |deviation| of a section from its rating, %. */
  readonly worstPercent: Exact;
}
export type Reason =
  | { readonly why: 'none-left' | 'kind' | 'protection' | 'class' }
  /** `volts` of the item are below `wanted`. */
  | { readonly why: 'volts'; readonly volts: Exact; readonly wantedVolts: Exact }
  /** The section nearest to fitting, or the first of a dual that doesn't fit. */
  | {
      readonly why: 'value';
      readonly microfarads: Exact;
      readonly wantedMicrofarads: Exact;
      readonly deviationPercent: Exact;
    }
  /** A start part whose printed range reaches outside the original's. */
  | { readonly why: 'range'; readonly range: Range }
  /** A section fits, and nothing on the truck makes up the other one. */
  | { readonly why: 'no-partner'; readonly wantedMicrofarads: Exact }
  /** It would do, with more parts or with a section left unused. */
  | { readonly why: 'not-needed' };
export interface Rejected {
  readonly id: string;
  readonly reason: Reason;
}
export interface Substitutes {
  /** The best first: exactness, then fewest parts, then the volts nearest to the original, then id. */
  readonly choices: readonly Choice[];
  /** Every item in no choice, in the order of the stock. */
  readonly rejected: readonly Rejected[];
}

/** A wanted section with the µF it allows. */
export interface Target {
  readonly rated: Exact;
  readonly limits: Range;
}
