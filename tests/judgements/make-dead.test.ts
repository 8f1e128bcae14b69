import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Parts } from '../../engine/schema.ts';
import { choice, FORCE, labelled, parts } from './fixture.ts';
import { run } from './run.ts';

type Line = Record<string, number | string>;
const V = (of: Line): Parts => parts('V', of);
const outlet = choice('source', 'outlet');
const dead = { before: 121, l1l2: 0.2, l1g: 0, l2g: 0.1, t1g: 0, t2g: 0, after: 121 };

describe('absence of voltage', () => {
  const of = (line: Line, means = outlet) => run('absence', { line: V({ ...dead, ...line }), means }).outcome;

  test.each([
    ['the worked line', {}, 'dead'],
    ['on the limit is dead', { l1g: 5 }, 'dead'],
    ['past it may be induced', { l1g: 5.01 }, 'ghost'],
    ['14 V on a high-impedance meter', { l1g: 14 }, 'ghost'],
    ['just under live', { t1g: 49.99 }, 'ghost'],
    ['on the limit is live', { t1g: 50 }, 'live'],
    ['the load side alone', { t2g: 121 }, 'live'],
    ['the sign of the leads says nothing', { l2g: -121 }, 'live'],
    ['a lost leg', { l1l2: 0.4, l1g: 121, l2g: 120 }, 'lost-leg'],
    ['a second feed', { x12: 0, x1g: 121, x2g: 0 }, 'live'],
    ['a second feed dead', { x12: 0, x1g: 0, x2g: 0 }, 'dead'],
    ['the source read nothing first', { before: 0 }, 'first-proving'],
    ['the source read nothing after', { after: 0 }, 'second-proving'],
    ['100 V is enough for nobody whose outlet should read 120', { before: 100 }, 'first-proving'],
    ['within 10 %', { before: 108, after: 132 }, 'dead'],
    ['past 10 %', { before: 132.01 }, 'first-proving'],
    ['below 10 %', { after: 107.99 }, 'second-proving'],
    ['live wins over a dead meter', { before: 0, l1g: 121 }, 'live'],
    ['a ghost does not win over a dead meter', { before: 0, l1g: 14 }, 'first-proving'],
    ['a pair left out', { l2g: '_' }, 'undecided'],
    ['OL is no zero', { t2g: 'OL' }, 'undecided'],
    ['no source reading', { after: '_' }, 'undecided'],
  ])('%s', (_, line, expected) => {
    expect(of(line)).toBe(expected);
  });

  test('each finding says which reading it is of', () => {
    const { findings } = run('absence', { line: V(dead), means: outlet });
    const pairs = ['L1–L2', 'L1–ground', 'L2–ground', 'T1–ground', 'T2–ground'];
    expect(findings.map((f) => f.name)).toEqual(['Known source, before', ...pairs, 'Known source, after']);
  });

  test.each([
    ['line240', 238, 'dead'],
    ['line240', 215, 'first-proving'],
    ['line208', 215, 'dead'],
    ['unit240', 264, 'dead'],
  ])('a source named %s reading %d', (source, volts, expected) => {
    expect(of({ before: volts, after: volts }, choice('source', source))).toBe(expected);
  });

  test('a proving unit by its print: 100 V is enough, less is not', () => {
    const stated = (value: number): Parts => ({ ...choice('source', 'other'), ...V({ stated: value }) });
    expect(of({ before: 100, after: 100 }, stated(100))).toBe('dead');
    expect(of({ before: 99.99, after: 100 }, stated(100))).toBe('first-proving');
    expect(of({ before: 48, after: 48 }, stated(48))).toBe('first-proving');
    expect(of({}, choice('source', 'other'))).toBe('undecided');
    expect(of({}, {})).toBe('undecided');
    // Volts alone name no source.
    expect(of({}, V({ stated: 120 }))).toBe('undecided');
    const [first] = run('absence', { line: V(dead), means: {} }).findings;
    expect(first).toMatchObject({
      ...{ reading: '121\u2009V', word: 'missing', text: 'Nobody said what the known source should read.' },
    });
  });

  test('a three-phase unit has three lines in its own cabinet; indoors two legs feed the blower', () => {
    const given = { line: V(dead), means: outlet, unit: choice('choice', 'three-phase') };
    expect(run('absence', given).outcome).toBe('lines');
    expect(run('absence', given, { ...FORCE, cabinet: 'indoor' }).outcome).toBe('dead');
  });

  test('a 115 V unit has its own pairs', () => {
    const line = { before: 121, hn: 0, hg: 0, ng: 0.2, t1g: 0, after: 121 };
    const judged = (l: Line) => run('absence', { line: V(l), means: outlet }).outcome;
    expect(judged(line)).toBe('dead');
    expect(judged({ ...line, ng: 5.01 })).toBe('ghost');
    expect(judged({ ...line, hg: 119 })).toBe('live');
    const { ng: _, ...without } = line;
    expect(judged(without)).toBe('undecided');
  });

  test('never dead without every pair of a supply within the limit and both provings', () => {
    const volt = fc.oneof(
      fc.integer({ min: -6000, max: 6000 }).map((n) => n / 1000),
      fc.constantFrom(0, 5, 50, 121, '_', 'OL'),
    );
    const line = fc.record(Object.fromEntries(Object.keys(dead).map((k) => [k, fc.option(volt, { nil: undefined })])));
    fc.assert(
      fc.property(line, (some) => {
        const kept = Object.fromEntries(Object.entries(some).filter(([, v]) => v !== undefined)) as Line;
        if (run('absence', { line: V(kept), means: outlet }).outcome !== 'dead') return;
        for (const key of ['l1l2', 'l1g', 'l2g', 't1g'] as const)
          expect(Math.abs(Number(kept[key]))).toBeLessThanOrEqual(5);
        for (const key of ['before', 'after'] as const) expect(Number(kept[key])).toBeGreaterThanOrEqual(108);
      }),
      { numRuns: 1000 },
    );
  });
});

describe('the bridge', () => {
  const line = { ...dead, l1g: 14 };
  const of = (bridge: Line, before: Line = line) =>
    run('bridge', { bridge: V({ before: 121, after: 121, ...bridge }), line: V(before), means: outlet }).outcome;
  test.each([
    ['14 falls to 0.6', { l1g: 0.6 }, 'induced'],
    ['14 holds', { l1g: 14 }, 'real'],
    ['to the limit', { l1g: 5 }, 'induced'],
    ['just above it', { l1g: 5.01 }, 'real'],
    ['not read', {}, 'undecided'],
    ['meter not proved', { l1g: 0.6, after: 0 }, 'proving'],
    ['no second proving', { l1g: 0.6, after: '_' }, 'undecided'],
    ['no first proving', { l1g: 0.6, before: '_' }, 'undecided'],
  ])('%s', (_, bridge, expected) => {
    expect(of(bridge)).toBe(expected);
  });
  test('a line on which no pair showed volts has nothing that could collapse', () => {
    expect(of({ l1g: 0 }, dead)).toBe('undecided');
  });
  test('every pair that showed volts', () => {
    expect(of({ l1g: 0.6 }, { ...line, t1g: 9 })).toBe('undecided');
    expect(of({ l1g: 0.6, t1g: 9 }, { ...line, t1g: 9 })).toBe('real');
    expect(of({ l1g: 0.6, t1g: 0.1 }, { ...line, t1g: 9 })).toBe('induced');
  });
});

describe('residual volts', () => {
  const one = parts('count', { count: 1 });
  const line = { batteryBefore: 9.3, hc: 0.4, fc: 0.1, hf: 0.3, batteryAfter: 9.3 };
  const of = (more: Line, look: Parts = one) => run('residual', { line: V({ ...line, ...more }), look });
  test.each([
    ['the worked line', {}, 'discharged'],
    ['signs as read', { hc: 0.4, fc: -0.3, hf: 0.7 }, 'discharged'],
    ['signs left off', { hc: 4, fc: 3, hf: 1 }, 'discharged'],
    ['agreeing on the limit', { hc: 0, fc: 0, hf: 0.5 }, 'discharged'],
    ['past it', { hc: 0, fc: 0, hf: 0.51 }, 'disagree'],
    ['on the limit', { hc: 5, fc: 0, hf: 5 }, 'discharged'],
    ['past it', { hc: 5.01, fc: 0, hf: 5 }, 'too-high'],
    ['a wire off the FAN section', { hc: 0.3, fc: 212, hf: 188 }, 'too-high'],
    ['negative is charged too', { fc: -212 }, 'too-high'],
    ['a dead battery', { batteryBefore: 0 }, 'battery'],
    ['a dead meter after', { fc: 212, batteryAfter: 0 }, 'battery'],
    ['7 and 10 V prove', { batteryBefore: 7, batteryAfter: 10 }, 'discharged'],
    ['6.99 V does not', { batteryBefore: 6.99 }, 'battery'],
    ['10.01 V does not', { batteryAfter: 10.01 }, 'battery'],
    ['a pair left out', { hf: '_' }, 'undecided'],
    ['no battery read before', { batteryBefore: '_' }, 'undecided'],
    ['no battery read after', { batteryAfter: '_' }, 'undecided'],
    ['no battery read at all', { batteryBefore: '_', batteryAfter: '_' }, 'undecided'],
    ['OL is no zero', { fc: 'OL' }, 'undecided'],
  ])('%s', (_, more, expected) => {
    expect(of(more).outcome).toBe(expected);
  });
  test('a high pair is named with its volts, and what it is a clue to', () => {
    const high = of({ hc: 0.3, fc: 212, hf: 188 }).findings.find((f) => f.name === 'FAN–C');
    expect(high).toMatchObject({ reading: '212\u2009V', word: 'charged' });
    expect(high?.text).toContain('A wire, tab or winding on that section may be open.');
  });
  test('every capacitor that was counted', () => {
    const count = (n: number) => parts('count', { count: n });
    expect(of({}, count(2)).outcome).toBe('undecided');
    expect(of({ c2: 0.1 }, count(2)).outcome).toBe('discharged');
    expect(of({ c2: 40 }, count(2)).outcome).toBe('too-high');
    expect(of({ c2: 0.1, c3: 0.1 }, count(4)).outcome).toBe('undecided');
    expect(of({ c2: 0.1, c3: 0.1, c4: 0 }, count(4)).outcome).toBe('discharged');
    expect(of({ c2: 0.1, c3: 0.1, c4: 0 }, count(5)).outcome).toBe('undecided');
    expect(of({}, {}).outcome).toBe('undecided');
  });
  test('a high reading counts though nobody counted that capacitor', () => {
    expect(of({ c2: 40 }).outcome).toBe('too-high');
    expect(of({ c3: 40 }).outcome).toBe('too-high');
    expect(of({ c4: 40 }).outcome).toBe('too-high');
    expect(of({ fc: 212 }, { ...one, ...labelled('45') }).outcome).toBe('too-high');
  });
  test('a part with one section has one pair', () => {
    const look = { ...one, ...labelled('45') };
    const single = { batteryBefore: 9.3, hc: 0.4, batteryAfter: 9.3 };
    expect(run('residual', { line: V(single), look }).outcome).toBe('discharged');
    expect(run('residual', { line: V(single), look: { ...one, ...labelled('45+5') } }).outcome).toBe('undecided');
    expect(run('residual', { line: V({ ...single, hc: '_' }), look }).outcome).toBe('undecided');
  });
});

describe('hold time', () => {
  const first = (given: Partial<Record<string, Parts>>) => run('hold', given).findings[0];
  test.each([
    ['45+5', '440', '5\u2009s', '4.34\u2009s'],
    ['40+5', '370', '5\u2009s', '3.72\u2009s'],
    ['80+5', '440', '8\u2009s', '7.72\u2009s'],
    ['227', '330', '21\u2009s', '20.59\u2009s'],
  ])('%s µF %s V: hold %s (computed %s)', (print, volts, hold, exact) => {
    const said = first({ label: labelled(print, { volts }) });
    expect(said?.reading).toBe(hold);
    expect(said?.text).toContain(exact);
  });
  test('energy, and the pulse against the resistor’s rating', () => {
    const [, energy, peak] = run('hold', { label: labelled('45+5') }).findings;
    expect(energy?.reading).toBe('8.71\u2009J');
    expect(peak).toMatchObject({ reading: '19.36\u2009W', limits: '5\u2009W', word: 'short pulse' });
  });
  test('an unknown print is held longer', () => {
    expect(run('hold', { label: {}, look: {} }).outcome).toBe('unknown');
    expect(first({ label: {} })?.reading).toBe('10\u2009s');
    expect(run('hold', { label: labelled('45+5', { volts: null }) }).outcome).toBe('unknown');
    expect(run('hold', {}).outcome).toBe('undecided');
  });
  test('other capacitors are held as unknown ones', () => {
    const look = parts('count', { count: 2 });
    expect(run('hold', { label: labelled('45+5'), look }).findings.at(-1)?.reading).toBe('30\u2009s');
  });
});
