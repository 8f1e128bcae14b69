/** What was answered, as the judgements read it: figures in their unit, prints that can be one, confirmations. */
import { describe, expect, test } from 'vitest';
import {
  chosenOf,
  confirmed,
  figureOf,
  leftOpen,
  printOf,
  readingOf,
  showsOneSection,
} from '../../engine/judgements/read.ts';
import { choice, labelled, parts, yes } from './fixture.ts';

describe('a figure', () => {
  const of = (...args: Parameters<typeof figureOf>) => figureOf(...args)?.toFixed() ?? null;
  test('is read in its unit, and ohms in MΩ as well as the other way', () => {
    expect(of(parts('V', { l1l2: 241 }), 'l1l2', 'V')).toBe('241');
    expect(of(parts('Ω', { case: 400_000 }), 'case', 'MΩ')).toBe('0.4');
    expect(of(parts('MΩ', { frame: 1.2 }), 'frame', 'Ω')).toBe('1200000');
  });
  test('in any other unit is none', () => {
    expect(readingOf(parts('V', { c: 5 }), 'c', 'Ω')).toEqual({ kind: 'none' });
    expect(readingOf(parts('V', { c: 5 }), 'c', 'MΩ')).toEqual({ kind: 'none' });
    expect(readingOf(parts('Ω', { c: 5 }), 'c', 'V')).toEqual({ kind: 'none' });
    expect(readingOf(parts('MΩ', { c: 5 }), 'c', 'V')).toEqual({ kind: 'none' });
  });
  test('over range, left out, of another kind and not asked are told apart', () => {
    const line = { ...parts('V', { a: 'OL', b: '_' }), ...yes };
    expect(['a', 'b', 'ok', 'z', 'toString'].map((key) => readingOf(line, key, 'V').kind)).toEqual([
      ...['over', 'none', 'none', 'none', 'none'],
    ]);
    expect(['a', 'b', 'ok', 'z', 'toString'].map((key) => leftOpen(line, key, 'V'))).toEqual([
      ...[true, true, true, false, false],
    ]);
    expect(readingOf(undefined, 'a', 'V')).toEqual({ kind: 'none' });
  });
});

describe('a print', () => {
  test('is one where every section is above nothing and no tolerance below it', () => {
    expect(printOf(labelled('45+5'))).toMatchObject({ herm: '45', fan: '5' });
    expect(printOf(labelled('45'))).toMatchObject({ herm: '45', fan: null });
    expect(printOf(labelled('45+5', { below: '0' }))).not.toBeNull();
    for (const never of ['0', '0+5', '45+0', '-45+5', '45+-5']) expect(printOf(labelled(never))).toBeNull();
    expect(printOf(labelled('45+5', { below: '-6' }))).toBeNull();
    expect(printOf(labelled('45+5', { above: '-6' }))).toBeNull();
    expect(printOf(choice('print', '45+5'))).toBeNull();
    expect(printOf(undefined)).toBeNull();
  });
  test('or else the terminals show one section; three terminals show two, whatever is printed', () => {
    const terminals = (...seen: string[]) => choice('terminals', ...seen);
    expect(showsOneSection(labelled('45'))).toBe(true);
    expect(showsOneSection(labelled('45+5'))).toBe(false);
    expect(showsOneSection(terminals('two'))).toBe(true);
    expect(showsOneSection(terminals('cant'))).toBe(false);
    expect(showsOneSection({ ...labelled('45'), ...terminals('three') })).toBe(false);
    expect(showsOneSection({ ...labelled('45+5'), ...terminals('two') })).toBe(false);
    expect(showsOneSection(undefined)).toBe(false);
  });
});

describe('a confirmation', () => {
  test.each<[string, Parameters<typeof confirmed>[0], boolean]>([
    ['yes', yes, true],
    ['done', choice('ok', 'done'), true],
    ['no', choice('ok', 'no'), false],
    ['can’t', choice('ok', 'cant'), false],
    ['something else', choice('ok', 'maybe'), false],
    ['yes to one part and no to another', { ...yes, ...choice('other', 'no') }, false],
    ['yes to one part and can’t to another', { ...yes, ...choice('other', 'cant') }, false],
    ['yes beside a figure', { ...yes, ...parts('V', { v: 1 }) }, true],
    ['a figure', parts('V', { v: 1 }), false],
    ['nothing', undefined, false],
  ])('%s', (_, given, expected) => {
    expect(confirmed(given)).toBe(expected);
  });
  test('what was chosen is the choice alone', () => {
    expect(chosenOf(choice('seen', 'ice', 'water'), 'seen')).toEqual(['ice', 'water']);
    expect(chosenOf(parts('V', { seen: 1 }), 'seen')).toEqual([]);
    expect(chosenOf(undefined, 'seen')).toEqual([]);
  });
});
