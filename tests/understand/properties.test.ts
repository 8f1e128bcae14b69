/** What holds for every text: nothing thrown, nothing invented, nothing lost, nothing slow. */
import { Decimal } from 'decimal.js';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { figure } from '../../engine/quantity.ts';
import type { Part } from '../../engine/schema.ts';
import { readCommand, readField, readHazard, readLabel, readLine } from '../../engine/understand/index.ts';
import { act, confirm, field, label, note, open, proving, running, sections, symptoms } from './parts.ts';

const PROMPTS: Part[][] = [
  sections,
  proving,
  running,
  open,
  [symptoms],
  [confirm('ok', 'Lock still yours?'), ...proving],
  [act('ok', 'Wires off HERM, FAN and C.')],
  [...open, note],
  [label],
];
const FIELDS = [
  ...sections,
  ...proving,
  ...running,
  field('ground', 'MΩ'),
  field('x', 'Ω', { unitNeeded: true }),
  field('count', 'count', { words: ['cap'] }),
];

const pieces = fc.constantFrom(
  ...'herm fan hf case comp split yes no not cant done clean bulged oil cap caps µF uF MFD mF k M meg Ω ohm V A % ± +/- - / , . : = _ ol O.L open > < ² ½ O l ٣ １ 0 1 5 44 45+5 440 0.2 1,234 1.2.3 -0.3 smoke stop ? \n \u200b é'.split(
    ' ',
  ),
);
const line = fc.array(pieces, { maxLength: 14 }).map((words) => words.join(' '));
const glued = fc.array(pieces, { maxLength: 10 }).map((words) => words.join(''));
const anyText = fc.oneof(line, glued, fc.string({ unit: 'binary', maxLength: 60 }), fc.string({ maxLength: 60 }));

describe('a printed quantity is read back', () => {
  const decimals = (max: number, digits: number) =>
    fc.integer({ min: 0, max: max * 10 ** digits }).map((n) => new Decimal(n).div(10 ** digits));
  const times = (n: Decimal, factor: string): string => n.times(factor).toFixed();

  test.each<[string, (n: Decimal) => string]>([
    ['bare', (n) => n.toFixed()],
    ['comma', (n) => (n.decimalPlaces() === 3 ? n.toFixed() : n.toFixed().replace('.', ','))],
    ['uF', (n) => `${n.toFixed()}uF`],
    ['µF', (n) => `${n.toFixed()}\u2009µF`],
    ['MFD', (n) => `${n.toFixed()} MFD`],
    ['nF', (n) => `${times(n, '1000')} nF`],
    ['pF', (n) => `${times(n, '1000000')}pF`],
    ['mF', (n) => `${times(n, '0.001')} mF`],
  ])('µF as %s', (_, print) => {
    fc.assert(
      fc.property(decimals(200, 4), (n) => {
        const typed = print(n);
        expect(readField(typed, field('herm', 'µF'))).toEqual({
          value: { kind: 'figure', value: figure(n, 'µF'), unit: 'µF', typed },
        });
      }),
    );
  });

  test.each<[string, (n: Decimal) => string]>([
    ['ohms', (n) => `${n.toFixed()} ohms`],
    ['Ω', (n) => `${n.toFixed()}Ω`],
    ['k', (n) => `${times(n, '0.001')}k`],
    ['kΩ', (n) => `${times(n, '0.001')} kΩ`],
    ['meg', (n) => `${times(n, '0.000001')} meg`],
    ['M', (n) => `${times(n, '0.000001')}M`],
  ])('Ω as %s', (_, print) => {
    fc.assert(
      fc.property(decimals(100_000, 3), (n) => {
        expect(readField(print(n), field('case', 'Ω', { unitNeeded: true }))).toMatchObject({
          value: { value: figure(n, 'Ω'), unit: 'Ω' },
        });
      }),
    );
  });

  test('signed volts', () => {
    fc.assert(
      fc.property(fc.integer({ min: -100_000, max: 100_000 }), (hundredths) => {
        const n = new Decimal(hundredths).div(100);
        const typed = n.toFixed().replace('-', '−').replace('.', ',');
        expect(readField(typed, field('hf', 'V'))).toMatchObject({ value: { value: figure(n, 'V') } });
      }),
    );
  });

  test('a line by name is read back in any order', () => {
    const readings = fc.record({
      herm: decimals(120, 2),
      fan: decimals(60, 2),
      hf: decimals(60, 2),
      case: decimals(99, 1),
    });
    fc.assert(
      fc.property(
        readings,
        fc.shuffledSubarray(['herm', 'fan', 'hf', 'case'] as const, { minLength: 1 }),
        (values, order) => {
          const typed = order.map((key) => `${key} ${values[key].toFixed()}`).join(' ');
          const expected = Object.fromEntries(order.map((key) => [key, values[key].toFixed()]));
          expect(readLine(typed, sections)).toEqual({ given: expected, unread: [] });
        },
      ),
    );
  });

  test('a line by order is read back', () => {
    fc.assert(
      fc.property(
        fc.array(decimals(300, 2), { minLength: 7, maxLength: 7 }),
        fc.constantFrom(' ', ' / ', ', '),
        (values, gap) => {
          const typed = values.map((n) => n.toFixed());
          expect(Object.values(readLine(typed.join(gap), proving).given)).toEqual(typed);
        },
      ),
    );
  });

  test('a print is read back', () => {
    const print = fc.record({
      herm: fc.integer({ min: 120, max: 1200 }),
      fan: fc.integer({ min: 10, max: 110 }),
      tolerance: fc.constantFrom('3', '5', '6', '10'),
      volts: fc.constantFrom('370', '440'),
      join: fc.constantFrom('+', '/', ' + '),
      unit: fc.constantFrom(' µF', 'uF', ' MFD', ''),
      percent: fc.constantFrom('%', ' %'),
      sign: fc.constantFrom('±', '+/-', ''),
    });
    fc.assert(
      fc.property(print, (p) => {
        const [herm, fan] = [p.herm / 10, p.fan / 10];
        const typed = `${herm}${p.join}${fan}${p.unit} ${p.sign}${p.tolerance}${p.percent} ${p.volts} VAC`;
        expect(readLabel(typed, { tolerance: '7' })).toEqual({
          label: {
            herm: String(herm),
            fan: String(fan),
            below: p.tolerance,
            above: p.tolerance,
            printed: true,
            volts: p.volts,
          },
        });
      }),
    );
  });
});

describe('any text', () => {
  /** Digits that carry a value: without the zeros that a unit adds or takes. */
  const significant = (text: string): string =>
    text
      .normalize('NFKC')
      .replace(/[^0-9]/g, '')
      .replace(/^0+|0+$/g, '');

  test('a field never reads a number whose digits are not typed', () => {
    fc.assert(
      fc.property(anyText, fc.constantFrom(...FIELDS), (text, part) => {
        const reading = readField(text, part);
        if ('problem' in reading) expect(reading.text.length).toBeGreaterThan(10);
        else if (reading.value.kind === 'figure') {
          const { value, typed } = reading.value;
          expect(typed).toBe(text.trim());
          // Rounding may end a figure early, and carry into its last digit.
          const digits = significant(value);
          expect(significant(typed).startsWith(digits.slice(0, -1))).toBe(true);
          expect(Number(value)).toBeGreaterThanOrEqual(Number(part.from));
          expect(Number(value)).toBeLessThanOrEqual(Number(part.to));
        }
      }),
      { numRuns: 3000 },
    );
  });

  test('a label never reads a number whose digits are not typed', () => {
    fc.assert(
      fc.property(anyText, (text) => {
        const reading = readLabel(text, { tolerance: '6' });
        if ('problem' in reading) return;
        const { herm, fan, volts, below, printed } = reading.label;
        const typed = significant(text);
        for (const value of [herm, fan, volts, printed ? below : null])
          if (value !== null) expect(typed).toContain(significant(value));
      }),
      { numRuns: 3000 },
    );
  });

  test('a line loses no word, and gives only words that were typed', () => {
    fc.assert(
      fc.property(anyText, fc.constantFrom(...PROMPTS), (text, parts) => {
        const { given, unread } = readLine(text, parts);
        const out = [...unread, ...Object.values(given).filter((value) => typeof value === 'string')];
        for (const piece of unread) expect(text).toContain(piece);
        for (const [key, value] of Object.entries(given)) {
          const part = parts.find((candidate) => candidate.key === key);
          if (part?.kind === 'field' || part?.kind === 'label') expect(text).toContain(value);
          if (part?.kind === 'choose' || part?.kind === 'confirm' || part?.kind === 'act')
            expect(part.options.map(({ id }) => id)).toEqual(expect.arrayContaining(value as string[]));
        }
        // Every digit typed comes out again, unless it chose an option by its number or stands in a field's name.
        const names = parts.some((part) => part.kind === 'field' && /\d/.test(part.key));
        const chosen = parts.some((part) => part.kind === 'choose' && part.key in given);
        if (!names && !chosen) expect(out.join('').replace(/\D/g, '').length).toBe(text.replace(/\D/g, '').length);
      }),
      { numRuns: 3000 },
    );
  });

  test('commands and hazards never throw', () => {
    fc.assert(
      fc.property(anyText, (text) => {
        readCommand(text);
        readHazard(text, [text.slice(1), 'x']);
        expect(readHazard(text, [text])).toBeNull();
      }),
      { numRuns: 2000 },
    );
  });

  test('a command’s rest is a part of what was typed', () => {
    fc.assert(
      fc.property(fc.constantFrom('skip', 'note', 'ask', 'reply', 'stop,'), anyText, (name, text) => {
        const read = readCommand(`${name} ${text}`);
        if (read?.text !== undefined) expect(text).toContain(read.text);
      }),
    );
  });

  test('danger beside anything but a denial is danger', () => {
    const plain = fc.array(fc.constantFrom('herm', '44', 'fan', 'ok', 'clean', 'the', 'unit', 'power', 'off', 'help'), {
      maxLength: 6,
    });
    fc.assert(
      fc.property(
        plain,
        fc.constantFrom('smoke', 'fire', 'shocked', 'exploded', 'fainted', 'injured'),
        plain,
        (before, word, after) => {
          expect(readHazard([...before, word, ...after].join(' '), [])).toMatchObject({ level: 'now' });
        },
      ),
    );
  });
});

describe('10,000 characters take less than 50 ms', () => {
  const texts = [
    'a',
    ' ',
    '1',
    '1 ',
    '1/',
    '1+',
    '1,',
    '.',
    '>',
    '-',
    "'",
    '±',
    'herm ',
    'herm 1 ',
    'yes ',
    'no ',
    'clean ',
    'not clean ',
    'smoke detector ',
    'no smoke ',
    'got ',
    'stop ',
    'hand over ',
    '45+5 µF ',
    '440/370 V ',
    '-5/+10% ',
    '½²',
    'ol ',
    '1 cap ',
    '? ',
    'µ',
    '\n',
  ].map((seed) => seed.repeat(Math.ceil(10_000 / seed.length)).slice(0, 10_000));
  const readers: [string, (text: string) => unknown][] = [
    ['readField', (text) => FIELDS.slice(0, 1).map((part) => readField(text, part))],
    ['readLabel', (text) => readLabel(text, { tolerance: '6' })],
    ...PROMPTS.map((parts, n): [string, (text: string) => unknown] => [
      `readLine ${n}`,
      (text) => readLine(text, parts),
    ]),
    ['readCommand', readCommand],
    ['readHazard', (text) => readHazard(text, ['clean'])],
  ];

  test.each(readers)('%s', (_, read) => {
    for (const text of texts) {
      // Time of this process, and the best of three: other work on the machine is no property of the reader.
      const took = [0, 1, 2].map(() => {
        const start = process.cpuUsage();
        read(text);
        const { user, system } = process.cpuUsage(start);
        return (user + system) / 1000;
      });
      expect(Math.min(...took), JSON.stringify(text.slice(0, 12))).toBeLessThan(50);
    }
  });
});
