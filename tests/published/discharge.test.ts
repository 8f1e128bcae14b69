/** Discharge through a resistor: figures exact to the digits shown (physics), limits with their source beside them. */
import { describe, expect, test } from 'vitest';
import { energyJoules, peakVolts, peakWatts, secondsTo, tauSeconds, voltsAfter } from '../../engine/calc/discharge.ts';

/** Six significant digits, as the published table prints them. */
const six = (v: { toPrecision(n: number): string }): number => Number(v.toPrecision(6));

describe('the table (physics)', () => {
  test.each([
    [45, 20_000, 440, 622.254, 0.9, '204.842', 2.1051, 2.26919, 2.61629, 4.34152, 19.36],
    [45, 20_000, 370, 523.259, 0.9, '172.253', 1.94916, 2.11325, 2.46034, 4.18557, 13.69],
    [45, 15_000, 440, 622.254, 0.675, '141.439', 1.57883, 1.70189, 1.96222, 3.25614, 25.8133],
    [80, 20_000, 440, 622.254, 1.6, '333.069', 3.74241, 4.03412, 4.65118, 7.71826, 19.36],
    [5, 20_000, 440, 622.254, 0.1, '0.028250', 0.2339, 0.252133, 0.290699, 0.482391, 19.36],
  ])('%d µF, %d Ω, %d V', (c, r, rms, peak, tau, after, to60, to50, to34, to5, watts) => {
    const from = peakVolts(rms);
    expect(six(from)).toBe(peak);
    expect(tauSeconds(c, r).toNumber()).toBe(tau);
    expect(voltsAfter(from, c, r, 1).toFixed(after.split('.')[1]?.length ?? 0)).toBe(after);
    for (const [to, seconds] of [
      [60, to60],
      [50, to50],
      [34, to34],
      [5, to5],
    ] as const) {
      expect(six(secondsTo(from, to, c, r))).toBe(seconds);
    }
    expect(six(peakWatts(from, r))).toBe(watts);
  });
  test('another oracle: ngspice gave 228.6704 V at 0.90096 s (circuit simulator, our run)', () => {
    expect(voltsAfter(peakVolts(440), 45, 20_000, '0.90096').toFixed(3)).toBe('228.670');
  });
});

describe('energy (physics)', () => {
  test.each([
    [45, 440, '8.7120'],
    [45, 370, '6.1605'],
    [5, 440, '0.9680'],
    [5, 370, '0.6845'],
    [80, 440, '15.4880'],
    [80, 370, '10.9520'],
  ])('%d µF at √2·%d V: %s J', (c, rms, joules) => {
    expect(energyJoules(c, peakVolts(rms)).toFixed(4)).toBe(joules);
  });
  test('a 45 µF 440 V part lies under 10 J, an 80 µF part over (10 J at ≥ 100 V: a US laboratory’s shock threshold, read)', () => {
    expect(energyJoules(45, peakVolts(440)).lt(10)).toBe(true);
    expect(energyJoules(80, peakVolts(440)).gt(10)).toBe(true);
  });
  test('five time constants leave 0.67379 % (physics)', () => {
    expect(voltsAfter(100, 45, 20_000, '4.5').toFixed(5)).toBe('0.67379');
    expect(voltsAfter(peakVolts(440), 45, 20_000, '4.5').toFixed(3)).toBe('4.193');
  });
});

describe('published limits', () => {
  const from = peakVolts(440);
  test('60 V within 5 s needs at most 47 503.6 Ω (NFPA 79 6.5.1, secondary source; arithmetic)', () => {
    expect(secondsTo(from, 60, 45, '47503.6').lte('5.00001')).toBe(true);
    expect(secondsTo(from, 60, 45, '47504').gt(5)).toBe(true);
  });
  test('50 V within 60 s needs at most 528 822 Ω (NEC 460.6, secondary source; arithmetic)', () => {
    expect(secondsTo(from, 50, 45, 528_822).lte('60.0001')).toBe(true);
    expect(secondsTo(from, 50, 45, 528_900).gt(60)).toBe(true);
  });
  test('34 V after 1 s (plug pins, secondary source) is not met by the tool on 45 µF: hold longer (arithmetic)', () => {
    expect(voltsAfter(from, 45, 20_000, 1).gt(34)).toBe(true);
  });
  test('a 10 MΩ voltmeter on 45 µF has a time constant of 450 s: it proves, it does not discharge (physics)', () => {
    expect(tauSeconds(45, 10_000_000).toNumber()).toBe(450);
  });
});

describe('wrong figures in circulation', () => {
  test('a 2 W resistor is not within its rating at first: 19.36 W, as a pulse of 8.7 J (arithmetic)', () => {
    expect(peakWatts(peakVolts(440), 20_000).gt(2)).toBe(true);
  });
  test('the rating taken as the peak, without √2, would hold too short (arithmetic)', () => {
    expect(secondsTo(440, 5, 45, 20_000).lt(secondsTo(peakVolts(440), 5, 45, 20_000))).toBe(true);
  });
});
