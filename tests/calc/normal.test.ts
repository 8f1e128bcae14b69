import normalCdfOf from '@stdlib/stats-base-dists-normal-cdf';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  conformance,
  erf,
  falseAccept,
  guardedWord,
  normalCdf,
  normalQuantile,
  standardUncertainty,
} from '../../engine/calc/normal.ts';

const z = fc.integer({ min: -7000, max: 7000 }).map((n) => n / 1000);

describe('the normal distribution', () => {
  test('erf: known figures, to twelve digits', () => {
    expect(['0', '0.5', '1', '2', '3'].map((x) => erf(x).toFixed(12))).toEqual([
      '0.000000000000',
      '0.520499877813',
      '0.842700792950',
      '0.995322265019',
      '0.999977909503',
    ]);
  });
  test('erf is odd, rises, and ends at ±1', () => {
    fc.assert(
      fc.property(z, (x) => {
        expect(erf(-x).plus(erf(x)).abs().lt('1e-40')).toBe(true);
        expect(erf(x + 0.01).gt(erf(x))).toBe(true);
      }),
      { numRuns: 12 },
    );
    expect([erf(12.001), erf(-12.001), erf('1e6')].map(Number)).toEqual([1, -1, 1]);
    expect(erf(12).minus(1).abs().lt('1e-45')).toBe(true);
    expect(erf(6).minus(1).toPrecision(6)).toBe('-2.15197e-17');
  });
  test('Φ agrees with an independent library', () => {
    fc.assert(
      fc.property(z, (x) => {
        expect(Math.abs(normalCdf(x).toNumber() - normalCdfOf(x, 0, 1))).toBeLessThan(1e-12);
      }),
      { numRuns: 30 },
    );
  });
  test('quantile and Φ undo each other', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 9999 }), (n) => {
        const p = n / 10_000;
        expect(normalCdf(normalQuantile(p)).minus(p).abs().lt('1e-25')).toBe(true);
      }),
      { numRuns: 8 },
    );
    expect(normalQuantile('0.5').toNumber()).toBe(0);
    expect(() => normalQuantile('0.00009')).toThrow('share out of range');
    expect(() => normalQuantile('0.99991')).toThrow('share out of range');
    expect(normalQuantile('0.0001').toFixed(3)).toBe('-3.719');
    expect(normalQuantile('0.9999').toFixed(3)).toBe('3.719');
  });
});

describe('conformance', () => {
  test('each side alone, both, and neither', () => {
    expect(conformance(10, 1, { low: 10 }).toFixed(6)).toBe('0.500000');
    expect(conformance(10, 1, { high: 10 }).toFixed(6)).toBe('0.500000');
    expect(conformance(10, 1, { low: 9, high: 11 }).toFixed(6)).toBe('0.682689');
    expect(conformance(10, 2, { low: 9, high: 11 }).toFixed(6)).toBe('0.382925');
    expect(conformance(10, 1, {}).toNumber()).toBe(1);
    expect(conformance(9, 1, { low: 10, high: 12 }).toFixed(6)).toBe('0.157305');
  });
  test('a/√3', () => {
    expect(standardUncertainty(3).pow(2).toFixed(20)).toBe('3.00000000000000000000');
  });
  test('accepted wrongly: half at the limit, less with a guard band', () => {
    expect([falseAccept(0), falseAccept(1), falseAccept(1, 3), falseAccept(2, 1)].map((p) => p.toFixed(6))).toEqual([
      '0.500000',
      '0.022750',
      '0.001350',
      '0.022750',
    ]);
  });
  test.each([
    [44, 1, 'pass'],
    ['43.9999', 1, 'undecided'],
    [40, 1, 'undecided'],
    ['39.9999', 1, 'fail'],
    [46, 1, 'pass'],
    ['46.0001', 1, 'undecided'],
    [50, 1, 'undecided'],
    ['50.0001', 1, 'fail'],
  ])('42 to 48, %s ± 2·%s: %s', (reading, u, word) => {
    expect(guardedWord(reading, u, { low: 42, high: 48 })).toBe(word);
  });
  test('one-sided, and another coverage', () => {
    expect(guardedWord(44, 1, { low: 42 })).toBe('pass');
    expect(guardedWord(39, 1, { low: 42 })).toBe('fail');
    expect(guardedWord(41, 1, { low: 42 })).toBe('undecided');
    expect(guardedWord(1000, 1, { low: 42 })).toBe('pass');
    expect(guardedWord(46, 1, { high: 48 })).toBe('pass');
    expect(guardedWord(51, 1, { high: 48 })).toBe('fail');
    expect(guardedWord(0, 1, { high: 48 })).toBe('pass');
    expect(guardedWord(47, 1, { high: 48 })).toBe('undecided');
    expect(guardedWord(45, 1, { low: 42 }, 3)).toBe('pass');
    expect(guardedWord('44.9', 1, { low: 42 }, 3)).toBe('undecided');
    expect(guardedWord(5, 1, {})).toBe('pass');
  });
});
