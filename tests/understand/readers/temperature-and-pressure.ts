/** Units whose zero is elsewhere: temperatures and their differences, gauge and absolute pressure; hours. */
import { expect, test } from 'vitest';
import { readField } from '../../../engine/understand/index.ts';
import { field } from '../parts.ts';

const temperature = field('wb', '°F');
const difference = field('split', 'Δ°F');
const pressure = field('suction', 'psig');
const hours = field('since', 'h');

test.each([
  ['75', temperature, '75'],
  ['75 °F', temperature, '75'],
  ['75 ºF', temperature, '75'],
  ['75˚f', temperature, '75'],
  ['75 f', temperature, '75'],
  ['75 deg', temperature, '75'],
  ['75 degrees F', temperature, '75'],
  ['75 fahrenheit', temperature, '75'],
  ['0 °C', temperature, '32'],
  ['24c', temperature, '75.2'],
  ['24 °C', temperature, '75.2'],
  ['-40 C', temperature, '-40'],
  ['24 celsius', temperature, '75.2'],
  ['19', difference, '19'],
  ['19 °F', difference, '19'],
  ['19 Δ°F', difference, '19'],
  ['10 °C', difference, '18'],
  ['10 K', difference, '18'],
  ['0 C', difference, '0'],
  ['118', pressure, '118'],
  ['118.4 psi', pressure, '118.4'],
  ['118.4 psig', pressure, '118.4'],
  ['0 psia', pressure, '-14.7'],
  ['14.7 psia', pressure, '0'],
  ['1000 kPa', pressure, '145'],
  ['101.325 kPaa', pressure, '0'],
  ['8.2 bar', pressure, '118.9'],
  ['2 bara', pressure, '14.3'],
  ['6', hours, '6'],
  ['90 h', hours, '90'],
  ['1.5 hrs', hours, '1.5'],
])('%s', (typed, part, value) => {
  expect(readField(typed, part)).toEqual({ value: { kind: 'figure', value, unit: part.unit, typed } });
});

test.each([
  ['75 V', temperature, 'which-quantity'],
  ['19 K', temperature, 'which-quantity'],
  ['19 psi', difference, 'which-quantity'],
  ['75 F', pressure, 'which-unit'],
  ['118 kelvins', temperature, 'which-unit'],
  ['400', temperature, 'out-of-range'],
  ['1000', pressure, 'out-of-range'],
])('%s is asked back: %s', (typed, part, problem) => {
  expect(readField(typed, part)).toMatchObject({ problem });
});
