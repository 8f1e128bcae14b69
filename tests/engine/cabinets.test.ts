/** Two cabinets, two isolations: what was proved of one covers no hand in the other. */
import { describe, expect, test } from 'vitest';
import { memoryOf } from '../../engine/replay.ts';
import { Conversation, TO_READINGS } from '../people.ts';

const SEEN = ['i', 'outdoor off', 'nothing', 'psc'] as const;
const LOOK = 'clean, 1 cap, 7.5 6% 440';
const ZEROS = '121 / 0.2 0 0.1 / 0 0 / 121';
const INDOOR = [
  ...SEEN,
  'yes',
  'breaker, no other feed, two legs, outlet',
  'yes',
  LOOK,
  ZEROS,
  '9.3 / 0.4 / 9.3',
] as const;
const strip = (c: Conversation): string[] => c.prompt().isolation.map((line) => `${line.cabinet}: ${line.words}`);
const noTag = { settings: { tagWithExtraMeasure: false } };

describe('the indoor unit has an isolation of its own', () => {
  test('it is named, proved and asked for by its own gates', () => {
    const c = new Conversation().types(...SEEN);
    expect(c.place).toBe('dead:indoor/fit');
    expect(strip(c)).toEqual(['Indoor unit: ENERGIZED OR NOT PROVED']);
    c.types(...INDOOR.slice(SEEN.length));
    expect(c.place).toBe('round~1/blower/tests/line');
    expect(strip(c)).toEqual(['Indoor unit: PROVED DEAD']);
  });

  test('its part has one section, and no hermetic compressor on it', () => {
    const c = new Conversation().types(...INDOOR, 'fuse 0.1 leads ol', 'wires off', 'cap 5.9 case ol');
    const told = JSON.stringify(c.prompt().verdicts);
    expect(told).toContain('Capacitor reads 5.9');
    expect(told).not.toContain('HERM');
  });

  test('an outdoor unit that is proved dead opens no indoor one, and both stay in view', () => {
    const c = new Conversation().types(...TO_READINGS);
    expect(strip(c)).toEqual(['Outdoor unit: PROVED DEAD']);
    c.types('take back');
    c.send({ kind: 'amend', client: 'a1', of: c.seqOf('/observation'), parts: { choice: 'i' } });
    expect(c.refusal).toBeNull();
    c.types(...SEEN.slice(1));
    expect(c.place).toBe('dead:indoor/fit');
    expect(strip(c)).toEqual(['Outdoor unit: PROVED DEAD', 'Indoor unit: ENERGIZED OR NOT PROVED']);
    c.types(...INDOOR.slice(SEEN.length));
    expect(strip(c)).toEqual(['Outdoor unit: PROVED DEAD', 'Indoor unit: PROVED DEAD']);
    c.type('power is back');
    expect(strip(c).every((line) => !line.includes('PROVED DEAD') || line.includes('NOT PROVED'))).toBe(true);
    expect(Object.values(memoryOf(c.standing).isolations).every((i) => i.proved === null)).toBe(true);
  });

  test('what was seen of one cabinet is not known of the other', () => {
    const c = new Conversation().types(...INDOOR, 'fuse 0.1 leads ol', 'wires off', 'cap 7.46 case ol', 'spin free');
    c.types('high 6.1 low 11.2 frame ol', '208/230 fla 4.2', 'closed', 'volts 240 blower 4.6', 'off');
    c.types('d', 'psc', 'yes', 'pull-out, breaker, no other feed, two legs, outlet', 'yes');
    expect(c.place).toBe('dead:outdoor/look');
    const print = c.prompt().parts.find((p) => p.key === 'print');
    expect(print).toMatchObject({ kind: 'label', remembered: null });
    c.types('clean, 1 cap', ZEROS, '9.3 / 0.6 0.1 0.5 / 9.3', ...TO_READINGS.slice(8));
    expect(c.place, 'the print is asked: the blower’s says nothing of this part').toBe('round~2/block/run/print');
  });

  test('a senior’s way of holding one means open holds no other, and ends with its lock', () => {
    const c = new Conversation(noTag).types(...TO_READINGS.slice(0, 4)).type('can’t');
    expect(c.prompt().kind).toBe('waiting');
    c.type('approve seen on video', 'ruth');
    expect(c.place).toBe('dead:outdoor/look');
    c.type('power is back').type('can’t');
    expect(c.prompt().kind, 'asked anew after the power was back').toBe('waiting');
    c.type('approve seen on video', 'ruth');
    c.send({ kind: 'amend', client: 'a1', of: c.seqOf('/observation'), parts: { choice: 'i' } });
    c.types(...SEEN.slice(1), 'yes', 'breaker, no other feed, two legs, outlet').type('can’t');
    expect(c.place).toBe('dead:indoor/approve');
  });
});

describe('a part with two terminals', () => {
  const to = (look: string): Conversation => new Conversation().types(...TO_READINGS.slice(0, 5), look, ZEROS);
  const keys = (c: Conversation): string[] => c.prompt().parts.map((p) => p.key);
  const ALL = ['batteryBefore', 'hc', 'fc', 'hf', 'batteryAfter'];
  const ONE = ['batteryBefore', 'hc', 'batteryAfter'];

  test.each([
    ['a print of one section', 'clean, 1 cap, 40 6% 440', ONE],
    ['two terminals, no print', 'clean, 1 cap, two terminals', ONE],
    ['no print, nothing said', 'clean, 1 cap', ALL],
    ['three terminals, no print', 'clean, 1 cap, three terminals', ALL],
    ['three terminals beside a print of one section', 'clean, 1 cap, three terminals, 40 6% 440', ALL],
    ['two terminals beside a print of two', 'clean, 1 cap, two terminals, 45+5 6% 440', ALL],
  ])('%s', (_, look, due) => {
    expect(keys(to(look))).toEqual(due);
  });

  test('a print of two sections found later: look again, and both are discharged', () => {
    const c = to('clean, 1 cap, two terminals').types('9.3 / 0.4 / 9.3', TO_READINGS[8], 'no diagram');
    expect(c.place).toBe('round~1/block/run/wires');
    c.type('wires off, 45+5 6% 440');
    expect(c.refusal).toBeNull();
    expect(c.place).toBe('dead:outdoor/look');
    expect(c.notices).toContain('The print shows two sections, and one was discharged.');
    expect(strip(c)).toEqual(['Outdoor unit: BEING PROVED (3 of 6)']);
    c.types('clean, 1 cap, 45+5 6% 440', ZEROS);
    expect(keys(c)).toEqual(ALL);
  });

  test('a look that is changed to two sections has the line taken again', () => {
    const c = to('clean, 1 cap, 40 6% 440').types('9.3 / 0.4 / 9.3');
    c.send({ kind: 'amend', client: 'a1', of: c.seqOf('/look'), parts: { print: '45+5 6% 440' } });
    expect(c.place).toBe('dead:outdoor/proving');
  });
});
