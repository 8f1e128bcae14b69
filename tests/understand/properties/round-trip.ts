/** What is printed is read back as it was: 20,000 quantities, lines and labels, 100,000 with FUZZ=long. */
import { Decimal } from 'decimal.js';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { figure } from '../../../engine/quantity.ts';
import type { Unit } from '../../../engine/schema.ts';
import { type FieldPart, readField, readLabel, readLine, readPlate } from '../../../engine/understand/index.ts';
import { valueWords } from '../../../engine/words.ts';
import { field, label, open, proving, sections } from '../parts.ts';
import { runs } from './runs.ts';

const SHARES = { farads: 775, ohms: 550, volts: 1000, amps: 700, byName: 3000, byOrder: 2200, amended: 400 };
const LABELS = { run: 1200, start: 500, inLine: 400, plate: 500, confirmed: 600 };
test('the shares add up to 20,000', () => {
  const { farads, ohms, ...once } = { ...SHARES, ...LABELS };
  const rest = Object.values(once).reduce((sum, n) => sum + n, 0);
  expect(8 * farads + 6 * ohms + rest).toBe(20_000);
});

const decimals = (max: number, digits: number): fc.Arbitrary<Decimal> =>
  fc.integer({ min: 0, max: max * 10 ** digits }).map((n) => new Decimal(n).div(10 ** digits));
const times = (n: Decimal, factor: string): string => n.times(factor).toFixed();
/** A comma before exactly three digits may part thousands, and is asked. */
const comma = (n: Decimal): string => (n.decimalPlaces() === 3 ? n.toFixed() : n.toFixed().replace('.', ','));
const readsBack = (typed: string, part: FieldPart, value: string): void => {
  expect(readField(typed, part)).toEqual({ value: { kind: 'figure', value, unit: part.unit, typed } });
};

describe('a quantity', () => {
  test.each<[string, (n: Decimal) => string]>([
    ['bare', (n) => n.toFixed()],
    ['comma', comma],
    ['uF', (n) => `${n.toFixed()}uF`],
    ['µF', (n) => `${n.toFixed()}\u2009µF`],
    ['MFD', (n) => `${comma(n)} MFD`],
    ['nF', (n) => `${times(n, '1000')} nF`],
    ['pF', (n) => `${times(n, '1000000')}pF`],
    ['mF to four decimals', (n) => `${n.times('0.001').toFixed(Math.max(4, n.decimalPlaces() + 3))} mF`],
  ])('µF as %s', (_, print) => {
    const part = field('herm', 'µF');
    fc.assert(
      fc.property(decimals(200, 4), (n) => readsBack(print(n), part, figure(n, 'µF'))),
      runs(SHARES.farads),
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
    const part = field('case', 'Ω', { unitNeeded: true });
    fc.assert(
      fc.property(decimals(100_000, 3), (n) => readsBack(print(n), part, figure(n, 'Ω'))),
      runs(SHARES.ohms),
    );
  });

  test('signed volts, with the minus and the comma of a phone', () => {
    const part = field('hf', 'V');
    fc.assert(
      fc.property(fc.integer({ min: -100_000, max: 100_000 }), (hundredths) => {
        const n = new Decimal(hundredths).div(100);
        readsBack(n.toFixed().replace('-', '−').replace('.', ','), part, figure(n, 'V'));
      }),
      runs(SHARES.volts),
    );
  });

  test('amps, and thousandths of them', () => {
    const part = field('comp', 'A');
    fc.assert(
      fc.property(decimals(200, 3), fc.boolean(), (n, milli) =>
        readsBack(milli ? `${times(n, '1000')} mA` : n.toFixed().replace(/^0\./, '.'), part, figure(n, 'A')),
      ),
      runs(SHARES.amps),
    );
  });

  test('as the confirming line prints it', () => {
    const units = fc.constantFrom<Unit>('µF', 'V', 'A', 'Ω', 'MΩ', '°F', 'psig', 'h');
    fc.assert(
      fc.property(units, decimals(120, 1), (unit, n) => {
        const value = figure(n, unit);
        const shown = valueWords({ kind: 'figure', value, unit, typed: '' }, undefined, () => '');
        readsBack(shown, field('x', unit), value);
      }),
      runs(LABELS.confirmed),
    );
  });
});

describe('a line', () => {
  const value = fc.oneof(
    { weight: 6, arbitrary: decimals(120, 2).map((n) => n.toFixed()) },
    decimals(60, 2).map(comma),
    decimals(60, 1).map((n) => n.toFixed().replace(/^0\./, '.')),
    fc.constantFrom('_', 'ol', 'OL', 'O.L', '0L'),
  );
  const keys = ['herm', 'fan', 'hf', 'case'] as const;

  test('by name, in any order, however name and value are joined', () => {
    fc.assert(
      fc.property(
        fc.record({ herm: value, fan: value, hf: value, case: value }),
        fc.shuffledSubarray([...keys], { minLength: 1 }),
        fc.constantFrom(' ', ': ', ' = ', ':'),
        fc.constantFrom(' ', ', ', ' / ', '\n', '  ', '; '),
        fc.boolean(),
        (values, order, is, gap, loud) => {
          const typed = order.map((key) => `${loud ? key.toUpperCase() : key}${is}${values[key]}`).join(gap);
          const given = Object.fromEntries(order.map((key) => [key, values[key]]));
          expect(readLine(typed, sections)).toEqual({ given, unread: [] });
        },
      ),
      runs(SHARES.byName),
    );
  });

  test('by order', () => {
    const volts = decimals(300, 2).map((n) => n.toFixed());
    fc.assert(
      fc.property(
        fc.array(volts, { minLength: 7, maxLength: 7 }),
        fc.array(fc.constantFrom(' ', ' / ', ', ', ' ; ', '\n', '/'), { minLength: 6, maxLength: 6 }),
        (values, gaps) => {
          const typed = values.map((v, n) => v + (gaps[n] ?? '')).join('');
          expect(Object.values(readLine(typed, proving).given)).toEqual(values);
          expect(readLine(typed, proving).unread).toEqual([]);
        },
      ),
      runs(SHARES.byOrder),
    );
  });

  test('one field amended', () => {
    fc.assert(
      fc.property(fc.constantFrom(...keys), value, (key, v) => {
        expect(readLine(`${key} ${v}`, sections)).toEqual({ given: { [key]: v }, unread: [] });
      }),
      runs(SHARES.amended),
    );
  });
});

describe('a label', () => {
  const run = fc.record({
    herm: fc.integer({ min: 120, max: 1200 }),
    fan: fc.option(fc.integer({ min: 10, max: 110 })),
    tolerance: fc.constantFrom('3', '5', '6', '10', '-5/+10'),
    volts: fc.constantFrom('370', '440', '370/440'),
    join: fc.constantFrom('+', '/', ' + '),
    unit: fc.constantFrom(' µF', 'uF', ' MFD', ' mfd'),
    percent: fc.constantFrom('%', ' %'),
    sign: fc.constantFrom('±', '+/-', '+-', ''),
    volt: fc.constantFrom(' VAC', 'V', ' V~', ' volts'),
    tail: fc.constantFrom('', ' 50/60 Hz', ' 10,000 AFC', '\n40/85/21', ' Protected P2', ' IEC 60252-1'),
    gap: fc.constantFrom(' ', '\n', ', '),
  });
  type Run = typeof run extends fc.Arbitrary<infer R> ? R : never;
  const typedRun = (p: Run): string => {
    const sectionsTyped = p.fan === null ? `${p.herm / 10}` : `${p.herm / 10}${p.join}${p.fan / 10}`;
    const tolerance = p.tolerance.startsWith('-') ? `${p.tolerance}%` : `${p.sign}${p.tolerance}${p.percent}`;
    return [sectionsTyped + p.unit, tolerance, p.volts + p.volt + p.tail].join(p.gap);
  };
  const readRun = (p: Run) => {
    const [below, above] = p.tolerance.startsWith('-') ? ['5', '10'] : [p.tolerance, p.tolerance];
    const fan = p.fan === null ? null : String(p.fan / 10);
    return { herm: String(p.herm / 10), fan, below, above, printed: true, volts: p.volts.slice(-3) };
  };

  test('of a run part', () => {
    fc.assert(
      fc.property(run, (p) => {
        expect(readLabel(typedRun(p), { tolerance: '7' })).toEqual({ label: readRun(p) });
      }),
      runs(LABELS.run),
    );
  });

  test('of a run part within a longer line', () => {
    fc.assert(
      fc.property(run, fc.constantFrom('1 cap', '2 caps', 'caps 1'), (p, count) => {
        const typed = `clean, ${count}, ${typedRun({ ...p, gap: p.gap === ', ' ? ' ' : p.gap })}`;
        const { given, unread } = readLine(typed, open);
        expect(unread).toEqual([]);
        expect(given).toMatchObject({ condition: ['clean'], count: count.replace(/\D/g, '') });
        expect(readLabel(String(given[label.key]), { tolerance: '7' })).toEqual({ label: readRun(p) });
      }),
      runs(LABELS.inLine),
    );
  });

  test('of a start part', () => {
    const print = fc.record({
      low: fc.integer({ min: 20, max: 800 }),
      more: fc.integer({ min: 4, max: 200 }),
      volts: fc.constantFrom('115', '165', '250', '330'),
      to: fc.constantFrom('-', '–', ' - ', ' to '),
      unit: fc.constantFrom(' MFD', ' µF', 'uF'),
      gap: fc.constantFrom(' ', '\n'),
    });
    fc.assert(
      fc.property(print, ({ low, more, volts, to, unit, gap }) => {
        const read = readLabel(`${low}${to}${low + more}${unit}${gap}${volts} VAC`, { tolerance: '6', start: true });
        expect(read).toMatchObject({ label: { range: { low: String(low), high: String(low + more) }, volts } });
      }),
      runs(LABELS.start),
    );
  });

  test('of a unit', () => {
    const plate = fc.record({
      rla: decimals(40, 1).map((n) => n.plus('0.5')),
      lra: fc.integer({ min: 20, max: 220 }),
      fla: decimals(6, 1).map((n) => n.plus('0.1')),
      mca: decimals(60, 1).map((n) => n.plus(1)),
      mop: fc.constantFrom(15, 20, 25, 30, 40, 60),
      is: fc.constantFrom(' ', ': ', '\n'),
      gap: fc.constantFrom('\n', ', ', ' '),
      mark: fc.constantFrom('0.', '.', '0,', ' ,'),
      supply: fc.constantFrom('208/230-1-60', '208/230V 1PH 60HZ', 'VOLTS 208/230 PH 1 HZ 60'),
    });
    fc.assert(
      fc.property(plate, fc.boolean(), ({ is, gap, mark, supply, ...amps }, first) => {
        const figures = Object.entries(amps).map(([key, n]) => [key, n.toString().replace(/^0\./, mark)] as const);
        const keyed = figures.map(([key, n]) => `${key.toUpperCase()}${is}${n}`);
        const typed = (first ? [supply, ...keyed] : [...keyed, supply]).join(gap);
        const { parts, unread } = readPlate(typed);
        expect(unread).toEqual([]);
        const read = Object.fromEntries(parts.map(({ role, values }) => [role, values.join('/')]));
        const expected = Object.fromEntries(Object.entries(amps).map(([key, n]) => [key, n.toString()]));
        expect(read).toEqual({ ...expected, volts: '208/230', phase: '1', hertz: '60' });
      }),
      runs(LABELS.plate),
    );
  });
});
