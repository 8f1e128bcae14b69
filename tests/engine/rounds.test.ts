/** After the verdict: fit, restart, prove; a failed restart begins the next round; and who signs. */
import { describe, expect, test } from 'vitest';
import type { Conversation } from '../people.ts';
import {
  at,
  atFigures,
  BLOCK,
  GOOD,
  here,
  MOTORS,
  PLATE,
  PROVING,
  REPAIR,
  RESIDUAL,
  strip,
  typed,
  WEAK_HERM,
} from './given.ts';

const PROVES = '241 240 comp 13.1 fan .9 split 19';
const ROTOR = '241 240 comp 90 fan .9';
const LOOK = 'clean, 1 cap, 45+5 6% 440';
const DEAD = ['yes', LOOK, PROVING, RESIDUAL];
const round = (c: Conversation): string => c.place.split('/')[0] ?? '';
/** The next round of the same trouble, up to its failed restart. */
const again = (c: Conversation): Conversation =>
  typed(c, ['d', ...DEAD, BLOCK, 'no diagram', 'done', WEAK_HERM, ...MOTORS, ...REPAIR, 'closed', ROTOR, 'off']);
const fail = (): Conversation => typed(atFigures(), [ROTOR, 'off']);

describe('given the new part is in, when the live figures read so', () => {
  test.each([
    ['inside, the split to come', '241 comp 13.1 fan .9', 'later'],
    ['inside, with the split', PROVES, 'repair-proven'],
    ['supply at 196.9 V', '196.9 comp 13.1 fan .9', 'repeat'],
    ['supply at 253.1 V', '253.1 comp 13.1 fan .9', 'repeat'],
    ['a sag at the start below the lower limit', '241 240 comp 13.1 fan .9 min 196', 'repeat'],
    ['T1 to T2 three volts under L1 to L2', '241 238 comp 13.1 fan .9 split 19', 'poles'],
    ['compressor at 94 % of its LRA', ROTOR, 'stands'],
    ['compressor draws nothing', '241 comp 0.2 fan .9', 'stands'],
    ['fan above its FLA', '241 comp 13.1 fan 1.3', 'off'],
    ['fan draws nothing', '241 comp 13.1 fan 0', 'stands'],
    ['compressor above its RLA, which is no limit', '241 comp 18.4 fan .9', 'later'],
    ['a split of 24', '241 comp 13.1 fan .9 split 24', 'off'],
    ['no clamp meter', 'skip no clamp meter', 'restart-not-proven'],
  ])('%s → %s', (_, line, then) => {
    const c = typed(atFigures(), [line]);
    expect(c.verdicts[2] ?? here(c)).toBe(then);
  });
  test('and the split comes after 10 to 15 minutes, then it is proven, not before', () => {
    const c = typed(atFigures(), ['241 comp 13.1 fan .9']);
    expect(c.verdicts).toEqual(['section-fails-value', 'new-part-right']);
    expect([typed(c, ['split 19']).verdicts.at(-1), c.place, c.prompt().kind]).toEqual([
      'repair-proven',
      '!done',
      'finished',
    ]);
  });
  test('and the fan blows the wrong way, then the next round begins', () => {
    expect(typed(atFigures(), ['241 comp 13.1 fan .9', 'split 19, backwards', 'off']).place).toBe(
      'round~2/observation',
    );
  });
  test('without the nameplate nobody tells running from stalled: not proven', () => {
    const c = typed(at('readings'), [WEAK_HERM, ...MOTORS, ...REPAIR, '_ _ _', 'closed', PROVES]);
    expect(c.verdicts.at(-1)).toBe('restart-not-proven');
  });
  test('no such part, or not today: left off, and nothing is called proven', () => {
    expect(typed(at('readings'), [WEAK_HERM, ...MOTORS, 'nothing', 'skip no such part']).place).toBe('!left');
    expect(
      typed(at('readings'), [WEAK_HERM, ...MOTORS, ...REPAIR, PLATE, 'Not today: it stays off']).verdicts.at(-1),
    ).toBe('left-off');
  });
});

describe('given a restart that failed', () => {
  test('then the next round begins at the observation; the class is known; dead is proved again from the lock', () => {
    const c = fail();
    expect([c.place, strip(c) === 'proved']).toEqual(['round~2/observation', false]);
    expect(here(typed(c, ['d']))).toBe('locked');
    expect(typed(c, [...DEAD]).place).toBe('round~2/block/line');
  });
  test('then the earlier findings stay, and the nameplate is not asked twice', () => {
    const c = typed(fail(), ['d', ...DEAD, BLOCK, 'no diagram', 'done', WEAK_HERM, ...MOTORS, ...REPAIR]);
    expect([here(c), c.prompt().verdicts.map((v) => v.place.split('/')[0])]).toEqual([
      'closed',
      ['round~1', 'round~1', 'round~2', 'round~2'],
    ]);
  });
  test('then the second round is proven against the nameplate of the first', () => {
    const c = typed(fail(), [
      'd',
      ...DEAD,
      BLOCK,
      'no diagram',
      'done',
      WEAK_HERM,
      ...MOTORS,
      ...REPAIR,
      'closed',
      PROVES,
    ]);
    expect([c.place, c.verdicts.at(-1)]).toEqual(['!done', 'repair-proven']);
  });
  test.each([
    ['a part condemned by sight, the new one clean', 'bulged, 1 cap, 45+5 6% 440', [], 'condemned-by-sight', LOOK],
    [
      'a part out of its label, the new one bulged',
      LOOK,
      [WEAK_HERM],
      'section-fails-value',
      'bulged, 1 cap, 45+5 6% 440',
    ],
    [
      '45+5 out of its label, a new one with 35+5',
      LOOK,
      [WEAK_HERM],
      'section-fails-value',
      'clean, 1 cap, 35+5 6% 440',
    ],
  ])('%s: what is seen of the new part rewrites nothing of the old', (_, old, lines, verdict, look) => {
    const fitted = typed(at('wires', { look: old }), [
      'done',
      ...lines,
      ...MOTORS,
      ...REPAIR,
      PLATE,
      'closed',
      ROTOR,
      'off',
      'd',
      'yes',
      look,
    ]);
    expect([here(fitted), round(typed(fitted, [PROVING, RESIDUAL]))]).toEqual(['proving', 'round~2']);
    expect(fitted.prompt().verdicts.map((v) => v.verdict)).toEqual([verdict, 'new-part-right']);
  });
  test('and the lock came off after the fit: the look is at the new part, and rewiring goes on', () => {
    const c = typed(at('wires', { look: 'bulged, 1 cap, 45+5 6% 440' }), [
      'done',
      ...MOTORS,
      ...REPAIR.slice(0, 3),
      'lock is off',
      'yes',
      LOOK,
      PROVING,
      RESIDUAL,
    ]);
    expect([c.place, strip(c)]).toEqual(['round~1/repair/rewire', 'proved']);
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
  const done = (given = {}): Conversation => typed(atFigures(given), [PROVES], (given as { by?: 'ruth' }).by);
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
