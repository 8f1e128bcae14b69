/** The crew and the shop: who is there, what they may, what the trucks carry, what is in force. */
import type { Truck } from '../../schema.ts';
import type { Store } from '../../store/port.ts';
import { may } from '../rights.ts';
import type { Sheets } from '../sheets.ts';
import { issuePath } from '../sign-in.ts';
import { type Device, NoRight, NotFound, type Person, type PersonWish, Refused, type ShopDesk } from '../types.ts';

interface ShopParts {
  readonly store: Store;
  readonly sheets: Sheets;
  readonly clock: () => Date;
  readonly personOf: (id: string) => Promise<Person>;
}
const NOBODY = { own: false, holder: false, gate: false, reason: false, participates: false };

export function createShopDesk({ store, sheets, clock, personOf }: ShopParts): ShopDesk {
  const must = async (by: string, use: 'crew' | 'settings' | 'read-crew'): Promise<Person> => {
    const person = await personOf(by);
    if (!may(person.roles, use, NOBODY)) throw new NoRight('Crew, settings and stock are the owner’s.');
    return person;
  };
  const anybody = async (id: string): Promise<Person> => {
    const found = (await store.people()).find((person) => person.id === id);
    if (!found) throw new NotFound('There is no such person.');
    return found;
  };
  const now = (): string => clock().toISOString();
  /** One’s own devices are one’s own to see and to sign out. */
  const devicesOf = async (by: string, person: string): Promise<Device[]> => {
    if ((await personOf(by)).id !== person) await must(by, 'crew');
    const sessions = await store.devices((await anybody(person)).id, now());
    return sessions.map(({ hash, device, made, expires }) => ({ id: hash, device, made, expires }));
  };
  return {
    devices: devicesOf,
    async endDevice(by, person, device) {
      if (!(await devicesOf(by, person)).some(({ id }) => id === device))
        throw new NotFound('There is no such device, or it is signed out already.');
      await store.endSession(device);
    },
    async saveUnits(by, units) {
      const { units: _, ...person } = await personOf(by);
      await store.savePerson(units === null ? person : { ...person, units });
    },
    async look(by) {
      const { roles } = await must(by, 'read-crew');
      const [people, trucks, settings] = await Promise.all([store.people(), sheets.trucks(), store.settings()]);
      return { people: people.map(wishOf), trucks, settings, mine: may(roles, 'crew', NOBODY) };
    },
    async savePerson(by, wish) {
      await must(by, 'crew');
      await savePerson(store, wish);
    },
    async link(by, person) {
      await must(by, 'crew');
      const { id, active, name } = await anybody(person);
      if (!active) throw new Refused(`${name} is no longer of the crew.`);
      return issuePath({ store, clock }, id);
    },
    async revoke(by, person) {
      await must(by, 'crew');
      return store.signOut((await anybody(person)).id);
    },
    async saveSettings(by, settings) {
      await must(by, 'settings');
      await store.saveSettings(settings);
    },
    async saveTruck(by, { id, name, version, items, gone = false }: Truck & { gone?: boolean }) {
      await must(by, 'settings');
      const now = await sheets.truck(id);
      if ((now?.version ?? 0) !== version)
        throw new Refused('Somebody changed this truck meanwhile. Look at it as it is now.');
      if (new Set(items.map((item) => item.id)).size < items.length) throw new Refused('Two lines have the same id.');
      const driver = (await store.people()).find((person) => person.active && person.truck === id);
      if (gone && driver) throw new Refused(`${driver.name} drives it. Give them another truck first.`);
      await sheets.saveTruck(id, { name, items, ...(gone ? { gone } : {}) });
    },
  };
}

/** Adds, or changes the person of the same id; whoever leaves is signed out everywhere. */
export async function savePerson(store: Store, wish: PersonWish): Promise<void> {
  const people = await store.people();
  const before = people.find(({ id }) => id === wish.id);
  if (wish.name.trim() === '') throw new Refused('A person needs a name.');
  if (wish.roles.length === 0) throw new Refused('A person needs a role.');
  const owners = people.filter(({ id, active, roles }) => id !== wish.id && active && roles.includes('owner'));
  const owns = wish.active && wish.roles.includes('owner');
  if (before?.roles.includes('owner') && !owns && owners.length === 0)
    throw new Refused('That is the last owner. Make somebody else one first.');
  await store.savePerson({ meter: null, ...before, ...wish });
  if (!wish.active) await store.signOut(wish.id);
}
const wishOf = ({ id, name, initials, roles, certified, active, meter, truck }: Person): PersonWish => ({
  ...{ id, name, initials, roles: [...roles], certified, active, meter },
  ...(truck === undefined ? {} : { truck }),
});
