/** The queue of review on a real store: who may, in which order, page by page, made anew where cards are gone. */
import Database from 'better-sqlite3';
import { afterAll, beforeAll, expect, test } from 'vitest';
import type { ReviewCard } from '../../engine/desk/index.ts';
import { GOOD, MOTORS, PLATE, PROVING, REPAIR, RESIDUAL, WEAK_HERM } from '../engine/given.ts';
import { PROVES, TO_READINGS } from '../people.ts';
import { Shop } from './shop.ts';

let shop: Shop;
beforeAll(async () => {
  shop = await Shop.open();
});
afterAll(() => shop.close());

const minutes = (n: number): void => {
  shop.now += n * 60_000;
};
const queue = async (): Promise<ReviewCard[]> => (await shop.desk.review.queue('ruth')).jobs;
const titles = async (): Promise<string[]> => (await queue()).map(({ title }) => title);
/** To the end, in no hurry: nothing needs attention. */
async function sound(title: string): Promise<string> {
  const job = await shop.call('ines', title);
  for (const line of [...TO_READINGS, GOOD, ...MOTORS, PLATE, 'closed', '240 239 comp 13.1 fan .9 split 19']) {
    if (line === RESIDUAL) minutes(1);
    await shop.types(job, [line]);
  }
  return job;
}

test('jobs come by risk, each with what needs attention; a signed one and a training one never', async () => {
  const first = await sound('sound');
  minutes(1);
  const fast = await shop.call('ines', 'fast');
  await shop.types(fast, TO_READINGS.slice(0, 8));
  minutes(1);
  const smoke = await shop.call('ines', 'smoke');
  await shop.type(smoke, 'smoke from the unit');
  const held = await shop.call('ines', 'held');
  await shop.types(held, [...TO_READINGS.slice(0, 6), PROVING]);
  for (let i = 0; i < 3; i++) await shop.type(held, '9.3 / 40 40 0.1 / 9.3');
  await shop.call('ines', 'nothing yet');
  const { view } = await shop.desk.open('ines', { title: 'training', training: true, client: shop.client() });
  await shop.type(view.job, 'smoke from the unit');
  expect(await titles()).toEqual(['smoke', 'held', 'fast', 'sound']);
  const [one, two, three, four] = await queue();
  expect(one?.attention[0]).toMatchObject({ kind: 'hazard', words: 'Emergency, smoke: smoke from the unit' });
  expect(two?.attention.map(({ kind }) => kind)).toEqual(['fast', 'fast', 'fast', 'raised']);
  expect(three?.attention.map(({ kind }) => kind)).toEqual(['fast']);
  expect(four?.attention).toEqual([]);
  await shop.desk.reply('ruth', first, { kind: 'command', name: 'sign', client: shop.client() });
  expect(await titles()).toEqual(['smoke', 'held', 'fast']);
});

test('another process, which sees gates only in the record, says the same', async () => {
  const other = await shop.another();
  const db = new Database(shop.file);
  db.exec('update board set card = null, review = 0 where closed = 0');
  db.close();
  const before = await queue();
  expect((await other.review.queue('otto')).jobs).toEqual(before);
  const known = new Database(shop.file, { readonly: true });
  expect(known.prepare('select count(*) from board where card is null').pluck().get()).toBe(0);
  known.close();
});

test('page by page nothing is missed and nothing comes twice', async () => {
  for (let i = 0; i < 45; i++) {
    const job = await shop.call('ines', `raised ${i}`);
    await shop.desk.reply('ines', job, { kind: 'command', name: 'senior', client: shop.client() });
    minutes(1);
  }
  const seen: string[] = [];
  let after: string | undefined;
  let pages = 0;
  do {
    const page = await shop.desk.review.queue('ruth', after);
    seen.push(...page.jobs.map(({ title }) => title));
    after = page.next ?? undefined;
    pages++;
  } while (after);
  expect(pages).toBe(3);
  // Of jobs alike, the one that has waited longest comes first.
  expect(seen).toEqual(['smoke', 'held', 'fast', ...Array.from({ length: 45 }, (_, i) => `raised ${i}`)]);
  expect((await shop.desk.review.queue('ruth', 'made up')).jobs.length).toBe(20);
});

test('ended jobs are counted by verdict, person and part, each with its filter; a training job never', async () => {
  const counted = await shop.desk.review.counts('ruth', { from: '2026-07-14', to: '2026-07-14', also: [] });
  const said = (of: typeof counted) =>
    of.groups.map(({ by, counts }) => [by, counts.map(({ name, jobs }) => `${name} ${jobs}`)]);
  // Only the sound call has ended; the training one did not, and would not count.
  expect(said(counted)).toEqual([
    ['verdict', ['It runs within what was checked: no part found at fault 1', 'The run capacitor is good 1']],
    ['person', ['Ines Vale 1']],
    ['part', []],
    ['unit', []],
  ]);
  expect(counted.jobs).toEqual([]);
  const also = [{ by: 'person', what: 'ines' } as const];
  const hers = await shop.desk.review.counts('ruth', { from: '2026-07-14', to: '2026-07-14', also });
  expect(hers.jobs.map(({ title, state }) => [title, state])).toEqual([['sound', 'signed']]);
  const later = await shop.desk.review.counts('otto', { from: '2026-07-15', to: '2026-07-20', also });
  expect([...later.groups.flatMap(({ counts }) => counts), ...later.jobs]).toEqual([]);
});

test('a repair counts under what was found and what was fitted, once each; sent back, it counts no more', async () => {
  const job = await shop.call('tomas', 'repaired');
  const lines = [...TO_READINGS, WEAK_HERM, ...MOTORS, ...REPAIR, PLATE, 'closed', PROVES];
  await shop.types(job, lines, 'tomas');
  const also = [{ by: 'person', what: 'tomas' } as const];
  const his = async () =>
    (await shop.desk.review.counts('ruth', { from: '2026-07-14', to: '2026-07-14', also })).groups;
  const parts = async () => (await his()).find(({ by }) => by === 'part')?.counts.map(({ name }) => name);
  expect((await parts())?.map((name) => name.replaceAll('\u2009', ' '))).toEqual(['run capacitor, 45+5 µF 440 V']);
  await shop.desk.reply('ruth', job, {
    kind: 'withdraw',
    client: shop.client(),
    of: await lastAnswer(job),
    reason: 'no',
  });
  expect(await parts()).toEqual([]);
});
const lastAnswer = async (job: string): Promise<number> =>
  (await shop.desk.look('ruth', job)).ticket.findLast(({ kind }) => kind === 'answered')?.seq ?? 0;

test.each(['ines', 'dana'])('%s does not review', async (who) => {
  const { review } = shop.desk;
  const asked = { from: '2026-07-14', to: '2026-07-14', also: [] };
  for (const work of [
    review.queue(who),
    review.counts(who, asked),
    review.look(who, 'any'),
    review.recompute(who, 'any'),
  ])
    await expect(work).rejects.toThrow('Only a senior or the owner reviews jobs.');
});
