import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  acrossSwitch,
  ampsOf,
  type Hop,
  hop,
  impedanceOhms,
  isClassTwo,
  secondaryVolts,
  shareVolts,
} from '../../engine/calc/control-circuit.ts';
import { Exact } from '../../engine/calc/exact.ts';

const LIMITS = { closedVolts: '0.5', openVolts: 20 };
/** Places a, b, c …; null where nobody read. */
const along = (...volts: (number | string | null)[]): string => {
  const readings = volts.map((v, i) => ({ name: 'abcdef'[i] ?? '?', volts: v === null ? null : new Exact(v) }));
  return shown(hop(readings, LIMITS));
};
const shown = (found: Hop): string => {
  if (found.is === 'nothing') return `nothing at ${found.at}`;
  if (found.is === 'low') return `low at ${found.at}: ${found.volts}`;
  if (found.is === 'open') return `open ${found.device}: ${found.beforeVolts} to ${found.afterVolts}`;
  return found.is === 'drop' ? `drop ${found.device}: ${found.dropVolts}` : found.is;
};

describe('along a series of switches', () => {
  test.each([
    [[25.6, 25.6, 25.6], 'through'],
    [[25.6, 25.6, 0, 0], 'open c: 25.6 to 0'],
    [[25.6, 0, 0], 'open b: 25.6 to 0'],
    [[25.6, null, 0], 'open c: 25.6 to 0'],
    [[null, 25.6, 0], 'open c: 25.6 to 0'],
    [[0, 0, 0], 'nothing at a'],
    [['0.49'], 'nothing at a'],
    [['0.5', 0], 'low at a: 0.5'],
    [['19.99', 0], 'low at a: 19.99'],
    [[20, 20], 'through'],
    [[20, 0], 'open b: 20 to 0'],
    [[20, '0.49'], 'open b: 20 to 0.49'],
    [[20, '0.5'], 'drop b: 19.5'],
    [['20.5', '0.5'], 'open b: 20.5 to 0.5'],
    [['25.6', '25.11'], 'through'],
    [['25.6', '25.1'], 'drop b: 0.5'],
    [['25.6', '25.2', '24.8'], 'through'],
    [['25.6', '25.2', '24.7'], 'drop c: 0.5'],
    [[-25.6, -25.6, 0], 'open c: 25.6 to 0'],
    [[25.6, 26.6], 'through'],
    [[25.6], 'unread'],
    [[25.6, null], 'unread'],
    [[null, null], 'unread'],
    [[], 'unread'],
  ])('%j: %s', (volts, expected) => {
    expect(along(...volts)).toBe(expected);
  });
  test('one open switch among any number is found, wherever it is', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 5 }), fc.integer({ min: 200, max: 280 }), (at, tenths) => {
        const volts = Array.from({ length: 6 }, (_, i) => (i < at ? tenths / 10 : 0));
        expect(along(...volts)).toBe(`open ${'abcdef'[at]}: ${tenths / 10} to 0`);
      }),
    );
  });
});

describe('across a switch', () => {
  test.each([
    [20, 'open'],
    [-25.6, 'open'],
    ['19.99', 'neither'],
    ['0.5', 'neither'],
    ['0.49', 'closed'],
    [0, 'closed'],
    ['-0.1', 'closed'],
    [-5, 'neither'],
  ])('%s V is %s', (volts, is) => {
    expect(acrossSwitch(volts, LIMITS)).toBe(is);
  });
});

describe('coils and transformers', () => {
  test('shares of rated volts', () => {
    const { low, high } = shareVolts(24, 85, 110);
    expect([low.toFixed(), high.toFixed()]).toEqual(['20.4', '26.4']);
  });
  test('amps, impedance and volts undo each other', () => {
    const figure = fc.integer({ min: 10, max: 5000 }).map((n) => n / 10);
    fc.assert(
      fc.property(figure, figure, (va, volts) => {
        expect(ampsOf(va, volts).times(impedanceOhms(va, volts)).minus(volts).abs().lt('1e-40')).toBe(true);
        expect(secondaryVolts(24, volts, volts).toFixed(20)).toBe('24.00000000000000000000');
        expect(secondaryVolts(24, volts, volts * 2).toFixed(20)).toBe('48.00000000000000000000');
      }),
    );
  });
  test.each([
    [30, 100, true],
    ['30.01', 100, false],
    [30, '100.01', false],
    [24, 40, true],
  ])('class 2 at %s V, %s VA: %s', (volts, va, is) => {
    expect(isClassTwo(volts, va)).toBe(is);
  });
});
