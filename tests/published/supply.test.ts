/** Supply voltage and unbalance against published examples, the wrong ones too. */
import { describe, expect, test } from 'vitest';
import { ratedRangeVolts, unbalancePercent } from '../../engine/calc/supply.ts';
import { choice, parts } from '../judgements/fixture.ts';
import { run } from '../judgements/run.ts';

describe('±10 % of rated voltage (NEMA MG 1-12.44.1, text read; arithmetic)', () => {
  test.each([
    [230, '207.0', '253.0'],
    [208, '187.2', '228.8'],
    [460, '414.0', '506.0'],
    [115, '103.5', '126.5'],
  ])('%d V: %s to %s', (rated, low, high) => {
    const range = ratedRangeVolts(rated, 10);
    expect([range.low.toFixed(1), range.high.toFixed(1)]).toEqual([low, high]);
  });
});

describe('208/230 V, single-phase welded hermetic: 197 to 253 V (a compressor maker’s bulletin, secondary source)', () => {
  test.each([
    [196.99, 'supply'],
    [197, 'in'],
    [253, 'in'],
    [253.01, 'supply'],
  ])('%d V: %s', (volts, outcome) => {
    const figures = { ...parts('V', { l1l2: volts }), ...parts('A', { comp: 13.1, fan: 0.9 }) };
    const plate = { ...parts('A', { rla: 17.9, lra: 96, fla: 1.2 }), ...choice('volts', '208/230') };
    expect(run('restart', { figures, plate }).outcome).toBe(outcome);
  });
});

describe('unbalance (NEMA definition, secondary source)', () => {
  test.each([
    // Printed 1.1 %.
    [[462, 463, 455], '1.086957'],
    // Printed 2.5 %, from figures rounded on the way.
    [[203, 210, 212], '2.560000'],
    // Printed 1.96 %.
    [[460, 467, 450], '1.960784'],
    // Printed 0.84 %.
    [[480, 476, 472], '0.840336'],
    // Printed 1.8 %, because the average was rounded to 216 first.
    [[220, 216, 213], '1.694915'],
  ])('%o: %s %%', (volts, percent) => {
    expect(unbalancePercent(volts).toFixed(6)).toBe(percent);
  });
  test('wrong as printed: 400/395/388 is not 1.45 %, its largest deviation is that of 388 (arithmetic)', () => {
    expect(unbalancePercent([400, 395, 388]).toFixed(4)).toBe('1.6061');
    expect(unbalancePercent([400, 395, 388]).toFixed(2)).not.toBe('1.45');
  });
  test('wrong as printed: 220/216/213 is not 1.8 % (arithmetic)', () => {
    expect(unbalancePercent([220, 216, 213]).toFixed(1)).not.toBe('1.8');
  });
});
