/** Changing an answer and taking one back: what is judged anew, what stays, what falls, and who may. */
import { describe, expect, test } from 'vitest';
import { may } from '../../engine/desk/rights.ts';
import { ticket } from '../../engine/desk/ticket.ts';
import { memoryOf } from '../../engine/replay.ts';
import type { GivenParts } from '../../engine/schema.ts';
import { Conversation, type PersonId, PROVES } from '../people.ts';
import {
  at,
  BLOCK,
  evidence,
  GOOD,
  here,
  MOTORS,
  PLATE,
  PROVING,
  RESIDUAL,
  strip,
  typed,
  WEAK_FAN,
  WEAK_HERM,
} from './given.ts';

const amend = (
  c: Conversation,
  place: string,
  parts: GivenParts,
  by: PersonId = 'ines',
  reason?: string,
): Conversation =>
  c.send({ kind: 'amend', client: c.client(), of: c.seqOf(place), parts, ...(reason ? { reason } : {}) }, by);
const withdraw = (c: Conversation, place: string, by: PersonId = 'ines', reason?: string): Conversation =>
  c.send({ kind: 'withdraw', client: c.client(), of: c.seqOf(place), ...(reason ? { reason } : {}) }, by);
const judgedBad = (): Conversation => typed(at('readings'), [WEAK_HERM]);
/** How each answer of the ticket stands, by the last name of its place. */
const stands = (c: Conversation): Record<string, string> =>
  Object.fromEntries(
    ticket(c.standing, c.entries, { resolve: () => '', name: (id) => id }).flatMap((l) =>
      l.place ? [[l.place.split('/').at(-1), l.standing]] : [],
    ),
  );

describe('given a verdict, when an answer behind it is changed, then later answers are judged anew', () => {
  test('the label: the readings are kept, the verdict changes, the isolation stays', () => {
    const c = amend(judgedBad(), '/look', { print: '35+5 6% 440' });
    expect([c.verdicts.slice(0, 2), strip(c)]).toEqual([['section-fails-value', 'capacitor-good'], 'proved']);
    expect(stands(c)).toMatchObject({ look: 'kept', sections: 'kept' });
    expect(c.prompt().verdicts.map((v) => v.verdict)).not.toContain('section-fails-value');
  });
  test('one reading: the other stays, and the record holds both', () => {
    const c = amend(judgedBad(), '/sections', { herm: '44.6', hf: '4.52' });
    expect([c.kinds, c.verdicts.slice(0, 2)]).toEqual([
      ['amended', 'concluded'],
      ['section-fails-value', 'capacitor-good'],
    ]);
    expect(evidence(c)).toMatch(/HERM reads 44.6[\s\S]*FAN reads 5.02/);
    expect(c.entries.filter((e) => e.kind === 'answered' && e.body.place.endsWith('sections'))[0]?.body).toMatchObject({
      parts: { herm: { value: '36.1' } },
    });
  });
  test('to the same verdict with other figures: it is concluded again, on the amendment', () => {
    const c = amend(judgedBad(), '/sections', { herm: '36.2' });
    expect(c.verdicts).toEqual(['section-fails-value', 'section-fails-value']);
    const seq = c.entries.find((e) => e.kind === 'amended')?.seq;
    expect(c.entries.at(-1)?.body).toMatchObject({ evidence: expect.arrayContaining([seq]) });
  });
  test('an earlier choice: what is no longer on the way is set aside and shown so, and comes back with the choice', () => {
    const c = amend(judgedBad(), '/class', { choice: 'out-of-scope' });
    expect([here(c), stands(c).sections]).toEqual(['out-of-scope', 'set-aside']);
    amend(c, '/class', { choice: 'psc' });
    expect([here(c), stands(c).sections]).toEqual(['spin', 'kept']);
  });
  test('what is seen: bulged condemns by sight, the readings are set aside', () => {
    const c = amend(judgedBad(), '/look', { condition: ['bulged'] });
    expect([c.verdicts.at(-1), stands(c).sections, strip(c)]).toEqual(['condemned-by-sight', 'set-aside', 'proved']);
  });
});

describe('given a proved isolation, when a gate is changed, then it falls unless the change can’t matter', () => {
  test.each([
    ['/fit', { ok: 'no' }, 'unfit'],
    ['/means', { feeds: ['generator'] }, 'locked'],
    ['/means', { source: 'unit240' }, 'locked'],
    ['/locked', { ok: 'no' }, 'means'],
    ['/proving', { l1g: '0.3' }, 'proving'],
    ['/residual', { hc: '0.7' }, 'residual'],
    ['/look', { count: '2' }, 'proving'],
  ])('%s to %j: asked again from %s', (place, parts, from) => {
    const c = amend(at('readings'), place, parts);
    expect([c.kinds, here(c)]).toEqual([['amended'], from]);
    expect(strip(c)).not.toBe('proved');
  });
  test('one capacitor fewer, or another look or print, changes nothing', () => {
    const two = typed(at('look'), [
      'clean, 2 caps, 45+5 6% 440',
      PROVING,
      '9.3 / 0 0 0 / 0 / 9.3',
      BLOCK,
      'no diagram',
      'done',
    ]);
    expect(strip(amend(two, '/look', { count: '1' }))).toBe('proved');
    expect(strip(amend(at('readings'), '/look', { condition: ['rust'], print: '40+5 6% 440' }))).toBe('proved');
  });
  test('one more capacitor is asked for in the line, and discharged before hands go in', () => {
    const c = typed(amend(at('readings'), '/look', { count: '2' }), [PROVING]);
    expect(c.type(RESIDUAL).refusal).not.toBeNull();
    expect(strip(typed(c, ['9.3 / 0 0 0 / 0 / 9.3']))).toBe('proved');
  });
});

describe('given an answer, when it is taken back, then what rests on it falls', () => {
  test('a reading: asked again, the isolation stays', () => {
    const c = withdraw(judgedBad(), '/sections');
    expect([here(c), strip(c), stands(c).sections, c.prompt().verdicts]).toEqual(['sections', 'proved', 'fallen', []]);
    expect(typed(c, [GOOD]).verdicts[1]).toBe('capacitor-good');
  });
  test('the first readings: the third rests on them', () => {
    const c = withdraw(typed(at('readings'), ['herm 44.6 fan 4.52 case ol', 'fan 4.5 hf 4.09']), '/sections');
    expect(here(typed(c, ['herm 44.6 fan 4.52 case ol']))).toBe('third');
  });
  test.each(['/fit', '/means', '/locked', '/proving', '/residual'])(
    'a gate, %s: the isolation falls, findings stay',
    (place) => {
      const c = withdraw(judgedBad(), place);
      expect([here(c), strip(c) === 'proved', stands(c).sections]).toEqual([place.slice(1), false, 'kept']);
    },
  );
  test('the look with its amended print: the label is not known any more', () => {
    const c = withdraw(
      amend(amend(judgedBad(), '/look', { print: '35+5 6% 440' }), '/look', { condition: ['rust'] }),
      '/look',
    );
    expect(memoryOf(c.standing).job.label).toBeUndefined();
    expect(strip(c)).not.toBe('proved');
  });
  test('what fell can’t be changed or taken back again', () => {
    const c = judgedBad();
    const of = c.seqOf('/sections');
    withdraw(c, '/sections');
    expect(c.send({ kind: 'amend', client: 'x1', of, parts: { herm: '44' } }).refusal?.code).toBe('nothing-to-change');
    expect(c.send({ kind: 'withdraw', client: 'x2', of }).refusal?.code).toBe('nothing-to-change');
  });
});

describe('given the words back and take back', () => {
  test('back: the last answer as a question again, filled in, nothing changed', () => {
    const c = typed(at('readings'), [WEAK_FAN]).type('back');
    const fan = c.last?.again?.parts.find((p) => p.key === 'fan');
    expect([c.kinds, c.last?.again?.amends, fan]).toMatchObject([[], c.seqOf('/sections'), { remembered: '2.9' }]);
  });
  test('back fan 5.2: that part alone', () => {
    const c = typed(at('readings'), [WEAK_FAN]).type('back fan 5.03 hf 4.52');
    expect([c.kinds[0], c.verdicts[1]]).toEqual(['amended', 'capacitor-good']);
    expect(typed(at('readings'), [WEAK_HERM]).type('back fan 5.2').kinds).toEqual(['amended', 'concluded']);
  });
  test('back with what stands already, or with nothing read, changes nothing', () => {
    const c = typed(at('readings'), [WEAK_FAN]);
    expect(c.type('back fan 2.9').refusal?.code).toBe('nothing-to-change');
    expect(c.type('back fan 5.2 ohm').refusal).not.toBeNull();
    expect(c.entries.some((e) => e.kind === 'amended')).toBe(false);
  });
  test('take back: the last answer of one’s own', () => {
    expect(here(typed(at('readings'), [WEAK_FAN, 'take back'])) + here(typed(at('readings'), ['take back']))).toBe(
      'sectionswires',
    );
  });
});

describe('given an answer of Ines, who holds the lock', () => {
  const call = (): Conversation => typed(at('readings', { assigned: ['ines', 'tomas'] }), [WEAK_HERM]);
  const why = 'the photo shows it';
  test.each([
    ['ines', undefined, 'change', 'change', 'back', 'back'],
    ['tomas', why, 'no', 'no', 'no', 'no'],
    ['ruth', undefined, 'no', 'no', 'no', 'no'],
    ['ruth', why, 'change', 'no', 'back', 'back'],
    ['otto', why, 'change', 'no', 'back', 'back'],
    ['dana', why, 'no', 'no', 'no', 'no'],
  ] as const)(
    '%s with reason %s: changes a reading %s, a gate %s; takes back a reading %s, a gate %s',
    (by, reason, ...told) => {
      const done = (c: Conversation, yes: string): string =>
        c.refusal?.code === 'no-right' ? 'no' : c.refusal ? c.refusal.code : yes;
      expect([
        done(amend(call(), '/sections', { herm: '44' }, by, reason), 'change'),
        done(amend(call(), '/proving', { l1g: '0.3' }, by, reason), 'change'),
        done(withdraw(call(), '/sections', by, reason), 'back'),
        done(withdraw(call(), '/proving', by, reason), 'back'),
      ]).toEqual(told);
    },
  );
  test('the holder changes what another answered, and who answered changes their own', () => {
    const why = at('readings', { assigned: ['ines', 'tomas'] });
    const c = typed(typed(typed(why, [WEAK_HERM, ...MOTORS]), ['coil'], 'tomas'), ['skip no part here']);
    expect(amend(c, '/why', { cause: ['fan'] }).kinds).toContain('amended');
    expect(amend(c, '/why', { cause: ['coil'] }, 'tomas').refusal).toBeNull();
    expect(
      may(['dispatcher'], 'amend', { own: true, holder: false, gate: false, reason: true, participates: true }),
    ).toBe(false);
  });
  test('a signed record is changed by nobody until it is sent back', () => {
    const c = typed(typed(at('readings'), [GOOD, ...MOTORS, PLATE, 'closed', PROVES]), ['sign'], 'ruth');
    expect([
      amend(c, '/sections', { herm: '36.1' }).refusal?.code,
      withdraw(c, '/sections', 'ruth', why).refusal?.code,
    ]).toEqual(['closed', 'closed']);
    expect(
      amend(typed(c, ['send back, read HERM again'], 'ruth'), '/sections', { herm: '36.1', hf: '4.4' }).verdicts.at(-1),
    ).toBe('section-fails-value');
  });
});

describe('given a unit that was proved dead as one with two legs', () => {
  test('when its kind is changed to three-phase, then the line is asked again, and all six pairs', () => {
    const c = at('block');
    expect(strip(c)).toBe('proved');
    amend(c, '/class', { choice: 'three-phase' });
    expect(c.refusal).toBeNull();
    expect(here(c)).toBe('proving');
    expect(strip(c)).toBe('being-proved');
    expect(c.notices).toContain('changes which readings prove it dead');
    c.type(PROVING);
    expect(here(c)).toBe('means');
  });
  test('when its kind is first said, then nothing is said to be taken again: no line was taken', () => {
    const c = new Conversation().types('c', '3-phase', 'neither');
    expect(c.prompt().title).toContain('Are you and your meter fit');
    expect(JSON.stringify(c.prompt())).not.toContain('Take the line again');
  });

  test('when its kind is taken back and said to be three-phase, then too', () => {
    const c = withdraw(at('block'), '/class');
    c.type('three-phase');
    expect(strip(c)).not.toBe('proved');
  });
  test('when its kind is changed to another with two legs, then it stands', () => {
    expect(strip(amend(at('block'), '/class', { choice: 'ecm' }))).toBe('proved');
  });
});
