import { describe, expect, test } from 'vitest';
import { committed } from './source.ts';

/** Everything that stands at the top. A new name here is a decision, not an accident. */
const TOP = [
  ...['.ci', '.config', '.gitignore', 'DEVELOPERS.md', 'README.md', 'bot', 'engine', 'flows'],
  ...['package-lock.json', 'package.json', 'seeds', 'tests', 'tsconfig.json', 'web-chat'],
];
const topOf = (paths: readonly string[]): string[] =>
  [...new Set(paths.map((path) => path.split('/')[0] ?? path))].sort();

describe('top level', () => {
  test('holds what it is meant to hold and nothing else', () => {
    expect(topOf(committed())).toEqual([...TOP].sort());
  });

  test('a folder more or a file less shows', () => {
    const whole = TOP.map((name) => (name.includes('.') ? name : `${name}/a.ts`));
    expect(topOf(whole)).toEqual([...TOP].sort());
    expect(topOf([...whole, 'notes/today.md'])).not.toEqual([...TOP].sort());
    expect(topOf(whole.slice(1))).not.toEqual([...TOP].sort());
  });
});
