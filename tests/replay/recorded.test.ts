/**
 * Jobs as they were recorded once: today's pages and engine still come to the same, entry by entry, question by question,
 * verdict by verdict. `npm run record` writes them anew.
 */
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { openKey } from '../../engine/report/key.ts';
import { createVerifier } from '../../engine/report/verify.ts';
import type { Entry } from '../../engine/schema.ts';
import { SHELF } from '../../flows/index.ts';
import { opened } from '../report/forge.ts';
import { FOLDER, HOW, keyOfRecording, recorded, recordedNames } from './jobs.ts';
import { PLAYS, record } from './recorder.ts';

if (process.env.RECORD === 'yes') await recordAll();

/** The key signs this once and is gone: nobody can put its signature under a changed file. */
async function recordAll(): Promise<void> {
  const folder = mkdtempSync(join(tmpdir(), 'nocool-key-'));
  const key = openKey(join(folder, 'key'));
  rmSync(FOLDER, { recursive: true, force: true });
  mkdirSync(FOLDER);
  for (const name of Object.keys(PLAYS)) writeFileSync(`${FOLDER}${name}.json`, await record(name, key));
  writeFileSync(`${FOLDER}key`, `${key.name}\n`);
  rmSync(folder, { recursive: true });
}

const verifier = createVerifier(SHELF, [keyOfRecording()]);
const entriesOf = (name: string): Entry[] => opened(recorded(name)).entries;
const verdicts = (name: string): string[] =>
  entriesOf(name).flatMap((e) =>
    e.kind === 'concluded' ? [e.body.findings.map((f) => `${f.name} ${f.word}`).join(', ')] : [],
  );

test('every play is recorded, and nothing else', () => {
  expect(recordedNames().sort()).toEqual(Object.keys(PLAYS).sort());
});

test.each(Object.keys(PLAYS))('%s: identical', (name) => {
  expect(verifier.verify(Buffer.from(recorded(name))).troubles, HOW).toEqual([]);
});

test('typed again through the desk, a job is the same to the byte, but for the seal', async () => {
  const name = 'a-changed-reading-turns-the-verdict';
  const again = opened(await record(name, null));
  expect({ ...again, seal: null }, HOW).toEqual({ ...opened(recorded(name)), seal: null });
});

describe('each proves what its name says', () => {
  test('weak-fan-section-replaced-and-proven', () => {
    const [first, , last] = verdicts('weak-fan-section-replaced-and-proven');
    expect(first).toContain('FAN fail');
    expect(last).toMatch(/^L1–L2 in, .*Compressor running, Fan in/);
  });
  test('the same reading, by two rules, gets two words', () => {
    expect(verdicts('by-the-plain-rule-a-close-reading-passes')[0]).toMatch(/^HERM pass, FAN pass/);
    expect(verdicts('with-the-meters-doubt-the-same-reading-is-close')[0]).toMatch(/^HERM conditional pass, FAN cond/);
  });
  test('silence-ends-the-proof', () => {
    const voided = entriesOf('silence-ends-the-proof').find((e) => e.kind === 'voided');
    expect(voided?.body).toMatchObject({ reason: 'age' });
  });
  test('a-changed-reading-turns-the-verdict', () => {
    const [before, after] = verdicts('a-changed-reading-turns-the-verdict');
    expect([before, after]).toEqual([expect.stringContaining('FAN fail'), expect.stringContaining('FAN pass')]);
  });
  test.each(['an-emergency-ends-the-proof-and-a-senior-releases', 'another-lock-proves-from-the-start'])(
    '%s: the lines are taken a second time before the reading counts',
    (name) => {
      const places = entriesOf(name).flatMap((e) => (e.kind === 'answered' ? [e.body.place.replace(/^.*\//, '')] : []));
      expect(places.filter((p) => p === 'proving')).toHaveLength(2);
      expect(places.at(-1)).toBe('sections');
    },
  );
  test('words-removed-on-a-callers-wish', () => {
    const text = recorded('words-removed-on-a-callers-wish');
    expect(text).not.toContain('Mr Example');
    expect(verifier.verify(Buffer.from(text)).removed).toBeGreaterThan(1);
  });
});
