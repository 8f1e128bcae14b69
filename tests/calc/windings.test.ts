import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { Exact, type Figure } from '../../engine/calc/exact.ts';
import {
  areEqual,
  doubtOhms,
  isAboveDoubt,
  misfitPercent,
  type OhmsDoubt,
  openPattern,
  type Pair,
  spreadPercent,
  sumRule,
  terminalsFromOhms,
} from '../../engine/calc/windings.ts';

const DOUBT: OhmsDoubt = { percent: 1, counts: 3, resolutionOhms: '0.1' };
const NONE: OhmsDoubt = { percent: 0, counts: 0, resolutionOhms: '0.1' };
const ohms = fc.integer({ min: 1, max: 100_000 }).map((n) => new Exact(n).div(1000));
const pair = (one: string, other: string, r: Figure): Pair => ({ ends: [one, other], ohms: new Exact(r) });

test('doubt is a share of the reading and some counts', () => {
  expect(doubtOhms(DOUBT, 50).toString()).toBe('0.8');
  expect(doubtOhms(NONE, 50).toString()).toBe('0');
  expect(isAboveDoubt(DOUBT, new Exact('0.303'))).toBe(false);
  expect(isAboveDoubt(DOUBT, new Exact('0.304'))).toBe(true);
  expect(isAboveDoubt(NONE, new Exact(0))).toBe(false);
  expect(isAboveDoubt({ ...NONE, counts: 1 }, new Exact('0.1'))).toBe(false);
});

describe('the sum rule', () => {
  test('a misfit of the doubts together fits, more doesn’t, on both sides', () => {
    // Doubts: 0.3 + 1 % of 15, 11 and 4 are 1.2 together.
    expect(sumRule(DOUBT, 15, 11, 4)).toEqual({
      misfitOhms: new Exact(0),
      doubtOhms: new Exact('1.2'),
      fits: true,
    });
    const exactly = { ...NONE, counts: 1 };
    expect(sumRule(exactly, '15.3', 11, 4).fits).toBe(true);
    expect(sumRule(exactly, '15.301', 11, 4).fits).toBe(false);
    expect(sumRule(exactly, '14.7', 11, 4).fits).toBe(true);
    expect(sumRule(exactly, '14.699', 11, 4).fits).toBe(false);
    expect(sumRule(exactly, '14.7', 11, 4).misfitOhms.toString()).toBe('-0.3');
  });
  test('two windings in series fit whatever they are', () => {
    fc.assert(
      fc.property(ohms, ohms, (a, b) => {
        expect(sumRule(NONE, a.plus(b), a, b).fits).toBe(true);
      }),
    );
  });
  test('is the same in Ω and in mΩ', () => {
    fc.assert(
      fc.property(ohms, ohms, ohms, (l, a, b) => {
        const milli = { ...DOUBT, resolutionOhms: 100 };
        const [ml, ma, mb] = [l, a, b].map((r) => r.times(1000)) as [Exact, Exact, Exact];
        expect(sumRule(milli, ml, ma, mb).fits).toBe(sumRule(DOUBT, l, a, b).fits);
      }),
    );
  });
  test('refuses what is no resistance; the misfit is a share of the sum, without sign', () => {
    expect(() => sumRule(DOUBT, 15, -1, 4)).toThrow('a resistance must not be below zero');
    expect(() => sumRule(DOUBT, Number.NaN, 1, 4)).toThrow(RangeError);
    expect(misfitPercent(8, 7, 6).toFixed(4)).toBe('38.4615');
    expect(misfitPercent(18, 7, 6).toFixed(4)).toBe('38.4615');
  });
});

describe('terminals from three ohm figures', () => {
  const found = (r12: Figure, r13: Figure, r23: Figure): string => {
    const t = terminalsFromOhms([pair('1', '2', r12), pair('1', '3', r13), pair('2', '3', r23)], DOUBT);
    return `${t.common}${t.start}${t.run}`;
  };
  test.each([
    ['312', 6, 4, 2],
    ['321', 6, 2, 4],
    ['213', 4, 6, 2],
    ['231', 2, 6, 4],
    ['123', 4, 2, 6],
    ['132', 2, 4, 6],
  ] as const)('C, S, R are %s', (names, r12, r13, r23) => {
    expect(found(r12, r13, r23)).toBe(names);
  });
  test('renaming the terminals renames the answer and nothing else', () => {
    const names = fc.shuffledSubarray(['a', 'b', 'c'], { minLength: 3 }) as fc.Arbitrary<[string, string, string]>;
    const run = fc.integer({ min: 300, max: 5000 }).map((n) => new Exact(n).div(1000));
    const more = fc.integer({ min: 1, max: 20_000 }).map((n) => new Exact(n).div(1000));
    const order = fc.shuffledSubarray([0, 1, 2], { minLength: 3 });
    fc.assert(
      fc.property(names, run, more, order, fc.boolean(), ([c, s, r], cr, further, at, flip) => {
        const cs = cr.plus(further);
        const ends = (one: string, other: string, of: Exact): Pair =>
          flip ? pair(other, one, of) : pair(one, other, of);
        const all = [ends(c, r, cr), ends(c, s, cs), ends(s, r, cr.plus(cs))];
        const shuffled = at.map((i) => all[i]) as [Pair, Pair, Pair];
        const t = terminalsFromOhms(shuffled, DOUBT);
        expect([t.common, t.start, t.run]).toEqual([c, s, r]);
        expect(t.rule.fits).toBe(true);
        expect(t.rule.misfitOhms.isZero()).toBe(true);
        const apart = (a: Exact, b: Exact): boolean => a.minus(b).gt(doubtOhms(DOUBT, a).plus(doubtOhms(DOUBT, b)));
        expect(t.told).toBe(apart(cs, cr) && apart(cr.plus(cs), cs));
      }),
    );
  });
  test('terminals are told apart only past both doubts', () => {
    const told = (cr: Figure, cs: Figure, sr: Figure): boolean =>
      terminalsFromOhms([pair('C', 'R', cr), pair('C', 'S', cs), pair('S', 'R', sr)], { ...NONE, counts: 1 }).told;
    expect(told(4, '4.2', 9)).toBe(false);
    expect(told(4, '4.201', 9)).toBe(true);
    expect(told(4, 9, '9.2')).toBe(false);
    expect(told(4, 9, '9.201')).toBe(true);
  });
});

test('every pattern of open pairs', () => {
  const of = (cr: boolean, cs: boolean, sr: boolean) => openPattern({ cr, cs, sr });
  expect([
    of(false, false, false),
    of(true, true, false),
    of(false, true, true),
    of(true, false, true),
    of(true, true, true),
    of(true, false, false),
    of(false, true, false),
    of(false, false, true),
  ]).toEqual(['none', 'common', 'start', 'run', 'all', 'impossible', 'impossible', 'impossible']);
});

describe('three equal pairs', () => {
  const equal = (a: Figure, b: Figure, c: Figure, percent: Figure = 5, doubt = NONE): boolean =>
    areEqual([new Exact(a), new Exact(b), new Exact(c)], percent, doubt);
  test('by share of the mean, or by the doubt of the outer two', () => {
    expect(spreadPercent([1, 2, 3]).toString()).toBe('100');
    expect(spreadPercent([2, 2]).toString()).toBe('0');
    expect(spreadPercent([0, 3]).toString()).toBe('200');
    expect(equal(39, 40, 41, 5)).toBe(true);
    expect(equal(39, 40, '41.01', 5)).toBe(false);
    expect(equal('0.5', '0.6', '0.7', 5, { ...NONE, counts: 1 })).toBe(true);
    expect(equal('0.5', '0.6', '0.701', 5, { ...NONE, counts: 1 })).toBe(false);
    expect(equal(0, 0, 0, 5, NONE)).toBe(true);
  });
  test('order says nothing; zero and negative spreads are refused', () => {
    fc.assert(
      fc.property(ohms, ohms, ohms, (a, b, c) => {
        expect(equal(a, b, c, 5, DOUBT)).toBe(equal(c, a, b, 5, DOUBT));
        expect(spreadPercent([a, b, c]).gte(0)).toBe(true);
      }),
    );
    expect(() => spreadPercent([0, 0, 0])).toThrow('all resistances are zero');
    expect(() => spreadPercent([1, -1])).toThrow('a resistance must not be below zero');
  });
});
