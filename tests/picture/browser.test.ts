/** Every kind of picture in a real browser on a small phone, light and dark, in our face and in one that stands in. */
import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import fc from 'fast-check';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { draw } from '../../engine/picture/draw.ts';
import { launch } from '../web-chat/browser.ts';
import { SAMPLES } from './samples.ts';
import { anyPicture } from './wanted.ts';

const read = (path: string): Buffer => readFileSync(fileURLToPath(new URL(`../../${path}`, import.meta.url)));
const face = (weight: 400 | 700): string =>
  `url(data:font/woff2;base64,${read(
    `node_modules/@fontsource/atkinson-hyperlegible/files/atkinson-hyperlegible-latin-${weight}-normal.woff2`,
  ).toString('base64')})`;
const STYLE = ['base', 'picture'].map((name) => read(`web-chat/page/style/${name}.css`).toString()).join('');
const OURS = STYLE.replace(/url\("[^"]*-400-[^"]*"\)/, face(400)).replace(/url\("[^"]*-700-[^"]*"\)/, face(700));
const STANDING_IN = STYLE.replace(/@font-face \{[^}]*\}/g, '');

let browser: Browser;
beforeAll(async () => {
  browser = await launch();
});
afterAll(() => browser?.close());

async function opened(style: string, svgs: readonly (readonly [string, string])[]): Promise<Page> {
  const page = await browser.newPage({ viewport: { width: 360, height: 640 } });
  const figures = svgs.map(([name, svg]) => `<div class="picture" data-name="${name}">${svg}</div>`);
  await page.setContent(`<!doctype html><style>${style}</style><main class="plain">${figures.join('')}</main>`);
  await page.evaluate(() => Promise.all([...document.fonts].map((each) => each.load())));
  return page;
}

/** Words that leave the picture, lie on each other, are crossed by a line, are small, or stand out too little. */
const faults = (page: Page, lines = true): Promise<string[]> =>
  page.evaluate((lines) => {
    const found: string[] = [];
    const light = (color: string): number => {
      const [r = 0, g = 0, b = 0] = (color.match(/[\d.]+/g) ?? []).slice(0, 3).map((part) => {
        const share = Number(part) / 255;
        return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
      });
      return 0.2126 * r + 0.7152 * g + 0.0722 * b;
    };
    const ground = light(getComputedStyle(document.body).backgroundColor);
    for (const svg of document.querySelectorAll('svg')) {
      const name = svg.closest<HTMLElement>('[data-name]')?.dataset.name ?? '';
      const frame = svg.getBoundingClientRect();
      const scale = frame.width / 320;
      const texts = [...svg.querySelectorAll('text')].map((each) => {
        const box = each.getBoundingClientRect();
        const size = Number.parseFloat(getComputedStyle(each).fontSize) * scale;
        // The box is as tall as a line; letters take less of it.
        return {
          words: `${name}: "${each.textContent}"`,
          left: box.left,
          right: box.right,
          top: box.bottom - size,
          bottom: box.bottom - size * 0.2,
          size,
          color: getComputedStyle(each).fill,
        };
      });
      for (const [i, a] of texts.entries()) {
        if (a.left < frame.left || a.right > frame.right || a.top < frame.top || a.bottom > frame.bottom)
          found.push(`${a.words} leaves the picture`);
        if (a.size < 12.5) found.push(`${a.words} is ${a.size} px`);
        const [one, other] = [light(a.color), ground].sort((x, y) => y - x);
        if (((one ?? 0) + 0.05) / ((other ?? 0) + 0.05) < 7) found.push(`${a.words} stands out too little`);
        for (const b of texts.slice(i + 1))
          if (a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom)
            found.push(`${a.words} lies on ${b.words}`);
      }
      if (!lines) continue;
      for (const shape of svg.querySelectorAll<SVGGeometryElement>('path, circle, ellipse, rect')) {
        const toPage = shape.getScreenCTM();
        if (!toPage) continue;
        const length = shape.getTotalLength();
        const half = (Number.parseFloat(getComputedStyle(shape).strokeWidth) * scale) / 2;
        const dotted = shape.getAttribute('stroke-width');
        if (dotted !== null && Number(dotted) * scale < 1.8) found.push(`${name}: a line of ${dotted} px`);
        for (let along = 0; along <= length; along += 5) {
          const { x, y } = shape.getPointAtLength(along).matrixTransform(toPage);
          const on = texts.find(
            (each) => x > each.left - half && x < each.right + half && y > each.top - half && y < each.bottom + half,
          );
          if (!on) continue;
          found.push(`a line crosses ${on.words}`);
          break;
        }
      }
    }
    return found;
  }, lines);

const samples = Object.entries(SAMPLES).map(([name, data]) => [name, draw(data).svg] as const);

describe('can be read', () => {
  test.each([
    ['our face', OURS],
    ['another face', STANDING_IN],
  ] as const)('in %s, light and dark, down to 320 px', async (name, style) => {
    const page = await opened(style, samples);
    const shots = process.env.SHOTS;
    for (const colorScheme of ['light', 'dark'] as const) {
      await page.emulateMedia({ colorScheme });
      if (shots) await page.screenshot({ path: `${shots}/pictures-${name}-${colorScheme}.png`, fullPage: true });
      // A scheme changes colours alone.
      expect(await faults(page, colorScheme === 'light')).toEqual([]);
    }
    await page.setViewportSize({ width: 320, height: 640 });
    expect(await faults(page, false)).toEqual([]);
    await page.close();
  });

  test('the finder finds: words off the picture, on each other, on a line, too small, too faint', async () => {
    const bad =
      '<svg viewBox="0 0 320 100"><path d="M0 60H320" stroke="currentColor" stroke-width="1"/>' +
      '<text x="300" y="20" font-size="14">gone off</text><text x="20" y="20" font-size="14">one</text>' +
      '<text x="24" y="22" font-size="14">two</text><text x="20" y="64" font-size="9" fill="#888">line</text></svg>';
    const page = await opened(OURS, [['bad', bad]]);
    const found = (await faults(page)).join('\n');
    for (const each of [
      'leaves the picture',
      'lies on',
      'a line crosses',
      'px',
      'stands out too little',
      'a line of 1',
    ])
      expect(found).toContain(each);
    await page.close();
  });
});

test('a browser reads any of them as XML and as HTML, and nothing in them runs', async () => {
  const any = fc.sample(anyPicture, { numRuns: 120, seed: 7 }).map((data) => draw(data));
  const page = await browser.newPage();
  const said: string[] = [];
  page.on('dialog', (dialog) => said.push(dialog.message()));
  page.on('pageerror', (error) => said.push(error.message));
  const wrong = await page.evaluate(
    (all) =>
      all.flatMap(({ svg, title }) => {
        const xml = new DOMParser().parseFromString(svg, 'image/svg+xml');
        const place = document.createElement('div');
        place.innerHTML = svg;
        document.body.append(place);
        const same = [xml.querySelector('title')?.textContent, place.querySelector('title')?.textContent];
        const count = (of: ParentNode) => of.querySelectorAll('*').length;
        return xml.querySelector('parsererror') || same.some((each) => each !== title) || count(xml) !== count(place)
          ? [svg]
          : [];
      }),
    any,
  );
  expect(wrong).toEqual([]);
  expect(said).toEqual([]);
  await page.close();
});
