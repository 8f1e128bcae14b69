import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { peakVolts, peakWatts, secondsTo } from '../../engine/calc/discharge.ts';
import { leastOhms, mostOhms, type Resistor, resistorsFor, suitability } from '../../engine/calc/discharge-resistor.ts';

const LIMITS = { peakTimes: 5, energySeconds: 5, holdSeconds: 30 };
const part = (microfarads: number | string, volts: number | string) => ({ microfarads, fromVolts: volts, toVolts: 5 });
const resistor = (ohms: number | string, watts: number | string, of: Partial<Resistor> = {}): Resistor => ({
  ...{ id: `${ohms} Ω`, ohms, watts, volts: 1000 },
  ...of,
});
const against = (...of: Parameters<typeof suitability>): string => suitability(...of).against.join(' ');

describe('a resistor for a part', () => {
  test('the usual tool on the usual part', () => {
    const found = suitability({ ...part(45, 0), fromVolts: peakVolts(440) }, resistor(20_000, 5), LIMITS);
    expect(found.against).toEqual([]);
    expect(found.peakWatts.toFixed(2)).toBe('19.36');
    expect(found.joules.toFixed(4)).toBe('8.7120');
    expect(found.seconds.toFixed(5)).toBe('4.34152');
  });
  test('each thing that speaks against it, on its limit and past it', () => {
    // 100 V on 400 Ω: 25 W, five times 5 W. 5 000 µF at 100 V: 25 J, the energy of 5 s.
    expect(against(part(1, 100), resistor(400, 5), LIMITS)).toBe('');
    expect(against(part(1, 100), resistor('399.9', 5), LIMITS)).toBe('peak');
    expect(against(part(5000, 100), resistor(1000, 5), LIMITS)).toBe('');
    expect(against(part(5001, 100), resistor(1000, 5), LIMITS)).toBe('energy');
    expect(against(part(1, 100), resistor(1000, 5, { volts: 100 }), LIMITS)).toBe('');
    expect(against(part(1, 100), resistor(1000, 5, { volts: '99.9' }), LIMITS)).toBe('volts');
    const slow = { ...LIMITS, holdSeconds: secondsTo(100, 5, 1, 1000) };
    expect(against(part(1, 100), resistor(1000, 5), slow)).toBe('');
    expect(against(part(1, 100), resistor('1000.1', 5), slow)).toBe('slow');
    expect(against(part(9000, 700), resistor(100, 1, { volts: 1 }), { ...LIMITS, holdSeconds: 1 })).toBe(
      'volts peak energy slow',
    );
  });
  test('the suitable first, the quickest in front; of equals by id', () => {
    const all = [
      resistor(400, 1, { id: 'hot' }),
      resistor(30_000, 5, { id: 'slow' }),
      resistor(20_000, 5, { id: 'b' }),
      resistor(20_000, 9, { id: 'a' }),
      resistor(30_000, 5, { id: 'frail', volts: 10 }),
    ];
    expect(resistorsFor(part(45, 622), all, LIMITS).map((r) => r.id)).toEqual(['a', 'b', 'slow', 'hot', 'frail']);
    expect(resistorsFor(part(45, 622), [...all].reverse(), LIMITS).map((r) => r.id)).toEqual([
      'a',
      'b',
      'slow',
      'hot',
      'frail',
    ]);
  });
  test('most ohms and least ohms undo time and power', () => {
    const n = fc.integer({ min: 1, max: 500 });
    fc.assert(
      fc.property(n, n, n, (microfarads, volts, seconds) => {
        const of = { microfarads, fromVolts: volts + 10, toVolts: 5 };
        expect(
          secondsTo(volts + 10, 5, microfarads, mostOhms(of, seconds))
            .minus(seconds)
            .abs()
            .lt('1e-40'),
        ).toBe(true);
        expect(peakWatts(volts, leastOhms(volts, seconds)).minus(seconds).abs().lt('1e-40')).toBe(true);
      }),
    );
  });
});
