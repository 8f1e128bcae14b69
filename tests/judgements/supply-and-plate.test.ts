import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Parts } from '../../engine/schema.ts';
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
    ['a grounded leg', { l1g: 0, l2g: 240 }, 'good'],
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
    ['the lowest of the line left out', { min: '_' }, 'undecided'],
    ['the lowest of the load side left out', { min: 235, t1t2: '_' }, 'undecided'],
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
    ['ground alone doesn’t read', { hg: 0 }, 'good'],
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
    ['a ground asked and not read', { l1g: 133, l2g: '_', l3g: 133 }, 'undecided'],
    ['a sag', { min: 206.99 }, 'sag'],
    ['a sag wins over the report', { l1l3: 223.16, min: 206.99 }, 'sag'],
    ['contacts', { min: 225, t1t2: 222 }, 'contacts'],
    ['start not read', { min: '_' }, 'undecided'],
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

describe('a nameplate', () => {
  const of = (cells: Cells) => run('nameplate', { plate: parts('A', cells) });
  test.each([
    ['all fit', { rla: 17.9, lra: 96, fla: 1.2, mca: 23.6, mop: 40 }, 'plausible'],
    ['LRA 3 times', { rla: 20, lra: 60 }, 'plausible'],
    ['LRA below 3 times', { rla: 20, lra: 59.999 }, 'odd'],
    ['LRA 9 times', { rla: 20, lra: 180 }, 'plausible'],
    ['LRA above 9 times', { rla: 20, lra: 180.001 }, 'odd'],
    ['fan as large as the compressor', { rla: 20, fla: 20 }, 'plausible'],
    ['fan larger', { rla: 20, fla: 20.001 }, 'odd'],
    ['MCA 5 % low', { rla: 20, fla: 2.5, mca: 26.125 }, 'plausible'],
    ['MCA lower', { rla: 20, fla: 2.5, mca: 26.124 }, 'odd'],
    ['MCA 5 % high', { rla: 20, fla: 2.5, mca: 28.875 }, 'plausible'],
    ['MCA higher', { rla: 20, fla: 2.5, mca: 28.876 }, 'odd'],
    ['MCA high without a fan to compare', { rla: 20, mca: 40 }, 'plausible'],
    ['MCA low without a fan', { rla: 20, mca: 23.749 }, 'odd'],
    ['MCA on the edge without a fan', { rla: 20, mca: 23.75 }, 'plausible'],
    ['MOP on its bound', { rla: 20, fla: 2.5, mop: 47.5 }, 'plausible'],
    ['MOP past it', { rla: 20, fla: 2.5, mop: 47.501 }, 'odd'],
    ['MOP without a fan isn’t compared', { rla: 20, mop: 60 }, 'undecided'],
    ['MOP as MCA', { mca: 27.5, mop: 27.5 }, 'plausible'],
    ['MOP below MCA', { mca: 27.5, mop: 27.499 }, 'odd'],
    ['one figure', { rla: 20 }, 'undecided'],
    ['LRA without RLA', { lra: 100, fla: 2 }, 'undecided'],
    ['MCA alone', { mca: 20, fla: 2 }, 'undecided'],
    ['zero is no figure', { rla: 0, lra: 100 }, 'undecided'],
    ['left out', { rla: '_', lra: 100 }, 'undecided'],
  ] as [string, Cells, string][])('%s', (_, cells, outcome) => {
    expect(of(cells).outcome).toBe(outcome);
  });
  test('what is usual and what is plausible have different words', () => {
    const word = (lra: number) => of({ rla: 20, lra }).findings[0]?.word;
    expect([60, 79.999, 80, 160, 160.001, 180, 180.001].map(word)).toEqual([
      'plausible',
      'plausible',
      'usual',
      'usual',
      'plausible',
      'plausible',
      'odd',
    ]);
  });
  test('a bound outside the standard sizes names none', () => {
    const mop = (rla: number) => of({ rla, fla: 0.1, mop: 10 }).findings.find((f) => f.name === 'MOP')?.text;
    expect(mop(6)).toBe('MOP reads 10\u2009A; 2.25 times RLA plus the fan is 13.6\u2009A. They belong together.');
    expect(mop(20)).toBe(
      'MOP reads 10\u2009A; 2.25 times RLA plus the fan is 45.1\u2009A, 45\u2009A as a standard size. They belong together.',
    );
  });
  test('without a fan the text says so', () => {
    expect(of({ rla: 20, mca: 25 }).findings[0]?.text).toBe(
      'MCA reads 25\u2009A; 1.25 times RLA, without the fan, is 25\u2009A. They belong together.',
    );
    expect(of({ rla: 20, mca: 25 }).findings[0]?.limits).toBe('23.75\u2009A or more');
  });
  test('nothing at all', () => {
    expect(run('nameplate', {}).outcome).toBe('undecided');
  });
});

describe('running amps', () => {
  const PLATE: Cells = { rla: 20, lra: 100, fla: 1.2 };
  const of = (amps: Cells, plate: Cells = PLATE) =>
    run('running-amps', { amps: parts('A', amps), plate: parts('A', plate) });
  test.each([
    ['both usual', { comp: 14, fan: 0.9 }, 'running'],
    ['the sign of the clamp says nothing', { comp: -14, fan: -0.9 }, 'running'],
    ['compressor alone', { comp: 14 }, 'running'],
    ['fan alone', { fan: 0.9 }, 'running'],
    ['fan on its FLA', { comp: 14, fan: 1.2 }, 'running'],
    ['fan above it', { comp: 14, fan: 1.201 }, 'fan-high'],
    ['fan still', { comp: 14, fan: 0 }, 'fan-not-running'],
    ['idle', { comp: 0.499, fan: 0.9 }, 'not-running'],
    ['just not idle', { comp: 0.5 }, 'running'],
    ['RLA is no limit', { comp: 21 }, 'running'],
    ['on MCC', { comp: 31.2 }, 'running'],
    ['above MCC', { comp: 31.201 }, 'above-mcc'],
    ['just under near LRA', { comp: 79.999 }, 'above-mcc'],
    ['near LRA', { comp: 80 }, 'not-starting'],
    ['near LRA wins over the fan', { comp: 80, fan: 0 }, 'not-starting'],
    ['idle wins over the fan', { comp: 0, fan: 1.3 }, 'not-running'],
    ['above MCC wins over the fan', { comp: 40, fan: 1.3 }, 'above-mcc'],
    ['fan still wins over what is missing', { comp: '_', fan: 0 }, 'fan-not-running'],
    ['fan high wins over what is missing', { comp: '_', fan: 1.3 }, 'fan-high'],
    ['compressor left out', { comp: '_', fan: 0.9 }, 'undecided'],
    ['fan left out', { comp: 14, fan: '_' }, 'undecided'],
    ['OL', { comp: 'OL' }, 'undecided'],
    ['three legs', { leg1: 12, leg2: 12, leg3: 12 }, 'running'],
    ['10 % apart', { leg1: 12, leg2: 12, leg3: 13.894 }, 'running'],
    ['past 10 %', { leg1: 12, leg2: 12, leg3: 13.895 }, 'unbalanced'],
    ['two legs read', { leg1: 12, leg2: 12 }, 'undecided'],
    ['one leg read', { leg2: 12 }, 'undecided'],
    ['a leg left out', { leg1: 12, leg2: 12, leg3: '_' }, 'undecided'],
    ['all legs at nothing', { leg1: 0, leg2: 0, leg3: 0 }, 'not-running'],
    ['the largest leg counts', { leg1: 80, leg2: 79, leg3: 79 }, 'not-starting'],
    ['legs apart wins over the fan', { leg1: 12, leg2: 12, leg3: 14, fan: 0 }, 'unbalanced'],
  ] as [string, Cells, string][])('%s', (_, amps, outcome) => {
    expect(of(amps).outcome).toBe(outcome);
  });
  test('what the plate leaves out leaves open', () => {
    expect(of({ comp: 14 }, {}).outcome).toBe('undecided');
    expect(of({ comp: 14 }, { rla: 20 }).outcome).toBe('running');
    expect(of({ comp: 21 }, { rla: 20 }).outcome).toBe('undecided');
    expect(of({ comp: 32 }, { rla: 20 }).outcome).toBe('above-mcc');
    expect(of({ comp: 25 }, { rla: 20, mcc: 24.9, lra: 100 }).outcome).toBe('above-mcc');
    expect(of({ comp: 32 }, { rla: 20, mcc: 33, lra: 100 }).outcome).toBe('running');
    expect(of({ comp: 14 }, { lra: 100 }).outcome).toBe('running');
    expect(of({ comp: 14 }, { rla: 0, lra: 0 }).outcome).toBe('undecided');
    expect(of({ fan: 5 }, { fla: 0 }).outcome).toBe('running');
    expect(run('running-amps', {}).outcome).toBe('undecided');
    expect(run('running-amps', { plate: parts('A', PLATE) }).outcome).toBe('undecided');
  });
  test.each([
    [{ comp: 14 }, PLATE, 'The compressor draws 14\u2009A, 70\u2009% of its RLA.'],
    [{ comp: 11.9 }, PLATE, 'The compressor draws 11.9\u2009A, 60\u2009% of its RLA; 60\u2009% to 85\u2009% is usual.'],
    [{ comp: 19 }, PLATE, 'The compressor draws 19\u2009A, 95\u2009% of its RLA; 60\u2009% to 85\u2009% is usual.'],
    [
      { comp: 21 },
      PLATE,
      'The compressor draws 21\u2009A, above its RLA of 20\u2009A. RLA is no limit: look at head, coil and volts.',
    ],
    [
      { comp: 95 },
      PLATE,
      'The compressor draws 95\u2009A, 95\u2009% of its LRA: it is not starting. Turn it off within seconds.',
    ],
    [{ comp: 14 }, { lra: 100 }, 'The compressor draws 14\u2009A, 14\u2009% of its LRA.'],
    [
      { comp: 25 },
      { rla: 20, mcc: 24.9, lra: 100 },
      'The compressor draws 25\u2009A, above the 24.9\u2009A that its protector lets pass for long. That is a finding.',
    ],
    [{ comp: 14 }, {}, 'The compressor draws 14\u2009A. Without LRA nobody can tell running from stalled.'],
    [
      { comp: 21 },
      { rla: 20 },
      'The compressor draws 21\u2009A, 105\u2009% of its RLA. Without LRA nobody can tell running from stalled.',
    ],
    [{ fan: 1.3 }, PLATE, 'The fan draws 1.3\u2009A, above its FLA of 1.2\u2009A.'],
  ] as [Cells, Cells, string][])('%o on %o: %s', (amps, plate, text) => {
    expect(of(amps, plate).findings[0]?.text).toBe(text);
  });
  test('more amps never turn a stalled or overloaded compressor into a running one', () => {
    const amps = fc.integer({ min: 500, max: 120_000 }).map((n) => n / 1000);
    const rank = { running: 0, 'above-mcc': 1, 'not-starting': 2 } as Record<string, number>;
    fc.assert(
      fc.property(amps, amps, (a, b) => {
        const [less, more] = a < b ? [a, b] : [b, a];
        expect(rank[of({ comp: less }).outcome]).toBeLessThanOrEqual(rank[of({ comp: more }).outcome] ?? -1);
      }),
      { numRuns: 100 },
    );
  });
});

test('a plate or a line that is something else is no plate and no line', () => {
  const wrong: Parts = parts('Ω', { comp: 14, l1l2: 240, l1g: 120, l2g: 120, rla: 20, lra: 100 });
  expect(run('running-amps', { amps: wrong }).outcome).toBe('undecided');
  expect(run('supply', { line: wrong }).outcome).toBe('undecided');
  expect(run('nameplate', { plate: wrong }).outcome).toBe('undecided');
});
