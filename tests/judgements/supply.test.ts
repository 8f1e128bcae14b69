import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { choice, parts } from './fixture.ts';
import { run } from './run.ts';

type Cell = number | string;
type Cells = Record<string, Cell>;

describe('the supply of two legs', () => {
  const base: Cells = { l1l2: 240, l1g: 120, l2g: 120 };
  const of = (cells: Cells, volts = '208/230', machine?: string) =>
    run('supply', {
      line: parts('V', { ...base, ...cells }),
      ...(volts === '' ? {} : { plate: choice('volts', volts) }),
      ...(machine === undefined ? {} : { machine: choice('choice', machine) }),
    });
  test.each([
    ['sound', {}, 'good'],
    ['on the lower limit', { l1l2: 197 }, 'good'],
    ['below it', { l1l2: 196.99 }, 'out'],
    ['on the upper limit', { l1l2: 253 }, 'good'],
    ['above it', { l1l2: 253.01 }, 'out'],
    ['signs say nothing', { l1l2: -240, l1g: -120 }, 'good'],
    ['nothing', { l1l2: 0, l1g: 0, l2g: 0 }, 'absent'],
    ['a leg lost through a load', { l1l2: 0.4 }, 'leg-lost'],
    ['a leg lost without one', { l1l2: 118, l2g: 0 }, 'leg-lost'],
    ['a grounded leg, or no ground where the probe stood', { l1g: 0, l2g: 240 }, 'no-ground'],
    ['just no ground', { l1g: 49.99 }, 'no-ground'],
    ['just a ground', { l1g: 50 }, 'good'],
    ['L1–ground left out', { l1g: '_' }, 'undecided'],
    ['L2–ground left out', { l2g: '_' }, 'undecided'],
    ['L1–L2 left out', { l1l2: '_' }, 'undecided'],
    ['OL is no volts', { l1l2: 'OL' }, 'undecided'],
    ['a fall of 10 %', { min: 216 }, 'good'],
    ['a fall past 10 %', { min: 215.99 }, 'sag'],
    ['a fall below the range', { l1l2: 210, min: 196.99 }, 'sag'],
    ['to the end of the range', { l1l2: 210, min: 197 }, 'good'],
    ['a rise', { min: 241 }, 'good'],
    ['3 V lost inside', { min: 235, t1t2: 232 }, 'contacts'],
    ['less than 3 V', { min: 235, t1t2: 232.01 }, 'good'],
    ['the line first', { min: 215.99, t1t2: 200 }, 'sag'],
    ['only the load side, holding', { t1t2: 216 }, 'good'],
    ['only the load side, sagging', { t1t2: 215.99 }, 'sag'],
    ['line fine and load side too low by little', { l1l2: 199, min: 198, t1t2: 196.99 }, 'sag'],
    ['the lowest of the line left out: the rest counts', { min: '_' }, 'good'],
    ['the lowest of the load side left out', { min: 235, t1t2: '_' }, 'good'],
    ['out wins over what wasn’t read at the start', { l1l2: 190, min: '_' }, 'out'],
  ] as [string, Cells, string][])('%s', (_, cells, outcome) => {
    expect(of(cells).outcome).toBe(outcome);
  });

  test.each([
    ['208/230', 'scroll', 188, 'good'],
    ['208/230', 'scroll', 187.99, 'out'],
    ['208/230', 'semi-hermetic', 188, 'good'],
    ['208/230', 'hermetic', 196.99, 'out'],
    ['208/230', 'cant', 196.99, 'out'],
    ['208/230', 'scroll', 253, 'good'],
    ['230', 'scroll', 206.99, 'out'],
    ['230', 'scroll', 207, 'good'],
    ['208', undefined, 187.2, 'good'],
    ['208', undefined, 228.81, 'out'],
    ['240', undefined, 264, 'good'],
    ['', undefined, 197, 'good'],
    ['', undefined, 196.99, 'out'],
    ['unknown', undefined, 253.01, 'out'],
  ] as const)('nameplate %s, %s, %d V: %s', (volts, machine, l1l2, outcome) => {
    expect(of({ l1l2 }, volts, machine).outcome).toBe(outcome);
  });
  test('an assumed nameplate is said, a known one isn’t', () => {
    expect(of({}, '').findings[0]?.text).toBe(
      'L1–L2 reads 240\u2009V, inside 197–253\u2009V. A 208/230\u2009V nameplate is assumed.',
    );
    expect(of({}).findings[0]?.text).toBe('L1–L2 reads 240\u2009V, inside 197–253\u2009V.');
  });
  test('the plate is asked only where nobody read it and the line is out as another would have it', () => {
    expect(of({ l1l2: 118, l1g: 59, l2g: 59 }, '').outcome).toBe('which-plate');
    expect(of({ l1l2: 118, l1g: 59, l2g: 59 }).outcome).toBe('out');
    // A lost leg leaves about 115 V between the two as well: that is no other nameplate.
    expect(of({ l1l2: 118, l2g: 0 }, '').outcome).toBe('leg-lost');
  });
  test('a start that was watched and not read is said', () => {
    const { outcome, findings } = of({ min: '_', t1t2: '_' });
    expect(outcome).toBe('good');
    expect(findings.at(-1)).toMatchObject({
      ...{ name: 'During the start', reading: 'no reading', word: 'missing' },
      text: 'The lowest volts during the start were not read.',
    });
    expect(of({ min: 235, t1t2: '_' }).findings.map((f) => f.name)).not.toContain('During the start');
  });
  test('volts closer to the middle never make it worse', () => {
    const volts = fc.integer({ min: 19000, max: 26000 }).map((n) => n / 100);
    fc.assert(
      fc.property(volts, volts, (a, b) => {
        const [near, far] = Math.abs(a - 225) < Math.abs(b - 225) ? [a, b] : [b, a];
        if (of({ l1l2: far }).outcome === 'good') expect(of({ l1l2: near }).outcome).toBe('good');
        expect(of({ l1l2: a, l1g: 100, l2g: 140 }).outcome).toBe(of({ l1l2: a, l1g: 140, l2g: 100 }).outcome);
      }),
      { numRuns: 100 },
    );
  });
});

describe('a 115 V supply', () => {
  const of = (cells: Cells, volts = '115') =>
    run('supply', { line: parts('V', { hn: 115, hg: 115, ng: 0, ...cells }), plate: choice('volts', volts) }).outcome;
  test.each([
    ['sound', {}, 'good'],
    ['lower limit', { hn: 103.5 }, 'good'],
    ['below', { hn: 103.49 }, 'out'],
    ['upper limit', { hn: 126.5 }, 'good'],
    ['above', { hn: 126.51 }, 'out'],
    ['neutral sound', { ng: 5 }, 'good'],
    ['neutral not sound', { ng: 5.01 }, 'neutral'],
    ['neutral open', { hn: 12 }, 'neutral'],
    ['just not alive', { hn: 49.99 }, 'neutral'],
    ['just alive', { hn: 50 }, 'out'],
    ['nothing', { hn: 0, hg: 0 }, 'absent'],
    ['ground alone doesn’t read', { hg: 0 }, 'no-ground'],
    ['just a ground', { hg: 50 }, 'good'],
    ['neutral pair left out', { ng: '_' }, 'undecided'],
    ['hot to ground left out', { hg: '_' }, 'undecided'],
    ['sag', { min: 103.49 }, 'sag'],
  ] as [string, Cells, string][])('%s', (_, cells, outcome) => {
    expect(of(cells)).toBe(outcome);
  });
  test('120 V on the plate counts, and without one 115 is taken', () => {
    expect(of({ hn: 108 }, '120')).toBe('good');
    expect(of({ hn: 107.99 }, '120')).toBe('out');
    expect(of({ hn: 103.5 }, '')).toBe('good');
    expect(of({ hn: 103.49 }, '')).toBe('out');
  });
});

describe('a three-phase supply', () => {
  const of = (cells: Cells, volts = '208/230') =>
    run('supply', { line: parts('V', { l1l2: 230, l2l3: 230, l1l3: 230, ...cells }), plate: choice('volts', volts) });
  test.each([
    ['sound', {}, 'good'],
    ['with grounds', { l1g: 133, l2g: 133, l3g: 133 }, 'good'],
    ['2 % apart', { l1l3: 223.17 }, 'good'],
    ['past 2 %', { l1l3: 223.16 }, 'report'],
    ['5 % apart', { l1l3: 213.18 }, 'report'],
    ['past 5 %', { l1l3: 213.17 }, 'unbalanced'],
    ['single-phasing', { l2l3: 115, l1l3: 115 }, 'single-phasing'],
    ['dead fuse, no load', { l2l3: 0, l1l3: 0 }, 'single-phasing'],
    ['a leg without volts to ground', { l2l3: 160, l1l3: 160, l1g: 133, l2g: 133, l3g: 0 }, 'leg-lost'],
    ['the same alive to ground', { l2l3: 160, l1l3: 160, l1g: 133, l2g: 133, l3g: 50 }, 'unbalanced'],
    ['a corner-grounded delta', { l1g: 230, l2g: 0, l3g: 230 }, 'good'],
    ['nothing', { l1l2: 0, l2l3: 0, l1l3: 0 }, 'absent'],
    ['nothing across, something to ground', { l1l2: 0, l2l3: 0, l1l3: 0, l1g: 120, l2g: 0, l3g: 0 }, 'leg-lost'],
    ['all low alike', { l1l2: 186.99, l2l3: 186.99, l1l3: 186.99 }, 'out'],
    ['all on the limit', { l1l2: 187, l2l3: 187, l1l3: 187 }, 'good'],
    ['one line left out', { l2l3: '_' }, 'undecided'],
    ['another left out', { l1l3: '_' }, 'undecided'],
    ['L1–L2 left out', { l1l2: '_' }, 'undecided'],
    ['one line left out, its legs read to ground', { l2l3: '_', l1g: 133, l2g: 133, l3g: 133 }, 'undecided'],
    ['another left out, its legs read to ground', { l1l3: '_', l1g: 133, l2g: 133, l3g: 133 }, 'undecided'],
    ['a ground asked and not read', { l1g: 133, l2g: '_', l3g: 133 }, 'undecided'],
    ['the first ground asked and not read', { l1g: '_', l2g: 133, l3g: 133 }, 'undecided'],
    ['the third ground asked and not read', { l1g: 133, l2g: 133, l3g: '_' }, 'undecided'],
    ['a sag', { min: 206.99 }, 'sag'],
    ['a sag wins over the report', { l1l3: 223.16, min: 206.99 }, 'sag'],
    ['contacts', { min: 225, t1t2: 222 }, 'contacts'],
    ['start not read: the lines still count', { min: '_' }, 'good'],
  ] as [string, Cells, string][])('%s', (_, cells, outcome) => {
    expect(of(cells).outcome).toBe(outcome);
  });
  test('three lines of nothing across with grounds alive never divide by zero', () => {
    const { outcome, findings } = of({ l1l2: 0, l2l3: 0, l1l3: 0, l1g: 120, l2g: 120, l3g: 120 });
    expect(outcome).toBe('leg-lost');
    expect(findings.at(-1)?.word).toBe('leg lost');
  });
  test('a 460 V plate has its own range', () => {
    expect(of({ l1l2: 460, l2l3: 460, l1l3: 460 }, '460').outcome).toBe('good');
    expect(of({ l1l2: 413.99, l2l3: 413.99, l1l3: 413.99 }, '460').outcome).toBe('out');
  });
  test('a high leg is said and is no fault', () => {
    const { outcome, findings } = of({ l1g: 120, l2g: 208, l3g: 120 });
    expect(outcome).toBe('good');
    expect(findings.find((f) => f.name === 'High leg')?.reading).toBe('208\u2009V');
    expect(of({ l1g: 133, l2g: 133, l3g: 133 }).findings.some((f) => f.name === 'High leg')).toBe(false);
  });
  test('what unbalance costs is said, and no figure is rounded onto its limit', () => {
    const text = (l1l3: number) => of({ l1l3 }).findings.find((f) => f.name === 'Unbalance')?.text;
    expect(text(223.16)).toBe(
      'The three lines are 2.002\u2009% apart, past 2\u2009%. Report it. The windings warm about 8\u2009% more, and about 95\u2009% of the power is left.',
    );
    expect(text(213.17)).toBe('The three lines are 5.0002\u2009% apart, past 5\u2009%. Turn it off and don’t run it.');
    expect(text(230)).toBe('The three lines are 0\u2009% apart.');
  });
  test('the names of the lines say nothing', () => {
    const volts = fc.integer({ min: 0, max: 26000 }).map((n) => n / 100);
    fc.assert(
      fc.property(volts, volts, volts, (a, b, c) => {
        expect(of({ l1l2: a, l2l3: b, l1l3: c }).outcome).toBe(of({ l1l2: c, l2l3: a, l1l3: b }).outcome);
      }),
      { numRuns: 150 },
    );
  });
});

test('a line that is in ohms is no line', () => {
  expect(run('supply', { line: parts('Ω', { l1l2: 240, l1g: 120, l2g: 120 }) }).outcome).toBe('undecided');
});
