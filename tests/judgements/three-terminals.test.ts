import { describe, expect, test } from 'vitest';
import type { Parts } from '../../engine/schema.ts';
import { ASSUMED, FORCE, labelled, METER, parts } from './fixture.ts';
import { run } from './run.ts';

type Cell = number | string;
const of = (xy: Cell, xz: Cell, yz: Cell, more: Partial<Record<string, Parts>> = {}, meter = METER) =>
  run('three-terminals', { readings: parts('µF', { xy, xz, yz }), ...more }, { ...FORCE, meter });
const tabs = (t1: Cell, t2: Cell, t3: Cell) => ({ tabs: parts('count', { t1, t2, t3 }) });
const texts = (judged: ReturnType<typeof of>): string[] => judged.findings.map((f) => f.text);

describe('unmarked terminals', () => {
  test('three readings that fit one naming', () => {
    const judged = of(5.02, 44.6, 4.52);
    expect(judged.outcome).toBe('determined');
    expect(judged.findings).toEqual([
      {
        name: 'C on 1, HERM on 3, FAN on 2',
        reading: '44.6\u2009µF, 5.02\u2009µF, 4.52\u2009µF',
        limits: '4.512\u2009µF',
        doubt: '4.41–4.63\u2009µF',
        word: 'fits',
        text: '44.6\u2009µF and 5.02\u2009µF in series give 4.512\u2009µF. HERM–FAN reads 4.52\u2009µF, +0.008\u2009µF off, within the doubt.',
        source: '1/x + 1/y = 1/z, physics',
      },
      {
        name: 'Terminals',
        reading: '–',
        limits: null,
        doubt: null,
        word: 'determined',
        text: 'By the readings terminal 1 is C, terminal 3 is HERM, terminal 2 is FAN.',
        source: 'physics',
      },
    ]);
  });
  test('wherever C sits, its pairs are named in their order', () => {
    const named = (xy: Cell, xz: Cell, yz: Cell) => of(xy, xz, yz).findings[0];
    expect(named(44.6, 4.52, 5.02)).toMatchObject({
      ...{ name: 'C on 2, HERM on 1, FAN on 3', reading: '44.6\u2009µF, 5.02\u2009µF, 4.52\u2009µF' },
    });
    expect(named(4.52, 5.02, 44.6)).toMatchObject({
      ...{ name: 'C on 3, HERM on 2, FAN on 1', reading: '44.6\u2009µF, 5.02\u2009µF, 4.52\u2009µF' },
    });
  });
  test('the assumed meter leaves 45+5 open, the tabs settle it where they agree with the readings', () => {
    const open = of(45, 5, 4.5, {}, ASSUMED);
    expect(open.outcome).toBe('ambiguous');
    expect(
      texts(open)
        .slice(0, 2)
        .map((t) => t.slice(-18)),
    ).toEqual([' within the doubt.', ' within the doubt.']);
    expect(texts(open)[2]).toBe(
      'More than one naming fits within the doubt of this meter. A finer meter tells them apart. The meter is not known, so ±(3\u2009% + 5 counts) is assumed.',
    );
    const settled = of(45, 5, 4.5, tabs(4, 3, 1), ASSUMED);
    expect(settled.outcome).toBe('determined');
    expect(texts(settled).at(-1)).toBe(
      'By the tabs terminal 1 is C, terminal 2 is HERM, terminal 3 is FAN. The readings come nearest to the same.',
    );
    expect(settled.findings.at(-1)).toMatchObject({ name: 'Tabs', word: 'agree' });
    const against = of(45, 5, 4.5, tabs(3, 4, 1), ASSUMED);
    expect(against.outcome).toBe('ambiguous');
    expect(texts(against).at(-1)).toBe(
      'By the tabs terminal 2 is C, terminal 1 is HERM, terminal 3 is FAN. The readings come nearest to another naming, so the tabs don’t decide.',
    );
    expect(against.findings.at(-1)).toMatchObject({ name: 'Tabs', word: 'disagree' });
  });
  test.each([
    [4, 4, 1],
    [4, 3, 3],
    [4, 3, '_'],
    ['_', '_', '_'],
  ])('tabs %s, %s, %s settle nothing', (a, b, c) => {
    const judged = of(45, 5, 4.5, tabs(a, b, c), ASSUMED);
    expect(judged.outcome).toBe('ambiguous');
    expect(judged.findings).toHaveLength(3);
  });
  test('tabs don’t overrule readings, and don’t make a misfit fit', () => {
    expect(of(45, 5, 4.5, tabs(3, 4, 1)).outcome).toBe('determined');
    expect(of(45, 5, 5, tabs(4, 3, 1)).outcome).toBe('doesnt-fit');
  });
  test('equal sections: C is known', () => {
    const judged = of(30, 30, 15);
    expect(judged.outcome).toBe('ambiguous');
    expect(texts(judged).at(-1)).toBe('Terminal 1 is C. The two sections read too alike to tell HERM from FAN.');
    expect(of(30, 30, 15, tabs(4, 3, 1)).outcome).toBe('determined');
  });
  test('nothing fits', () => {
    const judged = of(45, 5, 5);
    expect(judged.outcome).toBe('doesnt-fit');
    expect(judged.findings.map((f) => f.word)).toEqual(['does not fit', 'does not fit']);
    expect(texts(judged)).toEqual([
      '45\u2009µF and 5\u2009µF in series give 4.5\u2009µF. HERM–FAN reads 5\u2009µF, +0.5\u2009µF off, beyond the doubt.',
      'No naming fits. A lead, a wire still on, or a bad section spoils it: read the three again.',
    ]);
  });
  test.each([
    ['OL', 5, 4.5, 'OL, 5\u2009µF, 4.5\u2009µF'],
    [45, 0, 4.5, '45\u2009µF, 0\u2009µF, 4.5\u2009µF'],
    [45, 5, '_', '45\u2009µF, 5\u2009µF, no reading'],
    [0, 5, 4.5, '0\u2009µF, 5\u2009µF, 4.5\u2009µF'],
    [45, 5, -4.5, '45\u2009µF, 5\u2009µF, \u22124.5\u2009µF'],
  ])('%s, %s, %s: the wires first', (xy, xz, yz, reading) => {
    const judged = of(xy, xz, yz);
    expect(judged.outcome).toBe('undecided');
    expect(judged.findings[0]).toMatchObject({ name: 'Terminals', reading, word: 'undecided' });
    expect(texts(judged)).toEqual([
      'Three readings above zero are needed. With OL or zero, look at the wires and the range first.',
    ]);
  });
  test('a part with one section has nothing to find; a dual label changes nothing', () => {
    const single = of(45, 5, 4.5, { label: labelled('45') });
    expect(single.outcome).toBe('undecided');
    expect(texts(single)).toEqual(['A part with one section has no FAN terminal to find.']);
    expect(of(45, 5, 4.5, { label: labelled('45+5') })).toEqual(of(45, 5, 4.5));
    expect(run('three-terminals', {}, FORCE).outcome).toBe('undecided');
  });
});
