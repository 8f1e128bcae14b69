import { useId, useState } from 'preact/hooks';
import type { Truck } from '../../../engine/index.ts';
import { clientId } from '../net/client-id.ts';
import { postTruck } from '../office/net.ts';
import type { Save } from './shop-page.tsx';
import { NewLine } from './stock-line.tsx';

type Item = Truck['items'][number];
const WHOLE = /^\d{1,4}$/;
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
  /** As typed; a number once it is one. */
  const [typed, setTyped] = useState<Readonly<Record<string, string>>>({});
  const type = (at: number, what: 'count' | 'low', text: string): void => {
    setTyped({ ...typed, [`${items[at]?.id} ${what}`]: text });
    if (WHOLE.test(text.trim())) change(at, { [what]: Number(text) });
  };
  const shown = (item: Item, what: 'count' | 'low'): string => typed[`${item.id} ${what}`] ?? String(item[what]);
  const unread = items.find(
    (item) => ![shown(item, 'count'), shown(item, 'low')].every((text) => WHOLE.test(text.trim())),
  );
  return (
    <article>
      <h3>{truck.name}</h3>
      {changed && <p role="status">Changed here, not saved yet.</p>}
      <form
        class="give"
        onSubmit={(event) => {
          event.preventDefault();
          void save({
            what: truck.name,
            wrong: unread ? `${nameOf(unread)}: how many is a whole number from 0 to 9999.` : null,
            send: () => postTruck({ ...truck, items }),
          });
        }}
      >
        {items.map((item, i) => (
          <fieldset key={item.id} class="part">
            <legend>{nameOf(item)}</legend>
            <label for={`${id}-${i}-count`}>Carried</label>
            <input
              id={`${id}-${i}-count`}
              inputMode="numeric"
              value={shown(item, 'count')}
              readOnly={!mine}
              onInput={(e) => type(i, 'count', e.currentTarget.value)}
            />
            <label for={`${id}-${i}-low`}>Low from</label>
            <input
              id={`${id}-${i}-low`}
              inputMode="numeric"
              value={shown(item, 'low')}
              readOnly={!mine}
              onInput={(e) => type(i, 'low', e.currentTarget.value)}
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
            onClick={() =>
              sure
                ? void save({
                    what: `${truck.name} is out of service`,
                    send: () => postTruck({ ...truck, gone: true }),
                  })
                : setSure(true)
            }
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
    const called = name.trim();
    const wrong = called === '' ? 'Say what the truck is called.' : null;
    const send = () => postTruck({ id: own, name: called, version: 0, items: [] });
    if (!(await save({ what: called, wrong, send }))) return;
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
