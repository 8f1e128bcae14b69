import { describe, expect, test } from 'vitest';
import { choice, parts, yes } from './fixture.ts';
import { run } from './run.ts';

type Cell = number | string;
type Line = Record<string, Cell>;
const no = choice('ok', 'no');
const T = '\u2009';
const lines = (judged: {
  findings: readonly { name: string; reading: string; limits: string | null; word: string; text: string }[];
}) => judged.findings.map((f) => [f.name, f.reading, f.limits, f.word, f.text]);

describe('a bleed resistor', () => {
  const of = (line: Line) => run('bleed-resistor', { readings: parts('Ω', line) });
  test.each<[Line, string]>([
    [{ bleed: 15_000 }, 'good'],
    [{ bleed: 10_000 }, 'good'],
    [{ bleed: 9_999.999 }, 'between'],
    [{ bleed: 20_000 }, 'good'],
    [{ bleed: 20_000.001 }, 'between'],
    [{ bleed: 'OL' }, 'open'],
    [{ bleed: 'OL', across: 15_000 }, 'open'],
    [{ bleed: 15_000, across: 14_900 }, 'good'],
    [{ across: 15_000 }, 'one-end-off'],
    [{ bleed: '_', across: 3 }, 'one-end-off'],
    [{ across: 'OL' }, 'one-end-off'],
    [{ bleed: '_', across: '_' }, 'undecided'],
    [{}, 'undecided'],
  ])('%o: %s', (line, outcome) => {
    expect(of(line).outcome).toBe(outcome);
  });
  test('what each says', () => {
    const band = `10${T}kΩ to 20${T}kΩ`;
    expect(
      [{ bleed: 15_000 }, { bleed: 30_000 }, { bleed: 'OL' }, { across: 15_000 }, {}].flatMap((l) => lines(of(l))),
    ).toEqual([
      ['Bleed resistor', `15${T}kΩ`, band, 'good', `The bleed resistor reads 15${T}kΩ, one end off, inside ${band}.`],
      [
        ...['Bleed resistor', `30${T}kΩ`, band, 'between'],
        `The bleed resistor reads 30${T}kΩ, one end off, outside ${band}. Compare its colour code.`,
      ],
      [
        ...['Bleed resistor', 'OL', band, 'open'],
        'The bleed resistor reads OL, one end off. It is open, and the capacitor keeps its charge.',
      ],
      [
        ...['Bleed resistor', `15${T}kΩ`, band, 'no verdict'],
        `Across the capacitor it reads 15${T}kΩ. The resistor reads so there: it condemns nothing. Take one end off.`,
      ],
      ['Bleed resistor', 'no reading', band, 'missing', 'The bleed resistor was not read.'],
    ]);
  });
});

describe('a potential relay', () => {
  const of = (contacts: Cell, coil: Cell) => run('potential-relay', { readings: parts('Ω', { contacts, coil }) });
  test.each<[Cell, Cell, string]>([
    [0.2, 5_400, 'good'],
    [0.5, 2_000, 'good'],
    [0.501, 2_000, 'between'],
    [-0.501, 2_000, 'between'],
    [0.2, 1_999.999, 'between'],
    [0.2, 20_000, 'good'],
    [0.2, 20_000.001, 'between'],
    ['OL', 5_400, 'contacts-open'],
    ['OL', 'OL', 'contacts-open'],
    [0.2, 'OL', 'coil-open'],
    [3, 'OL', 'coil-open'],
    ['_', 5_400, 'undecided'],
    [0.2, '_', 'undecided'],
    ['_', 'OL', 'coil-open'],
    [3, '_', 'between'],
    ['_', 100, 'between'],
  ])('1–2 %s, 5–2 %s: %s', (contacts, coil, outcome) => {
    expect(of(contacts, coil).outcome).toBe(outcome);
  });
  test('nobody read it', () => {
    expect(run('potential-relay', {}).outcome).toBe('undecided');
  });
  test('what each says', () => {
    const band = `2${T}kΩ to 20${T}kΩ`;
    const most = `0.5${T}Ω or less`;
    expect(lines(of(0.2, 5_400))).toEqual([
      ['Contacts 1–2', `0.2${T}Ω`, most, 'closed', `Contacts 1–2 read 0.2${T}Ω at rest. They are closed.`],
      ['Coil 5–2', `5.4${T}kΩ`, band, 'good', `The coil 5–2 reads 5.4${T}kΩ, inside ${band}.`],
    ]);
    expect(lines(of('OL', 'OL'))).toEqual([
      [
        'Contacts 1–2',
        'OL',
        most,
        'open',
        'Contacts 1–2 read OL at rest and have to be closed. There is no start assist.',
      ],
      [
        'Coil 5–2',
        'OL',
        band,
        'open',
        'The coil 5–2 reads OL. It is open: the relay never takes the start capacitor out.',
      ],
    ]);
    expect(lines(of(3, 100))).toEqual([
      [
        ...['Contacts 1–2', `3${T}Ω`, most, 'between'],
        `Contacts 1–2 read 3${T}Ω at rest, more than 0.5${T}Ω. Zero the leads, read them again.`,
      ],
      [
        'Coil 5–2',
        `100${T}Ω`,
        band,
        'between',
        `The coil 5–2 reads 100${T}Ω, outside ${band}. Read it again, wires off.`,
      ],
    ]);
    expect(lines(of('_', '_'))).toEqual([
      ['Contacts 1–2', 'no reading', most, 'missing', 'Contacts 1–2 were not read.'],
      ['Coil 5–2', 'no reading', band, 'missing', 'The coil 5–2 was not read.'],
    ]);
  });
});

describe('a current relay', () => {
  const of = (contacts: Cell, coil: Cell, upright?: ReturnType<typeof choice>) =>
    run('current-relay', { readings: parts('Ω', { contacts, coil }), ...(upright ? { upright } : {}) });
  test.each<[Cell, Cell, ReturnType<typeof choice> | undefined, string]>([
    ['OL', 0.5, undefined, 'good'],
    ['OL', 1, yes, 'good'],
    ['OL', 1.001, yes, 'between'],
    ['OL', -1.001, yes, 'between'],
    [1, 0.5, yes, 'contacts-closed'],
    [0.2, 0.5, undefined, 'contacts-closed'],
    [1.001, 0.5, yes, 'between'],
    [0.2, 0.5, no, 'undecided'],
    ['OL', 0.5, no, 'undecided'],
    [0.2, 0.5, choice('ok', 'cant'), 'undecided'],
    [0.2, 'OL', no, 'coil-open'],
    ['OL', 'OL', yes, 'coil-open'],
    ['OL', '_', yes, 'undecided'],
    ['_', 0.5, yes, 'undecided'],
    [0.2, '_', yes, 'contacts-closed'],
    ['_', 3, yes, 'between'],
  ])('contacts %s, coil %s, upright %j: %s', (contacts, coil, upright, outcome) => {
    expect(of(contacts, coil, upright).outcome).toBe(outcome);
  });
  test('nobody read it', () => {
    expect(run('current-relay', {}).outcome).toBe('undecided');
  });
  test('what each says', () => {
    const most = `1${T}Ω or less`;
    expect(lines(of('OL', 0.5))).toEqual([
      ['Contacts', 'OL', 'OL', 'open', 'The contacts read OL at rest. They are open, as they have to be.'],
      ['Coil', `0.5${T}Ω`, most, 'good', `The coil reads 0.5${T}Ω, ${most}.`],
    ]);
    expect(lines(of(0.2, 3, no))).toEqual([
      [
        ...['Contacts', `0.2${T}Ω`, 'OL', 'closed'],
        `The contacts read 0.2${T}Ω at rest and have to be open. The relay was not upright, so this reading counts for nothing.`,
      ],
      ['Coil', `3${T}Ω`, most, 'between', `The coil reads 3${T}Ω, more than 1${T}Ω. Zero the leads, read it again.`],
    ]);
    expect(lines(of(500, 'OL', yes))).toEqual([
      [
        ...['Contacts', `500${T}Ω`, 'OL', 'between'],
        `The contacts read 500${T}Ω at rest, neither OL nor closed. Read them again, wires off.`,
      ],
      ['Coil', 'OL', most, 'open', 'The coil reads OL. It is open, and the run winding gets no current.'],
    ]);
    expect(lines(of('_', '_'))).toEqual([
      ['Contacts', 'no reading', 'OL', 'missing', 'The contacts were not read.'],
      ['Coil', 'no reading', most, 'missing', 'The coil was not read.'],
    ]);
  });
});

describe('a PTC', () => {
  const of = (ptc: Cell, rattles?: ReturnType<typeof choice>) =>
    run('ptc', { readings: parts('Ω', { ptc }), ...(rattles ? { rattles } : {}) });
  test.each<[Cell, ReturnType<typeof choice> | undefined, string]>([
    [5, undefined, 'good'],
    [3, no, 'good'],
    [2.999, undefined, 'between'],
    [20, undefined, 'good'],
    [20.001, undefined, 'between'],
    ['OL', undefined, 'failed'],
    [5, yes, 'failed'],
    ['_', yes, 'failed'],
    ['_', undefined, 'undecided'],
  ])('%s Ω, rattles %j: %s', (ptc, rattles, outcome) => {
    expect(of(ptc, rattles).outcome).toBe(outcome);
  });
  test('what each says', () => {
    const band = `3–20${T}Ω, cold`;
    expect([of(5), of(300), of('OL'), of(5, yes), of('_')].flatMap(lines)).toEqual([
      ['PTC', `5${T}Ω`, band, 'good', `The PTC reads 5${T}Ω, cold, inside 3–20${T}Ω.`],
      [
        ...['PTC', `300${T}Ω`, band, 'between'],
        `The PTC reads 300${T}Ω, outside 3–20${T}Ω. Let it cool, read it again. The band only advises.`,
      ],
      ['PTC', 'OL', band, 'failed', 'The PTC reads OL, cold. It is open.'],
      ['PTC', `5${T}Ω`, band, 'failed', 'The PTC rattles. It is broken.'],
      ['PTC', 'no reading', band, 'missing', 'The PTC was not read.'],
    ]);
  });
});
