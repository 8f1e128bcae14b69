import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Parts } from '../../engine/schema.ts';
import { choice, parts } from './fixture.ts';
import { run } from './run.ts';

type Cell = number | string;
type Given = Partial<Record<string, Parts>>;

describe('all loads to ground', () => {
  const of = (cells: Record<string, Cell>, plate?: number) =>
    run('loads-to-ground', {
      readings: parts('Ω', cells),
      ...(plate === undefined ? {} : { plate: parts('A', { mop: plate }) }),
    });
  test.each([
    ['both open', { t1g: 'OL', t2g: 'OL' }, 'none-found'],
    ['three open', { t1g: 'OL', t2g: 'OL', t3g: 'OL' }, 'none-found'],
    ['a third one not taken', { t1g: 'OL', t2g: 'OL', t3g: '_' }, 'none-found'],
    ['clear by a figure', { t1g: 2_000_000, t2g: 'OL' }, 'none-found'],
    ['just below clear', { t1g: 1_999_999, t2g: 'OL' }, 'undecided'],
    ['on the lower limit', { t1g: 500_000, t2g: 'OL' }, 'undecided'],
    ['low', { t1g: 499_999, t2g: 'OL' }, 'low'],
    ['low on the second', { t1g: 'OL', t2g: 11_000 }, 'low'],
    ['low on the third', { t1g: 'OL', t2g: 'OL', t3g: 11_000 }, 'low'],
    ['low beside one left out', { t1g: '_', t2g: 11_000 }, 'low'],
    ['one left out', { t1g: '_', t2g: 'OL' }, 'undecided'],
    ['the other left out', { t1g: 'OL' }, 'undecided'],
  ] as [string, Record<string, Cell>, string][])('%s', (_, cells, outcome) => {
    expect(of(cells).outcome).toBe(outcome);
  });

  const explained = (ohms: number, plate?: number) => of({ t1g: 'OL', t2g: ohms }, plate).findings.at(-1);
  test.each([
    [11_000, 40, 'a GFCI’s trip'],
    [20_000, 40, 'a GFCI’s trip'],
    [20_000.001, 40, 'no trip'],
    [30, 40, 'a trip beside the load'],
    [30.001, 40, 'a GFCI’s trip'],
    [3, 40, 'a breaker’s trip'],
    [3.001, 40, 'a trip beside the load'],
    [3, 41, 'a trip beside the load'],
    [8, undefined, 'a breaker’s trip'],
    [8, 0, 'a breaker’s trip'],
    [8.001, undefined, 'a trip beside the load'],
    [0, 40, 'a short'],
  ] as const)('%d Ω with a breaker of %s A: %s', (ohms, plate, word) => {
    expect(explained(ohms, plate)?.word).toBe(word);
  });
  test('11 kΩ is 10.9 mA: a GFCI’s trip, never that of 40 A', () => {
    expect(explained(11_000, 40)?.text).toBe(
      '11\u2009kΩ lets 10.9\u2009mA through at 120\u2009V. That trips a GFCI, never the 40\u2009A breaker: look on for a breaker’s reason.',
    );
    expect(explained(100, 15)?.reading).toBe('1.2\u2009A');
    expect(explained(480_000)?.reading).toBe('0.25\u2009mA');
  });
  test('the lowest figure of all is explained, and nothing is where none is low', () => {
    expect(of({ t1g: 3, t2g: 11_000 }).findings.at(-1)?.reading).toBe('40\u2009A');
    expect(of({ t1g: 'OL', t2g: 'OL' }).findings.map((f) => f.name)).toEqual(['T1–ground', 'T2–ground']);
    expect(of({ t1g: 2_000_000, t2g: 'OL', t3g: 'OL' }).findings.map((f) => f.name)).toEqual([
      'T1–ground',
      'T2–ground',
      'T3–ground',
    ]);
  });
  test('fewer ohms never make it better', () => {
    const rank = { low: 0, undecided: 1, 'none-found': 2 };
    const ohms = fc.integer({ min: 0, max: 4_000_000 });
    fc.assert(
      fc.property(ohms, ohms, (a, b) => {
        const [less, more] = a < b ? [a, b] : [b, a];
        const at = (t1g: number) => rank[of({ t1g, t2g: 'OL' }).outcome];
        expect(at(less)).toBeLessThanOrEqual(at(more));
      }),
      { numRuns: 100 },
    );
  });
  test('Ω and MΩ say the same', () => {
    for (const megohms of [0.49, 0.5, 1.99, 2]) {
      const outcome = run('loads-to-ground', { readings: parts('MΩ', { t1g: megohms, t2g: 'OL' }) }).outcome;
      expect(of({ t1g: Math.round(megohms * 1_000_000), t2g: 'OL' }).outcome).toBe(outcome);
    }
  });
});

describe('insulation', () => {
  const none = choice('choice', 'none');
  const at = (megohms: Cell): Parts => parts('MΩ', { megohms });
  const scroll = choice('choice', 'scroll');
  const of = (more: Given) => run('insulation', { state: none, test: choice('choice', '500'), ...more });

  test.each([
    ['nothing read yet', {}, 'ask'],
    ['scroll, on its limit', { machine: scroll, reading: at(0.5) }, 'good'],
    ['scroll, below', { machine: scroll, reading: at(0.49) }, 'low'],
    ['reciprocating, on its limit', { machine: choice('choice', 'reciprocating'), reading: at(2) }, 'good'],
    ['reciprocating, below', { machine: choice('choice', 'reciprocating'), reading: at(1.99) }, 'low'],
    ['motor, on its limit', { machine: choice('choice', 'motor'), reading: at(1) }, 'good'],
    ['motor, below', { machine: choice('choice', 'motor'), reading: at(0.99) }, 'low'],
    ['kind unknown, low for any', { reading: at(0.49) }, 'low'],
    ['kind unknown, in between', { reading: at(0.5) }, 'undecided'],
    ['kind unknown, just in between', { reading: at(1.99) }, 'undecided'],
    ['kind unknown, enough for any', { reading: at(2) }, 'good'],
    ['the maker’s figure first', { machine: scroll, maker: parts('MΩ', { maker: 50 }), reading: at(49.99) }, 'low'],
    ['on the maker’s figure', { machine: scroll, maker: parts('MΩ', { maker: 50 }), reading: at(50) }, 'good'],
    [
      'a maker’s figure below the kind’s',
      { machine: choice('c', 'reciprocating'), maker: parts('MΩ', { maker: 1 }), reading: at(1) },
      'good',
    ],
    [
      'a maker’s figure of zero is none',
      { machine: scroll, maker: parts('MΩ', { maker: 0 }), reading: at(0.49) },
      'low',
    ],
    ['OL', { reading: at('OL') }, 'good'],
    ['left out', { reading: at('_') }, 'undecided'],
    ['less than nothing', { reading: at(-1) }, 'undecided'],
    ['an ohmmeter', { test: choice('choice', 'meter'), reading: at(100) }, 'none-found'],
    ['no test volts told', { test: {}, reading: at(100) }, 'none-found'],
    [
      'words around a figure are no test volts',
      { test: choice('choice', 'about-1000'), reading: at(100) },
      'none-found',
    ],
    ['words behind a figure are none', { test: choice('choice', '1000-old'), reading: at(100) }, 'none-found'],
    ['an ohmmeter reads low', { test: choice('choice', 'meter'), reading: at(0.1) }, 'low'],
    ['500 V', { test: choice('choice', '500'), reading: at(100) }, 'good'],
    ['501 V', { test: choice('choice', '501'), reading: at(100) }, 'refused'],
    ['1000 V, before anything is read', { test: choice('choice', '1000') }, 'refused'],
    ['10000 V', { test: choice('choice', '10000') }, 'refused'],
    ['vacuum', { state: choice('choice', 'vacuum') }, 'refused'],
    ['vacuum beside something harmless', { state: choice('choice', 'cold', 'vacuum'), reading: at(100) }, 'refused'],
    ['electronics', { state: choice('choice', 'electronics'), reading: at(100) }, 'refused'],
    ['nobody knows about vacuum', { state: choice('choice', 'cant'), reading: at(100) }, 'undecided'],
    ['cold and low', { state: choice('choice', 'cold'), reading: at(0.1) }, 'warm-first'],
    ['cold and low twice', { state: choice('choice', 'cold'), reading: at(0.1), earlier: at(0.1) }, 'warm-first'],
    ['cold and enough', { state: choice('choice', 'cold'), reading: at(100) }, 'good'],
    ['heater on and low twice', { state: choice('choice', 'heater'), reading: at(0.1), earlier: at(0.1) }, 'low'],
    ['cold and heater on', { state: choice('choice', 'cold', 'heater'), reading: at(0.1) }, 'warm-first'],
    ['low twice', { machine: scroll, reading: at(0.49), earlier: at(0.49) }, 'grounded'],
    [
      'low twice, the first time by an ohmmeter',
      { machine: scroll, reading: at(0.1), earlier: at(0.1), earlierTest: choice('choice', 'meter') },
      'grounded',
    ],
    ['low after enough', { machine: scroll, reading: at(0.49), earlier: at(0.5) }, 'low'],
    ['low after a reading left out', { machine: scroll, reading: at(0.49), earlier: at('_') }, 'low'],
    ['enough after low', { machine: scroll, reading: at(0.5), earlier: at(0.49) }, 'good'],
    [
      'enough after an ohmmeter read low',
      { machine: scroll, reading: at(120), earlier: at(0.1), earlierTest: choice('choice', 'meter') },
      'undecided',
    ],
    [
      'enough after an ohmmeter found none',
      { machine: scroll, reading: at(120), earlier: at(100), earlierTest: choice('choice', 'meter') },
      'good',
    ],
    [
      'enough after a low test at 250 V',
      { machine: scroll, reading: at(120), earlier: at(0.1), earlierTest: choice('choice', '250') },
      'good',
    ],
  ] as [string, Given, string][])('%s', (_, given, outcome) => {
    expect(of(given).outcome).toBe(outcome);
  });

  test('nothing at all is told: not tested', () => {
    expect(run('insulation', {}).outcome).toBe('undecided');
    expect(run('insulation', { reading: at(100) }).outcome).toBe('undecided');
  });
  test('the band is said beside a figure and never where there is none', () => {
    expect(of({ reading: at(30) }).findings.map((f) => f.name)).toEqual(['Insulation', 'Trade’s band']);
    expect(of({ reading: at('OL') }).findings.map((f) => f.name)).toEqual(['Insulation']);
    expect(of({ reading: at(30), earlier: at(40) }).findings.map((f) => f.name)).toEqual([
      'Insulation, earlier',
      'Insulation',
      'Trade’s band',
    ]);
  });
  test('more megohms never make it worse, in Ω as in MΩ', () => {
    const rank = { low: 0, undecided: 1, good: 2 } as Record<string, number>;
    const megohms = fc.integer({ min: 0, max: 40_000 }).map((n) => n / 100);
    const kind = fc.constantFrom('scroll', 'reciprocating', 'motor', 'cant');
    fc.assert(
      fc.property(megohms, megohms, kind, (a, b, machine) => {
        const judged = (value: number) => of({ machine: choice('choice', machine), reading: at(value) }).outcome;
        const [less, more] = a < b ? [a, b] : [b, a];
        expect(rank[judged(less)]).toBeLessThanOrEqual(rank[judged(more)] ?? -1);
        const inOhms = parts('Ω', { megohms: Math.round(less * 1_000_000) });
        expect(of({ machine: choice('choice', machine), reading: inOhms }).outcome).toBe(judged(less));
      }),
      { numRuns: 150 },
    );
  });
});

describe('what an insulation test left on a winding', () => {
  const tester = choice('choice', '500');
  const of = (winding: Cell, before: Cell = 9.3, after: Cell = 9.3, test: Parts = tester) =>
    run('winding-residual', { readings: parts('V', { batteryBefore: before, winding, batteryAfter: after }), test });
  test.each<[Cell, Cell, Cell, string]>([
    [0, 9.3, 9.3, 'discharged'],
    [5, 7, 10, 'discharged'],
    [-5, -9.3, 9.3, 'discharged'],
    [5.01, 9.3, 9.3, 'charged'],
    [-5.01, 9.3, 9.3, 'charged'],
    [300, '_', '_', 'charged'],
    [0, 6.99, 9.3, 'meter'],
    [0, 9.3, 10.01, 'meter'],
    [0, '_', 0, 'meter'],
    [0, '_', 9.3, 'undecided'],
    [0, 9.3, '_', 'undecided'],
    ['_', 9.3, 9.3, 'undecided'],
  ])('%s V, battery %s and %s: %s', (winding, before, after, outcome) => {
    expect(of(winding, before, after).outcome).toBe(outcome);
  });
  test('before it is read', () => {
    expect(run('winding-residual', { test: tester }).outcome).toBe('ask');
    expect(run('winding-residual', { test: choice('choice', 'meter') }).outcome).toBe('no-charge');
    // Where nobody says what it was tested with, it counts as charged.
    expect(run('winding-residual', {}).outcome).toBe('ask');
  });
  test('what each says', () => {
    const texts = (w: Cell, before?: Cell): string[] => of(w, before).findings.map((f) => f.text);
    expect(texts(300).at(-1)).toContain('still holds');
    expect(texts(5).at(-1)).toContain('or less');
    expect(texts(0, 1)[0]).toContain('does not prove the meter on DC');
    expect(texts(0, 1).at(-1)).toContain('between two readings of the battery');
    expect(texts('_').at(-1)).toBe('The winding was not read.');
  });
});
