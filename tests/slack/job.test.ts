/** A call in its thread: by buttons, by forms, by typing; what old buttons, others' taps, edits and repeats do. */
import { afterAll, beforeAll, expect, test } from 'vitest';
import { wordsOf } from './fake/person.ts';
import { CREW } from './fake/platform.ts';
import { Workspace } from './workspace.ts';

let w: Workspace;
beforeAll(async () => {
  w = await Workspace.open();
});
afterAll(() => w.close());

test('a call has one thread in the crew’s channel: its head with the isolation, and the first question', async () => {
  const job = await w.call();
  const head = await w.head(job);
  expect(head.channel).toBe(CREW);
  expect(wordsOf(head)).toContain('Fan runs, warm air');
  expect(wordsOf(head)).toContain('[Outdoor unit: *ENERGIZED OR NOT PROVED*]');
  const asked = await w.asked(job);
  expect(wordsOf(asked)).toContain('What does the unit do?');
  expect(w.slack.refused).toEqual([]);
});
