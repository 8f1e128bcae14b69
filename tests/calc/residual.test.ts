import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { residualsAgree } from '../../engine/calc/residual.ts';

const volts = fc.integer({ min: -500, max: 500 }).map((n) => n / 100);

describe('three residuals', () => {
  test.each([
    [0.4, 0.1, 0.3, true],
    [0.6, 0.1, 0.5, true],
    [4, -3, 7, true],
    [4, 3, 1, true],
    [4, 3, 7, false],
    [0, 0, 0.5, true],
    [0, 0, 0.51, false],
    [3, 3, 3, false],
  ])('HERM–C %d, FAN–C %d, HERM–FAN %d: %s', (hc, fc, hf, fits) => {
    expect(residualsAgree(hc, fc, hf, 0.5)).toBe(fits);
  });
  test('of a real part agree, with the signs or without them where both have one sign', () => {
    fc.assert(
      fc.property(volts, volts, (hc, fc_) => {
        const hf = hc - fc_;
        expect(residualsAgree(hc, fc_, hf, '1e-9')).toBe(true);
        if (hc >= 0 === fc_ >= 0) expect(residualsAgree(Math.abs(hc), Math.abs(fc_), Math.abs(hf), '1e-9')).toBe(true);
      }),
    );
  });
});
