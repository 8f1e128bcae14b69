/** A person's own page in a chat: what is on it, and when it is drawn anew. */
import { setTimeout as sleep } from 'node:timers/promises';
import { afterEach, beforeEach, expect, test } from 'vitest';
import type { Home } from '../../engine/desk/chat/home.ts';
import { createHomes, type Homes } from '../../engine/desk/chat/homes.ts';
import { Later } from '../../engine/desk/chat/types.ts';
import { PEOPLE, TO_READINGS } from '../people.ts';
import { personOf, Shop } from './shop.ts';

let shop: Shop;
let homes: Homes;
let drawn: { account: string; home: Home | null; at: number }[];
let trouble: string[];
let refuse: Error[];
let begun: number;
/** Milliseconds that the next ones take. */
let slow: number[];
beforeEach(async () => {
  [shop, drawn, trouble, refuse, slow, begun] = [await Shop.open(), [], [], [], [], 0];
  for (const p of Object.values(PEOPLE)) await shop.store.savePerson(personOf(p, { chats: { c: `a-${p.id}` } }));
  homes = createHomes<Home | null>({
    ...{ store: shop.store, desk: shop.desk, chat: 'c', clock: () => new Date(shop.now) },
    times: { quiet: 10, gap: 20, pace: 1 },
    render: async (home) => home,
    publish: async (account, home) => {
      begun += 1;
      await sleep(slow.shift() ?? 0);
      const error = refuse.shift();
      if (error) throw error;
      drawn.push({ account, home, at: performance.now() });
    },
    trouble: (what) => void trouble.push(what),
  });
  homes.start();
});
afterEach(async () => {
  await homes.stop();
  await shop.close();
});
const last = (account: string): Home | null | undefined => drawn.findLast((one) => one.account === account)?.home;
const until = (what: () => boolean): Promise<void> => expect.poll(what, { timeout: 10_000, interval: 5 }).toBe(true);

test('each has what is theirs: own calls; all of them and the queue; the caller on the line', async () => {
  const job = await shop.call('ines', 'Warm air');
  await shop.call('tomas', 'Hums');
  await shop.type(job, 'senior');
  const { view } = await shop.desk.dispatch.take('dana', { client: 't' });
  for (const id of ['ines', 'ruth', 'dana', 'nobody']) await homes.draw(`a-${id}`);
  const titles = (list: Home['open'] | undefined | null) => list?.map(({ title }) => title);
  const [ines, ruth, dana] = ['ines', 'ruth', 'dana'].map((id) => last(`a-${id}`));
  expect([titles(ines?.open), ines?.review, ines?.taking]).toEqual([['Warm air'], null, null]);
  expect([titles(ruth?.review?.jobs), titles(ruth?.open)]).toEqual([['Warm air'], ['Hums']]);
  expect(dana?.review).toBeNull();
  expect(dana?.taking?.map((card) => card.job)).toEqual([view.job]);
  expect(last('a-nobody')).toBeNull();
});

test('an isolation is shown with its end, and no longer than it stands, though nobody types', async () => {
  const job = await shop.call();
  await shop.types(job, TO_READINGS);
  await homes.draw('a-ruth');
  const cards = () => [...(last('a-ruth')?.open ?? []), ...(last('a-ruth')?.review?.jobs ?? [])];
  const ends = cards()[0]?.until ?? '';
  expect(Date.parse(ends)).toBeGreaterThan(shop.now);
  shop.now = Date.parse(ends) - 50;
  await homes.draw('a-dana');
  await homes.draw('a-ruth');
  expect(cards()[0]?.isolation).toContain('PROVED DEAD');
  const before = drawn.length;
  shop.now = Date.parse(ends) + 1;
  await until(() => drawn.length > before && !JSON.stringify(cards()).includes('PROVED DEAD'));
});

test('a limit is waited for; another error is trouble of the log, and the next change is a new try', async () => {
  await homes.draw('a-ruth');
  const [begun, before] = [performance.now(), drawn.length];
  refuse.push(new Later('limited', 200), new Later('limited', 200));
  await shop.call('ines', 'Later');
  await until(() => JSON.stringify(last('a-ruth')).includes('Later'));
  expect((drawn[before]?.at ?? 0) - begun).toBeGreaterThanOrEqual(195);
  expect(trouble).toEqual([]);
  // Three people watch over calls.
  refuse.push(...['a', 'b', 'c'].map((what) => new Error(what)));
  await shop.call('ines', 'Broken');
  await until(() => trouble.length === 3);
  await shop.call('ines', 'Mended');
  await until(() => JSON.stringify(last('a-ruth')).includes('Mended'));
});

test('what was read first never stands there last, however long the platform takes over it', async () => {
  slow.push(150);
  const first = homes.draw('a-ruth');
  await until(() => begun === 1);
  await shop.call('ines', 'Second');
  await Promise.all([first, homes.draw('a-ruth')]);
  expect(drawn.filter(({ account }) => account === 'a-ruth').length).toBeGreaterThanOrEqual(2);
  expect(JSON.stringify(last('a-ruth'))).toContain('Second');
});
