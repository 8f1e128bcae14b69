import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { parts } from './fixture.ts';
import { run } from './run.ts';

type Cell = number | string;
type Cells = Record<string, Cell>;

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
  test('where the MCC is from stands beside it', () => {
    expect(of({ comp: 25 }, { rla: 20, mcc: 24.9 }).findings[0]?.source).toBe('MCC on the nameplate');
    expect(of({ comp: 32 }, { rla: 20 }).findings[0]?.source).toBe('set for this test');
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

test('a plate that is in ohms is no plate', () => {
  const wrong = parts('Ω', { comp: 14, rla: 20, lra: 100 });
  expect(run('running-amps', { amps: wrong }).outcome).toBe('undecided');
  expect(run('nameplate', { plate: wrong }).outcome).toBe('undecided');
});
