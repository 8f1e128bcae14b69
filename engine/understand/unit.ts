/** Units as they are typed and printed. One table, used for readings and for labels. */

import type { Unit } from '../schema.ts';
import { lower } from './fold.ts';

/** What a unit measures; MΩ is ohms, a million at a time. */
export type Measured = Exclude<Unit, 'MΩ'>;
export interface UnitMeaning {
  readonly of: Measured;
  /** One of it in µF, V, A, Ω, %, s, J, °F, psig or h; a plain decimal. */
  readonly factor: string;
  /** Added after the factor where its zero is elsewhere: 0 °C is 32 °F, 0 psia is 14.7 psi under the gauge's zero. */
  readonly plus?: string;
  /**
   * `ask`: two units are written so (m or M), and they decide differently.
   * `doubtful`: mF, which meters and labels also print for µF; asked but where the digits tell (`field.ts`).
   */
  readonly doubt?: 'ask' | 'doubtful';
}

/** The meaning of a unit's spelling ("uF", "meg ohms", "V AC"), or null. Takes folded text. */
export function unitOf(spelling: string): UnitMeaning | null {
  if (spelling.length > 24) return null;
  const joined = spelling.replace(/[ .]/g, '');
  const small = lower(joined);
  return milliOrMega(joined.charAt(0), small.slice(1)) ?? UNITS.get(small) ?? null;
}

/** How many base units (Ω for MΩ) one of this unit is. */
export const factorOf = (unit: Unit): string => (unit === 'MΩ' ? '1000000' : '1');
export const measuredBy = (unit: Unit): Measured => (unit === 'MΩ' ? 'Ω' : unit);

/** The one letter whose case matters: m is a thousandth, M a million. Ohms are asked, since phones change case. */
function milliOrMega(letter: string, rest: string): UnitMeaning | null {
  if (letter !== 'm' && letter !== 'M') return null;
  const milli = letter === 'm';
  if (rest === 'f') return { of: 'µF', factor: '1000', doubt: milli ? 'doubtful' : 'ask' };
  if (OHM.includes(rest)) return milli ? { of: 'Ω', factor: '0.001', doubt: 'ask' } : { of: 'Ω', factor: '1000000' };
  const of = VOLT.includes(rest) ? 'V' : AMP.includes(rest) ? 'A' : null;
  return of && { of, factor: '0.001', ...(milli ? {} : { doubt: 'ask' as const }) };
}

const OHM = ['', 'ω', 'ohm', 'ohms', 'Ω'];
const VOLT = ['v', 'vac', 'vdc', 'volt', 'volts'];
const AMP = ['a', 'amp', 'amps'];

const UNITS = new Map<string, UnitMeaning>();
const add = (of: Measured, factor: string, spellings: string, plus?: string): void => {
  for (const spelling of spellings.split(' ')) UNITS.set(spelling, { of, factor, ...(plus ? { plus } : {}) });
};
add('µF', '1', 'μf μ uf u ufd μfd mfd mfds mic mics mike mikes microf microfarad microfarads micro micros');
add('µF', '0.001', 'nf nfd nanofarad nanofarads');
add('µF', '0.000001', 'pf picofarad picofarads');
add('µF', '1000', 'millifarad millifarads');
add('V', '1', 'v vac vdc vrms volt volts voltac voltsac voltdc voltsdc acv dcv acvolts dcvolts');
add('V', '0.001', 'millivolt millivolts');
add('V', '1000', 'kv kilovolt kilovolts');
add('A', '1', 'a amp amps ampere amperes aac adc ampsac');
add('A', '0.001', 'milliamp milliamps');
add('Ω', '1', 'ω ohm ohms r');
add('Ω', '0.001', 'milliohm milliohms');
add('Ω', '1000', 'k kω kilo kohm kohms kilohm kilohms kiloohm kiloohms kr');
add('Ω', '1000000', 'meg megs mega megω megohm megohms megaohm megaohms');
add('Ω', '1000000000', 'g gω gohm gohms gig gigs giga gigohm gigohms gigaohm gigaohms');
add('%', '1', '% percent pct');
add('s', '1', 's sec secs second seconds');
add('s', '60', 'min mins minute minutes');
add('J', '1', 'j joule joules');
add('h', '1', 'h hr hrs hour hours');
add('°F', '1', '°f degf fahrenheit degreesf degreesfahrenheit');
add('°F', '1.8', '°c degc celsius centigrade degreesc degreescelsius', '32');
add('Δ°F', '1', 'δ°f');
add('Δ°F', '1.8', 'δ°c kelvin');
// A pressure without a word is what the gauge shows.
add('psig', '1', 'psi psig lbs pounds');
add('psig', '0.145037737730209216', 'kpa kpag');
add('psig', '14.5037737730209216', 'bar barg');
add('psig', '1', 'psia', '-14.695948775513450');
add('psig', '0.145037737730209216', 'kpaa', '-14.695948775513450');
add('psig', '14.5037737730209216', 'bara', '-14.695948775513450');
