/** The 24 V circuit: what a coil needs, what a transformer gives, where a series of switches is open. */
import { Exact, type Figure, type Range } from './exact.ts';

/** A share of the rated volts, low to high, V. Pull-in 85–110 %, drop-out 20–75 % (IEC 60947-4-1, from memory). */
export const shareVolts = (ratedVolts: Figure, lowPercent: Figure, highPercent: Figure): Range => ({
  low: new Exact(ratedVolts).times(lowPercent).div(100),
  high: new Exact(ratedVolts).times(highPercent).div(100),
});

/** A from VA and V (not zero): what a transformer or a coil takes. Arithmetic. */
export const ampsOf = (voltAmperes: Figure, volts: Figure): Exact => new Exact(voltAmperes).div(volts);

/** |Z| in Ω from VA (not zero) and V: V²/VA. An AC coil's DC ohms are far less and give no current. Physics. */
export const impedanceOhms = (voltAmperes: Figure, volts: Figure): Exact => new Exact(volts).pow(2).div(voltAmperes);

/** Secondary V when the primary isn't the tap's volts (not zero): a 240 V tap on 208 V gives 0.867 of it. Physics. */
export const secondaryVolts = (ratedSecondaryVolts: Figure, tapVolts: Figure, primaryVolts: Figure): Exact =>
  new Exact(ratedSecondaryVolts).times(primaryVolts).div(tapVolts);

/** Class 2: at most 30 V and 100 VA. NEC chapter 9 table 11. */
export const isClassTwo = (volts: Figure, voltAmperes: Figure): boolean =>
  new Exact(volts).lte(30) && new Exact(voltAmperes).lte(100);

/** Volts of one place along the circuit against C; null where nobody read there. */
export interface HopReading {
  readonly name: string;
  readonly volts: Exact | null;
}
export interface HopLimits {
  /** A closed switch drops less than this, V. */
  readonly closedVolts: Figure;
  /** An open one carries at least this across it, V. */
  readonly openVolts: Figure;
}
export type Hop =
  /** The same volts all along. */
  | { readonly is: 'through' }
  /** No volts at the start: what is open lies before it. */
  | { readonly is: 'nothing'; readonly at: string }
  /** Too few volts at the start for any switch to be told by them. */
  | { readonly is: 'low'; readonly at: string; readonly volts: Exact }
  /** `device` is the one just passed: volts before it, next to none after. */
  | { readonly is: 'open'; readonly device: string; readonly beforeVolts: Exact; readonly afterVolts: Exact }
  /** Volts after it, and fewer than before by more than a closed switch drops. */
  | { readonly is: 'drop'; readonly device: string; readonly dropVolts: Exact }
  | { readonly is: 'unread' };

/**
 * Walks the red lead along a series of switches, black on C: the first fall decides. Readings stand after each device,
 * the first at the start. Places nobody read are passed over, so a device named is the last of those in between.
 */
export function hop(readings: readonly HopReading[], { closedVolts, openVolts }: HopLimits): Hop {
  const read = readings.flatMap(({ name, volts }) => (volts === null ? [] : [{ name, volts: volts.abs() }]));
  const [start, ...rest] = read;
  if (!start) return { is: 'unread' };
  if (start.volts.lt(closedVolts)) return { is: 'nothing', at: start.name };
  if (start.volts.lt(openVolts)) return { is: 'low', at: start.name, volts: start.volts };
  if (rest.length === 0) return { is: 'unread' };
  let before = start.volts;
  for (const { name, volts } of rest) {
    const dropVolts = before.minus(volts);
    // A meter of 10 MΩ reads some volts past an open switch, so either a full fall or next to nothing left is open.
    if (dropVolts.gte(openVolts) || volts.lt(closedVolts))
      return { is: 'open', device: name, beforeVolts: before, afterVolts: volts };
    if (dropVolts.gte(closedVolts)) return { is: 'drop', device: name, dropVolts };
    before = volts;
  }
  return { is: 'through' };
}

/** One switch by the volts across it with the call there: open, closed, or neither. */
export function acrossSwitch(volts: Figure, { closedVolts, openVolts }: HopLimits): 'open' | 'closed' | 'neither' {
  const size = new Exact(volts).abs();
  return size.gte(openVolts) ? 'open' : size.lt(closedVolts) ? 'closed' : 'neither';
}
