/**
 * Every kind of prompt and part and every other screen, drawn in a real browser and measured. The prompts are drawn by
 * the server and shown one after the other in one page, since loading axe into each would take longer than all else.
 */
import { rm } from 'node:fs/promises';
import type { Browser, BrowserContext, Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { buildPage, launch, phone } from './browser.ts';
import { badTargets, bringAxe, faint, findings, moved, sideways } from './measure.ts';
import { sampleDesk } from './sample/desk.ts';
import { CALL } from './sample/office.ts';
import { NOW, PROMPTS } from './sample/prompts.ts';
import { type Serving, serve } from './serve.ts';
import { openShop, type Shop } from './shop.ts';

let browser: Browser;
let context: BrowserContext;
let serving: Serving;
let folder: string;
let shop: Shop;
let page: Page;

beforeAll(async () => {
  [folder, shop] = await Promise.all([buildPage(), openShop()]);
  [browser, serving] = await Promise.all([
    launch(),
    serve({ desk: sampleDesk(), store: shop.store, pageFolder: folder }),
  ]);
  context = await phone(browser);
  const [name = '', value = ''] = (await serving.cookieFor('jo')).split('=');
  await context.addCookies([{ name, value, url: serving.url }]);
  page = await context.newPage();
  await page.goto(`${serving.url}/offline`);
  await bringAxe(page);
});
afterAll(async () => {
  await browser?.close();
  await serving?.close();
  await shop?.close();
  if (folder) await rm(folder, { recursive: true });
});

/** Shows what the server draws at this address, without its script. */
const show = (path: string, name: string, value: string): Promise<void> =>
  page.evaluate(
    async ([where, cookie]) => {
      // biome-ignore lint/suspicious/noDocumentCookie: as the page itself does.
      document.cookie = cookie;
      const drawn = new DOMParser().parseFromString(await (await fetch(where)).text(), 'text/html');
      document.title = drawn.title;
      document.body.replaceChildren(...drawn.body.childNodes);
      window.scrollTo(0, 0);
    },
    [path, `${name}=${value}; path=/`] as const,
  );
const drawn = (path: string, brief = false) => show(path, 'nocool-brief', brief ? '1' : '0');

const paths: readonly (readonly [string, string])[] = [
  ['the list of calls', '/'],
  ['the queue of review', '/review'],
  ['counts', '/review/counts?verdict=a'],
  ['a job on the review desk', '/review/finished'],
  ['a report for the customer', '/jobs/finished/report/customer'],
  ['the record for the shop', '/jobs/finished/report/shop'],
  ['a link that opens nothing', `/report/${'a'.repeat(64)}`],
  ['the board', '/board'],
  ['crew and shop', '/shop'],
  ['a call that is taken', `/calls/${CALL}`],
  ['the sign-in page', `/sign-in/${'a'.repeat(40)}`],
  ['a page that is not there', '/nowhere'],
  ['the page without contact', '/offline'],
  ...Object.keys(PROMPTS).map((name) => [name, `/jobs/${encodeURIComponent(name)}`] as const),
];

test.each(paths)('light and dark, on a phone, a tablet and a desk, at twice the text: %s', async (name, path) => {
  await drawn(path);
  const shots = process.env.SHOTS;
  expect(await findings(page)).toEqual([]);
  for (const colorScheme of ['light', 'dark'] as const) {
    await page.emulateMedia({ colorScheme });
    if (shots) await page.screenshot({ path: `${shots}/${colorScheme}-${name}.png`, fullPage: true });
    expect(await faint(page)).toEqual([]);
  }
  await page.emulateMedia({ colorScheme: 'light' });
  expect([await sideways(page), await badTargets(page)]).toEqual([0, []]);
  const text = (size: string) =>
    page.evaluate((given) => {
      document.documentElement.style.fontSize = given;
    }, size);
  await text('225%');
  expect([await sideways(page), await badTargets(page)]).toEqual([0, []]);
  await text('');
  for (const width of [768, 1280]) {
    await page.setViewportSize({ width, height: 800 });
    expect([await sideways(page), await badTargets(page)]).toEqual([0, []]);
  }
  await page.setViewportSize({ width: 360, height: 640 });
});

test('in fewer words every prompt keeps its dangers and all that can be answered', async () => {
  const kept = () =>
    page.evaluate(() =>
      [...document.querySelectorAll('.card :is(.signal, legend, label, input, button, textarea)')].map(
        (each) => `${each.tagName} ${each.textContent}`,
      ),
    );
  for (const path of Object.keys(PROMPTS).map((name) => `/jobs/${encodeURIComponent(name)}`)) {
    await drawn(path);
    const full = await kept();
    await drawn(path, true);
    expect(await kept(), path).toEqual(full);
  }
  expect(await findings(page)).toEqual([]);
  await drawn('/offline');
});

test('nothing moves while a page loads, and nothing moves by itself afterwards', async () => {
  const other = await context.newPage();
  const errors: string[] = [];
  other.on('pageerror', (error) => errors.push(error.message));
  other.on('console', (message) => message.type() === 'error' && errors.push(message.text()));
  for (const name of [
    'choose several beside one',
    'readings with OL and a unit to choose',
    'finished',
    'proving line',
  ]) {
    await other.goto(`${serving.url}/jobs/${encodeURIComponent(name)}`);
    await other.locator('[data-live="true"]').waitFor();
    // Web Vitals call 0.1 good; only fonts of the machine for a sign or two may come into it.
    expect(await moved(other), name).toBeLessThan(0.01);
  }
  expect(errors).toEqual([]);
  // So that reduced motion has nothing to reduce.
  expect(
    await other.evaluate(
      () =>
        [...document.querySelectorAll('*')].filter((each) => {
          const { transitionDuration, animationName, scrollBehavior } = getComputedStyle(each);
          return transitionDuration !== '0s' || animationName !== 'none' || scrollBehavior === 'smooth';
        }).length + document.getAnimations().length,
    ),
  ).toBe(0);
  await other.close();
});

test('with little height the question keeps the screen, and the keys that stop stay', async () => {
  await drawn('/jobs/proving%20line');
  await page.setViewportSize({ width: 640, height: 320 });
  const at = (selector: string) => page.locator(selector).evaluate((each) => each.getBoundingClientRect().top);
  expect(await at('.keys')).toBeLessThan(320 - 48);
  expect(await at('.composer')).toBeGreaterThan(320);
  await page.setViewportSize({ width: 360, height: 640 });
});

test('what opens over the page: keys behind More, words that go with one, a reply that waits, one that came back', async () => {
  const other = await context.newPage();
  await other.clock.install({ time: new Date(NOW) });
  await other.goto(`${serving.url}/jobs/choose%20one`);
  await other.locator('[data-live="true"]').waitFor();
  await bringAxe(other);
  const right = async () =>
    expect([await findings(other), await badTargets(other), await sideways(other)]).toEqual([[], [], 0]);
  await other.getByRole('button', { name: 'More' }).click();
  await right();
  await other.locator('.more').getByRole('button', { name: 'Note', exact: true }).click();
  await right();
  await other.keyboard.press('Escape');
  await context.setOffline(true);
  await other.locator('.contact').waitFor();
  await other.getByRole('button', { name: 'Hum, nothing turns' }).click();
  await other.locator('.not-sent li').waitFor();
  await right();
  expect(await faint(other)).toEqual([]);
  await other.route('**/replies', (route) =>
    route.fulfill({ status: 400, body: '{"error":"x","what":"Not like this."}' }),
  );
  await context.setOffline(false);
  await other.locator('.came-back').waitFor();
  await right();
  await other.close();
});

test('the finders find: a small key, two keys side by side, faint text, a page too wide', async () => {
  await drawn('/');
  await page.evaluate(() => {
    document
      .querySelector('main')
      ?.insertAdjacentHTML(
        'beforeend',
        '<button id="small">a</button><button>b</button><p id="faint">faint</p><p id="wide">wide</p>',
      );
    const style = (id: string, css: string) => {
      const found = document.getElementById(id);
      // The content policy forbids the attribute, not the object.
      if (found) found.style.cssText = css;
    };
    style('small', 'width: 40px; height: 40px');
    style('faint', 'color: #6a6a6a');
    style('wide', 'width: 500px');
  });
  expect((await badTargets(page)).length).toBeGreaterThanOrEqual(2);
  expect((await findings(page)).join()).toMatch(/color-contrast-enhanced: <p id="faint"/);
  expect((await faint(page)).join()).toMatch(/^\d\.\d\d <p id="faint"/);
  expect(await sideways(page)).toBeGreaterThan(0);
});
