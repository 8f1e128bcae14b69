/** Conversions against the definitions, with js-quantities and mathjs asked the same. */
import Qty from 'js-quantities';
import { unit } from 'mathjs';
import { convert } from '../../engine/calc/units.ts';
import { type Check, checks } from './check.ts';

const js = (value: number, from: string, to: string) => ({
  name: 'js-quantities',
  says: () => Qty(value, from).to(to).scalar,
});
const math = (value: number, from: string, to: string) => ({
  name: 'mathjs',
  says: () => unit(value, from).toNumber(to),
});
/** Relative tolerance of a program that computes in binary floating point. */
const close = (figure: number, by = 1e-9): number => Math.max(Math.abs(figure) * by, 1e-9);

type Ours = () => { toNumber(): number };
const of = (
  what: string,
  input: string,
  published: string,
  unitName: string,
  ours: Ours,
  oracle: { name: string; says: () => number },
  source = 'definitions of the units, arithmetic',
  by?: number,
): Check => ({
  what,
  input,
  published,
  ours: () => Number(ours().toNumber().toPrecision(12)),
  unit: unitName,
  source,
  status: 'PHYS',
  oracle: { ...oracle, within: close(Number(published), by) },
});
/** As reprinted with its own headings, “factors in boldface are exact”. */
const SP811 = 'NIST SP 811, appendix B.8';
const FOOD = 'FDA Food Code: 41 °F (5 °C)';

checks('units', [
  of('capacitance', '38400 nF', '38.4', 'µF', () => convert(38400, 'nF', 'µF'), js(38400, 'nF', 'uF')),
  of('capacitance', '0.0384 mF', '38.4', 'µF', () => convert('0.0384', 'mF', 'µF'), js(0.0384, 'mF', 'uF')),
  of('capacitance', '38400000 pF', '38.4', 'µF', () => convert(38400000, 'pF', 'µF'), js(38400000, 'pF', 'uF')),
  of('capacitance', '5.03 µF', '5030', 'nF', () => convert('5.03', 'µF', 'nF'), math(5.03, 'uF', 'nF')),
  of('voltage', '300 mV', '0.3', 'V', () => convert(300, 'mV', 'V'), js(300, 'mV', 'V')),
  of('voltage', '0.622254 kV', '622.254', 'V', () => convert('0.622254', 'kV', 'V'), math(0.622254, 'kV', 'V')),
  of('current', '820 mA', '0.82', 'A', () => convert(820, 'mA', 'A'), math(820, 'mA', 'A')),
  of('resistance', '11 kΩ', '11000', 'Ω', () => convert(11, 'kΩ', 'Ω'), js(11, 'kohm', 'ohm')),
  of('resistance', '1.2 MΩ', '1200000', 'Ω', () => convert('1.2', 'MΩ', 'Ω'), math(1.2, 'Mohm', 'ohm')),
  of('resistance', '400000 Ω', '0.4', 'MΩ', () => convert(400000, 'Ω', 'MΩ'), math(400000, 'ohm', 'Mohm')),
  of('resistance', '4 mΩ', '0.004', 'Ω', () => convert(4, 'mΩ', 'Ω'), js(4, 'mohm', 'ohm')),
  of('frequency', '0.06 kHz', '60', 'Hz', () => convert('0.06', 'kHz', 'Hz'), js(0.06, 'kHz', 'Hz')),
  of('time', '30 min', '1800', 's', () => convert(30, 'min', 's'), js(30, 'min', 's')),
  of('time', '1.5 h', '90', 'min', () => convert('1.5', 'h', 'min'), math(1.5, 'h', 'min')),
  of(
    'temperature',
    '100 °F',
    '37.7778',
    '°C',
    () => convert(100, '°F', '°C'),
    js(100, 'tempF', 'tempC'),
    undefined,
    1e-5,
  ),
  of('temperature', '-40 °F', '-40', '°C', () => convert(-40, '°F', '°C'), js(-40, 'tempF', 'tempC')),
  of('temperature', '0 °C', '32', '°F', () => convert(0, '°C', '°F'), js(0, 'tempC', 'tempF')),
  of('temperature', '24 °C', '75.2', '°F', () => convert(24, '°C', '°F'), math(24, 'degC', 'degF')),
  of('temperature', '32 °F', '273.15', 'K', () => convert(32, '°F', 'K'), math(32, 'degF', 'K')),
  {
    ...of('temperature', '41 °F', '5', '°C', () => convert(41, '°F', '°C'), js(41, 'tempF', 'tempC'), FOOD),
    status: 'V2',
  },
  of('difference', '10 °C apart', '18', '°F', () => convert(10, 'Δ°C', 'Δ°F'), js(10, 'degC', 'degF')),
  of(
    'difference',
    '19 °F apart',
    '10.5556',
    '°C',
    () => convert(19, 'Δ°F', 'Δ°C'),
    js(19, 'degF', 'degC'),
    undefined,
    1e-5,
  ),
  {
    ...of(
      'difference',
      '1 °F apart',
      '0.5555556',
      '°C',
      () => convert(1, 'Δ°F', 'Δ°C'),
      js(1, 'degF', 'degC'),
      `${SP811}: 5.555 556 E-01`,
      1e-6,
    ),
    status: 'V2',
  },
  {
    ...of(
      'gauge pressure',
      '1000 psi more on the gauge',
      '6894.757',
      'kPa',
      () => convert(1100, 'psig', 'kPa gauge').minus(convert(100, 'psig', 'kPa gauge')),
      math(1000, 'psi', 'kPa'),
      `${SP811}: 6.894 757 E+00`,
      1e-7,
    ),
    status: 'V2',
  },
  {
    ...of(
      'difference taken for a temperature',
      '10 °C apart',
      '50',
      '°F',
      () => convert(10, 'Δ°C', 'Δ°F'),
      js(10, 'degC', 'degF'),
    ),
    oracle: { ...js(10, 'degC', 'degF'), within: 1e-9 },
    wrong: true,
  },
  of(
    'pressure',
    '1 psi',
    '6.894757293',
    'kPa',
    () => convert(1, 'psia', 'kPa'),
    math(1, 'psi', 'kPa'),
    undefined,
    1e-9,
  ),
  {
    // Where the two disagree mathjs is right: the definitions give 819.0282; js-quantities keeps a psi to six digits.
    ...of(
      'pressure',
      '118.79 psi',
      '819.0285',
      'kPa',
      () => convert('118.79', 'psia', 'kPa'),
      math(118.79, 'psi', 'kPa'),
    ),
    source: 'wrong in js-quantities 1.8.0, which keeps a psi as 6.89476 kPa',
    wrong: true,
    oracle: { ...math(118.79, 'psi', 'kPa'), within: 1e-4 },
  },
  of(
    'pressure',
    '118.79 psi',
    '819.0282',
    'kPa',
    () => convert('118.79', 'psia', 'kPa'),
    math(118.79, 'psi', 'kPa'),
    undefined,
    1e-6,
  ),
  of('pressure', '1 bar', '14.50377', 'psi', () => convert(1, 'bar', 'psia'), math(1, 'bar', 'psi'), undefined, 1e-6),
  of(
    'standard atmosphere',
    '101.325 kPa',
    '14.695949',
    'psi',
    () => convert('101.325', 'kPa', 'psia'),
    math(1, 'atm', 'psi'),
    undefined,
    1e-6,
  ),
  of('gauge to absolute', '0 psig', '101.325', 'kPa', () => convert(0, 'psig', 'kPa'), math(1, 'atm', 'kPa')),
  of(
    'gauge to absolute',
    '130 psig',
    '144.695949',
    'psi',
    () => convert(130, 'psig', 'psia'),
    {
      name: 'js-quantities',
      says: () => 130 + Qty(1, 'atm').to('psi').scalar,
    },
    undefined,
    1e-7,
  ),
  of(
    'absolute to gauge',
    '1554.45 kPa',
    '210.76',
    'psig',
    () => convert('1554.45', 'kPa', 'psig'),
    {
      name: 'mathjs',
      says: () => unit(1554.45, 'kPa').toNumber('psi') - unit(1, 'atm').toNumber('psi'),
    },
    undefined,
    1e-5,
  ),
  of(
    'gauge to gauge',
    '8.2 bar',
    '118.9309',
    'psig',
    () => convert('8.2', 'bar gauge', 'psig'),
    math(8.2, 'bar', 'psi'),
    undefined,
    1e-6,
  ),
  of(
    'gauge to gauge',
    '1000 kPa',
    '145.0377',
    'psig',
    () => convert(1000, 'kPa gauge', 'psig'),
    math(1000, 'kPa', 'psi'),
    undefined,
    1e-6,
  ),
  {
    ...of('gauge taken for absolute', '0 psig', '0', 'kPa', () => convert(0, 'psig', 'kPa'), math(1, 'atm', 'kPa')),
    oracle: { ...math(1, 'atm', 'kPa'), within: 1e-9 },
    wrong: true,
  },
  of(
    'power',
    '12000 Btu/h',
    '3.51685',
    'kW',
    () => convert(12000, 'Btu/h', 'kW'),
    {
      name: 'js-quantities',
      says: () => Qty('12000 btu').to('J').scalar / 3600 / 1000,
    },
    undefined,
    1e-3,
  ),
  of('power', '1 ton', '3.51685', 'kW', () => convert(1, 'ton', 'kW'), math(12_000, 'BTU/h', 'kW'), undefined, 1e-5),
  of('power', '1 W', '3.41214', 'Btu/h', () => convert(1, 'W', 'Btu/h'), math(1, 'W', 'BTU/h'), undefined, 1e-5),
]);
