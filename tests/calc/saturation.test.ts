import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { mayBurn, REFRIGERANTS, type Refrigerant } from '../../engine/calc/refrigerant/refrigerants.ts';
import {
  accuracyPercentOf,
  type Saturated,
  saturationFahrenheit,
  saturationKilopascals,
} from '../../engine/calc/refrigerant/saturation.ts';
import { FLUIDS } from '../../engine/calc/refrigerant/saturation-curves.ts';
import {
  bubbleFahrenheit,
  dewFahrenheit,
  subcooling,
  superheat,
  targetSuperheat,
} from '../../engine/calc/refrigerant/superheat.ts';
import { convert } from '../../engine/calc/units.ts';

const fluid = fc.constantFrom(...REFRIGERANTS);
const curve = fc.constantFrom('bubble' as const, 'dew' as const);
const temperature = fc.integer({ min: -40_000, max: 150_000 }).map((n) => n / 1000);
const value = (found: Saturated): number => {
  if (!found.ok) throw new Error(`refused: ${found.why}`);
  return found.value.toNumber();
};
const why = (found: Saturated): string => (found.ok ? `found ${found.value}` : found.why);
const at = (r: Refrigerant, fahrenheit: number) => value(saturationKilopascals(r, 'dew', fahrenheit));

describe('saturation', () => {
  test('temperature to pressure and back is the same temperature', () => {
    fc.assert(
      fc.property(fluid, curve, temperature, (r, line, t) => {
        expect(value(saturationFahrenheit(r, line, value(saturationKilopascals(r, line, t))))).toBeCloseTo(t, 8);
      }),
      { numRuns: 500 },
    );
  });

  test('pressure rises with temperature', () => {
    fc.assert(
      fc.property(fluid, curve, temperature, fc.integer({ min: 1, max: 1000 }), (r, line, t, more) => {
        const higher = Math.min(150, t + more / 1000);
        fc.pre(higher > t);
        expect(value(saturationKilopascals(r, line, higher))).toBeGreaterThan(value(saturationKilopascals(r, line, t)));
      }),
    );
  });

  test('bubble is never under dew, and they are one line for a pure fluid alone', () => {
    fc.assert(
      fc.property(fluid, temperature, (r, t) => {
        const glide = value(saturationKilopascals(r, 'bubble', t)) / at(r, t);
        const pure = ['R-22', 'R-32', 'R-134a', 'R-290'].includes(r);
        expect(pure ? glide === 1 : glide > 1 && glide < 1.07).toBe(true);
      }),
    );
  });

  test.each(REFRIGERANTS)('%s: the ends of the range are in, a hundredth of a degree outside is out', (r) => {
    expect(value(saturationFahrenheit(r, 'dew', at(r, -40)))).toBeCloseTo(-40, 6);
    expect(value(saturationFahrenheit(r, 'dew', at(r, 150)))).toBeCloseTo(150, 6);
    expect(why(saturationKilopascals(r, 'dew', -40.01))).toBe('low');
    expect(why(saturationKilopascals(r, 'dew', 150.01))).toBe('high');
    expect(why(saturationFahrenheit(r, 'dew', at(r, -40) * 0.9999))).toBe('low');
    expect(why(saturationFahrenheit(r, 'dew', at(r, 150) * 1.0001))).toBe('high');
    for (const nothing of [0, -1, -101.325]) expect(why(saturationFahrenheit(r, 'dew', nothing))).toBe('low');
  });

  test('at the critical point and above there is no saturation', () => {
    // Tr of R-410A is 344.494 K, 160.4192 °F.
    expect(why(saturationKilopascals('R-410A', 'bubble', convert('344.494', 'K', '°F').plus('1e-9')))).toBe('critical');
    expect(why(saturationKilopascals('R-410A', 'bubble', '160.41'))).toBe('high');
    expect(why(saturationKilopascals('R-410A', 'dew', 500))).toBe('critical');
    expect(why(saturationFahrenheit('R-410A', 'bubble', '4901.2'))).toBe('critical');
    expect(why(saturationFahrenheit('R-410A', 'bubble', '4901.19'))).toBe('high');
    // R-454B is known by points only, and ends with them.
    expect(why(saturationKilopascals('R-454B', 'dew', 500))).toBe('high');
    expect(why(saturationFahrenheit('R-454B', 'dew', 99_999))).toBe('high');
  });

  test('a figure of R-454B’s table is given back as it stands, and lies between its neighbours elsewhere', () => {
    const { dew } = FLUIDS['R-454B'].curves;
    if (dew.kind !== 'points') throw new Error('no points');
    dew.kilopascals.forEach((pressure, i) => {
      expect(at('R-454B', -40 + 10 * i)).toBeCloseTo(pressure, 8);
    });
    expect(at('R-454B', 45)).toBeCloseTo(917.22, 0);
  });

  test('the accuracy that is stated for each', () => {
    expect(REFRIGERANTS.map(accuracyPercentOf)).toEqual(['0.019', '0.011', '0.0092', '0.016', '0.5', '1.5', '1.5']);
  });

  test('no reading in tenths of a psi lies so near the middle of two tenths of a degree that a last bit could turn it', () => {
    const nearMiddle = (found: Saturated): boolean => {
      const beyond = found.ok ? (found.value.toNumber() * 10 + 10_000.5) % 1 : 0.5;
      return Math.min(beyond, 1 - beyond) < 1e-9;
    };
    const near: string[] = [];
    for (const r of REFRIGERANTS)
      for (let tenths = -146; tenths <= 8000; tenths += 3) {
        const kilopascals = (tenths / 10 + 14.69594877551345) * 6.894757293168361;
        for (const line of ['dew', 'bubble'] as const)
          if (nearMiddle(saturationFahrenheit(r, line, kilopascals))) near.push(`${r} ${line} ${tenths / 10} psig`);
      }
    expect(near).toEqual([]);
  });
});

describe('superheat and subcooling', () => {
  const line = fc.integer({ min: -400, max: 1500 }).map((n) => n / 10);
  test('a warmer suction line is more superheat, a warmer liquid line less subcooling, degree for degree', () => {
    fc.assert(
      fc.property(line, line, line, (saturation, a, b) => {
        const more = superheat(b, saturation).minus(superheat(a, saturation));
        expect(more.minus(b).plus(a).abs().lt('1e-9')).toBe(true);
        expect(subcooling(saturation, a).minus(subcooling(saturation, b)).minus(more).abs().lt('1e-9')).toBe(true);
      }),
    );
    expect(superheat(55, 45).toString()).toBe('10');
    expect(subcooling(105, 95).toString()).toBe('10');
  });

  test('superheat counts from dew and subcooling from bubble: with glide the bubble is the colder of the two', () => {
    for (const r of ['R-410A', 'R-404A', 'R-454B'] as const)
      expect(value(bubbleFahrenheit(r, 200))).toBeLessThan(value(dewFahrenheit(r, 200)));
    expect(value(dewFahrenheit('R-454B', 107.5))).toBeCloseTo(40, 1);
    expect(value(bubbleFahrenheit('R-454B', 113.2))).toBeCloseTo(40, 1);
  });

  test('the atmosphere counts: a gauge at zero is not a vacuum', () => {
    expect(value(dewFahrenheit('R-134a', 0))).toBeCloseTo(-14.93, 1);
    expect(why(dewFahrenheit('R-134a', -14.7))).toBe('low');
  });

  test('target of a fixed orifice: a degree of wet-bulb is worth 1.5, a degree outside half of one the other way', () => {
    expect(targetSuperheat(67, 95).toString()).toBe('13');
    expect(targetSuperheat(68, 95).minus(targetSuperheat(67, 95)).toString()).toBe('1.5');
    expect(targetSuperheat(67, 96).minus(targetSuperheat(67, 95)).toString()).toBe('-0.5');
  });
});

test('what may burn', () => {
  expect(REFRIGERANTS.filter(mayBurn)).toEqual(['R-32', 'R-290', 'R-454B']);
});
