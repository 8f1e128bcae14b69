/** Time, hands and corrections as the page shows them: silence, a hand-over, a senior from afar, an answer that changes. */
import { expect, test } from 'vitest';
import {
  Cases,
  GOOD,
  notices,
  PATIENCE,
  PROVING,
  READINGS,
  RESIDUAL,
  shown,
  strip,
  toReadings,
  verdicts,
  WEAK_HERM,
} from './cases.ts';

const cases = new Cases();
const REPLACE = 'The run capacitor is out of its label: replace it';
const IS_GOOD = 'The run capacitor is good';
const SPIN = 'Spin the fan by hand';

test('hand-over: nothing that was proved counts for the new holder, what was found does', async () => {
  const job = await cases.brought([...toReadings(), WEAK_HERM]);
  const ines = await cases.phone('ines', job);
  expect(await strip(ines)).toBe('PROVED DEAD');
  await ines.type('hand over tomas');
  await ines.sees('This job changes hands.');
  expect(await notices(ines)).toContain('The hand-over ended the isolation.');
  expect(await strip(ines)).toBe('ENERGIZED OR NOT PROVED');

  const tomas = await cases.phone('tomas', job);
  await tomas.tap('I take it over');
  await tomas.sees('Are you and your meter fit for this?');
  await ines.sees('Are you and your meter fit for this?');
  expect(await ines.page.locator('.holder').textContent()).toContain('Only Tomas Brook answers here');
  await tomas.type('yes');
  await tomas.sees('What opens this unit');
  await expect.poll(() => tomas.page.locator('.pick input:checked').count(), PATIENCE).toBe(5);
  for (const line of [
    'pull-out, breaker, no other feed, two legs, outlet',
    'yes',
    'clean, 1 cap, 45+5 6% 440',
    PROVING,
  ])
    await cases.tell('tomas', job, line);
  await tomas.sees('Discharge every capacitor');
  await tomas.type(RESIDUAL);
  await tomas.sees(SPIN);
  expect([await strip(tomas), (await verdicts(tomas))[0]]).toEqual(['PROVED DEAD', REPLACE]);
}, 60_000);

test('a question from afar and its reply end nothing', async () => {
  const job = await cases.brought(toReadings());
  const ines = await cases.phone('ines', job);
  await cases.tell('ruth', job, 'ask what does the label say');
  await ines.page.locator('.question', { hasText: 'what does the label say' }).waitFor();
  expect(await strip(ines)).toBe('PROVED DEAD');
  await ines.type('reply 45+5');
  await ines.page.locator('.question').waitFor({ state: 'detached' });
  await ines.sees(READINGS);
  expect(await strip(ines)).toBe('PROVED DEAD');
});

test('the label is changed after the readings: they are judged anew, and nothing has to be proved again', async () => {
  const ines = await cases.phone('ines', await cases.brought([...toReadings(), WEAK_HERM]));
  expect((await verdicts(ines))[0]).toBe(REPLACE);
  await ines.page.locator('summary', { hasText: 'Earlier lines' }).click();
  await ines.page.locator('.lines li', { hasText: 'Cover off, eyes only' }).getByRole('button').click();
  await ines.sees('Cover off, eyes only');
  await ines.page.getByLabel('Print of the run capacitor').fill('35+5 6% 440');
  await ines.send();
  await ines.sees(SPIN);
  expect((await verdicts(ines))[0]).toBe(IS_GOOD);
  expect(await shown(ines)).toContain('pass HERM reads 36.1 µF, +3.1 % off the rated 35 µF');
  expect(await strip(ines)).toBe('PROVED DEAD');
});

test('a reading is taken back: its verdict is gone, it is asked again, and the next one counts', async () => {
  const ines = await cases.phone('ines', await cases.brought([...toReadings(), WEAK_HERM]));
  await ines.type('take back');
  await ines.sees(READINGS);
  expect(await notices(ines)).toContain('Taken back.');
  expect([await strip(ines), await verdicts(ines)]).toEqual(['PROVED DEAD', []]);
  expect(await ines.page.getByRole('status', { name: 'What the change did' }).textContent()).toContain(READINGS);
  await ines.page.locator('summary', { hasText: 'Earlier lines' }).click();
  const fallen = ines.page.locator('.lines li[data-standing="fallen"]', { hasText: READINGS });
  expect(await fallen.first().textContent()).toContain('no longer counts');
  await ines.type(GOOD);
  await ines.sees(SPIN);
  expect((await verdicts(ines))[0]).toBe(IS_GOOD);
});

test('two windows send at the same moment: one reading is kept, the other is told and loses no word', async () => {
  const job = await cases.brought(toReadings());
  const one = await cases.phone('ines', job);
  const two = await cases.another('ines');
  await two.goto(cases.url(job));
  await one.composer.fill(GOOD);
  await two.composer.fill(WEAK_HERM);
  await Promise.all([one.composer.press('Enter'), two.composer.press('Enter')]);
  const texts = () => Promise.all([one.composer.inputValue(), two.composer.inputValue()]);
  await expect.poll(async () => (await texts()).filter((text) => text === '').length, PATIENCE).toBe(1);
  const oneWon = (await texts())[0] === '';
  const [winner, loser] = oneWon ? [one, two] : [two, one];
  await loser.refusal.waitFor();
  for (const window of [winner, loser]) {
    await window.sees(SPIN);
    expect((await verdicts(window))[0]).toBe(oneWon ? IS_GOOD : REPLACE);
  }
  const { ticket } = await cases.shop.desk.look('ines', job);
  expect(ticket.filter((line) => line.place?.endsWith('/sections') && line.kind === 'answered')).toHaveLength(1);
  expect(two.errors).toEqual([]);
  await two.page.context().close();
});

// These two move the server's clock, so they come last.
test('31 minutes away from the page: the reading typed on return is not taken', async () => {
  const job = await cases.brought(toReadings());
  const ines = await cases.phone('ines', job);
  cases.shop.wait(31);
  await ines.type(GOOD);
  await ines.sees('Prove the meter');
  expect(await strip(ines)).toMatch(/^BEING PROVED/);
  expect(await notices(ines)).toContain('The isolation is too old.');
  expect(await verdicts(ines)).toEqual([]);
});

test('31 silent minutes: the page turns by itself, two lines prove it again, and the readings are asked as before', async () => {
  const job = await cases.brought(toReadings());
  const ines = await cases.another('ines');
  await ines.page.clock.setSystemTime(cases.shop.clock());
  await ines.goto(cases.url(job));
  await ines.sees(READINGS);
  expect(await strip(ines)).toBe('PROVED DEAD');
  // All but nine seconds; what another person writes brings the page the server's time and no more.
  const { prompt } = await cases.shop.desk.look('ines', job);
  const until = Date.parse(prompt.isolation[0]?.until ?? '');
  cases.shop.wait((until - cases.shop.clock().getTime()) / 60_000 - 0.15);
  await cases.tell('dana', job, 'note the caller rang');
  await expect.poll(() => ines.strip.textContent(), PATIENCE).toMatch(/PROVED DEAD0:0\d left/);
  await expect.poll(() => strip(ines), PATIENCE).toMatch(/^BEING PROVED/);
  await ines.sees('Prove the meter');
  cases.shop.wait(1);
  // The phone's clock went on as well: an answer is as old as the phone says.
  await ines.page.clock.setSystemTime(cases.shop.clock());
  await ines.type(PROVING);
  await ines.refusal.waitFor();
  for (const [line, title] of [
    [`yes ${PROVING}`, 'Discharge every capacitor'],
    [RESIDUAL, READINGS],
  ] as const) {
    await ines.type(line);
    await ines.sees(title);
  }
  expect(await strip(ines)).toBe('PROVED DEAD');
  expect(ines.errors).toEqual([]);
  await ines.page.context().close();
}, 60_000);
