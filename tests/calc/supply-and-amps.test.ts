import fc from 'fast-check';
import { expect, test } from 'vitest';
import { microfaradsUnderLoad, shareOf } from '../../engine/calc/amps.ts';
import { dropPercent, ratedRangeVolts, unbalancePercent } from '../../engine/calc/supply.ts';

const volts = fc.integer({ min: 100, max: 6000 }).map((n) => n / 10);

test('±10 % of a rating is exact and lies alike on both sides', () => {
  expect(ratedRangeVolts(208, 10).low.toString()).toBe('187.2');
  fc.assert(
    fc.property(volts, (v) => {
      const { low, high } = ratedRangeVolts(v, 10);
      expect(low.plus(high).div(2).eq(v)).toBe(true);
    }),
  );
});

test('a drop is in % of where it began', () => {
  expect(dropPercent(240, 216).toString()).toBe('10');
  expect(dropPercent(240, 240).toString()).toBe('0');
  expect(dropPercent(240, 0).toString()).toBe('100');
});

test('unbalance doesn’t care for the order of the phases, is never negative, zero only for equal volts', () => {
  fc.assert(
    fc.property(volts, volts, volts, (a, b, c) => {
      const here = unbalancePercent([a, b, c]);
      expect(here.eq(unbalancePercent([c, a, b]))).toBe(true);
      expect(here.gte(0)).toBe(true);
      expect(here.isZero()).toBe(a === b && b === c);
    }),
  );
  expect(() => unbalancePercent([])).toThrow('no voltages');
});

test('a current is a share of the plate’s', () => {
  expect(shareOf(19, 20).toString()).toBe('0.95');
});

test('µF under load: twice the amps, twice the µF; twice the volts, half', () => {
  const base = microfaradsUnderLoad(5, 345, 60);
  expect(microfaradsUnderLoad(10, 345, 60).minus(base.times(2)).abs().lt('1e-40')).toBe(true);
  expect(microfaradsUnderLoad(5, 690, 60).minus(base.div(2)).abs().lt('1e-40')).toBe(true);
});
