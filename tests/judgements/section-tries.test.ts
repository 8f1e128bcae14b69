/** The values of a run capacitor: what a second try takes from the first, and what the leads leave open. */
import { describe, expect, test } from 'vitest';
import { Exact } from '../../engine/calc/exact.ts';
import { sayShare } from '../../engine/judgements/say.ts';
import type { Parts } from '../../engine/schema.ts';
import { choice, labelled, parts, yes } from './fixture.ts';
import { run } from './run.ts';

type Line = Record<string, number | string>;
const uF = (of: Line): Parts => parts('µF', of);
const of = (print: string, readings: Line, more: Partial<Record<string, Parts>> = {}) =>
  run('section-values', { label: labelled(print), readings: uF(readings), ...more });
const outcome = (...args: Parameters<typeof of>) => of(...args).outcome;
const second = (before: Line, readings: Line, more: Partial<Record<string, Parts>> = {}) =>
  outcome('45+5', readings, { before: uF(before), ...more });
const textOf = (name: string, ...args: Parameters<typeof of>) =>
  of(...args).findings.find((f) => f.name === name)?.text;

describe('what a second try takes from the first', () => {
  test('a section that was not read again, where the other was', () => {
    expect(second({ herm: 44.6, fan: 5.35 }, { herm: '_', fan: 5.03 })).toBe('conditional-pass');
    expect(second({ herm: 42.1, fan: 5.03 }, { herm: 44.6, fan: '_' })).toBe('conditional-pass');
  });
  test('nothing, where nothing was read again', () => {
    expect(second({ herm: 44.6, fan: 5.03 }, { herm: '_', fan: '_' })).toBe('undecided');
    expect(second({ herm: 36.1, fan: 5.03 }, { herm: '_', fan: '_' })).toBe('undecided');
  });
  test('a FAN in the band, where three readings had settled it', () => {
    // 42.1 and 4.75 in series make 4.27.
    const settled = { herm: 42.1, fan: 4.75, hf: 4.27 };
    expect(second(settled, { herm: 44.6, fan: '_' })).toBe('conditional-pass');
    expect(textOf('FAN', '45+5', { herm: 44.6, fan: '_' }, { before: uF(settled) })).toContain(
      'Read in the try before.',
    );
    expect(second({ herm: 42.1, fan: 4.75 }, { herm: 44.6, fan: '_' })).toBe('undecided');
  });
  test('a HERM that low, where three readings had settled it, and not where its lead may have sat on FAN', () => {
    expect(second({ herm: 4.5, fan: 5.03, hf: 2.37 }, { herm: '_', fan: 5.03 })).toBe('fails');
    expect(second({ herm: 4.5, fan: 5.03 }, { herm: 45.1, fan: 5.03 })).toBe('pass');
  });
  test('nothing of a try in which a lead was off', () => {
    expect(second({ herm: 42.1, fan: 'OL' }, { herm: 42.1, fan: 5.03 }, { wires: yes })).toBe('repeat');
    expect(second({ herm: 42.1, fan: 0.02 }, { herm: 42.1, fan: 5.03 }, { wires: yes })).toBe('repeat');
  });
  test('too high after too low is not too high twice', () => {
    expect(second({ herm: 42.1, fan: 5.03 }, { herm: 50.4, fan: 5.03 })).toBe('too-high');
  });
  test('exchanged leads after a try without any contradiction are read once more', () => {
    expect(second({ herm: 42.1, fan: 5.03 }, { herm: 5.02, fan: 44.8 })).toBe('swapped');
  });
});

describe('leads', () => {
  test('HERM low and FAN high, like neither of the other: the wires, not exchanged leads', () => {
    expect(outcome('45+5', { herm: 20, fan: 12 })).toBe('wires');
  });
  test('a section is open only where the other reads on the same C', () => {
    const off = { wires: yes };
    expect(outcome('45+5', { herm: 0.02, fan: '_' }, off)).toBe('repeat');
    expect(outcome('45+5', { herm: '_', fan: 0.02 }, off)).toBe('repeat');
    expect(outcome('45+5', { herm: 44.6, fan: 'OL' }, off)).toBe('repeat');
    expect(outcome('45+5', { herm: 'OL', fan: 5.03 }, off)).toBe('repeat');
  });
  test('OL on HERM–FAN alone, wires confirmed: both sections are judged', () => {
    expect(outcome('45+5', { herm: 44.6, fan: 5.03, hf: 'OL' }, { wires: yes })).toBe('pass');
  });
  test('both out ask for the wires, unless both are far above', () => {
    expect(outcome('45+5', { herm: 48, fan: 5.35 })).toBe('wires');
    expect(outcome('45+5', { herm: 50.4, fan: 3.2 })).toBe('wires');
    expect(outcome('45+5', { herm: 50.4, fan: 6.1 })).toBe('too-high');
  });
  test('terminals found by tabs without a third reading: HERM in leaves FAN open, HERM out leaves both', () => {
    const unproved = { tabs: parts('count', { t1: 4, t2: 3, t3: 1 }), third: {} };
    expect(outcome('45+5', { herm: 45.1, fan: 5.03 }, unproved)).toBe('fan-undecided');
    expect(outcome('45+5', { herm: 40, fan: 5.03 }, unproved)).toBe('undecided');
  });
  test('a HERM on the label’s last digit beside no FAN is no copied line', () => {
    expect(outcome('45+5', { herm: 45, fan: '_' })).toBe('undecided');
  });
});

describe('a part with one section', () => {
  test('is judged by it, whatever else stands in the line', () => {
    const tabs = parts('count', { t1: 4, t2: 3, t3: 1 });
    const judged = of('45', { herm: 45.3, fan: 4.1, hf: 1 }, { tabs });
    expect([judged.outcome, judged.findings.map((f) => f.name)]).toEqual(['pass', ['HERM']]);
    expect(outcome('45', { herm: 45.3, fan: 4.1 }, { tabs })).toBe('pass');
    expect(outcome('45', { herm: 45, fan: 5 })).toBe('pass');
    expect(outcome('45', { herm: 42.1, fan: 5 }, { before: uF({ herm: 42.1, fan: 5 }) })).toBe('fails');
  });
  test('OL is no verdict of it, whatever was read of a FAN', () => {
    expect(outcome('45', { herm: 'OL', fan: 5 }, { wires: yes })).toBe('repeat');
  });
  test('out, then in with the wires seen to: both are recorded, for one section out is not laid to the wires', () => {
    expect(outcome('45', { herm: 45.1 }, { wires: yes, before: uF({ herm: 42.1 }) })).toBe('conditional-pass');
  });
  test('needs no ohms of a second', () => {
    const ohms = (of: Line, more: Partial<Record<string, Parts>>) =>
      run('section-ohms', { ohms: parts('Ω', of), ...more }).outcome;
    expect(ohms({ hermc: 'OL', fanc: '_' }, { label: labelled('45') })).toBe('not-shorted');
    expect(ohms({ hermc: '_', fanc: 'OL' }, { readings: uF({ herm: 45.1 }) })).toBe('not-shorted');
    expect(ohms({ hermc: '_', fanc: 'OL' }, { readings: choice('herm', 'no') })).toBe('undecided');
  });
});

test('where the label allows more than the habit, the habit is shown and does not decide', () => {
  const wide = { label: labelled('40', { below: '15', above: '15' }), readings: uF({ herm: 35 }) };
  const judged = run('section-values', wide);
  expect(judged.outcome).toBe('pass');
  expect(judged.findings[0]?.text.replaceAll('\u2009', ' ')).toContain(
    'The ±10 % habit (36.00–44.00 µF) would replace it. The label decides.',
  );
});

test('where the tolerance is from stands beside it, each side where they differ', () => {
  const source = (of: Parameters<typeof labelled>[1]) =>
    run('section-values', { label: labelled('40', of), readings: uF({ herm: 40.1 }) }).findings[0]?.source;
  expect(source({})).toMatch(/^±6\u2009% printed on the part; /);
  expect(source({ below: '5', above: '10' })).toMatch(/^−5\/\+10\u2009% printed on the part; /);
  expect(source({ printed: false })).toMatch(/^±6\u2009% where none is printed, common practice; /);
});

test('a share of the doubt is 0 or 100 % only where it is so', () => {
  const said = ['0', '0.004', '0.01', '0.39', '0.99', '0.996', '1'].map((share) => sayShare(new Exact(share)));
  expect(said.map((text) => text.replace('\u2009', ' '))).toEqual([
    ...['0 %', 'under 1 %', '1 %', '39 %', '99 %', 'over 99 %', '100 %'],
  ]);
});
