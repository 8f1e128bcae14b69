/** A breaker or a fuse opened: the insulation decides before any power, whatever the call began with and whatever was found. */
import { expect, test } from 'vitest';
import { Conversation } from '../people.ts';
import { BLOCK, GOOD, MEANS, MOTORS, PROVING, RESIDUAL, typed, WEAK_HERM } from './given.ts';

const DEAD = ['yes', MEANS, 'yes', 'clean, 1 cap, 45+5 6% 440', PROVING, RESIDUAL, BLOCK, 'no diagram', 'done'];
const BOTH = [...MOTORS, 'fan 14 31 45 frame ol'];

test.each([
  ['seen as a trip', ['h', 'psc', 'at once']],
  ['called silent, its breaker found tripped', ['a', 'psc', 'tripped', 'at once']],
])('%s: with a weak section and with none it is the insulation next', (_, lines) => {
  for (const reading of [WEAK_HERM, GOOD]) {
    const c = typed(new Conversation(), [...lines, ...DEAD, reading, ...BOTH]);
    expect(c.place).toBe('round~1/insulation~1/setup');
  }
});
test('on another call nobody is asked for an insulation tester', () => {
  expect(typed(new Conversation(), ['d', 'psc', ...DEAD, WEAK_HERM, ...MOTORS]).place).toBe('round~1/repair/why');
});
