/** How heavy and how quick the page is: over a slow line, with hundreds of lines, back and forth, and from one window to another. */
import { afterEach, expect, test } from 'vitest';
import { Cases, PATIENCE, READINGS, strip, TO_PROVING, toReadings } from './cases.ts';
import { moved } from './measure.ts';
import type { PersonAtPhone } from './person.ts';

const cases = new Cases();
const opened: PersonAtPhone[] = [];
const phone = async (who: 'ines' | 'ruth'): Promise<PersonAtPhone> => {
  const person = await cases.another(who);
  opened.push(person);
  return person;
};
afterEach(async () => {
  for (const { page, errors } of opened.splice(0)) {
    await page.context().close();
    expect(errors).toEqual([]);
  }
});

/** Slow 3G: 400 kbit/s each way, 400 ms there and back. */
const SLOW = { offline: false, latency: 400, downloadThroughput: 400_000 / 8, uploadThroughput: 400_000 / 8 };

/** One first visit: milliseconds to the first words and until it can be used, and bytes over the wire by then. */
async function visit(job: string): Promise<{ first: number; usable: number; bytes: number; shift: number }> {
  const { page } = await phone('ines');
  const line = await page.context().newCDPSession(page);
  await line.send('Network.enable');
  await line.send('Network.emulateNetworkConditions', SLOW);
  let bytes = 0;
  line.on('Network.loadingFinished', ({ encodedDataLength }) => {
    bytes += encodedDataLength;
  });
  await page.goto(cases.url(job), { waitUntil: 'commit' });
  await page.locator('.ticket[data-live="true"]').waitFor();
  const weight = bytes;
  const [first = Number.NaN, usable = Number.NaN] = await page.evaluate(() =>
    ['first-contentful-paint', 'usable'].map((name) => performance.getEntriesByName(name)[0]?.startTime),
  );
  return { first, usable, bytes: weight, shift: await moved(page) };
}

test('over slow 3G the first visit has its question at once, can be used within 3 s, and weighs under 100 kB', async () => {
  const job = await cases.brought(TO_PROVING);
  let seen = await visit(job);
  // The line is the same each time; how much of the machine is left is not. The best of three counts.
  for (let i = 1; i < 3 && seen.usable > 3000; i++) seen = await visit(job);
  expect(seen.first).toBeLessThan(seen.usable);
  expect(seen.usable).toBeLessThan(3000);
  expect(seen.bytes).toBeGreaterThan(20_000);
  // The fonts come after what can be used: without them it is far under the 100 kB.
  expect(seen.bytes).toBeLessThanOrEqual(60_000);
  expect(seen.shift).toBeLessThan(0.01);
}, 60_000);

test('a call of 300 entries opens, folds open and is answered as quickly as a short one', async () => {
  const job = await cases.brought(toReadings());
  const { desk } = cases.shop;
  for (let i = 0; i < 290; i++)
    await desk.reply('ines', job, { kind: 'command', name: 'note', text: `note ${i}`, client: cases.client() });
  const ines = await phone('ines');
  const { page } = ines;
  await ines.goto(cases.url(job));
  expect(await page.locator('*').count()).toBeLessThan(400);
  // The time the browser takes itself, until the next frame is painted.
  const took = (what: () => void): Promise<number> =>
    page.evaluate(
      (code) =>
        new Promise<number>((resolve) => {
          const begun = performance.now();
          new Function(code)();
          requestAnimationFrame(() => setTimeout(() => resolve(performance.now() - begun)));
        }),
      `(${what})()`,
    );
  const toggled = () => took(() => (document.querySelector('.lines summary') as HTMLElement).click());
  // Opened three times, closed between: others use this machine, so the best counts.
  const opening = [await toggled()];
  for (let i = 0; i < 2; i++) {
    await toggled();
    opening.push(await toggled());
  }
  expect(Math.min(...opening)).toBeLessThan(700);
  await expect.poll(() => page.locator('.lines li').count()).toBeGreaterThanOrEqual(300);
  const typing: number[] = [];
  for (let i = 0; i < 5; i++)
    typing.push(
      await took(() => {
        const input = document.querySelector('.composer textarea') as HTMLTextAreaElement;
        input.value += 'x';
        input.dispatchEvent(new Event('input', { bubbles: true }));
      }),
    );
  // A keystroke is felt as immediate under 100 ms; the middle of five, since others use this machine.
  expect(typing.sort((a, b) => a - b)[2]).toBeLessThan(100);
  const scrolled = await took(() => window.scrollTo(0, document.documentElement.scrollHeight / 2));
  expect(scrolled).toBeLessThan(200);
}, 60_000);

test('back, reload and a deep link show the call as it stands, in whatever tab', async () => {
  const job = await cases.brought(TO_PROVING.slice(0, 3));
  const ines = await phone('ines');
  await ines.goto(cases.url(job));
  await ines.tap('Calls');
  await ines.page.getByRole('heading', { name: 'Calls' }).waitFor();
  await cases.tell('ines', job, TO_PROVING[3] ?? '');
  await ines.page.goBack();
  await ines.sees('Open it, lock it');
  const second = await ines.tab();
  await second.goto(cases.url(job));
  await second.tap('Open, locked, tagged, tried');
  await second.sees('Cover off, eyes only');
  await ines.sees('Cover off, eyes only');
  await ines.page.reload();
  await ines.ready();
  await ines.sees('Cover off, eyes only');
  // Whoever is not signed in sees nothing of it, and is told what to do.
  const stranger = await ines.page.context().browser()?.newPage();
  expect((await stranger?.goto(cases.url(job)))?.status()).toBe(401);
  expect(await stranger?.locator('main').textContent()).toContain('A link works once');
  await stranger?.close();
});

test('an emergency raised in one window takes the other within a second', async () => {
  const job = await cases.brought(toReadings());
  const [ines, ruth] = [await phone('ines'), await phone('ruth')];
  await ines.goto(cases.url(job));
  await ruth.goto(cases.url(job));
  await ruth.sees(READINGS);
  const seen = ruth.page.evaluate(
    () =>
      new Promise<number>((resolve) => {
        const look = () => {
          if (!document.querySelector('.card[data-kind="emergency"]')) return;
          watch.disconnect();
          resolve(Date.now());
        };
        const watch = new MutationObserver(look);
        watch.observe(document.body, { subtree: true, childList: true, attributes: true });
      }),
  );
  const raised = ines.page.evaluate(
    () =>
      new Promise<number>((resolve) => {
        const key = document.querySelector('[data-command="alarm"]') as HTMLElement;
        key.addEventListener('click', () => resolve(Date.now()), { capture: true, once: true });
      }),
  );
  await ines.tap('Emergency');
  const [at, then] = await Promise.all([raised, seen]);
  expect(then - at).toBeLessThan(1000);
  await expect.poll(() => strip(ruth), PATIENCE).toBe('ENERGIZED OR NOT PROVED');
});
