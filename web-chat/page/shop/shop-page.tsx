/** Crew and shop: who is there and what they may, what trucks carry, what is in force from the next job on. */
import { useEffect, useState } from 'preact/hooks';
import type { ShopView } from '../../../engine/desk/types.ts';
import type { Sent } from '../net/api.ts';
import { clientId } from '../net/client-id.ts';
import { Outdated, useOutdated } from '../outdated.tsx';
import type { ShopState } from '../state.ts';
import { PersonForm } from './person-form.tsx';
import { SettingsForm } from './settings-form.tsx';
import { NewTruck, TruckForm } from './truck-form.tsx';

export interface Change {
  /** What it is about, as it is said afterwards. */
  readonly what: string;
  /** What has to be put right before it can be sent; null: nothing. */
  readonly wrong?: string | null;
  readonly send: () => Promise<Sent<ShopView>>;
}
/** Sends a change; true where it was taken. What was typed stays where it wasn't. */
export type Save = (change: Change) => Promise<boolean>;

export function ShopPage({ build, shop: first }: ShopState) {
  const [shop, setShop] = useState(first);
  const [said, setSaid] = useState<string | null>(null);
  const [live, setLive] = useState(false);
  const [added, setAdded] = useState(newPersonId);
  const outdated = useOutdated(build);
  useEffect(() => setLive(true), []);
  const save: Save = async ({ what, wrong = null, send }) => {
    if (wrong !== null) {
      setSaid(`Not saved. ${wrong}`);
      return false;
    }
    const got = await send();
    if (got.ok) {
      setShop(got.value);
      // Whoever was added is of the crew: the next one is somebody else.
      if (got.value.people.some(({ id }) => id === added)) setAdded(newPersonId());
    }
    const lost = 'No contact with the server. Press it again.';
    setSaid(got.ok ? `Saved: ${what}.` : `Not saved. ${got.why === 'lost' ? lost : got.what}`);
    return got.ok;
  };
  const fresh = { id: added, name: '', initials: '', roles: [], certified: false, active: true };
  return (
    <main class="office" data-live={live}>
      <header class="heading">
        <h1>Crew and shop</h1>
        <nav class="row" aria-label="Elsewhere">
          <a class="key" href="/board">
            Board
          </a>
        </nav>
        {outdated && <Outdated />}
      </header>
      {!shop.mine && <p>To be read; the owner changes it.</p>}
      <section class="crew" aria-label="People">
        <h2>People</h2>
        {shop.people.map((person) => (
          <PersonForm key={person.id} person={person} trucks={shop.trucks} mine={shop.mine} save={save} />
        ))}
        {shop.mine && <PersonForm key={added} person={fresh} trucks={shop.trucks} mine save={save} />}
      </section>
      <section class="crew" aria-label="Trucks">
        <h2>Trucks and stock</h2>
        {shop.trucks.map((truck) => (
          <TruckForm key={`${truck.id} ${truck.version}`} truck={truck} mine={shop.mine} save={save} />
        ))}
        {shop.trucks.length === 0 && <p>No truck is on record.</p>}
        {shop.mine && <NewTruck save={save} />}
      </section>
      <SettingsForm settings={shop.settings} people={shop.people} mine={shop.mine} save={save} />
      {/* At the foot of the screen, wherever on this long page something was saved. */}
      <p role="status" class="said">
        {said ?? ''}
      </p>
    </main>
  );
}

const newPersonId = (): string => `p-${clientId().slice(0, 8)}`;
