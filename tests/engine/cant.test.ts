import { expect, test } from 'vitest';
import { Conversation, TO_READINGS } from '../people.ts';

const at = (...lines: string[]): Conversation => new Conversation().types(...lines);

test('"can\'t measure that" leads on, with the words as the reason', () => {
  const c = at(...TO_READINGS).type("can't measure that here");
  expect(c.refusal).toBeNull();
  expect(c.texts.at(-1)?.text).toBe("can't measure that here");
  expect(c.place).toContain('section-ohms');
  expect(c.type('skip no ohmmeter').verdicts).toEqual(['value-undecided']);
});
test('no tool at a gate leaves make-dead unproved and says where the tool is', () => {
  const c = at(...TO_READINGS.slice(0, 7)).type('no tool');
  expect(c.refusal).toBeNull();
  expect(c.place).toContain('residual');
  expect(c.prompt().isolation[0]?.state).toBe('being-proved');
  expect(c.notices).toContain('resistor lead and a 9 V battery from the truck');
});
test('a gate without another way is not left out', () => {
  const c = at('d', 'psc').type("can't");
  expect(c.refusal?.code).toBe('gate');
});
test('a question that decides the way goes on, by an option that takes it or without an answer', () => {
  expect(at().type('not sure').place).toBe('round~1/class');
  expect(at('d').type('not sure').place).toContain('inverter/closed');
  expect(at('d').type('no tool').place).toContain('inverter/closed');
});
