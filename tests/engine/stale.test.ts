/** An isolation ends: by its age, by what somebody reports, by a change of hands, by power. And where it is entered again. */
import { describe, expect, test } from 'vitest';
import { Conversation } from '../people.ts';
import {
  at,
  atFigures,
  GOOD,
  here,
  MEANS,
  MOTORS,
  PROVING,
  PROVING_THREE,
  RESIDUAL,
  strip,
  THREE,
  typed,
  WEAK_HERM,
} from './given.ts';

const minutes = (c: Conversation, n: number): string => new Date(c.now + n * 60_000).toISOString();
const voided = (c: Conversation) => c.entries.findLast((e) => e.kind === 'voided')?.body;
const MEANS_CHIPS = { means: ['pull-out', 'breaker'], feeds: ['none'], supply: ['two-legs'], source: ['outlet'] };
const chips = (c: Conversation) =>
  Object.fromEntries(c.prompt().parts.flatMap((p) => (p.kind === 'choose' ? [[p.key, p.remembered]] : [])));

describe('given a proved isolation, when its holder is silent', () => {
  test('for exactly 30:00, then it stands; for 30:00.001, then it does not, though nobody typed', () => {
    const c = at('readings');
    c.now += 30 * 60_000;
    expect([here(c), strip(c)]).toEqual(['sections', 'proved']);
    c.now += 1;
    expect([here(c), strip(c), c.entries.some((e) => e.kind === 'voided')]).toEqual(['proving', 'being-proved', false]);
  });
  test('for 30:00 and answers, then the answer counts and begins another 30:00', () => {
    const c = at('wires').wait(30);
    expect(here(typed(c, ['done']).wait(30))).toBe('sections');
    expect(here(c.wait(0, 1))).toBe('proving');
  });
  test('for 31 minutes and then answers, then the void is dated at its deadline and the reading is not taken', () => {
    const c = at('readings');
    const deadline = minutes(c, 30);
    c.wait(31).type(GOOD);
    expect([c.kinds.includes('answered'), voided(c), here(c)]).toEqual([
      false,
      { reason: 'age', since: deadline },
      'proving',
    ]);
  });
  test('then two prompts prove it again: the lock with the proving line, then the residuals; findings are kept', () => {
    const c = at('readings').wait(31);
    expect(c.prompt().parts[0]).toMatchObject({ key: 'still', kind: 'confirm' });
    expect(c.type(PROVING).refusal?.parts).toEqual(['still']);
    typed(c, [`yes ${PROVING}`, RESIDUAL]);
    expect([here(c), strip(c)]).toEqual(['sections', 'proved']);
  });
  test('and the line that confirmed the lock is taken back once it is proved, then the lock is confirmed again', () => {
    const c = typed(at('readings').wait(31), [`yes ${PROVING}`, RESIDUAL, WEAK_HERM]);
    const line = c.entries.findLast((e) => e.kind === 'answered' && e.body.place.endsWith('/proving'));
    c.send({ kind: 'withdraw', client: 'line-back', of: line?.seq ?? 0 });
    expect([here(c), strip(c), c.prompt().parts[0]?.key]).toEqual(['proving', 'being-proved', 'still']);
    expect(c.type(PROVING).refusal?.parts).toEqual(['still']);
    expect(strip(typed(c, [`yes ${PROVING}`, RESIDUAL]))).toBe('proved');
  });
  test('and one more capacitor is found after it, then the lock is confirmed again with the line', () => {
    const c = typed(at('readings').wait(31), [`yes ${PROVING}`, RESIDUAL]);
    const look = c.entries.findLast((e) => e.kind === 'answered' && e.body.place.endsWith('/look'));
    c.send({ kind: 'amend', client: 'more', of: look?.seq ?? 0, parts: { count: '2' } });
    expect([here(c), c.prompt().parts[0]?.key]).toEqual(['proving', 'still']);
  });
  test('then one prompt proves it again where no capacitor is wired', () => {
    const c = typed(at('look', THREE), ['clean, 0 caps', PROVING_THREE]).wait(31);
    expect(here(c)).toBe('proving');
    expect(strip(typed(c, [`yes ${PROVING_THREE}`]))).toBe('proved');
  });
  test('before the first line was taken, then the lock is confirmed as well', () => {
    const c = at('proving').wait(31);
    expect(c.prompt().parts[0]?.key).toBe('still');
  });
  test('and nothing is locked yet, then nothing goes stale', () => {
    expect(here(at('locked').wait(600))).toBe('locked');
  });
});

describe('given a proved isolation, when others write in the 30 minutes, then nothing changes', () => {
  const over = (c: Conversation): string[] => [here(c.wait(29)), here(c.wait(1)), here(c.wait(0, 1))];
  test.each([
    ['a senior asks', 'ask which meter is it', 'ruth'],
    ['a senior notes', 'note I am watching', 'ruth'],
    ['somebody raises', 'senior', 'dana'],
    ['another technician notes', 'note the gate is open', 'tomas'],
    ['the holder notes', 'note the gate is open', 'ines'],
    ['the holder asks where', 'where', 'ines'],
    ['the holder types what is refused', 'herm 44.6', 'ines'],
    ['the holder types what nobody reads', 'bla bla bla', 'ines'],
  ] as const)('%s', (_, text, by) => {
    const c = at('readings');
    const until = minutes(c, 30);
    c.wait(29).type(text, by);
    expect([here(c), strip(c), c.prompt().isolation[0]?.until]).toEqual(['sections', 'proved', until]);
    expect([here(c.wait(1)), here(c.wait(0, 1))]).toEqual(['sections', 'proving']);
  });
  test('a question answered from afar neither ends it nor keeps it young', () => {
    const c = typed(typed(at('readings').wait(29), ['ask what does the label say'], 'ruth'), ['reply 45+5']);
    expect(strip(c)).toBe('proved');
    expect(over(c)).toEqual(['proving', 'proving', 'proving']);
  });
  test('an eyes step that another technician answers does not restart it', () => {
    const ready = typed(at('readings', { assigned: ['ines', 'tomas'] }), [WEAK_HERM, ...MOTORS]).wait(29);
    const c = typed(ready, ['coil'], 'tomas');
    expect([here(c), here(c.wait(1, 1))]).toEqual(['part', 'proving']);
  });
});

describe('given a proved isolation, when this happens, then it is entered again here, and findings are kept', () => {
  const emergency = (c: Conversation) => typed(typed(c, ['I smell smoke']), ['release, seen in person'], 'ruth');
  test.each([
    ['power came back', (c: Conversation) => typed(c, ['power is back'], 'dana'), 'locked', 'power-back'],
    ['the lock came off', (c: Conversation) => typed(c, ['my lock came off']), 'locked', 'lock-off'],
    ['an emergency was released', emergency, 'locked', undefined],
    [
      'it was left without a lock',
      (c: Conversation) => typed(c, ['stop', 'cover on, no lock', 'go on']),
      'locked',
      'lock-off',
    ],
  ] as const)('%s', (_, happens, place, reason) => {
    const c = happens(at('readings'));
    expect([here(c), strip(c)]).toEqual([place, 'being-proved']);
    expect(voided(c)).toEqual(reason === undefined ? undefined : expect.objectContaining({ reason }));
    expect(here(typed(c, ['yes', 'clean, 1 cap, 45+5 6% 440', PROVING, RESIDUAL]))).toBe('sections');
  });
  test('a pause with the lock on ends nothing', () => {
    expect(strip(typed(at('readings'), ['stop', 'cover on, lock stays', 'go on']))).toBe('proved');
  });
  test('live work: the next dead test begins at the lock', () => {
    const c = atFigures();
    expect([here(c), c.prompt().class]).toEqual(['figures', 'live']);
    expect(strip(c)).not.toBe('proved');
    expect(here(typed(c, ['241 90 .9', 'off', 'd']))).toBe('locked');
  });
  test('a hand-over: the new holder begins at the first prompt, the chips stay filled', () => {
    const c = typed(typed(at('readings'), [WEAK_HERM, 'hand over tomas']), ['take over'], 'tomas');
    expect([here(c), strip(c), c.prompt().holder]).toEqual(['fit', 'not-proved', 'tomas']);
    typed(c, ['yes'], 'tomas');
    expect([here(c), chips(c)]).toEqual(['means', MEANS_CHIPS]);
    expect(c.type('pull-out').refusal?.code).toBe('not-holder');
    typed(
      c,
      ['pull-out, breaker, no other feed, two legs, outlet', 'yes', 'clean, 1 cap, 45+5 6% 440', PROVING, RESIDUAL],
      'tomas',
    );
    expect([here(c), strip(c), c.verdicts.at(-1)]).toEqual(['spin', 'proved', 'section-fails-value']);
  });
  test('until it is taken over, nobody answers anything', () => {
    const c = typed(at('readings'), ['hand over tomas']);
    expect([c.place, c.type(GOOD).kinds, c.type('take over').refusal?.code]).toEqual([
      '!taking-over',
      ['noted'],
      'no-right',
    ]);
  });
  test('a report where nothing was isolated is an observation', () => {
    expect(at('class').type('power is back', 'dana').kinds).toEqual(['noted']);
  });
});

describe('given a device that says when it was answered', () => {
  const said = (c: Conversation, min: number) => c.type(RESIDUAL, 'ines', { said: minutes(c, min) });
  test('when it says earlier, then the age counts from there', () => {
    const c = at('residual').wait(20);
    said(c, -15);
    expect([strip(c), strip(c.wait(15)), strip(c.wait(0, 1))]).toEqual(['proved', 'proved', 'being-proved']);
  });
  test('when it says later, then the server’s time counts', () => {
    const c = at('residual');
    said(c, 45);
    expect([strip(c.wait(30)), strip(c.wait(0, 1))]).toEqual(['proved', 'being-proved']);
  });
});

describe('given an answer without contact, then it authorises nothing', () => {
  const offline = (c: Conversation, parts: Record<string, string>) =>
    c.send({ kind: 'answer', client: c.client(), seq: c.prompt().seq, parts, offline: true });
  test('a reading is kept and marked, the isolation has ended', () => {
    const c = offline(at('readings'), { herm: '36.1', fan: '5.02', hf: '4.4', case: 'ol' });
    expect([here(c), strip(c), c.kinds, voided(c)]).toEqual([
      'locked',
      'being-proved',
      ['answered', 'voided', 'concluded'],
      expect.objectContaining({ reason: 'offline' }),
    ]);
    expect(c.entries.findLast((e) => e.kind === 'answered')?.body).toMatchObject({ offline: true });
  });
  test.each(['locked', 'proving', 'residual'] as const)('a gate is not taken: %s', (step) => {
    const c = at(step);
    const parts = step === 'locked' ? { ok: 'yes' } : Object.fromEntries(c.prompt().parts.map((p) => [p.key, '0']));
    expect([offline(c, parts).refusal?.code, c.kinds]).toEqual(['gate', []]);
  });
  test('where nothing was isolated, nothing ends', () => {
    expect(offline(at('class'), { choice: 'psc' }).kinds).toEqual(['answered']);
  });
  const typedOffline = (c: Conversation, text: string) =>
    c.send({ kind: 'text', client: c.client(), seq: c.prompt().seq, text, offline: true });
  test('typed or tapped, it is the same', () => {
    const c = typedOffline(at('readings'), WEAK_HERM);
    expect([voided(c), strip(c)]).toEqual([expect.objectContaining({ reason: 'offline' }), 'being-proved']);
    const gate = typedOffline(at('locked'), 'yes');
    expect([gate.refusal?.code, gate.kinds]).toEqual(['gate', []]);
  });
  test('it lets nothing go on: a pause, a hand-over, an emergency stay as they are; a stop and an alarm are heard', () => {
    const paused = typed(at('class'), ['stop']).send({
      kind: 'answer',
      client: 'p',
      seq: at('class').prompt().seq + 1,
      parts: { cover: 'on', lock: 'on' },
      offline: true,
    });
    for (const text of ['go on', 'sign', 'release nobody was hurt', 'approve', 'take over'])
      expect([typedOffline(paused, text).refusal?.code, paused.kinds]).toEqual(['gate', []]);
    const alarmed = typed(at('class'), ['i got a shock']);
    expect([offline(alarmed, { choice: 'not-here' }).refusal?.code, alarmed.kinds]).toEqual(['gate', []]);
    expect(offline(alarmed, { choice: 'seen' }).kinds).toEqual(['acknowledged']);
    expect(typedOffline(at('class'), 'stop').kinds).toEqual(['paused']);
    expect(typedOffline(at('class'), 'i got a shock').kinds).toEqual(['alarmed']);
  });
});

describe('given an electronic blower whose bus has rested, when power was on since', () => {
  const RESTED = ['i', 'yes', 'nothing', 'ecm', 'off now', 'rested'];
  const INSIDE = ['yes', 'yes', MEANS, 'yes', 'clean, 0', '120 0 0 0 0 0 120'];
  const inside = () => typed(new Conversation(), [...RESTED, ...INSIDE]);
  const AGAIN = ['yes', 'clean, 0', '120 0 0 0 0 0 120'];

  test.each([
    ['it came back', ['power is back']],
    ['the lock was off', ['lock is off']],
    ['an emergency was raised', ['i smell smoke', 'seen']],
  ])('because %s, then it rests anew, counted from when it is off again', (_, lines) => {
    const c = typed(inside(), lines);
    if (lines.length > 1) c.type('release all clear, seen in person', 'ruth');
    expect(c.place).toBe('round~1/blower/rests/off');
    expect(typed(c, ['off now']).type('yes').refusal?.code).toBe('too-early');
    expect(here(typed(c.wait(5), ['yes', ...AGAIN]))).toBe('probes');
  });
  test('while it still rested, then the five minutes begin anew', () => {
    const c = typed(new Conversation(), RESTED.slice(0, 5)).wait(4);
    expect([here(typed(c, ['power is back'])), c.kinds]).toEqual(['off', ['voided']]);
    expect(typed(c, ['off now']).type('yes').refusal?.code).toBe('too-early');
  });
  test('after a silence, or what a live page takes, no rest falls', () => {
    expect(here(inside().wait(31))).toBe('proving');
    const live = typed(inside(), ['done', '25']);
    expect(here(live)).toBe('motor');
    expect(here(typed(live, ['power is back']))).toBe('motor');
  });
});
