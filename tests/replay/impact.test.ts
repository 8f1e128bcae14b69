/** What pages as they are now would have said of finished jobs. */
import { describe, expect, test } from 'vitest';
import { compile } from '../../engine/compile.ts';
import { impact, isFinished } from '../../engine/report/impact.ts';
import type { Entry } from '../../engine/schema.ts';
import type { Manual } from '../../engine/vocabulary.ts';
import { machine, TO_READINGS } from '../people.ts';
import { opened } from '../report/forge.ts';
import { record } from './recorder.ts';
import { FIRST, SECOND } from './second.ts';

const entriesOf = async (name: string): Promise<Entry[]> => opened(await record(name, null)).entries;
const finished = await entriesOf('weak-fan-section-replaced-and-proven');
const later = compile(SECOND);

describe('given the pages it was recorded on', () => {
  test('no verdict would change', () => {
    expect(impact(machine, finished)).toEqual({ changes: [], dropped: 0, ends: expect.any(String) });
  });
  test('a job is finished at an ending, and not before', () => {
    expect(isFinished(machine, finished)).toBe(true);
    expect(isFinished(machine, finished.slice(0, -3))).toBe(false);
  });
});

describe('given a second version', () => {
  test('a verdict that would be another is listed with what it was and what it would be', () => {
    const { changes } = impact(later, finished);
    expect(changes).toHaveLength(1);
    expect(changes[0]?.old).toContain('L1–L2 in');
    expect(changes[0]?.now ?? '').not.toContain('L1–L2 in');
  });
  test('jobs that the change does not reach are not listed', async () => {
    expect(impact(later, await entriesOf('by-the-plain-rule-a-close-reading-passes')).changes).toEqual([]);
  });
  test('on its own shelf no longer, a job with a verdict counts as finished', () => {
    expect([isFinished(null, finished), isFinished(null, finished.slice(0, TO_READINGS.length))]).toEqual([
      true,
      false,
    ]);
  });
});

test('a step that got another name: its answer is dropped, and power was on since: it would stand before it, at the lock', () => {
  const renamed = JSON.parse(JSON.stringify(FIRST).replaceAll('"sections"', '"both-sections"')) as Manual;
  const { changes, dropped, ends } = impact(compile({ ...renamed, version: 2 }), finished);
  expect(dropped).toBeGreaterThan(0);
  expect(ends).toBe('dead:outdoor/locked');
  expect(changes.every((c) => c.old !== null && c.now === null)).toBe(true);
  expect(changes.length).toBe(finished.filter((e) => e.kind === 'concluded').length);
});
