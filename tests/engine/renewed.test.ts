/** What was printed on a part that came out says nothing of the one that went in. */
import { describe, expect, test } from 'vitest';
import { memoryOf } from '../../engine/replay.ts';
import { MOTOR_AFTER } from '../../flows/examples/fan.ts';
import { Conversation, TO_READINGS } from '../people.ts';

const PROVING = '121 / 0.2 0 0.1 / 0 0 / 121';
const RESIDUAL = '9.3 / 0.6 0.1 0.5 / 9.3';
const REST = ['spin free', 'cr .9 cs 2.7 sr 3.6 g ol', 'nothing', 'other 45+5 440 herm 45.3 fan 5.04'];
const toFit = (): Conversation =>
  new Conversation().types(...TO_READINGS, 'herm 36.1 fan 5.02 hf 4.4 case ol', ...REST);
const print = (c: Conversation) => memoryOf(c.standing).job['label@outdoor']?.value;
const seqAt = (c: Conversation, place: string): number =>
  c.entries.findLast((e) => e.kind === 'answered' && e.body.place.endsWith(place))?.seq ?? 0;
/** The new part in, a restart that fails, and dead again up to the look. */
const nextRound = (): Conversation =>
  toFit().types('fitted', 'wires back', '17.9 96 1.2', 'closed', '240 239 comp 92 fan .9', 'off', 'd', 'yes');

describe('a new part fitted', () => {
  test('until it is in, the old print stands; in its own round it stands on', () => {
    const c = toFit();
    expect(print(c)).toMatchObject({ kind: 'label' });
    c.types('fitted');
    expect([print(c), c.place]).toEqual([undefined, 'round~1/repair/rewire']);
  });

  test('the next round doesn’t fill the old print in, and asks for the new one’s', () => {
    const c = nextRound();
    expect(c.place).toBe('dead:outdoor/look');
    expect(c.prompt().parts.find(({ key }) => key === 'print')).toMatchObject({ remembered: null });
    c.types('clean, 1 cap', PROVING, RESIDUAL, 'fuses 0.1 0.1 contacts .1 .1 coil 12.6 t1g ol t2g ol', 'no diagram');
    c.types('wires off');
    expect(c.place).toBe('round~2/block/run/print');
    c.types('45+5 6% 440', 'herm 45.3 fan 5.04 case ol');
    expect(c.verdicts.at(-1)).toBe('capacitor-good');
  });

  test('the fitting taken back: the old part is in, with its print', () => {
    const c = toFit();
    const before = print(c);
    c.types('fitted').send({ kind: 'withdraw', client: 'back', of: seqAt(c, 'repair/fit') });
    expect([c.refusal, print(c), c.place]).toEqual([null, before, 'round~1/repair/fit']);
  });

  test('the old print put right afterwards is right for its own round alone', () => {
    const c = nextRound();
    const of = seqAt(c, 'dead:outdoor/look');
    c.types('clean, 1 cap, 45+5 6% 440');
    const fresh = print(c);
    expect(fresh).toMatchObject({ label: { herm: '45' } });
    c.send({ kind: 'amend', client: 'old', of, parts: { print: '40+5 6% 440' } });
    expect(print(c)).toEqual(fresh);
  });
});

test('a new motor’s capacitor goes by the motor’s plate, and no diagram of the old one condemns it', () => {
  const c = new Conversation().types(...TO_READINGS.slice(0, -2), '45+5 440', 'wires off');
  c.types('herm 44.6 fan 5.03 hf 4.52 case ol', 'stiff', 'cr .9 cs 2.7 sr 3.6 g ol', 'nothing', 'motor fitted');
  c.types('45+7.5 6% 440', 'other 45+7.5 440 herm 45.2 fan 7.51', 'fitted', 'wires back', '17.9 96 1.2', 'closed');
  c.types('240 239 comp 13.1 fan 0', 'off', 'c', 'neither', 'yes', 'clean, 1 cap', PROVING, RESIDUAL);
  c.types('fuses 0.1 0.1 contacts .1 .1 coil 12.6 t1g ol t2g ol');
  // The old diagram is forgotten with the old part; and where somebody types it again, it condemns nothing.
  expect(c.place).toBe('round~2/block/run/asked-for');
  c.types('45+5 440', 'wires off', '45+7.5 6% 440', 'herm 44.6 fan 7.5 hf 6.43 case ol');
  expect(c.verdicts.at(-1)).toBe('capacitor-good');
});

test('a second new part of one round, after the look at the first was taken back: its round keeps the print read since', () => {
  const lines = (MOTOR_AFTER[0]?.lines ?? []).map((l) => (l === 'clean, 1 cap' ? 'clean, 1 cap, 45+5 6% 440' : l));
  const c = new Conversation().types(...lines.slice(0, lines.indexOf('fitted') + 1));
  c.send({ kind: 'withdraw', client: 'look', of: seqAt(c, 'dead:outdoor/look') });
  expect([c.refusal, c.place]).toEqual([null, 'round~1/block/run/print']);
  c.types('45+5 6% 440', 'clean, 1 cap, 45 6% 440', PROVING, '9.3 / 0.6 / 9.3', 'herm 36', 'nothing');
  c.types('other 45 uf 440 herm 45.3', 'fitted');
  expect(c.place).toBe('round~1/repair/rewire');
});
