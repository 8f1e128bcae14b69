import { useId, useState } from 'preact/hooks';
import type { Truck } from '../../../engine/index.ts';
import { postTruck } from './net.ts';
import type { Save } from './shop-page.tsx';

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
  const number = (text: string): number => Math.max(0, Math.floor(Number(text) || 0));
  return (
    <article>
      <h3>{truck.name}</h3>
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
          </fieldset>
        ))}
        {mine && (
          <button type="submit" class="key main">
            Save the stock
          </button>
        )}
      </form>
    </article>
  );
}
