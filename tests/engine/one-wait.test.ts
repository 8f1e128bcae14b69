/** The five minutes after a change of call, by the record: a device's clock makes them no longer. */
import { expect, test } from 'vitest';
import { INDOOR_GATES } from '../../flows/examples/control.ts';
import { Conversation } from '../people.ts';

/** Up to the call at the indoor board, the probes placed dead. */
const CALL = ['a', 'psc', 'blank', 'doors on', 'qualified', 'psc', ...INDOOR_GATES, 'placed'];

const behind = (c: Conversation, minutes: number): string => new Date(c.now - minutes * 60_000).toISOString();

test('the call changed just now, said by a device whose clock is 29 minutes behind: 0 V decide nothing yet', () => {
  const c = new Conversation().types(...CALL);
  c.type('just now', 'ines', { said: behind(c, 29) });
  expect(c.place).toBe('round~1/source/wait');
  expect(c.wait(0, 20).type('waited').refusal).toMatchObject({
    code: 'too-early',
    text: 'By this record 4 min 40 s are left of it. Wait, then answer again.',
  });
  c.type('not sure').wait(0, 20).type('r-c 26.1 y-c 0');
  expect(c.verdicts).toEqual(['call-read-too-early']);
});
test('five minutes by both clocks: they decide', () => {
  const c = new Conversation().types(...CALL);
  c.type('just now', 'ines', { said: behind(c, 29) });
  c.wait(6).type('waited');
  c.wait(0, 20).type('r-c 26.1 y-c 0 float 0.1');
  expect(c.verdicts).toEqual(['thermostat-or-its-cable']);
});
