import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { HEAT_CATEGORIES, heatCategory, heatIndexFahrenheit } from '../../engine/calc/air/heat-index.ts';
import { mostUrgent, stepUp, URGENCIES, urgencyOfHeat } from '../../engine/calc/air/urgency.ts';

const index = (t: number, rh: number): number => heatIndexFahrenheit(t, rh).toNumber();
const humidity = fc.integer({ min: 0, max: 100 });
const FROM = { caution: 80, extremeCaution: 90, danger: 103, extremeDanger: 125 };

describe('heat index', () => {
  test('is a finite figure for any air people live in', () => {
    fc.assert(
      fc.property(fc.integer({ min: -20, max: 140 }), humidity, (t, rh) => {
        expect(Number.isFinite(index(t, rh))).toBe(true);
      }),
    );
  });
  test('rises with the temperature below 80 °F and from 81 to 110 °F', () => {
    fc.assert(
      fc.property(
        fc.oneof(fc.integer({ min: 0, max: 78 }), fc.integer({ min: 88, max: 110 })),
        fc.integer({ min: 40, max: 84 }),
        (t, rh) => {
          expect(index(t + 1, rh)).toBeGreaterThan(index(t, rh));
        },
      ),
    );
  });
  test('the simple form below 80 °F, the regression from there on', () => {
    expect(heatIndexFahrenheit(75, 50).toString()).toBe('74.775');
    expect(heatIndexFahrenheit(80, 40).toString()).toBe('79.79');
    expect(heatIndexFahrenheit(80, '48.9').toFixed(5)).toBe('79.99915');
    expect(heatIndexFahrenheit(80, 49).toFixed(5)).toBe('80.70950');
    // Under 80 °F the regression has no adjustment, however damp it is.
    expect(heatIndexFahrenheit(79, 100).toFixed(5)).toBe('83.80053');
  });
  test.each([
    [100, 13, '95.34715'],
    [100, '12.9', '95.30327'],
    [95, 5, '88.17678'],
    [90, 5, '84.45174'],
    [112, 5, '103.65057'],
    ['112.1', 5, '103.72855'],
    [85, 85, '99.11403'],
    [85, 86, '99.63421'],
    [87, 90, '109.18319'],
    ['87.1', 90, '109.58171'],
    [80, 90, '86.34189'],
    ['79.9', 90, '85.36780'],
  ])('%s °F at %s %%: %s', (t, rh, expected) => {
    expect(heatIndexFahrenheit(t, rh).toFixed(5)).toBe(expected);
  });
});

describe('categories', () => {
  test.each([
    [79.99, 'none'],
    [80, 'caution'],
    [89.99, 'caution'],
    [90, 'extreme-caution'],
    [102.99, 'extreme-caution'],
    [103, 'danger'],
    [124.99, 'danger'],
    [125, 'extreme-danger'],
    [400, 'extreme-danger'],
    [-50, 'none'],
  ])('%d: %s', (at, expected) => {
    expect(heatCategory(at, FROM)).toBe(expected);
  });
});

describe('urgency', () => {
  test('by heat', () => {
    expect(HEAT_CATEGORIES.map(urgencyOfHeat)).toEqual(['soon', 'soon', 'today', 'first', 'now']);
  });
  test('one step up, and now stays now', () => {
    expect(URGENCIES.map(stepUp)).toEqual(['today', 'first', 'now', 'now']);
  });
  test('the most urgent counts, whatever the order', () => {
    fc.assert(
      fc.property(fc.array(fc.constantFrom(...URGENCIES), { minLength: 1 }), (all) => {
        const most = mostUrgent(all);
        expect(all).toContain(most);
        expect(all.every((one) => URGENCIES.indexOf(one) <= URGENCIES.indexOf(most))).toBe(true);
      }),
    );
    expect(mostUrgent([])).toBe('soon');
  });
});
