/** The record: the same entries give the same job, byte for byte; damage and a foreign manual are told apart; words lie beside it. */
import canonicalize from 'canonicalize';
import { describe, expect, test } from 'vitest';
import { seal, verifyChain, verifyText } from '../../engine/chain.ts';
import { compile } from '../../engine/compile.ts';
import { TranscriptCorrupt, TranscriptMismatch } from '../../engine/errors.ts';
import { prompt } from '../../engine/prompt.ts';
import { begin, memoryOf, placeIdOf, replay, take } from '../../engine/replay.ts';
import type { Draft, Entry, Reply } from '../../engine/schema.ts';
import { SHELF } from '../../flows/index.ts';
import { type Conversation, machine } from '../people.ts';
import { at, atFigures, GOOD, here, PROVING, RESIDUAL, typed, WEAK_HERM } from './given.ts';

/** Calls in which something of every kind happened. */
const CALLS: Record<string, () => Conversation> = {
  'a proven repair, signed': () => typed(typed(atFigures(), ['241 240 comp 13.1 fan .9 split 19']), ['sign'], 'ruth'),
  'a void, an emergency and its release': () =>
    typed(
      typed(at('readings').wait(31), [`yes ${PROVING}`, RESIDUAL, 'I smell smoke']),
      ['release, seen in person'],
      'ruth',
    ),
  'a hand-over, corrections, a question': () => {
    const c = typed(at('readings'), [WEAK_HERM, 'back fan 5.1', 'take back', 'note wasps']).type('bla bla');
    typed(c, ['ask which meter'], 'ruth');
    return typed(typed(c, ['reply the blue one', 'hand over tomas']), ['take over'], 'tomas');
  },
  'a hold and an approval': () =>
    typed(typed(at('residual'), Array(3).fill('9.3 / 31 0 31 / 9.3')), ['approve, go on'], 'otto'),
  'a stop, a second round': () =>
    typed(atFigures(), ['241 comp 90 fan .9', 'off', 'stop', 'cover on, no lock', 'go on', 'd']),
};
const bytes = (value: unknown): string => canonicalize(JSON.parse(JSON.stringify(value))) ?? '';
/** Everything derived: place, facts, and what every person is shown. */
const derived = (s: ReturnType<typeof replay>, now: string): string =>
  bytes([placeIdOf(s), memoryOf(s), prompt(s, now)]);

describe.each(Object.entries(CALLS))('given %s', (_, call) => {
  const c = call();
  test('then replayed at once, step by step and on a machine compiled anew it is the same to the byte', () => {
    const whole = derived(replay(machine, c.entries), c.at);
    expect(derived(c.standing, c.at)).toBe(whole);
    expect(derived(c.entries.reduce(take, begin(machine, 'job-1')), c.at)).toBe(whole);
    expect(derived(replay(compile(SHELF[0]), JSON.parse(JSON.stringify(c.entries))), c.at)).toBe(whole);
  });
  test('then every beginning of it can be replayed, and the chain is whole', () => {
    expect(verifyChain(c.entries)).toEqual({ ok: true });
    for (let n = 1; n <= c.entries.length; n++) expect(() => replay(machine, c.entries.slice(0, n))).not.toThrow();
  });
  test('then no word that was typed as text is in the body: only its reference and salted hash', () => {
    const json = JSON.stringify(c.entries);
    for (const row of c.texts) {
      expect(json).toContain(`"${row.ref}"`);
      if (row.text.length > 8 && !/^[\d+ %µuFVAC]+$/i.test(row.text))
        expect(json).not.toContain(JSON.stringify(row.text).slice(1, -1));
    }
    const refs = [
      ...json.matchAll(/\{"hash":"[0-9a-f]{64}","ref":"([^"]+)"\}|\{"ref":"([^"]+)","hash":"[0-9a-f]{64}"\}/g),
    ];
    expect(refs.length).toBeGreaterThan(c.texts.length - 1);
  });
});

describe('given a record that is damaged or foreign', () => {
  const c = at('locked');
  const head = { job: 'job-1', seq: 0, prev: '0'.repeat(64), by: 'ines', at: c.at, said: null, client: null };
  const asDrafts = (entries: readonly Entry[]): Draft[] =>
    entries.map((e) => ({ kind: e.kind, body: e.body }) as Draft);
  const opened = (change: object): Draft[] =>
    asDrafts(c.entries).map((d) => (d.kind === 'opened' ? { ...d, body: { ...d.body, ...change } } : d));
  test.each([
    ['a figure altered', c.entries.map((e, i) => (i === 4 ? { ...e, by: 'tomas' } : e))],
    ['one missing', c.entries.filter((_, i) => i !== 3)],
    [
      'two exchanged',
      [...c.entries.slice(0, 3), ...c.entries.slice(4, 5), ...c.entries.slice(3, 4), ...c.entries.slice(5)],
    ],
    ['its beginning cut off', c.entries.slice(1)],
    ['nothing', []],
  ])('%s: corrupt', (_, entries) => {
    expect(() => replay(machine, entries as Entry[])).toThrow(TranscriptCorrupt);
  });
  test.each([
    ['another fingerprint', opened({ fingerprint: 'f'.repeat(64) })],
    ['another version', opened({ version: 2 })],
    ['other semantics', opened({ semantics: 99 })],
    [
      'a question the manual doesn’t have',
      [...asDrafts(c.entries), { kind: 'answered', body: { place: 'nowhere', parts: {} } } as Draft],
    ],
  ])('%s: sound, but of another manual', (_, drafts) => {
    const entries = seal(drafts, head);
    expect(verifyChain(entries)).toEqual({ ok: true });
    expect(() => replay(machine, entries)).toThrow(TranscriptMismatch);
  });
});

describe('given two at once, or the same reply again', () => {
  const answer = (c: Conversation, client: string): Reply => ({
    kind: 'answer',
    client,
    seq: c.prompt().seq,
    parts: { choice: 'psc' },
  });
  test('the second of two answers to one question is told, and changes nothing', () => {
    const c = at('class', { assigned: ['ines', 'tomas'] });
    const [mine, theirs] = [answer(c, 'a'), answer(c, 'b')];
    c.send(mine);
    expect([c.send(theirs, 'tomas').refusal?.code, c.kinds, here(c)]).toEqual(['stale', [], 'fit']);
  });
  test('a reply sent again after the question has moved on has no second effect', () => {
    const c = at('class');
    const reply = answer(c, 'a');
    c.send(reply).send(reply);
    expect([c.refusal?.code, c.kinds]).toEqual(['stale', []]);
  });
  test('a note of others in between makes no answer stale', () => {
    const c = at('class');
    const reply = answer(c, 'a');
    c.type('note on my way', 'ruth');
    expect(c.send(reply).kinds).toEqual(['answered']);
  });
  test.each(['skip no tool', 'can’t measure that', 'no idea'])(
    '%s, typed to a question that is gone, skips nothing',
    (text) => {
      const c = at('class');
      const { seq } = c.prompt();
      typed(c, ['psc']);
      expect([c.send({ kind: 'text', client: 's', seq, text }).refusal?.code, c.kinds, here(c)]).toEqual([
        'stale',
        ['noted'],
        'fit',
      ]);
    },
  );
  test('typed text that is stale is kept as a note', () => {
    const c = at('class');
    const { seq } = c.prompt();
    typed(c, ['psc']);
    expect([c.send({ kind: 'text', client: 's', seq, text: 'yes' }).refusal?.code, c.kinds]).toEqual([
      'stale',
      ['noted'],
    ]);
  });
});

describe('given any text, then nothing breaks and nothing is lost', () => {
  const kept = (c: Conversation): string | undefined => c.texts.at(-1)?.text;
  test.each([
    ['not understood', 'the thing on the left'],
    ['emoji', '👍🏽 👍🏽'],
    ['control characters', 'a\u0007b\u001b[2Jc'],
    ['other scripts', 'кондиционер 冷房 مكيف'],
    ['4,000 characters', 'x'.repeat(4000)],
  ])('%s: kept as a note, word for word', (_, text) => {
    const c = at('class').type(text);
    expect([c.refusal?.code, c.kinds, kept(c), here(c)]).toEqual(['unclear', ['noted'], text, 'class']);
    const [entry, row] = [c.entries.at(-1), c.texts.at(-1)];
    expect(entry?.kind === 'noted' && entry.body.text && row && verifyText(entry.body.text, row)).toBe(true);
  });
  test.each(['\ud800', 'fan \udc00 runs', '\u0000', '   ', '\n\n'])('half a surrogate, NUL, blanks: %j', (text) => {
    const c = at('readings').type(text);
    expect([here(c), c.kinds.includes('answered'), c.refusal === null]).toEqual(['sections', false, false]);
  });
  test('10,000 characters are told to be too long, and a hazard in them is still heard', () => {
    const c = at('class').type('x'.repeat(10_000));
    expect([c.refusal?.code, c.refusal?.text, c.kinds]).toEqual(['too-long', expect.stringContaining('10000'), []]);
    expect(at('class').type(`${'x '.repeat(4_990)} I smell smoke`).place).toBe('!emergency');
  });
  test('words beside a reading that was taken are kept as well', () => {
    const c = at('readings').type(`${GOOD} and the shaft scrapes`);
    expect([c.kinds.slice(0, 2), kept(c)]).toEqual([['answered', 'noted'], 'and the shaft scrapes']);
  });
});

describe('given a figure, then it is kept in its field’s unit, half-even, with what was typed beside it', () => {
  // Half-even: IEEE 754 roundTiesToEven, here at four decimals of a µF.
  test.each([
    ['44.6', '44.6'],
    ['44.60 µF', '44.6'],
    ['44600 nF', '44.6'],
    ['44,6', '44.6'],
    ['44.60005', '44.6'],
    ['44.60015', '44.6002'],
    ['44.60025', '44.6002'],
    ['044.6', '44.6'],
  ])('%s → %s', (written, value) => {
    const c = at('readings').type(`herm ${written} fan 5.03 hf 4.52 case ol`);
    const herm = c.entries.flatMap((e) => (e.kind === 'answered' ? [e.body.parts.herm] : [])).at(-1);
    expect(herm).toEqual({ kind: 'figure', value, unit: 'µF', typed: written });
  });
  test('minus zero is zero', () => {
    const c = typed(at('residual'), ['9.3 / -0 0 -0.001 / 9.3']);
    const parts = c.entries.flatMap((e) => (e.kind === 'answered' ? [e.body.parts] : [])).at(-1);
    expect(parts).toMatchObject({ hc: { value: '0', typed: '-0' }, hf: { value: '0', typed: '-0.001' } });
  });
});
