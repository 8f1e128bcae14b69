/** Weak signal on a roof: what opens without contact, what is kept on the phone, what of it counts afterwards. */
import type { Page } from 'playwright-core';
import { afterEach, expect, test } from 'vitest';
import type { Entry } from '../../engine/schema.ts';
import { Cases, notices, PATIENCE, READINGS, strip, TO_PROVING, toReadings, WEAK_HERM } from './cases.ts';
import type { PersonAtPhone } from './person.ts';

const cases = new Cases();
const TO_MEANS = TO_PROVING.slice(0, 3);
const TO_LOCK = TO_PROVING.slice(0, 4);

const opened: PersonAtPhone[] = [];
/** A phone of its own for each case: some are without contact, some on another clock. */
async function phone(job: string): Promise<PersonAtPhone> {
  const ines = await cases.another('ines');
  opened.push(ines);
  await ines.goto(cases.url(job));
  return ines;
}
afterEach(async () => {
  for (const { page, errors } of opened.splice(0)) {
    await page.context().close();
    expect(errors).toEqual([]);
  }
});

const record = async (job: string): Promise<Entry[]> => (await cases.shop.store.read(job)).entries;
const kinds = async (job: string, after: number): Promise<string[]> =>
  (await record(job)).slice(after).map(({ kind }) => kind);
const contact = (on: PersonAtPhone, there: boolean): Promise<void> => on.page.context().setOffline(!there);
const waiting = (on: PersonAtPhone) => on.page.locator('.not-sent li');
const cameBack = (on: PersonAtPhone) => on.page.locator('.came-back > div');
/** The worker has this page. */
const isKept = (page: Page): Promise<boolean> =>
  page.evaluate(async () => (await (await caches.open('nocool-pages')).match(location.pathname)) !== undefined);
const allSent = (on: PersonAtPhone) => expect.poll(() => waiting(on).count(), PATIENCE).toBe(0);

test('opened once, a call opens without contact as it stood last, and says that it may be old', async () => {
  const job = await cases.brought(toReadings().slice(0, -1));
  const ines = await phone(job);
  await expect.poll(() => isKept(ines.page), PATIENCE).toBe(true);
  // On from what the worker keeps: the page keeps each view that comes.
  await ines.type('wires off');
  await ines.sees(READINGS);
  await contact(ines, false);
  await ines.page.reload();
  await ines.ready();
  await ines.sees(READINGS);
  expect(await ines.page.locator('.contact').textContent()).toContain('Treat it as not proved');
  await expect.poll(() => strip(ines)).toBe('PROVED DEAD');
  // The reason came with the question.
  await ines.tap('Why');
  await ines.page.locator('.info', { hasText: 'Source:' }).waitFor();

  // Forty minutes later by this phone's clock, nobody having heard of the server.
  await ines.page.clock.install({ time: Date.now() + 40 * 60_000 });
  await ines.page.reload();
  await ines.ready();
  await expect.poll(() => strip(ines)).toBe('ENERGIZED OR NOT PROVED');
  await ines.page.goto(cases.url('never-opened-here'));
  await ines.page.getByRole('heading', { name: 'No contact' }).waitFor();
  await ines.tap('To the list of calls');
  await ines.page.getByText('This list may be old').waitFor();
  await contact(ines, true);
  await ines.page.getByText('This list may be old').waitFor({ state: 'detached' });
}, 60_000);

test('replies without contact wait on the phone over a reload, are sent in order, and count once', async () => {
  const job = await cases.brought(['d']);
  const ines = await phone(job);
  await expect.poll(() => isKept(ines.page), PATIENCE).toBe(true);
  const before = (await record(job)).length;
  await contact(ines, false);
  await ines.page.locator('.contact').waitFor();
  await ines.type('note the gate sticks');
  await ines.tap('PSC with a run capacitor of two or three terminals');
  await ines.type('note second');
  await expect.poll(() => waiting(ines).count()).toBe(3);
  expect(await ines.strip.textContent()).toContain('3 replies are on this phone alone');
  expect(await ines.page.locator('.holder').textContent()).toContain('Answered on this phone, not sent');
  expect(await ines.page.locator('.parts [data-option]').count()).toBe(0);
  await ines.page.reload();
  await ines.ready();
  await expect.poll(() => waiting(ines).allTextContents()).toHaveLength(3);
  const shown = await waiting(ines).allTextContents();
  expect(shown.map((each) => /gate sticks|PSC|second/.exec(each)?.[0])).toEqual(['gate sticks', 'PSC', 'second']);
  expect(await kinds(job, before)).toEqual([]);
  await contact(ines, true);
  await ines.sees('Are you and your meter fit');
  await allSent(ines);
  expect((await kinds(job, before)).filter((kind) => kind !== 'set')).toEqual(['noted', 'answered', 'noted']);
  const answered = (await record(job)).slice(before).find(({ kind }) => kind === 'answered');
  expect(answered?.body).toMatchObject({ offline: true });
  await ines.page.locator('summary', { hasText: 'Earlier lines' }).click();
  await ines.page.locator('.lines li', { hasText: 'Answered without contact' }).waitFor();
}, 60_000);

test('a gate answered without contact authorises nothing, a reading is kept and ends the isolation', async () => {
  const job = await cases.brought(TO_LOCK);
  const ines = await phone(job);
  const before = (await record(job)).length;
  await contact(ines, false);
  await ines.page.locator('.contact').waitFor();
  expect(await ines.page.locator('.card').textContent()).toContain('authorises nothing');
  await ines.tap('Open, locked, tagged, tried');
  await expect.poll(() => waiting(ines).count()).toBe(1);
  await contact(ines, true);
  await cameBack(ines).waitFor(PATIENCE);
  expect(await cameBack(ines).textContent()).toContain('A gate answered without contact authorises nothing');
  await ines.sees('Open it, lock it, tag it');
  expect(await kinds(job, before)).toEqual([]);
  // Nothing of a gate is filled in again.
  expect(await cameBack(ines).getByRole('button').allTextContents()).toEqual(['Seen']);
  await cameBack(ines).getByRole('button', { name: 'Seen' }).click();
  await ines.tap('Open, locked, tagged, tried');
  await ines.sees('Cover off, eyes only');

  const other = await cases.brought(toReadings());
  await ines.goto(cases.url(other));
  await contact(ines, false);
  await ines.page.locator('.contact').waitFor();
  await ines.page.getByLabel('Or all in one line').fill(WEAK_HERM);
  await ines.send();
  await expect.poll(() => waiting(ines).count()).toBe(1);
  await contact(ines, true);
  await expect.poll(() => notices(ines), PATIENCE).toContain('You answered without contact');
  expect(await strip(ines)).toContain('BEING PROVED');
}, 60_000);

test('an answer to a question that is gone comes back beside what stands now, and changes nothing', async () => {
  const job = await cases.brought(TO_MEANS.slice(0, 1));
  const ines = await phone(job);
  await contact(ines, false);
  await ines.page.locator('.contact').waitFor();
  await ines.tap('PSC with a run capacitor of two or three terminals');
  await ines.type('half a thought');
  await expect.poll(() => waiting(ines).count()).toBe(2);
  // The line is free again: nobody waits there any more for what becomes of it.
  await expect.poll(() => ines.composer.inputValue()).toBe('');
  // Somebody in contact answers first.
  await cases.tell('ruth', job, 'psc');
  const before = (await record(job)).length;
  await contact(ines, true);
  await expect.poll(() => cameBack(ines).count(), PATIENCE).toBe(2);
  expect((await cameBack(ines).allTextContents()).join()).toMatch(/moved on[\s\S]*PSC[\s\S]*half a thought/);
  await ines.sees('Are you and your meter fit');
  // The words are on the record as a note, and nothing else is.
  expect(await kinds(job, before)).toEqual(['noted']);
  await cameBack(ines).last().getByRole('button', { name: 'Fill it in again' }).click();
  expect(await ines.composer.inputValue()).toBe('half a thought');
  await ines.composer.fill('');
  await expect.poll(() => cameBack(ines).count()).toBe(1);
  await cameBack(ines).getByRole('button', { name: 'Seen' }).click();
  await cameBack(ines).waitFor({ state: 'detached' });
});

test('an answer that was kept, whose confirmation got lost, is sent again by itself and counts once', async () => {
  const job = await cases.brought(TO_LOCK);
  const ines = await phone(job);
  const before = (await record(job)).length;
  let lost = 0;
  await ines.page.route('**/replies', async (route) => {
    if (lost++ > 0) return route.continue();
    await route.fetch();
    await route.abort();
  });
  await ines.tap('Open, locked, tagged, tried');
  await ines.sees('Cover off, eyes only');
  await allSent(ines);
  expect(lost).toBeGreaterThan(1);
  expect(await kinds(job, before)).toEqual(['answered']);
  expect(await cameBack(ines).count()).toBe(0);
});

test('what is typed while a line is still on its way stays, and goes as a line of its own', async () => {
  const job = await cases.brought(['d']);
  const ines = await phone(job);
  const before = (await record(job)).length;
  await ines.page.route('**/replies', async (route) => {
    await new Promise((resolve) => setTimeout(resolve, 700));
    await route.continue();
  });
  await ines.type('note rust under the leads');
  await ines.composer.fill('note and a wasp nest');
  await expect.poll(() => kinds(job, before), PATIENCE).toEqual(['noted']);
  await allSent(ines);
  expect(await ines.composer.inputValue()).toBe('note and a wasp nest');
  await ines.type('note and a wasp nest');
  await expect.poll(() => kinds(job, before), PATIENCE).toEqual(['noted', 'noted']);
  await expect.poll(() => ines.composer.inputValue()).toBe('');
});

test('two tabs of one phone show the same and send it once; what is not to be sent is not', async () => {
  const job = await cases.brought(['d']);
  const ines = await phone(job);
  const second = await ines.tab();
  await second.goto(cases.url(job));
  const before = (await record(job)).length;
  await contact(ines, false);
  await ines.page.locator('.contact').waitFor();
  await ines.type('note kept once');
  await ines.type('note never');
  await expect.poll(() => waiting(second).count()).toBe(2);
  await waiting(second).last().getByRole('button', { name: 'Don’t send it' }).click();
  await expect.poll(() => waiting(ines).count()).toBe(1);
  await second.page.goto(cases.url(''));
  await contact(ines, true);
  await allSent(ines);
  expect(await kinds(job, before)).toEqual(['noted']);
}, 60_000);

test('what lets a job go on is not kept: it needs contact, and an emergency that nobody heard of says so', async () => {
  const job = await cases.brought(['d', 'stop']);
  await cases.shop.desk.reply('ines', job, {
    kind: 'answer',
    client: cases.client(),
    seq: (await cases.shop.desk.look('ines', job)).prompt.seq,
    parts: { cover: 'on', lock: 'stays' },
  });
  const ines = await phone(job);
  await expect.poll(() => isKept(ines.page), PATIENCE).toBe(true);
  await contact(ines, false);
  await ines.page.locator('.contact').waitFor();
  await ines.more('Where am I');
  await ines.page.locator('.not-sent', { hasText: 'needs contact' }).waitFor();
  await ines.tap('Leave it');
  await ines.tap('Go on');
  await expect.poll(() => waiting(ines).count()).toBe(1);
  // Typed words of danger are read on the phone; so is the key.
  await ines.type('i got a shock');
  const unheard = ines.page.locator('.panel[data-level="danger"]', { hasText: 'Nobody has been told' });
  await unheard.waitFor();
  await waiting(ines).last().getByRole('button', { name: 'Don’t send it' }).click();
  await unheard.waitFor({ state: 'detached' });
  await ines.tap('Emergency');
  await unheard.waitFor();
  expect(await unheard.evaluate((panel) => panel.getBoundingClientRect().bottom)).toBeLessThan(640);
  await contact(ines, true);
  await ines.sees('Emergency. Get away from the unit.');
  expect((await record(job)).some(({ kind }) => kind === 'resumed')).toBe(false);
});

test('a page that is older than the server keeps what is given, says to reload, and sends it then', async () => {
  const job = await cases.brought(['d']);
  const ines = await phone(job);
  const before = (await record(job)).length;
  await ines.page.route('**/api/**/replies', (route) =>
    route.fulfill({
      status: 400,
      headers: { 'x-nocool-build': 'newer' },
      contentType: 'application/json',
      body: JSON.stringify({ error: 'bad-request', what: 'That is not what is taken here.' }),
    }),
  );
  await ines.type('note not lost');
  await ines.page.locator('.outdated').waitFor();
  await expect.poll(() => waiting(ines).count()).toBe(1);
  expect(await kinds(job, before)).toEqual([]);
  await ines.page.unroute('**/api/**/replies');
  await ines.tap('Reload');
  await expect.poll(() => kinds(job, before), PATIENCE).toEqual(['noted']);
  await ines.ready();
  expect(await ines.page.locator('.outdated').count()).toBe(0);
});

test('a line that is dead without anybody hanging up is noticed', async () => {
  const job = await cases.brought(['d']);
  const ines = await phone(job);
  await ines.page.clock.install();
  const listens = ines.page.waitForRequest(/\/feed\?/);
  await ines.page.reload();
  await ines.ready();
  await listens;
  await ines.page.route('**/feed**', () => undefined);
  await ines.page.clock.fastForward('00:41');
  await ines.page.locator('.contact').waitFor();
});

test('a network that swallows what is asked, from the first request on, is noticed', async () => {
  const job = await cases.brought(['d']);
  const ines = await phone(job);
  await ines.page.clock.install();
  await ines.page.route('**/feed**', () => undefined);
  const listens = ines.page.waitForRequest(/\/feed\?/);
  await ines.page.reload();
  await ines.ready();
  await listens;
  expect(await ines.page.locator('.contact').count()).toBe(0);
  await ines.page.clock.fastForward('00:41');
  await ines.page.locator('.contact').waitFor();
});
