/** The case of a part is one fact, on whichever page of its readings it was read; and what its diagram asks for is another. */
import { describe, expect, test } from 'vitest';
import { Conversation, TO_READINGS } from '../people.ts';

const GOOD = 'herm 44.6 fan 5.03 hf 4.52 case ol';
const PROVING = '121 / 0.2 0 0.1 / 0 0 / 121';
/** Power was back: from the lock on, with what is printed on the part this time. */
const again = (print: string, residual: string): string[] => [
  ...['power is back', 'yes', `clean, 1 cap, ${print}`, PROVING, residual],
];
const DUAL = again('45+5 6% 440', '9.3 / 0.6 0.1 0.5 / 9.3');
const SINGLE = again('40 6% 440', '9.3 / 0.6 / 9.3');
const step = (c: Conversation): string => c.place.split('/').slice(-2).join('/');

describe('a case that read clear as a dual part, then low while the print was said to be a single one', () => {
  const lowSince = (low = '0.99 M'): Conversation =>
    new Conversation().types(...TO_READINGS, GOOD, ...SINGLE, `herm 39.4 case ${low}`, ...DUAL);

  test('the old clear reading does not pass it: it is read again', () => {
    const c = lowSince();
    expect(step(c)).toBe('both~2/sections');
    // What was said before the print was read again stands on the record; nothing calls it good since.
    expect(c.verdicts).toEqual(['capacitor-good']);
    expect(JSON.stringify(c.prompt())).toContain('Low to the case');
    expect(c.prompt().parts.find(({ key }) => key === 'case')).toMatchObject({ remembered: null });
  });
  test('between the two limits it is wiped and read again as well', () => {
    expect(step(lowSince('5 M'))).toBe('both~2/sections');
  });
  test('clear again: good', () => {
    const c = lowSince().type(GOOD);
    expect([step(c), c.verdicts]).toEqual(['motors/spin', ['capacitor-good', 'capacitor-good']]);
  });
  test('the line without its case: it is asked alone, and what was read before does not answer it', () => {
    const c = lowSince().type('herm 44.6 fan 5.03 hf 4.52');
    expect(step(c)).toBe('both~2/case');
  });
  test('low again, twice on this page: a leak', () => {
    const c = lowSince().types('herm 44.6 fan 5.03 hf 4.52 case .5 M', 'herm 44.6 fan 5.03 hf 4.52 case .4 M');
    expect(c.verdicts.at(-1)).toBe('leak-to-case');
  });
  test('the older reading, changed to another clear figure, is still the older one', () => {
    const c = lowSince();
    const of = c.entries.find((e) => e.kind === 'answered' && e.body.place.endsWith('both~1/sections'))?.seq ?? 0;
    c.send({ kind: 'amend', client: 'older', of, parts: { case: '50 MΩ' } });
    expect(c.refusal).toBeNull();
    expect(step(c)).toBe('both~2/sections');
  });
  test('the low one taken back: the clear one counts', () => {
    const c = lowSince();
    const of = c.entries.find((e) => e.kind === 'answered' && e.body.place.endsWith('one~1/sections'))?.seq ?? 0;
    c.send({ kind: 'withdraw', client: 'low', of });
    expect(c.refusal).toBeNull();
    expect(step(c)).toBe('motors/spin');
  });
});

test('a second capacitor’s case says nothing of the first one', () => {
  const two = TO_READINGS.map((line) =>
    line.startsWith('clean') ? 'clean, 2 caps, 45+5 6% 440' : line.startsWith('9.3') ? '9.3 / 0 0 0 / 0 / 9.3' : line,
  );
  const c = new Conversation().types(...two, GOOD, 'run', 'off', '5 µF 6% 370', 'herm 4.96 case .4 M');
  expect([step(c), c.verdicts]).toEqual(['run~2/sections', ['capacitor-good']]);
});

describe('what the unit’s diagram asks for', () => {
  const asked = (diagram: string): string[] => [...TO_READINGS.slice(0, -2), diagram, 'wires off', GOOD];
  const MOTORS = ['spin free', 'cr .9 cs 2.7 sr 3.6 g ol'];

  test.each([
    ['another value', '35+5 440'],
    ['one section more', '45 440'],
    ['more volts than are printed', '45+5 660'],
  ])('%s: wrong, whatever it reads by its own print', (_, diagram) => {
    const c = new Conversation().types(...asked(diagram));
    expect(c.verdicts).toEqual(['wrong-part-fitted']);
    expect(c.prompt().title).toContain('Spin the fan');
    expect(c.types(...MOTORS).place).toBe('round~1/repair/why');
  });
  test.each([
    ['the same', '45+5 440'],
    ['µF alone', '45+5'],
    ['less volts', '45+5 370'],
    ['nobody can read it', 'diagram is faded'],
  ])('%s: good', (_, diagram) => {
    expect(new Conversation().types(...asked(diagram)).verdicts).toEqual(['capacitor-good']);
  });
  test('read once, it is not asked again when the wires come off another time', () => {
    const c = new Conversation().types(...asked('45+5 440'), ...MOTORS, '17.9 96 1.2', 'closed');
    c.types('240 239 comp 13.1 fan 1.6', 'off', 'd', 'yes', 'clean, 1 cap', PROVING, '9.3 / 0.6 0.1 0.5 / 9.3');
    c.type('fuses 0.1 0.1 contacts .1 .1 coil 12.6 t1g ol t2g ol');
    expect(c.place).toBe('round~2/block/run/wires');
  });
});
