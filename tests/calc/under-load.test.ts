import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { microfaradsUnderLoad } from '../../engine/calc/amps.ts';
import { underLoad } from '../../engine/calc/under-load.ts';

const CLAMP = { percent: 2, counts: 5, resolution: '0.01' };
const VOLTS = { percent: 1, counts: 3, resolution: '0.1' };
const EXACT = { percent: 0, counts: 0, resolution: 1 };

describe('µF from amps and volts, with the doubt of both', () => {
  test('the ends of both doubts make the window', () => {
    // 5.85 A ± 0.167, 345 V ± 3.75.
    const found = underLoad('5.85', CLAMP, 345, VOLTS, 60);
    expect(found?.microfarads.eq(microfaradsUnderLoad('5.85', 345, 60))).toBe(true);
    expect(found?.window.low.eq(microfaradsUnderLoad('5.683', '348.75', 60))).toBe(true);
    expect(found?.window.high.eq(microfaradsUnderLoad('6.017', '341.25', 60))).toBe(true);
  });
  test('with exact meters nothing is left open', () => {
    const found = underLoad(5, EXACT, 400, EXACT, 50);
    expect([found?.window.low, found?.microfarads, found?.window.high].map((x) => x?.toFixed(4))).toEqual([
      '39.7887',
      '39.7887',
      '39.7887',
    ]);
  });
  test('volts that may be zero bound nothing, amps that may be zero make the low end zero', () => {
    expect(underLoad(5, CLAMP, 0, VOLTS, 60)).toBeNull();
    expect(underLoad(5, CLAMP, '0.3', VOLTS, 60)).toBeNull();
    expect(underLoad(5, CLAMP, '0.31', VOLTS, 60)).not.toBeNull();
    expect(underLoad(5, EXACT, 0, EXACT, 60)).toBeNull();
    expect(underLoad('0.05', CLAMP, 345, VOLTS, 60)?.window.low.toNumber()).toBe(0);
  });
  test('the true value is inside, whatever the meters do within their accuracy', () => {
    const part = fc.integer({ min: -100, max: 100 }).map((n) => n / 100);
    fc.assert(
      fc.property(
        fc.integer({ min: 20, max: 900 }),
        fc.integer({ min: 150, max: 500 }),
        part,
        part,
        (tenths, volts, i, v) => {
          const amps = (tenths / 10) * 2e-6 * Math.PI * 60 * volts;
          // What a meter may show of it: the doubt is a share of what it shows.
          const shownAmps = (amps + i * 0.05) / (1 - i * 0.02);
          const shownVolts = (volts + v * 0.3) / (1 - v * 0.01);
          const found = underLoad(Math.max(0, shownAmps), CLAMP, shownVolts, VOLTS, 60);
          expect(found?.window.low.lte(tenths / 10 + 1e-9)).toBe(true);
          expect(found?.window.high.gte(tenths / 10 - 1e-9)).toBe(true);
        },
      ),
    );
  });
});
