/** The live figures that prove a repair, or say what is still wrong. */
import { describe, expect, test } from 'vitest';
import type { Parts } from '../../engine/schema.ts';
import { choice, parts } from './fixture.ts';
import { run } from './run.ts';

type Cell = number | string;
const plain = (text: string | null | undefined) => text?.replaceAll('\u2009', ' ');
const plate = parts('A', { rla: 17.9, lra: 96, fla: 1.2 });
const split = (of: Cell): Parts => parts('Δ°F', { split: of });
const bare = (l1l2: Cell, comp: Cell, fan: Cell, volts: Record<string, Cell> = {}): Parts => ({
  ...parts('V', { l1l2, ...volts }),
  ...parts('A', { comp, fan }),
});
const at = (l1l2: Cell, comp: Cell, fan: Cell, volts: Record<string, Cell> = {}): Parts => ({
  ...bare(l1l2, comp, fan, volts),
  ...split(19),
});
const good = at(241, 13.1, 0.9);
const of = (figures: Parts, more: Parts = plate, later?: Parts) =>
  run('restart', { figures, plate: more, ...(later ? { later } : {}) });
const line = (name: string, ...args: Parameters<typeof of>) => of(...args).findings.find((f) => f.name === name);

describe('supply and amps', () => {
  test.each([
    ['the worked call', good, 'in'],
    ['on the lower limit', at(197, 13.1, 0.9), 'in'],
    ['under it', at(196.99, 13.1, 0.9), 'supply'],
    ['on the upper limit', at(253, 13.1, 0.9), 'in'],
    ['over it', at(253.01, 13.1, 0.9), 'supply'],
    ['near locked rotor', at(236, 95, 0.9), 'not-starting'],
    ['at the share', at(236, 76.8, 0.9), 'not-starting'],
    ['no current', at(241, 0, 0.9), 'not-starting'],
    // 40 % of 17.9 A is 7.16 A; 10 % of 1.2 A is 0.12 A.
    ['at the least share of RLA', at(241, 7.16, 0.9), 'in'],
    ['below it, with a split that looks right', at(241, 7.159, 0.9), 'not-starting'],
    ['7 % of RLA', at(241, 1.3, 0.9), 'not-starting'],
    ['below what anything draws', at(241, 0.499, 0.9), 'not-starting'],
    ['fan at its least share of FLA', at(241, 13.1, 0.12), 'in'],
    ['fan below it', at(241, 13.1, 0.119), 'not-starting'],
    ['fan still', at(241, 13.1, 0), 'not-starting'],
    ['fan at FLA', at(241, 13.1, 1.2), 'in'],
    ['fan above FLA', at(241, 13.1, 1.201), 'fan-high'],
    ['fan not taken', at(241, 13.1, '_'), 'undecided'],
    ['compressor not taken', at(241, '_', 0.9), 'undecided'],
    ['supply not taken', at('_', 13.1, 0.9), 'undecided'],
    ['supply out counts before the rest is taken', at(180, '_', '_'), 'supply'],
    ['nothing taken', {}, 'undecided'],
  ])('%s', (_, figures, expected) => {
    expect(of(figures).outcome).toBe(expected);
  });
  test('without its RLA a compressor runs from 2 A up', () => {
    const unknown = parts('A', { lra: 96, fla: 1.2 });
    expect(of(at(241, 2, 0.9), unknown).outcome).toBe('in');
    expect(of(at(241, 1.999, 0.9), unknown).outcome).toBe('not-starting');
    expect(line('Compressor', at(241, 1.3, 0.9))?.text).toMatch(
      /1\.3\u2009A, 7\u2009% of its RLA: too little for one that runs/,
    );
    expect(line('Fan', at(241, 13.1, 0.1))?.text).toMatch(/0\.1\u2009A, 8\u2009% of its FLA: too little/);
  });
  test('lines in the order a person reads them', () => {
    const figures = { ...at(241, 13.1, 0.9, { t1t2: 240, min: 229 }), ...choice('sound', 'fine') };
    expect(of(figures).findings.map((f) => [f.name, f.word])).toEqual([
      ['L1–L2', 'in'],
      ['T1–T2', 'in'],
      ['T1–T2 while starting', 'in'],
      ['Compressor', 'running'],
      ['Fan', 'in'],
      ['Split', 'in'],
      ['Seen and heard', 'in'],
    ]);
    expect(of(bare(241, 13.1, 0.9)).findings.map((f) => f.name)).toEqual(['L1–L2', 'Compressor', 'Fan']);
  });
  test('the supply is said against its limits', () => {
    expect(line('L1–L2', good)).toMatchObject({ reading: '241\u2009V', limits: '197–253\u2009V', word: 'in' });
    const known = { ...plate, ...choice('volts', '208/230') };
    expect(plain(line('L1–L2', good, known)?.text)).toBe('L1–L2 reads 241 V, inside 197–253 V.');
    expect(plain(line('L1–L2', good)?.text)).toBe(
      'L1–L2 reads 241 V, inside 197–253 V. A 208/230 V nameplate is assumed.',
    );
    expect(plain(line('L1–L2', at(180, 13.1, 0.9), known)?.text)).toBe('L1–L2 reads 180 V, outside 197–253 V.');
    expect(line('L1–L2', at(180, 13.1, 0.9))?.word).toBe('out');
    expect(line('L1–L2', at('_', 13.1, 0.9), known)).toMatchObject({
      ...{ reading: 'no reading', word: 'missing', text: 'L1–L2 was not read.' },
    });
  });
  test('shares of the plate are said; RLA is no limit', () => {
    expect(plain(line('Compressor', good)?.text)).toBe('The compressor draws 13.1 A, 73 % of its RLA.');
    expect(line('Compressor', good)).toMatchObject({ reading: '13.1\u2009A', limits: 'locked rotor 96\u2009A' });
    expect(plain(line('Fan', good)?.text)).toBe('The fan draws 0.9 A, 75 % of its FLA.');
    expect(line('Fan', good)).toMatchObject({ limits: '1.2\u2009A or less', source: 'FLA on the nameplate' });
    expect(plain(line('Compressor', at(241, 17.9, 0.9))?.text)).toBe('The compressor draws 17.9 A, 100 % of its RLA.');
    expect(line('Compressor', at(241, 17.9, 0.9))?.word).toBe('running');
    expect(plain(line('Compressor', at(241, 19, 0.9))?.text)).toBe(
      'The compressor draws 19 A, 106 % of its RLA. RLA is no limit: look at head, coil and volts.',
    );
    expect(line('Compressor', at(241, 19, 0.9))).toMatchObject({
      ...{ word: 'above RLA', source: 'RLA is no limit: common practice, no single source' },
    });
  });
  // MCC 1.56 times RLA: a trade glossary and a tip page (secondary sources). 17.9 · 1.56 = 27.924.
  test.each([
    [27.924, 'in'],
    [27.925, 'above-mcc'],
    [76.7, 'above-mcc'],
    [76.8, 'not-starting'],
  ])('%d A on RLA 17.9, LRA 96: %s', (amps, expected) => {
    expect(of(at(241, amps, 0.9)).outcome).toBe(expected);
  });
  test('more than it may draw for long is said with what it may', () => {
    expect(plain(line('Compressor', at(241, 29.4, 0.9))?.text)).toBe(
      'The compressor draws 29.4 A, above the 27.9 A that its protector lets pass for long, reckoned from RLA. Turn it off.',
    );
    expect(line('Compressor', at(241, 29.4, 0.9))).toMatchObject({ word: 'above MCC' });
    expect(of(at(241, 29.4, 1.3)).outcome).toBe('above-mcc');
  });
  test('what is wrong with a motor is said with its figure', () => {
    expect(line('Compressor', at(236, 95, 0.9))?.word).toBe('near locked rotor');
    expect(plain(line('Compressor', at(236, 95, 0.9))?.text)).toBe(
      'The compressor draws 95 A, 99 % of its LRA. It is not starting.',
    );
    expect(line('Compressor', at(241, 0.2, 0.9))?.word).toBe('not running');
    expect(plain(line('Compressor', at(241, 0.2, 0.9))?.text)).toBe('The compressor draws 0.2 A. It is not running.');
    expect(line('Compressor', at(241, '_', 0.9))).toMatchObject({
      ...{ reading: 'no reading', word: 'missing', text: 'The compressor’s amps were not read.', source: null },
    });
    expect(line('Fan', at(241, 13.1, 0))).toMatchObject({
      ...{ word: 'not running', text: 'The fan draws nothing. It is not running.' },
    });
    expect(line('Fan', at(241, 13.1, 1.3))?.word).toBe('above FLA');
    expect(plain(line('Fan', at(241, 13.1, 1.3))?.text)).toBe('The fan draws 1.3 A, above its FLA of 1.2 A.');
    expect(line('Fan', at(241, 13.1, '_'))).toMatchObject({
      ...{ reading: 'no reading', word: 'missing', text: 'The fan’s amps were not read.' },
    });
    expect(plain(line('Fan', good, parts('A', { rla: 17.9 }))?.text)).toBe(
      'The fan draws 0.9 A. Its FLA is not known, so this is recorded and not judged.',
    );
    expect(line('Fan', good, parts('A', { rla: 17.9 }))).toMatchObject({ word: 'not judged', limits: null });
  });
  test('a single rating has ±10 %', () => {
    const single = { ...plate, ...choice('volts', '230') };
    expect(of(at(207, 13.1, 0.9), single).outcome).toBe('in');
    expect(of(at(206.99, 13.1, 0.9), single).outcome).toBe('supply');
    expect(of(at(206.99, 13.1, 0.9), { ...plate, ...choice('volts', '208/230') }).outcome).toBe('in');
    expect(of(at(110, 13.1, 0.9), { ...plate, ...choice('volts', '115') }).outcome).toBe('in');
  });
  test('without LRA and RLA nobody tells running from stalled', () => {
    expect(of(good, parts('A', { fla: 1.2 })).outcome).toBe('undecided');
    expect(line('Compressor', good, parts('A', { fla: 1.2 }))).toMatchObject({
      ...{ word: 'not judged', limits: null, source: null },
      text: 'The compressor draws 13.1\u2009A. Without LRA or RLA nobody can tell running from stalled.',
    });
    expect(of(good, parts('A', { rla: 17.9 })).outcome).toBe('in');
    expect(of(at(241, 27, 0.9), parts('A', { rla: 17.9 })).outcome).toBe('undecided');
    expect(of(at(241, 95, 0.9), parts('A', { rla: 17.9 })).outcome).toBe('above-mcc');
    expect(of(good, parts('A', { lra: 96 })).outcome).toBe('in');
    expect(plain(line('Compressor', good, parts('A', { lra: 96 }))?.text)).toBe(
      'The compressor draws 13.1 A, 14 % of its LRA.',
    );
    expect(line('Compressor', good, parts('A', { lra: 96 }))).toMatchObject({ word: 'running' });
    expect(of(good, parts('A', { rla: 0, lra: 0 })).outcome).toBe('undecided');
  });
});

describe('T1–T2', () => {
  const drop = (t1t2: Cell, more: Partial<Record<'comp' | 'fan', Cell>> = {}) =>
    at(241, more.comp ?? 13.1, more.fan ?? 0.9, { t1t2 });
  test.each([
    ['three volts lower', drop(238), 'drop'],
    ['a little less', drop(238.01), 'in'],
    ['as high', drop(241), 'in'],
    ['higher', drop(243), 'in'],
    ['left out', drop('_'), 'in'],
    ['without L1–L2', at('_', 13.1, 0.9, { t1t2: 238 }), 'undecided'],
    ['nothing draws and T is dead: it may not be in', drop(0, { comp: 0, fan: 0 }), 'not-in'],
    ['nothing draws, and as much lost as an open pole loses', drop(221, { comp: 0.49, fan: 0 }), 'not-in'],
    ['nothing draws, and a little less lost', drop(221.01, { comp: 0, fan: 0 }), 'not-starting'],
    ['nothing draws, T not read', drop('_', { comp: 0, fan: 0 }), 'not-in'],
    ['nothing draws, and T has its volts', drop(240, { comp: 0, fan: 0 }), 'not-starting'],
    ['the fan draws', drop(0, { comp: 0 }), 'drop'],
    ['the compressor draws', drop(0, { comp: 0.5, fan: 0 }), 'drop'],
    ['the compressor’s amps not read', drop(0, { comp: '_', fan: 0 }), 'drop'],
    ['a stalled compressor is turned off first', drop(230, { comp: 95 }), 'not-starting'],
    ['the poles before the fan', drop(230, { fan: 1.3 }), 'drop'],
    ['the supply before the poles', at(190, 13.1, 0.9, { t1t2: 180 }), 'supply'],
  ])('%s', (_, figures, expected) => {
    expect(of(figures).outcome).toBe(expected);
  });
  test('is said with both figures', () => {
    expect(line('T1–T2', drop(236))).toMatchObject({
      ...{ reading: '236\u2009V', limits: 'less than 3\u2009V below L1–L2', word: 'read the poles' },
      source: 'set for this test',
    });
    expect(plain(line('T1–T2', drop(236))?.text)).toBe(
      'T1–T2 reads 236 V, 5 V below L1–L2. Read across each closed pole under load.',
    );
    expect(plain(line('T1–T2', drop(240))?.text)).toBe('T1–T2 reads 240 V, less than 3 V below L1–L2.');
    expect(line('T1–T2', drop(240))?.word).toBe('in');
    expect(line('T1–T2', drop('_'))).toBeUndefined();
    expect(line('T1–T2', drop(0, { comp: 0, fan: 0 }))?.word).toBe('not in');
    expect(plain(line('T1–T2', drop(0, { comp: 0, fan: 0 }))?.text)).toBe(
      'T1–T2 reads 0 V, 241 V below L1–L2. Nothing draws: the contactor is not in, or nothing passes it.',
    );
  });
});

describe('while starting', () => {
  const start = (l1l2: Cell, min: Cell) => at(l1l2, 13.1, 0.9, { min });
  test.each([
    ['ten percent down', start(240, 216), 'in'],
    ['a little more', start(240, 215.99), 'supply'],
    ['on the lower limit', start(218, 197), 'in'],
    ['under it, though not ten percent down', start(218, 196.99), 'supply'],
    ['without L1–L2, inside', start('_', 197), 'undecided'],
    ['without L1–L2, under the lower limit', start('_', 196.99), 'supply'],
    ['L1–L2 reads nothing', start(0, 0), 'supply'],
    ['left out', start(240, '_'), 'in'],
    ['a sag before a stalled compressor', at(240, 95, 0.9, { min: 190 }), 'supply'],
  ])('%s', (_, figures, expected) => {
    expect(of(figures).outcome).toBe(expected);
  });
  test('is said in percent and with what is allowed', () => {
    const name = 'T1–T2 while starting';
    expect(line(name, start(240, 229))).toMatchObject({
      ...{ reading: '229\u2009V', limits: '197\u2009V or more, 10\u2009% down at most', word: 'in' },
      source: 'set for this test',
    });
    expect(plain(line(name, start(240, 229))?.text)).toBe('While starting T1–T2 falls to 229 V, 4.6 % below L1–L2.');
    expect(plain(line(name, start(240, 210))?.text)).toBe(
      'While starting T1–T2 falls to 210 V, 12.5 % below L1–L2. Allowed is 10 %, and no less than 197 V.',
    );
    expect(line(name, start(240, 210))?.word).toBe('sags');
    expect(plain(line(name, start('_', 190))?.text)).toBe(
      'While starting T1–T2 falls to 190 V. Allowed is 10 %, and no less than 197 V.',
    );
    expect(plain(line(name, start(240, 240))?.text)).toBe('While starting T1–T2 falls to 240 V.');
    expect(plain(line(name, start(240, 241))?.text)).toBe('While starting T1–T2 falls to 241 V.');
    expect(line(name, start(240, '_'))).toBeUndefined();
  });
});

describe('the split', () => {
  const figures = bare(241, 13.1, 0.9);
  test.each([
    ['not read yet', undefined, 'wait'],
    ['read later', split(19), 'in'],
    ['on the lower limit', split(14), 'in'],
    ['under it', split(13.9), 'split-out'],
    ['on the upper limit', split(23), 'in'],
    ['above it', split(23.1), 'split-out'],
    ['asked for and left out', split('_'), 'undecided'],
    ['asked for and not read', {}, 'undecided'],
    ['a temperature is no difference', parts('°F', { split: 19 }), 'undecided'],
  ])('%s', (_, later, expected) => {
    expect(of(figures, plate, later).outcome).toBe(expected);
  });
  test('in the first line it needs no later one; the later one counts', () => {
    expect(of({ ...figures, ...split(13) }).outcome).toBe('split-out');
    expect(of({ ...figures, ...split(13) }, plate, split(19)).outcome).toBe('in');
    expect(of({ ...figures, ...split(19) }, plate, split(13)).outcome).toBe('split-out');
    expect(of({ ...figures, ...split(19) }, plate, {}).outcome).toBe('in');
  });
  test('nothing waits where something else is out or open', () => {
    expect(of(bare(241, 13.1, '_')).outcome).toBe('undecided');
    expect(of(bare(241, 13.1, 1.3)).outcome).toBe('fan-high');
    expect(of(bare(241, 13.1, '_'), plate, split(13)).outcome).toBe('split-out');
    expect(of(bare(241, 13.1, 1.3), plate, split(13)).outcome).toBe('fan-high');
  });
  test('is said with its limits and what an odd one means', () => {
    const said = (of_: Cell) => plain(line('Split', { ...figures, ...split(of_) })?.text);
    expect(said(19)).toBe('The split is 19 °F, inside 14–23 °F.');
    expect(said(10)).toBe('The split is 10 °F, outside 14–23 °F: little capacity, much air, or heat from elsewhere.');
    expect(said(-3)).toContain('The split is −3 °F, outside 14–23 °F: little capacity');
    expect(said(26)).toBe('The split is 26 °F, outside 14–23 °F: too little air over the coil.');
    const word = (of_: Cell) => line('Split', { ...figures, ...split(of_) })?.word;
    expect([word(10), word(19), word(26)]).toEqual(['low', 'in', 'high']);
    expect(line('Split', { ...figures, ...split(19) })).toMatchObject({
      ...{ reading: '19\u2009°F', limits: '14–23\u2009°F', source: 'set for this test' },
    });
    expect(line('Split', figures, plate, {})).toMatchObject({
      ...{ reading: 'no reading', word: 'missing', text: 'The split was not read.' },
    });
    expect(line('Split', figures)).toBeUndefined();
  });
});

describe('what is seen and heard', () => {
  const heard = (...sounds: string[]) => ({ ...good, ...choice('sound', ...sounds) });
  test.each([
    ['fine', 'in', 'in', 'Nothing odd is seen or heard.'],
    ['noise', 'sound', 'out', 'There is a new noise. Turn it off and find it.'],
    ...([
      [
        ...['chatter', 'sound', 'out'],
        'The contactor chatters. Turn it off: it welds contacts and breaks compressors.',
      ],
      ['backwards', 'sound', 'out', 'A motor runs backwards. Turn it off.'],
    ] as [string, string, string, string][]),
  ])('%s: %s', (sound, outcome, word, text) => {
    expect(of(heard(sound)).outcome).toBe(outcome);
    expect(line('Seen and heard', heard(sound))).toMatchObject({
      ...{ reading: sound, word, text, source: 'common practice, no single source' },
    });
  });
  test('the gravest is said; unknown words say nothing', () => {
    expect(line('Seen and heard', heard('noise', 'chatter', 'backwards'))?.reading).toBe('backwards');
    expect(line('Seen and heard', heard('fine', 'noise', 'chatter'))?.reading).toBe('chatter');
    expect(line('Seen and heard', heard('fine', 'noise'))?.reading).toBe('noise');
    expect(line('Seen and heard', heard('other'))).toBeUndefined();
    expect(of(heard('other')).outcome).toBe('in');
  });
  test('what was said later counts, where something was', () => {
    const later = (sound: string) => ({ ...split(19), ...choice('sound', sound) });
    expect(of(heard('fine'), plate, later('noise')).outcome).toBe('sound');
    expect(of(heard('noise'), plate, later('fine')).outcome).toBe('in');
    expect(of(heard('noise'), plate, split(19)).outcome).toBe('sound');
  });
  test('it comes after the fan and before the split', () => {
    const noise = choice('sound', 'noise');
    expect(of({ ...at(241, 13.1, 1.3), ...noise }).outcome).toBe('fan-high');
    expect(of({ ...good, ...split(10), ...noise }).outcome).toBe('sound');
    expect(of({ ...bare(241, 13.1, '_'), ...noise }).outcome).toBe('sound');
  });
});

test('a nameplate that nobody could read is taken for 208/230 V, and that is said', () => {
  const unread = { ...plate, ...choice('volts', 'unknown') };
  expect(of(good, unread).outcome).toBe('in');
  expect(plain(line('L1–L2', good, unread)?.text)).toBe(
    'L1–L2 reads 241 V, inside 197–253 V. A 208/230 V nameplate is assumed.',
  );
});

describe('a contactor that may not be in', () => {
  test.each<[string, Cell, Cell, Cell, string]>([
    ['nothing draws and T is without the line’s volts', 241, 0, 0, 'not-in'],
    ['nobody read the fan', 241, 0, '_', 'drop'],
    ['nobody read the line', '_', 0, 0, 'not-starting'],
  ])('%s', (_, l1l2, comp, fan, expected) => {
    expect(of(at(l1l2, comp, fan, { t1t2: 210 })).outcome).toBe(expected);
  });
});

describe('three lines', () => {
  const unit = choice('choice', 'three-phase');
  const figures = (l: readonly Cell[], c: readonly Cell[]): Parts => ({
    ...parts('V', Object.fromEntries(['l1l2', 'l2l3', 'l1l3'].map((k, i) => [k, l[i] ?? '_']))),
    ...parts('A', { comp: c[0] ?? '_', comp2: c[1] ?? '_', comp3: c[2] ?? '_', fan: 0.9 }),
    ...split(19),
  });
  const of3 = (l: readonly Cell[], c: readonly Cell[], volts?: string) =>
    run('restart', { figures: figures(l, c), unit, plate: { ...plate, ...(volts ? choice('volts', volts) : {}) } });
  const amps = [13, 13.2, 12.9];

  // Volts: a compressor maker's nameplate-voltage bulletin (secondary source); 460 V ±10 %: NEMA MG 1-12.44.1.
  test.each<[string, readonly Cell[], readonly Cell[], string, string?]>([
    ['good', [239, 241, 240], amps, 'in'],
    ['on the lower limit of three-phase', [187, 187, 187], amps, 'in'],
    ['below it on the second pair', [187, 186.9, 187], amps, 'supply'],
    ['a nameplate of 460 V', [462, 463, 455], amps, 'in', '460'],
    ['460 V, one pair below 414 V', [430, 430, 413], amps, 'supply', '460'],
    ['460 V on a nameplate that nobody read: the plate first', [462, 463, 455], amps, 'which-plate'],
    ['460 V on a nameplate of 208/230 V', [462, 463, 455], amps, 'supply', '208/230'],
    ['280 V fits no nameplate', [280, 280, 280], amps, 'supply'],
    // 100·max|V − mean|/mean: 230, 230, 206 → mean 222, 16/222 = 7.2 %.
    ['lines 7.2 % apart', [230, 230, 206], amps, 'supply'],
    ['a pair not taken', [239, '_', 240], amps, 'undecided'],
    ['a leg not taken', [239, 241, 240], [13, 13.2, '_'], 'undecided'],
    ['legs 10.0 % apart', [239, 241, 240], [11, 10, 9], 'in'],
    ['legs 10.3 % apart', [239, 241, 240], [11, 9.97, 8.95], 'legs-apart'],
    ['single-phasing: a leg draws nothing', [239, 241, 240], [18, 18, 0], 'legs-apart'],
    ['single-phasing makes the other two heavy', [239, 241, 240], [31, 31, 0], 'legs-apart'],
    ['all three heavy', [239, 241, 240], [28.5, 28, 28.2], 'above-mcc'],
    ['the second leg heavy, within 10 % of the others', [239, 241, 240], [27.5, 28, 27.4], 'above-mcc'],
    ['the third leg heavy', [239, 241, 240], [27.4, 27.5, 28], 'above-mcc'],
    ['the first pair not taken, the second low', ['_', 180, 239], amps, 'supply'],
    ['no leg draws', [239, 241, 240], [0, 0, 0], 'not-starting'],
  ])('%s', (_, l, c, expected, volts) => {
    expect(of3(l, c, volts).outcome).toBe(expected);
  });

  test.each([
    ['second', { comp: 0, comp2: 9, comp3: 0 }],
    ['third', { comp: 0, comp2: 0, comp3: 9 }],
  ])('the contactor is in where the %s leg draws', (_, legs) => {
    const volts = parts('V', { l1l2: 239, l2l3: 241, l1l3: 240, t1t2: 210 });
    const still = { ...volts, ...parts('A', { ...legs, fan: 0 }) };
    expect(run('restart', { figures: still, unit, plate }).outcome).toBe('drop');
  });

  test('a published unbalance stands in its line', () => {
    // reference value: 462/463/455 → 1.1 % (NEMA's worked example).
    const line = of3([462, 463, 455], amps, '460').findings.find((f) => f.name === 'Unbalance of the lines');
    expect(plain(line?.reading)).toBe('1.1 %');
  });
});

describe('a box', () => {
  const unit = choice('choice', 'refrigeration');
  const figures = (box: Cell): Parts => ({ ...bare(241, 7.2, 0.9), ...parts('°F', { box }) });
  const later = (box: Cell): Parts => parts('°F', { box });
  test.each<[string, Cell, Parts | undefined, string]>([
    ['not read again yet', 47, undefined, 'wait'],
    ['down by two', 47, later(45), 'in'],
    ['down by less', 47, later(45.1), 'split-out'],
    ['warmer', 47, later(48), 'split-out'],
    ['not read again', 47, later('_'), 'undecided'],
    ['never read', '_', undefined, 'undecided'],
  ])('%s', (_, box, then, expected) => {
    const given = { figures: figures(box), plate, unit, ...(then ? { later: then } : {}) };
    expect(run('restart', given).outcome).toBe(expected);
  });
  test('an air conditioner’s split is no question of it', () => {
    expect(run('restart', { figures: { ...figures(47), ...split(8) }, plate, unit, later: later(40) }).outcome).toBe(
      'in',
    );
  });
});

describe('volts during a try', () => {
  const held = (v: Cell, more: Record<string, Parts> = {}) =>
    run('volts-held', { readings: parts('V', { v }), ...more });
  const three = { unit: choice('choice', 'three-phase') };
  test.each<[string, Cell, Record<string, Parts>, string]>([
    ['on the lower limit', 197, {}, 'there'],
    ['below it', 196.9, {}, 'between'],
    ['three lines', 187, three, 'there'],
    ['three lines, below', 186.9, three, 'between'],
    ['115 V', 103.5, { plate: choice('volts', '115') }, 'there'],
    ['115 V, below', 103.4, { plate: choice('volts', '115') }, 'between'],
    ['nothing', 9.9, {}, 'none'],
    ['not taken', '_', {}, 'undecided'],
  ])('%s', (_, v, more, expected) => expect(held(v, more).outcome).toBe(expected));
});

describe('volts where a motor is fed', () => {
  const psc = { unit: choice('choice', 'psc') };
  const three = { unit: choice('choice', 'three-phase') };
  const [of115, of230] = [{ plate: choice('volts', '115') }, { plate: choice('volts', '208/230') }];
  test.each<[string, Cell, Record<string, Parts>, string]>([
    ['outdoors, on the lower limit', 197, psc, 'there'],
    ['below it', 196.9, psc, 'between'],
    ['on the upper limit', 253, psc, 'there'],
    ['above it: another system', 277, psc, 'between'],
    ['one leg of two lost', 121, psc, 'between'],
    ['three lines', 187, three, 'there'],
    ['a blower of 208/230 V on one leg', 121, of230, 'between'],
    ['a blower of 115 V', 121, of115, 'there'],
    ['a blower of 115 V, below', 103.4, of115, 'between'],
    ['no plate read indoors: a leg and neutral, or one leg of two', 121, {}, 'undecided'],
    ['no plate read indoors: its lower end', 107.9, {}, 'between'],
    ['no plate read indoors: its upper end', 132.1, {}, 'between'],
    ['no plate read indoors: two legs, or too much for one', 187.2, {}, 'undecided'],
    ['no plate read indoors: below two legs', 187.1, {}, 'between'],
    ['no plate read indoors: above two legs', 264.1, {}, 'between'],
    ['nothing', 9.9, psc, 'none'],
    ['next to nothing', 10, psc, 'between'],
    ['not taken', '_', psc, 'undecided'],
  ])('%s', (_, v, more, expected) =>
    expect(run('fed-volts', { readings: parts('V', { v }), ...more }).outcome).toBe(expected),
  );
});

describe('where a supply is lost', () => {
  const at = (load: string | null, of: Record<string, Cell>, more: Record<string, Parts> = {}) =>
    run('supply-located', {
      readings: { ...(load === null ? {} : choice('load', load)), ...parts('V', of) },
      ...more,
    }).outcome;
  test.each<[string, string | null, Record<string, Cell>, string]>([
    ['on the lower limit: it holds', 'runs', { unit: 197 }, 'holds'],
    ['below it, alone', 'runs', { unit: 196.9 }, 'undecided'],
    ['below it, and the feed on its limit', 'runs', { unit: 196.9, feed: 197 }, 'between'],
    ['below it, and the feed below it too', 'runs', { unit: 196.9, feed: 196.9 }, 'feed'],
    ['both below with nothing drawing', 'idle', { unit: 196.9, feed: 196.9 }, 'feed'],
    ['the feed in with nothing drawing: no drop to see', 'idle', { unit: 190, feed: 238 }, 'undecided'],
    ['nobody said what drew', null, { unit: 190, feed: 238, p1: 48 }, 'undecided'],
    ['poles that explain it', 'runs', { unit: 190, p1: 3, p2: 4 }, 'means'],
    ['the third pole too', 'runs', { unit: 190, p1: 3, p2: 2, p3: 2 }, 'means'],
    ['poles that don’t', 'runs', { unit: 190, p1: 3, p2: 3.9 }, 'undecided'],
    ['poles that don’t, the feed in', 'runs', { unit: 190, feed: 238, p1: 3, p2: 3.9 }, 'between'],
    ['poles that explain it, the feed in', 'starts', { unit: 190, feed: 238, p1: 40, p2: 4 }, 'means'],
    ['too high on both sides', 'idle', { unit: 253.1, feed: 253.1 }, 'feed'],
    ['on the upper limit', 'idle', { unit: 253, feed: 253 }, 'holds'],
    ['down by a tenth', 'starts', { rest: 240, unit: 216, feed: 239 }, 'holds'],
    ['down by more', 'starts', { rest: 240, unit: 215.9, feed: 239 }, 'between'],
    ['down by more, the feed too', 'starts', { rest: 240, unit: 215.9, feed: 215.9 }, 'feed'],
    [
      'down by more of what it is at rest, with nothing drawing',
      'idle',
      { rest: 240, unit: 215.9, feed: 239 },
      'holds',
    ],
    ['not read', 'runs', { unit: '_' }, 'undecided'],
  ])('%s', (_, load, of, expected) => expect(at(load, of)).toBe(expected));
  test('by the plate and the phase', () => {
    expect(at('runs', { unit: 187, feed: 238 }, { unit: choice('choice', 'three-phase') })).toBe('holds');
    expect(at('runs', { unit: 186.9, feed: 238 }, { unit: choice('choice', 'three-phase') })).toBe('between');
    expect(at('runs', { unit: 103.5, feed: 118 }, { plate: choice('volts', '115') })).toBe('holds');
    expect(at('runs', { unit: 103.4, feed: 118 }, { plate: choice('volts', '115') })).toBe('between');
  });
});

test('what the nameplate prints may be known from elsewhere on the job', () => {
  const printed = choice('volts', '115');
  expect(run('restart', { figures: at(118, 7.5, 0.4), plate, printed }).outcome).toBe('in');
  expect(run('restart', { figures: at(118, 5.5, 0.4), plate }).outcome).toBe('which-plate');
});
