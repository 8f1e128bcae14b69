/** A shop of invented people on a database of its own, with a clock that tests may move. */
import { randomBytes } from 'node:crypto';
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { createDesk, type Desk, type Person, type Role } from '../../engine/desk/index.ts';
import { openSqlite, type Store } from '../../engine/store/index.ts';
import { SHELF } from '../../flows/index.ts';
import { METER, PEOPLE } from '../people.ts';

export interface Shop {
  readonly file: string;
  readonly store: Store;
  readonly desk: Desk;
  readonly clock: () => Date;
  /** Lets minutes pass on the server. */
  readonly wait: (minutes: number) => void;
  readonly close: () => Promise<void>;
}

/** With the people of the tests, or with nobody, so that the demo can be loaded. */
export async function openShop(crew: 'people' | 'nobody' = 'people'): Promise<Shop> {
  const folder = await mkdtemp(join(tmpdir(), 'nocool-shop-'));
  const file = join(folder, 'shop.sqlite');
  const store = await openSqlite(file, { busyMs: 50 });
  const people = crew === 'people' ? Object.values(PEOPLE) : [];
  for (const { id, name, roles } of people) await store.savePerson(personOf(id, name, roles));
  let ahead = 0;
  const clock = () => new Date(Date.now() + ahead);
  const desk = createDesk({ store, shelf: SHELF, clock, random: (bytes) => randomBytes(bytes).toString('hex') });
  return {
    file,
    store,
    desk,
    clock,
    wait: (minutes) => {
      ahead += minutes * 60_000;
    },
    close: async () => {
      await store.close();
      await rm(folder, { recursive: true });
    },
  };
}

const personOf = (id: string, name: string, roles: readonly Role[]): Person => ({
  id,
  name,
  initials: name.replace(/[^A-Z]/g, ''),
  roles,
  certified: false,
  meter: METER,
  active: true,
});
