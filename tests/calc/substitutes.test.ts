import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type Choice, type Reason, type StockItem, substitutes, type Wanted } from '../../engine/calc/substitutes.ts';

/** "45+5 440" */
const print = (text: string) => {
  const [sections = '', volts = '440'] = text.split(' ');
  return { kind: 'run' as const, sectionsMicrofarads: sections.split('+'), volts };
};
const wanted = (text: string, of: Partial<Wanted> = {}): Wanted => ({
  ...{ ...print(text), belowPercent: '6', abovePercent: '6' },
  ...of,
});
const item = (text: string, of: Partial<StockItem> = {}): StockItem => ({ id: text, ...print(text), count: 1, ...of });
const short = (choice: Choice): string =>
  `${choice.way}: ${choice.parts.map(({ id, count }) => `${count} × ${id}`).join(', ')}`;
const say = (reason: Reason): string =>
  reason.why === 'value'
    ? `value ${reason.microfarads} for ${reason.wantedMicrofarads}: ${reason.deviationPercent.toFixed(1)} %`
    : reason.why === 'volts'
      ? `volts ${reason.volts} < ${reason.wantedVolts}`
      : reason.why === 'range'
        ? `range ${reason.range.low}–${reason.range.high}`
        : reason.why === 'no-partner'
          ? `no partner for ${reason.wantedMicrofarads}`
          : reason.why;
const found = (want: Wanted, ...stock: StockItem[]) => {
  const { choices, rejected } = substitutes(want, stock);
  return { choices: choices.map(short), rejected: rejected.map((r) => `${r.id}: ${say(r.reason)}`) };
};

describe('a dual part from the truck', () => {
  test('a worked call: 40+5 370 V; the exact dual, then two singles; never the next size up or down', () => {
    const stock = ['45+5 440', '40+5 440', '35+5 440', '40 440', '5 440'].map((t) => item(t));
    expect(found(wanted('40+5 370'), ...stock)).toEqual({
      choices: ['same: 1 × 40+5 440', 'singles: 1 × 40 440, 1 × 5 440'],
      rejected: ['45+5 440: value 45 for 40: 12.5 %', '35+5 440: value 35 for 40: -12.5 %'],
    });
  });
  test('370 V by 440 V yes, 440 V by 370 V no, equal volts yes', () => {
    expect(found(wanted('45+5 370'), item('45+5 440')).choices).toHaveLength(1);
    expect(found(wanted('45+5 440'), item('45+5 440')).choices).toHaveLength(1);
    expect(found(wanted('45+5 440'), item('45+5 370'))).toEqual({
      choices: [],
      rejected: ['45+5 370: volts 370 < 440'],
    });
    expect(found(wanted('45+5 440'), item('45+5 439.99')).choices).toEqual([]);
  });
  test('of two that are equally exact, the one with the volts nearest to the original comes first', () => {
    expect(found(wanted('45+5 370'), item('45+5 660'), item('45+5 440'), item('45+5 370')).choices).toEqual([
      'same: 1 × 45+5 370',
      'same: 1 × 45+5 440',
      'same: 1 × 45+5 660',
    ]);
  });
  test('exactness before fewest parts', () => {
    expect(found(wanted('45+5'), item('44+5'), item('45'), item('5')).choices).toEqual([
      'singles: 1 × 45, 1 × 5',
      'same: 1 × 44+5',
    ]);
  });
  test('two of one item hold one of it and another beside: neither choice is the other with something added', () => {
    const two = found(wanted('40'), item('20', { count: 2 }), item('20.2'));
    expect(two.choices).toEqual(['parallel: 2 × 20', 'parallel: 1 × 20, 1 × 20.2']);
  });
  test('a dual is out by its worse section, also where another part fits', () => {
    expect(found(wanted('45+5'), item('45+5'), item('45+7.5')).rejected).toEqual(['45+7.5: value 7.5 for 5: 50.0 %']);
  });
  test('the order of the print does not matter', () => {
    expect(found(wanted('5+45'), item('5+45'))).toEqual({ choices: ['same: 1 × 5+45'], rejected: [] });
    expect(
      substitutes(wanted('5+45'), [item('5+45')]).choices[0]?.fills.map((f) => f.wantedMicrofarads.toNumber()),
    ).toEqual([45, 5]);
  });
  test('one fitting single alone has no partner', () => {
    expect(found(wanted('45+5'), item('5'), item('50'))).toEqual({
      choices: [],
      rejected: ['5: no partner for 45', '50: value 50 for 45: 11.1 %'],
    });
    expect(found(wanted('45+5'), item('45')).rejected).toEqual(['45: no partner for 5']);
    expect(found(wanted('10+10'), item('10'))).toEqual({ choices: [], rejected: ['10: no partner for 10'] });
    expect(found(wanted('10+10'), item('10', { count: 2 })).choices).toEqual(['singles: 2 × 10']);
  });
  test('a dual with one section right helps only where nothing else does', () => {
    expect(found(wanted('45+5'), item('45+7.5'), item('5'))).toEqual({
      choices: ['section-unused: 1 × 45+7.5, 1 × 5'],
      rejected: [],
    });
    expect(found(wanted('45+5'), item('45+7.5'), item('5'), item('45')).choices).toEqual(['singles: 1 × 45, 1 × 5']);
    expect(found(wanted('45+5'), item('45+7.5'), item('5'), item('44'))).toEqual({
      choices: ['singles: 1 × 44, 1 × 5'],
      rejected: ['45+7.5: value 7.5 for 5: 50.0 %'],
    });
    expect(found(wanted('45+5'), item('40+5'), item('45')).choices).toEqual(['section-unused: 1 × 40+5, 1 × 45']);
  });
  test('what only adds parts to a choice as exact is not needed', () => {
    expect(found(wanted('45+5'), item('45+5'), item('5'))).toEqual({
      choices: ['same: 1 × 45+5'],
      rejected: ['5: not-needed'],
    });
    expect(found(wanted('40'), item('40'), item('2'))).toEqual({
      choices: ['same: 1 × 40'],
      rejected: ['2: value 2 for 40: -95.0 %'],
    });
    expect(found(wanted('20+20'), item('20', { count: 2 }), item('1'))).toEqual({
      choices: ['singles: 2 × 20'],
      rejected: ['1: value 1 for 20: -95.0 %'],
    });
  });
  test('one of several is too few, though there are enough of the others', () => {
    expect(found(wanted('40+5'), item('20'), item('5')).choices).toEqual([]);
    expect(found(wanted('40+5'), item('20', { count: 2 }), item('5')).choices).toEqual(['parallel: 2 × 20, 1 × 5']);
  });
  test('of several parts the highest volts say how near they are to the original', () => {
    expect(found(wanted('45+5 370'), item('45 370'), item('5 1000'), item('5 440')).choices).toEqual([
      'singles: 1 × 45 370, 1 × 5 440',
      'singles: 1 × 45 370, 1 × 5 1000',
    ]);
  });
  test('a part that has both sections is told why by the section that is nearest, in whatever order it is printed', () => {
    expect(found(wanted('45+5'), item('5+40')).rejected).toEqual(['5+40: value 40 for 45: -11.1 %']);
    expect(found(wanted('45+5'), item('60+5.5')).rejected).toEqual(['60+5.5: value 5.5 for 5: 10.0 %']);
  });
});

describe('run capacitors in parallel', () => {
  test('two that sum to the section', () => {
    const { choices } = substitutes(wanted('45+5'), [item('35'), item('10'), item('5')]);
    expect(choices.map(short)).toEqual(['parallel: 1 × 10, 1 × 35, 1 × 5']);
    expect(choices[0]?.fills[0]?.microfarads.toNumber()).toBe(45);
    expect(choices[0]?.fills[0]?.elements.map((e) => `${e.id}/${e.section}/${e.microfarads}`)).toEqual([
      '35/0/35',
      '10/0/10',
    ]);
    expect(choices[0]?.partCount).toBe(3);
    expect(choices[0]?.worstPercent.toNumber()).toBe(0);
  });
  test('both sections of one dual make one single', () => {
    expect(found(wanted('45'), item('40+5')).choices).toEqual(['parallel: 1 × 40+5']);
  });
  test('a dual’s sections are not tied to anything else', () => {
    expect(found(wanted('40+5'), item('35+5'), item('5', { count: 2 })).choices).toEqual([]);
    expect(found(wanted('45'), item('40+20'), item('5')).choices).toEqual([]);
    expect(found(wanted('45+5'), item('40+5'), item('5')).choices).toEqual([]);
  });
  test('two of a kind, if there are two', () => {
    expect(found(wanted('40'), item('20', { count: 2 })).choices).toEqual(['parallel: 2 × 20']);
    expect(found(wanted('40'), item('20')).choices).toEqual([]);
    expect(found(wanted('40'), item('20')).rejected).toEqual(['20: value 20 for 40: -50.0 %']);
  });
  test('each needs the volts', () => {
    expect(found(wanted('45 440'), item('40 370'), item('5 440')).choices).toEqual([]);
  });
  test('fewer parts before more, where both are exact', () => {
    expect(found(wanted('45'), item('40'), item('5'), item('45')).choices).toEqual([
      'same: 1 × 45',
      'parallel: 1 × 40, 1 × 5',
    ]);
  });
  test('never three in parallel', () => {
    expect(found(wanted('45'), item('15', { count: 3 })).choices).toEqual([]);
  });
});

describe('the label’s tolerance decides what is the same', () => {
  test.each([
    ['42.3', true],
    ['42.29', false],
    ['47.7', true],
    ['47.71', false],
  ])('%s for 45 ±6 %%: %s', (microfarads, fits) => {
    expect(found(wanted('45'), item(microfarads)).choices.length).toBe(fits ? 1 : 0);
  });
  test('the nearer comes first, on either side, and the worst section counts', () => {
    expect(found(wanted('50+5'), item('52+5'), item('49+5'), item('50+5.2')).choices).toEqual([
      'same: 1 × 49+5',
      'same: 1 × 50+5.2',
      'same: 1 × 52+5',
    ]);
  });
  test('a one-sided print', () => {
    const want = wanted('45', { belowPercent: '0', abovePercent: '10' });
    expect(found(want, item('44'), item('49.5')).choices).toEqual(['same: 1 × 49.5']);
  });
});

describe('what bars an item, whatever stands beside it', () => {
  test('none left', () => {
    expect(found(wanted('45+5'), item('45+5', { count: 0 }))).toEqual({ choices: [], rejected: ['45+5: none-left'] });
  });
  test('a start capacitor in a run circuit, and the other way round', () => {
    expect(found(wanted('45+5'), item('45+5', { kind: 'start' })).rejected).toEqual(['45+5: kind']);
    expect(found(wanted('45', { kind: 'start' }), item('45')).rejected).toEqual(['45: kind']);
  });
  test('kind before volts before protection before class before count', () => {
    const want = wanted('45 440', { protection: 'P2', lifeClass: 'B' });
    const why = (of: Partial<StockItem>) => found(want, item('45 370', { count: 0, ...of })).rejected[0];
    expect(why({ kind: 'start' })).toBe('45 370: kind');
    expect(why({})).toBe('45 370: volts 370 < 440');
    expect(why({ volts: '440' })).toBe('45 370: protection');
    expect(why({ volts: '440', protection: 'P2' })).toBe('45 370: class');
    expect(why({ volts: '440', protection: 'P2', lifeClass: 'B' })).toBe('45 370: none-left');
  });
  test.each([
    ['P0', undefined, true],
    ['none', undefined, true],
    ['S0', 'none', true],
    ['P1', undefined, false],
    ['P1', 'S0', false],
    ['P1', 'S1', true],
    ['S1', 'P1', true],
    ['P2', 'S1', false],
    ['P2', 'protected', true],
    ['protected', 'P2', true],
    ['protected', 'S2', true],
    ['S2', 'P1', false],
    ['S3', 'S2', false],
    ['S3', 'S3', true],
    ['P2', 'S3', true],
    [undefined, undefined, true],
  ] as const)('protection %s by %s: %s', (own, other, ok) => {
    const want = wanted('45', own ? { protection: own } : {});
    expect(found(want, item('45', other ? { protection: other } : {})).choices.length).toBe(ok ? 1 : 0);
  });
  test.each([
    ['B', 'A', true],
    ['B', 'B', true],
    ['B', 'C', false],
    ['C', 'D', false],
    ['D', 'C', true],
    ['D', undefined, false],
    [undefined, 'D', true],
  ] as const)('class %s by %s: %s', (own, other, ok) => {
    const want = wanted('45', own ? { lifeClass: own } : {});
    expect(found(want, item('45', other ? { lifeClass: other } : {})).choices.length).toBe(ok ? 1 : 0);
  });
});

describe('start capacitors', () => {
  const range = (lowMicrofarads: string, highMicrofarads: string) => ({ lowMicrofarads, highMicrofarads });
  const want = wanted('208 330', { kind: 'start', range: range('189', '227'), belowPercent: '10', abovePercent: '10' });
  const start = (low: string, high: string, middle = '208') =>
    item(`${middle} 330`, { kind: 'start', range: range(low, high) });
  test.each([
    ['189', '227', []],
    ['190', '226', []],
    ['188', '227', ['208 330: range 188–227']],
    ['189', '228', ['208 330: range 189–228']],
  ])('printed %s–%s for 189–227: %j', (low, high, rejected) => {
    expect(found(want, start(low, high)).rejected).toEqual(rejected);
  });
  test('never in parallel', () => {
    const half = item('104 330', { kind: 'start', count: 2 });
    expect(found(want, half)).toEqual({ choices: [], rejected: ['104 330: value 104 for 208: -50.0 %'] });
  });
  test('a printed range alone is enough: its upper end stands for its µF', () => {
    const alone = { sectionsMicrofarads: [], volts: '330', kind: 'start' as const };
    const label = { ...alone, range: range('189', '227'), belowPercent: '16.7401', abovePercent: '0' };
    const item227 = { ...alone, range: range('189', '227'), id: 'start 189-227', count: 1 };
    expect(found(label, item227).choices).toEqual(['same: 1 × start 189-227']);
    expect(found(label, { ...item227, range: range('161', '193') }).rejected).toEqual(['start 189-227: range 161–193']);
    expect(substitutes(label, [item227]).choices[0]?.fills[0]?.microfarads.toNumber()).toBe(227);
    expect(() => found(label, item('45', { sectionsMicrofarads: [], range: range('1', '2') }))).toThrow();
    expect(() => found({ ...wanted('45', { kind: 'start' }), sectionsMicrofarads: [] })).toThrow();
  });
  test('without printed ranges, their µF decide', () => {
    expect(found(want, item('210 330', { kind: 'start' })).choices).toEqual(['same: 1 × 210 330']);
  });
  test('a printed range means nothing on a run part', () => {
    const odd = item('45 440', { range: range('1', '999') });
    expect(found(wanted('45', { range: range('44', '46') }), odd).choices).toHaveLength(1);
  });
});

describe('what is a bug of the caller', () => {
  test.each([[['']].map(() => [] as string[]), [['45', '5', '7']], [['0']], [['-5']], [['45', '0']]])(
    'sections %j',
    (sectionsMicrofarads) => {
      expect(() => substitutes(wanted('45'), [item('45', { sectionsMicrofarads })])).toThrow('not a capacitor');
      expect(() => substitutes({ ...wanted('45'), sectionsMicrofarads }, [])).toThrow('not a capacitor');
    },
  );
  test('one id twice', () => {
    expect(() => substitutes(wanted('45'), [item('45'), item('45')])).toThrow('two items with one id');
  });
});

const size = fc.constantFrom('5', '7.5', '10', '30', '35', '40', '45', '50');
const volts = fc.constantFrom('330', '370', '440');
const anyItem = fc.record({
  kind: fc.constantFrom('run' as const, 'run' as const, 'start' as const),
  sectionsMicrofarads: fc.array(size, { minLength: 1, maxLength: 2 }),
  ...{ volts, count: fc.nat(2) },
});
const anyStock = fc
  .array(anyItem, { maxLength: 7 })
  .map((all) => all.map((of, i): StockItem => ({ id: `item ${i}`, ...of })));
const anyWanted = fc.record({ sections: fc.array(size, { minLength: 1, maxLength: 2 }), volts }).map(
  ({ sections, volts }): Wanted => ({
    ...{ kind: 'run', sectionsMicrofarads: sections, volts, belowPercent: '6', abovePercent: '6' },
  }),
);

describe('whatever is on the truck', () => {
  test('each choice is inside the label, has the volts, is there, and is a run capacitor', () => {
    fc.assert(
      fc.property(anyWanted, anyStock, (want, stock) => {
        for (const choice of substitutes(want, stock).choices) {
          expect(choice.fills).toHaveLength(want.sectionsMicrofarads.length);
          for (const fill of choice.fills) expect(fill.deviationPercent.abs().lte(6)).toBe(true);
          expect(choice.fills.every((f) => f.deviationPercent.abs().lte(choice.worstPercent))).toBe(true);
          for (const { id, count } of choice.parts) {
            const of = stock.find((s) => s.id === id);
            expect(of && of.kind === 'run' && Number(of.volts) >= Number(want.volts) && count <= of.count).toBe(true);
          }
        }
      }),
      { numRuns: 60 },
    );
  });
  test('each item is either in a choice or rejected, once', () => {
    fc.assert(
      fc.property(anyWanted, anyStock, (want, stock) => {
        const { choices, rejected } = substitutes(want, stock);
        const used = new Set(choices.flatMap((c) => c.parts.map((p) => p.id)));
        expect([...used, ...rejected.map((r) => r.id)].sort()).toEqual(stock.map((s) => s.id).sort());
      }),
      { numRuns: 60 },
    );
  });
  test('the order of the stock changes nothing but the order of the rejected, and no choice is worse than the next', () => {
    fc.assert(
      fc.property(anyWanted, anyStock, (want, stock) => {
        const [one, other] = [substitutes(want, stock), substitutes(want, [...stock].reverse())];
        expect(other.choices.map(short)).toEqual(one.choices.map(short));
        const worst = one.choices.map((c) => c.worstPercent.toNumber());
        expect(worst).toEqual([...worst].sort((a, b) => a - b));
      }),
      { numRuns: 60 },
    );
  });
  test('the very part, if it is there, comes first or shares its exactness', () => {
    fc.assert(
      fc.property(anyWanted, anyStock, (want, stock) => {
        const same: StockItem = { id: 'very part', ...want, count: 1 };
        const { choices } = substitutes(want, [...stock, same]);
        expect(choices[0]?.worstPercent.toNumber()).toBe(0);
        expect(choices[0]?.partCount).toBe(1);
      }),
      { numRuns: 60 },
    );
  });
});
