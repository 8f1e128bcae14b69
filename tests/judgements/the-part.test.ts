import { describe, expect, test } from 'vitest';
import type { Parts } from '../../engine/schema.ts';
import { choice, FORCE, labelled, parts, SETTINGS } from './fixture.ts';
import { run } from './run.ts';

type Line = Record<string, number | string>;

describe('terminals to case', () => {
  const M = (value: number | string): Parts => parts('MΩ', { case: value });
  const of = (now: number | string, before?: number | string) =>
    run('case-leak', { readings: M(now), ...(before === undefined ? {} : { before: M(before) }) }).outcome;
  test.each([
    ['OL', undefined, 'clear'],
    [20.01, undefined, 'clear'],
    [20, undefined, 'wet'],
    [1, undefined, 'wet'],
    [0.99, undefined, 'low'],
    [0.4, 0.4, 'leak'],
    [12, 12, 'leak'],
    [0.4, 12, 'leak'],
    [12, 0.4, 'wet'],
    ['OL', 0.4, 'clear'],
    [0.4, 'OL', 'low'],
    ['_', undefined, 'ask'],
  ])('%s now, %s before: %s', (now, before, expected) => {
    expect(of(now, before)).toBe(expected);
  });
  test('asked alone, it counts; refused, it stays open', () => {
    expect(run('case-leak', { readings: M('_'), alone: M('OL') }).outcome).toBe('clear');
    expect(run('case-leak', { readings: M('_'), alone: M('_') }).outcome).toBe('undecided');
    expect(run('case-leak', { readings: {}, alone: {} }).outcome).toBe('undecided');
    expect(run('case-leak', { readings: M('_'), alone: M(0.4), beforeAlone: M(0.4) }).outcome).toBe('leak');
    expect(run('case-leak', {}).outcome).toBe('undecided');
  });
  test('what its case read last elsewhere is heard where it is worse, and not where it is as bad', () => {
    const shown = (own: number, last: number) =>
      run('case-leak', { readings: M(own), last: M(last) }).findings[0]?.reading;
    expect(shown(12, 0.4)).toBe('0.4\u2009MΩ');
    expect(shown(0.4, 12)).toBe('0.4\u2009MΩ');
    expect(shown(0.5, 0.4)).toBe('0.5\u2009MΩ');
  });
  test('ohms are understood too', () => {
    expect(run('case-leak', { readings: parts('Ω', { case: 400_000 }) }).outcome).toBe('low');
    expect(run('case-leak', { readings: parts('Ω', { case: 1_000_000 }) }).outcome).toBe('wet');
  });
});

describe('sections in ohms', () => {
  const of = (ohms: Line, more: Partial<Record<string, Parts>> = {}) =>
    run('section-ohms', { ohms: parts('Ω', ohms), ...more }).outcome;
  test.each([
    [{ hermc: 0.3, fanc: 'OL' }, 'shorted'],
    [{ hermc: 'OL', fanc: 1.999 }, 'shorted'],
    [{ hermc: 'OL', fanc: 2 }, 'undecided'],
    [{ hermc: 'OL', fanc: 15_000 }, 'undecided'],
    [{ hermc: 'OL', fanc: 'OL' }, 'not-shorted'],
    [{ hermc: 'OL', fanc: '_' }, 'undecided'],
    // Asked of one pair: a part of two terminals.
    [{ hermc: 'OL' }, 'not-shorted'],
    [{ hermc: 0.3 }, 'shorted'],
    [{ hermc: 15_000 }, 'undecided'],
  ])('%o is %s', (ohms, expected) => {
    expect(of(ohms)).toBe(expected);
  });
  test('a section that reads µF needs no ohms, a part with one section has no second', () => {
    expect(of({ hermc: 'OL', fanc: '_' }, { readings: parts('µF', { fan: 5.03 }) })).toBe('not-shorted');
    expect(of({ hermc: 'OL' }, { label: labelled('45') })).toBe('not-shorted');
  });
});

describe('by sight', () => {
  test.each([
    [['bulged'], 'condemned'],
    [['rust', 'oil'], 'condemned'],
    [['vented'], 'condemned'],
    [['burnt-through'], 'condemned'],
    [['rust', 'wet'], 'clean'],
    [['scorched'], 'clean'],
    [['clean'], 'clean'],
    [[], 'undecided'],
  ])('%o is %s', (seen, expected) => {
    expect(run('sight', { look: choice('condition', ...seen) }).outcome).toBe(expected);
  });
  test('all that condemns is named', () => {
    const [line] = run('sight', { look: choice('condition', 'rust', 'bulged', 'oil') }).findings;
    expect(line).toMatchObject({
      ...{ reading: 'bulged top, oil', text: 'Seen: bulged top, oil. That condemns the part by sight.' },
    });
  });
  test('nobody looked', () => {
    expect(run('sight', {}).outcome).toBe('undecided');
  });
});

describe('terminals by tabs', () => {
  const of = (t1: number | string, t2: number | string, t3: number | string) =>
    run('tabs', { tabs: parts('count', { t1, t2, t3 }) });
  test('most is C, then HERM, fewest is FAN', () => {
    expect(of(1, 4, 3).outcome).toBe('found');
    expect(of(1, 4, 3).findings[0]?.text).toContain('terminal 2 is C, terminal 3 is HERM, terminal 1 is FAN');
  });
  test.each([
    [4, 4, 1],
    [4, 3, 3],
    [4, 3, '_'],
  ])('%s, %s, %s tell nothing', (a, b, c) => {
    expect(of(a, b, c).outcome).toBe('unclear');
  });
  test('turning the part round names the same terminals', () => {
    const counts = [4, 3, 1];
    for (const order of [
      [0, 1, 2],
      [1, 2, 0],
      [2, 0, 1],
    ]) {
      const turned = order.map((i) => counts[i] ?? 0);
      const text = of(turned[0] ?? 0, turned[1] ?? 0, turned[2] ?? 0).findings[0]?.text;
      expect(text).toContain(`terminal ${turned.indexOf(4) + 1} is C`);
      expect(text).toContain(`terminal ${turned.indexOf(1) + 1} is FAN`);
    }
  });
});

describe('small questions', () => {
  test('known', () => {
    expect(run('known', { fact: labelled('45+5') }).outcome).toBe('known');
    expect(run('known', { fact: parts('A', { rla: 17.9 }) }).outcome).toBe('known');
    expect(run('known', { fact: choice('class', 'psc') }).outcome).toBe('known');
    expect(run('known', { fact: choice('ok', 'cant') }).outcome).toBe('unknown');
    expect(run('known', { fact: choice('class') }).outcome).toBe('unknown');
    expect(run('known', { fact: parts('A', { rla: '_', lra: 'OL' }) }).outcome).toBe('unknown');
    expect(run('known', {}).outcome).toBe('unknown');
  });
  test('capacitors', () => {
    const of = (count: number | string) => run('capacitors', { look: parts('count', { count }) }).outcome;
    expect([of(0), of(1), of(3), of('_')]).toEqual(['none', 'some', 'some', 'undecided']);
  });
  test('the alternative is the shop’s to allow', () => {
    expect(run('alternative', {}).outcome).toBe('allowed');
    const settings = { ...SETTINGS, tagWithExtraMeasure: false };
    expect(run('alternative', {}, { ...FORCE, settings }).outcome).toBe('ask');
  });
});
