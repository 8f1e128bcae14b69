import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { Exact } from '../../engine/calc/exact.ts';
import { hermFanBand, parallelMicrofarads, seriesMicrofarads, tripleFits } from '../../engine/calc/series.ts';
import { limitsMicrofarads } from '../../engine/calc/tolerance.ts';
import type { Meter } from '../../engine/schema.ts';

const METER: Meter = { percent: '1.9', counts: 2, fine: '0.01', coarse: '0.1', split: '10', known: true };
const ASSUMED: Meter = { percent: '3', counts: 5, fine: '0.1', coarse: '0.1', split: '10', known: false };
const microfarads = fc.integer({ min: 1, max: 20_000 }).map((n) => n / 100);

describe('series and parallel', () => {
  test('don’t care which is which; series is below either, parallel above', () => {
    fc.assert(
      fc.property(microfarads, microfarads, (a, b) => {
        expect(seriesMicrofarads(a, b).eq(seriesMicrofarads(b, a))).toBe(true);
        expect(seriesMicrofarads(a, b).lt(Math.min(a, b))).toBe(true);
        expect(parallelMicrofarads(a, b).gt(Math.max(a, b))).toBe(true);
      }),
    );
  });
  test('an open section leaves nothing in series', () => {
    expect(seriesMicrofarads(45, 0).toString()).toBe('0');
    expect(seriesMicrofarads(0, 0).toString()).toBe('0');
  });
});

describe('three readings', () => {
  test('of one part fit, in either order of the sections, as the meter shows them', () => {
    fc.assert(
      fc.property(microfarads, microfarads, fc.constantFrom(METER, ASSUMED), (a, b, meter) => {
        const shown = (v: Exact): Exact => v.toDecimalPlaces(v.lt(meter.split) && meter.known ? 2 : 1);
        const [x, y, z] = [shown(new Exact(a)), shown(new Exact(b)), shown(seriesMicrofarads(a, b))];
        expect(tripleFits(meter, x, y, z)).toBe(true);
        expect(tripleFits(meter, y, x, z)).toBe(true);
      }),
    );
  });
  test('HERM–FAN read for FAN doesn’t fit on a good meter, and may on the assumed one', () => {
    expect(tripleFits(METER, 45, '4.5', '4.5')).toBe(false);
    expect(tripleFits(ASSUMED, 45, '4.5', '4.5')).toBe(true);
  });
  test('an open FAN section fits', () => {
    expect(tripleFits(METER, '44.6', '0.02', '0.02')).toBe(true);
  });
});

describe('the HERM–FAN band', () => {
  test('is where a good FAN section reads with its lead on HERM', () => {
    const at = (v: number) => ({ low: new Exact(v), high: new Exact(v) });
    const band = hermFanBand(at(45), limitsMicrofarads(5, 6, 6));
    expect([band.low.toFixed(4), band.high.toFixed(4)]).toEqual(['4.2555', '4.7416']);
  });
});
