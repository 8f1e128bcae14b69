/** A figure in the unit that somebody prefers, to be shown beside the one that is kept. */
import type { Figure } from '../calc/exact.ts';
import { convert } from '../calc/units.ts';
import { digits } from '../judgements/say.ts';
import type { Unit, Units } from '../schema.ts';

/** Units of a record that can be shown in another one. */
export type Convertible = Extract<Unit, '°F' | 'Δ°F' | 'psig'>;
export type Preferred = '°C' | 'kPa' | 'bar';

export const isConvertible = (unit: Unit): unit is Convertible => unit === '°F' || unit === 'Δ°F' || unit === 'psig';

/** The unit that is preferred for figures of this one; null where it is the same. */
export function preferredFor(unit: Unit, units: Units | undefined): Preferred | null {
  if (units === undefined) return null;
  if (unit === '°F' || unit === 'Δ°F') return units.temperature === '°F' ? null : units.temperature;
  return unit !== 'psig' || units.pressure === 'psig' ? null : units.pressure;
}

/** Whether anything is shown otherwise than it is kept. */
export const prefersOther = (units: Units | undefined): units is Units =>
  preferredFor('°F', units) !== null || preferredFor('psig', units) !== null;

/**
 * Decimals shown: the fewest with which a figure that was typed in this unit reads the same after it was kept to a tenth
 * of °F or psi.
 */
const DECIMALS: Readonly<Record<Preferred, number>> = { '°C': 1, kPa: 0, bar: 2 };
/** As it is written behind the figure: a gauge's pressure says so. */
const WRITTEN: Readonly<Record<Preferred, string>> = { '°C': '°C', kPa: 'kPa gauge', bar: 'bar gauge' };

/** The figure without its unit, at most to the digits shown. */
export function inPreferred(value: Figure, unit: Convertible, preferred: Preferred): string {
  const exact =
    unit === 'psig'
      ? convert(value, 'psig', preferred === 'bar' ? 'bar gauge' : 'kPa gauge')
      : unit === '°F'
        ? convert(value, '°F', '°C')
        : convert(value, 'Δ°F', 'Δ°C');
  return digits(exact, DECIMALS[preferred]);
}

export const writtenUnit = (preferred: Preferred): string => WRITTEN[preferred];
