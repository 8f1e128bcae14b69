import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Parts } from '../../engine/schema.ts';
import { FORCE, labelled, parts, SETTINGS } from './fixture.ts';
import { run } from './run.ts';

type Cell = number | string;
const T = '\u2009';
/** Amps and volts of HERM, then of FAN. */
const load = (hermAmps: Cell, hermVolts: Cell, fanAmps?: Cell, fanVolts?: Cell): Parts => ({
  ...parts('A', { hermAmps, ...(fanAmps === undefined ? {} : { fanAmps }) }),
  ...parts('V', { hermVolts, ...(fanVolts === undefined ? {} : { fanVolts }) }),
});
const of = (readings: Parts, before?: Parts, force = FORCE, label = labelled('45+5')) =>
  run('under-load', { label, readings, ...(before ? { before } : {}) }, force);
const texts = (judged: { findings: readonly { text: string }[] }): string[] => judged.findings.map((f) => f.text);

describe('a run capacitor while it runs', () => {
  // At 345 V 60 Hz: 5.853 A is 45 µF; limits 42.3 (5.502 A) and 47.7 (6.204 A); doubt about ±4 %.
  test.each<[Parts, Parts | undefined, string]>([
    [load(5.853, 345), undefined, 'pass'],
    [load(5.51, 345), undefined, 'conditional-pass'],
    [load(5.49, 345), undefined, 'repeat'],
    [load(5.49, 345), load(5.49, 345), 'fails'],
    [load(5.49, 345), load(5.853, 345), 'repeat'],
    [load(5.49, 345), load('_', 345), 'repeat'],
    [load(6.21, 345), undefined, 'repeat'],
    [load(6.21, 345), load(6.3, 345), 'fails'],
    [load(5.853, 345), load(5, 345), 'pass'],
    [load(4.5, 345), undefined, 'fails'],
    [load(7, 345), undefined, 'too-high'],
    [load(7, 345), load(7, 345), 'too-high-twice'],
    [load(7, 345), load(6.21, 345), 'too-high-twice'],
    [load(7, 345), load(5, 345), 'too-high'],
    [load(8.032, 240), undefined, 'undecided'],
    [load(8.032, 240), load(8.032, 240), 'undecided'],
    [load(7, 253), undefined, 'undecided'],
    [load(7, 253.01), undefined, 'too-high'],
    [load(4.071, 240), undefined, 'pass'],
    [load(0, 345), undefined, 'undecided'],
    [load(0.117, 345), undefined, 'undecided'],
    [load(0.118, 345), undefined, 'fails'],
    [load(5.853, 0), undefined, 'undecided'],
    [load(5.853, 0.3), undefined, 'undecided'],
    [load('_', 345), undefined, 'undecided'],
    [load(5.853, '_'), undefined, 'undecided'],
    [load(-5.853, -345), undefined, 'pass'],
  ])('%j after %j: %s', (readings, before, outcome) => {
    expect(of(readings, before).outcome).toBe(outcome);
  });
  test('FAN counts where it was clamped, and the worst of both is the part’s', () => {
    // At 330 V 60 Hz: 0.622 A is 5 µF; the clamp's counts make the doubt about 11 %.
    expect(of(load(5.853, 345, 0.622, 330)).outcome).toBe('conditional-pass');
    expect(of(load(5.853, 345, 0.3, 330)).outcome).toBe('fails');
    expect(of(load(4.5, 345, 0.622, 330)).outcome).toBe('fails');
    expect(of(load(7, 345, 0.3, 330)).outcome).toBe('fails');
    expect(of(load(5.49, 345, 0.9, 330)).outcome).toBe('too-high');
    expect(of(load(5.853, 345, 0.622)).outcome).toBe('undecided');
    expect(of(load(5.853, 345, '_', 330)).outcome).toBe('undecided');
    expect(of(load(5.49, 345, '_', 330)).outcome).toBe('repeat');
    expect(of(load(5.853, 345, '_', '_')).outcome).toBe('pass');
    expect(of(load(5.853, 345, 0.622, 330)).findings.map((f) => f.name)).toEqual(['HERM', 'FAN']);
    expect(of(load(5.853, 345, 0.3, 330), undefined, FORCE, labelled('45')).findings.map((f) => f.name)).toEqual([
      'HERM',
    ]);
  });
  test('the supply’s frequency and the shop’s rule are in force', () => {
    const fifty = { ...FORCE, settings: { ...SETTINGS, hertz: '50' as const } };
    expect(of(load(4.877, 345), undefined, fifty).outcome).toBe('pass');
    expect(of(load(4.877, 345)).outcome).toBe('fails');
    const plain = { ...FORCE, settings: { ...SETTINGS, rule: 'plain' as const } };
    expect(of(load(5.51, 345), undefined, plain).outcome).toBe('pass');
    expect(of(load(5.49, 345), undefined, plain).outcome).toBe('fails');
    expect(of(load(6.21, 345), undefined, plain).outcome).toBe('too-high');
  });
  test('without a print there is no verdict', () => {
    expect(run('under-load', { readings: load(5.853, 345) })).toEqual({
      outcome: 'undecided',
      findings: [
        {
          ...{ name: 'Rating', reading: 'not known', limits: null, doubt: null, word: 'undecided' },
          ...{ text: 'The rating is not known, so there is no verdict on the value.', source: null },
        },
      ],
    });
  });
  test('what it says', () => {
    expect(of(load(5.49, 345), load(5.45, 345)).findings).toEqual([
      {
        ...{ name: 'HERM', reading: `42.21${T}µF`, limits: `42.30–47.70${T}µF`, doubt: `40.54–43.92${T}µF` },
        word: 'conditional fail',
        text: `5.49${T}A at 345${T}V and 60${T}Hz is 42.21${T}µF, −6.2${T}% off the rated 45${T}µF. The label allows 42.30–47.70${T}µF. The doubt crosses a limit: P(in tolerance) 48${T}%. The try before gave 41.9${T}µF.`,
        source: `I/(2πfV), physics; clamp ±(2${T}% + 5 counts), volts ±(1${T}% + 3 counts), taken as rectangular`,
      },
    ]);
    expect(texts(of(load(5.853, 345)))).toEqual([
      `5.853${T}A at 345${T}V and 60${T}Hz is 45${T}µF, 0.0${T}% off the rated 45${T}µF. The label allows 42.30–47.70${T}µF.`,
    ]);
    expect(texts(of(load(8.032, 240)))[0]).toMatch(/These may be line volts\. Read them across the section itself\.$/);
    expect(texts(of(load(7, 345)))[0]).not.toContain('line volts');
    expect(texts(of(load(0.05, 345)))[0]).toMatch(
      /Next to nothing: the clamp may sit on another wire\. A dead reading decides\.$/,
    );
    expect(texts(of(load(0.05, 240)))[0]).not.toContain('line volts');
    expect(texts(of(load('_', 345)))).toEqual([
      'HERM needs amps in its lead and volts across it, C to HERM, well above zero.',
    ]);
    expect(of(load('_', 345)).findings[0]).toMatchObject({ reading: 'no reading', word: 'undecided' });
    expect(texts(of(load(5.853, 345, 0.622)))[1]).toBe(
      'FAN needs amps in its lead and volts across it, C to FAN, well above zero.',
    );
  });
  test('more amps at the same volts never read fewer µF', () => {
    const amps = fc.integer({ min: 500, max: 9000 });
    const reading = (n: number): number => Number.parseFloat(of(load(n / 1000, 345)).findings[0]?.reading ?? '');
    fc.assert(
      fc.property(amps, amps, (a, b) => {
        expect(reading(Math.max(a, b))).toBeGreaterThanOrEqual(reading(Math.min(a, b)));
      }),
      { numRuns: 40 },
    );
  });
});
