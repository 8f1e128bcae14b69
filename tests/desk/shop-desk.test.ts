/** Crew and shop: who may read and change it, the last owner, who is signed out, a time limit that is only ever shorter. */
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { may } from '../../engine/desk/rights.ts';
import { NoRight, type PersonWish, Refused } from '../../engine/desk/types.ts';
import { DEFAULT_SETTINGS } from '../../engine/memory.ts';
import { PEOPLE, TO_READINGS } from '../people.ts';
import { Shop } from './shop.ts';

let shop: Shop;
beforeEach(async () => {
  shop = await Shop.open();
});
afterEach(() => shop.close());
const nell: PersonWish = {
  id: 'nell',
  name: 'Nell Harrow',
  initials: 'NH',
  roles: ['technician'],
  certified: true,
  active: true,
};
const truck = { id: 't1', name: 'Van 1', version: 0, items: [] };

describe('rights, as the table has them', () => {
  const tries: readonly [Parameters<typeof may>[1], (by: string) => Promise<unknown>][] = [
    ['read-crew', (by) => shop.desk.shop.look(by)],
    ['crew', (by) => shop.desk.shop.savePerson(by, nell)],
    ['crew', (by) => shop.desk.shop.link(by, 'ines')],
    ['crew', (by) => shop.desk.shop.revoke(by, 'ines')],
    ['settings', (by) => shop.desk.shop.saveSettings(by, DEFAULT_SETTINGS)],
    ['settings', (by) => shop.desk.shop.saveTruck(by, truck)],
  ];
  test.each(tries.map(([use, attempt], i) => [`${use} ${i}`, use, attempt] as const))('%s', async (_, use, attempt) => {
    for (const { id, roles } of Object.values(PEOPLE)) {
      const allowed = may(roles, use, { own: false, holder: false, gate: false, reason: false, participates: false });
      const refused = await attempt(id).then(
        () => false,
        (error: unknown) => error instanceof NoRight,
      );
      expect(`${id} ${!refused}`).toBe(`${id} ${allowed}`);
    }
  });
});

test('somebody who leaves is signed out everywhere; the last owner stays one; a person needs a role', async () => {
  await shop.desk.shop.savePerson('otto', nell);
  await shop.store.saveSession('s', 'nell', '2099');
  await shop.desk.shop.savePerson('otto', { ...nell, active: false });
  expect(await shop.store.session('s', '2026')).toBeNull();
  await expect(shop.desk.shop.link('otto', 'nell')).rejects.toThrow(Refused);
  const otto = (await shop.desk.shop.look('otto')).people.find(({ id }) => id === 'otto');
  await expect(shop.desk.shop.savePerson('otto', { ...otto, roles: ['senior'] } as PersonWish)).rejects.toThrow(
    'last owner',
  );
  await expect(shop.desk.shop.savePerson('otto', { ...nell, roles: [] })).rejects.toThrow('role');
});

test('a truck out of service is listed no longer, and never while somebody drives it', async () => {
  const { shop: desk } = shop.desk;
  await desk.saveTruck('otto', truck);
  const drives = { ...nell, truck: truck.id };
  await desk.savePerson('otto', drives);
  const gone = { ...truck, version: 1, gone: true };
  await expect(desk.saveTruck('otto', gone)).rejects.toThrow('Nell Harrow drives it');
  await desk.savePerson('otto', { ...drives, active: false });
  await desk.saveTruck('otto', gone);
  expect((await desk.look('otto')).trucks).toEqual([]);
});

test('of two who change one truck the second is told', async () => {
  await shop.desk.shop.saveTruck('otto', truck);
  await expect(shop.desk.shop.saveTruck('otto', truck)).rejects.toThrow('meanwhile');
});

test('a proof of dead is too old sooner where the shop wants it so, on jobs from then on', async () => {
  await shop.desk.shop.saveSettings('otto', { ...DEFAULT_SETTINGS, minutes: 10, region: 'County' });
  const job = await shop.call();
  await shop.types(job, TO_READINGS.slice(0, 8));
  const state = async () => (await shop.desk.look('ines', job)).prompt.isolation[0]?.state;
  shop.now += 10 * 60_000;
  expect(await state()).toBe('proved');
  shop.now += 1;
  expect(await state()).not.toBe('proved');
  await shop.type(job, 'smoke');
  expect((await shop.desk.look('ines', job)).prompt.body).toContain('Call 911 (County).');
});
