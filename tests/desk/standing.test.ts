/** Where a job stands is taken over from the decision. It has to be what the record alone gives. */
import { afterAll, beforeAll, expect, test } from 'vitest';
import { TO_READINGS } from '../people.ts';
import { Shop } from './shop.ts';

let shop: Shop;
beforeAll(async () => {
  shop = await Shop.open();
});
afterAll(() => shop.close());

/** What another desk shows that has read nothing but the record. */
async function same(job: string, what: string): Promise<void> {
  const fresh = await shop.deskOn(shop.store).look('otto', job);
  expect(await shop.desk.look('otto', job), what).toEqual(fresh);
}

test('after each turn of a call the desk shows what the record gone over anew shows', { timeout: 60_000 }, async () => {
  const job = await shop.call();
  const lines = [
    // Said before her meter is on the record: decided with it, kept without.
    'note rust under the fan leads',
    ...TO_READINGS,
    'back',
    'herm 44.6 fan 3.1 hf 2.9 case ol',
    'not sure what that was',
    'burnt tab',
    'old mark',
    'power is back',
    'stop',
    'cover on, lock stays',
  ];
  for (const text of lines) {
    await shop.type(job, text);
    await same(job, text);
  }
  // Silence ends the isolation with the next message.
  shop.now += 31 * 60_000;
  await shop.type(job, 'go on');
  await same(job, 'go on');
  expect((await shop.store.read(job)).entries.length).toBeGreaterThan(lines.length);
});
