/** What stands beside the part: the diagram, the unit's record, the contacts under load. */
import { describe, expect, test } from 'vitest';
import { FORCE, labelled, parts, recorded } from './fixture.ts';
import { run } from './run.ts';

const plain = (text: string | null | undefined) => text?.replaceAll('\u2009', ' ');

describe('the part against the diagram', () => {
  const range = { low: '189', high: '227' };
  const NOT = 'The part in the unit is not what the diagram asks for.';
  const SAME = 'The part in the unit is what the diagram asks for.';
  test.each([
    ['alike', labelled('45+5'), labelled('45+5'), 'same', SAME],
    ['written otherwise', labelled('45.0+5'), labelled('45+5.00'), 'same', SAME],
    ['higher volts', labelled('45+5'), labelled('45+5', { volts: '370' }), 'same', SAME],
    ['no volts on the diagram', labelled('45+5'), labelled('45+5', { volts: null }), 'same', SAME],
    ['no volts on the part', labelled('45+5', { volts: null }), labelled('45+5'), 'same', SAME],
    ['another tolerance', labelled('45+5', { below: '5' }), labelled('45+5'), 'same', SAME],
    ['single and alike', labelled('45'), labelled('45'), 'same', SAME],
    ['start parts alike', labelled('227', { range }), labelled('227', { range }), 'same', SAME],
    ['HERM', labelled('45+5'), labelled('40+5'), 'differs', `HERM is 45 µF, the diagram asks for 40 µF. ${NOT}`],
    ['FAN', labelled('45+5'), labelled('45+7.5'), 'differs', `FAN is 5 µF, the diagram asks for 7.5 µF. ${NOT}`],
    [
      ...['no FAN', labelled('45'), labelled('45+5'), 'differs'],
      `The part has no FAN section, the diagram asks for 5 µF. ${NOT}`,
    ] as const,
    [
      ...['a FAN too many', labelled('45+5'), labelled('45'), 'differs'],
      `The part has a FAN section of 5 µF, the diagram shows none. ${NOT}`,
    ] as const,
    [
      ...['lower volts', labelled('45+5', { volts: '439.99' }), labelled('45+5'), 'differs'],
      `The part is for 439.99 V, the diagram asks for 440 V. ${NOT}`,
    ] as const,
    [
      ...['all at once', labelled('50+10', { volts: '370' }), labelled('45+5'), 'differs'],
      `HERM is 50 µF, the diagram asks for 45 µF. FAN is 10 µF, the diagram asks for 5 µF. The part is for 370 V, the diagram asks for 440 V. ${NOT}`,
    ] as const,
    [
      ...['a start part', labelled('227', { range }), labelled('227'), 'differs'],
      `The part is 189–227 µF, the diagram asks for 227 µF. ${NOT}`,
    ] as const,
    [
      ...['a start part asked for', labelled('227'), labelled('227', { range }), 'differs'],
      `The part is 227 µF, the diagram asks for 189–227 µF. ${NOT}`,
    ] as const,
    [
      ...['start parts, lower volts', labelled('227', { range, volts: '250' }), labelled('227', { range }), 'differs'],
      `The part is for 250 V, the diagram asks for 440 V. ${NOT}`,
    ] as const,
  ])('%s', (_, label, diagram, outcome, said) => {
    const judged = run('diagram', { label, diagram });
    expect(judged.outcome).toBe(outcome);
    expect(judged.findings).toHaveLength(1);
    expect(judged.findings[0]).toMatchObject({ name: 'Diagram', word: outcome, source: 'the wiring diagram' });
    expect(plain(judged.findings[0]?.text)).toBe(said);
  });
  test('both prints are beside it', () => {
    const line = run('diagram', { label: labelled('45+5'), diagram: labelled('40', { volts: '370' }) }).findings[0];
    expect([plain(line?.reading), plain(line?.limits)]).toEqual(['45+5 µF 440 V', '40 µF 370 V']);
  });
  test.each([
    [{ label: labelled('45+5') }, 'The print on the diagram is not known. The two are not compared.', '45+5 µF 440 V'],
    [{ diagram: labelled('45+5') }, 'The print on the part is not known. The two are not compared.', 'not known'],
    [{}, 'The print on the part is not known. The two are not compared.', 'not known'],
  ])('one of them unknown', (given, said, reading) => {
    const judged = run('diagram', given);
    expect(judged.outcome).toBe('undecided');
    expect(judged.findings).toMatchObject([{ word: 'undecided', text: said }]);
    expect(plain(judged.findings[0]?.reading)).toBe(reading);
    expect(plain(judged.findings[0]?.limits) ?? null).toBe('diagram' in given ? '45+5 µF 440 V' : null);
  });
});

describe('the unit’s record', () => {
  const of = (...history: Parameters<typeof recorded>) =>
    run('history', {}, { ...FORCE, equipment: recorded(...history) });
  const lines = (judged: ReturnType<typeof of>) => judged.findings.map((f) => plain(f.text));
  const cap = { item: 'Run capacitor 45+5' };
  test('nothing on record', () => {
    for (const judged of [run('history', {}), of()]) {
      expect(judged.outcome).toBe('none');
      expect(judged.findings).toMatchObject([
        { name: 'History', reading: 'none', word: 'none', text: 'Nothing is on record for this unit.' },
      ]);
    }
  });
  test('a second one in a season', () => {
    const judged = of({ ...cap, herm: '45.3', fan: '5.04' });
    expect(judged.outcome).toBe('season');
    expect(lines(judged)).toEqual([
      'Run capacitor 45+5 was fitted 2026-06-03, 41 days before. Another one is the second in a season. A senior looks for what kills it.',
      'Last read HERM 45.3 µF, FAN 5.04 µF on 2026-06-03, 41 days before.',
    ]);
    expect(judged.findings[0]).toMatchObject({
      ...{ name: 'Last fitted', reading: 'fitted 2026-06-03, 41 days before', word: 'second in a season' },
      ...{ limits: 'a season is 180\u2009days', source: 'set for this test' },
    });
    expect(judged.findings[1]).toMatchObject({
      ...{ name: 'Last read', reading: 'HERM 45.3\u2009µF, FAN 5.04\u2009µF', word: 'earlier' },
      source: 'the unit’s record',
    });
  });
  test.each([
    ['2026-01-15T23:59:59.999Z', 'season', '180 days before'],
    ['2026-01-14T23:59:59.999Z', 'earlier', '181 days before'],
    ['2026-07-14T00:00:00.000Z', 'season', 'the same day'],
    ['2026-07-15T00:00:00.000Z', 'season', 'the same day'],
    ['2026-07-13T23:59:59.999Z', 'season', 'the day before'],
    ['2026-07-12T23:59:59.999Z', 'season', '2 days before'],
  ])('fitted %s: %s', (at, outcome, ago) => {
    const judged = of({ ...cap, at });
    expect(judged.outcome).toBe(outcome);
    expect(judged.findings[0]?.reading).toBe(`fitted ${at.slice(0, 10)}, ${ago}`);
    const so =
      outcome === 'season'
        ? 'Another one is the second in a season. A senior looks for what kills it.'
        : 'That is longer than a season.';
    expect(lines(judged)).toEqual([`Run capacitor 45+5 was fitted ${at.slice(0, 10)}, ${ago}. ${so}`]);
    expect(judged.findings[0]?.word).toBe(outcome === 'season' ? 'second in a season' : 'earlier');
  });
  test('one of the indoor unit says nothing of the outdoor unit’s, nor the other way round', () => {
    const indoor = { ...cap, cabinet: 'indoor' };
    expect(of(indoor).outcome).toBe('none');
    const force = { ...FORCE, cabinet: 'indoor' };
    expect(run('history', {}, { ...force, equipment: recorded(indoor, { item: 'Contactor' }) }).outcome).toBe('season');
    expect(run('history', {}, { ...force, equipment: recorded(cap) }).outcome).toBe('none');
  });
  test('the newest counts, fitted and read', () => {
    const judged = of(
      { ...cap, at: '2024-06-01T00:00:00.000Z' },
      { ...cap, at: '2025-06-01T00:00:00.000Z' },
      { what: 'read', at: '2025-08-01T00:00:00.000Z', herm: '44.1', fan: '4.98' },
      { what: 'read', at: '2026-05-01T00:00:00.000Z', herm: '43.9', fan: null },
      { what: 'read', at: '2026-05-02T00:00:00.000Z', item: 'Filter' },
    );
    expect(judged.outcome).toBe('earlier');
    expect(lines(judged)).toEqual([
      'Run capacitor 45+5 was fitted 2025-06-01, 408 days before. That is longer than a season.',
      'Last read HERM 43.9 µF on 2026-05-01, 74 days before.',
    ]);
    expect(lines(of({ what: 'read', fan: '4.98' }))).toEqual(['Last read FAN 4.98 µF on 2026-06-03, 41 days before.']);
  });
  test.each([
    ['Dual 45+5 µF 440 V', 'season'],
    ['Dual 45+5 μF', 'season'],
    ['Dual 45+5 uF', 'season'],
    ['Dual 45+5 MFD', 'season'],
    ['Capacitor', 'season'],
    ['Contactor 30 A', 'earlier'],
    ['Dual 45+5 ufo', 'earlier'],
    ['Start capacitor 189-227 MFD', 'earlier'],
    ['Restarting kit, MFD', 'season'],
  ])('%s fitted: %s', (item, outcome) => {
    expect(of({ item }).outcome).toBe(outcome);
  });
  test('µF that were read at fitting say that it was a capacitor; a reading alone fits nothing', () => {
    expect(of({ item: 'Part 7', herm: '45.2' }).outcome).toBe('season');
    expect(of({ item: 'Start kit', herm: '203' }).outcome).toBe('earlier');
    expect(of({ ...cap, what: 'read', herm: '45.2' }).outcome).toBe('earlier');
  });
  test('something else on record is said', () => {
    const judged = of({ item: 'Filter', at: '2026-01-01T00:00:00.000Z' }, { item: 'Contactor' });
    expect(judged.findings).toMatchObject([
      { name: 'History', reading: 'fitted 2026-06-03, 41 days before', word: 'earlier', source: 'the unit’s record' },
    ]);
    expect(lines(judged)).toEqual(['Contactor was fitted 2026-06-03, 41 days before. No run capacitor is on record.']);
  });
});

describe('contacts under load', () => {
  const of = (
    poles: Record<string, number | string>,
    amps: Record<string, number | string> = { comp: 13.1, fan: 0.9 },
  ) => run('contact-drop', { poles: parts('V', poles), figures: parts('A', amps) });
  test.each([
    [{ p1: 0.1, p2: 0.2 }, 'good'],
    [{ p1: 0.5, p2: -0.5 }, 'good'],
    [{ p1: 0.51, p2: 0.1 }, 'look'],
    [{ p1: 0.1, p2: -0.51 }, 'look'],
    [{ p1: 1, p2: 0.1 }, 'look'],
    [{ p1: 0.1, p2: 1.01 }, 'replace'],
    [{ p1: 0.1, p2: 0.1, p3: 0.51 }, 'look'],
    [{ p1: 0.1, p2: 0.1, p3: 0.5 }, 'good'],
    [{ p1: 0.1, p2: 0.1, p3: '_' }, 'good'],
    [{ p1: 0.1, p2: 0.1, p3: 'OL' }, 'undecided'],
    [{ p1: 0.1 }, 'undecided'],
    [{ p2: 0.1 }, 'undecided'],
    [{ p1: 0.6, p2: '_' }, 'undecided'],
    [{ p1: 0.6, p2: 1.2 }, 'replace'],
    [{ p1: 1.2, p2: 'OL' }, 'replace'],
    [{ p1: 19.99, p2: 0.1 }, 'replace'],
    [{ p1: 20, p2: 0.1 }, 'open'],
    [{ p1: 120, p2: -120 }, 'open'],
    [{}, 'undecided'],
  ])('%o: %s', (poles, outcome) => {
    expect(of(poles).outcome).toBe(outcome);
  });
  test.each([
    [{ p1: 2.4, p2: 0.1 }, { comp: 0, fan: 0 }, 'no-load'],
    [{ p1: 2.4, p2: 0.1 }, { comp: 0, fan: 0.49 }, 'no-load'],
    [{ p1: 2.4, p2: 0.1 }, { comp: 0, fan: 0.5 }, 'replace'],
    [{ p1: 2.4, p2: 0.1 }, { comp: 0, comp2: 0, comp3: 13, fan: '_' }, 'replace'],
    [{ p1: 2.4, p2: 0.1 }, { comp: 13.1 }, 'replace'],
    [{ p1: 2.4, p2: 0.1 }, { comp: 0, comp2: 13 }, 'replace'],
    [{ p1: 2.4, p2: 0.1 }, {}, 'no-load'],
    [{ p1: 120, p2: 120 }, { comp: 0, fan: 0 }, 'open'],
    [{ p1: 0.1, p2: 0.1 }, { comp: 0, fan: 0 }, 'no-load'],
  ])('%o with %o: %s', (poles, amps, outcome) => {
    const judged = of(poles, amps);
    expect(judged.outcome).toBe(outcome);
    if (outcome !== 'replace') expect(judged.findings.map((f) => f.text).join(' ')).not.toMatch(/Replace|closed,/);
  });
  test('each pole is said with its figure and its limit', () => {
    const { findings } = of({ p1: 0.2, p2: 0.7, p3: 1.4 });
    expect(findings.map((f) => [f.name, f.word, plain(f.reading), plain(f.limits), f.source])).toEqual([
      ['First pole', 'good', '0.2 V', '0.5 V or less', 'set for this test'],
      ['Second pole', 'look', '0.7 V', '0.5 V or less', 'set for this test'],
      ['Third pole', 'replace', '1.4 V', '0.5 V or less', 'set for this test'],
    ]);
    expect(findings.map((f) => plain(f.text))).toEqual([
      'First pole drops 0.2 V closed, 0.5 V or less.',
      'Second pole drops 0.7 V closed, more than 0.5 V. Dead, look at contact and terminals.',
      'Third pole drops 1.4 V closed, more than 1 V. Replace the contactor; look at its terminals.',
    ]);
    expect(of({ p1: 0.2 }).findings[1]).toMatchObject({
      ...{ name: 'Second pole', reading: 'no reading', word: 'missing', source: null },
      text: 'Second pole was not read under load.',
    });
    expect(of({ p1: 0.2 }).findings).toHaveLength(2);
  });
});
