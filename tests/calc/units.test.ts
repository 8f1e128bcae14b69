import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { convert, type UnitName } from '../../engine/calc/units.ts';

const figure = fc.integer({ min: -1_000_000, max: 1_000_000 }).map((n) => n / 1000);
const KINDS = [
  ['pF', 'nF', 'µF', 'mF'],
  ['mV', 'V', 'kV'],
  ['mA', 'A'],
  ['mΩ', 'Ω', 'kΩ', 'MΩ'],
  ['Hz', 'kHz'],
  ['s', 'min', 'h'],
  ['K', '°C', '°F'],
  ['Δ°C', 'Δ°F'],
  ['kPa', 'bar', 'psia', 'kPa gauge', 'bar gauge', 'psig'],
  ['W', 'kW', 'Btu/h', 'ton'],
] as const;
/** Any two units of one kind; the types can't follow a drawn pair. */
const pair = fc.constantFrom(...KINDS).chain((kind) => fc.tuple(fc.constantFrom(...kind), fc.constantFrom(...kind)));
const between = convert as (value: unknown, from: UnitName, to: UnitName) => ReturnType<typeof convert>;

describe('conversion', () => {
  test('there and back is the same figure, to 40 digits', () => {
    fc.assert(
      fc.property(figure, pair, (value, [from, to]) => {
        const back = between(between(value, from, to), to, from);
        expect(back.minus(value).abs().lte('1e-34')).toBe(true);
      }),
    );
  });

  test('keeps order: of two figures the greater one is greater in every unit', () => {
    fc.assert(
      fc.property(figure, figure, pair, (a, b, [from, to]) => {
        expect(between(a, from, to).cmp(between(b, from, to))).toBe(Math.sign(a - b));
      }),
    );
  });

  test('over a third unit it is the same', () => {
    fc.assert(
      fc.property(figure, fc.constantFrom('K', '°C', '°F'), fc.constantFrom('K', '°C', '°F'), (value, from, over) => {
        const direct = between(value, from, '°F');
        expect(
          between(between(value, from, over), over, '°F')
            .minus(direct)
            .abs()
            .lte('1e-34'),
        ).toBe(true);
      }),
    );
  });

  test.each([
    ['38.4', 'nF', 'µF', '0.0384'],
    ['1', 'pF', 'nF', '0.001'],
    ['1', 'mF', 'µF', '1000'],
    ['1', 'mV', 'V', '0.001'],
    ['1', 'kV', 'V', '1000'],
    ['1', 'mA', 'A', '0.001'],
    ['1', 'mΩ', 'Ω', '0.001'],
    ['1', 'kΩ', 'Ω', '1000'],
    ['1', 'MΩ', 'Ω', '1000000'],
    ['1', 'kHz', 'Hz', '1000'],
    ['1', 'min', 's', '60'],
    ['1', 'h', 's', '3600'],
    ['0', '°C', 'K', '273.15'],
    ['32', '°F', '°C', '0'],
    ['212', '°F', '°C', '100'],
    ['5', 'Δ°C', 'Δ°F', '9'],
    ['0', 'psig', 'kPa', '101.325'],
    ['0', 'bar gauge', 'kPa', '101.325'],
    ['0', 'kPa gauge', 'bar', '1.01325'],
    ['1', 'bar', 'kPa', '100'],
    ['0.64516', 'psia', 'kPa', '4.4482216152605'],
    ['1', 'kW', 'W', '1000'],
    ['3600', 'Btu/h', 'W', '1055.05585262'],
    ['1', 'ton', 'Btu/h', '12000'],
  ] as const)('%s %s is, in %s, %s exactly', (value, from, to, expected) => {
    expect(between(value, from, to).toString()).toBe(expected);
  });

  test('absolute zero is the same in every scale, and a gauge’s zero is the atmosphere', () => {
    expect(convert(0, 'K', '°F').toString()).toBe('-459.67');
    expect(convert(0, 'K', '°C').toString()).toBe('-273.15');
    expect(convert(0, 'psig', 'psia').toFixed(9)).toBe('14.695948776');
  });
});
