/** The figures that a finding brings for its picture: those that were judged, or none. */
import { describe, expect, test } from 'vitest';
import * as z from 'zod/mini';
import { Finding, type Parts } from '../../engine/schema.ts';
import { choice, FORCE, labelled, parts, SETTINGS } from './fixture.ts';
import { run } from './run.ts';

type Cell = number | string;
const NINES = '9'.repeat(38);

describe('the triangle of a compressor’s pairs', () => {
  const of = (cr: Cell, cs: Cell, sr: Cell, more: Partial<Record<string, Parts>> = {}) =>
    run('compressor-windings', { readings: parts('Ω', { cr, cs, sr, g: 'OL' }), ...more }).findings[0];
  const triangle = (cr: string, cs: string, sr: string, doubt: string | null, word: string) => ({
    ...{ kind: 'windings', crOhms: cr, csOhms: cs, srOhms: sr, doubtOhms: doubt, word },
  });

  // The doubt of a reading is 1 % and 3 counts of 0.1 Ω; that of the sum is all three together.
  test.each([
    ['fits', of(1.2, 3.4, 4.6), triangle('1.2', '3.4', '4.6', '0.992', 'sum fits')],
    ['does not', of(6, 7, 8), triangle('6', '7', '8', '1.11', 'sum does not fit')],
    ['fits other terminals', of(3.4, 1.2, 4.6), triangle('3.4', '1.2', '4.6', '0.992', 'other terminals')],
    ['can’t be told from a short', of(0, 3.4, 3.4), triangle('0', '3.4', '3.4', '0.968', 'too near zero')],
    ['is open to C', of('OL', 'OL', 4.6), triangle('OL', 'OL', '4.6', null, 'open to C')],
    ['lacks the start winding', of(1.2, 'OL', 'OL'), triangle('1.2', 'OL', 'OL', null, 'start open')],
    ['lacks the run winding', of('OL', 3.4, 'OL'), triangle('OL', '3.4', 'OL', null, 'run open')],
    ['is open all around', of('OL', 'OL', 'OL'), triangle('OL', 'OL', 'OL', null, 'all open')],
    ['contradicts itself', of(1.2, 'OL', 4.6), triangle('1.2', 'OL', '4.6', null, 'contradiction')],
  ])('a sum that %s', (_, found, figures) => {
    expect(found?.figures).toEqual(figures);
    expect(found?.word).toBe(figures.word);
    expect(found?.source).toBe('S–R is the sum of C–S and C–R, a textbook’s rule; set for this test');
  });
  test('three equal pairs and missing ones draw none', () => {
    for (const found of [of(10, 10, 10), of(1.2, '_', 4.6)]) expect(Object.keys(found ?? {})).not.toContain('figures');
    expect(of(10, 10, 10)?.word).toBe('three equal');
    expect(of(10, 10, 10)?.source).toBe('set for this test');
    expect(of(1.2, '_', 4.6)?.word).toBe('missing');
  });
  test('the overload drawn is the one that was judged, whatever the shell', () => {
    const shell = { shell: choice('shell', 'hot') };
    expect(of('OL', 'OL', 4.6, shell)?.figures).toEqual(of('OL', 'OL', 4.6)?.figures);
  });
});

describe('a scale', () => {
  const label = labelled('45+5');
  const herm = (force = FORCE) =>
    run('section-values', { label, readings: parts('µF', { herm: 44.1, fan: 4.98 }) }, force).findings.find(
      (f) => f.name === 'HERM',
    );
  test('of a section holds print, limits, reading and doubt', () => {
    // 6 % of 45 µF is 2.7 µF; 1.9 % of 44.1 µF and 2 counts of 0.1 µF are 1.0379 µF.
    expect(herm()?.figures).toEqual({
      ...{ kind: 'scale', name: 'HERM', unit: 'µF', rated: '45', limits: { low: '42.3', high: '47.7' } },
      ...{ reading: '44.1', doubt: { low: '43.0621', high: '45.1379' }, habit: null, word: 'pass' },
    });
  });
  test('of the plain rule has no doubt', () => {
    const plain = herm({ ...FORCE, settings: { ...SETTINGS, rule: 'plain' } });
    expect(plain?.figures).toMatchObject({ kind: 'scale', doubt: null });
  });
  test('of a start capacitor holds its range, and has no rating to show', () => {
    const print = labelled('227', { range: { low: '189', high: '227' }, volts: '330' });
    const start = run('start-capacitor', { label: print, readings: parts('µF', { start: 200 }) }).findings[0];
    expect(start?.figures).toEqual({
      ...{ kind: 'scale', name: 'Start capacitor', unit: 'µF', rated: null, limits: { low: '189', high: '227' } },
      ...{ reading: '200', doubt: { low: '196', high: '204' }, habit: null, word: 'pass' },
    });
  });
  test('of a pair of lines holds volts', () => {
    const line = parts('V', { l1l2: 241, l1g: 120, l2g: 120 });
    const found = run('supply', { line, plate: choice('volts', '208/230') }).findings;
    const figures = found.flatMap((f) => f.figures ?? []);
    expect(figures).toContainEqual({
      ...{ kind: 'scale', name: 'L1–L2', unit: 'V', rated: null, limits: { low: '197', high: '253' } },
      ...{ reading: '241', doubt: null, habit: null, word: 'inside' },
    });
  });
});

describe('an absurd print draws nothing, and its finding can still be recorded', () => {
  const absurd = labelled('45', { above: NINES, volts: NINES });
  const given = { label: absurd, readings: parts('µF', { start: 45, herm: 45 }) };
  test.each(['start-capacitor', 'section-values', 'single-section', 'hold'] as const)('%s', (id) => {
    const { findings } = run(id, given);
    expect(findings.length).toBeGreaterThan(0);
    for (const found of findings) {
      expect(z.safeParse(Finding, found).success).toBe(true);
      expect(Object.keys(found)).not.toContain('figures');
    }
  });
  test('a figure of forty characters is drawn, one of forty-one is not', () => {
    const megohms = (value: string) =>
      run('compressor-windings', {
        readings: { ...parts('MΩ', { cr: value, cs: 1 }), ...parts('Ω', { sr: 'OL', g: 'OL' }) },
      }).findings[0]?.figures;
    // A million times more in ohms: six digits longer.
    expect(megohms('9'.repeat(34))).toMatchObject({ crOhms: `${'9'.repeat(34)}000000` });
    expect(megohms('9'.repeat(35))).toBeUndefined();
  });
});
