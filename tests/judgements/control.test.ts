import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Parts } from '../../engine/schema.ts';
import { choice, parts, yes } from './fixture.ts';
import { run } from './run.ts';

type Cell = number | string;
type Line = Record<string, Cell>;
const T = '\u2009';
const no = choice('ok', 'no');
const V = (of: Line): Parts => parts('V', of);
const texts = (judged: { findings: readonly { text: string }[] }): string[] => judged.findings.map((f) => f.text);
const words = (judged: {
  findings: readonly { name: string; reading: string; limits: string | null; word: string }[];
}) => judged.findings.map((f) => [f.name, f.reading, f.limits, f.word]);

describe('volts at a coil', () => {
  const of = (line: Line, more: Partial<Record<string, Parts>> = {}) =>
    run('coil-volts', { readings: V(line), ...more });
  test.each<[Line, Partial<Record<string, Parts>>, string]>([
    [{ coil: 20.4 }, {}, 'good'],
    [{ coil: 20.39 }, {}, 'low'],
    [{ coil: 28 }, {}, 'good'],
    [{ coil: 28.01 }, {}, 'high'],
    [{ coil: -24 }, {}, 'good'],
    [{ coil: 24 }, { pulled: yes }, 'good'],
    [{ coil: 24 }, { pulled: no }, 'not-in'],
    [{ coil: 20.4 }, { pulled: no }, 'not-in'],
    [{ coil: 19 }, { pulled: no }, 'low'],
    [{ coil: 19, rc: 21.6 }, {}, 'drop'],
    [{ coil: 19, rc: 21.59 }, {}, 'source'],
    [{ coil: 19, rc: -21.6 }, {}, 'drop'],
    [{ coil: 24, rc: 20 }, {}, 'good'],
    [{ coil: 5 }, {}, 'low'],
    [{ coil: 4.99 }, {}, 'wait'],
    [{ coil: 0 }, { waited: yes }, 'absent'],
    [{ coil: 0 }, { waited: no }, 'wait'],
    [{ coil: '_' }, { waited: yes }, 'undecided'],
    [{ coil: 102 }, { rated: choice('volts', '120') }, 'good'],
    [{ coil: 101.99 }, { rated: choice('volts', '120') }, 'low'],
    [{ coil: 140 }, { rated: V({ volts: 120 }) }, 'good'],
    [{ coil: 140.01 }, { rated: V({ volts: 120 }) }, 'high'],
    [{ coil: 24.99 }, { rated: V({ volts: 120 }) }, 'wait'],
    [{ coil: 25 }, { rated: V({ volts: 120 }) }, 'low'],
    [{ coil: 90, rc: 108 }, { rated: V({ volts: 120 }) }, 'drop'],
    [{ coil: 90, rc: 107.99 }, { rated: V({ volts: 120 }) }, 'source'],
    [{ coil: 24 }, { rated: choice('volts', 'other') }, 'undecided'],
    [{ coil: 24 }, { rated: V({ volts: 0 }) }, 'undecided'],
  ])('%j, %j: %s', (line, more, outcome) => {
    expect(of(line, more).outcome).toBe(outcome);
  });
  test('nobody read them', () => {
    expect(run('coil-volts', {})).toMatchObject({
      outcome: 'undecided',
      findings: [{ name: 'Coil volts', reading: 'no reading', word: 'missing' }],
    });
  });
  test('what each says', () => {
    const rated = choice('volts', '24');
    const say = (line: Line, more: Partial<Record<string, Parts>> = {}) => texts(of(line, { rated, ...more }));
    expect(say({ coil: 24 })).toEqual([`24${T}V at the coil while it should pull in, inside 20.4–28${T}V.`]);
    expect(say({ coil: 24 }, { pulled: yes })).toEqual([`24${T}V at the coil while it pulls in, inside 20.4–28${T}V.`]);
    expect(say({ coil: 24 }, { pulled: no })).toEqual([
      `24${T}V at the coil, 20.4${T}V or more, and it does not pull in. It is jammed, dirty or its coil is bad.`,
    ]);
    expect(say({ coil: 30 })).toEqual([`30${T}V at the coil is above 28${T}V.`]);
    expect(say({ coil: 19 })).toEqual([`19${T}V at the coil is under 20.4${T}V. It chatters or stays out.`]);
    expect(say({ coil: 19, rc: 20.8 })[1]).toBe(
      `R–C reads 20.8${T}V under load, under 21.6${T}V: the source is low. Look at tap, VA and primary.`,
    );
    expect(say({ coil: 19, rc: 24 })[1]).toBe(
      `R–C reads 24${T}V under load, 21.6${T}V or more: a wire or a switch between drops it.`,
    );
    expect(say({ coil: 0 })).toEqual([
      `0${T}V at the coil. The delay after a change of call may still run: it decides nothing yet.`,
    ]);
    expect(say({ coil: 0 }, { waited: yes })).toEqual([`0${T}V at the coil: the call does not reach it.`]);
    expect(say({ coil: '_' })).toEqual(['The volts at the coil were not read.']);
    expect(say({ coil: 24 }, { rated: choice('volts', 'other') })).toEqual([
      'The coil’s rated volts are not one figure, so its volts are not judged.',
    ]);
    expect(texts(of({ coil: 24 }))).toEqual([
      `24${T}V at the coil while it should pull in, inside 20.4–28${T}V. A 24${T}V coil is assumed.`,
    ]);
    expect(words(of({ coil: 19, rc: 20.8 }))).toEqual([
      ['Coil volts', `19${T}V`, `20.4–28${T}V`, 'low'],
      ['R–C', `20.8${T}V`, `21.6${T}V or more`, 'low'],
    ]);
    expect(words(of({ coil: 19, rc: 24 }))[1]).toEqual(['R–C', `24${T}V`, `21.6${T}V or more`, 'good']);
    const word = (line: Line, more: Partial<Record<string, Parts>> = {}) => of(line, more).findings[0]?.word;
    expect([
      word({ coil: 24 }),
      word({ coil: 24 }, { pulled: no }),
      word({ coil: 0 }),
      word({ coil: 0 }, { waited: yes }),
      word({ coil: 30 }),
    ]).toEqual([...['good', 'not in', 'wait', 'absent', 'high']]);
    expect(word({ coil: 24 }, { rated: choice('volts', 'other') })).toBe('not judged');
  });
});

describe('hopping along the switches', () => {
  const all = { start: 25.6, delay: 25.6, lp: 25.6, hp: 25.6, discharge: 25.6, coil: 25.6 };
  const of = (readings: Line | null, across: Line | null = null, waited: Parts | undefined = yes) =>
    run('hop', {
      ...(readings ? { readings: V(readings) } : {}),
      ...(across ? { across: V(across) } : {}),
      ...(waited ? { waited } : {}),
    });
  test.each<[Line | null, Line | null, string]>([
    [all, null, 'through'],
    [{ start: 25.6, coil: 25.6 }, null, 'through'],
    [{ ...all, delay: 0, lp: 0, hp: 0, discharge: 0, coil: 0 }, null, 'delay'],
    [{ ...all, lp: 0, hp: 0, discharge: 0, coil: 0 }, null, 'lp'],
    [{ ...all, hp: 0, discharge: 0, coil: 0 }, null, 'hp'],
    [{ ...all, discharge: 0, coil: 0 }, null, 'discharge'],
    [{ ...all, coil: 0 }, null, 'wire'],
    [{ start: 25.6, hp: 0 }, null, 'hp'],
    [{ ...all, coil: 24 }, null, 'through'],
    [{ start: 25.6, coil: 25.1 }, null, 'through'],
    [{ start: 26.6, coil: 24.6 }, null, 'through'],
    [{ start: 25.6, coil: 20.4 }, null, 'through'],
    [{ start: 25.6, coil: 20.39 }, null, 'drop'],
    [{ start: 25.6, coil: 19 }, {}, 'joint'],
    [{ start: 25.6, coil: 19 }, { lp: 0.1, hp: 0.49 }, 'joint'],
    [{ start: 25.6, coil: 19 }, { lp: 0.1, hp: 6.4 }, 'drop'],
    [{ start: 25.6, coil: 19 }, { lp: 0.1, hp: 25.6 }, 'contradicts'],
    [{ start: 25.6, coil: 24 }, { lp: 0.1, hp: 1.4 }, 'through'],
    [{ rc: 25.6, coil: 19 }, null, 'drop'],
    [{ rc: 25.6, coil: 19 }, { lp: 0.1 }, 'joint'],
    [{ rc: 25.6, coil: 19 }, { lp: 6.4 }, 'drop'],
    [{ start: 0 }, null, 'nothing'],
    [{ start: 12 }, null, 'low'],
    [{ start: 25.6 }, null, 'undecided'],
    [null, null, 'undecided'],
    [null, { delay: 0.1, lp: 0.1, hp: 25.6 }, 'hp'],
    [null, { delay: 25.6 }, 'delay'],
    [null, { delay: 0.1, lp: 0.1, hp: 0.1 }, 'undecided'],
    [null, { lp: 3 }, 'drop'],
    [null, { lp: 25.6, hp: 25.6 }, 'contradicts'],
    [{ ...all, hp: 0, discharge: 0, coil: 0 }, { hp: 25.6 }, 'hp'],
    [{ ...all, hp: 0, discharge: 0, coil: 0 }, { hp: 0.1 }, 'contradicts'],
    [{ ...all, hp: 0, discharge: 0, coil: 0 }, { lp: 25.6 }, 'contradicts'],
    [{ ...all, hp: 0, discharge: 0, coil: 0 }, { lp: 0.1 }, 'hp'],
    [{ ...all, hp: 0, discharge: 0, coil: 0 }, { hp: 5 }, 'hp'],
    [all, { hp: 25.6 }, 'contradicts'],
    [all, { hp: 0.1 }, 'through'],
    [all, { hp: 5 }, 'drop'],
    [{ start: 0 }, { lp: 25.6 }, 'lp'],
    [{ ...all, coil: 0 }, { hp: 25.6 }, 'hp'],
    [{ ...all, coil: 0 }, { hp: 0.1 }, 'wire'],
    [{ ...all, coil: 0 }, { hp: 12 }, 'contradicts'],
  ])('%j, across %j: %s', (readings, across, outcome) => {
    expect(of(readings, across).outcome).toBe(outcome);
  });
  test('within the delay after a change of call, no volts and an open delay decide nothing', () => {
    const early = (readings: Line | null, across: Line | null = null) => of(readings, across, no).outcome;
    expect(early({ start: 0 })).toBe('wait');
    expect(early({ start: 25.6, delay: 0 })).toBe('wait');
    expect(early(null, { delay: 25.6 })).toBe('wait');
    expect(early({ start: 25.6, delay: 25.6, lp: 0 })).toBe('lp');
    expect(early({ start: 12 })).toBe('low');
    expect(run('hop', { readings: V({ start: 0 }) }).outcome).toBe('wait');
    expect(texts(of({ start: 0 }, null, no)).at(-1)).toBe(
      'What this means hangs on the time since the call was changed: a delay holds it for minutes.',
    );
  });
  test('what each says', () => {
    expect(texts(of({ start: 25.6, delay: 25.6, lp: 25.6, hp: 0 }))).toEqual([
      `25.6${T}V before the high-pressure switch, 0${T}V after. It is the open one.`,
      'Open: the high-pressure switch. Find why it opened. It is never jumpered.',
    ]);
    expect(texts(of(null, { delay: 0.1, lp: 3, hp: 25.6, discharge: 0 }))).toEqual([
      `0.1${T}V across the delay: it is closed.`,
      `3${T}V across the low-pressure switch: neither open nor closed. A contact or a joint drops it.`,
      `25.6${T}V across the high-pressure switch: it is open.`,
      `0${T}V across the discharge thermostat: it is closed.`,
      'Open: the high-pressure switch. Find why it opened. It is never jumpered.',
    ]);
    expect(texts(of(all, { hp: 25.6 })).at(-1)).toBe(
      'The readings contradict each other. Read them again, with the call there and black on C.',
    );
    expect(texts(of(all))).toEqual(['The same volts all along. The call reaches the last place read.']);
    expect(texts(of({ start: 0 }))).toEqual(['No volts at the strip. What is open lies before it.']);
    expect(texts(of({ start: 12 }))).toEqual([`12${T}V at the strip: too low to hop on.`]);
    expect(texts(of({ ...all, coil: 19 }))).toEqual([`The wire to the coil drops 6.6${T}V with the call there.`]);
    expect(texts(of({ ...all, coil: 24 }))).toEqual([
      `The wire to the coil drops 1.6${T}V with the call there.`,
      `24${T}V are left at the coil, 20.4${T}V or more: enough to pull in.`,
    ]);
    expect(texts(of({ start: 25.6, coil: 19 }))).toEqual([
      `6.6${T}V are lost between the strip and the coil with the call there.`,
    ]);
    expect(texts(of({ rc: 25.6, coil: 19 }))).toEqual([
      `6.6${T}V are lost between the source and the coil with the call there.`,
    ]);
    expect(texts(of({ ...all, coil: 0 }))[0]).toBe(
      `25.6${T}V before the wire to the coil, 0${T}V after. It is the open one.`,
    );
    const between = (across: Line | null) => texts(of({ start: 25.6, coil: 0 }, across))[0];
    const stretch = `25.6${T}V at the strip, 0${T}V at the coil.`;
    expect(between(null)).toBe(`${stretch} What is open lies between them.`);
    expect(between({ lp: 0.1, hp: 25.6 })).toBe(`${stretch} Open is the high-pressure switch between them.`);
    expect(between({ lp: 0.1, hp: 0.1 })).toBe(`${stretch} Open is the wire between them.`);
    expect(texts(of(null))).toEqual(['The volts along the switches were not read.']);
    expect(words(of({ start: 25.6, delay: 0 }, { delay: 25.6 }))).toEqual([
      ['Along the switches', `0${T}V`, null, 'open'],
      ['Across the delay', `25.6${T}V`, `closed under 0.5${T}V, open from 20${T}V`, 'open'],
      ['Open', '–', null, 'open'],
    ]);
    const first = (line: Line | null) => words(of(line))[0];
    expect(first(all)).toEqual(['Along the switches', 'same volts', null, 'through']);
    expect(first({ start: 0 })).toEqual(['Along the switches', 'no volts', null, 'nothing']);
    expect(first({ start: 12 })).toEqual(['Along the switches', `12${T}V`, null, 'low']);
    expect(first({ ...all, coil: 24 })).toEqual(['Along the switches', `1.6${T}V`, null, 'drop']);
    expect(first(null)).toEqual(['Along the switches', 'no reading', null, 'missing']);
    expect(words(of(all, { hp: 25.6 })).at(-1)).toEqual(['Switches', '–', null, 'contradicts']);
    expect(words(of({ start: 0 }, null, no)).at(-1)).toEqual(['Delay', '–', null, 'by the time']);
  });
});

describe('the transformer', () => {
  const of = (line: Line, more: { amps?: Cell; tap?: string; va?: string } = {}) =>
    run('transformer', {
      readings: { ...V(line), ...(more.amps === undefined ? {} : parts('A', { amps: more.amps })) },
      ...(more.tap === undefined ? {} : { tap: choice('tap', more.tap) }),
      ...(more.va === undefined ? {} : { va: choice('va', more.va) }),
    });
  const at240 = { tap: '240' };
  test.each<[Line, Parameters<typeof of>[1], string]>([
    [{ loaded: 21.6 }, {}, 'good'],
    [{ loaded: -24 }, {}, 'good'],
    [{ loaded: 21.59 }, {}, 'weak'],
    [{ loaded: 21.59 }, at240, 'weak'],
    [{ idle: 27 }, {}, 'undecided'],
    [{ idle: 0, primary: 240 }, {}, 'open'],
    [{ loaded: 4.99, primary: 240 }, {}, 'open'],
    // Volts that come in, and of no supply that feeds one.
    [{ loaded: 4.99, primary: 100 }, {}, 'undecided'],
    [{ loaded: 0, primary: 107.99 }, {}, 'undecided'],
    [{ loaded: 0, primary: 108 }, {}, 'open'],
    [{ loaded: 0, primary: 132 }, {}, 'open'],
    [{ loaded: 0, primary: 132.01 }, {}, 'undecided'],
    [{ loaded: 0, primary: 150 }, at240, 'undecided'],
    [{ loaded: 0, primary: 187.19 }, {}, 'undecided'],
    [{ loaded: 0, primary: 187.2 }, at240, 'open'],
    [{ loaded: 0, primary: 264 }, {}, 'open'],
    [{ loaded: 0, primary: 264.01 }, {}, 'undecided'],
    [{ loaded: 4.99, primary: 99.99 }, {}, 'primary'],
    // A call has no volts of its own: none from R to C beside some from Y to C is a misreading.
    [{ loaded: 4.99, yc: 5, primary: 240 }, {}, 'contradicts'],
    [{ loaded: 4.99, yc: -26, primary: 240 }, {}, 'contradicts'],
    [{ loaded: 4.99, yc: 4.99, primary: 240 }, {}, 'open'],
    [{ loaded: 24, yc: 26 }, {}, 'good'],
    [{ loaded: 4.99 }, {}, 'ask-primary'],
    [{ idle: 0 }, {}, 'ask-primary'],
    [{ loaded: 5 }, {}, 'weak'],
    [{ loaded: 0, idle: 27, primary: 240 }, {}, 'open'],
    [{ primary: 240 }, {}, 'undecided'],
    [{ loaded: 20, primary: 240 }, { amps: 1.667, va: '40' }, 'overload'],
    [{ loaded: 20, primary: 240 }, { amps: 1.666, va: '40' }, 'weak'],
    [{ loaded: 24, primary: 240 }, { amps: 3, va: '40' }, 'good'],
    [{ loaded: 20, primary: 240 }, { amps: 3 }, 'weak'],
    [{ loaded: 20, primary: 240 }, { ...at240, amps: 1.6, va: '40' }, 'weak'],
    [{ loaded: 20, primary: 216 }, at240, 'weak'],
    [{ loaded: 20, primary: 215.99 }, at240, 'tap'],
    [{ loaded: 20, primary: 187.2 }, at240, 'tap'],
    [{ loaded: 20, primary: 187.19 }, at240, 'primary'],
    [{ loaded: 20, primary: 264 }, at240, 'weak'],
    [{ loaded: 20, primary: 264.01 }, at240, 'primary'],
    [{ loaded: 20, primary: 228 }, { tap: '208' }, 'weak'],
    [{ loaded: 20, primary: 180 }, { tap: '208' }, 'primary'],
    [{ loaded: 20, primary: 208 }, { tap: '277' }, 'tap'],
    [{ loaded: 20, primary: 208 }, { tap: '120' }, 'primary'],
    [{ loaded: 20, primary: 208 }, { tap: 'other' }, 'weak'],
  ])('%j, %j: %s', (line, more, outcome) => {
    expect(of(line, more).outcome).toBe(outcome);
  });
  test('nobody read it', () => {
    expect(run('transformer', {}).outcome).toBe('undecided');
  });
  test('what each says', () => {
    expect(texts(of({ loaded: 24 }))).toEqual([`The secondary reads 24${T}V under load, 21.6${T}V or more.`]);
    expect(texts(of({ idle: 27 }))).toEqual([
      `The secondary reads 27${T}V idle. That proves nothing: read it under load.`,
    ]);
    expect(texts(of({ loaded: 0, primary: 240 }))).toEqual([
      `The secondary reads 0${T}V with 240${T}V on the primary. Fuse, short and windings are read next, dead.`,
    ]);
    expect(texts(of({ loaded: 0, primary: 3 }))).toEqual([
      `The secondary reads 0${T}V and the primary 3${T}V: no volts come in.`,
    ]);
    expect(texts(of({ loaded: 0 }))).toEqual([`The secondary reads 0${T}V. Whether volts come in was not read.`]);
    expect(texts(of({ primary: 240 }))).toEqual(['The secondary was not read.']);
    expect(texts(of({ loaded: 20, primary: 240 }, { amps: 2, va: '40' }))).toEqual([
      `The secondary reads 20${T}V under load, under 21.6${T}V.`,
      `The load takes 2${T}A. 40${T}VA at 24${T}V give 1.667${T}A.`,
    ]);
    expect(texts(of({ loaded: 20 }))[1]).toBe('Primary volts, tap, amps and VA tell why.');
    expect(texts(of({ loaded: 20, primary: 238 }, at240))[1]).toBe(
      `238${T}V on the 240${T}V tap gives 23.8${T}V. The transformer or its load pulls it down.`,
    );
    expect(texts(of({ loaded: 20, primary: 208 }, at240))[1]).toBe(
      `208${T}V on the 240${T}V tap is 86.7${T}% and gives 20.8${T}V. Use the 208${T}V tap.`,
    );
    expect(texts(of({ loaded: 20, primary: 180 }, at240))[1]).toBe(
      `180${T}V on the 240${T}V tap lies outside 216–264${T}V. The supply comes first.`,
    );
    const word = (line: Line, more: Parameters<typeof of>[1] = {}) =>
      words(of(line, more)).map((w) => [w[0], w[1], w[3]]);
    expect(word({ loaded: 20, primary: 208 }, at240)).toEqual([
      ['Secondary', `20${T}V`, 'low'],
      ['Primary', `208${T}V`, 'wrong tap'],
    ]);
    expect(word({ loaded: 20, primary: 180 }, at240)[1]).toEqual(['Primary', `180${T}V`, 'out']);
    expect(word({ loaded: 20, primary: 240 }, at240)[1]).toEqual(['Primary', `240${T}V`, 'in']);
    expect(word({ loaded: 20 })[1]).toEqual(['Why', '–', 'not read']);
    expect(word({ loaded: 20 }, { amps: 2, va: '40' })[1]).toEqual(['Load', `2${T}A`, 'overload']);
    expect(words(of({ loaded: 24 }))).toEqual([['Secondary', `24${T}V`, `21.6${T}V or more under load`, 'good']]);
    expect([{ idle: 27 }, { loaded: 0 }, { primary: 1 }].map((l) => word(l)[0]?.[2])).toEqual([
      'idle only',
      'no volts',
      'missing',
    ]);
    expect(word({ primary: 1 })[0]?.[1]).toBe('no reading');
  });
});

describe('an inverter’s bus', () => {
  const of = (pn: Cell, waited?: Parts, before: Cell = 9.3, after: Cell = 9.3) =>
    run('bus', { readings: V({ batteryBefore: before, pn, batteryAfter: after }), ...(waited ? { waited } : {}) });
  test.each<[Cell, Parts | undefined, Cell, Cell, string]>([
    [5, undefined, 9.3, 9.3, 'go'],
    [-5, undefined, 9.3, 9.3, 'go'],
    [0, yes, 7, 10, 'go'],
    [5.01, undefined, 9.3, 9.3, 'wait'],
    [-5.01, undefined, 9.3, 9.3, 'wait'],
    [50, yes, 9.3, 9.3, 'wait'],
    [50.01, undefined, 9.3, 9.3, 'wait'],
    [50.01, no, 9.3, 9.3, 'wait'],
    [50.01, yes, 9.3, 9.3, 'stop'],
    [300, yes, '_', '_', 'stop'],
    [30, yes, '_', '_', 'wait'],
    [0, yes, 6.99, 9.3, 'meter'],
    [0, yes, 9.3, 10.01, 'meter'],
    [0, yes, 0, 9.3, 'meter'],
    [0, yes, '_', 0, 'meter'],
    [0, yes, '_', 9.3, 'undecided'],
    [0, yes, 9.3, '_', 'undecided'],
    [0, yes, -9.3, 9.3, 'go'],
    ['_', yes, 9.3, 9.3, 'undecided'],
  ])('%s V, waited %j, battery %s and %s: %s', (pn, waited, before, after, outcome) => {
    expect(of(pn, waited, before, after).outcome).toBe(outcome);
  });
  test('nobody read it', () => {
    expect(run('bus', {}).outcome).toBe('undecided');
  });
  test('what each says', () => {
    expect(texts(of(3.4))).toEqual([
      `The battery reads 9.3${T}V, inside 7–10${T}V: the meter reads DC.`,
      `The battery reads 9.3${T}V, inside 7–10${T}V: the meter reads DC.`,
      `3.4${T}V on the bus, 5${T}V or less.`,
    ]);
    expect(texts(of(33))[2]).toBe(
      `33${T}V on the bus lies between 5${T}V and 50${T}V. Wait 5 minutes more, then read again.`,
    );
    expect(texts(of(300))[2]).toBe(`300${T}V on the bus is above 50${T}V. Wait the label’s time, hands off.`);
    expect(texts(of(300, yes))[2]).toBe(
      `300${T}V on the bus is above 50${T}V after the label’s time. The bleeder has failed: close up.`,
    );
    expect(texts(of(0, yes, 0, '_'))).toEqual([
      `The battery reads 0${T}V, outside 7–10${T}V: the meter is not proved.`,
      'The battery was not read.',
      `0${T}V on the bus counts only between two readings of the battery.`,
    ]);
    expect(texts(of('_'))[2]).toBe('The bus was not read.');
    expect(words(of(3.4, yes, 9.3, '_'))).toEqual([
      ['Battery before', `9.3${T}V`, `7–10${T}V`, 'proved'],
      ['Battery after', 'no reading', `7–10${T}V`, 'missing'],
      ['P–N, DC', `3.4${T}V`, `5${T}V or less`, 'not proved'],
    ]);
    expect(words(of(3, yes, 0))[0]?.[3]).toBe('out');
    const word = (pn: Cell, waited?: Parts) => words(of(pn, waited))[2]?.[3];
    expect([word(3), word(33), word(300), word(300, yes), word('_')]).toEqual([
      'go',
      'wait',
      'wait',
      'stop',
      'missing',
    ]);
  });
  test('fewer volts never make it worse', () => {
    const order = ['go', 'wait', 'stop'];
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 40_000 }), fc.integer({ min: 0, max: 40_000 }), (a, b) => {
        const [less, more] = [Math.min(a, b), Math.max(a, b)].map((n) => order.indexOf(of(n / 100, yes).outcome));
        expect(less).toBeLessThanOrEqual(more ?? 0);
      }),
      { numRuns: 50 },
    );
  });
});

test('volts at Y and none at R are said to contradict each other', () => {
  expect(run('transformer', { readings: V({ loaded: 0, yc: 26, primary: 240 }) }).findings[0]).toMatchObject({
    ...{ word: 'contradicts', reading: '0\u2009V' },
    text: 'R to C reads 0\u2009V and Y to C 26\u2009V: a call has no volts of its own. Read both again.',
  });
});

test('the primary that was read later in the sitting counts, and before what was read first', () => {
  const of = (first: number | '_', later: number | '_') =>
    run('transformer', { readings: V({ loaded: 0, primary: first }), primary: V({ primary: later }) }).outcome;
  expect([of('_', 240), of('_', '_'), of('_', 0), of(240, 0), of(0, 240), of(240, '_')]).toEqual([
    ...['open', 'ask-primary', 'primary', 'primary', 'open', 'open'],
  ]);
});

describe('more volts than a 24 V circuit has', () => {
  const of = (line: Line) => run('foreign-volts', { readings: V(line) });
  test.each<[Line, string]>([
    [{ start: 30, coil: 25 }, 'own'],
    [{ start: 30.01, coil: 25 }, 'foreign'],
    [{ start: 25, coil: -118 }, 'foreign'],
    [{ loaded: 26, yc: 0, float: 31 }, 'foreign'],
    [{ loaded: 26, yc: 0 }, 'own'],
    // Line volts are read there too, and are in their place.
    [{ loaded: 26, primary: 240 }, 'own'],
    [{ coil: 25, l1l2: 240 }, 'own'],
    [{ start: '_' }, 'undecided'],
  ])('%j: %s', (line, outcome) => {
    expect(of(line).outcome).toBe(outcome);
  });
  test.each([
    'start',
    'delay',
    'lp',
    'hp',
    'discharge',
    'coil',
    'rc',
    'idle',
    'loaded',
    'yc',
    'float',
    'v',
    'solenoid',
  ])('wherever it is read: %s', (key) => {
    expect(of({ [key]: 31 }).outcome).toBe('foreign');
  });
  test('what it says', () => {
    expect(of({ start: 25.6, coil: 118 }).findings).toEqual([
      expect.objectContaining({
        ...{
          name: 'Highest on the control circuit',
          reading: '118\u2009V',
          limits: '30\u2009V or less',
          word: 'foreign',
        },
        text: '118\u2009V on a 24\u2009V circuit: line volts feed it somewhere. Hands out, both units off.',
      }),
    ]);
    expect(of({ start: 25.6, coil: 12 }).findings[0]?.text).toBe('25.6\u2009V at most: as a 24\u2009V circuit has it.');
    expect(run('foreign-volts', {}).findings[0]).toMatchObject({
      ...{ reading: 'no reading', word: 'undecided', text: 'No volts of the control circuit were read.' },
    });
  });
});

describe('volts there', () => {
  const of = (v: number | '_') => run('volts-there', { readings: V({ v }) });
  test.each<[number | '_', string]>([
    [20.4, 'there'],
    [20.39, 'between'],
    [5, 'between'],
    [4.99, 'none'],
    [-24, 'there'],
    [30, 'there'],
    [30.01, 'high'],
    ['_', 'undecided'],
  ])('%s V: %s', (v, outcome) => {
    expect(of(v).outcome).toBe(outcome);
  });
  test('too many are no call', () => {
    expect(of(118).findings[0]).toMatchObject({
      ...{ reading: '118\u2009V', word: 'high' },
      text: '118\u2009V is more than this circuit has. Another source feeds it: both off before a hand goes near.',
    });
  });
});
