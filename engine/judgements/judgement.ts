/**
 * A judgement is a named computation with closed outcomes. Flows name it and give it facts and limits; it never asks,
 * never remembers, never reads a clock. `id@semantics` is part of a flow's fingerprint: a changed computation shows.
 */
import type { Equipment, Finding, Hazard, Meter, Parts, Settings, Truck } from '../schema.ts';

/** A limit with its unit and where it comes from. All limits live in flows/limits.ts. */
export interface Limit {
  readonly value: string;
  readonly unit: string;
  readonly source: string;
}

/** The answers a judgement is given, by the names it asked for; undefined where nobody was asked yet or it fell away. */
export type Given<P extends string> = Readonly<Record<P, Parts | undefined>>;

/** What is in force for the job when it is judged. `meter` is that of the person who took the readings. */
export interface Force {
  readonly settings: Settings;
  readonly meter: Meter;
  /** What the truck carries; null where nobody recorded it. */
  readonly truck: Truck | null;
  /** What is known of the unit, as of the day it was put on the record; null where nothing is. */
  readonly equipment: (Equipment & { readonly asOf: string }) | null;
  /** The cabinet that is judged, where it is another than the manual's first. */
  readonly cabinet?: string;
  /** When each fact was answered, by the names that were asked for; the older of the server's and the device's time. */
  readonly at?: Readonly<Record<string, string | undefined>>;
  /** An alarm that nobody has released yet. */
  readonly alarm?: Hazard;
}

export interface Judged<O extends string> {
  readonly outcome: O;
  /** Evidence in the order a person reads it. */
  readonly findings: readonly Finding[];
  /** Parts of the truck that this uses up when they are fitted: id of the item and how many. */
  readonly uses?: readonly { readonly item: string; readonly count: number }[];
}

export interface Judgement<P extends string, L extends string, O extends string> {
  readonly id: string;
  /** Raised when the computation changes its mind about any reading. */
  readonly semantics: number;
  readonly takes: readonly P[];
  readonly limits: readonly L[];
  readonly outcomes: readonly O[];
  run(given: Given<P>, limits: Readonly<Record<L, Limit>>, force: Force): Judged<O>;
  /** Answers on both sides of each limit, for the proof and the generated tests: name → parts. At least one per outcome. */
  probe(limits: Readonly<Record<L, Limit>>): readonly Partial<Record<P, Parts>>[];
}

/** Keeps the literal types of outcomes and parameters. */
export const judgement = <const P extends string, const L extends string, const O extends string>(
  of: Judgement<P, L, O>,
): Judgement<P, L, O> => of;
