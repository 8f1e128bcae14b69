/** What was done to an exported job is found, and called by its name. Each copy is made here from a good one. */
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, test } from 'vitest';
import { fingerprint } from '../../engine/fingerprint.ts';
import { writeJobFile } from '../../engine/report/file.ts';
import { openKey } from '../../engine/report/key.ts';
import { wordOf } from '../../engine/report/outcome.ts';
import { createVerifier } from '../../engine/report/verify.ts';
import type { Entry } from '../../engine/schema.ts';
import type { Manual } from '../../engine/vocabulary.ts';
import { SHELF } from '../../flows/index.ts';
import { bytesOf, type Exported, opened, rewritten, signedBy, withFigure, withRule } from '../report/forge.ts';
import { record } from './recorder.ts';

const folder = mkdtempSync(join(tmpdir(), 'nocool-key-'));
afterAll(() => rmSync(folder, { recursive: true }));
/** Pinned too: what is signed by it was signed by somebody who has the shop's key. */
const ours = openKey(join(folder, 'ours'));
const strange = openKey(join(folder, 'strange'));
/** Gone, as the key of the recorded jobs is: what it signed can't be signed again. */
const gone = openKey(join(folder, 'gone'));
const verifier = createVerifier(SHELF, [gone.name, ours.name]);
const found = (file: Exported, by = verifier) => by.verify(bytesOf(file)).troubles.map((t) => [t.word, t.at]);
const first = (file: Exported, by = verifier) => by.verify(bytesOf(file)).troubles[0];

const good = opened(await record('weak-fan-section-replaced-and-proven', gone));
const close = opened(await record('with-the-meters-doubt-the-same-reading-is-close', gone));
const seqOf = (file: Exported, fits: (e: Entry) => boolean): number => (file.entries.find(fits) as Entry).seq;
const verdictAt = (file: Exported): number => seqOf(file, (e) => e.kind === 'concluded');
const sections = seqOf(good, (e) => e.kind === 'answered' && e.body.place.endsWith('/sections'));
/** Not as weak as it was read, so that the verdict would be another. */
const stronger = (entries: Entry[]): Entry[] =>
  withFigure('/sections', 'hf', '4.52')(withFigure('/sections', 'fan', '5.03')(entries));

describe('an altered reading', () => {
  test('with its hash left as it was: altered at that entry', () => {
    expect(found({ ...good, entries: stronger(good.entries) })).toEqual([['altered', sections]]);
  });
  test('with every hash made to fit: not what was signed, and the verdict does not follow from it', () => {
    const words = found(rewritten(good, stronger));
    expect(words).toEqual([
      ['rewritten', null],
      ['recomputed differently', verdictAt(good)],
    ]);
  });
  test('with the old seal left in place: not the record that was signed', () => {
    expect(found({ ...rewritten(good, stronger), seal: good.seal })[0]).toEqual(['rewritten', null]);
  });
  test('signed by a stranger: another key', () => {
    expect(found(signedBy(strange, rewritten(good, stronger)))[0]).toEqual(['signed by another key', null]);
  });
  test('signed by the shop itself: computed differently, with what it says and what it comes to', () => {
    const trouble = first(signedBy(ours, rewritten(good, stronger)));
    expect(trouble).toMatchObject({ word: 'recomputed differently', at: verdictAt(good) });
    expect(trouble?.old).toContain('FAN fail');
    expect(trouble?.now).toContain('FAN pass');
  });
});

describe('an altered setting', () => {
  test('with its hash left as it was: altered at that entry', () => {
    const at = seqOf(close, (e) => e.kind === 'set');
    expect(found({ ...close, entries: withRule('plain')(close.entries) })[0]).toEqual(['altered', at]);
  });
  test('with every hash made to fit: the verdict is another by the other rule', () => {
    const trouble = first(signedBy(ours, rewritten(close, withRule('plain'))));
    expect(trouble).toMatchObject({ word: 'recomputed differently', at: verdictAt(close) });
    expect(trouble?.old).toContain('HERM conditional pass');
    expect(trouble?.now).toContain('HERM pass');
  });
});

describe('an altered page', () => {
  /** The same manual with another minimum age of a proof, under the same name and version. */
  const other: Manual = {
    ...SHELF[0],
    isolation: { ...SHELF[0].isolation, minutes: { ...SHELF[0].isolation.minutes, value: '12' } },
  };
  test('is not the version that the job is pinned to', () => {
    const trouble = first(good, createVerifier([other], [gone.name]));
    expect(trouble).toMatchObject({ word: 'unknown flow version', at: 1 });
    expect(trouble?.says).toContain(`no-cool ${SHELF[0].version}`);
  });
  test('passed off as the one it was recorded on: what is shown differs, from the first deadline on', () => {
    const forged = rewritten(good, ([begin, ...rest]) =>
      begin?.kind === 'opened'
        ? [{ ...begin, body: { ...begin.body, fingerprint: fingerprint(other) } }, ...rest]
        : rest,
    );
    const trouble = first(signedBy(ours, forged), createVerifier([other], [ours.name]));
    expect(trouble).toMatchObject({ word: 'recomputed differently' });
    expect(trouble?.old).toMatch(/^asks /);
  });
  test('computed by other rules of the engine: unknown too', () => {
    const forged = rewritten(good, ([begin, ...rest]) =>
      begin?.kind === 'opened' ? [{ ...begin, body: { ...begin.body, semantics: 99 } }, ...rest] : rest,
    );
    expect(found(signedBy(ours, forged))).toEqual([['unknown flow version', 1]]);
  });
});

describe('an altered verdict, signed by the shop itself', () => {
  const concluded = (change: (e: Entry & { kind: 'concluded' }) => Entry[]) =>
    first(
      signedBy(
        ours,
        rewritten(good, (all) =>
          all.flatMap((e) => (e.seq === verdictAt(good) && e.kind === 'concluded' ? change(e) : [e])),
        ),
      ),
    );
  test('one figure in a finding: both figures are named', () => {
    const trouble = concluded((e) => [
      {
        ...e,
        body: { ...e.body, findings: e.body.findings.map((f, i) => (i === 0 ? { ...f, limits: '40–50 µF' } : f)) },
      },
    ]);
    expect(trouble).toMatchObject({ word: 'recomputed differently', old: 'verdict.findings.0.limits "40–50 µF"' });
  });
  test('cut out: none is there where one is due', () => {
    expect(concluded(() => [])).toMatchObject({ word: 'recomputed differently', old: 'no verdict' });
  });
  test('put in twice: the second is not due', () => {
    expect(concluded((e) => [e, e])).toMatchObject({ at: verdictAt(good) + 1, now: 'no verdict' });
  });
});

test('a gate left out, signed by the shop itself: an answer to a question that did not stand', () => {
  const without = (all: Entry[]): Entry[] =>
    all.filter((e) => !(e.kind === 'answered' && e.body.place.endsWith('/proving')));
  const trouble = first(signedBy(ours, rewritten(good, without)));
  expect(trouble).toMatchObject({ word: 'recomputed differently' });
  expect([trouble?.old, trouble?.now]).toEqual([
    expect.stringMatching(/^(answers .*\/residual|asks .*\/residual)$/),
    expect.stringMatching(/^asks .*\/proving$/),
  ]);
});

describe('entries that are gone, or elsewhere', () => {
  const last = good.entries.length;
  const cut = (from: number, to?: number): Exported => ({ ...good, entries: good.entries.slice(from, to) });
  test.each<[string, Exported, unknown]>([
    ['the end', cut(0, -2), ['truncated', last - 1]],
    ['the beginning', cut(3), ['truncated', 1]],
    ['all', cut(0, 0), ['truncated', 1]],
    ['one in the middle', { ...good, entries: good.entries.filter((e) => e.seq !== 7) }, ['truncated', 7]],
    ['two changed places', { ...good, entries: swapped(good.entries, 6) }, ['reordered', 7]],
    [
      'one stands twice',
      { ...good, entries: good.entries.flatMap((e) => (e.seq === 9 ? [e, e] : [e])) },
      ['reordered', 10],
    ],
  ])('%s', (_, file, expected) => {
    expect(found(file)[0]).toEqual(expected);
  });
  test('the end cut off, and the seal with it made to fit: not what was signed', () => {
    expect(found(rewritten(good, (all) => all.slice(0, -2)))[0]).toEqual(['rewritten', null]);
  });
});
function swapped(entries: readonly Entry[], i: number): Entry[] {
  const [a, b] = [entries[i], entries[i + 1]] as [Entry, Entry];
  return [...entries.slice(0, i), b, a, ...entries.slice(i + 2)];
}

test('a name that readers leave out, hung on an answer with words of its own: not read', () => {
  const text = Buffer.from(bytesOf(good)).toString();
  const hung = text.replaceAll('"parts":{', '"parts":{"__proto__":{"kind":"choice","chosen":["yes"]},');
  expect(hung).not.toBe(text);
  expect(verifier.verify(Buffer.from(hung)).troubles.map((t) => t.word)).toEqual(['no job file']);
});

describe('what stands beside the entries', () => {
  test.each<[string, Exported, unknown]>([
    ['other words', { ...good, texts: good.texts.map((t) => ({ ...t, text: `${t.text} or not` })) }, ['altered', 1]],
    [
      'the beginning of the words moved into their salt',
      {
        ...good,
        texts: good.texts.map((t) => ({ ...t, salt: t.salt + t.text.slice(0, 2), text: t.text.slice(2) })),
      },
      ['altered', 1],
    ],
    ['words of nobody', { ...good, texts: [...good.texts, { ref: 'x', salt: 's', text: 't' }] }, ['altered', null]],
    ['words twice', { ...good, texts: [...good.texts, ...good.texts] }, ['altered', null]],
    [
      'other settings in front',
      { ...good, settings: good.settings && { ...good.settings, hertz: '50' } },
      ['altered', null],
    ],
    ['another flow in front', { ...good, flow: { ...good.flow, version: 9 } }, ['altered', null]],
    ['a photo in front', { ...good, photos: ['0'.repeat(64)] }, ['altered', null]],
    ['another job in front', { ...good, job: close.job }, ['altered', null]],
    ['another question shown', { ...good, shown: good.shown.slice(1) }, ['altered', null]],
    ['no seal', { ...good, seal: null }, ['signature missing', null]],
    ['the seal of another job', { ...good, seal: close.seal }, ['rewritten', null]],
  ])('%s', (_, file, expected) => {
    expect(found(file)[0]).toEqual(expected);
  });
  test('a seal cut out with its name is missing like any other', () => {
    const { seal: _, ...unsealed } = good;
    expect(found(unsealed as typeof good)[0]).toEqual(['signature missing', null]);
  });
  test('fewer words are no change: they may have been removed, and are counted', () => {
    const { troubles, removed } = verifier.verify(bytesOf({ ...good, texts: [] }));
    expect([troubles, removed]).toEqual([[], good.texts.length]);
  });
});

describe('the key', () => {
  test('nobody pinned one: it is said, and it is not identical', () => {
    expect(found(good, createVerifier(SHELF, []))).toEqual([['key not pinned', null]]);
  });
  test('an old key stays good as long as it is pinned', () => {
    expect(found(signedBy(ours, good))).toEqual([]);
    expect(found(good, createVerifier(SHELF, [ours.name]))).toEqual([['signed by another key', null]]);
  });
});

test('whichever letter is changed, the file is not identical any more', () => {
  const text = writeJobFile(close);
  const missed: string[] = [];
  for (let i = 5; i < text.length; i += 83) {
    const letter = text[i] === 'a' ? 'b' : 'a';
    const changed = text.slice(0, i) + letter + text.slice(i + 1);
    if (wordOf(verifier.verify(Buffer.from(changed))) === 'identical') missed.push(text.slice(i - 20, i + 20));
  }
  expect(missed).toEqual([]);
});
