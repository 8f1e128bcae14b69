/** Reports of finished calls: who reads and shares them; a link opens one report until it ends, and nothing else. */
import { readFileSync } from 'node:fs';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { type Audience, NoRight, NotFound } from '../../engine/desk/index.ts';
import { GOOD, MOTORS, PLATE } from '../engine/given.ts';
import { type PersonId, TO_READINGS } from '../people.ts';
import { Shop } from './shop.ts';

const PHOTO = readFileSync(new URL('../web-chat/pictures/gate.jpg', import.meta.url));
const DAY = 86_400_000;
let shop: Shop;
let job: string;
let open: string;
let hash: string;

beforeAll(async () => {
  shop = await Shop.open();
  open = await shop.call();
  job = await shop.call('ines', 'Alder Court 9: hums');
  await shop.types(job, TO_READINGS.slice(0, 10));
  hash = (await shop.desk.savePhoto('ines', job, PHOTO)) ?? '';
  const { prompt } = await shop.desk.look('ines', job);
  const parts = { photo: hash, ok: ['done'] };
  const turn = await shop.desk.reply('ines', job, { kind: 'answer', client: shop.client(), seq: prompt.seq, parts });
  expect(turn.refusal).toBeNull();
  await shop.types(job, [GOOD, ...MOTORS, PLATE, 'closed', '240 239 comp 13.1 fan .9 split 19']);
});
afterAll(() => shop.close());

const share = (by: PersonId, audience: Audience = 'customer', days = 14) =>
  shop.desk.reports.share(by, job, audience, days);

describe('who reads and who shares', () => {
  const may = async (work: Promise<unknown>): Promise<string> =>
    work.then(
      () => 'yes',
      (error: unknown) => (error instanceof NoRight ? 'no' : String(error)),
    );
  // ines took part, tomas did not; dana dispatches; ruth and otto see every job.
  test.each<[PersonId, string]>([
    ['ines', 'yes yes yes no'],
    ['tomas', 'no no no no'],
    ['dana', 'yes no yes no'],
    ['ruth', 'yes yes yes yes'],
    ['otto', 'yes yes yes yes'],
  ])('%s: page, record, share the page, share the record: %s', async (who, answers) => {
    const { reports } = shop.desk;
    const tried = [reports.read(who, job, 'customer'), reports.read(who, job, 'shop'), share(who), share(who, 'shop')];
    expect((await Promise.all(tried.map(may))).join(' ')).toBe(answers);
  });
});

test('until the call has ended there is no report, to read or to share', async () => {
  await expect(shop.desk.reports.read('ruth', open, 'customer')).rejects.toThrow(NotFound);
  await expect(shop.desk.reports.share('ruth', open, 'customer', 7)).rejects.toThrow('once the call has ended');
});

test('a link opens its report and the photos on it; what opens it is kept nowhere', async () => {
  const { token, link } = await share('ines');
  const report = await shop.desk.reports.shared(token);
  expect(report?.html(() => '/p')).toMatch(/NOT SIGNED[\s\S]*Visit of 2026-07-14, by Ines Vale/);
  expect((await report?.photo(hash))?.length).toBe((await shop.desk.photo('ines', job, hash)).length);
  const other = await shop.store.savePhoto(Buffer.from('of another call'));
  expect(await report?.photo(other)).toBeNull();
  expect(Buffer.from((await report?.pdf('A4')) ?? []).toString('latin1')).toMatch(/^%PDF-1\.7[\s\S]*\/Subtype \/Image/);
  expect(JSON.parse(report?.json() ?? '')).toMatchObject({ for: 'customer', signed: null });
  expect(JSON.stringify(await shop.store.shop())).not.toContain(token);
  expect(token).toMatch(/^[0-9a-f]{64}$/);
  expect(link.id).not.toBe(token);
  expect(await shop.desk.reports.shared(link.id)).toBeNull();
});

test('it ends by itself, when it is taken back, and while a call that was sent back is under way', async () => {
  const [one, two] = [await share('ruth', 'customer', 1), await share('ruth', 'shop', 7)];
  const opens = async ({ token }: { token: string }) => (await shop.desk.reports.shared(token)) !== null;
  expect([await opens(one), await opens(two)]).toEqual([true, true]);
  shop.now += DAY;
  expect([await opens(one), await opens(two)]).toEqual([false, true]);
  const named = async (who: PersonId) => (await shop.desk.reports.shares(who, job)).map(({ id }) => id);
  // What a junior could not share is not theirs to see or to take back.
  expect(await named('ruth')).toContain(two.link.id);
  expect(await named('ines')).not.toContain(two.link.id);
  await expect(shop.desk.reports.endShare('ines', job, two.link.id)).rejects.toThrow(NoRight);
  await expect(shop.desk.reports.endShare('ruth', open, two.link.id)).rejects.toThrow(NotFound);
  await shop.desk.reports.endShare('ruth', job, two.link.id);
  expect(await opens(two)).toBe(false);
  expect(await opens({ token: 'nothing' })).toBe(false);
  const longest = await share('ruth', 'customer', 1000);
  expect(Date.parse(longest.link.expires) - shop.now).toBe(90 * DAY);
  await shop.store.forget({ job });
  expect(await opens(longest)).toBe(false);
});
