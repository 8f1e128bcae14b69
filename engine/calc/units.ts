/**
 * Units of the trade and their conversion. Exact: factors are ratios of whole definitions, so that a figure of a limit
 * is the same figure in every unit. Units of two kinds don't compile; neither do gauge and absolute mixed up by name.
 *
 * Sources: inch 25.4 mm, pound-force 4.4482216152605 N, standard atmosphere 101.325 kPa, Btu 1055.05585262 J (all by
 * definition); ton of refrigeration 12 000 Btu/h.
 */
import { Exact, type Figure } from './exact.ts';

interface Meaning<D extends string> {
  readonly of: D;
  /** One of it is `times / over` of the kind's base. */
  readonly times: string;
  readonly over: string;
  /** Added before the factor: degrees from absolute zero to this scale's zero. */
  readonly before: string;
  /** Added after the factor: what the base reads where a gauge reads zero. */
  readonly after: string;
}
const unit = <const D extends string>(of: D, times: string, over = '1', before = '0', after = '0'): Meaning<D> => ({
  of,
  times,
  over,
  before,
  after,
});
/** Pound-force over square inch, in kPa: 4.4482216152605 N / 645.16 mm². */
const PSI = ['4.4482216152605', '0.64516'] as const;
const ATMOSPHERE_KILOPASCALS = '101.325';

const UNITS = {
  pF: unit('capacitance', '1', '1000000'),
  nF: unit('capacitance', '1', '1000'),
  µF: unit('capacitance', '1'),
  mF: unit('capacitance', '1000'),
  mV: unit('voltage', '1', '1000'),
  V: unit('voltage', '1'),
  kV: unit('voltage', '1000'),
  mA: unit('current', '1', '1000'),
  A: unit('current', '1'),
  mΩ: unit('resistance', '1', '1000'),
  Ω: unit('resistance', '1'),
  kΩ: unit('resistance', '1000'),
  MΩ: unit('resistance', '1000000'),
  Hz: unit('frequency', '1'),
  kHz: unit('frequency', '1000'),
  s: unit('time', '1'),
  min: unit('time', '60'),
  h: unit('time', '3600'),
  K: unit('temperature', '1'),
  '°C': unit('temperature', '1', '1', '273.15'),
  '°F': unit('temperature', '5', '9', '459.67'),
  'Δ°C': unit('temperature difference', '1'),
  'Δ°F': unit('temperature difference', '5', '9'),
  kPa: unit('pressure', '1'),
  bar: unit('pressure', '100'),
  psia: unit('pressure', ...PSI),
  'kPa gauge': unit('pressure', '1', '1', '0', ATMOSPHERE_KILOPASCALS),
  'bar gauge': unit('pressure', '100', '1', '0', ATMOSPHERE_KILOPASCALS),
  psig: unit('pressure', ...PSI, '0', ATMOSPHERE_KILOPASCALS),
  W: unit('power', '1'),
  kW: unit('power', '1000'),
  'Btu/h': unit('power', '1055.05585262', '3600'),
  ton: unit('power', '12660670.23144', '3600'),
} as const;

export type UnitName = keyof typeof UNITS;
/** Units of the same kind. kPa, bar and psia are absolute; the gauge's are named so. */
export type Alike<U extends UnitName> = {
  [K in UnitName]: (typeof UNITS)[K]['of'] extends (typeof UNITS)[U]['of'] ? K : never;
}[UnitName];

/**
 * A figure in another unit of its kind, to 50 digits. Gauge pressures are against the standard atmosphere at sea level:
 * at 5000 ft a gauge's zero is 2.5 psi lower. Throws where the figure is no number: that is a bug.
 */
export function convert<const U extends UnitName>(value: Figure, from: U, to: Alike<U>): Exact {
  const [a, b]: [Meaning<string>, Meaning<string>] = [UNITS[from], UNITS[to]];
  const base = new Exact(value).plus(a.before).times(a.times).div(a.over).plus(a.after);
  return base.minus(b.after).times(b.over).div(b.times).minus(b.before);
}
