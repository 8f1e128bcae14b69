import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { plainWord } from '../../engine/calc/doubt.ts';
import { Exact } from '../../engine/calc/exact.ts';
import { deviationPercent, limitsMicrofarads } from '../../engine/calc/tolerance.ts';

const rated = fc.integer({ min: 1, max: 40_000 }).map((n) => new Exact(n).div(100));
const percent = fc.integer({ min: 0, max: 200 }).map((n) => new Exact(n).div(10));

describe('limits of a section', () => {
  test('are exact decimals where binary floating point is not', () => {
    expect(40 * 0.94).not.toBe(37.6);
    expect(limitsMicrofarads(40, 6, 6)).toEqual({ low: new Exact('37.6'), high: new Exact('42.4') });
    expect(limitsMicrofarads('7.5', '6', '6')).toEqual({ low: new Exact('7.05'), high: new Exact('7.95') });
    expect(limitsMicrofarads(10, 5, 10)).toEqual({ low: new Exact('9.5'), high: new Exact(11) });
  });

  test('a reading on a limit is in and the next figure is out, in µF, nF and pF', () => {
    fc.assert(
      fc.property(rated, percent, percent, fc.constantFrom(1, 1000, 1_000_000), (c, below, above, per) => {
        const limits = limitsMicrofarads(c, below, above);
        const step = new Exact('0.0000001');
        for (const limit of [limits.low, limits.high])
          expect(plainWord(limit.times(per).div(per), limits)).toBe('pass');
        expect(plainWord(limits.low.minus(step), limits)).toBe('fail');
        expect(plainWord(limits.high.plus(step), limits)).toBe('fail');
      }),
    );
  });

  test('no figure of a whole hundredth is ever lost: what is added can be taken away', () => {
    fc.assert(
      fc.property(rated, percent, (c, p) => {
        const { low, high } = limitsMicrofarads(c, p, p);
        expect(high.plus(low).div(2).eq(c)).toBe(true);
        if (!p.isZero()) expect(deviationPercent(high, c).eq(p)).toBe(true);
      }),
    );
  });
});
