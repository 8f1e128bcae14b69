import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { CapacitorLabel, Parts } from '../../engine/schema.ts';
import { ASSUMED, choice, FORCE, labelled, parts, SETTINGS, yes } from './fixture.ts';
import { run } from './run.ts';

type Cell = number | string;
const no = choice('ok', 'no');
const range = { low: '189', high: '227' };
const printed = (of: Partial<CapacitorLabel> = {}): Parts =>
  labelled('227', { below: '16.7401', above: '0', volts: '330', range, ...of });
const read = (start: Cell): Parts => parts('µF', { start });
const of = (now: Cell, more: Partial<Record<string, Parts>> = {}, force = FORCE) =>
  run('start-capacitor', { label: printed(), readings: read(now), ...more }, force);
const outcome = (now: Cell, earlier?: Cell, more: Partial<Record<string, Parts>> = {}) =>
  of(now, { ...(earlier === undefined ? {} : { earlier: read(earlier) }), ...more }).outcome;

describe('a start capacitor by its printed range 189–227', () => {
  test.each<[Cell, Cell | undefined, string]>([
    [208, undefined, 'pass'],
    [189, undefined, 'pass'],
    [227, undefined, 'pass'],
    [188.9999, undefined, 'repeat'],
    [227.0001, undefined, 'repeat'],
    [188, 188, 'low'],
    [188, 200, 'repeat'],
    [150, undefined, 'low'],
    [300, undefined, 'repeat'],
    [300, 300, 'high'],
    [228, 300, 'high'],
    [228, 228, 'high'],
    [228, 188, 'repeat'],
    [188, 228, 'repeat'],
    [201, 188, 'pass'],
    [681, undefined, 'repeat'],
    [681.0001, 681, 'repeat'],
    [681, 681, 'high'],
    [681.0001, 681.0001, 'undecided'],
    [681.0001, 300, 'repeat'],
    [300, 681.0001, 'repeat'],
    ['OL', undefined, 'repeat'],
    ['OL', 208, 'repeat'],
    ['OL', 'OL', 'undecided'],
    [208, 'OL', 'pass'],
    ['_', undefined, 'undecided'],
    [-1, undefined, 'undecided'],
  ])('%s µF after %s: %s', (now, earlier, expected) => {
    expect(outcome(now, earlier)).toBe(expected);
  });
  test('next to nothing is open only on leads that read something else', () => {
    // 2 % of 189 µF is 3.78 µF.
    expect(outcome(3.78)).toBe('low');
    expect(outcome(3.7799)).toBe('leads');
    expect(outcome(3.7799, undefined, { leads: yes })).toBe('open');
    expect(outcome(3.7799, undefined, { leads: no })).toBe('undecided');
    expect(outcome(0, 0)).toBe('leads');
    expect(outcome(188, 0)).toBe('repeat');
  });
  test('ohms near zero are a short, unless it reads µF', () => {
    const ohms = (start: Cell) => ({ ohms: parts('Ω', { start }) });
    expect(outcome('OL', undefined, ohms(1.999))).toBe('shorted');
    expect(outcome('OL', undefined, ohms(2))).toBe('repeat');
    expect(outcome('OL', undefined, ohms('OL'))).toBe('repeat');
    expect(outcome(0, undefined, ohms(0))).toBe('shorted');
    expect(outcome(201, undefined, ohms(0.1))).toBe('pass');
    expect(run('start-capacitor', { ohms: parts('Ω', { start: 0.1 }) }).outcome).toBe('shorted');
    expect(of('OL', ohms(0.3)).findings).toEqual([
      {
        ...{ name: 'Start capacitor, ohms', reading: '0.3\u2009Ω', limits: 'shorted below 2\u2009Ω', doubt: null },
        ...{ word: 'shorted', text: 'The start capacitor reads 0.3\u2009Ω, steady near zero. It is shorted.' },
        source: 'set for this test',
      },
    ]);
  });
  test('a print with a tolerance instead of a range', () => {
    const label = labelled('200', { below: '0', above: '20' });
    const at = (start: Cell) => run('start-capacitor', { label, readings: read(start) }).outcome;
    expect([200, 240, 199.9999, 240.0001].map(at)).toEqual(['pass', 'pass', 'repeat', 'repeat']);
  });
  test('without a print there is no verdict on the value', () => {
    const judged = run('start-capacitor', { readings: read(208) });
    expect(judged.outcome).toBe('undecided');
    expect(judged.findings).toEqual([
      {
        ...{ name: 'Start capacitor', reading: '208\u2009µF', limits: null, doubt: null, word: 'undecided' },
        ...{ text: 'The range is not known, so there is no verdict on the value.', source: null },
      },
    ]);
  });
  test('the doubt and the share of it inside', () => {
    const judged = of(190);
    expect(judged.outcome).toBe('pass');
    expect(judged.findings).toEqual([
      {
        ...{ name: 'Start capacitor', reading: '190\u2009µF', limits: '189–227\u2009µF', word: 'conditional pass' },
        doubt: '186.19–193.81\u2009µF',
        text: 'The start capacitor reads 190\u2009µF. The print allows 189–227\u2009µF, and the doubt crosses a limit: P(in range) 63\u2009%.',
        source:
          'the range printed on the part; words of ILAC-G8, non-binary rule, doubt ±(1.9\u2009% + 2 counts) taken as rectangular',
        figures: {
          ...{ kind: 'scale', name: 'Start capacitor', unit: 'µF', word: 'conditional pass', rated: null, habit: null },
          ...{ limits: { low: '189', high: '227' }, reading: '190', doubt: { low: '186.19', high: '193.81' } },
        },
      },
    ]);
    const text = (now: Cell, earlier?: Cell) =>
      of(now, earlier === undefined ? {} : { earlier: read(earlier) }).findings[0]?.text;
    expect(text(208)).toBe(
      'The start capacitor reads 208\u2009µF. The print allows 189–227\u2009µF, and all of the doubt lies inside.',
    );
    expect(text(150)).toBe(
      'The start capacitor reads 150\u2009µF. The print allows 189–227\u2009µF, and all of the doubt lies below it.',
    );
    expect(text(188, 187)).toBe(
      'The start capacitor reads 188\u2009µF. The print allows 189–227\u2009µF: it lies below, and the doubt reaches in: P(in range) 37\u2009%. The try before read 187\u2009µF, below the range. Both are recorded.',
    );
    expect(text(228, 300)).toContain('The try before read 300\u2009µF. Above the range twice: a senior sees this.');
    expect(text(188, 200)).toContain('The try before read 200\u2009µF, inside.');
    expect(text(208, 228)).toContain('The try before read 228\u2009µF, above the range. Both are recorded.');
    expect(text(208, 0)).not.toContain('before');
  });
  test('what is no verdict says what comes first', () => {
    const lines = (now: Cell, more: Partial<Record<string, Parts>> = {}) =>
      of(now, more).findings.map((f) => [f.word, f.text, f.source]);
    expect(lines(0.5)).toEqual([
      [
        'no verdict',
        'The start capacitor reads 0.5\u2009µF for 189–227\u2009µF. That is no verdict: look at the wires, the leads and the range first.',
        'set for this test',
      ],
    ]);
    expect(lines(0.5, { leads: yes })).toEqual([
      [
        'open',
        'The start capacitor reads 0.5\u2009µF for 189–227\u2009µF. The leads read another capacitor or a short. It is open.',
        'set for this test',
      ],
    ]);
    expect(lines(900, { earlier: read(300) })[0]?.[1]).toContain('That is no verdict');
    expect(lines(900, { earlier: read(300) })[0]?.[1]).not.toContain('before');
    const ol =
      'The start capacitor reads OL. That is no verdict: over range, shorted, charged, or a resistor in parallel.';
    expect(lines('OL')).toEqual([['no verdict', ol, null]]);
    expect(lines('OL', { earlier: read('OL') })).toEqual([
      ['no verdict', `${ol} It read OL in the try before. Ohms decide.`, null],
    ]);
    expect(lines('_')).toEqual([['not read', 'The start capacitor was not read.', null]]);
    expect(of('OL').findings[0]?.reading).toBe('OL');
    expect(of('_').findings[0]?.reading).toBe('no reading');
  });
  test('the plain rule knows in and out only', () => {
    const force = { ...FORCE, settings: { ...SETTINGS, rule: 'plain' as const } };
    expect(of(190, {}, force).findings[0]).toMatchObject({
      word: 'pass',
      text: 'The start capacitor reads 190\u2009µF. The print allows 189–227\u2009µF, so it is in.',
      source: 'the range printed on the part; plain two-way rule of the shop',
    });
    expect(of(188, {}, force)).toMatchObject({
      outcome: 'low',
      findings: [
        { text: 'The start capacitor reads 188\u2009µF. The print allows 189–227\u2009µF, so it is out, below.' },
      ],
    });
    expect(of(228, {}, force).outcome).toBe('repeat');
  });
  test('a meter with more doubt never makes a pass of what is out, nor a fail of what is in', () => {
    const value = fc.integer({ min: 500, max: 6000 }).map((n) => n / 10);
    fc.assert(
      fc.property(value, (now) => {
        const inside = now >= 189 && now <= 227;
        for (const meter of [FORCE.meter, ASSUMED]) {
          expect(of(now, {}, { ...FORCE, meter }).outcome === 'pass').toBe(inside);
        }
      }),
    );
  });
});

describe('a part with one section that reads next to nothing', () => {
  const label = labelled('35');
  const at = (herm: Cell, more: Partial<Record<string, Parts>> = {}) =>
    run('single-section', { label, readings: parts('µF', { herm }), ...more });
  const ohms = (hermc: Cell) => ({ ohms: parts('Ω', { hermc }) });
  test.each<[Cell, Partial<Record<string, Parts>>, string]>([
    [34.9, {}, 'neither'],
    [0.7, {}, 'neither'],
    [0.6999, {}, 'leads'],
    [0.6999, { leads: yes }, 'open'],
    [0.6999, { leads: no }, 'undecided'],
    [0, { leads: yes }, 'open'],
    ['OL', {}, 'undecided'],
    ['OL', { leads: yes }, 'undecided'],
    ['OL', ohms(1.999), 'shorted'],
    ['OL', ohms(2), 'undecided'],
    [0, { ...ohms(0.2), leads: yes }, 'shorted'],
    [34.9, ohms(0.2), 'neither'],
    [-1, { leads: yes }, 'undecided'],
    ['_', { leads: yes }, 'undecided'],
  ])('%s µF, %j: %s', (herm, more, expected) => {
    expect(at(herm, more).outcome).toBe(expected);
  });
  test('two sections prove the leads for each other, and without a print nothing is known', () => {
    expect(at(0, { label: labelled('35+5'), leads: yes }).findings[0]?.text).toBe(
      'The part has two sections: each proves the leads for the other.',
    );
    expect(at(0, { label: labelled('35+5'), leads: yes }).outcome).toBe('undecided');
    const judged = run('single-section', { readings: parts('µF', { herm: 0 }), leads: yes });
    expect(judged).toMatchObject({ outcome: 'undecided', findings: [{ text: 'The rating is not known.' }] });
  });
  test('what each says', () => {
    const line = (herm: Cell, more: Partial<Record<string, Parts>> = {}) => {
      const [f] = at(herm, more).findings;
      return [f?.reading, f?.word, f?.text, f?.source];
    };
    expect(line(34.9)).toEqual([
      '34.9\u2009µF',
      'neither',
      'It reads 34.9\u2009µF, so it is neither open nor shorted.',
      null,
    ]);
    expect(line(0.1)).toEqual([
      '0.1\u2009µF',
      'ask',
      'It reads 0.1\u2009µF, under 2\u2009% of 35\u2009µF. Read another capacitor, or a short in ohms, with these leads.',
      'set for this test',
    ]);
    expect(line(0.1, { leads: yes })).toEqual([
      '0.1\u2009µF',
      'open',
      'It reads 0.1\u2009µF, under 2\u2009% of 35\u2009µF, wires off. The leads read another capacitor or a short. It is open.',
      'set for this test',
    ]);
    expect(line(0.1, { leads: no })[2]).toBe('The leads were not shown to read. Nothing is condemned.');
    expect(line('OL')).toEqual(['no reading', 'undecided', 'No reading in µF. OL there is no verdict.', null]);
    expect(line('OL', ohms(0.3))).toEqual([
      'no reading',
      'shorted',
      'It reads 0.3\u2009Ω, steady near zero. It is shorted.',
      'set for this test',
    ]);
  });
});
