/** What holds for every text: nothing thrown, nothing invented, nothing lost. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  readCommand,
  readField,
  readHazard,
  readLabel,
  readLine,
  readPlate,
  saysCant,
} from '../../../engine/understand/index.ts';
import { FIELDS, PROMPTS } from '../prompts.ts';
import { runs } from './runs.ts';

const pieces = fc.constantFrom(
  ...'herm fan hf case comp split yes no not cant done clean bulged oil cap caps µF uF MFD mF k M meg Ω ohm V A % ± +/- - / , . : = _ ol O.L open > < ² ½ O l ٣ １ 0 1 5 44 45+5 440 0.2 1,234 1.2.3 -0.3 smoke stop rla lra volts hz hp 17.9 208/230 60 psig R-410A lb oz ? \n \u200b é'.split(
    ' ',
  ),
);
const line = fc.array(pieces, { maxLength: 14 }).map((words) => words.join(' '));
const glued = fc.array(pieces, { maxLength: 10 }).map((words) => words.join(''));
/** Prints in every order, parted by what parts them. */
const print = fc
  .array(
    fc.tuple(
      fc.constantFrom(
        ...'45+5 40/5 7.5 35 .8 ,8 5 440 370 208/230 440/370 ±6% 6% -5/+10% 50/60 60 161-193 88-106 mfd uF µF nF VAC V volts Hz herm fan case model 10,000 AFC 40/85/21 P2'.split(
          ' ',
        ),
      ),
      fc.constantFrom(' ', '\n', ', ', ' / '),
    ),
    { maxLength: 9 },
  )
  .map((words) => words.flat().join(''));
const anyText = fc.oneof(line, glued, fc.string({ unit: 'binary', maxLength: 60 }), fc.string({ maxLength: 60 }));

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
          // 0 °C is 32 °F.
          const converted = (part.unit === '°F' || part.unit === 'psig') && /[^\d\s.,+-]/.test(typed);
          if (!converted) expect(significant(typed).startsWith(digits.slice(0, -1))).toBe(true);
          expect(Number(value)).toBeGreaterThanOrEqual(Number(part.from));
          expect(Number(value)).toBeLessThanOrEqual(Number(part.to));
        }
      }),
      runs(2000),
    );
  });

  /** Every number of a text as it stands there: digits with what marks touch them; a comma behind a letter parts. */
  const numbersOf = (text: string): Set<string> =>
    new Set(
      [...text.normalize('NFKC').matchAll(/(?:\.|(?<!\p{L}),)?\d+(?:[.,]\d+)*/gu)].map(([n]) =>
        n.replaceAll(',', '.').replace(/^\./, '0.'),
      ),
    );

  test('a label never reads a number that is not typed', () => {
    fc.assert(
      fc.property(fc.oneof(anyText, print), (text) => {
        const reading = readLabel(text, { tolerance: '7' });
        if ('problem' in reading) return;
        const { herm, fan, volts, below, printed } = reading.label;
        const numbers = [...numbersOf(text)].map(Number);
        // In µF as typed, or in nF or mF; rounded to the digits that are kept.
        const isTyped = (value: number): boolean =>
          numbers.some((n) => [n, n / 1000, n * 1000].some((one) => Math.abs(one - value) < 0.001));
        for (const value of [herm, fan, volts, printed ? below : null])
          if (value !== null) expect(isTyped(Number(value)), `${value} in ${text}`).toBe(true);
      }),
      runs(1500),
    );
  });

  test('a plate takes only what is typed, each stretch once, and loses no figure', () => {
    fc.assert(
      fc.property(anyText, (text) => {
        const { parts, unread } = readPlate(text);
        const numbers = numbersOf(text);
        for (const { unit, values } of parts)
          if (unit !== '') for (const value of values) expect(numbers).toContain(value);
        let end = 0;
        for (const { from, to, text: piece, values } of parts) {
          expect(from).toBeGreaterThanOrEqual(end);
          end = to;
          expect(text.slice(from, to)).toBe(piece);
          const plain = piece.normalize('NFKC').replaceAll(',', '.');
          for (const value of values) expect(plain).toContain(value.replace(/^0\./, '.').replaceAll(',', '.'));
        }
        for (const piece of unread) expect(text).toContain(piece);
        const digits = (pieces: readonly string[]): number => pieces.join('').replace(/\P{N}/gu, '').length;
        expect(digits([...parts.map((part) => part.text), ...unread])).toBe(digits([text]));
      }),
      runs(1500),
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
      runs(1500),
    );
  });

  test('commands and hazards never throw', () => {
    fc.assert(
      fc.property(anyText, (text) => {
        readCommand(text);
        saysCant(text);
        readHazard(text, [text.slice(1), 'x']);
        expect(readHazard(text, [text])).toBeNull();
      }),
      runs(1500),
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
