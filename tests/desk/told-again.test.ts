/** An emergency in a chat outside: to whom it is said, how often, until when; and nothing of a caller in the crew's channel. */
import { afterEach, beforeEach, expect, test } from 'vitest';
import { due, nextRound } from '../../engine/desk/chat/due.ts';
import type { Person } from '../../engine/desk/types.ts';
import { PEOPLE } from '../people.ts';
import { personOf, Shop } from './shop.ts';

let shop: Shop;
beforeEach(async () => {
  shop = await Shop.open();
});
afterEach(() => shop.close());

const crew: Person[] = Object.values(PEOPLE).map((p) => personOf(p, { chats: { c: p.id } }));
const START = Date.parse('2026-07-14T15:00:00.000Z');
/** Who is told what anew of a job, this long after it began. */
async function told(job: string, minutes: number): Promise<string[]> {
  shop.now = START + minutes * 60_000;
  const view = await shop.desk.crewView(job);
  return due('c', view, [], [], crew, () => false, []).flatMap(({ id, body }) =>
    body.kind === 'attention' ? [id.replace(/^.*attention\.\d+\./, '')] : [],
  );
}

test('seniors, dispatchers and owners hear it again each minute, later each ten, until one of them has seen it', async () => {
  const job = await shop.call('ines');
  await shop.type(job, 'smoke from the unit');
  expect(await told(job, 0.9)).toEqual([]);
  expect(await told(job, 1)).toEqual(['ruth.again.1', 'dana.again.1', 'otto.again.1']);
  expect((await told(job, 9.5))[0]).toBe('ruth.again.9');
  expect((await told(job, 37))[0]).toBe('ruth.again.30');
  const next = nextRound(await shop.desk.crewView(job));
  expect(next).toBe(START + 40 * 60_000);
  // Whoever raised it has seen it anyway: that tells nobody.
  await shop.desk.reply('ines', job, { kind: 'command', client: 'i', name: 'seen' });
  expect((await told(job, 41))[0]).toBe('ruth.again.40');
  await shop.desk.reply('dana', job, { kind: 'command', client: 'd', name: 'seen' });
  expect([await told(job, 51), nextRound(await shop.desk.crewView(job))]).toEqual([[], null]);
});

test('one that a caller reports is told to each alone; the channel hears nothing of who calls', async () => {
  const { view } = await shop.desk.dispatch.take('dana', { client: 't' });
  await shop.types(view.job, ['gas smell', 'told', 'Lena Orchard'], 'dana');
  const { entries } = await shop.store.read(view.job);
  const all = due('c', await shop.desk.crewView(view.job), entries, [], crew, () => false, []);
  expect(all.map(({ body }) => body.kind)).toEqual(['attention', 'attention']);
  expect(all.map(({ body }) => ('to' in body ? body.to : ''))).toEqual(['ruth', 'otto']);
});
