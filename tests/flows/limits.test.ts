/**
 * Every limit of the manual as a reader finds it: value, unit and where it comes from. The stored page is what was
 * reviewed; a changed figure or word of a source shows in it. Which of them somebody published stands in tests/published.
 */
import { expect, test } from 'vitest';
import type { Limit } from '../../engine/vocabulary.ts';
import { LIMITS } from '../../flows/limits.ts';

const groups: [string, Readonly<Record<string, Limit>>][] = Object.entries(LIMITS);

test('stand as on the stored page', async () => {
  const page = groups.map(([group, limits]) =>
    [group, ...Object.entries(limits).map(([name, l]) => `  ${name}: ${l.value} ${l.unit} | ${l.source}`)].join('\n'),
  );
  await expect(`${page.join('\n\n')}\n`).toMatchFileSnapshot('limits.txt');
});

test('have nothing but a figure, a unit and a source', () => {
  for (const [group, limits] of groups) {
    for (const [name, limit] of Object.entries(limits)) {
      const at = `${group}.${name}`;
      expect(Object.keys(limit), at).toEqual(['value', 'unit', 'source']);
      expect(limit.value, at).toMatch(/^-?\d+(\.\d+)?$/);
      expect(limit.unit, at).toMatch(/\S/);
      expect(limit.source, at).toMatch(/\S/);
    }
  }
});
