/** What the truck offers for a part: choices by number, refusals with their reason, and what was asked for. */
import { describe, expect, test } from 'vitest';
import { Exact } from '../../engine/calc/exact.ts';
import { sayReason } from '../../engine/judgements/part/substitute-words.ts';
import { wantedOf } from '../../engine/judgements/part/wanted.ts';
import type { Parts, StockItem } from '../../engine/schema.ts';
import { FORCE, LIMITS, labelled, stock, truck } from './fixture.ts';
import { run } from './run.ts';

const of = (given: { old?: Parts; diagram?: Parts }, ...items: StockItem[]) =>
  run('substitutes', given, { ...FORCE, truck: truck(...items) });
/** Thin spaces as plain ones, to be read. */
const plain = (text: string | null | undefined) => text?.replaceAll('\u2009', ' ');
const lines = (judged: ReturnType<typeof of>) => judged.findings.map((f) => `${f.name} | ${f.word} | ${plain(f.text)}`);
const range = (low: string, high: string) => ({ low, high });

describe('a worked call: 40+5 µF ±6 % 370 V', () => {
  const old = labelled('40+5', { volts: '370' });
  const items = [stock('45+5 440'), stock('40+5 440', 2), stock('35+5 440'), stock('40 440', 3), stock('5 440', 4)];
  test('the exact dual, then two singles; never the next size up or down', () => {
    const judged = of({ old }, ...items);
    expect(judged.outcome).toBe('some');
    expect(lines(judged)).toEqual([
      '1 | exact | Part 40+5 440: 40+5 µF 440 V, 2 left. HERM gets 40 µF, 0.0 % off the rated 40 µF. FAN gets 5 µF, 0.0 % off the rated 5 µF. One part.',
      '2 | exact | Part 40 440: 40 µF 440 V, 3 left. Part 5 440: 5 µF 440 V, 4 left. HERM gets 40 µF, 0.0 % off the rated 40 µF. FAN gets 5 µF, 0.0 % off the rated 5 µF. Two parts with a jumper between both C.',
      'Part 45+5 440 | refused | 45+5 µF 440 V: HERM +12.5 %, above the label’s limits.',
      'Part 35+5 440 | refused | 35+5 µF 440 V: HERM −12.5 %, below the label’s limits.',
      'Asked for | found | By the print on the old part: 40+5 µF 370 V, same or higher volts.',
    ]);
    expect(judged.findings[0]).toMatchObject({
      reading: '40+5\u2009µF 440\u2009V',
      limits: '37.60–42.40\u2009µF, 4.70–5.30\u2009µF, 370\u2009V or more',
      doubt: null,
      source: 'same µF within the label, same or higher volts: common practice, no single source',
    });
    expect(judged.findings[1]?.reading).toBe('40\u2009µF 440\u2009V, 5\u2009µF 440\u2009V');
    expect(judged.findings[2]).toMatchObject({
      ...{ reading: '45+5\u2009µF 440\u2009V', limits: null },
      source: 'same µF within the label, same or higher volts: common practice, no single source',
    });
    expect(judged.findings[4]).toMatchObject({
      ...{ reading: '40+5\u2009µF 370\u2009V', source: 'the print on the old part' },
      limits: '37.60–42.40\u2009µF, 4.70–5.30\u2009µF, 370\u2009V or more',
    });
  });
  test('where the diagram is known, its rating governs', () => {
    const judged = of({ old, diagram: labelled('35+5') }, ...items);
    expect(lines(judged)[0]).toMatch(/^1 \| exact \| Part 35\+5 440/);
    expect(lines(judged).at(-1)).toBe(
      'Asked for | found | By the wiring diagram: 35+5 µF 440 V, same or higher volts.',
    );
    expect(judged.findings.at(-1)?.source).toBe('the wiring diagram');
  });
});

describe('what the list lacks', () => {
  test('a section of nothing is no section: such a part is refused, and the rest is looked at', () => {
    const judged = of({ old: labelled('45+5') }, stock('45+0 440'), stock('45+5 440'));
    expect(judged.outcome).toBe('some');
    expect(judged.findings.find((f) => f.name === 'Part 45+0 440')?.word).toBe('refused');
  });
  test('a start part may give its range alone; one whose µF is not of its range is not believed by the range', () => {
    const old = labelled('227', { range: range('189', '227') });
    const start = (...sections: string[]) =>
      stock('227 440', 1, { kind: 'start', sections, range: range('189', '227') });
    expect(of({ old }, start()).outcome).toBe('some');
    expect(of({ old }, start('300')).outcome).toBe('none');
  });
});

describe('volts', () => {
  const items = [stock('45+5 370'), stock('45+5 439.99'), stock('45+5 440')];
  const asked = (given: { old?: Parts; diagram?: Parts }) => plain(of(given, ...items).findings.at(-1)?.text);
  test('lower volts are refused with both figures', () => {
    const judged = of({ old: labelled('45+5') }, ...items);
    expect(lines(judged).slice(1, 3)).toEqual([
      'Part 45+5 370 | refused | 45+5 µF 370 V: voltage too low: 370 V, 440 V needed.',
      'Part 45+5 439.99 | refused | 45+5 µF 439.99 V: voltage too low: 439.99 V, 440 V needed.',
    ]);
  });
  test('where no print shows volts, the limit is asked for and said', () => {
    for (const volts of [null, '0', '-440']) {
      const judged = of({ old: labelled('45+5', { volts }) }, ...items);
      expect(judged.findings.at(-1)).toMatchObject({ source: 'set for this test' });
      expect(plain(judged.findings.at(-1)?.text)).toBe(
        'By the print on the old part: 45+5 µF 440 V, same or higher volts. No volts are printed, so 440 V is asked for.',
      );
    }
  });
  test('a diagram without volts takes those of the old part; with its own, those', () => {
    const diagram = labelled('45+5', { volts: null });
    expect(asked({ diagram, old: labelled('45+5', { volts: '370' }) })).toBe(
      'By the wiring diagram: 45+5 µF 370 V, same or higher volts.',
    );
    expect(asked({ diagram: labelled('45+5', { volts: '660' }), old: labelled('45+5') })).toContain('660 V');
    expect(asked({ diagram })).toContain('No volts are printed, so 440 V is asked for.');
  });
});

describe('how parts are joined', () => {
  const first = (print: string, ...items: StockItem[]) =>
    plain(of({ old: labelled(print) }, ...items).findings[0]?.text);
  test('two in parallel for a single', () => {
    const judged = of({ old: labelled('45') }, stock('25 440'), stock('19 440'));
    expect(plain(judged.findings[0]?.text)).toBe(
      'Part 19 440: 19 µF 440 V, 1 left. Part 25 440: 25 µF 440 V, 1 left. It gets 44 µF, −2.2 % off the rated 45 µF. Two in parallel: 25+19 make 44 µF.',
    );
    expect(judged.findings[0]).toMatchObject({
      ...{ word: 'within the label', reading: '19\u2009µF 440\u2009V, 25\u2009µF 440\u2009V' },
      limits: '42.30–47.70\u2009µF, 440\u2009V or more',
    });
  });
  test('two of one kind', () => {
    const judged = of({ old: labelled('50') }, stock('25 440', 2));
    expect(plain(judged.findings[0]?.text)).toBe(
      '2 × Part 25 440: 25 µF 440 V, 2 left. It gets 50 µF, 0.0 % off the rated 50 µF. Two in parallel: 25+25 make 50 µF.',
    );
    expect(judged.findings[0]?.reading).toBe('2 × 25\u2009µF 440\u2009V');
  });
  test('both sections of one part in parallel need no jumper', () => {
    expect(first('50', stock('45+5 440'))).toMatch(
      /It gets 50 µF, 0.0 % off the rated 50 µF. Two in parallel: 45\+5 make 50 µF.$/,
    );
  });
  test('three parts share C', () => {
    expect(first('45+5', stock('25 440'), stock('20 440'), stock('5 440'))).toMatch(
      /Two in parallel: 25\+20 make 45 µF. A jumper joins C of all parts.$/,
    );
  });
  test('a section left free, where nothing else does', () => {
    expect(first('45', stock('45+7.5 440'))).toMatch(
      /It gets 45 µF, 0.0 % off the rated 45 µF. One section stays free: insulate its terminal.$/,
    );
    expect(first('45+5', stock('45+7.5 440'), stock('5 440'))).toMatch(
      /Two parts with a jumper between both C. One section stays free: insulate its terminal.$/,
    );
  });
  test('three are offered; more are only counted', () => {
    const [three, four] = [
      ['45', '44', '46'],
      ['45', '44', '46', '43'],
    ].map((all) => of({ old: labelled('45') }, ...all.map((one) => stock(`${one} 440`))));
    expect(three?.findings.map((f) => f.name)).toEqual(['1', '2', '3', 'Asked for']);
    expect(four?.findings.map((f) => f.name)).toEqual(['1', '2', '3', 'Further ways', 'Asked for']);
    expect(four?.findings[3]).toMatchObject({
      ...{ reading: '1', word: 'not offered' },
      text: 'Further ways are admissible. None is more exact than these.',
    });
  });
});

describe('refusals', () => {
  const refused = (print: string, ...items: StockItem[]) => {
    const judged = of({ old: labelled(print) }, ...items);
    return lines(judged)
      .filter((line) => line.includes('| refused |'))
      .map((line) => line.split('| refused | ')[1]);
  };
  const start = { kind: 'start' as const, range: range('189', '227') };
  test('a start capacitor, one that has run out, one whose print is not on the list', () => {
    const items = [
      stock('227 440', 1, start),
      stock('45 440', 0),
      stock('46 440', 1, { volts: null }),
      stock('44 440', 1, { sections: [] }),
      stock('43 440', 1, { sections: ['0'] }),
    ];
    const judged = of({ old: labelled('45') }, ...items);
    expect(judged.outcome).toBe('none');
    expect(lines(judged).map((line) => line.split(' | ')[2])).toEqual([
      '189–227 µF 440 V: a start capacitor is no run capacitor.',
      '45 µF 440 V: none left.',
      '46 µF: its µF or its volts are not on the list.',
      'no µF 440 V: its µF or its volts are not on the list.',
      '0 µF 440 V: its µF or its volts are not on the list.',
      'By the print on the old part: 45 µF 440 V, same or higher volts. Nothing on this truck may take its place.',
    ]);
    expect(judged.findings.at(-1)?.word).toBe('none');
  });
  test('which section is out; a single alone; what is not needed', () => {
    expect(refused('45+5', stock('45+7.5 440'))).toEqual(['45+7.5 µF 440 V: FAN +50.0 %, above the label’s limits.']);
    expect(refused('45+5', stock('45 440'))).toEqual(['45 µF 440 V: nothing beside it makes up 5 µF.']);
    expect(refused('45', stock('50 440'))).toEqual(['50 µF 440 V: +11.1 %, above the label’s limits.']);
    expect(refused('45+5', stock('45+5 440'), stock('45 440'))).toEqual([
      '45 µF 440 V: it would take more parts, or leave a section free.',
    ]);
  });
  test('start parts by their range', () => {
    const old = labelled('227', { range: range('189', '227'), below: '16.7401', above: '0' });
    const judged = of(
      { old },
      stock('227 440', 1, start),
      stock('193 440', 1, { ...start, range: range('161', '193') }),
      stock('45 440'),
    );
    expect(lines(judged).map((line) => line.split(' | ')[2])).toEqual([
      'Part 227 440: 189–227 µF 440 V, 1 left. It gets 227 µF, 0.0 % off the rated 227 µF. One part.',
      '161–193 µF 440 V: its range 161–193 µF reaches outside the one that is asked for.',
      '45 µF 440 V: a run capacitor is no start capacitor.',
      'By the print on the old part: 189–227 µF 440 V, same or higher volts.',
    ]);
    expect(of({ old }, stock('227 440', 1, { ...start, sections: [] })).outcome).toBe('some');
  });
  test('protection and class are said where a print asks for them', () => {
    const rating = wantedOf(labelled('45'), undefined, LIMITS.substitutes.volts);
    if (!rating) throw new Error('no rating');
    expect(sayReason({ why: 'protection' }, rating)).toBe('less protection than is asked for');
    expect(sayReason({ why: 'class' }, rating)).toBe('a lower class than is asked for');
    const off = { microfarads: new Exact(45), wantedMicrofarads: new Exact(45), deviationPercent: new Exact(0) };
    expect(sayReason({ why: 'value', ...off }, rating)).toContain('below');
  });
});

describe('nothing to choose from', () => {
  test('no rating', () => {
    for (const given of [{}, { old: {}, diagram: {} }]) {
      const judged = of(given, stock('45+5 440'));
      expect(judged.outcome).toBe('undecided');
      expect(judged.findings).toMatchObject([
        {
          ...{ name: 'Asked for', reading: 'not known', word: 'undecided', limits: null },
          text: 'The rating is not known. No part can be chosen by guessing.',
        },
      ]);
    }
  });
  test('no truck on record, or none of its parts is a capacitor', () => {
    const old = labelled('45+5');
    const other = stock('45+5 440', 1, { kind: 'other' });
    for (const judged of [run('substitutes', { old }), of({ old }), of({ old }, other)]) {
      expect(judged.outcome).toBe('no-stock');
      expect(lines(judged)).toEqual([
        'Asked for | no stock | By the print on the old part: 45+5 µF 440 V, same or higher volts. No capacitor is on record for this truck.',
      ]);
    }
    expect(lines(of({ old }, other, stock('50 440'))).map((line) => line.split(' | ')[0])).toEqual([
      'Part 50 440',
      'Asked for',
    ]);
  });
  test('an id that stands twice on the list counts once', () => {
    const judged = of({ old: labelled('45+5') }, stock('45+5 440', 2), stock('45+5 440', 9));
    expect(judged.findings.map((f) => f.name)).toEqual(['1', 'Asked for']);
    expect(plain(judged.findings[0]?.text)).toContain('2 left');
  });
});
