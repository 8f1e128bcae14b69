/** Every kind of prompt and part, drawn in a real browser on a small phone, and measured. */
import { rm } from 'node:fs/promises';
import axeCore from 'axe-core';
import type { Browser, BrowserContext, Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, expect, test } from 'vitest';
import { buildPage, launch, phone } from './browser.ts';
import { sampleDesk } from './sample/desk.ts';
import { NOW, PROMPTS } from './sample/prompts.ts';
import { type Serving, serve } from './serve.ts';
import { openShop, type Shop } from './shop.ts';

/** WCAG 2.2, levels A and AA, and the contrast of level AAA (1.4.6: 7:1, 4.5:1 for large text). */
const CONTRAST = ['color-contrast', 'color-contrast-enhanced'];
const RULES = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'wcag2aaa', 'best-practice'];

let browser: Browser;
let context: BrowserContext;
let serving: Serving;
let folder: string;
let shop: Shop;

beforeAll(async () => {
  [folder, shop] = await Promise.all([buildPage(), openShop()]);
  [browser, serving] = await Promise.all([
    launch(),
    serve({ desk: sampleDesk(), store: shop.store, pageFolder: folder }),
  ]);
  context = await phone(browser);
  await context.addCookies([{ ...cookieOf(await serving.cookieFor('jo')), url: serving.url }]);
});
afterAll(async () => {
  await browser?.close();
  await serving?.close();
  await shop?.close();
  if (folder) await rm(folder, { recursive: true });
});

// A page that stays open keeps one of the browser's few connections.
afterEach(async () => {
  for (const page of context.pages()) await page.close();
});

const cookieOf = (cookie: string) => ({ name: cookie.split('=')[0] ?? '', value: cookie.split('=')[1] ?? '' });

async function opened(path: string): Promise<Page> {
  const page = await context.newPage();
  const errors: string[] = [];
  page.on('pageerror', (error) => errors.push(error.message));
  page.on('console', (message) => message.type() === 'error' && errors.push(message.text()));
  await page.clock.setFixedTime(NOW);
  await page.goto(serving.url + path, { waitUntil: 'load' });
  await page.evaluate(() => document.fonts.ready);
  expect(errors).toEqual([]);
  return page;
}

/** What axe finds, and what it could not decide about contrast. */
const findings = async (page: Page, only: readonly string[] | null = null): Promise<string[]> => {
  // As tall as the page, so that nothing lies under the strip or the keys while it is looked at.
  const height = await page.evaluate(() => document.documentElement.scrollHeight);
  await page.setViewportSize({ width: 360, height });
  // Evaluated, not added to the page: its content policy lets no other script in.
  await page.evaluate(axeCore.source);
  const found = await page.evaluate(
    async (run) => {
      type Found = { id: string; nodes: { html: string }[] }[];
      const { axe } = window as unknown as {
        axe: { run: (options: unknown) => Promise<{ violations: Found; incomplete: Found }> };
      };
      const rules = { 'color-contrast-enhanced': { enabled: true } };
      const { violations, incomplete } = await axe.run(
        run.type === 'rule' ? { runOnly: run } : { runOnly: run, rules },
      );
      const undecided = incomplete.filter(({ id }) => id.startsWith('color-contrast'));
      const said = (all: Found) =>
        all.flatMap(({ id, nodes }) => nodes.map(({ html }) => `${id}: ${html.slice(0, 160)}`));
      // Letters of a drawing are never decided; tests/picture measures them.
      return [...said(violations), ...said(undecided).filter((each) => !each.includes(': <text '))];
    },
    only ? { type: 'rule', values: only } : { type: 'tag', values: RULES },
  );
  await page.setViewportSize({ width: 360, height: 640 });
  return found;
};

/** What can be pressed and is smaller than 48 × 48, or nearer than 8 to its neighbour. */
const badTargets = (page: Page): Promise<string[]> =>
  page.evaluate(() => {
    const all = [...document.querySelectorAll<HTMLElement>('button, a, summary, input, textarea, label.key')].filter(
      // An unseen input is pressed by its label.
      (each) => each.checkVisibility() && !each.classList.contains('unseen'),
    );
    const boxes = all.map((each) => ({ each, box: each.getBoundingClientRect() }));
    const name = (each: HTMLElement) => each.outerHTML.slice(0, 120);
    const small = boxes
      .filter(({ box }) => box.width < 48 || box.height < 48)
      .map(({ each, box }) => `${box.width}×${box.height} ${name(each)}`);
    const docked = (each: HTMLElement) => each.closest('.dock') !== null;
    const near = boxes.flatMap((a, i) =>
      boxes.slice(i + 1).flatMap((b) => {
        if (docked(a.each) !== docked(b.each)) return [];
        const [dx, dy] = [
          Math.max(a.box.left, b.box.left) - Math.min(a.box.right, b.box.right),
          Math.max(a.box.top, b.box.top) - Math.min(a.box.bottom, b.box.bottom),
        ];
        return Math.max(dx, dy) < 7.9 ? [`${Math.max(dx, dy)} between ${name(a.each)} and ${name(b.each)}`] : [];
      }),
    );
    return [...small, ...near];
  });

const sideways = (page: Page): Promise<number> =>
  page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth);

const paths = [
  ['the list of calls', '/'],
  ...Object.keys(PROMPTS).map((name) => [name, `/jobs/${encodeURIComponent(name)}`]),
];

test.each(paths)('at 360 × 640, light and dark: %s', async (name, path) => {
  const page = await opened(path ?? '');
  for (const colorScheme of ['light', 'dark'] as const) {
    await page.emulateMedia({ colorScheme });
    const shots = process.env.SHOTS;
    if (shots) await page.screenshot({ path: `${shots}/${colorScheme}-${name}.png` });
    if (shots) await page.screenshot({ path: `${shots}/${colorScheme}-${name}-full.png`, fullPage: true });
    expect(await sideways(page)).toBe(0);
    expect(await badTargets(page)).toEqual([]);
    // Only colours change with the scheme.
    expect(await findings(page, colorScheme === 'light' ? null : CONTRAST)).toEqual([]);
  }
  // Text at twice its size, as a person may set it.
  await page.evaluate(() => {
    document.documentElement.style.fontSize = '225%';
  });
  expect(await sideways(page)).toBe(0);
});

test.each(['choose several beside one', 'readings with OL and a unit to choose', 'finished'])(
  'nothing moves while the page loads: %s',
  async (name) => {
    const page = await opened(`/jobs/${encodeURIComponent(name)}`);
    const moved = await page.evaluate(
      () =>
        new Promise<number>((resolve) => {
          let sum = 0;
          const add = (list: PerformanceObserverEntryList) => {
            for (const entry of list.getEntries()) sum += (entry as PerformanceEntry & { value: number }).value;
          };
          new PerformanceObserver(add).observe({ type: 'layout-shift', buffered: true });
          setTimeout(() => resolve(sum), 500);
        }),
    );
    // Web Vitals call 0.1 good; only fonts of the machine for a sign or two may come into it.
    expect(moved).toBeLessThan(0.01);
  },
);

test('with little height the question keeps the screen, and the keys that stop stay', async () => {
  const page = await opened('/jobs/proving%20line');
  await page.setViewportSize({ width: 640, height: 320 });
  const at = (selector: string) => page.locator(selector).evaluate((each) => each.getBoundingClientRect().top);
  expect(await at('.keys')).toBeLessThan(320 - 48);
  expect(await at('.composer')).toBeGreaterThan(320);
});

test('the finders find: a small key, two keys side by side, faint text, a page too wide', async () => {
  const page = await opened('/');
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
  expect(await sideways(page)).toBeGreaterThan(0);
});
