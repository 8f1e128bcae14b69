import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Parts } from '../../engine/schema.ts';
import { choice, parts } from './fixture.ts';
import { run } from './run.ts';

type Cell = number | string;
type Given = Partial<Record<string, Parts>>;
const hot = choice('choice', 'hot');
const ohm = fc.integer({ min: 1, max: 60_000 }).map((n) => n / 1000);
const cell: fc.Arbitrary<Cell> = fc.oneof({ weight: 4, arbitrary: ohm }, fc.constantFrom<Cell>('OL', '_', 0));

describe('a compressor’s windings', () => {
  const line = (cr: Cell, cs: Cell, sr: Cell, g: Cell = 'OL'): Parts => parts('Ω', { cr, cs, sr, g });
  const of = (readings: Parts, more: Given = {}) => run('compressor-windings', { readings, ...more });
  const overload = line('OL', 'OL', 4.6);
  const misfit = line(6, 7, 8);

  test.each([
    ['a sum that fits', line(1.2, 3.4, 4.6), 'good'],
    ['one that fits by doubt only', line(1.2, 3.4, 5.5), 'good'],
    ['start and run not told apart', line(1.2, 1.3, 2.5), 'good'],
    ['the impossible set', misfit, 'repeat'],
    ['start and run crossed', line(3.4, 1.2, 4.6), 'repeat'],
    ['C called S', line(4.6, 1.2, 3.4), 'repeat'],
    ['three equal', line(10, 10, 10), 'repeat'],
    ['three equal and so small that a sum would fit by doubt', line(0.4, 0.4, 0.41), 'repeat'],
    ['a run winding of nothing', line(0, 3.4, 3.4), 'repeat'],
    ['a start winding of nothing', line(1.2, 0, 1.2), 'repeat'],
    ['one pair open between two that read', line(1.2, 'OL', 4.6), 'repeat'],
    ['both pairs to C open', overload, 'ask-shell'],
    ['start open', line(1.2, 'OL', 'OL'), 'open-start'],
    ['run open', line('OL', 3.4, 'OL'), 'open-run'],
    ['all open', line('OL', 'OL', 'OL'), 'all-open'],
    ['a ground', line(1.2, 3.4, 4.6, 499_999), 'grounded'],
    ['a ground at zero', line(1.2, 3.4, 4.6, 0), 'grounded'],
    ['a ground wins over open pairs', line('OL', 'OL', 'OL', 12), 'grounded'],
    ['a ground wins over what wasn’t read', line('_', '_', '_', 12), 'grounded'],
    ['between the limits', line(1.2, 3.4, 4.6, 500_000), 'undecided'],
    ['just below clear', line(1.2, 3.4, 4.6, 1_999_999), 'undecided'],
    ['on clear', line(1.2, 3.4, 4.6, 2_000_000), 'good'],
    ['frame not read', line(1.2, 3.4, 4.6, '_'), 'undecided'],
    ['a negative reading is none', line(-1.2, 3.4, 4.6), 'undecided'],
    ['a pair left out', line(1.2, '_', 4.6), 'undecided'],
    ['an open pattern stands without the frame', line(1.2, 'OL', 'OL', '_'), 'open-start'],
  ])('%s', (_, readings, outcome) => {
    expect(of(readings).outcome).toBe(outcome);
  });

  test('what the shell is decides about both pairs to C', () => {
    expect(of(overload, { shell: hot }).outcome).toBe('overload-open');
    expect(of(overload, { shell: choice('shell', 'cold') }).outcome).toBe('common-lead');
    expect(of(overload, { shell: choice('choice', 'cant') }).outcome).toBe('until-cool');
    expect(of(overload, { shell: {} }).outcome).toBe('until-cool');
    expect(of(line(1.2, 'OL', 'OL'), { shell: hot }).outcome).toBe('open-start');
  });

  test('two lines open in different pairs condemn nothing; open in the same ones they agree', () => {
    const [start, run] = [line(1.2, 'OL', 'OL'), line('OL', 3.4, 'OL')];
    for (const [now, earlier, outcome] of [
      [start, start, 'open-start'],
      [start, run, 'undecided'],
      [start, overload, 'undecided'],
      [start, line('OL', 'OL', 'OL'), 'undecided'],
      // Whole before: what is open now is looked at as it is.
      [start, line(1.2, 3.4, 4.6), 'open-start'],
      [line(1.2, 3.4, 4.6), start, 'good'],
    ] as const)
      expect(of(now, { earlier }).outcome).toBe(outcome);
    expect(of(start, { earlier: run }).findings.map((f) => f.word)).toContain('apart');
    expect(of(line(1.2, 'OL', 'OL', 400_000), { earlier: run }).outcome).toBe('grounded');
  });

  test('a repeat is asked once; what came before counts only where it asked for one', () => {
    expect(of(misfit, { earlier: misfit }).outcome).toBe('undecided');
    expect(of(misfit, { earlier: line(10, 10, 10) }).outcome).toBe('undecided');
    expect(of(misfit, { earlier: line(1.2, 'OL', 4.6) }).outcome).toBe('undecided');
    expect(of(misfit, { earlier: line(0, 3.4, 3.4) }).outcome).toBe('undecided');
    expect(of(misfit, { earlier: line(3.4, 1.2, 4.6) }).outcome).toBe('undecided');
    expect(of(misfit, { earlier: overload }).outcome).toBe('repeat');
    expect(of(misfit, { earlier: line('_', '_', '_') }).outcome).toBe('repeat');
    expect(of(misfit, { earlier: line(1.2, 3.4, 4.6) }).outcome).toBe('repeat');
    expect(of(line(1.2, 3.4, 4.6), { earlier: misfit }).outcome).toBe('good');
    expect(of(misfit, { earlier: misfit }).findings.map((f) => f.name)).toEqual([
      'Windings, earlier',
      'Windings',
      'Frame',
    ]);
    expect(of(misfit).findings.map((f) => f.name)).toEqual(['Windings', 'Frame']);
  });

  test('another assignment is named, and the windings are not blamed', () => {
    const text = of(line(4.6, 1.2, 3.4)).findings[0]?.text ?? '';
    expect(text).toContain('S is in truth C, R is in truth S, C is in truth R.');
    expect(text).toContain('The windings are not blamed.');
    const named = (cr: Cell, cs: Cell, sr: Cell) => of(line(cr, cs, sr)).findings[0]?.text ?? '';
    expect(named(1.2, 4.6, 3.4)).toContain('fit other terminals: R is in truth C, C is in truth R.');
    expect(named(3.4, 4.6, 1.2)).toContain('fit other terminals: R is in truth C, C is in truth S, S is in truth R.');
    expect(of(line(1.2, 1.3, 2.5)).findings[0]?.text).toContain('This meter can’t tell the terminals apart here.');
    expect(of(line(1.2, 3.4, 4.6)).findings[0]?.text).toBe(
      'S–R reads 4.6\u2009Ω, C–R and C–S together 4.6\u2009Ω: the sum fits.',
    );
  });

  test('never good without a sum that fits and a clear frame; never condemned by a sum', () => {
    fc.assert(
      fc.property(cell, cell, cell, fc.constantFrom<Cell>('OL', '_', 100, 1_000_000, 3_000_000), (cr, cs, sr, g) => {
        const { outcome } = of(line(cr, cs, sr, g));
        const whole = [cr, cs, sr].every((r) => typeof r === 'number');
        if (outcome === 'good') {
          const room = 0.9 + 0.01 * (Number(cr) + Number(cs) + Number(sr));
          expect(Math.abs(Number(sr) - Number(cr) - Number(cs))).toBeLessThanOrEqual(room + 1e-9);
          expect(g === 'OL' || g === 3_000_000).toBe(true);
        }
        if (whole && g !== 100) expect(['good', 'repeat', 'undecided']).toContain(outcome);
      }),
      { numRuns: 300 },
    );
  });

  test('renaming the terminals: one name in six fits where start and run are apart', () => {
    const run = fc.integer({ min: 1300, max: 5000 }).map((n) => n / 1000);
    const further = fc.integer({ min: 1500, max: 20_000 }).map((n) => n / 1000);
    fc.assert(
      fc.property(run, further, (cr, more) => {
        const cs = Number((cr + more).toFixed(3));
        const sr = Number((cr + cs).toFixed(3));
        const [r, s, l] = [cr, cs, sr];
        const all = [line(r, s, l), line(s, r, l), line(r, l, s), line(l, r, s), line(s, l, r), line(l, s, r)];
        expect(all.map((readings) => of(readings).outcome)).toEqual(['good', ...Array(5).fill('repeat')]);
        expect(all.map((readings) => of(readings).findings[0]?.word)).toEqual([
          'sum fits',
          ...Array(5).fill('other terminals'),
        ]);
      }),
      { numRuns: 60 },
    );
  });
});

describe('a fan’s windings', () => {
  const line = (first: Cell, second: Cell, third: Cell, frame: Cell = 'OL'): Parts =>
    parts('Ω', { first, second, third, frame });
  const of = (readings: Parts, more: Given = {}) => run('fan-windings', { readings, ...more });
  const misfit = line(14, 31, 60);
  test.each([
    ['the usual fan', line(14, 31, 45), 'good'],
    ['on the doubt', line(14, 31, 46.818), 'good'],
    ['past the doubt', line(14, 31, 46.819), 'repeat'],
    ['below by the doubt', line(14, 31, 43.218), 'good'],
    ['below past the doubt', line(14, 31, 43.217), 'repeat'],
    ['a pair of nothing', line(0, 31, 31), 'repeat'],
    ['all open', line('OL', 'OL', 'OL'), 'ask-warm'],
    ['two open', line('OL', 31, 'OL'), 'ask-warm'],
    ['one open', line(14, 'OL', 45), 'repeat'],
    ['to the frame', line(14, 31, 45, 999_999), 'to-frame'],
    ['to the frame, all open', line('OL', 'OL', 'OL', 5), 'to-frame'],
    ['frame on the limit', line(14, 31, 45, 1_000_000), 'undecided'],
    ['frame below clear', line(14, 31, 45, 4_999_999), 'undecided'],
    ['frame on clear', line(14, 31, 45, 5_000_000), 'good'],
    ['frame left out', line(14, 31, 45, '_'), 'undecided'],
    ['a pair left out', line('_', 31, 45), 'undecided'],
    ['a pair left out beside an open one', line('_', 'OL', 45), 'undecided'],
  ])('%s', (_, readings, outcome) => {
    expect(of(readings).outcome).toBe(outcome);
  });
  test('open pairs wait for the motor to cool', () => {
    for (const open of [line('OL', 'OL', 'OL'), line('OL', 31, 'OL')]) {
      expect(of(open, { warm: hot }).outcome).toBe('protector-open');
      expect(of(open, { warm: choice('choice', 'cool') }).outcome).toBe('open');
      expect(of(open, { warm: choice('choice', 'cant') }).outcome).toBe('until-cool');
    }
  });
  test('a repeat is asked once', () => {
    expect(of(misfit, { earlier: misfit }).outcome).toBe('undecided');
    expect(of(misfit, { earlier: line(14, 'OL', 45) }).outcome).toBe('undecided');
    expect(of(misfit, { earlier: line(0, 31, 31) }).outcome).toBe('undecided');
    expect(of(misfit, { earlier: line('OL', 'OL', 'OL') }).outcome).toBe('repeat');
    expect(of(misfit, { earlier: line(14, 31, 45) }).outcome).toBe('repeat');
    expect(of(line(14, 31, 45), { earlier: misfit }).outcome).toBe('good');
    expect(of(misfit, { earlier: misfit }).findings.map((f) => f.name)).toEqual([
      'Windings, earlier',
      'Windings',
      'Frame',
    ]);
  });
  test('the order of the pairs says nothing', () => {
    fc.assert(
      fc.property(cell, cell, cell, (a, b, c) => {
        const outcome = of(line(a, b, c)).outcome;
        expect(of(line(c, a, b)).outcome).toBe(outcome);
        expect(of(line(b, a, c)).outcome).toBe(outcome);
      }),
      { numRuns: 200 },
    );
  });
});

describe('three equal windings', () => {
  const line = (first: Cell, second: Cell, third: Cell, frame: Cell = 'OL'): Parts =>
    parts('Ω', { first, second, third, frame });
  const of = (readings: Parts, more: Given = {}) => run('three-windings', { readings, ...more });
  test.each([
    ['equal', line(1, 1, 1), 'good'],
    ['an inverter’s, equal by the doubt', line(0.4, 0.5, 0.6), 'good'],
    ['39, 40, 41 Ω', line(39, 40, 41), 'good'],
    ['100, 100, 105.084 Ω', line(100, 100, 105.084), 'good'],
    ['100, 100, 105.085 Ω', line(100, 100, 105.085), 'repeat'],
    ['a delta with one winding open', line(10, 10, 20), 'repeat'],
    ['one pair of nothing', line(0, 1, 1), 'repeat'],
    ['one lead open', line('OL', 10, 'OL'), 'open'],
    ['all open', line('OL', 'OL', 'OL'), 'ask-warm'],
    ['one open', line(10, 'OL', 10), 'repeat'],
    ['grounded', line(1, 1, 1, 499_999), 'grounded'],
    ['frame between', line(1, 1, 1, 500_000), 'undecided'],
    ['frame clear', line(1, 1, 1, 2_000_000), 'good'],
    ['frame left out', line(1, 1, 1, '_'), 'undecided'],
    ['a pair left out', line(1, 1, '_'), 'undecided'],
  ])('%s', (_, readings, outcome) => {
    expect(of(readings).outcome).toBe(outcome);
  });
  test('hot and all open is the protector; one open lead is not', () => {
    const all = line('OL', 'OL', 'OL');
    expect(of(all, { warm: hot }).outcome).toBe('protector-open');
    expect(of(all, { warm: choice('choice', 'cool') }).outcome).toBe('open');
    expect(of(all, { warm: choice('choice', 'cant') }).outcome).toBe('until-cool');
    expect(of(line('OL', 10, 'OL'), { warm: hot }).outcome).toBe('open');
    expect(of(line('OL', 10, 'OL'), { warm: hot }).findings[0]?.text).toBe(
      'Two pairs read OL: one lead or winding is open. Look at plug and leads before the motor.',
    );
  });
  test('a repeat is asked once', () => {
    const misfit = line(10, 10, 20);
    expect(of(misfit, { earlier: misfit }).outcome).toBe('undecided');
    expect(of(misfit, { earlier: line('OL', 'OL', 'OL') }).outcome).toBe('repeat');
    expect(of(line(1, 1, 1), { earlier: misfit }).outcome).toBe('good');
    expect(of(line('OL', 1, 'OL'), { earlier: line('OL', 1, 'OL') }).outcome).toBe('open');
    expect(of(line('OL', 1, 'OL'), { earlier: line('OL', 'OL', 1) }).outcome).toBe('undecided');
    expect(of(line('OL', 'OL', 'OL'), { earlier: line('OL', 'OL', 1) }).outcome).toBe('undecided');
    expect(of(line('OL', 1, 'OL'), { earlier: line('OL', 'OL', 1) }).findings.map((f) => f.word)).toContain('apart');
    expect(of(misfit, { earlier: misfit }).findings.map((f) => f.name)).toEqual([
      'Windings, earlier',
      'Windings',
      'Frame',
    ]);
  });
});
