import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { fuses } from '../../engine/judgements/control/fuses.ts';
import type { Parts } from '../../engine/schema.ts';
import { choice, FORCE, LIMITS, parts } from './fixture.ts';
import { run } from './run.ts';

type Line = Record<string, number | string>;
const texts = (of: { findings: readonly { text: string }[] }): string[] => of.findings.map((f) => f.text);

describe('fuses out of their holder', () => {
  const of = (line: Line) => run('fuses', { readings: parts('Ω', line) });
  test.each([
    [{ fuse1: 0.1, fuse2: 0.1 }, 'good'],
    [{ fuse1: 0, fuse2: 0.499 }, 'good'],
    [{ fuse1: 0.5, fuse2: 0.1 }, 'between'],
    [{ fuse1: 0.1, fuse2: 0.5 }, 'between'],
    [{ fuse1: 0.1, fuse2: 5_000_000 }, 'between'],
    [{ fuse1: 'OL', fuse2: 0.1 }, 'blown'],
    [{ fuse1: 0.1, fuse2: 'OL' }, 'blown'],
    [{ fuse1: 0.1, fuse2: 0.1, fuse3: 'OL' }, 'blown'],
    [{ fuse1: 0.1, fuse2: 0.1, fuse3: 0.1 }, 'good'],
    [{ fuse1: 0.1, fuse2: 0.1, fuse3: '_' }, 'good'],
    [{ fuse1: 0.1, fuse2: 0.1, fuse3: 3 }, 'between'],
    [{ fuse1: 'OL', fuse2: '_' }, 'blown'],
    [{ fuse1: 3, fuse2: 'OL' }, 'blown'],
    [{ fuse1: 3, fuse2: '_' }, 'between'],
    [{ fuse1: 0.1, fuse2: '_' }, 'undecided'],
    [{ fuse2: 0.1 }, 'undecided'],
    [{ fuse1: -0.1, fuse2: 0.1 }, 'good'],
    [{ fuse1: -0.5, fuse2: 0.1 }, 'between'],
  ])('%o: %s', (line, outcome) => {
    expect(of(line).outcome).toBe(outcome);
  });
  test('a board has one fuse, and nothing is said of a second', () => {
    const one = { ...LIMITS.fuses, least: { ...LIMITS.fuses.least, value: '1' } };
    const board = (line: Line) => fuses.run({ readings: parts('Ω', line) }, one, FORCE);
    expect(['0.1', 'OL', '0.5', '_'].map((fuse1) => board({ fuse1 })).map((j) => [j.outcome, texts(j).length])).toEqual(
      [
        ['good', 1],
        ['blown', 1],
        ['between', 1],
        ['undecided', 1],
      ],
    );
    expect(board({ fuse1: '0.1' }).findings[0]?.name).toBe('Fuse');
    expect(board({ fuse1: 0.1, fuse2: 'OL' }).outcome).toBe('blown');
  });
  test('nobody read them', () => {
    expect(run('fuses', {})).toEqual({
      outcome: 'undecided',
      findings: [
        {
          name: 'First fuse',
          reading: 'no reading',
          limits: 'under 0.5\u2009Ω',
          doubt: null,
          word: 'missing',
          text: 'First fuse was not read.',
          source: 'set for this test',
        },
        {
          name: 'Second fuse',
          reading: 'no reading',
          limits: 'under 0.5\u2009Ω',
          doubt: null,
          word: 'missing',
          text: 'Second fuse was not read.',
          source: 'set for this test',
        },
      ],
    });
  });
  test('each line says what it reads and what it means', () => {
    const said = of({ fuse1: 0.1, fuse2: 1_500, fuse3: 'OL' });
    expect(texts(said)).toEqual([
      'First fuse reads 0.1\u2009Ω, under 0.5\u2009Ω.',
      'Second fuse reads 1.5\u2009kΩ, neither under 0.5\u2009Ω nor OL. Clean its ends, zero the leads, read it again.',
      'Third fuse reads OL. It is blown. Find why before a new one goes in.',
    ]);
    expect(said.findings.map((f) => f.word)).toEqual(['good', 'between', 'blown']);
    expect(said.findings.map((f) => f.reading)).toEqual(['0.1\u2009Ω', '1.5\u2009kΩ', 'OL']);
  });
  test('sizes are said in the unit that fits', () => {
    const reading = (ohms: number) => of({ fuse1: ohms, fuse2: 0.1 }).findings[0]?.reading;
    expect([999, 1000, 999_999, 1_000_000].map(reading)).toEqual([
      '999\u2009Ω',
      '1\u2009kΩ',
      '999.999\u2009kΩ',
      '1\u2009MΩ',
    ]);
  });
  test('which fuse is which changes nothing', () => {
    const cell = fc.constantFrom<number | string>(0, 0.1, 0.499, 0.5, 7, 'OL', '_');
    fc.assert(
      fc.property(cell, cell, (a, b) => {
        expect(of({ fuse1: a, fuse2: b }).outcome).toBe(of({ fuse1: b, fuse2: a }).outcome);
      }),
    );
  });
});

describe('a contactor', () => {
  const of = (line: Line, more: Partial<Record<string, Parts>> = {}) =>
    run('contactor', { readings: parts('Ω', line), ...more });
  const good = { pole1: 0.1, pole2: 0.1, coil: 12.6 };
  test.each(['volts', 'rated'])('a coil that is printed for 120 V (%s) is not held to the band of 24 V', (key) => {
    const coil = of({ ...good, coil: 300 }, { rated: choice(key, '120') }).findings.find((f) => f.name === 'Coil');
    expect(coil?.word).toBe('not judged');
  });
  test.each([
    [good, 'good'],
    [{ ...good, pole1: 1, pole2: 1 }, 'good'],
    [{ ...good, pole1: 1.001 }, 'contacts'],
    [{ ...good, pole2: 1.001 }, 'contacts'],
    [{ ...good, pole2: 'OL' }, 'contacts'],
    [{ ...good, coil: 8 }, 'good'],
    [{ ...good, coil: 7.999 }, 'between'],
    [{ ...good, coil: 20 }, 'good'],
    [{ ...good, coil: 20.001 }, 'between'],
    [{ ...good, coil: 4 }, 'between'],
    [{ ...good, coil: 3.999 }, 'coil-shorted'],
    [{ ...good, coil: 0 }, 'coil-shorted'],
    [{ ...good, coil: 'OL' }, 'coil-open'],
    [{ ...good, coil: '_' }, 'undecided'],
    [{ ...good, pole1: '_' }, 'undecided'],
    [{ ...good, pole1: '_', pole2: 5 }, 'contacts'],
    [{ ...good, pole1: '_', coil: 'OL' }, 'coil-open'],
    [{ ...good, pole2: 9, coil: 'OL' }, 'contacts'],
    [{ coil: 12 }, 'undecided'],
  ])('%o: %s', (line, outcome) => {
    expect(of(line).outcome).toBe(outcome);
  });
  test('let go: closed is welded, and graver than all else', () => {
    const released = (first: number | string, second: number | string) => ({
      released: parts('Ω', { pole1: first, pole2: second }),
    });
    expect(of(good, released('OL', 'OL')).outcome).toBe('good');
    expect(of(good, released('OL', 0.999)).outcome).toBe('welded');
    expect(of(good, released(0.2, 'OL')).outcome).toBe('welded');
    expect(of(good, released('OL', 1)).outcome).toBe('good');
    expect(of(good, released('OL', '_')).outcome).toBe('good');
    expect(of({ ...good, pole1: 9, coil: 'OL' }, released('OL', 0)).outcome).toBe('welded');
    expect(texts(of(good, released('OL', 0.2))).slice(2, 4)).toEqual([
      'First contact reads OL with the armature up. It is not welded.',
      'Second contact reads 0.2\u2009Ω with the armature up. It is welded.',
    ]);
  });
  test.each([
    [parts('V', { volts: 24 }), 12.6, 'good'],
    [choice('volts', '24'), 12.6, 'good'],
    [choice('volts', '24'), 2, 'coil-shorted'],
    [parts('V', { volts: 120 }), 12.6, 'undecided'],
    // A coil for more volts has more ohms, so a short at 24 V is one there too.
    [choice('volts', '120'), 3.99, 'coil-shorted'],
    [choice('volts', '120'), 4, 'undecided'],
    [choice('volts', 'other'), 3.99, 'coil-shorted'],
    [parts('V', { volts: 12 }), 2, 'undecided'],
    [choice('volts', '208/240'), 900, 'undecided'],
    [choice('volts', 'other'), 12.6, 'undecided'],
    [choice('volts', '240'), 'OL', 'coil-open'],
    [choice('volts'), 12.6, 'good'],
  ])('coil rated %j, reads %s: %s', (rated, coil, outcome) => {
    expect(of({ ...good, coil }, { rated }).outcome).toBe(outcome);
  });
  /** The second reading counts where it is bad in the same way as the first. */
  test.each<[Record<string, number | string>, Record<string, number | string>, string]>([
    [{ ...good, coil: 'OL' }, { ...good, coil: 'OL' }, 'coil-open'],
    [{ ...good, coil: 'OL' }, good, 'between'],
    [{ ...good, coil: 'OL' }, { ...good, coil: 2 }, 'between'],
    [{ ...good, coil: 2 }, { ...good, coil: 3 }, 'coil-shorted'],
    [{ ...good, coil: 2 }, { ...good, coil: 'OL' }, 'between'],
    [{ ...good, coil: 6 }, { ...good, coil: 6 }, 'between'],
    [good, { ...good, coil: 'OL' }, 'good'],
    [good, { ...good, pole1: 9 }, 'good'],
    [{ ...good, pole1: 9 }, { ...good, pole1: 'OL' }, 'contacts'],
    [{ ...good, pole1: 9 }, { ...good, pole2: 9 }, 'between'],
    [{ ...good, pole2: 9 }, good, 'between'],
    [{ ...good, pole3: 9 }, { ...good, pole3: 9 }, 'contacts'],
    [{ ...good, pole3: 9 }, { ...good, pole3: 0.1 }, 'between'],
    [{ ...good, pole1: 9, coil: 'OL' }, { ...good, pole2: 9, coil: 'OL' }, 'coil-open'],
    [{ ...good, pole1: 9, coil: 'OL' }, { ...good, pole1: 9 }, 'contacts'],
  ])('read %j after %j: %s', (line, before, outcome) => {
    expect(of(line as never, { first: parts('Ω', before as never) }).outcome).toBe(outcome);
  });
  test('what reads bad once says so', () => {
    const once = of({ ...good, coil: 'OL' }, { first: parts('Ω', good) }).findings.at(-1);
    expect(once).toMatchObject({
      ...{ name: 'Twice', word: 'once' },
      text: 'It reads bad now and read good before, or the other part did. Neither is condemned on one reading.',
    });
    expect(of(good, { first: parts('Ω', good) }).findings.map((f) => f.name)).not.toContain('Twice');
  });
  test('the lines of a good one, and what is assumed', () => {
    expect(texts(of(good))).toEqual([
      'First contact reads 0.1\u2009Ω pressed in, 1\u2009Ω or less.',
      'Second contact reads 0.1\u2009Ω pressed in, 1\u2009Ω or less.',
      'The coil reads 12.6\u2009Ω, inside 8–20\u2009Ω. A 24\u2009V coil is assumed.',
    ]);
    const coil = (ohms: number | string, rated = choice('volts', '24')) =>
      texts(of({ ...good, coil: ohms }, { rated }))[2];
    expect(coil(12.6)).toBe('The coil reads 12.6\u2009Ω, inside 8–20\u2009Ω.');
    expect(coil(2)).toBe('The coil reads 2\u2009Ω, under 4\u2009Ω. It is shorted and blows the fuse that feeds it.');
    expect(coil(6)).toBe(
      'The coil reads 6\u2009Ω, outside 8–20\u2009Ω. Two coils in parallel read about half. Take one wire off and read it again.',
    );
    expect(coil('OL')).toBe('The coil reads OL. It is open.');
    expect(coil('_')).toBe('The coil was not read.');
    expect(coil(60, choice('volts', '120'))).toBe(
      'The coil reads 60\u2009Ω. The band holds for a 24\u2009V coil and this one is not, so it is not judged.',
    );
    expect(texts(of({ ...good, coil: 2 }))[2]).toContain('A 24\u2009V coil is assumed.');
    expect(texts(of({ ...good, coil: 6 }))[2]).toContain('A 24\u2009V coil is assumed.');
    expect(texts(of({ ...good, coil: 'OL' }))[2]).toBe('The coil reads OL. It is open.');
    expect(texts(of({ ...good, pole1: 4.2, pole2: '_' })).slice(0, 2)).toEqual([
      'First contact reads 4.2\u2009Ω pressed in, more than 1\u2009Ω. It is worn or burnt.',
      'Second contact was not read with the armature pressed in.',
    ]);
  });
  test('words, limits and names of its lines', () => {
    const said = of(
      { pole1: 0.1, pole2: 'OL', coil: 60 },
      { rated: choice('volts', '120'), released: parts('Ω', { pole1: 0.1 }) },
    );
    expect(said.findings.map((f) => [f.name, f.reading, f.limits, f.word])).toEqual([
      ['First contact, pressed in', '0.1\u2009Ω', '1\u2009Ω or less', 'good'],
      ['Second contact, pressed in', 'OL', '1\u2009Ω or less', 'bad'],
      ['First contact, let go', '0.1\u2009Ω', 'welded under 1\u2009Ω', 'welded'],
      ['Coil', '60\u2009Ω', '8–20\u2009Ω; shorted under 4\u2009Ω', 'not judged'],
    ]);
    const word = (coil: number | string) => of({ ...good, coil }).findings[2]?.word;
    expect([12, 2, 6, 'OL', '_'].map(word)).toEqual(['good', 'shorted', 'between', 'open', 'missing']);
  });
});
