import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Parts } from '../../engine/schema.ts';
import { choice, parts } from './fixture.ts';
import { probed, run } from './run.ts';

const T = '\u2009';
const thin = (text: string): string => text.replaceAll(/(?<=\d) (?=°F|%|h\b)/g, T);
const air = (of: Record<string, number | string>, rh?: number | string): Parts => ({
  ...parts('°F', of),
  ...(rh === undefined ? {} : parts('%', { rh })),
});

describe('heat index', () => {
  const of = (given: Parts) => run('heat-index', { air: given });
  test.each([
    // NWS chart cells, and both sides of each beginning at 50 %.
    [96, 65, 'danger'],
    [104, 40, 'danger'],
    [110, 40, 'extreme-danger'],
    [80, 40, 'none'],
    [75, 50, 'none'],
    [80, 50, 'caution'],
    [79.9, 50, 'none'],
    [87.3, 50, 'caution'],
    [87.4, 50, 'extreme-caution'],
    [94, 50, 'extreme-caution'],
    [94.1, 50, 'danger'],
    [102.2, 50, 'danger'],
    [102.3, 50, 'extreme-danger'],
  ])('%d °F at %d %%: %s', (indoor, rh, expected) => {
    expect(of(air({ indoor }, rh)).outcome).toBe(expected);
  });
  test('a heat index on a beginning belongs to it: rounded to tenths first', () => {
    // 90 °F at 65.5 % is 102.968, which is printed as 103.0.
    const on = of(air({ indoor: 90 }, 65.5)).findings[0];
    expect([on?.reading, on?.word]).toEqual([`103${T}°F`, 'danger']);
  });
  test.each([
    ['indoor counts before outdoor', air({ indoor: 75, outdoor: 110 }, 40), 'none'],
    ['outdoor where that is all there is', air({ outdoor: 110 }, 40), 'extreme-danger'],
    ['humidity assumed', air({ indoor: 95 }), 'danger'],
    ['humidity left out', air({ indoor: 95 }, '_'), 'danger'],
    ['bone dry', air({ indoor: 95 }, 0), 'caution'],
    ['saturated', air({ indoor: 95 }, 100), 'extreme-danger'],
    ['101 %', air({ indoor: 95 }, 101), 'undecided'],
    ['under 0 %', air({ indoor: 95 }, -0.1), 'undecided'],
    ['the coldest that is taken', air({ indoor: -20 }, 50), 'none'],
    ['colder', air({ indoor: -20.1 }, 50), 'undecided'],
    ['the hottest', air({ indoor: 140 }, 50), 'extreme-danger'],
    ['hotter', air({ indoor: 140.1 }, 50), 'undecided'],
    ['no temperature', air({}, 50), 'undecided'],
  ])('%s: %s', (_, given, expected) => {
    expect(of(given).outcome).toBe(expected);
  });
  test('what is said', () => {
    expect(of(air({ indoor: 96 }, 65)).findings).toEqual([
      {
        name: 'Heat index',
        reading: `121${T}°F`,
        limits: `categories from 80, 90, 103, 125${T}°F`,
        doubt: null,
        word: 'danger',
        text: thin('Indoors 96 °F at 65 % feels like 121 °F: danger.'),
        source: 'set for this test',
      },
    ]);
    const said = (given: Parts): string => of(given).findings[0]?.text ?? '';
    expect(said(air({ outdoor: 84 }, 60))).toBe(thin('Outdoors 84 °F at 60 % feels like 87.5 °F: caution.'));
    expect(said(air({ indoor: 75 }))).toBe(
      thin(
        'Indoors 75 °F at 50 % feels like 74.8 °F: no heat category. The humidity was not read, so this one is assumed.',
      ),
    );
    expect(said(air({ indoor: 90 }, 60))).toMatch(/: extreme caution\.$/);
    expect(said(air({ indoor: 110 }, 40))).toMatch(/: extreme danger\.$/);
    expect(said(air({ indoor: 141 }))).toBe(thin('141 °F is outside −20–140 °F. Read it again.'));
    expect(said(air({ indoor: 90 }, 120))).toBe(thin('120 % is no relative humidity.'));
    expect(of(air({ indoor: 90 }, 120)).findings[0]).toMatchObject({ reading: `120${T}%`, word: 'not judged' });
    expect(of(air({ indoor: 141 })).findings[0]).toMatchObject({
      reading: `141${T}°F`,
      word: 'not judged',
      limits: null,
    });
    expect(of({}).findings[0]).toMatchObject({
      reading: 'no reading',
      word: 'not judged',
      text: 'No temperature was read where the people are.',
      source: null,
    });
  });
});

describe('urgency', () => {
  const hazard = choice('hazard', 'smoke');
  const nobody = choice('vulnerable', 'none');
  const infant = choice('vulnerable', 'infant');
  const goods = (product: number | string, since?: number | string): Parts => ({
    ...parts('°F', { goods: product }),
    ...(since === undefined ? {} : parts('h', { since })),
  });
  const of = (given: Partial<Record<'hazard' | 'air' | 'people' | 'goods', Parts>>) => run('urgency', given);

  test.each([
    [75, 'soon', 'today'],
    [82, 'soon', 'today'],
    [90, 'today', 'first'],
    [96, 'first', 'now'],
    [110, 'now', 'now'],
  ])('%d °F at 50 %%: %s, with somebody vulnerable %s', (indoor, plain, vulnerable) => {
    const here = air({ indoor }, 50);
    expect(of({ air: here, people: nobody }).outcome).toBe(plain);
    expect(of({ air: here }).outcome).toBe(plain);
    expect(of({ air: here, people: choice('vulnerable', 'cant') }).outcome).toBe(plain);
    expect(of({ air: here, people: infant }).outcome).toBe(vulnerable);
    expect(of({ air: here, people: choice('vulnerable', 'infant', 'elderly') }).outcome).toBe(vulnerable);
  });

  test.each([
    ['a hazard', { hazard }, 'now'],
    ['a hazard on a cool day', { hazard, air: air({ indoor: 70 }, 40), people: nobody }, 'now'],
    ['no hazard and nothing else', { hazard: choice('hazard', 'none') }, 'undecided'],
    ['nothing', {}, 'undecided'],
    ['goods on their limit', { goods: goods(41) }, 'soon'],
    ['goods above it', { goods: goods(41.1) }, 'first'],
    ['goods above it on a hot day', { goods: goods(41.1), air: air({ indoor: 110 }, 50) }, 'now'],
    ['goods above it on a cool day', { goods: goods(41.1), air: air({ indoor: 70 }, 50) }, 'first'],
    ['goods not measured', { goods: goods('_', 3) }, 'undecided'],
    ['somebody vulnerable, no temperature', { people: infant }, 'today'],
    ['somebody vulnerable, no temperature, goods in', { people: infant, goods: goods(40) }, 'today'],
    ['nobody vulnerable, no temperature', { people: nobody }, 'undecided'],
  ])('%s: %s', (_, given, expected) => {
    expect(of(given).outcome).toBe(expected);
  });

  test('the reasons in the order of their weight, each with its words', () => {
    const judged = of({
      hazard: choice('hazard', 'smoke', 'water'),
      air: air({ indoor: 96 }, 65),
      people: infant,
      goods: goods(46, 1.5),
    });
    expect(judged.outcome).toBe('now');
    expect(judged.findings).toEqual([
      {
        name: 'Hazard',
        reading: 'smoke, water',
        limits: null,
        doubt: null,
        word: 'now',
        text: 'A hazard is reported. Emergency services come first, and a van goes now.',
        source: 'our setting: no published scale of urgency',
      },
      expect.objectContaining({ name: 'Heat index', word: 'danger' }),
      {
        name: 'People',
        reading: 'infant',
        limits: null,
        doubt: null,
        word: 'now',
        text: 'Somebody vulnerable is there, so it is one step up: now.',
        source: 'our setting: no published scale of urgency',
      },
      {
        name: 'Perishable goods',
        reading: `46${T}°F`,
        limits: `41${T}°F or less`,
        doubt: null,
        word: 'first',
        text: thin('The goods are at 46 °F, above 41 °F. After 1.5 h, 2.5 h of 4 h are left.'),
        source: 'set for this test',
      },
    ]);
  });

  test('people and goods in words', () => {
    const text = (given: Parameters<typeof of>[0]): string | undefined => of(given).findings.at(-1)?.text;
    const at = (indoor: number, people: Parts) => text({ air: air({ indoor }, 50), people });
    expect(at(75, nobody)).toBe('Nobody vulnerable is named: the next free visit.');
    expect(at(90, nobody)).toBe('Nobody vulnerable is named: today.');
    expect(at(96, nobody)).toBe('Nobody vulnerable is named: today, before everything else.');
    expect(at(110, nobody)).toBe('Nobody vulnerable is named: now.');
    expect(at(90, infant)).toBe('Somebody vulnerable is there, so it is one step up: today, before everything else.');
    expect(of({ air: air({ indoor: 75 }, 50), people: nobody }).findings.at(-1)).toMatchObject({
      reading: 'none named',
      word: 'soon',
    });
    expect(
      of({ air: air({ indoor: 75 }, 50), people: choice('vulnerable', 'infant', 'elderly') }).findings.at(-1)?.reading,
    ).toBe('infant, elderly');
    const g = (since?: number | string): string | undefined => text({ goods: goods(46, since) });
    expect(g()).toBe(
      thin('The goods are at 46 °F, above 41 °F. Nobody knows since when: count from the last reading that was in.'),
    );
    expect(g(3.99)).toBe(thin('The goods are at 46 °F, above 41 °F. After 3.99 h, 0.01 h of 4 h are left.'));
    expect(g(4)).toBe(
      thin('The goods are at 46 °F, above 41 °F. After 4 h the 4 h are over: the owner decides on the goods.'),
    );
    expect(text({ goods: goods(41, 9) })).toBe(thin('The goods are at 41 °F.'));
    expect(of({ goods: goods(41) }).findings.at(-1)).toMatchObject({ word: 'in', limits: `41${T}°F or less` });
    expect(of({}).findings.map((f) => f.name)).toEqual(['Heat index']);
  });

  test('nothing that is added makes it less urgent', () => {
    const order = ['undecided', 'soon', 'today', 'first', 'now'];
    const some = fc.record({
      air: fc.option(
        fc.integer({ min: 60, max: 120 }).map((indoor) => air({ indoor }, 50)),
        { nil: {} },
      ),
      goods: fc.option(
        fc.integer({ min: 30, max: 60 }).map((product) => goods(product)),
        { nil: {} },
      ),
    });
    fc.assert(
      fc.property(some, fc.constantFrom({ people: infant }, { hazard }, { goods: goods(50) }), (given, more) => {
        const [before, after] = [of(given), of({ ...given, ...more })];
        fc.pre(!('goods' in more) || Object.keys(given.goods).length === 0);
        expect(order.indexOf(after.outcome)).toBeGreaterThanOrEqual(order.indexOf(before.outcome));
      }),
    );
  });
});

describe('the probes stand on both sides of each limit', () => {
  test('heat index', () => {
    expect(probed('heat-index')).toEqual([
      ...['none: 69.5 °F', 'none: 79.9 °F', 'caution: 80.8 °F', 'caution: 89.9 °F', 'extreme-caution: 90.1 °F'],
      ...['extreme-caution: 102.9 °F', 'danger: 103.1 °F', 'danger: 124.9 °F', 'extreme-danger: 125.2 °F'],
      ...[
        'danger: 121 °F',
        'danger: 107.6 °F',
        'undecided: no reading',
        'undecided: 140.1 °F',
        'undecided: no reading',
      ],
    ]);
  });
  test('urgency', () => {
    const both = (plain: string, up: string, times: number): string[] =>
      Array(times)
        .fill([`${plain}: none named`, `${up}: infant`])
        .flat();
    expect(probed('urgency')).toEqual([
      ...both('soon', 'today', 4),
      ...both('today', 'first', 2),
      ...both('first', 'now', 2),
      ...both('now', 'now', 1),
      ...['now: no reading', 'undecided: no reading', 'soon: 41 °F'],
      ...['first: 41.1 °F', 'first: 41.1 °F', 'first: 41.1 °F', 'undecided: no reading'],
    ]);
  });
});
