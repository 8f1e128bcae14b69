import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { fuseBoundAmps, mcaAmps, STANDARD_AMPS, standardAmpsDown } from '../../engine/calc/circuit.ts';
import { COPPER_CELSIUS, copperPerCelsius, ohmsAt, windingCelsius } from '../../engine/calc/copper.ts';
import { Exact, type Figure } from '../../engine/calc/exact.ts';
import { bandOfMegohms, enoughMegohms, factorTo40, megohmsAt40, oldRuleMegohms } from '../../engine/calc/insulation.ts';
import { leakMilliamps, ohmsForAmps } from '../../engine/calc/leakage.ts';
import { aboveZero, notBelowZero } from '../../engine/calc/refuse.ts';

const tenths = (min: number, max: number) => fc.integer({ min, max }).map((n) => new Exact(n).div(10));
const near = (a: Exact, b: Figure): boolean => a.minus(b).abs().lt('1e-35');

test('what makes no sense is refused by name', () => {
  expect(aboveZero('0.001', 'x').toString()).toBe('0.001');
  expect(notBelowZero(0, 'x').toString()).toBe('0');
  for (const bad of [0, -1, Number.NaN, Number.POSITIVE_INFINITY]) {
    expect(() => aboveZero(bad, 'the figure')).toThrow(new RangeError('the figure must be above zero'));
  }
  for (const bad of [-0.001, Number.NaN, Number.POSITIVE_INFINITY]) {
    expect(() => notBelowZero(bad, 'the figure')).toThrow(new RangeError('the figure must not be below zero'));
  }
});

describe('copper', () => {
  test('there and back is where it was; the hot ohms give the temperature back', () => {
    fc.assert(
      fc.property(tenths(1, 1000), tenths(-400, 1500), tenths(-400, 1500), (ohms, from, to) => {
        const hot = ohmsAt(ohms, from, to);
        expect(near(ohmsAt(hot, to, from), ohms)).toBe(true);
        expect(near(windingCelsius(ohms, from, hot), to)).toBe(true);
        expect(hot.gt(ohms)).toBe(to.gt(from));
      }),
    );
  });
  test('the coefficient is the same line', () => {
    expect(near(copperPerCelsius(20).times(80).plus(1), ohmsAt(1, 20, 100))).toBe(true);
    expect(COPPER_CELSIUS).toBe('234.5');
    expect(ohmsAt(2, 25, 75, 235).toFixed(6)).toBe('2.384615');
    expect(windingCelsius(2, 25, '2.6', 235).toFixed(2)).toBe('103.00');
    expect(copperPerCelsius(20, 235).toFixed(7)).toBe('0.0039216');
  });
  test('below the constant, and without ohms, it has no meaning', () => {
    expect(() => ohmsAt(0, 20, 75)).toThrow('the resistance must be above zero');
    expect(() => ohmsAt(1, '-234.5', 75)).toThrow('the temperature above the constant must be above zero');
    expect(() => ohmsAt(1, 20, -300)).toThrow('the temperature above the constant');
    expect(() => windingCelsius(0, 20, 2)).toThrow('the cold resistance must be above zero');
    expect(() => windingCelsius(2, 20, 0)).toThrow('the hot resistance must be above zero');
    expect(() => copperPerCelsius(-235)).toThrow(RangeError);
  });
});

describe('insulation', () => {
  test('halves for ten degrees more, is itself at 40 °C', () => {
    expect(factorTo40(40).toString()).toBe('1');
    expect(factorTo40(50).toString()).toBe('2');
    expect(megohmsAt40(20, 30).toString()).toBe('10');
    expect(megohmsAt40(0, 30).toString()).toBe('0');
    expect(() => megohmsAt40(-1, 30)).toThrow('the reading must not be below zero');
    fc.assert(
      fc.property(tenths(-200, 1200), (celsius) => {
        expect(near(factorTo40(celsius.plus(10)), factorTo40(celsius).times(2))).toBe(true);
      }),
    );
  });
  test('the old rule is kV + 1', () => {
    expect(oldRuleMegohms(0).toString()).toBe('1');
    expect(() => oldRuleMegohms(-1)).toThrow('the voltage must not be below zero');
  });
  test('the maker comes before the kind; nobody’s figure is none', () => {
    expect(enoughMegohms(50, 2)).toEqual({ by: 'maker', megohms: new Exact(50) });
    expect(enoughMegohms(null, 2)).toEqual({ by: 'kind', megohms: new Exact(2) });
    expect(enoughMegohms(null, null)).toBe(null);
    expect(() => enoughMegohms(0, 2)).toThrow('the maker’s figure must be above zero');
    expect(() => enoughMegohms(null, 0)).toThrow('the limit must be above zero');
  });
  test.each([
    ['100.01', 'good'],
    ['100', 'fair'],
    ['50', 'fair'],
    ['49.99', 'watch'],
    ['20', 'watch'],
    ['19.99', 'suspect'],
    ['0', 'suspect'],
  ])('%s MΩ: %s', (megohms, band) => {
    expect(bandOfMegohms(new Exact(megohms), 100, 50, 20)).toBe(band);
  });
});

test('leakage and the ohms for it are inverse', () => {
  expect(leakMilliamps(120, 24_000).toString()).toBe('5');
  expect(leakMilliamps(0, 24_000).toString()).toBe('0');
  expect(ohmsForAmps(120, 40).toString()).toBe('3');
  expect(() => leakMilliamps(120, 0)).toThrow('the resistance must be above zero');
  expect(() => leakMilliamps(-120, 5)).toThrow('the voltage must not be below zero');
  expect(() => ohmsForAmps(120, 0)).toThrow('the current must be above zero');
  expect(() => ohmsForAmps(-120, 5)).toThrow('the voltage must not be below zero');
  fc.assert(
    fc.property(tenths(1, 6000), tenths(1, 100_000), (volts, ohms) => {
      expect(near(ohmsForAmps(volts, leakMilliamps(volts, ohms).div(1000)), ohms)).toBe(true);
    }),
  );
});

describe('a unit’s circuit', () => {
  test('wires and fuse by the largest motor and the rest', () => {
    expect(mcaAmps(20, '2.5').toString()).toBe('27.5');
    expect(fuseBoundAmps(20, '2.5').toString()).toBe('47.5');
    expect(fuseBoundAmps(20, 0, '1.75').toString()).toBe('35');
    expect(() => mcaAmps(0, 1)).toThrow('RLA must be above zero');
    expect(() => mcaAmps(1, -1)).toThrow('the other loads must not be below zero');
    expect(() => fuseBoundAmps(20, 1, 0)).toThrow('the factor must be above zero');
  });
  test.each([
    ['14.99', null],
    ['15', 15],
    ['19.99', 15],
    ['45', 45],
    ['47.5', 45],
    ['49.99', 45],
    ['50', 50],
    ['59.99', 50],
    ['100', 100],
    ['109.99', 100],
    ['110', null],
  ])('%s A is rounded down to %s', (bound, size) => {
    expect(standardAmpsDown(bound)).toBe(size);
  });
  test('rounding down never goes up, and skips no size', () => {
    expect(() => standardAmpsDown(-1)).toThrow('the bound must not be below zero');
    fc.assert(
      fc.property(tenths(150, 1099), (bound) => {
        const size = standardAmpsDown(bound);
        expect(size).not.toBe(null);
        expect(bound.gte(size ?? Number.POSITIVE_INFINITY)).toBe(true);
        expect(STANDARD_AMPS.filter((s) => bound.gte(s) && s > (size ?? 0))).toEqual([]);
      }),
    );
  });
});
