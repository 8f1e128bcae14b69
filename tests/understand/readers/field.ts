import { describe, expect, test } from 'vitest';
import { type FieldPart, readField } from '../../../engine/understand/index.ts';
import { scanNumber } from '../../../engine/understand/number.ts';
import { field } from '../parts.ts';

const µF = field('herm', 'µF');
const volts = field('l1l2', 'V');
const ohms = field('case', 'Ω');
const asked = field('case', 'Ω', { unitNeeded: true });
const megohms = field('ground', 'MΩ');
const gate = field('residual', 'V', { over: false });
const optional = field('hf', 'µF', { optional: true });
const caps = field('count', 'count', { words: ['cap', 'caps'] });
const amps = field('comp', 'A');

describe('understood', () => {
  test.each<[string, FieldPart, string]>([
    ['38.4', µF, '38.4'],
    ['38,4', µF, '38.4'],
    ['.9', amps, '0.9'],
    ['0.9', amps, '0.9'],
    [',9', amps, '0.9'],
    ['.90A', amps, '0.9'],
    [',90 amps', amps, '0.9'],
    ['-,3', volts, '-0.3'],
    ['38.4uF', µF, '38.4'],
    ['38.4 mfd', µF, '38.4'],
    ['38.4MFD', µF, '38.4'],
    ['38.4 µF', µF, '38.4'],
    ['38.4 μF', µF, '38.4'],
    ['38.4 UF.', µF, '38.4'],
    ['38.4\u2009µF', µF, '38.4'],
    ['38400nf', µF, '38.4'],
    ['38400 nF', µF, '38.4'],
    ['38400000 pF', µF, '38.4'],
    ['0.0384 mF', µF, '38.4'],
    ['.0384mF', µF, '38.4'],
    ['0.0050 mF', µF, '5'],
    ['0 mF', µF, '0'],
    ['0.038 millifarad', µF, '38'],
    ['38.4 mfd.', µF, '38.4'],
    ['38.4mfds', µF, '38.4'],
    ['38.4 mics', µF, '38.4'],
    ['38,4 µF', µF, '38.4'],
    ['201', µF, '201'],
    ['227 uF', µF, '227'],
    ['230 A', amps, '230'],
    ['11 kilo ohm', ohms, '11000'],
    ['1.2megohm', ohms, '1200000'],
    ['+0.3', volts, '0.3'],
    ['38.43219', µF, '38.4322'],
    ['5.00005', µF, '5'],
    ['5.00015', µF, '5.0002'],
    ['11k', ohms, '11000'],
    ['15.0k', ohms, '15000'],
    ['15.0 kΩ', ohms, '15000'],
    ['1.2 meg', ohms, '1200000'],
    ['1.2M', ohms, '1200000'],
    ['1.2 Mohm', ohms, '1200000'],
    ['1.2 MΩ', ohms, '1200000'],
    ['500k', ohms, '500000'],
    ['12.4 ohm', ohms, '12.4'],
    ['12.4 ohms', ohms, '12.4'],
    ['12.4 Ω', ohms, '12.4'],
    ['12.4 \u2126', ohms, '12.4'],
    ['15', megohms, '15'],
    ['500k', megohms, '0.5'],
    ['2.2 G', megohms, '2200'],
    ['600000 ohm', megohms, '0.6'],
    ['0.6 ohm', megohms, '0'],
    ['0', asked, '0'],
    ['0.00', asked, '0'],
    ['15k', asked, '15000'],
    ['-0.3', volts, '-0.3'],
    ['\u22120,3', volts, '-0.3'],
    ['–0.3 V', volts, '-0.3'],
    ['-0', volts, '0'],
    ['121 V AC', volts, '121'],
    ['121vac', volts, '121'],
    ['300 mV', volts, '0.3'],
    ['13.1 amps', amps, '13.1'],
    ['900 mA', amps, '0.9'],
    ['1 cap', caps, '1'],
    ['2 caps', caps, '2'],
    ['2 count', caps, '2'],
    ['３８．４', µF, '38.4'],
    [' 38.4, ', µF, '38.4'],
  ])('%s', (text, part, value) => {
    expect(readField(text, part)).toEqual({ value: { kind: 'figure', value, unit: part.unit, typed: text.trim() } });
  });

  test.each<[string, FieldPart]>([
    ['OL', µF],
    ['ol', ohms],
    ['O.L', ohms],
    ['o.l.', ohms],
    ['0L', ohms],
    ['0.L', ohms],
    ['open', ohms],
    ['OL MΩ', ohms],
    ['>500M', ohms],
    ['> 500 MΩ', ohms],
    ['>500', megohms],
    ['still climbing', ohms],
    ['Still Climbing', ohms],
    ['keeps rising', ohms],
    ['climbs then ol', ohms],
    ['going up', ohms],
    ['o/l', ohms],
    ['O-L', ohms],
    ['O L', ohms],
    ['over range', ohms],
    ['>550 Mohm', ohms],
    ['climbs', megohms],
    ['climbs to OL', ohms],
  ])('%s is over range', (text, part) => {
    expect(readField(text, part)).toEqual({ value: { kind: 'over', typed: text } });
  });

  test.each(['_', ' __ ', ''])('%j leaves an optional reading out', (text) => {
    expect(readField(text, optional)).toEqual({ value: { kind: 'untaken' } });
  });
});

describe('asked back', () => {
  test.each<[string, FieldPart, string]>([
    ['_', µF, 'not-a-number'],
    ['', µF, 'not-a-number'],
    ['-', optional, 'not-a-number'],
    ['skip', optional, 'not-a-number'],
    ['abc', µF, 'not-a-number'],
    ['1.234,5', µF, 'not-a-number'],
    ['1,234', µF, 'not-a-number'],
    ['1,234.5', µF, 'not-a-number'],
    ['1O.2', µF, 'not-a-number'],
    ['O.2', µF, 'not-a-number'],
    ['l2', µF, 'not-a-number'],
    ['12 13', µF, 'not-a-number'],
    ['1e3', µF, 'not-a-number'],
    ['4k7', ohms, 'not-a-number'],
    ['~121', volts, 'not-a-number'],
    ['١٢', volts, 'not-a-number'],
    ['4½', volts, 'which-unit'],
    ['10²', volts, 'which-unit'],
    ['12\u200b3', volts, 'not-a-number'],
    ['О', volts, 'not-a-number'],
    ['OL', gate, 'not-a-number'],
    ['still climbing', volts, 'not-a-number'],
    ['>5', gate, 'not-a-number'],
    ['>1k', ohms, 'not-a-number'],
    ['<1', ohms, 'not-a-number'],
    ['1.5', caps, 'not-a-number'],
    ['38.4 mF', µF, 'which-unit'],
    ['0.3 mF', µF, 'which-unit'],
    ['0.02 mF', µF, 'which-unit'],
    ['0.038 mF', µF, 'which-unit'],
    ['300.0000 mF', µF, 'which-unit'],
    ['1 mF', µF, 'which-unit'],
    ['0.0384 MF', µF, 'which-unit'],
    ['38.4 xyz', µF, 'which-unit'],
    ['1.2m', ohms, 'which-unit'],
    ['1.2 mohm', ohms, 'which-unit'],
    ['15', asked, 'which-unit'],
    ['>500', asked, 'which-unit'],
    ['440 V', µF, 'which-quantity'],
    ['11k', µF, 'which-quantity'],
    ['38.4 uF', ohms, 'which-quantity'],
    ['13 A', volts, 'which-quantity'],
    ['440', µF, 'which-quantity'],
    ['480', µF, 'which-quantity'],
    ['208', µF, 'which-quantity'],
    ['370', µF, 'which-quantity'],
    ['400', µF, 'which-quantity'],
    ['240', amps, 'which-quantity'],
    ['700.1', µF, 'out-of-range'],
    ['440 uF', µF, 'out-of-range'],
    ['38400', µF, 'out-of-range'],
    ['-1', µF, 'out-of-range'],
    ['1001', volts, 'out-of-range'],
    ['21', caps, 'out-of-range'],
    ['9'.repeat(61), volts, 'not-a-number'],
  ])('%s', (text, part, problem) => {
    expect(readField(text, part)).toMatchObject({ problem });
  });

  test('each problem says what can be typed', () => {
    const textOf = (text: string, part: FieldPart): string => {
      const reading = readField(text, part);
      return 'text' in reading ? reading.text : '';
    };
    expect(textOf('15', asked)).toMatch(/Ω, kΩ or MΩ/);
    expect(textOf('440', µF)).toMatch(/Is that the voltage\?.*440\u2009µF/);
    expect(textOf('440 V', µF)).toMatch(/V.*µF/);
    expect(textOf('OL', gate)).toMatch(/must be a number/);
    expect(textOf('440 uF', µF)).toMatch(/0 to 400/);
    expect(textOf('38.4 mF', µF)).toMatch(/µF, nF or pF/);
  });

  test('a limit of the range is inside', () => {
    expect(readField('400 µF', µF)).toHaveProperty('value');
    expect(readField('400.0001 µF', µF)).toHaveProperty('problem');
    expect(readField('400000 nF', µF)).toHaveProperty('value');
  });
});

describe('a number alone', () => {
  test.each([
    ['38.4', '38.4'],
    ['38,4', '38.4'],
    ['.9', '0.9'],
    [',9', '0.9'],
    ['-,3', '-0.3'],
    [',125', '0.125'],
    ['-0,3', '-0.3'],
    ['+5', '5'],
    ['0', '0'],
    ['0,123', '0.123'],
    ['12,3456', '12.3456'],
    ['12.', '12'],
    ['12, ', '12'],
    ['1.234', '1.234'],
    ['007', '007'],
  ])('%s reads as %s', (text, value) => {
    expect(scanNumber(text)).toMatchObject({ ok: true, value });
  });

  test.each([
    ['1,234', 'thousands'],
    ['10,000', 'thousands'],
    ['1.234,5', 'two-marks'],
    ['1,234.5', 'two-marks'],
    ['1..5', 'two-marks'],
    ['1,2,3', 'two-marks'],
  ])('%s can be read in two ways', (text, why) => {
    expect(scanNumber(text)).toMatchObject({ ok: false, why });
  });

  test.each(['', '.', ',', '-', '+', ', 5', 'O.2', 'l0', '²', '٣', '- 3'])('%j begins no number', (text) => {
    expect(scanNumber(text)).toBeNull();
  });

  test('ends before what is no part of the number', () => {
    expect(scanNumber('x 38.4, 5', 2)).toMatchObject({ value: '38.4', end: 6 });
  });
});
