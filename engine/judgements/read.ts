/** Reads what was answered. Total: a part may be missing, left out, over range or of another kind. */
import { Exact } from '../calc/exact.ts';
import type { CapacitorLabel, Parts, Unit } from '../schema.ts';

/** `over`: the meter showed OL. `none`: nobody was asked, it was left out, or it is no figure of this unit. */
export type Reading = { readonly kind: 'figure'; readonly value: Exact } | { readonly kind: 'over' | 'none' };

const partOf = (parts: Parts | undefined, key: string) =>
  parts !== undefined && Object.hasOwn(parts, key) ? parts[key] : undefined;

export function readingOf(parts: Parts | undefined, key: string, unit: Unit): Reading {
  const part = partOf(parts, key);
  if (part?.kind === 'over') return { kind: 'over' };
  if (part?.kind !== 'figure') return { kind: 'none' };
  const value = new Exact(part.value);
  if (part.unit === unit) return { kind: 'figure', value };
  if (part.unit === 'Ω' && unit === 'MΩ') return { kind: 'figure', value: value.div(1_000_000) };
  if (part.unit === 'MΩ' && unit === 'Ω') return { kind: 'figure', value: value.times(1_000_000) };
  return { kind: 'none' };
}

export function figureOf(parts: Parts | undefined, key: string, unit: Unit): Exact | null {
  const reading = readingOf(parts, key, unit);
  return reading.kind === 'figure' ? reading.value : null;
}

/** True where the part is there but holds no figure: it was asked and not read. */
export const leftOpen = (parts: Parts | undefined, key: string, unit: Unit): boolean =>
  partOf(parts, key) !== undefined && figureOf(parts, key, unit) === null;

export function chosenOf(parts: Parts | undefined, key: string): readonly string[] {
  const part = partOf(parts, key);
  return part?.kind === 'choice' ? part.chosen : [];
}

/** The print on a part; null where it is unknown or can't be one (nothing is rated zero). */
export function printOf(parts: Parts | undefined): CapacitorLabel | null {
  const part = partOf(parts, 'print');
  if (part?.kind !== 'label') return null;
  const { herm, fan, below, above } = part.label;
  const rated = fan === null ? [herm] : [herm, fan];
  return rated.some((r) => new Exact(r).lte(0)) || [below, above].some((t) => new Exact(t).lt(0)) ? null : part.label;
}

/**
 * Whether a look shows a run capacitor of one section: its print says so, or, without a print, its two terminals do.
 * Where the two disagree it counts as two sections, and more is measured.
 */
export function showsOneSection(look: Parts | undefined): boolean {
  const [print, terminals] = [printOf(look), chosenOf(look, 'terminals')];
  if (terminals.includes('three')) return false;
  return print === null ? terminals.includes('two') : print.fan === null;
}

/** Whether a confirmation was given: some part says yes or done, and none says no or can't. */
export function confirmed(parts: Parts | undefined): boolean {
  const chosen = Object.values(parts ?? {}).flatMap((p) => (p.kind === 'choice' ? p.chosen : []));
  return chosen.some((c) => c === 'yes' || c === 'done') && !chosen.some((c) => c === 'no' || c === 'cant');
}
