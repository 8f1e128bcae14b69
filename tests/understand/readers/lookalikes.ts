/** Signs that look like others: full-width ones are read, every other is the same reading or is asked, never another. */
import { describe, expect, test } from 'vitest';
import { readField, readHazard, readLabel, readLine, readPlate } from '../../../engine/understand/index.ts';
import { field, sections } from '../parts.ts';

const LOOKALIKES: Readonly<Record<string, string>> = {
  '0': 'OoОοО〇٠⓪०𝟎',
  '1': 'lIІ|١¹①१𝟏',
  '2': 'Zz²٢②२½',
  '3': 'ЗзƷ³③٣३',
  '4': 'чЧ⁴④٤४¼',
  '5': 'Ss⁵⑤٥५',
  '6': 'бG⁶⑥٦६',
  '7': '⁷٧७⑦',
  '8': 'B⁸٨८⑧',
  '9': 'gq⁹٩९⑨',
  '.': '․·٫。•',
  ',': '‚،、',
  '+': '十✚',
  '-': '‐–−ー~',
  '/': '⁄∕∖',
  '%': '٪℅',
  µ: 'μuυ',
};
/** Each character replaced by each that looks like it. */
const disguised = (text: string): string[] =>
  [...text].flatMap((c, i) =>
    [...(LOOKALIKES[c] ?? '')].map((other) => text.slice(0, i) + other + text.slice(i + c.length)),
  );
const wide = (text: string): string =>
  text.replace(/[!-~]/g, (c) => String.fromCharCode(c.charCodeAt(0) + 0xfee0)).replaceAll(' ', '\u3000');

describe('a reading', () => {
  const part = field('herm', 'µF');
  test.each(['38.4', '38,4', '0.0384 mF', '38.4 µF', '10.9', '227 µF', '56.7'])('%s', (text) => {
    const { value } = readField(text, part) as { value: { value: string } };
    for (const other of disguised(text)) {
      const read = readField(other, part);
      if ('value' in read) expect(read.value, other).toMatchObject({ value: value.value });
    }
    expect(readField(wide(text), part), wide(text)).toMatchObject({ value: { value: value.value } });
  });
  test('signed volts', () => {
    for (const minus of '-−–—‐‑－')
      expect(readField(`${minus}0.3`, field('x', 'V'))).toMatchObject({ value: { value: '-0.3' } });
    for (const other of disguised('-0.3'))
      expect(['-0.3', undefined], other).toContain(
        (readField(other, field('x', 'V')) as { value?: { value: string } }).value?.value,
      );
  });
});

test('a line: a disguised figure is the same one, or its field is asked', () => {
  const text = 'herm 43.8 fan 5.12 hf 4.57 case ol';
  const wanted: Record<string, string> = { herm: '43.8', fan: '5.12', hf: '4.57' };
  for (const other of disguised(text)) {
    const { given } = readLine(other, sections);
    for (const part of sections) {
      const read = readField(String(given[part.key] ?? ''), part);
      if ('value' in read && read.value.kind === 'figure') expect(read.value.value, other).toBe(wanted[part.key]);
    }
  }
  expect(readLine(wide(text), sections)).toEqual({
    given: Object.fromEntries(Object.entries({ ...wanted, case: 'ol' }).map(([key, v]) => [key, wide(v)])),
    unread: [],
  });
});

describe('a print', () => {
  test.each([
    ['45+5 µF ±6 % 440 VAC', {}],
    ['45+5 6% 440', {}],
    ['40/5 MFD 370V', {}],
    ['35 uf +/-5%', {}],
    ['7.5 MFD -5/+10% 440V', {}],
    ['35 440V', {}],
    ['189-227 MFD 330 VAC', { start: true }],
    ['161-193 MFD 250 VAC', { start: true }],
  ])('%s', (text, asked) => {
    const usual = { tolerance: '6', ...asked };
    const wanted = readLabel(text, usual);
    expect(wanted).toHaveProperty('label');
    for (const other of disguised(text)) {
      const read = readLabel(other, usual);
      if ('label' in read) expect(read, other).toEqual(wanted);
    }
    expect(readLabel(wide(text), usual)).toEqual(wanted);
  });

  test.each([
    '208/230-1-60 RLA 17.9 LRA 96 FLA 1.2 MCA 23.6 MOP 40 R-410A 8 lb 6 oz HIGH 446 PSIG LOW 236 PSIG',
    '1/4 HP 1075 RPM V 208-230 FLA 1.4 5 MFD 370V 60 HZ PH 1 COIL 24 V 2 POLE',
  ])('%s', (text) => {
    const print = (plate: string): string[] =>
      readPlate(plate).parts.map(({ role, values, unit }) => `${role} ${values.join(' ')} ${unit}`);
    // A refrigerant's letters and a part's number are words: as typed.
    const figures = (plate: string): string[] => print(plate).filter((part) => !/^(refrigerant|number) /.test(part));
    const wanted = figures(text);
    for (const other of disguised(text)) expect(wanted, other).toEqual(expect.arrayContaining(figures(other)));
    expect(print(wide(text))).toEqual(print(text));
  });
});

test('danger in full-width letters is danger', () => {
  expect(readHazard(wide('smoke from the unit'), [])).toEqual({ level: 'now', hazard: 'smoke' });
});
