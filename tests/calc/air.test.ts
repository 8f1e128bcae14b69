import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  differenceBtuPerPound,
  differenceFahrenheit,
  latentBtuPerHour,
  latentBtuPerHourByRatio,
  sensibleBtuPerHour,
  totalBtuPerHour,
} from '../../engine/calc/air/heat.ts';
import { byHumidity, byWetBulb, enthalpyBtuPerPound, type MoistAir } from '../../engine/calc/air/moist-air.ts';
import { expectedSplit } from '../../engine/calc/air/split.ts';

const cfm = fc.integer({ min: 100, max: 4000 });
const degrees = fc.integer({ min: -500, max: 500 }).map((n) => n / 10);
const dry = fc.integer({ min: 600, max: 950 }).map((n) => n / 10);
const percent = fc.integer({ min: 0, max: 1000 }).map((n) => n / 10);
const MODEL = { cfmPerTon: 400, leavingHumidityPercent: 90, capacityPercentPerDegree: '1.75', dryCoilPercent: 90 };
const air = (found: MoistAir | null): MoistAir => {
  if (!found) throw new Error('no such air');
  return found;
};
const splitAt = (t: number, rh: number): number => expectedSplit(air(byHumidity(t, rh)), MODEL).toNumber();

describe('heat of moving air', () => {
  test('load to difference and back', () => {
    fc.assert(
      fc.property(cfm, degrees, (flow, difference) => {
        const sensible = differenceFahrenheit(sensibleBtuPerHour(flow, difference), flow);
        const total = differenceBtuPerPound(totalBtuPerHour(flow, difference), flow);
        for (const back of [sensible, total]) expect(back.minus(difference).abs().lt('1e-40')).toBe(true);
      }),
    );
  });
  test('exact figures', () => {
    expect(sensibleBtuPerHour(1200, 20).toString()).toBe('25920');
    expect(totalBtuPerHour(1200, '7').toString()).toBe('37800');
    expect(latentBtuPerHour(1200, 20).toString()).toBe('16320');
    expect(latentBtuPerHourByRatio(1200, '0.003').toString()).toBe('17424');
    expect(differenceBtuPerPound(36_000, 1200).toFixed(4)).toBe('6.6667');
    expect(differenceFahrenheit(25_920, 1200).toString()).toBe('20');
  });
});

describe('moist air', () => {
  test('by humidity and by the wet-bulb that it has: the same air', () => {
    fc.assert(
      fc.property(dry, fc.integer({ min: 5, max: 100 }), (t, rh) => {
        const [one, other] = [
          air(byHumidity(t, rh)),
          air(byWetBulb(t, Math.min(t, air(byHumidity(t, rh)).wetBulbFahrenheit))),
        ];
        expect(other.relativeHumidityPercent).toBeCloseTo(one.relativeHumidityPercent, 0);
        expect(other.enthalpyBtuPerPound).toBeCloseTo(one.enthalpyBtuPerPound, 1);
        expect(one.relativeHumidityPercent).toBeCloseTo(rh, 6);
      }),
    );
  });
  test('saturated air has its dry-bulb as wet-bulb', () => {
    expect(air(byWetBulb(75, 75)).relativeHumidityPercent).toBeCloseTo(100, 6);
    expect(air(byHumidity(75, 100)).wetBulbFahrenheit).toBeCloseTo(75, 2);
    expect(air(byHumidity(75, 100)).dryBulbFahrenheit).toBe(75);
    expect(air(byWetBulb(75, 63)).wetBulbFahrenheit).toBe(63);
  });
  test.each([
    [75, 75.1],
    [75, 40],
    [150.1, 75],
    [-0.1, -1],
    [75, -0.1],
    [Number.NaN, 60],
  ])('no air has %d °F and a wet-bulb of %d °F', (t, wet) => {
    expect(byWetBulb(t, wet)).toBeNull();
  });
  test.each([
    [75, -0.1],
    [75, 100.1],
    [150.1, 50],
    [-0.1, 50],
    [75, Number.NaN],
  ])('nor %d °F at %d %%', (t, rh) => {
    expect(byHumidity(t, rh)).toBeNull();
  });
  test('the ends of the range are in', () => {
    for (const found of [
      byWetBulb(150, 150),
      byWetBulb(0, 0),
      byHumidity(0, 0),
      byHumidity(150, 100),
      byHumidity(0, 100),
    ])
      expect(found).not.toBeNull();
  });
  test('enthalpy rises with temperature and with humidity', () => {
    fc.assert(
      fc.property(dry, fc.integer({ min: 0, max: 99 }), (t, rh) => {
        expect(enthalpyBtuPerPound(t + 0.1, rh)).toBeGreaterThan(enthalpyBtuPerPound(t, rh));
        expect(enthalpyBtuPerPound(t, rh + 1)).toBeGreaterThan(enthalpyBtuPerPound(t, rh));
      }),
    );
    expect(enthalpyBtuPerPound(77, 100)).toBeCloseTo(40.4725, 3);
  });
});

describe('expected split', () => {
  test('falls as the air gets damper, never over a dry coil’s, never under zero, in tenths', () => {
    fc.assert(
      fc.property(dry, percent, percent, (t, a, b) => {
        const [drier, damper] = [Math.min(a, b), Math.max(a, b)];
        expect(splitAt(t, damper)).toBeLessThanOrEqual(splitAt(t, drier));
        expect(splitAt(t, drier)).toBeLessThanOrEqual(25);
        expect(splitAt(t, damper)).toBeGreaterThan(0);
        expect(Number.isInteger(Math.round(splitAt(t, a) * 1e6) / 1e5)).toBe(true);
      }),
    );
  });
  test('known points of the model', () => {
    const at = (t: number, wet: number, model = MODEL) => expectedSplit(air(byWetBulb(t, wet)), model).toString();
    expect([at(80, 57), at(80, 63), at(80, 67), at(80, 72), at(75, 63)]).toEqual(['25', '25', '20.6', '15.1', '19.9']);
    // More air per ton, a smaller split; at the rating's wet-bulb the slope of capacity says nothing.
    expect(at(80, 67, { ...MODEL, cfmPerTon: 350 })).toBe('22.2');
    expect(at(80, 67, { ...MODEL, capacityPercentPerDegree: '0' })).toBe('20.6');
    expect(at(80, 63, { ...MODEL, capacityPercentPerDegree: '0', dryCoilPercent: 100 })).toBe('25.8');
    expect(at(80, 67, { ...MODEL, leavingHumidityPercent: 95 })).toBe('21.6');
    expect(at(80, 57, { ...MODEL, dryCoilPercent: 80 })).toBe('22.2');
  });
});
