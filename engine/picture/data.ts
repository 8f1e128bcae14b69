/**
 * What a picture is drawn of: typed data, every figure a plain decimal string with its unit in the name. A flow names
 * leads on a step; a judgement puts the others beside the finding that they illustrate.
 */
import * as z from 'zod/mini';

const decimal = z.string().check(z.regex(/^-?\d+(\.\d+)?$/), z.maxLength(40));
/** What can't be below zero, and what a curve needs above it. */
const size = z.string().check(z.regex(/^\d+(\.\d+)?$/), z.maxLength(40));
const above = z.string().check(z.regex(/^(?!0+(\.0+)?$)\d+(\.\d+)?$/), z.maxLength(40));
const range = z.strictObject({ low: decimal, high: decimal });

/** A reading against its limits. All figures in `unit`. */
const Scale = z.strictObject({
  kind: z.literal('scale'),
  /** What was read: HERM, L1 to L2. */
  name: z.string(),
  unit: z.enum(['µF', 'V', 'A', 'Ω', 'MΩ', '%']),
  rated: z.nullable(decimal),
  limits: range,
  reading: decimal,
  /** Where the true value may lie; null where the plain rule takes no doubt. */
  doubt: z.nullable(range),
  /** The trade's band, given where it would answer otherwise than the label; it never decides. */
  habit: z.nullable(z.strictObject({ percent: decimal, low: decimal, high: decimal })),
  /** The judgement's word. */
  word: z.string(),
});
export type Scale = z.infer<typeof Scale>;

/** A capacitor emptied through a resistor, from the worst case to the accepted residual. */
const Decay = z.strictObject({
  kind: z.literal('decay'),
  fromVolts: above,
  limitVolts: above,
  microfarads: above,
  ohms: above,
  /** When the limit is reached by arithmetic, and how long is held. */
  limitSeconds: size,
  holdSeconds: above,
});
export type Decay = z.infer<typeof Decay>;

/** Ω of a pair of winding terminals; OL where the meter was over range, null where nothing was read. */
const ohms = z.nullable(z.union([size, z.literal('OL')]));
const Windings = z.strictObject({
  kind: z.literal('windings'),
  crOhms: ohms,
  csOhms: ohms,
  srOhms: ohms,
  /** How far S–R may lie from the sum by the meter's doubt; null where it was not computed. */
  doubtOhms: z.nullable(size),
  word: z.string(),
});
export type Windings = z.infer<typeof Windings>;

/** Figures of a finding that a picture can be drawn of. */
export const Figures = z.discriminatedUnion('kind', [Scale, Decay, Windings]);
export type Figures = z.infer<typeof Figures>;

export type DualPair = 'herm-c' | 'fan-c' | 'herm-fan' | 'case';
export type PlainPair = 'across' | 'case';
/** What is between the two leads. A pair with the case is always read in ohms. */
export type Between = 'capacitance' | 'ohms' | 'direct volts' | 'discharge resistor';
interface OnPart<P extends string> {
  readonly kind: 'leads';
  /** In the order in which they are taken. */
  readonly on: readonly [P, ...P[]];
  readonly between: Between;
  readonly can?: 'round' | 'oval';
}
/** Which terminal each lead sits on, the part seen from above. */
export type Leads =
  | (OnPart<DualPair> & { readonly part: 'dual' })
  | (OnPart<PlainPair> & { readonly part: 'single' })
  | (OnPart<PlainPair> & {
      readonly part: 'start';
      readonly bleed: 'fitted' | 'one end off' | 'none';
      readonly bleedOhms?: string;
    });

/** Points that have names instead of a shape: terminals of a strip, of a contactor, of windings. */
export interface Probes {
  readonly kind: 'probes';
  /** What the meter is set to. */
  readonly mode: 'V AC' | 'V DC' | 'Ω' | 'MΩ';
  /**
   * In the order in which they are read. `good`: what a sound one reads, in a few words. `part`: drawn only where this
   * part of the question is asked; a pair without it always is.
   */
  readonly on: readonly {
    readonly from: string;
    readonly to: string;
    readonly good?: string;
    readonly part?: string;
  }[];
}

/** The way of a job on the page: what was passed, and where it stands. */
export interface Path {
  readonly kind: 'path';
  readonly passed: readonly { readonly page: string; readonly title: string }[];
  readonly here: { readonly page: string; readonly title: string };
}
export type PictureData = Figures | Leads | Probes | Path;

/** As a prompt carries it. */
export const Picture = z.strictObject({
  kind: z.enum(['leads', 'probes', 'scale', 'decay', 'windings', 'path']),
  title: z.string(),
  svg: z.string(),
  text: z.string(),
  /** The place of the verdict that it belongs to; null where it belongs to the question. */
  verdict: z.nullable(z.string()),
});
export type Picture = z.infer<typeof Picture>;
