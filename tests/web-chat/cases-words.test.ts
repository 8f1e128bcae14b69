/** Words of danger and words that are none, and text that no question expects, typed into the page. */
import { describe, expect, test } from 'vitest';
import { Cases, GOOD, PATIENCE, READINGS, strip, toReadings, verdicts } from './cases.ts';
import type { PersonAtPhone } from './person.ts';

const cases = new Cases();
const EMERGENCY = 'Emergency. Get away from the unit.';
const OLD_OR_NOW = 'Is this happening now, or is somebody hurt?';
let job = '';
const reading = async (): Promise<PersonAtPhone> => {
  job = await cases.brought(toReadings());
  return cases.phone('ines', job);
};
const last = async (): Promise<number> => (await cases.shop.desk.look('ines', job)).prompt.last;

describe('given a proved isolation, when somebody types', () => {
  test.each(['I smell smoke', 'got bit by the cap'])('%s: the emergency', async (words) => {
    const ines = await reading();
    await ines.type(words);
    await ines.sees(EMERGENCY);
    expect(await strip(ines)).toBe('ENERGIZED OR NOT PROVED');
    expect(await ines.page.locator('.card').getAttribute('data-kind')).toBe('emergency');
    expect(await ines.page.locator('.card').textContent()).toContain('Call 911.');
    await ines.type(GOOD);
    await ines.refusal.waitFor();
    await ines.sees(EMERGENCY);
  });
  test.each([
    ['Happening now, or someone is hurt', EMERGENCY, 'ENERGIZED OR NOT PROVED'],
    ['An old mark, long ago, or elsewhere', READINGS, 'PROVED DEAD'],
  ])('burnt terminal: one tap tells, "%s"', async (tap, title, state) => {
    const ines = await reading();
    await ines.type('burnt terminal');
    await ines.sees(OLD_OR_NOW);
    expect(await strip(ines)).toBe('PROVED DEAD');
    await ines.tap(tap);
    await ines.sees(title);
    expect(await strip(ines)).toBe(state);
  });
  test('no smoke: no emergency, and no answer either', async () => {
    const ines = await reading();
    await ines.type('no smoke');
    await ines.refusal.waitFor();
    expect(await ines.refusal.textContent()).toContain('Your words are kept as a note.');
    await ines.sees(READINGS);
    expect([await strip(ines), await verdicts(ines)]).toEqual(['PROVED DEAD', []]);
  });
});

describe('given text that no question expects, when it is sent, then nothing is answered and nothing breaks', () => {
  test('what was refused stays in the line to be put right, and goes with its question', async () => {
    const ines = await reading();
    await ines.type('blah blah');
    await ines.refusal.waitFor();
    expect(await ines.composer.inputValue()).toBe('blah blah');
    await cases.tell('ines', job, GOOD);
    await ines.sees('Spin the fan');
    await expect.poll(() => ines.composer.inputValue()).toBe('');
  });
  test('10,000 characters: not kept, said how many are, still in the line', async () => {
    const ines = await reading();
    const before = await last();
    await ines.type('y'.repeat(10_000));
    await ines.refusal.waitFor();
    expect(await ines.refusal.textContent()).toMatch(/That is 10.?000 characters\. Up to 4.?000 are kept/);
    expect([await last(), (await ines.composer.inputValue()).length]).toEqual([before, 10_000]);
    await ines.type('smoke');
    await ines.sees(EMERGENCY);
  });
  test('danger at the end of 10,000 characters is heard all the same', async () => {
    const ines = await reading();
    await ines.type(`${'y '.repeat(4_990)} I smell smoke`);
    await ines.sees(EMERGENCY);
  });
  test('more than a line takes: said as not sent, still in the line', async () => {
    const ines = await reading();
    const before = await last();
    await ines.type('y'.repeat(10_001));
    await ines.page.locator('.not-sent, .refusal').waitFor();
    expect([await last(), (await ines.composer.inputValue()).length]).toEqual([before, 10_001]);
  });
  test.each([
    ['control characters', '\u0001\u0007\u001b[31m\u007f'],
    ['an emoji', '😀👍🏽👩‍🔧'],
    ['words right to left, and marks that turn them', '\u202eעברית\u202c \u200f'],
    ['markup', '<b onmouseover=alert(1)>x</b> <script>document.title="y"</script>'],
  ])('%s', async (_, text) => {
    const ines = await reading();
    await ines.type(text);
    await ines.refusal.waitFor();
    await ines.sees(READINGS);
    expect([await strip(ines), await verdicts(ines)]).toEqual(['PROVED DEAD', []]);
    // The kept words are drawn as words, here and on a fresh page.
    await ines.page.reload();
    await ines.ready();
    expect(await ines.page.title()).not.toBe('y');
    expect(await ines.page.locator('.lines b, .lines script').count()).toBe(0);
    await ines.type(GOOD);
    await ines.sees('Spin the fan by hand');
  });
  test('a note with an emoji stands on the ticket as it was typed', async () => {
    const ines = await reading();
    await ines.type('note the gate sticks 😀');
    await expect
      .poll(() => ines.page.locator('.lines li', { hasText: 'the gate sticks 😀' }).count(), PATIENCE)
      .toBe(1);
    expect(await strip(ines)).toBe('PROVED DEAD');
  });
});
