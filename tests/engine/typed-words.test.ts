/** What is typed beside the question that stands: commands, reports, "can't", and what is understood nowhere. */
import { describe, expect, test } from 'vitest';
import { Conversation } from '../people.ts';
import { at, atFigures, here, MOTORS, PROVING, RESIDUAL, type Step, typed, WEAK_HERM } from './given.ts';

/** Notes on the record, in the words typed. */
const notes = (c: Conversation): string[] =>
  c.entries.flatMap((e) =>
    e.kind === 'noted' && e.body.text ? [c.texts.find((t) => t.ref === e.body.text?.ref)?.text ?? ''] : [],
  );
const part = (): Conversation => typed(at('readings'), [WEAK_HERM, ...MOTORS, 'nothing']);

describe('words of a command', () => {
  test('that is refused', () => {
    expect(notes(at('readings').type('hand over Bob'))).toContain('hand over Bob');
    expect(notes(at('fit').type('skip no time'))).toContain('skip no time');
    expect(notes(at('fit').type('left my meter in the van'))).toContain('left my meter in the van');
    expect(notes(at('fit').type('back fan 5.2'))).toContain('back fan 5.2');
  });
  test('that says why somebody stops', () => {
    const c = at('readings').type('stop, lightning close by');
    expect(c.place).toBe('!stopping');
    expect(notes(c)).toContain('stop, lightning close by');
  });
  test('that reports what ends an isolation, in whatever words', () => {
    const c = at('readings').type('somebody flipped the breaker back on');
    expect(c.entries.at(-1)).toMatchObject({ kind: 'voided', body: { reason: 'power-back' } });
    expect(c.texts.at(-1)?.text).toBe('somebody flipped the breaker back on');
  });
});

test('a report is an answer where it is offered, or where nothing was isolated yet', () => {
  const left = at('readings').type('stop').type('lock off');
  expect(left.refusal).toMatchObject({ code: 'missing', draft: { lock: ['off'] } });
  const seen = new Conversation().type('fan just started humming');
  expect(seen.kinds).toContain('answered');
});

test('a print that is typed before the part is picked waits in the draft', () => {
  const c = part().type('45+5 440 herm 45.3 fan 5.04');
  expect(c.refusal).toMatchObject({ code: 'missing', draft: { print: '45+5 440', herm: '45.3' } });
  c.type('other', 'ines', { draft: c.refusal?.draft ?? {} });
  expect(c.verdicts).toContain('new-part-right');
  expect(notes(part().type('first 45+5 440 herm 45.3 fan 5.04'))).toContain('45+5 440');
});

test('"can’t read it" is no print', () => {
  const c = at('wires', { look: 'clean, 1 cap' }).type('done').type('can’t read it, gone');
  expect(c.refusal).toBeNull();
  expect(c.place).toContain('diagram');
});

test('the card that asks about a mark is answered by words that name it', () => {
  const c = at('look').type('burnt wire at the contactor').type('just an old burn mark');
  expect(c.place).toContain('look');
  expect(c.entries.some((e) => e.kind === 'noted' && e.body.as === 'old-mark')).toBe(true);
  expect(at('look').type('burnt wire').type('its burning now').place).toBe('!emergency');
});

describe('beside the answer to a gate', () => {
  test.each<[Step, string]>([
    ['locked', 'yes, breaker is on'],
    ['locked', 'done, it hums'],
    ['locked', 'yes\nthe tag fell'],
    ['fit', 'yes, its drizzling'],
    ['proving', `${PROVING}, used the tick tracer`],
    ['residual', `${RESIDUAL}, across the wires`],
  ])('%s is not passed by “%s”; the plain answer passes', (step, text) => {
    const c = at(step).type(text);
    expect(c.refusal?.code).toBe('gate');
    expect(c.kinds).toEqual(['noted']);
    expect(here(c)).toBe(step);
    expect(notes(c)).toContain(text);
    c.type(step === 'proving' ? PROVING : step === 'residual' ? RESIDUAL : 'yes');
    expect(c.refusal).toBeNull();
    expect(here(c)).not.toBe(step);
  });
  test.each<[Step, string]>([
    ['locked', 'lock and tag on, tried'],
    ['locked', 'yes, all good'],
    ['proving', `${PROVING} all dead`],
  ])('%s is passed where what stands there says the same: “%s”', (step, text) => {
    expect(here(at(step).type(text))).not.toBe(step);
  });
  test('an answer that does not pass it is taken with its words', () => {
    const c = at('locked').type('no lock fits, hole too small');
    expect(c.refusal).toBeNull();
    expect(notes(c)).toContain('hole too small');
  });
});

test('a figure typed behind back to the line that is asked now overwrites no note', () => {
  const c = at('wires').type('wires off, red on herm').type('back fan 5.2');
  expect(c.refusal?.text).toContain('type it without back');
  expect(c.entries.some(({ kind }) => kind === 'amended')).toBe(false);
  expect(c.type('back').last?.again?.title).toContain('Record the wiring');
});

test('the line as it is asked is read by its own names', () => {
  const c = at('residual');
  expect(c.prompt().line).toBe('battery-before hc fc hf battery-after');
  const line = 'battery-before 9.3 hc .6 fc .1 hf .5 battery-after 9.3';
  expect(here(c.type(line))).not.toBe('residual');
});

describe('not understood: what is taken here', () => {
  test.each<[string, () => Conversation, string]>([
    [
      'a line',
      () => at('readings'),
      'Type the line: herm fan (hf) (case). 2 or 4 figures in this order, or each behind its name.',
    ],
    [
      'one reading',
      () => typed(atFigures(), ['241 240 comp 13.1 fan .9']),
      'Type the reading: Split, return minus supply.',
    ],
    [
      'a line and a choice',
      part,
      'Type the line: herm (fan) (hf) (case). 1 or 4 figures in this order, or each behind its name. And, behind a comma, one of: The first of the list · The second · The third · Another part: its print.',
    ],
    ['a choice', () => at('fit'), 'Type one of: Yes, all of it · No, something is missing.'],
  ])('%s', (_, question, words) => {
    expect(question().type('blah').refusal?.text).toBe(`Not understood here. ${words} Your words are kept as a note.`);
  });
});
