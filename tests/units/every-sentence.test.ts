/** Nothing is shown in the other unit by a guess: every page and every judgement, as a person reads it. */
import { describe, expect, test } from 'vitest';
import { flatten } from '../../engine/flatten.ts';
import { judgements } from '../../engine/judgements/index.ts';
import type { Judgement, Limit } from '../../engine/judgements/judgement.ts';
import type { Finding, Units } from '../../engine/schema.ts';
import { besideText } from '../../engine/units/beside.ts';
import { findingIn } from '../../engine/units/shown.ts';
import { SHELF } from '../../flows/index.ts';
import { FORCE, LIMITS } from '../judgements/fixture.ts';

const METRIC: Units = { temperature: '°C', pressure: 'kPa' };
/** °F and psig without the other unit behind them. */
const ALONE = /(°F|psig)(?![\p{L}\d]| \([−\d][^)]*(?:°C|kPa gauge)\))/u;

function findingsOf(id: keyof typeof LIMITS): Finding[] {
  const j = judgements[id] as unknown as Judgement<string, string, string>;
  const limits = LIMITS[id] as Readonly<Record<string, Limit>>;
  return j.probe(limits).flatMap((given) => {
    const filled = Object.fromEntries(j.takes.map((name) => [name, given[name]]));
    return [...j.run(filled, limits, FORCE).findings];
  });
}
const cellsOf = ({ reading, limits, doubt, text, source }: Finding): string[] =>
  [reading, limits, doubt, text, source].filter((cell) => cell !== null);

/** Words of the pages that a person reads: everything but limits, whose unit stands in a member of its own. */
function wordsOf(value: unknown): string[] {
  if (typeof value === 'string') return [value];
  if (value === null || typeof value !== 'object' || 'unit' in value) return [];
  return Object.values(value).flatMap(wordsOf);
}
const places = SHELF.flatMap((manual) => [...flatten(manual).places.values()]);
const said = [...new Set([...places.map(({ step }) => step), ...SHELF.map(({ endings }) => endings)].flatMap(wordsOf))];

describe('with °C and kPa preferred', () => {
  test('every finding of every judgement has both units, and nothing else of it changes', () => {
    const findings = (Object.keys(judgements) as (keyof typeof LIMITS)[]).flatMap(findingsOf);
    const metric = findings.filter((f) => /°F|psig/.test(cellsOf(f).join(' ')));
    expect(metric.length).toBeGreaterThan(50);
    for (const finding of metric) {
      const shown = findingIn(finding, METRIC);
      for (const cell of cellsOf(shown)) expect(cell).not.toMatch(ALONE);
      const back = cellsOf(shown).map((cell) => cell.replace(/ \([^()]*(?:°C|kPa gauge)\)/g, ''));
      expect(back).toEqual(cellsOf(finding));
    }
  });

  test('every sentence of the manual has both units', () => {
    const named = said.filter((text) => /°F|psig/.test(text));
    expect(named.length).toBeGreaterThan(20);
    for (const text of named) expect(besideText(text, METRIC)).not.toMatch(ALONE);
  });

  test('a sentence that nobody entered stays as it is, rather than be shown wrong', () => {
    expect(besideText('It fell to 40 °F within the hour.', METRIC)).toBe('It fell to 40 °F within the hour.');
    expect('It fell to 40 °F within the hour.').toMatch(ALONE);
  });
});

describe('what is said is right', () => {
  // Worked by hand: a temperature is (°F − 32)/1.8, a difference °F/1.8, a pressure psi × 6.894757.
  test.each([
    ['The goods are at 46 °F, above 41 °F.', 'The goods are at 46 °F (7.8 °C), above 41 °F (5 °C).'],
    ['The box went from 52.4 °F to 38 °F.', 'The box went from 52.4 °F (11.3 °C) to 38 °F (3.3 °C).'],
    [
      'Saturation is 40.3 °F, the line 52 °F: 11.7 °F. It should be 8–12 °F.',
      'Saturation is 40.3 °F (4.6 °C), the line 52 °F (11.1 °C): 11.7 °F (6.5 °C). It should be 8–12 °F (4.4–6.7 °C).',
    ],
    [
      'Saturation is 40 °F, the line 40 °F: 40 °F.',
      'Saturation is 40 °F (4.4 °C), the line 40 °F (4.4 °C): 40 °F (22.2 °C).',
    ],
    [
      'The split is 19 °F, outside 14–18 °F: too little air over the coil.',
      'The split is 19 °F (10.6 °C), outside 14–18 °F (7.8–10 °C): too little air over the coil.',
    ],
    [
      'Indoors 96 °F at 65 % feels like 121 °F: danger.',
      'Indoors 96 °F (35.6 °C) at 65 % feels like 121 °F (49.4 °C): danger.',
    ],
    ['Set COOL, 5 °F below the room.', 'Set COOL, 5 °F (2.8 °C) below the room.'],
    ['14 to 23 °F at usual humidity', '14 to 23 °F (7.8 to 12.8 °C) at usual humidity'],
    ['large −4 °F, small 98 °F', 'large −4 °F (−20 °C), small 98 °F (36.7 °C)'],
    ['categories from 80, 90, 103, 125 °F', 'categories from 80, 90, 103, 125 °F (26.7, 32.2, 39.4, 51.7 °C)'],
    ['118 psig is at or above its critical point.', '118 psig (814 kPa gauge) is at or above its critical point.'],
  ])('%s', (text, both) => {
    const plain = (words: string): string => words.replaceAll('\u2009', ' ');
    expect(plain(besideText(text, METRIC))).toBe(both);
    // Shown twice it is not converted twice.
    expect(plain(besideText(besideText(text, METRIC), METRIC))).toBe(both);
  });

  test('°F and psig preferred: not one sign is another', () => {
    for (const text of said) {
      expect(besideText(text, { temperature: '°F', pressure: 'psig' })).toBe(text);
      expect(besideText(text, undefined)).toBe(text);
    }
  });
});
