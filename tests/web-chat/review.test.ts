/** A senior at the review desk, by keyboard alone, while the junior answers from a phone. */
import { rm } from 'node:fs/promises';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { MOTORS, PLATE, REPAIR } from '../engine/given.ts';
import { PROVES, TO_READINGS } from '../people.ts';
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

let count = 0;
/** Ines goes through a call at the desk's own door: HERM reads 41.0 of 45 ±6 %, which the habit would keep. */
async function finished(title: string): Promise<string> {
  const { desk } = shop;
  let { view } = await desk.open('dana', { title, assign: 'ines', client: `r${++count}` });
  const lines = [...TO_READINGS, 'herm 41.0 fan 5.02 hf 4.47 case ol', ...MOTORS, ...REPAIR, PLATE, 'closed', PROVES];
  for (const text of lines) {
    const { seq } = view.prompt;
    const turn = await desk.reply('ines', view.job, { kind: 'text', client: `r${++count}`, seq, text });
    if (turn.refusal) throw new Error(`"${text}": ${turn.refusal.text}`);
    view = turn.view;
  }
  return view.job;
}

/** Everything goes through these: no mouse, no touch. */
class AtKeyboard {
  readonly page: Page;
  constructor(page: Page) {
    this.page = page;
  }
  press = (key: string): Promise<void> => this.page.keyboard.press(key);
  focused = (): Promise<string> => this.page.evaluate(() => document.activeElement?.textContent?.trim() ?? '');
  focusedId = (): Promise<string> => this.page.evaluate(() => document.activeElement?.id ?? '');
  /** Tab until the focus is on what is called so; a page of this size has fewer than 200 stops. */
  async tabTo(name: string | RegExp): Promise<void> {
    for (let i = 0; i < 200; i++) {
      await this.press('Tab');
      const here = await this.focused();
      if (typeof name === 'string' ? here === name : name.test(here)) return;
    }
    throw new Error(`no Tab leads to ${name}`);
  }
}

test('queue, attention, its entry, recompute, a question answered live, signature: by keyboard alone', async () => {
  const job = await finished('Alder Court 9: hums');
  const { page: phonePage, ...ines } = await PersonAtPhone.signIn(await phone(browser), await serving.linkFor('ines'));
  expect(ines.errors).toEqual([]);
  await phonePage.goto(`${serving.url}/jobs/${job}`);

  const context = await browser.newContext({ viewport: { width: 1280, height: 800 }, timezoneId: 'UTC' });
  const ruth = await PersonAtPhone.withCookie(context, serving.url, await serving.cookieFor('ruth'));
  const at = new AtKeyboard(ruth.page);
  await ruth.page.goto(`${serving.url}/review`);
  await ruth.page.locator('[data-live="true"]').waitFor();
  await at.press('q');
  expect(await at.focused()).toBe('Alder Court 9: hums');
  await at.press('Enter');
  await ruth.page.waitForURL(/\/review\/./);
  await ruth.page.locator('.desk[data-live="true"]').waitFor();

  // From what needs attention to its entry; the keyboard goes on from there.
  await at.press('a');
  expect(await at.focused()).toBe('What needs attention');
  await at.tabTo(/habit .* would say otherwise/);
  await at.press('Enter');
  const id = await at.focusedId();
  expect(id).toMatch(/^entry-\d+$/);
  expect(await at.focused()).toContain('Verdict: The run capacitor is out of its label');
  if (process.env.SHOTS) await ruth.page.screenshot({ path: `${process.env.SHOTS}/desk-live.png`, fullPage: true });
  await at.press('n');
  expect(await at.focusedId()).toMatch(/^entry-\d+$/);

  // The evidence beside it: reading, limits, doubt, source.
  await at.press('e');
  expect(await at.focused()).toBe('Evidence');
  const herm = ruth.page.locator('.evidence tr', { hasText: /^HERM41/ });
  expect((await herm.first().textContent())?.replaceAll('\u2009', ' ')).toMatch(
    /41 µF.*fail.*42\.30–47\.70 µF.*±.*printed/,
  );

  await at.press('r');
  const same = ruth.page.locator('.info', { hasText: 'The same, byte for byte.' });
  await same.waitFor();
  expect(await same.textContent()).toMatch(/entries and \d+ verdicts were gone over/);

  await at.press('q');
  // The field has the focus before the next key can come: letters are words here, not keys.
  await ruth.page.keyboard.type('Were all three wires off?');
  await at.press('Tab');
  await at.press('Enter');
  await phonePage.locator('.question', { hasText: 'Were all three wires off?' }).waitFor();
  await phonePage.getByRole('button', { name: 'Reply to the senior' }).click();
  await phonePage.getByLabel('Your reply').fill('Yes, all three, photo in the ticket');
  await phonePage.locator('.card .words button[type=submit]').click();
  await ruth.page.locator('.conversation li', { hasText: 'Yes, all three, photo in the ticket' }).waitFor();

  // No key traps: from the first element Tab goes through the page and out of it.
  await at.press('d');
  await at.tabTo('Sign');
  await at.press('Enter');
  expect(await at.focused()).toBe('Sign: sure');
  await at.press('Enter');
  await ruth.page.locator('.decide', { hasText: 'Signed.' }).first().waitFor();
  await expect.poll(() => phonePage.locator('.card h2').first().textContent()).toBe('Signed');
  expect((await shop.desk.look('ines', job)).summary?.customer.at(-1)).toMatch(/^Read and signed by Ruth Marlow/);
  expect((await shop.desk.review.queue('ruth')).jobs).toEqual([]);
  expect(ruth.errors).toEqual([]);

  // Single keys can be turned off: a letter then does nothing.
  await at.tabTo('Single keys');
  await at.press('Enter');
  await at.press('e');
  expect(await at.focused()).toBe('Single keys');
  await context.close();
}, 120_000);

test('a junior and a dispatcher are told that this is not theirs, and nothing is shown', async () => {
  const job = await finished('Mill Lane 4');
  for (const who of ['ines', 'dana']) {
    const headers = { cookie: await serving.cookieFor(who), 'x-nocool': '1', 'content-type': 'application/json' };
    const asked = await Promise.all([
      fetch(`${serving.url}/review`, { headers }),
      fetch(`${serving.url}/review/${job}`, { headers }),
      fetch(`${serving.url}/review/counts`, { headers }),
      fetch(`${serving.url}/api/review`, { headers }),
      fetch(`${serving.url}/api/review/${job}`, { headers }),
      fetch(`${serving.url}/api/review/${job}/recompute`, { method: 'POST', headers, body: '{}' }),
    ]);
    expect(asked.map(({ status }) => status)).toEqual(Array(6).fill(403));
    for (const answer of asked) expect(await answer.text()).not.toContain('Mill Lane');
  }
});

test('a report is read on a page, shared by a link that needs no sign-in, and taken back', async () => {
  const job = await finished('Harrow Yard 2');
  const ines = await PersonAtPhone.withCookie(await phone(browser), serving.url, await serving.cookieFor('ines'));
  await ines.goto(`${serving.url}/jobs/${job}`);
  await ines.page.getByText('Share by a link').click();
  await ines.page.getByRole('button', { name: 'Make a link' }).click();
  const address = await ines.page.getByLabel(/Copy it now/).inputValue();
  const path = new URL(address).pathname;
  expect(path).toMatch(/^\/report\/[0-9a-f]{64}$/);

  const get = (at: string) => fetch(`${serving.url}${at}`);
  const page = await get(path);
  expect([page.status, page.headers.get('set-cookie'), page.headers.get('x-robots-tag')]).toEqual([
    ...[200, null],
    'noindex, nofollow',
  ]);
  expect(await page.text()).toMatch(/NOT SIGNED: no senior has read[\s\S]*HERM/);
  const pdf = await get(`${path}/pdf?size=A4`);
  expect([pdf.headers.get('content-type'), (await pdf.text()).slice(0, 5)]).toEqual(['application/pdf', '%PDF-']);
  expect(await (await get(`${path}/json`)).json()).toMatchObject({ nocool: 'report', for: 'customer' });
  // The token opens this report and nothing besides: no job, no list, no record.
  const cookie = `nocool=${path.split('/').at(-1)}`;
  for (const other of [`/jobs/${job}`, `/api/jobs/${job}`, `/jobs/${job}/report/shop`, '/api/review'])
    expect((await fetch(`${serving.url}${other}`, { headers: { cookie } })).status, other).toBe(401);
  expect(serving.logged.join()).not.toContain(path.split('/').at(-1));

  await ines.page.getByRole('button', { name: 'Take back' }).click();
  await expect.poll(() => ines.page.locator('.links li').count()).toBe(0);
  const gone = await get(path);
  expect([gone.status, await gone.text()]).toEqual([404, expect.stringContaining('This link opens no report')]);
  expect((await get(`${path}/pdf`)).status).toBe(404);
  expect(ines.errors).toEqual([]);
});

test('counts are links: each filters by what it counts, and the jobs behind it are named', async () => {
  await finished('Counted Lane 1');
  const cookie = await serving.cookieFor('ruth');
  const get = async (path: string) =>
    (await fetch(`${serving.url}${path}`, { headers: { cookie } }))
      .text()
      .then((text) => text.replaceAll('&amp;', '&'));
  const all = await get('/review/counts');
  const [, href = ''] = /<a href="([^"]*person=ines[^"]*)">Ines Vale<\/a>/.exec(all) ?? [];
  const hers = await get(href);
  expect(hers).toContain('Without: Ines Vale');
  expect(hers).toMatch(/<a href="\/review\/[0-9a-f]+">Counted Lane 1<\/a>/);
  expect(await get('/review/counts?from=2020-01-01&to=2020-01-02')).toContain('Nothing ended in these days.');
  expect((await fetch(`${serving.url}/review/counts?from=x`, { headers: { cookie } })).status).toBe(400);
});
