import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { mccAmps, microfaradsUnderLoad, rlaAmps, runningOf, shareOf } from '../../engine/calc/amps.ts';
import { Exact, type Figure } from '../../engine/calc/exact.ts';
import {
  deratingShare,
  dropPercent,
  extraRisePercent,
  fitsOtherRating,
  highLegTimes,
  isSinglePhased,
  legsOf,
  nameplateRangeVolts,
  ratedRangeVolts,
  type ThreeVolts,
  unbalancePercent,
} from '../../engine/calc/supply.ts';

const volts = fc.integer({ min: 100, max: 6000 }).map((n) => n / 10);
const three = (a: Figure, b: Figure, c: Figure): ThreeVolts => [new Exact(a), new Exact(b), new Exact(c)];
const range = (low: Figure, high: Figure) => ({ low: new Exact(low), high: new Exact(high) });

test('±10 % of a rating is exact and lies alike on both sides', () => {
  expect(ratedRangeVolts(208, 10).low.toString()).toBe('187.2');
  fc.assert(
    fc.property(volts, (v) => {
      const { low, high } = ratedRangeVolts(v, 10);
      expect(low.plus(high).div(2).eq(v)).toBe(true);
    }),
  );
});

describe('the range by the volts printed on a nameplate', () => {
  const dual = range(197, 253);
  const said = (...rated: Figure[]): string | null => {
    const found = nameplateRangeVolts(rated, 10, dual);
    return found && `${found.low}–${found.high}`;
  };
  test('208/230 has its own, in either order; the rest goes by the percentage', () => {
    expect(nameplateRangeVolts(['208', '230'], 10, dual)).toBe(dual);
    expect(nameplateRangeVolts(['230', '208'], 10, dual)).toBe(dual);
    expect(said('230')).toBe('207–253');
    expect(said('208')).toBe('187.2–228.8');
    expect(said('208', '240')).toBe('187.2–264');
    expect(said('200', '230')).toBe('180–253');
    expect(said('460', '208', '230')).toBe('187.2–506');
    expect(said('1000', '208')).toBe('187.2–1100');
  });
  test('nothing printed is no range; a rating of zero is refused', () => {
    expect(said()).toBe(null);
    expect(() => said(0)).toThrow('a rated voltage must be above zero');
    expect(() => said(230, -208)).toThrow(RangeError);
    expect(() => said(Number.NaN)).toThrow(RangeError);
    expect(() => said(Number.POSITIVE_INFINITY)).toThrow(RangeError);
  });
});

test('a reading may fit another nameplate than 208/230 V, to the limit', () => {
  const fits = (volts: string): boolean => fitsOtherRating(volts, '10');
  expect(['103.5', '126.5', '414', '506', '517.5', '632.5'].map(fits)).toEqual(Array(6).fill(true));
  expect(['103.4', '126.6', '208', '230', '277', '413.9', '506.1', '632.6'].map(fits)).toEqual(Array(8).fill(false));
});

test('a drop is in % of where it began', () => {
  expect(dropPercent(240, 216).toString()).toBe('10');
  expect(dropPercent(240, 240).toString()).toBe('0');
  expect(dropPercent(240, 0).toString()).toBe('100');
});

describe('unbalance', () => {
  test('doesn’t care for the order of the phases, is never negative, zero only for equal volts', () => {
    fc.assert(
      fc.property(volts, volts, volts, (a, b, c) => {
        const here = unbalancePercent([a, b, c]);
        expect(here.eq(unbalancePercent([c, a, b]))).toBe(true);
        expect(here.gte(0)).toBe(true);
        expect(here.isZero()).toBe(a === b && b === c);
      }),
    );
  });
  test('is the same in volts and in kilovolts, and never past 200 %', () => {
    fc.assert(
      fc.property(volts, volts, volts, (a, b, c) => {
        const here = unbalancePercent([a, b, c]);
        const kilo = unbalancePercent([a, b, c].map((v) => new Exact(v).div(1000)));
        expect(here.minus(kilo).abs().lt('1e-40')).toBe(true);
        expect(here.lte(200)).toBe(true);
      }),
    );
  });
  test('is refused where it has no meaning', () => {
    expect(() => unbalancePercent([])).toThrow('no voltages');
    expect(() => unbalancePercent([0, 0, 0])).toThrow('the mean must be above zero');
    expect(() => unbalancePercent([1, -1, 5])).toThrow('a voltage must not be below zero');
    expect(unbalancePercent([0, 0, 3]).toString()).toBe('200');
  });
  test('heat rises with its square', () => {
    expect(extraRisePercent(0).toString()).toBe('0');
    expect(extraRisePercent('3.5').toString()).toBe('24.5');
    expect(() => extraRisePercent(-1)).toThrow('the unbalance must not be below zero');
  });
  test('derating goes straight between the points, falls, and ends at 5 %', () => {
    const at = (percent: Figure): string | undefined => deratingShare(percent)?.toString();
    expect([0, 1, 2, 3, 4, 5].map(at)).toEqual(['1', '1', '0.95', '0.88', '0.82', '0.75']);
    expect([at('0.5'), at('1.5'), at('2.25'), at('4.5')]).toEqual(['1', '0.975', '0.9325', '0.785']);
    expect(deratingShare('5.0001')).toBe(null);
    expect(deratingShare(17)).toBe(null);
    expect(() => deratingShare('-0.1')).toThrow('the unbalance must not be below zero');
    const percent = fc.integer({ min: 0, max: 5000 }).map((n) => n / 1000);
    fc.assert(
      fc.property(percent, percent, (a, b) => {
        const [less, more] = a < b ? [a, b] : [b, a];
        expect(deratingShare(more)?.lte(deratingShare(less) ?? 0)).toBe(true);
      }),
    );
  });
});

describe('two legs', () => {
  const of = (l1l2: Figure, l1g: Figure, l2g: Figure) => legsOf(...three(l1l2, l1g, l2g), 197, 50);
  test.each([
    ['sound', [240, 120, 120], 'present'],
    ['low but both there', [150, 75, 75], 'present'],
    ['just too low to be a supply, both there', [196.99, 120, 120], 'present'],
    ['nothing at all', [0, 0, 0], 'absent'],
    ['under what counts as alive', [49.99, 49.99, 49.99], 'absent'],
    ['one pair alive is not absent', [0, 50, 0], 'lost'],
    ['only across', [50, 0, 0], 'lost'],
    ['through a load', [0.4, 121, 120], 'lost'],
    ['through a load, on the limit', [50, 120, 120], 'present'],
    ['no load, first leg', [120, 0, 120], 'lost'],
    ['no load, second leg', [120, 120, 49.99], 'lost'],
    ['a grounded leg with full volts across', [240, 0, 240], 'present'],
    ['a grounded leg on the lower limit', [197, 0, 197], 'present'],
    ['a grounded leg below it', [196.99, 0, 197], 'lost'],
  ] as const)('%s', (_, [a, b, c], expected) => {
    expect(of(a, b, c)).toBe(expected);
  });
  test('the legs may be swapped', () => {
    fc.assert(
      fc.property(volts, volts, volts, (a, b, c) => {
        expect(of(a, b, c)).toBe(of(a, c, b));
      }),
    );
  });
});

describe('three lines', () => {
  const single = (a: Figure, b: Figure, c: Figure): boolean => isSinglePhased(three(a, b, c), range(187, 253), 65);
  test('one right and two far below is single-phasing, in any order', () => {
    expect(single(230, 115, 115)).toBe(true);
    expect(single(115, 230, 115)).toBe(true);
    expect(single(115, 115, 230)).toBe(true);
    expect(single(230, 0, 0)).toBe(true);
    expect(single(230, 0, 149.5)).toBe(true);
    expect(single(230, 0, 149.51)).toBe(false);
    expect(single(230, 230, 0)).toBe(false);
    expect(single(187, 90, 90)).toBe(true);
    expect(single(186.99, 90, 90)).toBe(false);
    expect(single(253, 120, 120)).toBe(true);
    expect(single(253.01, 120, 120)).toBe(false);
  });
  test('a high leg reads √3 times the others, which are alike', () => {
    const leg = (a: Figure, b: Figure, c: Figure) => highLegTimes(three(a, b, c), 10);
    expect(leg(120, 208, 120)?.volts.toString()).toBe('208');
    expect(leg(120, 208, 120)?.times.toFixed(4)).toBe('1.7333');
    expect(leg(133, 133, 133)).toBe(null);
    expect(leg(100, 110, 182)?.times.toFixed(4)).toBe('1.7333');
    expect(leg(100, 110.01, 182)).toBe(null);
    expect(leg(100, 100, 190.52)).not.toBe(null);
    expect(leg(100, 100, 190.53)).toBe(null);
    expect(leg(100, 100, 155.89)).not.toBe(null);
    expect(leg(100, 100, 155.88)).toBe(null);
    expect(leg(0, 0, 208)).toBe(null);
    expect(leg(0, 0, 0)).toBe(null);
  });
});

describe('a compressor’s amps', () => {
  const plate = (rla: Figure | null, lra: Figure | null, mcc: Figure | null) => ({
    rlaAmps: rla === null ? null : new Exact(rla),
    lraAmps: lra === null ? null : new Exact(lra),
    mccAmps: mcc === null ? null : new Exact(mcc),
  });
  const word = (amps: Figure, of = plate(20, 100, '31.2')) => runningOf(new Exact(amps), of, '0.8', '0.5');
  test.each([
    [0, 'not running'],
    [0.499, 'not running'],
    [0.5, 'running'],
    [20, 'running'],
    [20.001, 'above RLA'],
    [31.2, 'above RLA'],
    [31.201, 'above MCC'],
    [79.999, 'above MCC'],
    [80, 'not starting'],
    [200, 'not starting'],
  ])('%d A: %s', (amps, expected) => {
    expect(word(amps)).toBe(expected);
  });
  test('what the plate doesn’t say can’t be told', () => {
    expect(word(14, plate(null, null, null))).toBe(null);
    expect(word(14, plate(20, null, null))).toBe('running');
    expect(word(20.001, plate(20, null, null))).toBe(null);
    expect(word(14, plate(null, 100, null))).toBe('running');
    expect(word(80, plate(null, 100, null))).toBe('not starting');
    expect(word(32, plate(null, null, 31))).toBe('above MCC');
    expect(word(30, plate(null, null, 31))).toBe(null);
  });
  test('shares, MCC and RLA', () => {
    expect(shareOf(19, 20).toString()).toBe('0.95');
    fc.assert(
      fc.property(volts, fc.constantFrom('1.4', '1.44', '1.56'), (amps, ratio) => {
        expect(rlaAmps(mccAmps(amps, ratio), ratio).minus(amps).abs().lt('1e-40')).toBe(true);
      }),
    );
    expect(() => mccAmps(0, '1.56')).toThrow('RLA must be above zero');
    expect(() => mccAmps(20, 0)).toThrow('the ratio must be above zero');
    expect(() => rlaAmps(0, '1.56')).toThrow('MCC must be above zero');
    expect(() => rlaAmps(20, -1)).toThrow('the ratio must be above zero');
  });
});

test('µF under load: twice the amps, twice the µF; twice the volts, half', () => {
  const base = microfaradsUnderLoad(5, 345, 60);
  expect(microfaradsUnderLoad(10, 345, 60).minus(base.times(2)).abs().lt('1e-40')).toBe(true);
  expect(microfaradsUnderLoad(5, 690, 60).minus(base.div(2)).abs().lt('1e-40')).toBe(true);
});
