/** Sentences as technicians, dispatchers and callers type them, in corpus/: each is read as danger, as one tap, or as nothing. */
import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { readHazard } from '../../../engine/understand/index.ts';

interface Sentence {
  readonly text: string;
  readonly expected: { level: 'now' | 'maybe'; hazard: string } | null;
}

const LEVELS = ['now', 'maybe', 'nothing'] as const;
const sentencesOf = (level: (typeof LEVELS)[number]): Sentence[] => {
  let hazard = '';
  return readFileSync(new URL(`../corpus/${level}.txt`, import.meta.url), 'utf8')
    .split('\n')
    .flatMap((line): Sentence[] => {
      const heading = /^\[(\w+)\]$/.exec(line)?.[1];
      if (heading !== undefined) hazard = heading;
      if (line === '' || line.startsWith('#') || heading !== undefined) return [];
      return [{ text: line, expected: level === 'nothing' ? null : { level, hazard } }];
    });
};
const corpus = LEVELS.map((level) => ({ level, sentences: sentencesOf(level) }));
const all = corpus.flatMap(({ sentences }) => sentences);

test.each(corpus)('$level: none is read otherwise', ({ sentences }) => {
  const wrong = sentences.flatMap(({ text, expected }) => {
    const read = readHazard(text, []);
    const same = read?.level === expected?.level && read?.hazard === expected?.hazard;
    return same ? [] : [`${text} → ${read?.level ?? 'nothing'} ${read?.hazard ?? ''}`];
  });
  expect(wrong).toEqual([]);
});

test('it is a corpus: at least 400 sentences, none twice, both ways', () => {
  expect(all.length).toBeGreaterThanOrEqual(400);
  expect(new Set(all.map(({ text }) => text.toLowerCase())).size).toBe(all.length);
  for (const { sentences } of corpus) expect(sentences.length).toBeGreaterThan(100);
});

test('capitals, full stops and spaces change nothing', () => {
  for (const { text, expected } of all) {
    expect(readHazard(text.toUpperCase(), []), text).toEqual(expected);
    expect(readHazard(`  ${text.replaceAll(' ', '  ')} `, []), text).toEqual(expected);
  }
});

test('danger in a second sentence is danger, whatever the first says', () => {
  for (const { text } of all) expect(readHazard(`${text}. He got shocked.`, [])?.level, text).toBe('now');
});

test('what follows a sentence of danger takes nothing from it', () => {
  for (const { text, expected } of all.filter((one) => one.expected?.level === 'now'))
    for (const after of ['. No smoke.', '; yesterday it was fine', '\nany idea?'])
      expect(readHazard(text + after, [])?.level, text + after).toBe(expected?.level);
});
