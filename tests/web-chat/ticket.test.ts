/** The ticket itself: a photo by the camera, a change in its place, fewer words, the seconds of a discharge. */
import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { Cases, PATIENCE, READINGS, TO_PROVING, TO_RESIDUAL, toReadings, WEAK_HERM } from './cases.ts';
import { cameraPhoto, sizeOf } from './sample/photo.ts';

const cases = new Cases();
const TO_WIRES = toReadings().slice(0, -1);

/** Photos of questions that are still open, on this phone. */
const photosKept = (page: Page): Promise<number> =>
  page.evaluate(
    () =>
      new Promise<number>((resolve, reject) => {
        const asked = indexedDB.open('nocool-photos');
        asked.onerror = () => reject(asked.error);
        asked.onsuccess = () => {
          const count = asked.result.transaction('taken').objectStore('taken').count();
          count.onsuccess = () => {
            asked.result.close();
            resolve(count.result);
          };
        };
      }),
  );

test('a photo is seen before it is sent, made smaller, sent again where it got lost, and kept without metadata', async () => {
  const job = await cases.brought(TO_WIRES);
  const ines = await cases.phone('ines', job);
  await ines.sees('Record the wiring');
  const taken = await cameraPhoto(ines.page, 2400, 1800);
  expect(taken.toString('latin1')).toContain('Exif');
  const input = ines.page.locator('.photo input');
  expect([await input.getAttribute('accept'), await input.getAttribute('capture')]).toEqual(['image/*', 'environment']);
  await input.setInputFiles({ name: 'wiring.jpg', mimeType: 'image/jpeg', buffer: taken });
  const preview = ines.page.locator('.photo img');
  await preview.waitFor();
  await ines.tap('Remove');
  await preview.waitFor({ state: 'detached' });
  await input.setInputFiles({ name: 'wiring.jpg', mimeType: 'image/jpeg', buffer: taken });
  await preview.waitFor();
  // It is on the phone from then on.
  await expect.poll(() => photosKept(ines.page)).toBe(1);
  await ines.page.reload();
  await ines.ready();
  await preview.waitFor();
  let lost = 0;
  await ines.page.route('**/photos', (route) => (lost++ === 0 ? route.abort() : route.continue()));
  await ines.tap('Recorded, wires off, marks readable');
  await ines.page.locator('.not-sent', { hasText: 'with a photo' }).waitFor();
  await ines.sees(READINGS);
  expect(lost).toBe(2);
  await expect.poll(() => photosKept(ines.page)).toBe(0);
  const print = ines.page.locator('.lines .print img');
  await print.waitFor();
  await expect.poll(() => print.evaluate((image) => (image as HTMLImageElement).naturalWidth), PATIENCE).toBe(1600);

  const hash = (await cases.shop.desk.look('ines', job)).ticket.at(-1)?.photos[0] ?? '';
  const kept = Buffer.from(await cases.shop.desk.photo('ruth', job, hash));
  expect(sizeOf(kept)).toEqual([1600, 1200]);
  expect(kept.toString('latin1')).not.toMatch(/Exif|GPS/);
  expect(kept.length).toBeLessThan(taken.length);
  // Whoever sends past the page gains nothing by it: a camera's own file is kept without its metadata as well.
  const whole = (await cases.shop.desk.savePhoto('ines', job, taken)) ?? '';
  expect(Buffer.from((await cases.shop.store.photo(whole)) ?? []).toString('latin1')).not.toContain('Exif');
  // Another call doesn't show it.
  const other = await cases.brought([]);
  expect(
    (await ines.page.request.get(`${cases.url(other).replace('/jobs/', '/api/jobs/')}/photos/${hash}`)).status(),
  ).toBe(404);
  const junk = await ines.page.request.post(`${cases.url(job).replace('/jobs/', '/api/jobs/')}/photos`, {
    headers: { 'content-type': 'image/jpeg', 'x-nocool': '1' },
    data: Buffer.from('no picture'),
  });
  expect([junk.status(), ((await junk.json()) as { error: string }).error]).toEqual([400, 'no-photo']);
}, 60_000);

test('an answer is changed in its place on the ticket, and what the change did to others is said', async () => {
  const job = await cases.brought([...toReadings(), WEAK_HERM]);
  const ines = await cases.phone('ines', job);
  const summary = ines.page.locator('.lines summary', { hasText: 'Earlier lines' });
  // Folded lines are not even drawn.
  expect(await ines.page.locator('.lines ol > li').count()).toBe(1);
  await summary.click();
  const line = ines.page.locator('.lines li', { hasText: READINGS });
  await line.getByRole('button', { name: 'Change' }).click();
  await line.locator('.card[data-again="true"]').waitFor();
  expect(await ines.page.locator('.card').count()).toBe(1);
  // By typing as well as by its fields.
  expect(await ines.page.getByLabel('HERM to C', { exact: true }).inputValue()).toBe('36.1');
  await ines.page.getByLabel('HERM to C', { exact: true }).fill('44.9');
  await ines.send();
  await ines.page.locator('.lines .card').waitFor({ state: 'detached' });
  await ines.page.locator('.lines li', { hasText: 'Changed' }).waitFor();

  const means = ines.page.locator('.lines li', { hasText: 'What opens this unit' });
  await means.getByRole('button', { name: 'Change' }).click();
  await means.locator('.card').waitFor();
  await ines.tap('Take back');
  await ines.page.locator('.words').getByRole('button', { name: 'Take back' }).click();
  await ines.sees('What opens this unit');
  const fell = ines.page.getByRole('status', { name: 'What the change did' });
  await fell.waitFor();
  expect(await fell.textContent()).toMatch(/no longer counts Thermostat OFF[\s\S]*no longer counts Open it, lock it/);
  // A change that is typed opens in its place too.
  await ines.type('back');
  await ines.page.locator('.lines .card[data-again="true"]').waitFor();
});

test('fewer words: the same question, dangers and controls; kept on this device and drawn so by the server', async () => {
  const job = await cases.brought(TO_PROVING);
  const ines = await cases.phone('ines', job);
  const { page } = ines;
  const all = async () => ({
    title: await ines.heading.textContent(),
    signals: await page.locator('.panel .signal').allTextContents(),
    controls: await page.locator('.card :is(input, button[type=submit], [data-option])').count(),
    keys: await page.locator('.dock button').count(),
  });
  const [full, tall] = [await all(), await page.evaluate(() => document.documentElement.scrollHeight)];
  expect(full.controls).toBeGreaterThan(7);
  await ines.more('Fewer words');
  await page.locator('.card .fold').waitFor();
  expect(await all()).toEqual(full);
  expect(await page.evaluate(() => document.documentElement.scrollHeight)).toBeLessThan(tall - 100);
  expect(await page.locator('.card .body').isVisible()).toBe(false);
  await page.locator('.card .fold summary').click();
  expect(await page.locator('.card .body').textContent()).toContain('Probes only');
  const html = await (await page.request.get(cases.url(job))).text();
  expect(html).toContain('In full');
  await ines.more('Fewer words');
  await page.locator('.card .fold').waitFor({ state: 'detached' });
  expect(await all()).toEqual(full);
});

test('the seconds of a discharge are counted on the phone, pair by pair, by the computed time', async () => {
  const job = await cases.brought(TO_RESIDUAL);
  const ines = await cases.another('ines');
  const { page } = ines;
  await page.clock.install();
  await ines.goto(cases.url(job));
  const { holdSeconds } = (await cases.shop.desk.look('ines', job)).prompt;
  expect(Number(holdSeconds)).toBeGreaterThan(1);
  const key = (name: RegExp) => page.getByRole('button', { name });
  await key(/^Count/).click();
  const timer = page.getByRole('timer');
  expect(await timer.textContent()).toMatch(/^\d+\u2009s$/);
  await page.clock.fastForward((Number(holdSeconds) - 1) * 1000);
  expect(await page.getByText('Held:').count()).toBe(0);
  await page.clock.fastForward(1100);
  await page.getByText('Held: 1 time').waitFor();
  // A probe that slipped off begins anew.
  await key(/^Next pair/).click();
  await ines.tap('Slipped off');
  await key(/^Next pair/).click();
  await page.clock.fastForward((Number(holdSeconds) + 1) * 1000);
  await page.getByText('Held: 2 times').waitFor();
  await page.context().close();
});

test('the part to pick: a tall question folds what need not be read, and opens it where it is needed', async () => {
  const job = await cases.brought([...toReadings(), WEAK_HERM, 'spin free', 'cr .9 cs 2.7 sr 3.6 g ol', 'nothing']);
  const ines = await cases.phone('ines', job);
  await ines.sees('Pick the new part');
  const tall = await ines.page.locator('.card').evaluate((card) => card.getBoundingClientRect().height);
  // Five screens of a small phone were too many.
  expect(tall).toBeLessThan(3 * 640);
  const spare = ines.page.locator('.spare');
  expect(await spare.getAttribute('open')).toBeNull();
  await ines.type('other 45+5 440 herm 45.3 fan 5 V');
  await ines.refusal.waitFor();
  // The refusal is about a folded reading, so it is open.
  await expect.poll(() => ines.page.getByLabel('FAN to C may be left out').isVisible()).toBe(true);
  await ines.fill('FAN to C may be left out', '5.04');
  await ines.send();
  await ines.sees('Fit the new part.');
});
