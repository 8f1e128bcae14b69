/** A hazard wins: from any state, in whatever is typed, over stop and everything else. */
import { describe, expect, test } from 'vitest';
import { Conversation } from '../people.ts';
import { at, atFigures, GOOD, here, type Step, strip, typed, WEAK_HERM } from './given.ts';

const noted = (c: Conversation) => c.entries.findLast((e) => e.kind === 'noted')?.body;

describe('given any state, when somebody types this, then the emergency card stands and no isolation does', () => {
  test.each([
    ['I smell smoke', 'smoke'],
    ['got bit by the cap', 'shock'],
    ['theres fire', 'fire'],
    ['gas smell here', 'gas'],
    ['he fainted', 'collapse'],
    ['stop, smoke', 'smoke'],
    ['yes and there is smoke', 'smoke'],
    ['herm 44.6 fan 5.03 case ol smoke!!', 'smoke'],
  ])('%s', (text, hazard) => {
    const c = at('readings').type(text);
    expect([c.place, strip(c), c.kinds]).toEqual(['!emergency', 'not-proved', ['alarmed']]);
    expect(c.entries.at(-1)?.body).toMatchObject({ hazard });
  });
  test.each(['observation', 'fit', 'locked', 'proving', 'residual', 'block', 'wires', 'readings'] as Step[])(
    'at %s',
    (step) => {
      expect(at(step).type('I got shocked').place).toBe('!emergency');
    },
  );
  test.each([
    ['held', (c: Conversation) => typed(c, Array(3).fill('9.3 / 31 0 31 / 9.3')), 'residual'],
    ['stopping', (c: Conversation) => typed(c, ['stop']), 'readings'],
    ['paused', (c: Conversation) => typed(c, ['stop', 'cover on, lock stays']), 'readings'],
    ['being handed over', (c: Conversation) => typed(c, ['hand over tomas']), 'readings'],
    ['finished', (c: Conversation) => typed(c, [GOOD]), 'readings'],
    ['an open hazard question', (c: Conversation) => typed(c, ['burnt terminal']), 'readings'],
  ] as const)('%s', (_, bring, step) => {
    expect(bring(at(step)).type('I smell smoke').place).toBe('!emergency');
  });
  test('while live figures are read, and by somebody who takes no part', () => {
    expect(atFigures().type('fire', 'dana').place).toBe('!emergency');
    expect(at('readings').type('I smell smoke', 'tomas').place).toBe('!emergency');
  });
  test('near gas no switch is touched; else no water; the number is the shop’s', () => {
    const body = (text: string): string =>
      at('readings', { settings: { emergencyNumber: '112' } })
        .type(text)
        .prompt()
        .body.join(' ');
    expect(body('gas smell')).toContain('Touch no switch and light no flame');
    expect(body('I smell smoke')).toContain('Use water on nothing electrical');
    expect(body('I smell smoke')).toContain('Call 112.');
  });
});

describe('given words beside the question, when there is danger in them, then the hazard wins', () => {
  test.each([
    ['a skip’s reason', 'skip there is smoke'],
    ['a note', 'note it smells like smoke now'],
    ['a question for a senior', 'senior, I got shocked'],
    ['a hand-over', 'hand over tomas, I got shocked'],
    ['a correction', 'back herm 44, the cap exploded'],
  ])('%s', (_, text) => {
    expect(at('readings').type(text).place).toBe('!emergency');
  });
  test('a note part, tapped', () => {
    const c = at('wires').tap({ ok: 'done', colours: 'smoke out of the panel' });
    expect([c.place, c.kinds]).toEqual(['!emergency', ['alarmed']]);
  });
  test('the reason of an amendment, and of what is taken back', () => {
    const c = typed(at('readings'), [WEAK_HERM]);
    const of = c.seqOf('/sections');
    expect(c.send({ kind: 'amend', client: 'a1', of, parts: { fan: '5.1' }, reason: 'I got shocked' }).kinds).toEqual([
      'alarmed',
    ]);
    const d = typed(at('readings'), [WEAK_HERM]);
    expect(d.send({ kind: 'withdraw', client: 'a2', of, reason: 'there was fire' }).kinds).toEqual(['alarmed']);
  });
  test('an answer that is stale is still read for danger', () => {
    const c = at('readings');
    expect(c.send({ kind: 'text', client: 's1', seq: 1, text: 'smoke!' }).place).toBe('!emergency');
  });
});

describe('given words that may be an old mark, then one tap tells', () => {
  const asked = (): Conversation => at('readings').type('burnt terminal');
  test('it is asked, nothing is void yet, and nothing else is taken', () => {
    const c = asked();
    expect([c.place, c.kinds, c.prompt().parts[0]]).toMatchObject(['!hazard', ['noted'], { kind: 'choose' }]);
    expect(c.type(GOOD).kinds).toEqual(['noted']);
    expect(c.place).toBe('!hazard');
  });
  test('an old mark: on as before, still proved, on the record', () => {
    const c = asked().tap({ choice: 'old-mark' });
    expect([here(c), strip(c), noted(c)]).toEqual(['sections', 'proved', expect.objectContaining({ as: 'old-mark' })]);
  });
  test('happening: the emergency', () => {
    const c = asked().tap({ choice: 'happening' });
    expect([c.place, strip(c)]).toEqual(['!emergency', 'not-proved']);
  });
  test('only who wrote it calls it old; anybody calls it an emergency', () => {
    expect(asked().type('old mark', 'ruth').refusal?.code).toBe('no-right');
    expect(asked().type('happening', 'tomas').place).toBe('!emergency');
  });
});

test.each(['no smoke', 'smoke is gone', 'smoke detector is fine', 'no fire no smoke'])(
  'given "%s", then it is no hazard',
  (text) => {
    const c = at('readings').type(text);
    expect([here(c), strip(c)]).toEqual(['sections', 'proved']);
  },
);
test('given an offered option and nothing else, then it is the answer, not a hazard', () => {
  expect(here(at('look').tap({ condition: ['burnt-through'], count: '1' }))).toBe('proving');
  expect(here(typed(new Conversation(), ['Other noise or smell']))).toBe('what');
});

describe('given an emergency', () => {
  const alarmed = (by: 'ines' | 'dana' = 'ines'): Conversation => at('readings').type('I smell smoke', by);
  test('then seen says who saw it, and ends nothing', () => {
    const c = alarmed().type('seen', 'ruth');
    expect([c.place, c.entries.at(-1)]).toMatchObject(['!emergency', { kind: 'acknowledged', by: 'ruth' }]);
  });
  test('then a senior or the owner releases it with a reason; nobody else, and no holder', () => {
    const c = alarmed();
    for (const by of ['ines', 'tomas', 'dana'] as const)
      expect(c.type('release, all clear', by).refusal?.code).toBe('no-right');
    expect(c.type('release', 'ruth').refusal?.code).toBe('reason-needed');
    expect(here(c.type('release, I stood there', 'otto'))).toBe('locked');
    const own = at('readings', { assigned: ['ruth'], by: 'ruth' }).type('I smell smoke', 'ines');
    expect(own.type('release, all clear', 'ruth').refusal?.code).toBe('no-right');
  });
  test('heard of, not here: the sender, a senior, the owner; recorded, without a hold', () => {
    expect(alarmed().type('not here', 'tomas').refusal?.code).toBe('no-right');
    expect(alarmed().type('not here', 'dana').refusal?.code).toBe('no-right');
    const c = alarmed('dana').tap({ choice: 'not-here' }, 'dana');
    expect([here(c), c.entries.at(-1)]).toMatchObject(['locked', { kind: 'released', body: { as: 'not-here' } }]);
    expect(here(alarmed().type('not here', 'ruth'))).toBe('locked');
  });
  test('then no reading, correction or go on passes it, and stop waits behind it', () => {
    const c = alarmed();
    for (const text of [GOOD, 'go on', 'skip it', 'approve, ok', 'back']) expect(c.type(text).place).toBe('!emergency');
    expect(c.send({ kind: 'amend', client: 'b1', of: c.seqOf('/class'), parts: { choice: 'ecm' } }).refusal?.code).toBe(
      'held',
    );
    typed(c, ['stop']);
    expect(c.place).toBe('!emergency');
    expect(c.type('release, clear', 'ruth').place).toBe('!stopping');
  });
  test('a second cry for help is kept, and stays one emergency', () => {
    const c = alarmed().type('there is fire now');
    expect([c.kinds, c.entries.filter((e) => e.kind === 'alarmed').length]).toEqual([['noted'], 1]);
  });
});
