/** A dispatcher at a desk, in a real browser: a call by keyboard alone, the board in two windows, an emergency in all. */
import { mkdir, rm } from 'node:fs/promises';
import type { Browser, BrowserContext, Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { buildPage, launch } from './browser.ts';
import { badTargets, bringAxe, faint, findings, sideways } from './measure.ts';
import { PersonAtPhone } from './person.ts';
import { type Serving, serve } from './serve.ts';
import { openShop, type Shop } from './shop.ts';

let browser: Browser;
let serving: Serving;
let folder: string;
let shop: Shop;
const contexts: BrowserContext[] = [];

beforeAll(async () => {
  [folder, shop] = await Promise.all([buildPage(), openShop()]);
  [browser, serving] = await Promise.all([
    launch(),
    serve({ desk: shop.desk, store: shop.store, clock: shop.clock, pageFolder: folder }),
  ]);
}, 60_000);
afterAll(async () => {
  await browser?.close();
  await serving?.close();
  await shop?.close();
  if (folder) await rm(folder, { recursive: true });
});
const as = async (person: string): Promise<PersonAtPhone> => {
  const context = await browser.newContext({ viewport: { width: 1280, height: 900 }, timezoneId: 'UTC' });
  contexts.push(context);
  return PersonAtPhone.withCookie(context, serving.url, await serving.cookieFor(person));
};
/** Goes there, and waits until its feed stands: what happens from then on is heard of. */
const listening = async (page: Page, path: string): Promise<void> => {
  const feed = page.waitForResponse((answer) => new URL(answer.url()).pathname === '/api/feed');
  await page.goto(`${serving.url}${path}`);
  await feed;
};
const live = (page: Page): Promise<void> => page.locator('.office[data-live="true"]').waitFor();
const shot = async (page: Page, name: string): Promise<void> => {
  const { SHOTS } = process.env;
  if (!SHOTS) return;
  await mkdir(SHOTS, { recursive: true });
  await page.screenshot({ path: `${SHOTS}/${name}.png`, fullPage: true });
};
/** Tab until what is focused is called so. */
async function tabTo(page: Page, name: RegExp): Promise<void> {
  const here = () =>
    page.evaluate(() => {
      const at = document.activeElement;
      if (!(at instanceof HTMLElement)) return '';
      const labels = 'labels' in at ? [...((at as HTMLInputElement).labels ?? [])].map((l) => l.innerText) : [];
      return [at.getAttribute('aria-label'), ...labels, at.innerText].filter(Boolean).join(' ');
    });
  for (let i = 0; i < 80; i++) {
    if (name.test(await here())) return;
    await page.keyboard.press('Tab');
  }
  throw new Error(`nothing that can be focused is called ${name}; at ${await here()}`);
}

/** Whether these stand in the window one under the other, each with its whole height. */
const inOrder = (page: Page, all: readonly string[]): Promise<boolean> =>
  page.evaluate((those) => {
    const at = those.map((one) => document.querySelector(one)?.getBoundingClientRect());
    return at.every((box, i) => {
      const before = at[i - 1]?.bottom ?? 0;
      return box !== undefined && box.height > 0 && box.top >= before - 1 && box.bottom <= innerHeight;
    });
  }, all);

/** A whole call at the desk’s own door; by keyboard alone it is played in the five minutes of the README. */
async function taken(): Promise<void> {
  const { dispatch, reply } = shop.desk;
  let { view } = await dispatch.take('dana', { client: 'taken' });
  const seen = ['hums', 'blowing', 'on', 'fine', 'nothing', 'today, nobody worked on it', 'skip no plate in reach'];
  const who = ['none', 'Lena Orchard', '(555) 014-2233', 'Brook Terrace 7', 'free', 'new', 'split'];
  for (const text of [...who, ...seen, 'baby', 'indoors 96 humidity 65', 'nothing', 'done', 'somebody comes']) {
    const client = `taken ${view.prompt.seq}`;
    const turn = await reply('dana', view.job, { kind: 'text', client, seq: view.prompt.seq, text });
    if (turn.refusal) throw new Error(`"${text}": ${turn.refusal.text}`);
    view = turn.view;
  }
}

test('a call is begun by keyboard, names what is missing, and is put away; another is given out and followed in a second window', async () => {
  const [dana, ruth] = await Promise.all([as('dana'), as('ruth')]);
  await ruth.page.goto(`${serving.url}/board`);
  await live(ruth.page);
  const { page } = dana;
  await page.goto(`${serving.url}/board`);
  await live(page);
  await tabTo(page, /^Take a call/);
  await page.keyboard.press('Enter');
  await page.waitForURL(/\/calls\//);
  await live(page);
  const { keyboard } = page;
  // Dangers first, alone.
  await tabTo(page, /None of these/);
  await keyboard.press('Space');
  await keyboard.press('Enter');
  await page.getByRole('heading', { name: 'Who calls, and where' }).waitFor();
  // Sent with nothing on it, all that is missing is named at once.
  const name = page.getByLabel('Name', { exact: true });
  await expect.poll(() => name.evaluate((field) => document.activeElement === field)).toBe(true);
  await keyboard.press('Enter');
  await page
    .locator('.refusal')
    .filter({ hasText: /Name[\s\S]*Call-back number[\s\S]*Address[\s\S]*Kind of system/ })
    .waitFor();
  // The first field has the focus; Enter sends what is there, and what is missing is named without losing anything.
  await keyboard.type('Lena Orchard');
  await keyboard.press('Enter');
  await page.locator('.refusal').filter({ hasText: 'Still needed' }).waitFor();
  expect(await page.getByLabel('Name', { exact: true }).inputValue()).toBe('Lena Orchard');
  // The line goes dead: what was taken stands on the line for everybody, until it is put away.
  const onTheLine = ruth.page
    .locator('section[aria-label="On the line"]')
    .getByText('Whoever opens it goes on with it');
  await onTheLine.waitFor();
  await shot(page, 'call-who');
  await tabTo(page, /^Line is gone: put it away/);
  await keyboard.press('Enter');
  await page.waitForURL(/\/board$/);
  await live(page);
  await onTheLine.waitFor({ state: 'detached' });
  await taken();
  const mine = page.locator('.board-card').filter({ hasText: 'Brook Terrace 7' });
  await mine.getByText('feels like 121').waitFor();
  // The other window has it without a look.
  const theirs = ruth.page.locator('section[aria-label="Nobody has it"] .board-card');
  await theirs.filter({ hasText: 'Brook Terrace 7' }).waitFor();
  await shot(page, 'board');
  await tabTo(page, /^Give it/);
  await keyboard.press('Enter');
  await ruth.page.locator('section[aria-label="Given out"]').getByText('Ines Vale').first().waitFor();
  // Followed without leaving the board: what the technician answers is seen.
  await theirs.page().locator('summary', { hasText: 'Follow' }).first().click();
  const [card] = (await shop.desk.dispatch.board('dana')).jobs;
  const { prompt } = await shop.desk.look('ines', card?.job ?? '');
  await shop.desk.reply('ines', card?.job ?? '', { kind: 'text', client: 'i1', seq: prompt.seq, text: 'b' });
  await ruth.page.locator('.following').getByText('What does the unit do?').waitFor();
  expect([...dana.errors, ...ruth.errors]).toEqual([]);
  expect(serving.logged.join('\n')).not.toMatch(/orchard|0142233|brook/i);
}, 60_000);

test('the same caller is found while the number is typed, and by words; the unit with its history', async () => {
  const { page } = await as('dana');
  await page.goto(`${serving.url}/board`);
  await live(page);
  await page.getByLabel(/Find a call/).fill('orch terr');
  await page.keyboard.press('Enter');
  await page.locator('ul[aria-label="Found"] a').filter({ hasText: 'Brook Terrace 7' }).waitFor();
  await page.getByRole('button', { name: 'Take a call' }).click();
  await page.waitForURL(/\/calls\//);
  await live(page);
  await page.getByLabel('None of these').check();
  await page.keyboard.press('Enter');
  await page.getByLabel('Call-back number').fill('555 014');
  await page.locator('.known').getByText('Open already').waitFor();
  await page.getByLabel('Address of the unit').fill('brook ter');
  await page.getByRole('button', { name: 'It is this unit' }).click();
  await page.getByRole('button', { name: 'This unit', exact: true }).waitFor();
  await shot(page, 'call-known');
  await bringAxe(page);
  expect([await findings(page), await faint(page), await badTargets(page), await sideways(page)]).toEqual([
    [],
    [],
    [],
    0,
  ]);
}, 60_000);

test('an emergency is on every page of those who are told within a second, until each has seen it; on no technician’s', async () => {
  const [dana, ruth, tomas] = await Promise.all([as('dana'), as('ruth'), as('tomas')]);
  const other = await shop.desk.open('dana', { title: 'Elsewhere', client: 'e1' });
  await Promise.all([
    listening(dana.page, '/board'),
    listening(ruth.page, `/jobs/${other.view.job}`),
    tomas.page.goto(`${serving.url}/`),
  ]);
  await live(dana.page);
  const { view } = await shop.desk.open('ines', { title: 'Mill Lane 2', client: 'e2' });
  // The feeds stand once a page has heard of something.
  await dana.page.locator('.board-card').filter({ hasText: 'Mill Lane 2' }).waitFor();
  const bars = [dana, ruth].map(({ page }) => page.locator('.alarms'));
  // By the page's own clock, which is this machine's: a test that looks now and then would see it late.
  const shown = [dana, ruth].map(({ page }) =>
    page.evaluate(
      () =>
        new Promise<number>((done) => {
          const seen = () => document.querySelector('.alarms') && done(Date.now());
          new MutationObserver(seen).observe(document.body, { childList: true, subtree: true });
          // It may have been there before this page was told to look.
          seen();
        }),
    ),
  );
  await shop.desk.reply('ines', view.job, { kind: 'text', client: 'e3', seq: view.prompt.seq, text: 'smoke' });
  const begun = Date.now();
  for (const at of await Promise.all(shown)) expect(at - begun).toBeLessThan(1_000);
  await Promise.all(bars.map((bar) => bar.getByText('Mill Lane 2').waitFor()));
  expect(await tomas.page.locator('.alarms').count()).toBe(0);
  expect(await dana.page.title()).toMatch(/^EMERGENCY/);
  await shot(dana.page, 'alarm-board');
  await shot(ruth.page, 'alarm-ticket');
  for (const { page } of [dana, ruth]) {
    await bringAxe(page);
    expect([await findings(page), await faint(page)]).toEqual([[], []]);
    await page.setViewportSize({ width: 320, height: 800 });
    expect(await sideways(page)).toBe(0);
  }
  expect(await badTargets(dana.page)).toEqual([]);
  // On a ticket read to its end it is in view, and so is the isolation strip.
  await ruth.page.evaluate(() => scrollTo(0, document.body.scrollHeight));
  await expect.poll(() => inOrder(ruth.page, ['.alarms', '.strip'])).toBe(true);
  // It stays over a reload, and goes from one window as that person has seen it.
  await dana.page.reload();
  await bars[0]?.getByRole('button', { name: 'I have seen it' }).click();
  await expect.poll(() => bars[0]?.count()).toBe(0);
  await bars[1]?.getByText('Seen by Dana Quill').waitFor();
  // That counts for the emergency: it stays to be seen, and no longer calls.
  await ruth.page.getByRole('status').getByRole('button', { name: 'I have seen it too' }).waitFor();
  expect([await ruth.page.locator('.alarms [role=alert]').count(), await ruth.page.title()]).toEqual([
    0,
    expect.not.stringMatching(/^EMERGENCY/),
  ]);
  expect((await shop.store.read(view.job)).entries.at(-1)).toMatchObject({ kind: 'acknowledged', by: 'dana' });
  await shop.desk.reply('ruth', view.job, { kind: 'command', client: 'e4', name: 'release', text: 'steam' });
  await expect.poll(() => bars[1]?.count()).toBe(0);
  expect([...dana.errors, ...ruth.errors, ...tomas.errors]).toEqual([]);
}, 60_000);

test('an approval that is awaited is told on every page of a senior, and in its title, until it is given; to nobody else', async () => {
  const [dana, ruth, second] = await Promise.all([as('dana'), as('ruth'), as('ruth')]);
  const other = await shop.desk.open('dana', { title: 'Elsewhere', client: 'w1' });
  await Promise.all([
    listening(dana.page, '/board'),
    listening(ruth.page, '/shop'),
    listening(second.page, `/jobs/${other.view.job}`),
  ]);
  await Promise.all([live(dana.page), live(ruth.page)]);
  // Where a tag may not stand for a lock by itself, a senior says so each time.
  await shop.desk.shop.saveSettings('otto', { ...(await shop.desk.settings()), tagWithExtraMeasure: false });
  let { view } = await shop.desk.open('ines', { title: 'Fern Gate 5', client: 'w2' });
  for (const text of ['d', 'psc', 'yes', 'pull-out, breaker, no other feed, two legs, outlet', 'no lock fits']) {
    const { seq } = view.prompt;
    view = (await shop.desk.reply('ines', view.job, { kind: 'text', client: `w ${text}`, seq, text })).view;
  }
  expect(view.prompt.kind).toBe('waiting');
  const bars = [ruth, second].map(({ page }) => page.locator('.awaited'));
  for (const bar of bars) await bar.getByText('Waiting for your word: Fern Gate 5').waitFor();
  for (const { page } of [ruth, second]) await expect.poll(() => page.title()).toMatch(/^(EMERGENCY · )?\(1\) /);
  await shot(ruth.page, 'awaited-shop');
  await shot(second.page, 'awaited-ticket');
  await bringAxe(ruth.page);
  expect([await findings(ruth.page), await faint(ruth.page), await badTargets(ruth.page)]).toEqual([[], [], []]);
  await second.page.setViewportSize({ width: 320, height: 800 });
  expect(await sideways(second.page)).toBe(0);
  // However far down one reads, and the isolation strip stays in view under it.
  await second.page.evaluate(() => scrollTo(0, document.body.scrollHeight));
  await expect.poll(() => inOrder(second.page, ['.awaited', '.strip'])).toBe(true);
  // By keyboard: the key leads to where it is decided, and there the title alone counts it.
  await bars[0]?.getByRole('link', { name: 'Look at it' }).press('Enter');
  await ruth.page.getByRole('button', { name: 'Approve' }).first().waitFor();
  await expect.poll(() => ruth.page.title()).toMatch(/\(1\) Review/);
  expect(await ruth.page.locator('.awaited').count()).toBe(0);
  expect([await dana.page.locator('.awaited').count(), await dana.page.title()]).toEqual([
    0,
    expect.not.stringMatching(/\(\d+\)/),
  ]);
  await shop.desk.reply('ruth', view.job, { kind: 'command', client: 'w3', name: 'approve', text: 'tag on it' });
  for (const bar of bars) await expect.poll(() => bar.count()).toBe(0);
  for (const { page } of [ruth, second]) await expect.poll(() => page.title()).not.toMatch(/\(\d+\)/);
  expect([...dana.errors, ...ruth.errors, ...second.errors]).toEqual([]);
}, 60_000);

test('the owner adds somebody, who signs in by a link that is a QR code too, and is signed out again', async () => {
  const { page } = await as('otto');
  await page.goto(`${serving.url}/shop`);
  await live(page);
  const form = page.locator('article').filter({ hasText: 'Somebody new' });
  await form.getByLabel('Name').fill('Nell Harrow');
  await form.getByLabel('Initials').fill('NH');
  await form.getByLabel('dispatcher').check();
  await form.getByRole('button', { name: 'Add' }).click();
  const nell = page.locator('article').filter({ hasText: 'Nell Harrow' });
  await nell.getByRole('button', { name: 'Sign-in link' }).click();
  await nell.getByRole('img', { name: /QR code/ }).waitFor();
  const path = new URL((await nell.locator('.link').textContent()) ?? '').pathname;
  await shot(page, 'shop');
  const hers = await browser.newContext();
  const other = await PersonAtPhone.signIn(hers, `${serving.url}${path}`);
  await other.page.getByText('Nell Harrow').waitFor();
  // Of two places one is signed out by itself; the other stays. All of it by keyboard.
  const { id = '' } = (await shop.desk.shop.look('otto')).people.find(({ name }) => name === 'Nell Harrow') ?? {};
  const first = (await shop.desk.shop.devices('otto', id)).map((one) => one.id);
  const cookie = await serving.cookieFor(id);
  const asks = async () => (await fetch(`${serving.url}/api/me`, { headers: { cookie } })).status;
  expect(await asks()).toBe(200);
  const places = nell.getByRole('button', { name: 'Where signed in' });
  await places.press('Enter');
  await nell.locator('.devices li').nth(1).waitFor();
  await shot(page, 'devices');
  await bringAxe(page);
  expect([await findings(page), await faint(page), await badTargets(page)]).toEqual([[], [], []]);
  const listed = await shop.desk.shop.devices('otto', id);
  const later = listed.findIndex((one) => !first.includes(one.id));
  await nell.locator('.devices li').nth(later).getByRole('button').press('Enter');
  await nell.getByText(/^Signed out: /).waitFor();
  expect([await nell.locator('.devices li').count(), await asks()]).toEqual([1, 401]);
  expect((await other.page.goto(`${serving.url}/board`))?.status()).toBe(200);
  await places.press('Enter');
  expect(await nell.locator('.devices li').count()).toBe(0);
  await nell.getByRole('button', { name: 'Sign out everywhere' }).click();
  await nell.getByText('1 sessions and links ended').waitFor();
  expect((await other.page.goto(`${serving.url}/board`))?.status()).toBe(401);
  // A truck, and a line of its stock; a print that says nothing is named and loses nothing.
  await page.getByLabel('What it is called').fill('Truck 7');
  await page.getByRole('button', { name: 'Add the truck' }).click();
  // Everybody's form names the trucks too.
  const truck = page.getByRole('region', { name: 'Trucks' }).locator('article').filter({ hasText: 'Truck 7' });
  await truck.getByText('Add a line').click();
  await truck.getByLabel('Where it lies').fill('Drawer K');
  await truck.getByLabel('µF by section').fill('45 and 5');
  await truck.getByLabel('Volts AC').fill('440');
  await truck.getByRole('button', { name: 'Add it to the list' }).click();
  await truck.getByText('such as 45+5.').waitFor();
  await truck.getByLabel('µF by section').fill('45+5');
  await truck.getByRole('button', { name: 'Add it to the list' }).click();
  await truck.getByText('Changed here, not saved yet.').waitFor();
  await shot(page, 'truck');
  await truck.getByRole('button', { name: 'Save the stock' }).click();
  await truck.getByText('Changed here').waitFor({ state: 'detached' });
  const carried = async () => (await shop.desk.shop.look('otto')).trucks.map(({ name, items }) => [name, items.length]);
  expect(await carried()).toEqual([['Truck 7', 1]]);
  await truck.getByRole('button', { name: /Take off the list: Drawer K: 45\+5/ }).click();
  await truck.getByText('It carries nothing.').waitFor();
  for (const name of ['Out of service', 'Out of service: sure'])
    await truck.getByRole('button', { name, exact: true }).click();
  await truck.waitFor({ state: 'detached' });
  expect(await carried()).toEqual([]);
  // What is wrong is said where one looks, says what to do, and what was typed stays.
  const said = page.getByRole('status').filter({ hasText: /^(Not saved|Saved)/ });
  const inView = () =>
    said.evaluate((at) => at.getBoundingClientRect().bottom <= innerHeight && at.getBoundingClientRect().top >= 0);
  const minutes = page.getByLabel('Proof of dead stands');
  for (const wrong of ['3', 'abc', '45']) {
    await minutes.fill(wrong);
    await page.getByRole('button', { name: 'Save the settings' }).click();
    await said.getByText('Not saved. How long a proof of dead stands: whole minutes from 5 to 30').waitFor();
    expect([await minutes.inputValue(), await inView()]).toEqual([wrong, true]);
  }
  await form.getByRole('button', { name: 'Add' }).click();
  await said.getByText('Not saved. A person needs a name.').waitFor();
  expect(await inView()).toBe(true);
  await minutes.fill('20');
  // Every dispatcher, until somebody is named.
  const told = page.getByRole('group', { name: 'Told of low stock' });
  expect(await told.getByLabel('Dana Quill').isChecked()).toBe(true);
  expect(await told.getByLabel('Ruth Marlow').isChecked()).toBe(false);
  for (const name of ['Ruth Marlow', 'Dana Quill']) await told.getByLabel(name).click();
  await page.getByLabel('Temperatures').selectOption('°C');
  await page.getByRole('button', { name: 'Save the settings' }).click();
  await said.getByText('Saved: settings.').waitFor();
  expect(await shop.store.settings()).toMatchObject({
    minutes: 20,
    units: { temperature: '°C', pressure: 'psig' },
  });
  const named = (await shop.store.settings()).toldOfStock ?? [];
  expect([named.includes('ruth'), named.includes('dana')]).toEqual([true, false]);
}, 60_000);
