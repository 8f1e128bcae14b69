import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { energyJoules, holdSeconds, peakVolts, peakWatts, secondsTo, voltsAfter } from '../../engine/calc/discharge.ts';

const microfarads = fc.integer({ min: 10, max: 4000 }).map((n) => n / 10);
const ohms = fc.integer({ min: 1000, max: 100_000 });
const volts = fc.integer({ min: 50, max: 700 });

describe('a discharge', () => {
  test('held for its time has reached the volts it was held for', () => {
    fc.assert(
      fc.property(microfarads, ohms, volts, fc.integer({ min: 1, max: 49 }), (c, r, from, to) => {
        const left = voltsAfter(from, c, r, secondsTo(from, to, c, r));
        expect(left.minus(to).abs().lt('1e-30')).toBe(true);
      }),
    );
  });
  test('takes longer for more µF, more Ω, and fewer volts left', () => {
    fc.assert(
      fc.property(microfarads, ohms, volts, (c, r, from) => {
        const base = secondsTo(from, 10, c, r);
        expect(secondsTo(from, 10, c + 1, r).gt(base)).toBe(true);
        expect(secondsTo(from, 10, c, r + 1).gt(base)).toBe(true);
        expect(secondsTo(from, 9, c, r).gt(base)).toBe(true);
      }),
    );
  });
  test('is over where it begins below', () => {
    expect(secondsTo(4, 5, 45, 20_000).toString()).toBe('0');
    expect(secondsTo(5, 5, 45, 20_000).toString()).toBe('0');
  });
  test('is held in whole seconds, up, never under the floor', () => {
    expect(['0', '4.34', '5', '5.0001', '7.72'].map((s) => holdSeconds(s, 5).toNumber())).toEqual([5, 5, 5, 6, 8]);
  });
  test('turns all its energy into heat in the resistor: P0·τ/2 = ½CV²', () => {
    fc.assert(
      fc.property(microfarads, ohms, volts, (c, r, v) => {
        const heat = peakWatts(v, r).times(r).times(c).div(2_000_000);
        expect(heat.minus(energyJoules(c, v)).abs().lt('1e-30')).toBe(true);
      }),
    );
  });
  test('begins at √2 of the rating', () => {
    expect(
      peakVolts(440)
        .pow(2)
        .minus(2 * 440 * 440)
        .abs()
        .lt('1e-40'),
    ).toBe(true);
  });
});
