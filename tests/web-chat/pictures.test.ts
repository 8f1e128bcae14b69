/**
 * The pictures of the README, taken from the demo on a clock that stands still. `npm run screenshots` takes them anew;
 * the test takes them as well and compares, so that a change of the look is seen before it is committed.
 */
import { mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { createDesk, type Desk } from '../../engine/desk/index.ts';
import { openSqlite, type Store } from '../../engine/store/index.ts';
import { SHELF } from '../../flows/index.ts';
import { loadDemo } from '../../seeds/index.ts';
import { buildPage, launch, phone } from './browser.ts';
import { TO_PROVING } from './cases.ts';
import { unlike } from './compare.ts';
import { PersonAtPhone } from './person.ts';
import { type Serving, serve } from './serve.ts';

const PICTURES = fileURLToPath(new URL('./pictures', import.meta.url));
/** Half a minute past, so that no countdown turns while a picture is taken. */
const NOW = Date.parse('2026-07-14T15:00:30.000Z');

let browser: Browser;
let serving: Serving;
let store: Store;
let desk: Desk;
let folder: string;
let data: string;
let ines: PersonAtPhone;
const jobs = new Map<string, string>();

beforeAll(async () => {
  data = await mkdtemp(join(tmpdir(), 'nocool-pictures-'));
  [folder, browser, store] = await Promise.all([buildPage(), launch(), openSqlite(join(data, 'shop.sqlite'))]);
  let count = 0;
  const random = (bytes: number): string => (++count).toString(16).padStart(bytes * 2, '0');
  const parts = { shelf: SHELF, clock: () => new Date(NOW), random };
  await loadDemo(store, parts);
  desk = createDesk({ ...parts, store });
  serving = await serve({ desk, store, pageFolder: folder });
  for (const { job, title } of await desk.jobs('ines')) jobs.set(title.split(':')[0] ?? '', job);
  ines = await PersonAtPhone.withCookie(await phone(browser), serving.url, await serving.cookieFor('ines'));
  // The fonts are optional at the first sight: from the second on they are there.
  await ines.page.goto(serving.url);
  await ines.page.evaluate(() => document.fonts.ready);
});
afterAll(async () => {
  await browser?.close();
  await serving?.close();
  await store?.close();
  for (const each of [folder, data]) if (each) await rm(each, { recursive: true });
});

const at = (place: string): string => `${serving.url}/jobs/${jobs.get(place)}`;
async function isSame(name: string, page: Page): Promise<void> {
  await page.evaluate(() => document.fonts.ready);
  const taken = await page.screenshot({ type: 'jpeg', quality: 50 });
  const file = join(PICTURES, `${name}.jpg`);
  if (process.env.PICTURES === 'write') await writeFile(file, taken);
  const kept = await readFile(file);
  // Small enough to be loaded with the page that shows them.
  expect(kept.length).toBeLessThan(60_000);
  expect(await unlike(page.context(), kept, taken), name).toBeLessThan(1);
}

test('the list of calls', async () => {
  await ines.page.goto(serving.url);
  await isSame('calls', ines.page);
});

test('a question with hands inside, light and dark', async () => {
  await ines.goto(at('Mill Lane 2'));
  await isSame('readings', ines.page);
  await ines.page.emulateMedia({ colorScheme: 'dark' });
  await isSame('dark', ines.page);
  await ines.page.emulateMedia({ colorScheme: 'light' });
});

test('a gate, and a reply that waits for contact', async () => {
  const job = jobs.get('Harrow Yard 9, roof') ?? '';
  for (const [i, text] of TO_PROVING.slice(0, 4).entries()) {
    const { prompt } = await desk.look('ines', job);
    await desk.reply('ines', job, { kind: 'text', client: `picture-${i}`, seq: prompt.seq, text });
  }
  await ines.goto(at('Harrow Yard 9, roof'));
  await isSame('gate', ines.page);
  await ines.page.context().setOffline(true);
  await ines.page.locator('.contact').waitFor();
  await ines.type('note the gate sticks');
  await ines.page.locator('.not-sent').evaluate((waiting) => waiting.scrollIntoView({ block: 'end' }));
  // The time on it is this machine's own.
  await ines.page.locator('.given time').evaluate((time) => {
    time.textContent = '15:00';
  });
  await isSame('not-sent', ines.page);
  await ines.page.context().setOffline(false);
  await ines.page.locator('.not-sent').waitFor({ state: 'detached' });
});

test('a finished call on a tablet', async () => {
  await ines.page.setViewportSize({ width: 768, height: 640 });
  await ines.goto(at('Alder Court 14, unit 3'));
  await isSame('finished', ines.page);
  await ines.page.setViewportSize({ width: 360, height: 640 });
});

test('another screen is told apart, and so is the same in other colours', async () => {
  const kept = (name: string) => readFile(join(PICTURES, `${name}.jpg`));
  const context = ines.page.context();
  expect(await unlike(context, await kept('calls'), await kept('readings'))).toBeGreaterThan(3);
  expect(await unlike(context, await kept('dark'), await kept('readings'))).toBeGreaterThan(3);
});
