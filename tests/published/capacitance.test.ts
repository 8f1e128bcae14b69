/** Published figures of run capacitors. Arithmetic is exact to the digits shown; printed examples name their page. */
import { describe, expect, test } from 'vitest';
import { microfaradsUnderLoad } from '../../engine/calc/amps.ts';
import { plainWord, windowMicrofarads, wordOf } from '../../engine/calc/doubt.ts';
import { parallelMicrofarads, seriesMicrofarads } from '../../engine/calc/series.ts';
import { limitsMicrofarads } from '../../engine/calc/tolerance.ts';
import { labelled, METER, parts } from '../judgements/fixture.ts';
import { run } from '../judgements/run.ts';

describe('limits by the printed tolerance (arithmetic)', () => {
  test.each([
    ['45', '6', '42.30', '47.70'],
    ['5', '6', '4.70', '5.30'],
    ['7.5', '6', '7.05', '7.95'],
    ['35', '6', '32.90', '37.10'],
    ['45', '5', '42.75', '47.25'],
    ['45', '10', '40.50', '49.50'],
  ])('%s µF ±%s %%: %s to %s', (rated, percent, low, high) => {
    const limits = limitsMicrofarads(rated, percent, percent);
    expect([limits.low.toFixed(2), limits.high.toFixed(2)]).toEqual([low, high]);
    expect(limits.low.eq(low) && limits.high.eq(high)).toBe(true);
  });
});

describe('µF from amps and volts across the capacitor', () => {
  const constant = (hertz: number) => microfaradsUnderLoad(1, 1, hertz);
  test('the constants 10⁶/(2πf) (arithmetic)', () => {
    expect(constant(60).toFixed(3)).toBe('2652.582');
    expect(constant(50).toFixed(3)).toBe('3183.099');
  });
  test('the trade’s rounded constants (arithmetic): 2652 is 0.022 % low, 2653 0.016 % high, 2650 0.10 % low', () => {
    const off = (rounded: number): string => constant(60).minus(rounded).times(100).div(constant(60)).toFixed(3);
    expect([off(2652), off(2653), off(2650)]).toEqual(['0.022', '-0.016', '0.097']);
  });
  test.each([
    // Trade-training page, printed "~74.5 µF" from 2652·8.3/295.4 (secondary source).
    ['8.3', '295.4', 60, '74.5309'],
    // Trade page, printed 7.61 µF, truncated from 7.6167 (secondary source).
    ['1.1', '383', 60, '7.6184'],
    // The rest: arithmetic.
    ['5.852787', '345', 60, '45.0000'],
    ['0.622035', '330', 60, '5.0000'],
    ['5', '400', 50, '39.7887'],
    // 8 Ω + 80 mH in series with 45 µF at 240 V 60 Hz: phasor algebra and ngspice agree on 8.032686 A, 473.497 V.
    ['8.032686', '473.497', 60, '45.0000'],
  ])('%s A at %s V, %d Hz: %s µF', (amps, volts, hertz, microfarads) => {
    expect(microfaradsUnderLoad(amps, volts, hertz).toFixed(4)).toBe(microfarads);
  });
  test('74.5 µF on a label of 70 µF ±6 % is slightly high (arithmetic)', () => {
    expect(plainWord('74.5', limitsMicrofarads(70, 6, 6))).toBe('fail');
  });
  test('wrong on purpose: line voltage in place of the capacitor’s reads 97 % too much (arithmetic)', () => {
    expect(microfaradsUnderLoad('8.032686', 240, 60).toFixed(3)).toBe('88.781');
  });
});

describe('series and parallel (physics)', () => {
  test.each([
    ['45', '5', '4.500000', 50],
    ['35', '5', '4.375000', 40],
    ['40', '7.5', '6.315789', 47.5],
    ['80', '7.5', '6.857143', 87.5],
  ])('%s and %s µF: %s in series, %d parallel', (a, b, series, parallel) => {
    expect(seriesMicrofarads(a, b).toFixed(6)).toBe(series);
    expect(parallelMicrofarads(a, b).toNumber()).toBe(parallel);
  });
  test('a HERM reading that is HERM–FAN’s does not condemn the part (plausibility rule, our setting)', () => {
    const given = { label: labelled('45+5'), readings: parts('µF', { herm: 4.5, fan: 5.03 }) };
    expect(run('section-values', given).outcome).toBe('ask-third');
  });
});

describe('a usual field meter on a usual part (common practice, no single source)', () => {
  test('25+5 µF ±5 %, read 24.6 and 4.9', () => {
    const word = (rated: number, reading: string) =>
      wordOf(reading, windowMicrofarads(METER, reading), limitsMicrofarads(rated, 5, 5));
    expect([word(25, '24.6'), word(5, '4.9')]).toEqual(['pass', 'pass']);
    const label = labelled('25+5', { below: '5', above: '5' });
    expect(run('section-values', { label, readings: parts('µF', { herm: 24.6, fan: 4.9 }) }).outcome).toBe('pass');
  });
});
