/** A meter's doubt and what may be decided with it. Our model is rectangular; the normal one stands beside it here. */
import { describe, expect, test } from 'vitest';
import { doubtOf, shareInside, windowMicrofarads, wordOf } from '../../engine/calc/doubt.ts';
import { Exact } from '../../engine/calc/exact.ts';
import { limitsMicrofarads } from '../../engine/calc/tolerance.ts';
import type { Meter } from '../../engine/schema.ts';

/** ±(1.9 % + 2 × 0.1 µF), an invented specification. */
const METER: Meter = { percent: '1.9', counts: 2, fine: '0.1', coarse: '0.1', split: '10', known: true };
/** Only the lower limit of 45 µF ±6 % matters for these readings. */
const lower = { low: limitsMicrofarads(45, 6, 6).low, high: new Exact(1000) };

test('±(0.7 % + 2 counts of 0.1) at 120.0 V is a window of 118.96 to 121.04 (trade forum example, secondary source)', () => {
  const doubt = doubtOf('0.7', 2, '0.1', '120.0');
  expect(doubt.toFixed(4)).toBe('1.0400');
  expect([new Exact(120).minus(doubt).toFixed(2), new Exact(120).plus(doubt).toFixed(2)]).toEqual(['118.96', '121.04']);
});

describe('rectangular: P = clamp((y + a − TL)/2a) (arithmetic)', () => {
  test.each([
    ['41.0', '0.000000'],
    ['42.0', '0.349699'],
    ['42.3', '0.500000'],
    ['43.0', '0.844149'],
  ])('%s µF against 42.30: %s', (reading, share) => {
    expect(shareInside(windowMicrofarads(METER, reading), lower).toFixed(6)).toBe(share);
  });
  test('41.0 reaches 41.979, still under 42.30: fail', () => {
    expect(windowMicrofarads(METER, '41.0').high.toFixed(3)).toBe('41.979');
    expect(wordOf('41.0', windowMicrofarads(METER, '41.0'), lower)).toBe('fail');
  });
});

describe('the normal model decides otherwise near a limit, so the model is named with each verdict', () => {
  test.each([
    // Φ((y − TL)/(a/√3)), oracles: two libraries' normal distribution.
    ['42.0', 0.301302],
    ['43.0', 0.883402],
  ])('%s µF: %d there', (reading, normal) => {
    const ours = shareInside(windowMicrofarads(METER, reading), lower).toNumber();
    expect(Math.abs(ours - normal)).toBeGreaterThan(0.03);
  });
  test('standard uncertainty of a bare specification is a/√3 (GUM 4.3.7, value from memory; arithmetic)', () => {
    const u = (reading: string): string => doubtOf('1.9', 2, '0.1', reading).div(new Exact(3).sqrt()).toFixed(6);
    expect([u('41.0'), u('42.0'), u('43.0'), u('44.0')]).toEqual(['0.565226', '0.576196', '0.587165', '0.598135']);
  });
});

describe('four words (ILAC-G8:09/2019, non-binary rule, secondary source)', () => {
  test.each([
    ['44.0', 'pass'],
    ['42.8', 'conditional pass'],
    ['42.0', 'conditional fail'],
    ['41.0', 'fail'],
  ])('%s µF on 45 µF ±6 %%: %s', (reading, word) => {
    expect(wordOf(reading, windowMicrofarads(METER, reading), limitsMicrofarads(45, 6, 6))).toBe(word);
  });
  test('to prove conformity the whole doubt is inside, to prove the contrary all of it outside (ISO 14253-1, summary)', () => {
    const limits = limitsMicrofarads(45, 6, 6);
    const at = (reading: string) => windowMicrofarads(METER, reading);
    expect(at('44.0').low.gte(limits.low)).toBe(true);
    expect(at('41.0').high.lt(limits.low)).toBe(true);
  });
});
