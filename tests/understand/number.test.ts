import { expect, test } from 'vitest';
import { scanNumber } from '../../engine/understand/number.ts';

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
