import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Part, Prompt, Refusal, Units } from '../../engine/schema.ts';
import { readField } from '../../engine/understand/index.ts';
import { besideFigure } from '../../engine/units/beside.ts';
import { type Convertible, inPreferred, type Preferred } from '../../engine/units/other.ts';
import { promptIn, refusalIn } from '../../engine/units/shown.ts';

type Field = Extract<Part, { kind: 'field' }>;
const field = (unit: Convertible): Field => ({
  ...{ kind: 'field', key: 'it', ask: 'It', optional: false, unit, words: [], over: false, unitNeeded: false },
  ...{ remembered: null, from: '-1000', to: '9000' },
});
const METRIC: Units = { temperature: '°C', pressure: 'bar' };

const DIGITS: readonly (readonly [Convertible, Preferred, number, number])[] = [
  ['°F', '°C', 10, 1],
  ['Δ°F', '°C', 10, 1],
  ['psig', 'kPa', 1, 0],
  ['psig', 'bar', 100, 2],
];
describe.each(DIGITS)('%s shown in %s', (unit, preferred, per, decimals) => {
  test('a figure that was typed in it is read back as it was typed', () => {
    fc.assert(
      fc.property(fc.integer({ min: -50 * per, max: 400 * per }), (n) => {
        const typed = (n / per).toFixed(decimals);
        const read = readField(`${typed} ${preferred}`, field(unit));
        if (!('value' in read) || read.value.kind !== 'figure') throw new Error(`${typed} ${preferred} was not read`);
        expect(read.value.unit).toBe(unit);
        expect(Number(inPreferred(read.value.value, unit, preferred).replace('−', '-'))).toBe(Number(typed));
      }),
    );
  });
});

test('a bare number has the unit of its field whatever is preferred, and both are read back', () => {
  const asked = promptIn({ ...EMPTY, parts: [field('°F')] }, METRIC).parts[0] as Field;
  expect(asked.prefers).toBe('°C');
  const read = readField('24', asked);
  expect(read).toEqual({ value: { kind: 'figure', value: '24', unit: '°F', typed: '24' } });
  expect(besideFigure('24', '°F', METRIC)).toBe('24\u2009°F (−4.4\u2009°C)');
  expect(besideFigure('18', 'Δ°F', METRIC)).toBe('18\u2009°F (10\u2009°C)');
  expect(besideFigure('118', 'psig', METRIC)).toBe('118\u2009psig (8.14\u2009bar gauge)');
  expect(besideFigure('44.1', 'µF', METRIC)).toBe('44.1\u2009µF');
  expect(besideFigure('2', 'count', METRIC)).toBe('2');
  expect(besideFigure('24', '°F', undefined)).toBe('24\u2009°F');
});

test('where a whole line is typed, it says what a figure without a unit is', () => {
  const parts = [field('°F'), { ...field('psig'), key: 'other' }];
  expect(promptIn({ ...EMPTY, parts, line: 'it other' }, METRIC).line).toBe(
    'it other (a figure without its unit is °F, psig)',
  );
  expect(promptIn({ ...EMPTY, parts, line: 'it other' }, undefined).line).toBe('it other');
});

test('a refusal has both units, and quotes what was typed as it was', () => {
  const refusal: Refusal = {
    ...{ code: 'out-of-range', parts: ['it'], draft: {} },
    text: 'That reads as 932 °F. Here -60 to 300 °F is taken. “500 °F” is no more.',
  };
  expect(refusalIn(refusal, [field('°F')], METRIC).text.replaceAll('\u2009', ' ')).toBe(
    'That reads as 932 °F (500 °C). Here -60 to 300 °F (−51.1 to 148.9 °C) is taken. “500 °F” is no more.',
  );
  expect(refusalIn(refusal, [field('Δ°F')], METRIC).text).toContain('(517.8');
  expect(refusalIn(refusal, [field('°F')], undefined)).toEqual(refusal);
});

const EMPTY: Prompt = {
  ...{ job: 'j', seq: 1, last: 1, place: 'p', kind: 'step', class: 'eyes', title: '', body: [], callouts: [] },
  ...{ notices: [], parts: [], recalls: [], line: null, skippable: false, why: null, sources: [] },
  ...{ progress: { answered: 0, label: '' }, isolation: [], holder: null, amends: null, verdicts: [], pictures: [] },
  question: null,
};
