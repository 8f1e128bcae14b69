/** The new part: which one was taken, whether it may go in, whether it reads right, and what the truck has less of. */
import { describe, expect, test } from 'vitest';
import type { Force } from '../../engine/judgements/judgement.ts';
import type { CapacitorLabel, Parts, StockItem } from '../../engine/schema.ts';
import { ASSUMED, choice, FORCE, labelled, parts, SETTINGS, stock, truck } from './fixture.ts';
import { run } from './run.ts';

type Line = Record<string, number | string>;
const plain = (text: string | null | undefined) => text?.replaceAll('\u2009', ' ');
const on = (...items: StockItem[]): Force => ({ ...FORCE, truck: truck(...items) });
const uF = (of: Line): Parts => parts('µF', of);
const picked = (pick: string, readings: Line, more: Parts = {}): Parts => ({
  ...choice('pick', pick),
  ...uF(readings),
  ...more,
});
const other = (print: string, readings: Line, of: Partial<CapacitorLabel> = {}): Parts =>
  picked('other', readings, labelled(print, of));
const old = labelled('45+5');
const good = { herm: 45.3, fan: 5.04 };
const TRUCK = on(stock('45+5 440', 2), stock('45 440'), stock('5 440', 3), stock('45+5 370', 4));
const of = (part: Parts | undefined, more: Partial<Record<string, Parts>> = {}, force = TRUCK) =>
  run('new-part', { old, ...(part ? { part } : {}), ...more }, force);
const words = (judged: ReturnType<typeof of>) => judged.findings.map((f) => `${f.name}: ${f.word}`);
const text = (judged: ReturnType<typeof of>, name: string) => plain(judged.findings.find((f) => f.name === name)?.text);

describe('a worked call: the new part, measured dead first', () => {
  test('picked by its number, it reads right and goes off the truck', () => {
    const judged = of(picked('first', good));
    expect(judged.outcome).toBe('good');
    expect(judged.uses).toEqual([{ item: '45-5-440', count: 1 }]);
    expect(words(judged)).toEqual(['New part: exact', 'HERM: pass', 'FAN: pass']);
    expect(text(judged, 'New part')).toMatch(/^Part 45\+5 440: 45\+5 µF 440 V, 2 left. /);
    expect(text(judged, 'HERM')).toContain('HERM reads 45.3 µF, +0.7 % off the rated 45 µF.');
    expect(text(judged, 'FAN')).toContain('FAN reads 5.04 µF, +0.8 % off the rated 5 µF.');
    expect(judged.findings[1]).toMatchObject({ limits: '42.30–47.70\u2009µF' });
  });
  test('two singles take one of each', () => {
    const judged = of(picked('second', good));
    expect([judged.outcome, judged.uses]).toEqual([
      'good',
      [
        { item: '45-440', count: 1 },
        { item: '5-440', count: 1 },
      ],
    ]);
  });
  test('two of one kind', () => {
    const judged = of(picked('first', { herm: 50.2 }), { old: labelled('50') }, on(stock('25 440', 2)));
    expect([judged.outcome, judged.uses]).toEqual(['good', [{ item: '25-440', count: 2 }]]);
  });
  test('the third of the list; a fourth is not offered', () => {
    const force = on(...['45', '44.9', '45.2', '45.4'].map((one) => stock(`${one} 440`)));
    const single = { old: labelled('45') };
    expect(of(picked('third', { herm: 45.1 }), single, force).uses).toEqual([{ item: '45.2-440', count: 1 }]);
    expect(of(picked('second', { herm: 45.1 }), single, force).uses).toEqual([{ item: '44.9-440', count: 1 }]);
    expect(of(picked('fourth', { herm: 45.1 }), single, force).outcome).toBe('undecided');
  });
  test('where the diagram is known, its rating decides', () => {
    const diagram = labelled('40+5');
    const force = on(stock('45+5 440'), stock('40+5 440'));
    expect(of(picked('first', good), { diagram }, force).outcome).toBe('out');
    expect(of(picked('first', { herm: 40.3, fan: 5.06 }), { diagram }, force).uses).toEqual([
      { item: '40-5-440', count: 1 },
    ]);
  });
});

describe('what may not go in', () => {
  test.each([
    ['second', on(stock('45+5 440')), 'There is no second choice on the list.'],
    ['first', on(stock('50+5 440')), 'There is no first choice on the list.'],
    ['first', FORCE, 'There is no first choice on the list.'],
  ])('no such number: %s', (pick, force, said) => {
    const judged = of(picked(pick, good), {}, force);
    expect([judged.outcome, judged.uses]).toEqual(['no-choice', []]);
    expect(words(judged)).toEqual(['New part: not on the list', 'Asked for: asked for']);
    expect(judged.findings[0]?.reading).toBe(pick);
    expect(text(judged, 'New part')).toBe(said);
  });
  test('another part without its print', () => {
    const judged = of(picked('other', good));
    expect([judged.outcome, judged.findings[0]?.reading, judged.findings[0]?.word]).toEqual([
      ...['no-choice', 'no print', 'missing'],
    ]);
    expect(text(judged, 'New part')).toBe('The print of the part that was taken is missing.');
  });
  test.each([
    ['50+5', {}, '50+5 µF 440 V: HERM +11.1 %, above the label’s limits.'],
    ['45+5', { volts: '370' }, '45+5 µF 370 V: voltage too low: 370 V, 440 V needed.'],
    ['45+5', { volts: null }, '45+5 µF: no volts are printed on it.'],
    ['45', {}, '45 µF 440 V: nothing beside it makes up 5 µF.'],
    ['227', { range: { low: '189', high: '227' } }, '189–227 µF 440 V: a start capacitor is no run capacitor.'],
  ])('%s %o by its print', (print, of_, said) => {
    const judged = of(other(print, good, of_));
    expect([judged.outcome, judged.uses]).toEqual(['refused', []]);
    expect(words(judged)).toEqual(['New part: refused', 'Asked for: asked for']);
    expect(text(judged, 'New part')).toBe(said);
  });
});

describe('another part by its print', () => {
  test('is taken off the truck where the truck carries it', () => {
    const judged = of(other('45.0+5.0', good));
    expect([judged.outcome, judged.uses]).toEqual(['good', [{ item: '45-5-440', count: 1 }]]);
    expect(text(judged, 'New part')).toBe(
      '45+5 µF 440 V was taken. HERM gets 45 µF, 0.0 % off the rated 45 µF. FAN gets 5 µF, 0.0 % off the rated 5 µF. One part.',
    );
    expect(judged.findings[0]).toMatchObject({ reading: '45+5\u2009µF 440\u2009V', word: 'exact' });
    expect(of(other('44+5', good)).findings[0]?.word).toBe('within the label');
  });
  test.each([
    ['other volts', stock('45+5 370')],
    ['other µF', stock('44+5 440')],
    ['none left', stock('45+5 440', 0)],
    ['no volts on the list', stock('45+5 440', 1, { volts: null })],
    ['another kind', stock('45+5 440', 1, { kind: 'start' })],
    ['no capacitor', stock('45+5 440', 1, { kind: 'other' })],
  ])('not where the truck carries something else: %s', (_, item) => {
    expect(of(other('45+5', good), {}, on(item)).uses).toEqual([]);
  });
  test('one section is not two whose figures make the same row of digits', () => {
    const four = { old: labelled('4+5') };
    expect(of(other('4+5', { herm: 4.02, fan: 5.04 }), four, on(stock('45 440'))).uses).toEqual([]);
  });
  test('the order of the sections makes no difference, nor does a truck that nobody recorded', () => {
    expect(of(other('45+5', good), {}, on(stock('45 440'), stock('5+45 440'))).uses).toEqual([
      { item: '5-45-440', count: 1 },
    ]);
    expect(of(other('45+5', good), {}, FORCE)).toMatchObject({ outcome: 'good', uses: [] });
  });
});

describe('another start part by its print', () => {
  const asked = { old: labelled('227', { range: { low: '189', high: '227' } }) };
  const start = (print: string, low: string, high: string) =>
    stock(print, 1, { kind: 'start', sections: [], range: { low, high } });
  test('goes in where its range lies inside the one asked for, and is taken off the truck', () => {
    const part = other('227', { herm: 215 }, { range: { low: '189', high: '227' } });
    const judged = of(part, asked, on(start('227 440', '189', '227')));
    expect([judged.findings[0]?.word, judged.uses]).toEqual(['exact', [{ item: '227-440', count: 1 }]]);
  });
  test('a run part stays out', () => {
    expect(text(of(other('227', { herm: 215 }), asked), 'New part')).toBe(
      '227 µF 440 V: a run capacitor is no start capacitor.',
    );
  });
});

describe('readings', () => {
  const outcome = (readings: Line, more: Parts = {}) => of(picked('first', readings, more)).outcome;
  test.each([
    ['on the lower limit', { herm: 42.3, fan: 5.04 }, 'good'],
    ['under it, though the doubt reaches in', { herm: 42.29, fan: 5.04 }, 'out'],
    ['on the upper limit', { herm: 45.3, fan: 5.3 }, 'good'],
    ['above it', { herm: 45.3, fan: 5.301 }, 'out'],
    ['far out', { herm: 36, fan: 5.04 }, 'out'],
    ['FAN missing', { herm: 45.3 }, 'undecided'],
    ['FAN left out', { herm: 45.3, fan: '_' }, 'undecided'],
    ['HERM missing', { fan: 5.04 }, 'undecided'],
    ['OL', { herm: 'OL', fan: 5.04 }, 'undecided'],
    ['below zero', { herm: -45, fan: 5.04 }, 'undecided'],
    ['one out, one missing', { herm: 36 }, 'out'],
  ])('%s', (_, readings, expected) => {
    expect(outcome(readings)).toBe(expected);
  });
  test('out of limits uses nothing up', () => {
    expect(of(picked('first', { herm: 36, fan: 5.04 })).uses).toEqual([]);
    expect(of(picked('first', { herm: 45.3 })).uses).toEqual([]);
  });
  test('by the plain rule of the shop too', () => {
    const settings = { ...SETTINGS, rule: 'plain' as const };
    const part = (herm: number) => picked('first', { herm, fan: 5.04 });
    expect(of(part(42.3), {}, { ...TRUCK, settings }).outcome).toBe('good');
    expect(of(part(42.29), {}, { ...TRUCK, settings }).outcome).toBe('out');
  });
  test('what was not read is said', () => {
    const judged = of(picked('first', { herm: 'OL', fan: '_' }));
    expect(judged.findings.slice(1)).toMatchObject([
      { reading: 'OL', word: 'no verdict', text: 'HERM reads OL. That is no value: look at leads and range first.' },
      { reading: 'no reading', word: 'not read', text: 'FAN was not read.' },
    ]);
  });
  test('a part with one section needs no FAN', () => {
    const single = { old: labelled('45') };
    expect(of(picked('second', { herm: 45.3, fan: 4.1, hf: 1 }), single).outcome).toBe('no-choice');
    const judged = of(picked('first', { herm: 45.3, fan: 4.1, hf: 1 }), single);
    expect([judged.outcome, ...words(judged)]).toEqual(['good', 'New part: exact', 'HERM: pass']);
  });
  test('the habit is shown and does not decide', () => {
    const judged = of(picked('first', { herm: 42, fan: 5.04 }));
    expect(text(judged, 'HERM')).toContain('habit (40.50–49.50 µF) would keep it. The label decides.');
  });
  test('the try before of the same part is beside it, that of another part is not', () => {
    const part = picked('first', good);
    const before = { herm: 42, fan: 5.2 };
    expect(text(of(part, { earlier: picked('first', before) }), 'HERM')).toContain(
      'The try before read 42 µF, outside.',
    );
    expect(text(of(part, { earlier: picked('first', before) }), 'FAN')).toContain(
      'The try before read 5.2 µF, inside.',
    );
    expect(text(of(part, { earlier: picked('second', before) }), 'HERM')).not.toContain('before');
    expect(text(of(part), 'HERM')).not.toContain('before');
  });
});

describe('leads', () => {
  const leads = (readings: Line, more = {}, force = TRUCK) => {
    const judged = of(picked('first', readings), more, force);
    return [judged.outcome, ...words(judged).slice(1), text(judged, 'Leads')];
  };
  test('HERM and FAN exchanged', () => {
    expect(leads({ herm: 5.04, fan: 45.3 })).toEqual([
      ...['out', 'HERM: not judged', 'FAN: not judged', 'Leads: exchanged'],
      'HERM reads like FAN and FAN like HERM. The leads look exchanged: read both again.',
    ]);
    const judged = of(picked('first', { herm: 5.04, fan: 45.3 }));
    expect(judged.findings[1]).toMatchObject({
      ...{ reading: '5.04\u2009µF', text: 'HERM reads 5.04\u2009µF. It is not judged yet.' },
    });
    expect(judged.findings[3]).toMatchObject({ reading: '–', source: null });
  });
  test('HERM–FAN fits, or contradicts', () => {
    expect(leads({ ...good, hf: 4.53 })).toEqual([
      ...['good', 'HERM: pass', 'FAN: pass', 'Leads: fits'],
      'HERM and FAN in series give 4.535 µF, HERM–FAN reads 4.53 µF. The three fit within the doubt.',
    ]);
    expect(leads({ ...good, hf: 5.04 })).toEqual([
      ...['out', 'HERM: not judged', 'FAN: not judged', 'Leads: contradicts'],
      'HERM and FAN in series give 4.535 µF, HERM–FAN reads 5.04 µF. The three contradict each other: read all again.',
    ]);
    expect(of(picked('first', { ...good, hf: 4.53 })).findings[3]).toMatchObject({
      ...{ reading: '4.53\u2009µF', source: '1/x + 1/y = 1/z, physics' },
    });
  });
  test('80+5: a FAN of 4.71 lies inside the label and may be HERM–FAN', () => {
    const force = on(stock('80+5 440'));
    const wide = { old: labelled('80+5') };
    expect(leads({ herm: 80.1, fan: 4.71 }, wide, force)).toEqual([
      ...['undecided', 'HERM: pass', 'FAN: conditional pass', 'Leads: ask'],
      'With its lead on HERM instead of C, a good FAN section reads 4.44–4.97 µF. Read HERM–FAN as well.',
    ]);
    expect(leads({ herm: 80.1, fan: 4.71, hf: 4.45 }, wide, force)[0]).toBe('good');
    expect(leads({ herm: 80.1, fan: 4.71, hf: 4.71 }, wide, force)[0]).toBe('out');
    expect(leads({ herm: 80.1, fan: 4.98 }, wide, force)).toEqual(['good', 'HERM: pass', 'FAN: pass', undefined]);
    expect(of(picked('first', { herm: 80.1, fan: 4.71 }), wide, force).findings[3]?.reading).toBe('HERM–FAN not read');
  });
  test('a coarse meter does not ask about a sound part', () => {
    expect(leads(good, {}, { ...TRUCK, meter: ASSUMED })[0]).toBe('good');
  });
});

describe('case', () => {
  const at = (value: number | string) => of(picked('first', good, parts('MΩ', { case: value })));
  test.each([
    ['OL', 'good', 'clear', 'OL to the case: no leak.'],
    [20.01, 'good', 'clear', '20.01 MΩ to the case: no leak.'],
    [20, 'out', 'between', '20 MΩ to the case is not above 20 MΩ. Wipe it, fingers off the probes, read again.'],
    [1, 'out', 'between', '1 MΩ to the case is not above 20 MΩ. Wipe it, fingers off the probes, read again.'],
    [0.99, 'out', 'leak', '0.99 MΩ to the case is below 1 MΩ. Leave this part out.'],
  ])('%s: %s', (value, outcome, word, said) => {
    const judged = at(value);
    expect([judged.outcome, judged.findings[3]?.name, judged.findings[3]?.word]).toEqual([outcome, 'Case', word]);
    expect(text(judged, 'Case')).toBe(said);
    expect(judged.findings[3]).toMatchObject({ limits: 'above 20\u2009MΩ, or OL', source: 'set for this test' });
    expect(plain(judged.findings[3]?.reading)).toBe(value === 'OL' ? 'OL' : `${value} MΩ`);
  });
  test('left out, it is not asked for', () => {
    expect(at('_')).toMatchObject({ outcome: 'good' });
    expect(at('_').findings).toHaveLength(3);
  });
});

describe('undecided', () => {
  test('nothing picked, or no rating', () => {
    for (const part of [undefined, uF(good), picked('toString', good)]) {
      const judged = of(part);
      expect([judged.outcome, judged.uses, ...words(judged)]).toEqual([
        ...['undecided', [], 'New part: missing', 'Asked for: asked for'],
      ]);
      expect(judged.findings[0]).toMatchObject({ reading: 'not picked', text: 'Nobody said which part was taken.' });
    }
    expect(run('new-part', { part: picked('first', good) }, TRUCK)).toMatchObject({
      ...{ outcome: 'undecided', findings: [{ name: 'Asked for', reading: 'not known' }] },
    });
  });
});
