/** Quantities of the trade: unit, digits kept, the plausible range of a reading. One table, used by flows, parser and prompt. */
import { Decimal } from 'decimal.js';
import type { Unit } from './schema.ts';

export type Quantity =
  | 'capacitance'
  | 'voltage'
  | 'current'
  | 'resistance'
  | 'insulation'
  | 'count'
  | 'percent'
  | 'temperature'
  | 'difference'
  | 'pressure'
  | 'humidity'
  | 'hours';
export type Circuit = 'line' | 'control' | 'part' | 'refrigerant' | 'none';

interface QuantityRow {
  unit: Unit;
  /** Decimals kept, half-even, in `unit`. */
  digits: number;
  /** A reading outside is asked about: it is more likely another quantity or a slip (our setting). */
  from: string;
  to: string;
}

export const QUANTITIES: Record<Quantity, QuantityRow> = {
  capacitance: { unit: 'µF', digits: 4, from: '0', to: '400' },
  voltage: { unit: 'V', digits: 2, from: '-1000', to: '1000' },
  current: { unit: 'A', digits: 3, from: '0', to: '400' },
  resistance: { unit: 'Ω', digits: 3, from: '0', to: '100000000' },
  insulation: { unit: 'MΩ', digits: 2, from: '0', to: '100000' },
  count: { unit: 'count', digits: 0, from: '0', to: '20' },
  percent: { unit: '%', digits: 1, from: '-1000', to: '1000' },
  temperature: { unit: '°F', digits: 1, from: '-60', to: '300' },
  /** Between two temperatures: 10 °C apart is 18 °F apart, not 50. */
  difference: { unit: 'Δ°F', digits: 1, from: '-150', to: '150' },
  /** Gauge: a vacuum is below zero, never below the atmosphere's 14.7. */
  pressure: { unit: 'psig', digits: 1, from: '-14.7', to: '800' },
  humidity: { unit: '%', digits: 1, from: '0', to: '100' },
  hours: { unit: 'h', digits: 2, from: '0', to: '1000' },
};

/** Digits kept for computed figures that no field carries. */
export const DIGITS: Record<Unit, number> = {
  ...{ µF: 4, V: 2, A: 3, Ω: 3, MΩ: 2, '%': 1, s: 2, J: 2, count: 0 },
  ...{ '°F': 1, 'Δ°F': 1, psig: 1, h: 2 },
};

/** A plain decimal string, half-even, without exponent, without a minus before zero. Throws on NaN or Infinity: those are bugs. */
export function decimalString(value: Decimal.Value, digits: number): string {
  const rounded = new Decimal(value).toDecimalPlaces(digits, Decimal.ROUND_HALF_EVEN);
  if (!rounded.isFinite()) throw new Error(`not a finite figure: ${String(value)}`);
  return (rounded.isZero() ? new Decimal(0) : rounded).toFixed();
}

/** A figure in the unit's kept digits. */
export const figure = (value: Decimal.Value, unit: Unit): string => decimalString(value, DIGITS[unit]);
