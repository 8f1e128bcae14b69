/** A whole call in three windows: the README's script, row by row, and what each window shows at every hand-over. */
import { mkdir, rm } from 'node:fs/promises';
import { getDocument } from 'pdfjs-dist/legacy/build/pdf.mjs';
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { randomHex } from '../../engine/desk/index.ts';
import { SHELF } from '../../flows/index.ts';
import { DEMO_PEOPLE, loadDemo } from '../../seeds/index.ts';
import { buildPage, launch } from './browser.ts';
import { actsIn, fiveMinutes, type Who } from './five-minutes.ts';
import { type Serving, serve } from './serve.ts';
import { openShop, type Shop } from './shop.ts';
import { AtWindow } from './window.ts';

let browser: Browser;
let shop: Shop;
let serving: Serving;
let folder: string;
beforeAll(async () => {
  [folder, shop, browser] = await Promise.all([buildPage(), openShop('nobody'), launch()]);
  await loadDemo(shop.store, { shelf: SHELF, clock: shop.clock, random: randomHex });
  serving = await serve({ ...shop, pageFolder: folder });
});
afterAll(async () => {
  await browser?.close();
  await serving?.close();
  await shop?.close();
  if (folder) await rm(folder, { recursive: true });
});

test('what the README tells a newcomer is what happens: from the telephone to a signed report, live in three windows', async () => {
  const rows = await fiveMinutes();
  expect(new Set(rows.map(({ who }) => who))).toEqual(new Set(['Dana', 'Ines', 'Ruth']));
  // Three windows of one browser, each with a name before the address.
  const context = await browser.newContext({ viewport: { width: 1280, height: 800 }, timezoneId: 'UTC' });
  context.setDefaultTimeout(20_000);
  const windows = {} as Record<Who, AtWindow>;
  for (const { id, name } of DEMO_PEOPLE) {
    const who = name.split(' ')[0] as Who;
    windows[who] = new AtWindow(await context.newPage(), who === 'Ines' ? 'taps' : 'keyboard');
    await windows[who].signIn((await serving.linkFor(id)).replace('127.0.0.1', `${id}.localhost`));
  }
  await windows.Ines.page.setViewportSize({ width: 360, height: 640 });

  for (const [i, { who, acts, sees }] of rows.entries()) {
    const told = (['Dana', 'Ines', 'Ruth'] as const)
      .map((name) => ({ name, texts: sees.filter((each) => each.who === name).map(({ what }) => what) }))
      .filter(({ texts }) => texts.length > 0);
    expect(told.length, `row ${i + 1} shows nothing`).toBeGreaterThan(0);
    for (const { name, texts } of told)
      expect(await windows[name].reads(texts), `row ${i + 1}: ${name} sees ${texts} already`).toBe(false);
    for (const act of acts) await windows[who].act(act);
    try {
      for (const { name, texts } of told) {
        await windows[name].comesToRead(texts);
        if (name === 'Ines' && asks(texts)) await windows.Ines.questionInSight();
      }
    } finally {
      await shots(windows, i + 1);
    }
  }

  // Whoever has the link reads the report, on paper and as data too, until it ends.
  const { pathname } = new URL(await windows.Ruth.page.getByLabel(/Copy it now/).inputValue());
  const page = await (await browser.newContext({ viewport: { width: 360, height: 640 } })).newPage();
  await page.goto(`${serving.url}${pathname}`);
  const report = (await page.innerText('body')).replace(/\s+/g, ' ');
  if (process.env.SHOTS) await page.screenshot({ path: `${process.env.SHOTS}/report.png`, fullPage: true });
  const get = (more = '') => fetch(`${serving.url}${pathname}${more}`);
  const paper = await textOf(await (await get('/pdf?size=A4')).arrayBuffer());
  for (const said of [report, paper]) {
    expect(said).toContain('signed by Ruth Marlow');
    expect(said).not.toContain('NOT SIGNED');
    expect(said).toMatch(/36\.1 [µμ]F.*42\.30–47\.70 [µμ]F/);
  }
  expect(await (await get('/json')).json()).toMatchObject({ nocool: 'report', signed: { by: 'Ruth Marlow' } });
  shop.wait(14 * 24 * 60);
  expect((await get()).status).toBe(404);
  expect(windows.Dana.errors.concat(windows.Ines.errors, windows.Ruth.errors)).toEqual([]);
}, 240_000);

test('a cell that says what is not played is no row', () => {
  expect(() => actsIn('rings **Board**')).toThrow('rings');
  expect(() => actsIn('**Board**')).toThrow('what is done');
  expect(() => actsIn('presses **Board** twice')).toThrow('twice');
});

/** What a question's row shows begins with the question. */
const asks = ([first = '']: readonly string[]): boolean => /[.?]$/.test(first);

/** What a PDF says, in one line. */
async function textOf(bytes: ArrayBuffer): Promise<string> {
  const pdf = await getDocument({ data: new Uint8Array(bytes), verbosity: 0 }).promise;
  const pages = Array.from({ length: pdf.numPages }, async (_, i) => (await pdf.getPage(i + 1)).getTextContent());
  const items = (await Promise.all(pages)).flatMap((page) => page.items);
  return items
    .map((item) => ('str' in item ? item.str : ''))
    .join(' ')
    .replace(/\s+/g, ' ');
}

async function shots(windows: Record<Who, AtWindow>, row: number): Promise<void> {
  const { SHOTS } = process.env;
  if (!SHOTS) return;
  await mkdir(SHOTS, { recursive: true });
  for (const [who, { page }] of Object.entries(windows))
    await page.screenshot({ path: `${SHOTS}/${String(row).padStart(2, '0')}-${who}.png` });
}
