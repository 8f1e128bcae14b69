/** Small questions that choose the pages of the part: how many, which print, whose windings. */
import { describe, expect, test } from 'vitest';
import { choice, labelled, parts } from './fixture.ts';
import { probed, run } from './run.ts';

const THIN = '\u2009';

describe('more capacitors than one', () => {
  const of = (count: number | string) => run('more', { look: parts('count', { count }) });
  test('its probe stands on the limit, past it and at nothing', () => {
    const nobody = 'undecided: no count';
    expect(probed('more')).toEqual(['no-more: 1', 'more: 2', 'no-more: 0', nobody, nobody]);
  });
  test.each([
    [2, 'more', '2', 'more than 1', 'Capacitors seen: 2, more than 1.'],
    [1, 'no-more', '1', 'not more than 1', 'Capacitors seen: 1, not more than 1.'],
    [0, 'no-more', '0', 'not more than 1', 'Capacitors seen: 0, not more than 1.'],
    [-1, 'undecided', 'no count', 'missing', 'Nobody counted the capacitors.'],
    ['_', 'undecided', 'no count', 'missing', 'Nobody counted the capacitors.'],
  ])('%s seen: %s', (count, outcome, reading, word, text) => {
    const judged = of(count);
    expect(judged.outcome).toBe(outcome);
    const source = 'set for this test';
    const line = { name: 'Capacitors', reading, limits: 'more than 1', doubt: null, word, text, source };
    expect(judged.findings).toEqual([line]);
  });
});

describe('sections on the print', () => {
  const range = { low: '189', high: '227' };
  const dual = `The print shows HERM 45${THIN}µF and FAN 5${THIN}µF: two sections that share C.`;
  const start = `The print shows a range up to 227${THIN}µF. That is a start capacitor.`;
  test.each([
    [labelled('45+5'), 'dual', `45${THIN}µF, 5${THIN}µF`, 'dual', dual],
    [labelled('35'), 'single', `35${THIN}µF`, 'single', `The print shows 35${THIN}µF: one section.`],
    [labelled('227', { range }), 'undecided', `227${THIN}µF`, 'start', start],
    [parts('µF', { print: 45 }), 'undecided', 'not known', 'missing', 'No print is known.'],
    [undefined, 'undecided', 'not known', 'missing', 'No print is known.'],
  ])('%o', (label, outcome, reading, word, text) => {
    const judged = run('print-sections', label ? { label } : {});
    expect(judged.outcome).toBe(outcome);
    const line = { name: 'Sections', reading, limits: null, doubt: null, word, text, source: null };
    expect(judged.findings).toEqual([line]);
  });
});

describe('motors to measure', () => {
  const compressor = 'The fan runs and the compressor does not. The compressor’s windings are measured.';
  const fan = 'The compressor runs and the fan does not. The fan’s windings are measured.';
  const both = 'Neither motor is cleared by what was seen. The windings of both are measured.';
  test.each([
    [['d'], 'compressor', 'fan runs', compressor],
    [['c'], 'fan', 'compressor runs', fan],
    [['b'], 'both', 'neither', both],
    [['toString'], 'both', 'neither', both],
    [['c', 'd'], 'both', 'neither', both],
    [['d', 'h'], 'both', 'neither', both],
    [['d', 'd'], 'compressor', 'fan runs', compressor],
    [[], 'undecided', 'not seen', 'Nobody said what the unit does.'],
  ])('%o: %s', (seen, outcome, reading, text) => {
    const judged = run('motors', { seen: choice('choice', ...seen) });
    expect(judged.outcome).toBe(outcome);
    const source = outcome === 'undecided' ? null : 'common practice, no single source';
    const line = { name: 'Motors to measure', reading, limits: null, doubt: null, word: outcome, text, source };
    expect(judged.findings).toEqual([line]);
  });
  test('nobody was asked', () => {
    expect(run('motors', {}).outcome).toBe('undecided');
  });
});
