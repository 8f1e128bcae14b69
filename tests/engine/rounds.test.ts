/** After the verdict: fit, restart, prove; a failed restart begins the next round; and who signs. */
import { describe, expect, test } from 'vitest';
import type { Conversation } from '../people.ts';
import { at, atFigures, GOOD, here, PROVING, RESIDUAL, strip, typed, WEAK_HERM } from './given.ts';

const PROVES = '241 13.1 .9';
const ROTOR = '241 90 .9';
const LOOK = 'clean, 1 cap, 45+5 6% 440';
const DEAD = ['yes', LOOK, PROVING, RESIDUAL];
const round = (c: Conversation): string => c.place.split('/')[0] ?? '';
/** The next round of the same trouble, up to its failed restart. */
const again = (c: Conversation): Conversation =>
  typed(c, ['d', ...DEAD, 'done', 'marked', WEAK_HERM, 'done', 'done', 'done', 'yes', ROTOR, 'off']);
const fail = (): Conversation => typed(atFigures(), [ROTOR, 'off']);

describe('given the new part is in, when the live figures read so', () => {
  test.each([
    ['inside', PROVES, 'cools'],
    ['supply at 196.9 V', '196.9 13.1 .9', 'supply-out'],
    ['supply at 253.1 V', '253.1 13.1 .9', 'supply-out'],
    ['compressor at 94 % of its LRA', ROTOR, 'off'],
    ['compressor draws nothing', '241 0.2 .9', 'off'],
    ['fan above its FLA', '241 13.1 1.3', 'off'],
    ['fan draws nothing', '241 13.1 0', 'off'],
    ['compressor above its RLA, which is no limit', '241 18.4 .9', 'cools'],
    ['no clamp meter', 'skip no clamp meter', 'restart-not-proven'],
  ])('%s → %s', (_, line, then) => {
    const c = typed(atFigures(), [line]);
    expect(c.verdicts[1] ?? here(c)).toBe(then);
  });
  test('and it runs and cools, then it is proven, not before', () => {
    const c = typed(atFigures(), [PROVES]);
    expect(c.verdicts).toEqual(['section-fails-value']);
    expect([typed(c, ['cools']).verdicts.at(-1), c.place, c.prompt().kind]).toEqual([
      'repair-proven',
      '!done',
      'finished',
    ]);
  });
  test('and the fault is back, then the next round begins', () => {
    expect(typed(atFigures(), [PROVES, 'not cold', 'off']).place).toBe('round~2/observation');
  });
  test('without the nameplate nobody tells running from stalled: not proven', () => {
    const c = typed(at('readings'), [WEAK_HERM, 'done', 'done', 'done', '_ _ _', 'yes', PROVES]);
    expect(c.verdicts.at(-1)).toBe('restart-not-proven');
  });
  test('no such part, or not today: left off, and nothing is called proven', () => {
    expect(typed(at('readings'), [WEAK_HERM, 'No such part on the truck']).place).toBe('!left');
    expect(
      typed(at('readings'), [WEAK_HERM, 'done', 'done', 'done', '17.9 96 1.2', 'Not today: it stays off']).verdicts.at(
        -1,
      ),
    ).toBe('left-off');
  });
});

describe('given a restart that failed', () => {
  test('then the next round begins at the observation; the class is known; dead is proved again from the lock', () => {
    const c = fail();
    expect([c.place, strip(c) === 'proved']).toEqual(['round~2/observation', false]);
    expect(here(typed(c, ['d']))).toBe('locked');
    expect(typed(c, [...DEAD]).place).toBe('round~2/capacitor/wires');
  });
  test('then the earlier findings stay, and the nameplate is not asked twice', () => {
    const c = typed(fail(), ['d', ...DEAD, 'done', 'marked', WEAK_HERM, 'done', 'done', 'done']);
    expect([here(c), c.prompt().verdicts.map((v) => v.place.split('/')[0])]).toEqual([
      'closed',
      ['round~1', 'round~2'],
    ]);
  });
  test('then the second round is proven against the nameplate of the first', () => {
    const c = typed(fail(), [
      'd',
      ...DEAD,
      'done',
      'marked',
      WEAK_HERM,
      'done',
      'done',
      'done',
      'yes',
      PROVES,
      'cools',
    ]);
    expect([c.place, c.verdicts.at(-1)]).toEqual(['!done', 'repair-proven']);
  });
  test.each([
    ['a part condemned by sight, the new one clean', 'bulged, 1 cap, 45+5 6% 440', [], 'condemned-by-sight', LOOK],
    [
      'a part out of its label, the new one bulged',
      LOOK,
      ['marked', WEAK_HERM],
      'section-fails-value',
      'bulged, 1 cap, 45+5 6% 440',
    ],
    [
      '45+5 out of its label, a new one with 35+5',
      LOOK,
      ['marked', WEAK_HERM],
      'section-fails-value',
      'clean, 1 cap, 35+5 6% 440',
    ],
  ])('%s: what is seen of the new part rewrites nothing of the old', (_, old, lines, verdict, look) => {
    const fitted = typed(at('wires', { look: old }), [
      'done',
      ...lines,
      'done',
      'done',
      'done',
      '17.9 96 1.2',
      'yes',
      ROTOR,
      'off',
      'd',
      'yes',
      look,
    ]);
    expect([here(fitted), round(typed(fitted, [PROVING, RESIDUAL]))]).toEqual(['proving', 'round~2']);
    expect(fitted.prompt().verdicts.map((v) => v.verdict)).toEqual([verdict]);
  });
  test('and the lock came off after the fit: the look is at the new part, and rewiring goes on', () => {
    const c = typed(at('wires', { look: 'bulged, 1 cap, 45+5 6% 440' }), [
      'done',
      'done',
      'lock is off',
      'yes',
      LOOK,
      PROVING,
      RESIDUAL,
    ]);
    expect([c.place, strip(c)]).toEqual(['round~1/restart/rewire', 'proved']);
  });
  test('three times, then a senior: there is no fourth round', () => {
    const c = again(again(fail()));
    expect([c.verdicts.at(-1), c.place, c.kinds]).toEqual([
      'rounds-spent',
      '!raised',
      ['answered', 'concluded', 'raised'],
    ]);
  });
});

describe('given a finished record, then a senior signs', () => {
  const done = (given = {}): Conversation => typed(atFigures(given), [PROVES, 'cools'], (given as { by?: 'ruth' }).by);
  test('never before it is finished', () => {
    expect(at('readings').type('sign', 'ruth').refusal?.code).toBe('nothing-to-change');
  });
  test('not the holder, no technician, no dispatcher', () => {
    const c = done();
    for (const by of ['ines', 'tomas', 'dana'] as const) expect(c.type('sign', by).refusal?.code).toBe('no-right');
    const own = done({ assigned: ['ruth'], by: 'ruth' });
    expect(own.type('sign', 'ruth').refusal?.code).toBe('no-right');
    expect(own.type('sign', 'otto').prompt().kind).toBe('signed');
  });
  test('once; notes are still taken, answers are not', () => {
    const c = done().type('sign', 'ruth');
    expect([c.prompt().kind, c.type('sign', 'otto').refusal?.code]).toEqual(['signed', 'closed']);
    expect([c.type('note the customer called').kinds, c.type(GOOD).kinds.includes('answered')]).toEqual([
      ['noted'],
      false,
    ]);
  });
  test('or sends it back with a question, which is answered before it is signed', () => {
    const c = done();
    expect(c.type('send back', 'ruth').refusal?.code).toBe('reason-needed');
    typed(c, ['send back, which fan blade was it'], 'ruth');
    expect([c.prompt().kind, c.prompt().question === null]).toEqual(['finished', false]);
    typed(c, ['reply the same as before']);
    expect([c.prompt().question, c.type('sign', 'ruth').prompt().kind]).toEqual([null, 'signed']);
  });
});
