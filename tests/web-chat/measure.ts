/** Looks at a page in the browser and says what is wrong with it: too small, too near, too faint, too wide; and what axe finds. */
import axeCore from 'axe-core';
import type { Page } from 'playwright-core';

/** WCAG 2.2, levels A and AA, and the contrast of level AAA (1.4.6: 7:1, 4.5:1 for large text). */
const RULES = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'wcag2aaa', 'best-practice'];

/** Evaluated, not added to the page: its content policy lets no other script in. Once for each page that is loaded. */
export const bringAxe = (page: Page): Promise<unknown> => page.evaluate(axeCore.source);

/** What axe finds wrong, and what it could not decide about contrast. */
export async function findings(page: Page): Promise<string[]> {
  const was = page.viewportSize() ?? { width: 360, height: 640 };
  // As tall as the page, so that nothing lies under the strip or the keys while it is looked at.
  const height = await page.evaluate(() => document.documentElement.scrollHeight);
  await page.setViewportSize({ width: was.width, height });
  const found = await page.evaluate(async (values) => {
    type Found = { id: string; nodes: { html: string }[] }[];
    const { axe } = window as unknown as {
      axe: { run: (options: unknown) => Promise<{ violations: Found; incomplete: Found }> };
    };
    const { violations, incomplete } = await axe.run({
      runOnly: { type: 'tag', values },
      rules: { 'color-contrast-enhanced': { enabled: true } },
    });
    const undecided = incomplete.filter(({ id }) => id.startsWith('color-contrast'));
    const said = (all: Found) =>
      all.flatMap(({ id, nodes }) => nodes.map(({ html }) => `${id}: ${html.slice(0, 160)}`));
    // Letters of a drawing are never decided; tests/picture measures them.
    return [...said(violations), ...said(undecided).filter((each) => !each.includes(': <text '))];
  }, RULES);
  await page.setViewportSize(was);
  return found;
}

/** What can be pressed and is smaller than 48 × 48, or nearer than 8 to its neighbour. */
export const badTargets = (page: Page): Promise<string[]> =>
  page.evaluate(() => {
    const every = 'button, a, summary, input, textarea, select, label.key';
    const all = [...document.querySelectorAll<HTMLElement>(every)].filter(
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

/** Words with less than 7:1 between ink and ground, by the formula of WCAG 2.2 (relative luminance, contrast ratio). */
export const faint = (page: Page): Promise<string[]> =>
  page.evaluate(() => {
    const parts = (colour: string): number[] => (colour.match(/[\d.]+/g) ?? []).map(Number);
    const luminance = (colour: string): number => {
      const [r = 0, g = 0, b = 0] = parts(colour).map((part) => {
        const s = part / 255;
        return s <= 0.04045 ? s / 12.92 : ((s + 0.055) / 1.055) ** 2.4;
      });
      return 0.2126 * r + 0.7152 * g + 0.0722 * b;
    };
    const groundOf = (of: Element | null): string => {
      for (let each = of; each; each = each.parentElement) {
        const { backgroundColor } = getComputedStyle(each);
        if ((parts(backgroundColor)[3] ?? 1) > 0) return backgroundColor;
      }
      return 'rgb(255, 255, 255)';
    };
    const out: string[] = [];
    const texts = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
    for (let text = texts.nextNode(); text; text = texts.nextNode()) {
      const on = text.parentElement;
      if (!on || !text.textContent?.trim() || on.closest('svg, script, .unseen') || !on.checkVisibility()) continue;
      const [ink, ground] = [luminance(getComputedStyle(on).color), luminance(groundOf(on))];
      const ratio = (Math.max(ink, ground) + 0.05) / (Math.min(ink, ground) + 0.05);
      if (ratio < 7) out.push(`${ratio.toFixed(2)} ${on.outerHTML.slice(0, 120)}`);
    }
    return out;
  });

/** Pixels by which a page is wider than its window. */
export const sideways = (page: Page): Promise<number> =>
  page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth);

/** How far things moved while the page was loaded, as Web Vitals sum it up (cumulative layout shift). */
export const moved = (page: Page): Promise<number> =>
  page.evaluate(
    () =>
      new Promise<number>((resolve) => {
        let sum = 0;
        const add = (list: PerformanceObserverEntryList) => {
          for (const entry of list.getEntries()) sum += (entry as PerformanceEntry & { value: number }).value;
        };
        new PerformanceObserver(add).observe({ type: 'layout-shift', buffered: true });
        // What the script does first is done in two frames.
        requestAnimationFrame(() => requestAnimationFrame(() => setTimeout(() => resolve(sum), 100)));
      }),
  );
