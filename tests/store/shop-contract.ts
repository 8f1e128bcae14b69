/** The part of the contract that is about the shop: its people, its settings, who is signed in. */
import { beforeEach, describe, expect, test } from 'vitest';
import type { Person } from '../../engine/desk/types.ts';
import { DEFAULT_SETTINGS } from '../../engine/memory.ts';
import type { Store } from '../../engine/store/port.ts';
import { type Ground, onGround } from './ground.ts';

const person: Person = {
  id: 'ines',
  name: 'Ines Vale',
  initials: 'IV',
  roles: ['technician'],
  certified: false,
  meter: null,
  active: true,
};

export function shopContract(name: string, makeGround: () => Promise<Ground>): void {
  describe(`the shop in the store on ${name}`, () => {
    const { open } = onGround(makeGround);
    let store: Store;
    beforeEach(async () => {
      store = await open();
    });

    describe('people, settings, small facts', () => {
      test('people are added and replaced', async () => {
        const ruth: Person = { ...person, id: 'ruth', name: 'Ruth Marlow', roles: ['senior', 'owner'] };
        expect(await store.people()).toEqual([]);
        await store.savePerson(person);
        await store.savePerson(ruth);
        await store.savePerson({ ...person, active: false });
        expect(await store.people()).toEqual([{ ...person, active: false }, ruth]);
        const other = await open();
        expect(await other.people()).toEqual([{ ...person, active: false }, ruth]);
        await other.savePerson(person);
        expect(await store.people()).toEqual([person, ruth]);
        expect(await other.people()).toEqual([person, ruth]);
      });

      test('settings are the defaults until some are saved', async () => {
        expect(await store.settings()).toEqual(DEFAULT_SETTINGS);
        await store.saveSettings({ ...DEFAULT_SETTINGS, hertz: '50' });
        await store.saveSettings({ ...DEFAULT_SETTINGS, rule: 'plain' });
        expect(await (await open()).settings()).toEqual({ ...DEFAULT_SETTINGS, rule: 'plain' });
      });

      test('small facts are set and set anew', async () => {
        expect(await store.meta('demo')).toBeNull();
        await store.setMeta('demo', 'loaded');
        await store.setMeta('demo', 'loaded twice');
        await store.setMeta('other', '');
        expect([await store.meta('demo'), await store.meta('other')]).toEqual(['loaded twice', '']);
      });
    });

    describe('sheets: what is known of a unit, what a truck carries', () => {
      test('a sheet is kept whole, by its list and id', async () => {
        expect([await store.sheet('truck', 'van-1'), await store.sheets('truck')]).toEqual([null, []]);
        const body = { items: [{ id: 'r-45-5', count: 2, sections: ['45', '5'] }], odd: '\u0000\ud800"' };
        expect(await store.saveSheet('truck', 'van-2', 0, { items: [] })).toBe(true);
        expect(await store.saveSheet('truck', 'van-1', 0, body)).toBe(true);
        expect(await store.saveSheet('equipment', 'van-1', 0, { rla: '17.9' })).toBe(true);
        const other = await open();
        expect(await other.sheet('truck', 'van-1')).toEqual({ id: 'van-1', version: 1, body });
        expect((await other.sheets('truck')).map(({ id }) => id)).toEqual(['van-1', 'van-2']);
        expect(await other.sheet('equipment', 'van-1')).toEqual({ id: 'van-1', version: 1, body: { rla: '17.9' } });
      });

      test('of two who change the same sheet one is first, and the other is told', async () => {
        const other = await open();
        expect(await store.saveSheet('truck', 'van-1', 0, { left: 2 })).toBe(true);
        expect(await other.saveSheet('truck', 'van-1', 0, { left: 9 })).toBe(false);
        expect(await other.saveSheet('truck', 'van-1', 1, { left: 1 })).toBe(true);
        expect(await store.saveSheet('truck', 'van-1', 1, { left: 0 })).toBe(false);
        expect(await store.sheet('truck', 'van-1')).toEqual({ id: 'van-1', version: 2, body: { left: 1 } });
        expect(await store.saveSheet('truck', 'never', 1, {})).toBe(false);
      });
    });

    describe('what has to be said in a chat', () => {
      const mark = (lane: string, seq: number) => ({ chat: 'chat', lane, seq });
      const [now, soon, later] = ['2026-07-14T15:00:00.000Z', '2026-07-14T15:00:30.000Z', '2026-07-14T15:01:00.000Z'];
      const ids = async (of: Store): Promise<string[]> => (await of.unsaid('chat')).map(({ id }) => id);

      test('is added once, lane by lane in order, and the mark never goes back', async () => {
        await store.willSay(mark('j1', 4), [
          { id: 'a', body: { n: 1 } },
          { id: 'b', body: { n: 2 } },
        ]);
        await store.willSay(mark('j2', 2), [{ id: 'c', body: null }]);
        const other = await open();
        await other.willSay(mark('j1', 3), [
          { id: 'b', body: { n: 9 } },
          { id: 'd', body: { n: 4 } },
        ]);
        expect(await other.heard('chat')).toEqual([mark('j1', 4), mark('j2', 2)]);
        expect(await other.heard('elsewhere')).toEqual([]);
        expect(await ids(store)).toEqual(['a', 'c']);
        const lane = await other.sayings('chat', 'j1');
        expect(lane.map(({ id, body, tries, at }) => [id, body, tries, at])).toEqual([
          ['a', { n: 1 }, 0, null],
          ['b', { n: 2 }, 0, null],
          ['d', { n: 4 }, 0, null],
        ]);
      });

      test('is taken by one at a time, and says how often it was tried', async () => {
        await store.willSay(mark('j1', 1), [{ id: 'a', body: {} }]);
        const other = await open();
        const both = await Promise.all([store.takeSaying('a', now, soon), other.takeSaying('a', now, soon)]);
        expect(both.filter((one) => one !== null)).toHaveLength(1);
        expect(both.find((one) => one !== null)).toMatchObject({ id: 'a', lane: 'j1', tries: 0 });
        // Whoever took it is gone: another has it from then on, and knows that it was tried.
        expect(await other.takeSaying('a', soon, later)).toMatchObject({ id: 'a', tries: 1 });
        expect(await store.takeSaying('a', soon, later)).toBeNull();
        await other.letGo('a');
        expect(await store.takeSaying('a', soon, later)).toMatchObject({ id: 'a', tries: 2 });
        await other.said('a', 'C1:17.01');
        expect(await store.takeSaying('a', later, later)).toBeNull();
        expect(await ids(store)).toEqual([]);
      });

      test('stands where it was said, and what leaves nothing behind is gone', async () => {
        await store.willSay(mark('j1', 1), [
          { id: 'a', body: { n: 1 } },
          { id: 'b', body: { n: 2 } },
        ]);
        await store.said('a', 'C1:17.01');
        expect(await ids(store)).toEqual(['b']);
        await store.said('b', null);
        expect((await store.sayings('chat', 'j1')).map(({ id }) => id)).toEqual(['a']);
        expect(await store.sayingAt('chat', 'C1:17.01')).toMatchObject({ id: 'a', body: { n: 1 }, at: 'C1:17.01' });
        expect(await store.sayingAt('chat', 'C1:18.01')).toBeNull();
      });
    });

    describe('signing in', () => {
      const [before, at, after] = [
        '2026-07-14T14:59:59.999Z',
        '2026-07-14T15:00:00.000Z',
        '2026-07-14T15:00:00.001Z',
      ] as const;

      test('a link is used once, also when two use it at the same moment', async () => {
        await store.saveLink('h1', 'ines', at);
        await store.saveLink('h2', 'ruth', at);
        const other = await open();
        const both = await Promise.all([store.useLink('h1', before), other.useLink('h1', before)]);
        expect(both.sort()).toEqual(['ines', null]);
        expect(await store.useLink('h1', before)).toBeNull();
        expect(await store.useLink('h2', before)).toBe('ruth');
      });

      test('a link that has expired or never was gives nobody', async () => {
        await store.saveLink('h1', 'ines', at);
        await store.saveLink('h2', 'ines', at);
        expect(await store.useLink('h1', at)).toBeNull();
        expect(await store.useLink('h2', after)).toBeNull();
        expect(await store.useLink('h3', before)).toBeNull();
        expect(await store.useLink('h1', before)).toBeNull();
      });

      test('a session lasts until it expires or is ended', async () => {
        await store.saveSession('s1', 'ines', at);
        await store.saveSession('s2', 'ruth', at);
        expect([await store.session('s1', before), await store.session('s1', before)]).toEqual(['ines', 'ines']);
        expect([await store.session('s1', at), await store.session('s1', after)]).toEqual([null, null]);
        await store.endSession('s2');
        expect([await store.session('s2', before), await store.session('s3', before)]).toEqual([null, null]);
        expect(await (await open()).session('s1', before)).toBe('ines');
      });
      test('each device is a session that can be ended by itself', async () => {
        await store.saveSession('d1', 'ines', at);
        await store.saveSession('d2', 'ines', after, { made: before, device: 'phone' });
        await store.saveSession('d3', 'ruth', after, { made: before, device: 'computer' });
        const other = await open();
        expect(await other.devices('ines', before)).toEqual([
          { hash: 'd2', person: 'ines', expires: after, made: before, device: 'phone' },
          { hash: 'd1', person: 'ines', expires: at, made: null, device: null },
        ]);
        expect((await store.devices('ines', at)).map(({ hash }) => hash)).toEqual(['d2']);
        await other.endSession('d2');
        expect(await store.devices('ines', before)).toHaveLength(1);
        expect((await store.shop()).sessions.find(({ hash }) => hash === 'd3')?.device).toBe('computer');
      });
    });
  });
}
