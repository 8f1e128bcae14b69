/** A whole call in a real browser on a real desk: by taps, by typing, with a second window and a senior. */
import { rm } from 'node:fs/promises';
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { createSheets } from '../../engine/desk/sheets.ts';
import { PROVES, stocked } from '../people.ts';
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
  await createSheets(shop.store).saveTruck('van-1', { name: 'Van 1', items: [stocked('45+5', '440')] });
  const ines = (await shop.store.people()).find(({ id }) => id === 'ines');
  if (ines) await shop.store.savePerson({ ...ines, truck: 'van-1' });
  serving = await serve({ ...shop, pageFolder: folder });
});
afterAll(async () => {
  await browser?.close();
  await serving?.close();
  await shop?.close();
  if (folder) await rm(folder, { recursive: true });
});

const signedIn = async (who: string): Promise<PersonAtPhone> =>
  PersonAtPhone.signIn(await phone(browser), await serving.linkFor(who));

test('from the observation to the signed record, by taps alone', async () => {
  const ines = await signedIn('ines');
  const url = await ines.openCall('No cool, by taps');
  await ines.sees('What does the unit do?');
  await ines.tap('Fan runs, compressor hums, clicks off or is silent');
  await ines.sees('What kind of unit is it?');
  await ines.tap('PSC with a run capacitor of two or three terminals');
  await ines.sees('Are you and your meter fit for this?');
  await ines.tap('Yes, all of it');
  await ines.sees('What opens this unit');
  for (const chip of ['Pull-out', 'No other feed', '208 to 240 V, two legs', 'Outlet, 120 V']) await ines.pick(chip);
  await ines.send();
  await ines.sees('Open it, lock it, tag it, try it.');
  await ines.tap('Open, locked, tagged, tried');
  await ines.sees('Cover off, eyes only');
  await ines.pick('Clean, nothing odd');
  await ines.fill('Number of capacitors', '1');
  await ines.page.getByLabel('Print of the run capacitor').fill('45+5 6% 440');
  await ines.send();

  await ines.sees('Prove the meter');
  const proving = { 'Known source, before': '121', 'L1 to L2': '0.2', 'L1 to ground': '0', 'L2 to ground': '0.1' };
  const load = { 'T1 to ground, load side': '0', 'T2 to ground, load side': '0', 'The same source, after': '121' };
  for (const [label, value] of Object.entries({ ...proving, ...load })) await ines.fill(label, value);
  await expect.poll(() => ines.strip.textContent()).toContain('BEING PROVED');
  await ines.send();
  await ines.sees('Discharge every capacitor');
  const residual = {
    '9 V battery, before': '9.3',
    'HERM to C or across': '0.6',
    'FAN to C': '0.1',
    'HERM to FAN': '0.5',
  };
  for (const [label, value] of Object.entries({ ...residual, 'Battery, after': '9.3' })) await ines.fill(label, value);
  await ines.send();

  await ines.sees('Fuses, contactor, loads to ground');
  await expect.poll(() => ines.strip.textContent()).toMatch(/PROVED DEAD\s*(30|29)\s?min left/);
  await ines.fill('First contact, pressed in', '0.1');
  await ines.fill('Contactor coil may be left out', '12.6');
  for (const side of ['T1', 'T2']) await ines.tap(`${side} to ground: OL, over range`);
  await ines.send();
  await ines.sees('wiring diagram ask for');
  await ines.type('no diagram');
  await ines.sees('Record the wiring');
  await ines.page.getByLabel('Colours: C, HERM, FAN').fill('C red, HERM yellow, FAN brown');
  await ines.tap('Recorded, wires off, marks readable');
  await ines.sees('Measure both sections');
  for (const [label, value] of Object.entries({
    'HERM to C': '36.1',
    'FAN to C': '5.02',
    'HERM to FAN may be left out': '4.4',
  }))
    await ines.fill(label, value);
  await ines.tap('Terminals to case, the lowest: OL, over range');
  await ines.send();

  await ines.sees('Spin the fan by hand');
  expect(await ines.page.locator('.lines', { hasText: 'Verdict:' }).textContent()).toContain('replace');
  await ines.tap('Spins free, silent, no play');
  await ines.sees('Compressor windings in ohms');
  for (const [label, value] of Object.entries({ 'C to R': '0.9', 'C to S': '2.7', 'S to R': '3.6' }))
    await ines.fill(label, value);
  await ines.tap('To ground, the lowest: OL, over range');
  await ines.send();
  await ines.sees('Why did it fail?');
  await ines.pick('Coil dirty');
  await ines.send();
  // What the truck carries is a numbered list; a line is picked and measured in one answer.
  await ines.sees('Pick the new part');
  expect(await ines.page.locator('.card .numbered').first().textContent()).toMatch(/^1\.\s*Bin 45\+5[\s\S]*1 left/);
  await ines.pick('The first of the list');
  await ines.fill('HERM to C', '45.3');
  await ines.fill('FAN to C may be left out', '5.04');
  await ines.send();
  await ines.sees('Fit the new part.');
  await ines.tap('Fitted, strapped');
  await ines.sees('Put the wires back');
  await ines.tap('Wires back as recorded, all tight');
  await ines.sees('From the nameplate');
  await ines.page.getByLabel('RLA').first().fill('17.9');
  await ines.send();
  await ines.sees('Close up and clear the unit.');
  await ines.tap('Closed, clear, qualified for the live readings');
  await ines.sees('All live figures in one sitting.');
  await expect.poll(() => ines.strip.textContent()).not.toContain('PROVED DEAD');
  for (const [label, value] of Object.entries({ 'L1 to L2': '241', Compressor: '13.1', Fan: '0.9' }))
    await ines.fill(label, value);
  const split = ines.page.locator('.field', { hasText: 'Split, return minus supply' });
  expect(await split.locator('.unit').textContent()).toBe('°F');
  await ines.send();
  await ines.sees('After 10 to 15 minutes');
  await ines.fill('Split, return minus supply', '19');
  await ines.send();
  await ines.sees('Proven');
  const shown = await ines.page.locator('.card .verdict').allTextContents();
  // What ended the call stands first, what led there below it.
  expect(shown[0]).toContain('The repair is proven');
  expect(shown.slice(1).join()).toMatch(/HERM[\s\S]*36\.1\s?µF[\s\S]*fail/);
  expect((await createSheets(shop.store).truck('van-1'))?.items[0]?.count).toBe(0);

  const ruth = await signedIn('ruth');
  await ruth.goto(url);
  await ruth.more('Sign');
  await ruth.sees('Signed');
  // The technician's page follows without being touched.
  await ines.sees('Signed');
  expect([...ines.errors, ...ruth.errors]).toEqual([]);
}, 120_000);

test('nothing that signs in is in an address after the first, nor in anything that the browser keeps for scripts', async () => {
  const link = await serving.linkFor('ines');
  const context = await phone(browser);
  const ines = await PersonAtPhone.signIn(context, link);
  await ines.openCall('No cool, kept on the phone');
  await ines.tap('Fan runs, compressor hums, clicks off or is silent');
  await ines.sees('What kind of unit is it?');
  const cookies = await context.cookies();
  const session = cookies.find(({ name }) => name === 'nocool');
  expect(session).toMatchObject({ httpOnly: true, sameSite: 'Lax' });
  const kept = await ines.page.evaluate(async () => {
    const rows: unknown[] = [location.href, document.referrer, document.cookie, document.documentElement.outerHTML];
    rows.push({ ...localStorage }, { ...sessionStorage });
    for (const entry of performance.getEntries()) rows.push(entry.name);
    for (const name of await caches.keys())
      for (const request of await (await caches.open(name)).keys())
        rows.push(request.url, await (await (await caches.open(name)).match(request))?.text());
    for (const { name = '' } of await indexedDB.databases()) {
      const db = await new Promise<IDBDatabase>((done) => {
        const open = indexedDB.open(name);
        open.onsuccess = () => done(open.result);
      });
      for (const store of db.objectStoreNames)
        rows.push(
          await new Promise((done) => {
            const all = db.transaction(store).objectStore(store).getAll();
            all.onsuccess = () => done(all.result);
          }),
        );
      db.close();
    }
    return JSON.stringify(rows);
  });
  // It did look where things are kept.
  expect(kept).toContain('What kind of unit is it?');
  for (const secret of [link.split('/').at(-1) ?? '', session?.value ?? '']) {
    expect(secret).toMatch(/^[\w-]{43}$/);
    expect(kept).not.toContain(secret);
  }
  await context.close();
});

test('the same call typed line by line, in the line that takes anything', async () => {
  const ines = await signedIn('ines');
  await ines.openCall('No cool, typed');
  const lines: readonly (readonly [string, string])[] = [
    ['What does the unit do?', 'd'],
    ['What kind of unit is it?', 'psc'],
    ['Are you and your meter fit', 'yes'],
    ['What opens this unit', 'pull-out, breaker, no other feed, two legs, outlet'],
    ['Open it, lock it, tag it', 'yes'],
    ['Cover off, eyes only', 'clean, 1 cap, 45+5 6% 440'],
    ['Prove the meter', '121 / 0.2 0 0.1 / 0 0 / 121'],
    ['Discharge every capacitor', '9.3 / 0.6 0.1 0.5 / 9.3'],
    ['Fuses, contactor', 'fuses 0.1 0.1 contacts .1 .1 coil 12.6 t1g ol t2g ol'],
    ['wiring diagram ask for', 'no diagram'],
    ['Record the wiring', 'wires off'],
    ['Measure both sections', 'herm 36.1 fan 5.02 hf 4.4 case ol'],
    ['Spin the fan', 'spin free'],
    ['Compressor windings', 'cr .9 cs 2.7 sr 3.6 g ol'],
    ['Why did it fail', 'nothing'],
    ['Pick the new part', 'other 45+5 440 herm 45.3 fan 5.04'],
    ['Fit the new part.', 'fitted'],
    ['Put the wires back', 'wires back'],
    ['From the nameplate', '17.9 96 1.2'],
    ['Close up and clear', 'closed'],
    ['All live figures', PROVES],
  ];
  for (const [title, line] of lines) {
    await ines.sees(title);
    await ines.type(line);
  }
  await ines.sees('Proven');
  expect(await ines.composer.inputValue()).toBe('');
  expect(ines.errors).toEqual([]);
}, 90_000);
