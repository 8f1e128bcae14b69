/** What goes wrong on a roof: a wrong figure, two people at once, time that runs out, danger. Real browser and desk. */
import { rm } from 'node:fs/promises';
import type { Browser } from 'playwright-core';
import { afterAll, afterEach, beforeAll, expect, test } from 'vitest';
import { TO_READINGS } from '../people.ts';
import { buildPage, launch, phone } from './browser.ts';
import { PersonAtPhone } from './person.ts';
import { type Serving, serve } from './serve.ts';
import { openShop, type Shop } from './shop.ts';

let browser: Browser;
let shop: Shop;
let serving: Serving;
let folder: string;

beforeAll(async () => {
  [folder, shop, browser] = await Promise.all([buildPage(), openShop(), launch()]);
  serving = await serve({ ...shop, pageFolder: folder });
});
afterAll(async () => {
  await browser?.close();
  await serving?.close();
  await shop?.close();
  if (folder) await rm(folder, { recursive: true });
});

// Pages of earlier tests would go on listening.
afterEach(async () => {
  for (const context of browser.contexts()) await context.close();
});

const signedIn = async (who: string): Promise<PersonAtPhone> =>
  PersonAtPhone.withCookie(await phone(browser), serving.url, await serving.cookieFor(who));

let count = 0;
/** A call brought as far as these lines lead, and a technician who has it open. */
async function under(way: readonly string[]): Promise<{ ines: PersonAtPhone; job: string; url: string }> {
  let { view } = await shop.desk.open('ines', { title: 'No cool', client: `w${++count}` });
  for (const text of way) {
    const turn = await shop.desk.reply('ines', view.job, {
      kind: 'text',
      client: `w${++count}`,
      seq: view.prompt.seq,
      text,
    });
    if (turn.refusal) throw new Error(`${text}: ${turn.refusal.text}`);
    view = turn.view;
  }
  const ines = await signedIn('ines');
  const url = `${serving.url}/jobs/${view.job}`;
  await ines.goto(url);
  return { ines, job: view.job, url };
}
const TO_MEANS = ['d', 'psc', 'yes'];
const TO_LOOK = [...TO_MEANS, 'pull-out, no other feed, two legs, outlet', 'yes'];
const TO_PROVING = [...TO_LOOK, 'clean, 1 cap, 45+5 6% 440'];
const TO_INSIDE = [...TO_PROVING, '121 / 0.2 0 0.1 / 0 0 / 121', '9.3 / 0.6 0.1 0.5 / 9.3'];
const last = async (job: string) => (await shop.desk.look('ines', job)).prompt.last;

test('the server stops and comes back: said on the strip, then live again', async () => {
  const other = await serve({ ...shop, pageFolder: folder });
  const { view } = await shop.desk.open('ines', { title: 'No cool', client: `w${++count}` });
  const ines = await PersonAtPhone.signIn(await phone(browser), await other.linkFor('ines'));
  await ines.goto(`${other.url}/jobs/${view.job}`);
  await other.close();
  await ines.page.locator('.contact').waitFor();
  expect(await ines.page.locator('.contact').textContent()).toContain('Treat it as not proved');
  const port = Number(new URL(other.url).port);
  const again = await serve({ ...shop, pageFolder: folder, port });
  await ines.page.locator('.contact').waitFor({ state: 'detached', timeout: 15_000 });
  await shop.desk.reply('ines', view.job, { kind: 'text', client: `w${++count}`, seq: view.prompt.seq, text: 'd' });
  await ines.sees('What kind of unit is it?');
  await again.close();
}, 40_000);

test('a wrong figure refuses itself beside the fields, and nothing typed is lost', async () => {
  const { ines, job } = await under(TO_LOOK);
  await ines.pick('Clean, nothing odd');
  await ines.fill('Number of capacitors', 'some');
  await ines.page.getByLabel('Print of the run capacitor').fill('45+5 6% 440');
  const before = await last(job);
  await ines.send();
  await ines.refusal.waitFor();
  expect(await ines.refusal.getAttribute('role')).toBe('alert');
  const field = ines.page.getByLabel('Number of capacitors');
  expect([await field.getAttribute('aria-invalid'), await field.inputValue()]).toEqual(['true', 'some']);
  expect(await field.getAttribute('aria-describedby')).toBe(await ines.refusal.getAttribute('id'));
  expect(await last(job)).toBe(before);
  await field.fill('1');
  await ines.send();
  await ines.sees('Prove the meter');
});

test('of a half answer typed in one line the good half is kept in its controls', async () => {
  const { ines } = await under(TO_LOOK);
  await ines.type('clean, 45+5 6% 440');
  await ines.refusal.waitFor();
  await expect.poll(() => ines.page.locator('.pick', { hasText: 'Clean' }).locator('input').isChecked()).toBe(true);
  await ines.type('1 cap');
  await ines.sees('Prove the meter');
});

test('words that are not understood stay in the line, and what can be typed is said', async () => {
  const { ines } = await under(['d']);
  await ines.type('flurble');
  await ines.refusal.waitFor();
  expect(await ines.refusal.textContent()).toContain('Not understood');
  expect(await ines.composer.inputValue()).toBe('flurble');
});

test('two windows: the one follows without a touch and keeps what is half typed', async () => {
  const { ines, url } = await under(TO_PROVING);
  const ruth = await signedIn('ruth');
  await ruth.goto(url);
  await ruth.composer.fill('half a thought');
  await ines.type('121 / 0.2 0 0.1 / 0 0 / 121');
  await ruth.sees('Discharge every capacitor');
  expect(await ruth.composer.inputValue()).toBe('half a thought');
  expect(await ruth.page.locator('.holder').textContent()).toContain('Only Ines Vale answers here');
  expect(await ruth.page.locator('.parts input').count()).toBe(0);
});

test('an answer to a question that is gone is not taken; what stands now and what was typed are shown', async () => {
  const { ines, job } = await under(TO_MEANS);
  // This window hears nothing of what another one sends.
  await ines.page.route('**/feed**', (route) => route.abort());
  await ines.page.reload();
  await ines.ready();
  await ines.pick('Breaker');
  const { prompt } = await shop.desk.look('ines', job);
  const text = 'pull-out, no other feed, two legs, outlet';
  await shop.desk.reply('ines', job, { kind: 'text', client: `w${++count}`, seq: prompt.seq, text });
  const before = await last(job);
  await ines.send();
  await ines.sees('Open it, lock it, tag it');
  await ines.refusal.waitFor();
  expect(await ines.page.locator('.lost').textContent()).toContain('Breaker');
  expect(await last(job)).toBe(before);
});

test('the strip counts down by itself, and on its deadline is not proved before anybody asks', async () => {
  const { ines } = await under(TO_PROVING);
  await ines.page.clock.install();
  await ines.page.reload();
  await ines.ready();
  await ines.type('121 / 0.2 0 0.1 / 0 0 / 121');
  await ines.sees('Discharge every capacitor');
  await ines.type('9.3 / 0.6 0.1 0.5 / 9.3');
  await ines.sees('Fuses, contactor');
  await expect.poll(() => ines.strip.textContent()).toMatch(/PROVED DEAD(30|29)\u2009min left/);
  // The phone alone: without contact it turns as well.
  await ines.page.context().setOffline(true);
  await ines.page.clock.fastForward('20:00');
  await expect.poll(() => ines.strip.textContent()).toMatch(/PROVED DEAD(10|9)\u2009min left/);
  await ines.page.clock.fastForward('07:00');
  await expect.poll(() => ines.strip.textContent()).toMatch(/PROVED DEAD2:\d\d left/);
  await ines.page.clock.fastForward('04:00');
  await expect.poll(() => ines.strip.textContent()).toContain('ENERGIZED OR NOT PROVED');
  expect(await ines.strip.getByRole('alert').textContent()).toContain('Prove it again');
  expect(await ines.page.locator('.strip-line').getAttribute('data-state')).toBe('not-proved');
  shop.wait(31);
  await ines.page.context().setOffline(false);
  await ines.page.clock.fastForward('00:10');
  await ines.sees('Prove the meter');
}, 40_000);

test('an answer is changed in its own controls; one that is not trusted is taken back', async () => {
  const { ines, job } = await under(TO_READINGS);
  await ines.page.locator('summary', { hasText: 'Earlier lines' }).click();
  const line = ines.page.locator('.lines li', { hasText: 'Cover off, eyes only' });
  await line.getByRole('button').click();
  await ines.sees('Cover off, eyes only');
  expect(await ines.page.locator('.card').getAttribute('data-again')).toBe('true');
  expect(await ines.page.getByLabel('Number of capacitors').inputValue()).toBe('1');
  await ines.tap('Leave it as it is');
  await ines.sees('Measure both sections');
  await line.getByRole('button').click();
  await ines.sees('Cover off, eyes only');
  await ines.page.getByLabel('Print of the run capacitor').fill('40+5 6% 440');
  await ines.send();
  await ines.sees('Measure both sections');
  const changed = (await shop.desk.look('ines', job)).ticket.at(-1);
  expect([changed?.title, changed?.says.join()]).toEqual(['Changed', expect.stringContaining('40+5')]);

  await ines.page.locator('.lines li', { hasText: 'Record the wiring' }).getByRole('button').click();
  await ines.sees('Record the wiring');
  await ines.tap('Take back');
  await ines.page.getByLabel('Reason').fill('one wire is still on');
  await ines.page.locator('.words').getByRole('button', { name: 'Take back' }).click();
  await ines.sees('Record the wiring');
  await expect.poll(() => ines.page.locator('.card').getAttribute('data-again')).toBe('false');
  const fallen = ines.page.locator('.lines li[data-standing="fallen"]');
  expect(await fallen.first().textContent()).toContain('no longer counts');
});

test('a reading is never filled in for a gate, not even after it went stale', async () => {
  const { ines } = await under(TO_INSIDE);
  shop.wait(31);
  await ines.page.reload();
  await ines.ready();
  await ines.sees('Prove the meter');
  const values = await ines.page
    .locator('.field input')
    .evaluateAll((all) => all.map((each) => (each as HTMLInputElement).value));
  expect(values.length).toBeGreaterThan(5);
  expect(values.every((value) => value === '')).toBe(true);
});

test('a senior changes what somebody else answered, and gives a reason', async () => {
  const { url, job } = await under(['d']);
  const ruth = await signedIn('ruth');
  await ruth.goto(url);
  const change = () =>
    ruth.page.locator('.lines li', { hasText: 'What does the unit do?' }).getByRole('button').click();
  await change();
  await ruth.sees('What does the unit do?');
  await ruth.tap('Hum, nothing turns');
  await ruth.refusal.waitFor();
  expect(await ruth.refusal.textContent()).toContain('reason');
  await ruth.page.getByLabel('Reason').fill('the caller said it hums');
  await ruth.tap('Hum, nothing turns');
  await ruth.page.locator('.lines li', { hasText: 'the caller said it hums' }).waitFor();
  expect((await shop.desk.look('ruth', job)).ticket.at(-1)?.says).toContain('Hum, nothing turns');
});

test('a dispatcher opens a call for somebody, who finds it on the list', async () => {
  const dana = await signedIn('dana');
  await dana.page.goto(serving.url);
  await dana.page.getByLabel('Who goes').selectOption('Tomas Brook');
  await dana.openCall('No cool, given to Tomas');
  const tomas = await signedIn('tomas');
  await tomas.page.goto(serving.url);
  await tomas.page.getByRole('link', { name: 'No cool, given to Tomas' }).click();
  await tomas.sees('What does the unit do?');
  await tomas.tap('Calls');
  await tomas.page.getByRole('heading', { name: 'Calls' }).waitFor();
  await tomas.tap('Sign out');
  await tomas.page.getByRole('heading', { name: 'Sign in first' }).waitFor();
});

test('Enter in a reading goes to the next one and sends after the last', async () => {
  const { ines } = await under(TO_PROVING);
  const { keyboard } = ines.page;
  await ines.page.getByLabel('Known source, before').focus();
  for (const value of ['121', '0.2', '0', '0.1', '0', '0', '121']) {
    await keyboard.type(value);
    await keyboard.press('Enter');
  }
  await ines.sees('Discharge every capacitor');
});

test('emergency: one tap or one word, everybody sees it, a senior releases it', async () => {
  const { ines, url } = await under(TO_INSIDE);
  const ruth = await signedIn('ruth');
  await ruth.goto(url);
  await ines.tap('Emergency');
  await ines.sees('Emergency. Get away from the unit.');
  await ruth.sees('Emergency. Get away from the unit.');
  expect(await ruth.strip.textContent()).toContain('ENERGIZED OR NOT PROVED');
  await ines.tap('Seen');
  await ruth.more('Release the emergency');
  await ruth.page.getByLabel('Why is it safe again?').fill('spoke to Ines, nobody hurt');
  await ruth.page.locator('.words').getByRole('button', { name: 'Release' }).click();
  await ines.sees('Open it, lock it, tag it');

  await ines.type('i got a shock');
  await ines.sees('Emergency. Get away from the unit.');
});

test('why, where, stop, power is back: each within reach, each says what it did', async () => {
  const { ines } = await under(TO_INSIDE);
  await ines.tap('Why');
  await expect.poll(() => ines.page.locator('.info').textContent()).toContain('fuse');
  await ines.more('Where am I');
  await expect.poll(() => ines.page.locator('.info').textContent()).toContain('Round 1 of 3');
  await ines.more('Power is back');
  await ines.sees('Open it, lock it, tag it');
  expect(await ines.page.locator('.notices').textContent()).toContain('Power came back');
  await ines.tap('Stop');
  await ines.sees('Before you stop: make it safe.');
  await ines.pick('Cover is on');
  await ines.pick('My lock stays on');
  await ines.send();
  await ines.sees('Paused.');
  await ines.tap('Go on');
  await ines.sees('Open it, lock it, tag it');
});

test('a senior asks, the technician replies beside the step that stands', async () => {
  const { ines, url } = await under(['d']);
  const ruth = await signedIn('ruth');
  await ruth.goto(url);
  await ruth.more('Ask');
  await ruth.page.getByLabel('Your question').fill('Which colour is on C?');
  await ruth.page.locator('.words').getByRole('button', { name: 'Ask' }).click();
  await ines.page.locator('.question', { hasText: 'Which colour is on C?' }).waitFor();
  await ines.tap('Reply to the senior');
  await ines.page.getByLabel('Your reply').fill('red');
  await ines.page.locator('.words').getByRole('button', { name: 'Reply' }).click();
  await ruth.page.locator('.lines li', { hasText: 'red' }).waitFor();
});

test('by the keyboard alone, and Enter while a word is being composed sends nothing', async () => {
  const { ines, job } = await under([]);
  const { keyboard } = ines.page;
  const before = await last(job);
  await ines.composer.focus();
  await keyboard.insertText('psc');
  await ines.composer.dispatchEvent('keydown', { key: 'Enter', isComposing: true });
  await ines.composer.dispatchEvent('keydown', { key: 'Enter', keyCode: 229 });
  await ines.page.waitForTimeout(300);
  expect([await last(job), await ines.composer.inputValue()]).toEqual([before, 'psc']);
  await ines.composer.fill('');

  const reach = async (name: string) => {
    for (let i = 0; i < 60; i++) {
      const at = await ines.page.evaluate(() => document.activeElement?.textContent ?? '');
      if (at === name) return;
      await keyboard.press('Tab');
    }
    throw new Error(`${name} can't be reached`);
  };
  await ines.page.evaluate(() => (document.activeElement as HTMLElement).blur());
  await reach('Hum, nothing turns');
  await keyboard.press('Enter');
  await ines.sees('What kind of unit is it?');
  // The next question has the focus, so the next Tab is its first answer.
  expect(await ines.page.evaluate(() => document.activeElement?.tagName)).toBe('H2');
  await keyboard.press('Tab');
  expect(await ines.page.evaluate(() => document.activeElement?.textContent)).toContain('PSC');
  await reach('More');
  await keyboard.press('Enter');
  await ines.page.locator('.more').waitFor();
  await keyboard.press('Escape');
  await ines.page.locator('.more').waitFor({ state: 'detached' });
});
