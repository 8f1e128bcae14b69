/** What was read by half: what is missing is said, and nothing is made of the rest. */
import { describe, expect, test } from 'vitest';
import type { Parts } from '../../engine/schema.ts';
import { choice, FORCE, labelled, parts, yes } from './fixture.ts';
import { run } from './run.ts';

const told = (id: Parameters<typeof run>[0], given: Partial<Record<string, Parts>>) => {
  const { outcome, findings } = run(id, given);
  const lines = findings.map((f) => `${f.name}: ${f.reading} (${f.word})`.replaceAll('\u2009', ' '));
  return { outcome, lines, findings };
};

describe('a breaker under load', () => {
  const [amps, drop] = [parts('A', { amps: 20 }), parts('V', { drop: 0.1 })];
  test.each([
    ['amps', { readings: drop, plate: parts('A', { rating: 30 }) }],
    ['volts across it', { readings: amps, plate: parts('A', { rating: 30 }) }],
    ['rating', { readings: { ...amps, ...drop }, plate: {} }],
    ['rating, which is no figure', { readings: { ...amps, ...drop }, plate: parts('A', { rating: 0 }) }],
  ])('without its %s is not judged', (_, given) => {
    expect(told('breaker', given)).toMatchObject({ outcome: 'undecided', lines: ['Breaker: no reading (missing)'] });
  });
  test('without MOP: its load and its drop are judged, its size as far as it is known', () => {
    for (const plate of [parts('A', { rating: 30 }), parts('A', { rating: 30, mop: 0 })]) {
      const { outcome, lines } = told('breaker', { readings: { ...amps, ...drop }, plate });
      expect([outcome, lines.at(-1)]).toEqual(['sound', 'Size: 30 A (within)']);
    }
  });
});

describe('three lines', () => {
  test.each(['l2l3', 'l1l3'])('L1–L2 and %s alone are no supply of two legs', (second) => {
    const line = parts('V', { l1l2: 240, [second]: 240 });
    expect(told('supply', { line })).toMatchObject({ outcome: 'undecided', lines: ['Supply: no reading (missing)'] });
  });

  const unit = choice('choice', 'three-phase');
  const plate = parts('A', { rla: 17.9, lra: 96, fla: 1.2 });
  const restart = (volts: Record<string, number>, amps: Record<string, number>) =>
    told('restart', { figures: { ...parts('V', volts), ...parts('A', amps) }, plate, unit });
  test('of which one was not read: no unbalance is made of two', () => {
    const { outcome, lines } = restart({ l1l2: 240, l2l3: 210 }, { comp: 12, comp2: 12, comp3: 12, fan: 1 });
    expect(outcome).toBe('undecided');
    expect(lines).toContain('L1–L3: no reading (missing)');
    expect(lines.join()).not.toContain('Unbalance');
  });
  test('that read nothing: no unbalance of nothing, and no leg is said to be apart', () => {
    const { outcome, lines, findings } = restart(
      { l1l2: 0, l2l3: 0, l1l3: 0 },
      { comp: 0, comp2: 0, comp3: 0, fan: 0 },
    );
    expect(outcome).toBe('supply');
    expect(lines.join()).not.toContain('Unbalance');
    expect(lines).toContain('Legs of the compressor: – (not running)');
    expect(findings.find(({ name }) => name === 'Legs of the compressor')?.text).toBe('No leg draws anything.');
  });
  test('two of which read nothing: the unbalance is said, and it is out', () => {
    const { outcome, lines } = restart({ l1l2: 240, l2l3: 0, l1l3: 0 }, { comp: 12, comp2: 12, comp3: 12, fan: 1 });
    expect(outcome).toBe('supply');
    expect(lines.find((line) => line.startsWith('Unbalance'))).toMatch(/\(out\)$/);
  });
});

describe('a run capacitor', () => {
  const uF = (of: Record<string, number | string>): Parts => parts('µF', of);
  const of = (given: Partial<Record<string, Parts>>) => told('section-values', { label: labelled('45+5'), ...given });
  test('without a print has no verdict on its value', () => {
    expect(told('section-values', { readings: uF({ herm: 44 }) })).toMatchObject({
      outcome: 'undecided',
      lines: ['Rating: not known (undecided)'],
    });
  });
  test('of which neither section was read is undecided, whatever HERM–FAN says', () => {
    for (const hf of [4.5, 'OL'])
      expect(of({ readings: uF({ hf }) }).lines.slice(0, 2)).toEqual([
        'HERM: no reading (not read)',
        'FAN: no reading (not read)',
      ]);
    expect(of({ readings: uF({ hf: 4.5 }) }).outcome).toBe('undecided');
  });
  test.each(['t1', 't2', 't3'])(
    'terminals found by tabs, one of them counted (%s): three readings or no FAN',
    (tab) => {
      const tabs = parts('count', { [tab]: 3 });
      const good = uF({ herm: 44.6, fan: 5.02 });
      expect(of({ readings: good, tabs }).outcome).toBe('ask-third');
      expect(of({ readings: good, tabs, third: {} })).toMatchObject({ outcome: 'fan-undecided' });
      expect(of({ readings: good, tabs, third: uF({ hf: 4.4 }) }).outcome).toBe('pass');
      // A low figure by such a pair condemns nothing either.
      const low = uF({ herm: 36.1, fan: 5.02 });
      expect(of({ readings: low, tabs, third: {} }).outcome).toBe('undecided');
      expect(of({ readings: low, tabs, third: uF({ hf: 4.4 }) }).outcome).toBe('fails');
    },
  );
  test('HERM is never taken from the line that asks for FAN and HERM–FAN again', () => {
    const third = uF({ herm: 45, fan: 5.03, hf: 4.52 });
    expect(of({ readings: uF({ herm: 36.1, fan: 4.5 }), third })).toMatchObject({
      lines: expect.arrayContaining(['HERM: 36.1 µF (fail)']),
    });
  });
});

describe('two tries of a dual, and what the second makes of the first', () => {
  const uF = (of: Record<string, number | string>): Parts => parts('µF', of);
  const tried = (now: Record<string, number | string>, before?: Record<string, number | string>, more = {}) =>
    run('section-values', {
      ...{ label: labelled('45+5'), readings: uF(now) },
      ...(before ? { before: uF(before) } : {}),
      ...more,
    }).outcome;
  const wires = yes;
  test.each([
    ['one section above, the other below: the wires first', { herm: 55, fan: 3.5 }, undefined, {}, 'wires'],
    ['both above: no wire makes both read high', { herm: 55, fan: 6.5 }, undefined, {}, 'too-high'],
    ['above, and below before', { herm: 52, fan: 5.02 }, { herm: 36, fan: 5.02 }, {}, 'too-high'],
    ['above twice', { herm: 52, fan: 5.02 }, { herm: 52.2, fan: 5.02 }, {}, 'too-high-twice'],
    [
      'in, both out before the wires were seen to',
      { herm: 45.2, fan: 5.02 },
      { herm: 36, fan: 3.2 },
      { wires },
      'pass',
    ],
    ['in, one out before', { herm: 45.2, fan: 5.02 }, { herm: 36, fan: 5.02 }, { wires }, 'conditional-pass'],
    ['in, both out before, no wire seen to', { herm: 45.2, fan: 5.02 }, { herm: 36, fan: 3.2 }, {}, 'conditional-pass'],
    ['swapped after a try that was not', { herm: 5, fan: 45 }, { herm: 44, fan: 5 }, {}, 'swapped'],
    ['swapped twice', { herm: 5, fan: 45 }, { herm: 5.1, fan: 44 }, {}, 'contradiction'],
    ['FAN next to nothing beside a good HERM', { herm: 45.2, fan: 0.02 }, undefined, { wires }, 'open'],
    ['FAN next to nothing, HERM not read', { herm: '_', fan: 0.02 }, undefined, { wires }, 'repeat'],
    ['FAN next to nothing, HERM over range', { herm: 'OL', fan: 0.02 }, undefined, { wires }, 'repeat'],
    ['HERM next to nothing, FAN not read', { herm: 0.1, fan: '_' }, undefined, { wires }, 'repeat'],
    ['FAN not read', { herm: 45.2, fan: '_' }, undefined, {}, 'undecided'],
  ])('%s', (_, now, before, more, outcome) => {
    expect(tried(now, before, more)).toBe(outcome);
  });
  test('a part of one section is called a capacitor in another cabinet', () => {
    const { findings } = run(
      'section-values',
      { label: labelled('7.5'), readings: uF({ herm: 7.4 }) },
      { ...FORCE, cabinet: 'indoor' },
    );
    expect(findings[0]).toMatchObject({ name: 'Capacitor' });
    expect(findings[0]?.text).toMatch(/^Capacitor reads/);
  });
});

test('the third contact of a contactor counts where it was read', () => {
  const contacts = (pole3: number | 'OL') =>
    run('contactor', { readings: parts('Ω', { pole1: 0.1, pole2: 0.1, pole3, coil: 12.6 }) });
  for (const bad of [5, 'OL'] as const) {
    expect(contacts(bad).outcome).toBe('contacts');
    expect(contacts(bad).findings.map((f) => `${f.name}: ${f.word}`)).toContain('Third contact, pressed in: bad');
  }
  expect(contacts(0.1).outcome).toBe('good');
});

test('a short outward is said first, whatever the secondary reads', () => {
  const of = (secondary: number | 'OL' | '_', outward: number | '_') =>
    run('outward', { readings: parts('Ω', { secondary, outward }) }).outcome;
  expect([of(1, 2), of('OL', 2), of('_', 2)]).toEqual(['short', 'short', 'short']);
  expect([of('OL', 12), of('OL', '_')]).toEqual(['secondary-open', 'secondary-open']);
});

test('an open primary is the transformer too, and a short outward is said before it', () => {
  const of = (primary: number | 'OL' | '_', outward: number | 'OL', secondary: number | 'OL' = 1) =>
    run('outward', { readings: parts('Ω', { secondary, primary, outward }) });
  expect([of('OL', 12).outcome, of('OL', 'OL').outcome, of('OL', 2).outcome]).toEqual([
    ...['primary-open', 'primary-open', 'short'],
  ]);
  expect([of(22, 12).outcome, of('_', 12).outcome, of('OL', 12, 'OL').outcome]).toEqual([
    ...['coil', 'coil', 'secondary-open'],
  ]);
  expect(of('OL', 12).findings[2]).toMatchObject({
    ...{ name: 'Primary', reading: 'OL', word: 'open', text: 'The primary reads OL: it is open.' },
  });
  expect(of(22, 12).findings[2]).toMatchObject({ word: 'reads', text: 'The primary reads 22\u2009Ω: it is whole.' });
  expect(of('_', 12).findings).toHaveLength(2);
});

test('no branch is low only where every one that a unit has was read', () => {
  const of = (more: Record<string, number | 'OL' | '_'>) =>
    run('ground-branches', { readings: parts('Ω', { comp: 'OL', fan: 'OL', cable: 'OL', ...more }) });
  expect([of({}), of({ heater: 'OL' }), of({ heater: '_' })].map((j) => j.outcome)).toEqual(['none', 'none', 'none']);
  expect([of({ cable: '_' }), of({ fan: '_' }), of({ comp: '_' })].map((j) => j.outcome)).toEqual([
    ...['undecided', 'undecided', 'undecided'],
  ]);
  expect(of({ cable: '_', comp: 0 }).outcome).toBe('comp');
  expect(of({}).findings).toHaveLength(3);
});

test('what holds a box off: it runs, and nothing does', () => {
  expect(run('box-holds', { seen: { off: { kind: 'choice', chosen: ['runs'] } } })).toMatchObject({
    outcome: 'runs',
    findings: [{ text: 'It runs: what it moves, and where the cold goes, is the question.' }],
  });
});
