import { createHash } from 'node:crypto';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { GENESIS, hashOf, seal, textRef, verifyChain, verifyText } from '../../engine/chain.ts';
import type { Draft, Entry } from '../../engine/schema.ts';

const sha256 = (text: string): string => createHash('sha256').update(text, 'utf8').digest('hex');
const head = {
  job: 'job-1',
  seq: 0,
  prev: GENESIS,
  by: 'ines',
  at: '2026-07-14T15:00:00.000Z',
  said: null,
  client: 'c1',
};
const title = textRef('No cooling upstairs', '00112233445566778899aabbccddeeff', 't1');
const drafts: Draft[] = [
  {
    kind: 'opened',
    body: { manual: 'no-cool', version: 1, fingerprint: 'f00d', semantics: 1, title: title.ref, training: false },
  },
  { kind: 'assigned', body: { to: 'ines' } },
  { kind: 'noted', body: { as: 'note', text: textRef('µF \u2009≥ 🧰', 'c3', 't2').ref } },
  { kind: 'paused', body: {} },
  { kind: 'resumed', body: {} },
];
const chain = seal(drafts, head);
const at = (i: number): Entry => {
  const entry = chain[i];
  if (!entry) throw new Error(`no entry ${i}`);
  return entry;
};

describe('sealing', () => {
  test('numbers from the head on, links each to the one before, keeps what was decided', () => {
    expect(chain.map((e) => e.seq)).toEqual([1, 2, 3, 4, 5]);
    expect(chain.map((e) => e.prev)).toEqual([GENESIS, ...chain.slice(0, -1).map((e) => e.hash)]);
    expect(chain.map(({ kind, body }) => ({ kind, body }))).toEqual(drafts);
    expect(chain.every((e) => e.by === 'ines' && e.client === 'c1' && e.at === head.at && e.said === null)).toBe(true);
  });

  test('in one go or one by one is the same', () => {
    const one: Entry[] = [];
    for (const draft of drafts)
      one.push(...seal([draft], { ...head, seq: one.length, prev: one.at(-1)?.hash ?? GENESIS }));
    expect(one).toEqual(chain);
    expect(seal([], head)).toEqual([]);
  });

  test('by the machine’s own SHA-256 it is the same', () => {
    expect(seal(drafts, head, sha256)).toEqual(chain);
    expect(verifyChain(chain, sha256)).toEqual({ ok: true });
    expect(verifyChain([{ ...at(0), at: '2026-07-14T15:00:00.001Z' }], sha256)).toEqual({
      ok: false,
      at: 1,
      why: 'altered',
    });
  });

  // RFC 8785 §3.2.3: members sorted by the UTF-16 units of their names, no space; §3.2.2.2: strings escaped as little
  // as JSON allows. Hash by OpenSSL (node:crypto), not by the engine's library.
  test('hashes the RFC 8785 JSON of everything but the hash', () => {
    expect(at(1).hash).toBe(
      sha256(
        `{"at":"2026-07-14T15:00:00.000Z","body":{"to":"ines"},"by":"ines","client":"c1","job":"job-1","kind":"assigned",` +
          `"prev":"${at(0).hash}","said":null,"seq":2,"v":1}`,
      ),
    );
    const words = at(2);
    const ref = words.kind === 'noted' ? words.body.text?.hash : '';
    expect(words.hash).toBe(
      sha256(
        `{"at":"2026-07-14T15:00:00.000Z","body":{"as":"note","text":{"hash":"${ref}","ref":"t2"}},"by":"ines",` +
          `"client":"c1","job":"job-1","kind":"noted","prev":"${at(1).hash}","said":null,"seq":3,"v":1}`,
      ),
    );
  });

  // The names of the sorting example in RFC 8785 §3.2.3, in the order it gives.
  test('sorts as the standard’s own example', () => {
    const sorted = ['\r', '1', '\u0080', '\u00f6', '\u20ac', '\ud83d\ude00', '\ufb33'];
    const untaken = '{"kind":"untaken"}';
    const [entry] = seal(
      [
        {
          kind: 'answered',
          body: {
            place: 'p',
            parts: Object.fromEntries(
              [4, 0, 6, 1, 5, 2, 3].map((i) => [sorted[i] ?? '', { kind: 'untaken' as const }]),
            ),
          },
        },
      ],
      head,
    );
    const parts = sorted.map((name) => `${name === '\r' ? '"\\r"' : `"${name}"`}:${untaken}`).join(',');
    expect(entry?.hash).toBe(
      sha256(
        `{"at":"2026-07-14T15:00:00.000Z","body":{"parts":{${parts}},"place":"p"},"by":"ines","client":"c1",` +
          `"job":"job-1","kind":"answered","prev":"${GENESIS}","said":null,"seq":1,"v":1}`,
      ),
    );
  });

  test('of what JSON can’t say throws', () => {
    const draft: Draft = { kind: 'counted', body: { item: 'cap', left: Number.NaN } };
    expect(() => seal([draft], head)).toThrow();
  });

  test('hashOf looks at everything but the hash, in any order of keys', () => {
    const turned = Object.fromEntries(Object.entries(at(2)).reverse()) as unknown as Entry;
    expect(hashOf({ ...turned, hash: '' })).toBe(at(2).hash);
  });
});

describe('verifying', () => {
  test('a whole chain, and every beginning of it, is sound', () => {
    for (let n = 0; n <= chain.length; n++) expect(verifyChain(chain.slice(0, n))).toEqual({ ok: true });
    expect(verifyChain(JSON.parse(JSON.stringify(chain)))).toEqual({ ok: true });
  });

  const reseal = (i: number, change: Partial<Entry>): Entry[] =>
    chain.map((e, j) => {
      if (i !== j) return e;
      const other = { ...e, ...change } as Entry;
      return { ...other, hash: hashOf(other) };
    });
  const broken: [string, unknown[], number, string][] = [
    ['the first left out', chain.slice(1), 2, 'truncated-start'],
    ['the first three left out', chain.slice(3), 4, 'truncated-start'],
    ['one left out in the middle', [at(0), at(1), at(3), at(4)], 3, 'reordered'],
    ['two changed places', [at(0), at(2), at(1), at(3)], 2, 'reordered'],
    ['the first two changed places', [at(1), at(0), at(2)], 1, 'reordered'],
    ['one twice', [at(0), at(1), at(1), at(2)], 3, 'reordered'],
    ['another person', chain.map((e) => (e.seq === 2 ? { ...e, by: 'tomas' } : e)), 2, 'altered'],
    ['another hash', chain.map((e) => (e.seq === 5 ? { ...e, hash: GENESIS } : e)), 5, 'altered'],
    ['a forged entry with its own right hash', reseal(2, { by: 'tomas' }), 4, 'altered'],
    ['a forged link', reseal(2, { prev: GENESIS }), 3, 'altered'],
    ['a forged first entry that claims one before it', reseal(0, { prev: '1'.repeat(64) }), 1, 'altered'],
    ['an entry of another job, well linked', reseal(4, { job: 'job-2' }), 5, 'altered'],
    ['null', [at(0), null], 2, 'not-an-entry'],
    ['a text', ['opened'], 1, 'not-an-entry'],
    ['an unknown kind', [at(0), { ...at(1), kind: 'promoted' }], 2, 'not-an-entry'],
    ['one field more', [{ ...at(0), note: 1 }], 1, 'not-an-entry'],
    ['a body of another kind', [at(0), { ...at(1), body: {} }], 2, 'not-an-entry'],
    ['seq 0', [{ ...at(0), seq: 0 }], 1, 'not-an-entry'],
  ];
  test.each(broken)('%s', (_, entries, seq, why) => {
    expect(verifyChain(entries)).toEqual({ ok: false, at: seq, why });
  });

  test('any one letter of any text in any entry is noticed, at that entry or as no entry', () => {
    const texts = (value: unknown, path: string[] = []): string[][] =>
      typeof value === 'string'
        ? [path]
        : typeof value === 'object' && value !== null
          ? Object.entries(value).flatMap(([k, v]) => texts(v, [...path, k]))
          : [];
    fc.assert(
      fc.property(
        fc.nat(chain.length - 1),
        fc.nat(),
        fc.nat(),
        fc.constantFrom('0', 'a', 'z', '-', 'é'),
        (i, p, c, to) => {
          const copy = structuredClone(chain) as unknown as Record<string, unknown>[];
          const paths = texts(copy[i]);
          const path = paths[p % paths.length] ?? [];
          const key = path.at(-1) ?? '';
          const holder = path
            .slice(0, -1)
            .reduce<Record<string, unknown>>((o, k) => o[k] as Record<string, unknown>, copy[i] ?? {});
          const text = String(holder[key]);
          const n = c % text.length;
          fc.pre(text[n] !== to);
          holder[key] = text.slice(0, n) + to + text.slice(n + 1);
          expect(verifyChain(copy)).toMatchObject({ ok: false, at: i + 1 });
        },
      ),
      { numRuns: 300 },
    );
  });
});

test('a name that reading leaves out, hung on an entry in the database, alters it', () => {
  const parts = { ok: { kind: 'choice' as const, chosen: ['yes'] } };
  const [entry] = seal([{ kind: 'answered', body: { place: 'dead:outdoor/fit', parts } }], head);
  const hung = JSON.stringify(entry).replace('"parts":{', '"parts":{"__proto__":{"kind":"choice","chosen":["no"]},');
  expect(verifyChain([entry])).toEqual({ ok: true });
  expect(verifyChain([JSON.parse(hung)])).toEqual({ ok: false, at: 1, why: 'altered' });
});

describe('words beside the record', () => {
  // SHA-256("abc"): FIPS 180-4, the one-block example; here the salt is "a" and the words are "bc".
  test('are hashed as salt, then text', () => {
    expect(textRef('bc', 'a', 'r1')).toEqual({
      ref: { ref: 'r1', hash: 'ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad' },
      row: { ref: 'r1', salt: 'a', text: 'bc' },
    });
    expect(textRef('µF 🧰', '00ff', 'r').ref.hash).toBe(sha256('00ffµF 🧰'));
  });

  test('verify, and any other words, salt or place don’t', () => {
    const { ref, row } = title;
    expect(verifyText(ref, row)).toBe(true);
    expect(verifyText(ref, { ...row, text: 'No cooling upstairs.' })).toBe(false);
    expect(verifyText(ref, { ...row, salt: row.salt.replace('0', '1') })).toBe(false);
    expect(verifyText(ref, { ...row, ref: 't2' })).toBe(false);
  });

  // What is hashed is one string: without a length of its own the salt could take the beginning of the words.
  test('whose beginning was moved into the salt don’t', () => {
    const { ref, row } = title;
    for (const n of [-3, -1, 1, 3, row.text.length]) {
      const all = row.salt + row.text;
      const cut = row.salt.length + n;
      expect(verifyText(ref, { ...row, salt: all.slice(0, cut), text: all.slice(cut) })).toBe(false);
    }
  });

  test('of the same text differ by their salt', () => {
    expect(textRef('yes', 'a', 'r').ref.hash).not.toBe(textRef('yes', 'b', 'r').ref.hash);
  });
});
