import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Parts } from '../../engine/schema.ts';
import { choice, parts } from './fixture.ts';
import { run } from './run.ts';

type Cell = number | string;
type Given = Partial<Record<string, Parts>>;
const plain = (text: string): string => text.replaceAll('\u2009', ' ');

describe('a blower’s windings', () => {
  const line = (high: Cell, med: Cell, low: Cell, frame: Cell = 'OL'): Parts => parts('Ω', { high, med, low, frame });
  const of = (readings: Parts, more: Given = {}) => run('blower-windings', { readings, ...more });
  const hot = choice('choice', 'hot');
  const cool = choice('choice', 'cool');
  const mixed = line(11, 8, 6);

  test.each([
    ['rising from high to low', line(6.1, 8.3, 11.2), 'good'],
    ['two speeds', line(6.1, '_', 11.2), 'good'],
    ['one speed', line(6.1, '_', '_'), 'good'],
    ['two speeds alike', line(6.1, 6.1, 11.2), 'good'],
    ['out of order within the doubt of both', line(6.4, '_', 6.1), 'good'],
    ['out of order past it', line(7.1, '_', 6.1), 'repeat'],
    ['high and low exchanged', mixed, 'repeat'],
    ['too near zero to be told from a short', line(0.2, 8.3, 11.2), 'repeat'],
    ['high not read', line('_', 8.3, 11.2), 'undecided'],
    ['all open', line('OL', 'OL', 'OL'), 'ask-warm'],
    ['one speed open', line(6.1, 'OL', 11.2), 'ask-warm'],
    ['low to the frame', line(6.1, 8.3, 11.2, 400), 'to-frame'],
    ['low to the frame wins over open', line('OL', 'OL', 'OL', 400), 'to-frame'],
    ['just below the limit to the frame', line(6.1, 8.3, 11.2, 999_999), 'to-frame'],
    ['on it: noted, no verdict', line(6.1, 8.3, 11.2, 1_000_000), 'undecided'],
    ['just below clear', line(6.1, 8.3, 11.2, 4_999_999), 'undecided'],
    ['on clear', line(6.1, 8.3, 11.2, 5_000_000), 'good'],
    ['the frame not read', line(6.1, 8.3, 11.2, '_'), 'undecided'],
  ])('%s', (_, readings, outcome) => {
    expect(of(readings).outcome).toBe(outcome);
  });

  test('open on a hot motor is its protector, on a cool one a winding', () => {
    for (const open of [line('OL', 'OL', 'OL'), line(6.1, 'OL', 11.2)]) {
      expect(of(open, { warm: hot }).outcome).toBe('protector-open');
      expect(of(open, { warm: cool }).outcome).toBe('open');
      expect(of(open, { warm: choice('choice', 'cant') }).outcome).toBe('until-cool');
    }
  });

  test('a repeat is asked once; what came before counts only where it asked for one', () => {
    expect(of(mixed, { earlier: mixed }).outcome).toBe('undecided');
    const short = line(0.2, 8.3, 11.2);
    expect(of(short, { earlier: short }).outcome).toBe('undecided');
    expect(of(mixed, { earlier: short }).outcome).toBe('undecided');
    expect(of(mixed, { earlier: line('OL', 'OL', 'OL') }).outcome).toBe('repeat');
    expect(of(line(6.1, 8.3, 11.2), { earlier: mixed }).outcome).toBe('good');
  });

  test('its words say what was read and what decides', () => {
    const [windings, frame] = of(line(6.1, 8.3, 11.2)).findings;
    expect(plain(windings?.reading ?? '')).toBe('high 6.1 Ω, medium 8.3 Ω, low 11.2 Ω');
    expect(windings?.text).toBe('The ohms rise from high to low, as they should.');
    expect(frame?.name).toBe('Frame');
    expect(of(mixed, { earlier: mixed }).findings.map((f) => f.name)).toEqual([
      'Windings, earlier',
      'Windings',
      'Frame',
    ]);
  });

  test('nothing but OL on a cool motor or a low reading to the frame ever condemns', () => {
    const ohm = fc.oneof(
      fc.integer({ min: 1, max: 60_000 }).map((n) => n / 1000),
      fc.constantFrom<Cell>('OL', '_', 0),
    );
    const heat = fc.constantFrom(undefined, hot, cool);
    fc.assert(
      fc.property(ohm, ohm, ohm, ohm, heat, (high, med, low, frame, warm) => {
        const { outcome } = of(line(high, med, low, frame), warm ? { warm } : {});
        if (outcome === 'open') expect([high, med, low].includes('OL') && warm === cool).toBe(true);
        if (outcome === 'to-frame') expect(typeof frame === 'number' && frame < 1_000_000).toBe(true);
      }),
      { numRuns: 300 },
    );
  });
});

describe('a blower’s restart', () => {
  const plate = (volts: string, fla: Cell = 4.2): Parts => ({ ...choice('volts', volts), ...parts('A', { fla }) });
  const line = (volts: Cell, amps: Cell, split: Cell = '_'): Parts => ({
    ...parts('V', { l1l2: volts }),
    ...parts('A', { fan: amps }),
    ...(split === '_' ? {} : parts('Δ°F', { split })),
  });
  const of = (figures: Parts, on = plate('208/230'), more: Given = {}) =>
    run('blower-restart', { figures, plate: on, ...more });

  test.each([
    ['all in', line(240, 3.6, 18), '208/230', 'in'],
    ['the split to come', line(240, 3.6), '208/230', 'wait'],
    ['lower limit', line(197, 3.6, 18), '208/230', 'in'],
    ['below it', line(196, 3.6, 18), '208/230', 'supply'],
    ['upper limit', line(253, 3.6, 18), '208/230', 'in'],
    ['above it', line(254, 3.6, 18), '208/230', 'supply'],
    ['120 V on a 208/230 V plate', line(120, 3.6, 18), '208/230', 'supply'],
    ['120 V on a 115 V plate', line(120, 3.6, 18), '115', 'in'],
    ['115 V less 10 %', line(103.5, 3.6, 18), '115', 'in'],
    ['below that', line(103, 3.6, 18), '115', 'supply'],
    ['240 V on a 115 V plate', line(240, 3.6, 18), '115', 'supply'],
    ['draws nothing', line(240, 0), '208/230', 'not-running'],
    ['on its FLA', line(240, 4.2, 18), '208/230', 'in'],
    ['above its FLA', line(240, 4.3, 18), '208/230', 'fan-high'],
    ['a split below its range', line(240, 3.6, 13), '208/230', 'split-out'],
    ['a split above its range', line(240, 3.6, 24), '208/230', 'split-out'],
    ['amps not read', line(240, '_', 18), '208/230', 'undecided'],
    ['volts not read', line('_', 3.6, 18), '208/230', 'undecided'],
  ])('%s', (_, figures, volts, outcome) => {
    expect(of(figures, plate(volts)).outcome).toBe(outcome);
  });

  test('a split that was asked for later and not read leaves it open', () => {
    expect(of(line(240, 3.6), plate('208/230'), { later: parts('Δ°F', { split: 18 }) }).outcome).toBe('in');
    expect(of(line(240, 3.6), plate('208/230'), { later: {} }).outcome).toBe('undecided');
  });

  test('a noise or the wrong way round stops it, and the supply comes first', () => {
    for (const sound of ['noise', 'backwards'])
      expect(of({ ...line(240, 3.6, 18), ...choice('sound', sound) }).outcome).toBe('sound');
    expect(of({ ...line(190, 3.6, 18), ...choice('sound', 'noise') }).outcome).toBe('supply');
  });

  test('it speaks of the blower and of its line', () => {
    const texts = of(line(240, 4.6, 18)).findings.map((f) => plain(f.text));
    expect(texts[0]).toBe('Line volts read 240 V, inside 197–253 V.');
    expect(texts[1]).toBe('The blower draws 4.6 A, above its FLA of 4.2 A.');
  });
});
