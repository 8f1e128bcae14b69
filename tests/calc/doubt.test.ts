import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  doubtMicrofarads,
  plainWord,
  resolutionMicrofarads,
  shareInside,
  type Word,
  windowMicrofarads,
  wordOf,
} from '../../engine/calc/doubt.ts';
import { Exact, within } from '../../engine/calc/exact.ts';
import { limitsMicrofarads } from '../../engine/calc/tolerance.ts';
import type { Meter } from '../../engine/schema.ts';

const METER: Meter = { percent: '1.9', counts: 2, fine: '0.01', coarse: '0.1', split: '10', known: true };
const oneRange = fc
  .record({ percent: fc.integer({ min: 0, max: 60 }), counts: fc.integer({ min: 0, max: 10 }) })
  .map(({ percent, counts }): Meter => ({ ...METER, percent: String(percent / 10), counts, fine: '0.1' }));
const reading = fc.integer({ min: 0, max: 100_000 }).map((n) => new Exact(n).div(1000));
const rated = fc.integer({ min: 200, max: 9000 }).map((n) => new Exact(n).div(100));
const GRAVITY: Readonly<Record<Word, number>> = { pass: 0, 'conditional pass': 1, 'conditional fail': 2, fail: 3 };

describe('a meter’s doubt', () => {
  test('takes the finer resolution below the split and the coarser from the split on', () => {
    expect(resolutionMicrofarads(METER, '9.99').toString()).toBe('0.01');
    expect(resolutionMicrofarads(METER, '10').toString()).toBe('0.1');
    expect(doubtMicrofarads(METER, '38.4').toString()).toBe('0.9296');
    expect(doubtMicrofarads(METER, '4.91').toString()).toBe('0.11329');
  });
  test('never reaches below zero', () => {
    expect(windowMicrofarads(METER, '0.01').low.toString()).toBe('0');
  });
});

describe('words', () => {
  const limits = limitsMicrofarads(40, 6, 6);
  test.each([
    ['39.0', 'pass'],
    ['38.4', 'conditional pass'],
    ['37.6', 'conditional pass'],
    ['37.0', 'conditional fail'],
    ['36.0', 'fail'],
    ['43.0', 'conditional fail'],
    ['44.0', 'fail'],
  ])('%s µF on 40 ±6 %% is a %s', (value, word) => {
    expect(wordOf(value, windowMicrofarads(METER, value), limits)).toBe(word);
  });
  test('the whole doubt on the limits passes; past them it does not', () => {
    const window = (low: string, high: string) => ({ low: new Exact(low), high: new Exact(high) });
    expect(wordOf('40', window('37.6', '42.4'), limits)).toBe('pass');
    expect(wordOf('40', window('37.5999', '42.4'), limits)).toBe('conditional pass');
    expect(wordOf('37', window('36', '37.6'), limits)).toBe('conditional fail');
    expect(wordOf('37', window('36', '37.5999'), limits)).toBe('fail');
  });
  test('get no milder as a reading leaves the rating on one range of the meter', () => {
    fc.assert(
      fc.property(oneRange, rated, reading, reading, (meter, c, a, b) => {
        const here = limitsMicrofarads(c, 6, 6);
        const word = (r: Exact): number => GRAVITY[wordOf(r, windowMicrofarads(meter, r), here)];
        const [near, far] = a.minus(c).abs().lte(b.minus(c).abs()) ? [a, b] : [b, a];
        fc.pre(near.gte(c) === far.gte(c));
        expect(word(far)).toBeGreaterThanOrEqual(word(near));
      }),
    );
  });
  test('in or out is the same by both rules, and the share agrees with the word', () => {
    fc.assert(
      fc.property(oneRange, rated, reading, (meter, c, r) => {
        const here = limitsMicrofarads(c, 6, 6);
        const window = windowMicrofarads(meter, r);
        const word = wordOf(r, window, here);
        const share = shareInside(window, here);
        expect(plainWord(r, here) === 'pass').toBe(within(r, here));
        expect(GRAVITY[word] < 2).toBe(within(r, here));
        expect(share.gte(0) && share.lte(1)).toBe(true);
        if (word === 'pass') expect(share.eq(1)).toBe(true);
        if (word === 'fail') expect(share.isZero()).toBe(true);
      }),
    );
  });
  test('a meter without doubt knows pass and fail only', () => {
    fc.assert(
      fc.property(rated, reading, (c, r) => {
        const exact: Meter = { ...METER, percent: '0', counts: 0 };
        const here = limitsMicrofarads(c, 6, 6);
        expect(wordOf(r, windowMicrofarads(exact, r), here)).toBe(plainWord(r, here));
      }),
    );
  });
});

describe('the share inside', () => {
  const limits = limitsMicrofarads(40, 6, 6);
  test('of the worked readings', () => {
    const share = (r: string): string => shareInside(windowMicrofarads(METER, r), limits).toFixed(2);
    expect([share('38.4'), share('37.0'), share('37.4'), share('37.3'), share('40')]).toEqual([
      '0.93',
      '0.17',
      '0.39',
      '0.33',
      '1.00',
    ]);
  });
  test('of no doubt at all is all or nothing', () => {
    const at = (r: number): string => shareInside({ low: new Exact(r), high: new Exact(r) }, limits).toFixed();
    expect([at(38), at(30), at(50)]).toEqual(['1', '0', '0']);
  });
  test('of a doubt wider than the limits is less than all', () => {
    expect(shareInside({ low: new Exact(30), high: new Exact(50) }, limits).toFixed(2)).toBe('0.24');
  });
});
