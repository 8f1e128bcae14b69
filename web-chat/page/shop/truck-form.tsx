import { useId, useState } from 'preact/hooks';
import type { Truck } from '../../../engine/index.ts';
import { clientId } from '../net/client-id.ts';
import { postTruck } from '../office/net.ts';
import type { Save } from './shop-page.tsx';
import { NewLine } from './stock-line.tsx';

type Item = Truck['items'][number];
const nameOf = ({ kind, name, sections, volts }: Item): string =>
  kind === 'other' ? name : `${name}: ${sections.join('+')}\u2009µF${volts === null ? '' : `, ${volts}\u2009V`}`;

interface TruckProps {
  readonly truck: Truck;
  readonly mine: boolean;
  readonly save: Save;
}
/** What a truck carries, and at how many the dispatcher hears of it. */
export function TruckForm({ truck, mine, save }: TruckProps) {
  const id = useId();
  const [items, setItems] = useState(truck.items);
  const change = (at: number, part: Partial<Item>) =>
    setItems(items.map((item, i) => (i === at ? { ...item, ...part } : item)));
  const [sure, setSure] = useState(false);
  const changed = JSON.stringify(items) !== JSON.stringify(truck.items);
  const number = (text: string): number => Math.max(0, Math.floor(Number(text) || 0));
  return (
    <article>
      <h3>{truck.name}</h3>
      {changed && <p role="status">Changed here, not saved yet.</p>}
      <form
        class="give"
        onSubmit={(event) => {
          event.preventDefault();
          void save(postTruck({ ...truck, items }));
        }}
      >
        {items.map((item, i) => (
          <fieldset key={item.id} class="part">
            <legend>{nameOf(item)}</legend>
            <label for={`${id}-${i}-count`}>Carried</label>
            <input
              id={`${id}-${i}-count`}
              inputMode="numeric"
              value={item.count}
              readOnly={!mine}
              onInput={(e) => change(i, { count: number(e.currentTarget.value) })}
            />
            <label for={`${id}-${i}-low`}>Low from</label>
            <input
              id={`${id}-${i}-low`}
              inputMode="numeric"
              value={item.low}
              readOnly={!mine}
              onInput={(e) => change(i, { low: number(e.currentTarget.value) })}
            />
            {mine && (
              <button
                type="button"
                class="key"
                aria-label={`Take off the list: ${nameOf(item)}`}
                onClick={() => setItems(items.filter((other) => other !== item))}
              >
                Take off the list
              </button>
            )}
          </fieldset>
        ))}
        {items.length === 0 && <p>It carries nothing.</p>}
        {mine && <NewLine onAdd={(item) => setItems([...items, item])} />}
        {mine && (
          <button type="submit" class="key main">
            Save the stock
          </button>
        )}
        {mine && (
          <button
            type="button"
            class="key"
            onClick={() => (sure ? void save(postTruck({ ...truck, gone: true })) : setSure(true))}
          >
            {sure ? 'Out of service: sure' : 'Out of service'}
          </button>
        )}
      </form>
    </article>
  );
}

/** A truck that the shop didn't have yet; it carries nothing at first. */
export function NewTruck({ save }: { save: Save }) {
  const id = useId();
  const [name, setName] = useState('');
  const [own, setOwn] = useState(newTruckId);
  const add = async (): Promise<void> => {
    if (name.trim() === '' || !(await save(postTruck({ id: own, name: name.trim(), version: 0, items: [] })))) return;
    setName('');
    setOwn(newTruckId());
  };
  return (
    <article>
      <h3>Another truck</h3>
      <form
        class="give"
        onSubmit={(event) => {
          event.preventDefault();
          void add();
        }}
      >
        <label for={id}>What it is called</label>
        <input id={id} value={name} maxLength={80} onInput={(event) => setName(event.currentTarget.value)} />
        <button type="submit" class="key" aria-disabled={name.trim() === ''}>
          Add the truck
        </button>
      </form>
    </article>
  );
}
const newTruckId = (): string => `truck-${clientId().slice(0, 8)}`;
