import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { fingerprint } from '../../engine/fingerprint.ts';
import { SHELF } from '../../flows/index.ts';

const lock: Record<string, string> = JSON.parse(readFileSync('flows/flows.lock.json', 'utf8'));

test.each(SHELF.map((m) => [`${m.id}@${m.version}`, m] as const))('%s is as it was published', (name, manual) => {
  // A changed page needs a new version: jobs under way finish on theirs. Only then is its line added here.
  expect({ [name]: fingerprint(manual) }).toEqual({ [name]: lock[name] });
});

test('a page that changes silently shows', () => {
  const [manual] = SHELF;
  const changed = { ...manual, endings: { ...manual.endings, done: { title: 'Done', says: 'Done.' } } };
  expect(fingerprint(changed)).not.toBe(lock[`${manual.id}@${manual.version}`]);
});
