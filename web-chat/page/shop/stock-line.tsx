import { useId, useState } from 'preact/hooks';
import type { Truck } from '../../../engine/index.ts';
import { clientId } from '../net/client-id.ts';

type Item = Truck['items'][number];
const KINDS: Readonly<Record<Item['kind'], string>> = {
  run: 'Run capacitor',
  start: 'Start capacitor',
  other: 'Another part',
};
/** "45+5", "161-193", "440": as they are printed. */
const [SECTIONS, RANGE, VOLTS] = [
  /^\d+(?:\.\d+)?(?:\+\d+(?:\.\d+)?)?$/,
  /^(\d+(?:\.\d+)?)\s*[-–]\s*(\d+(?:\.\d+)?)$/,
  /^\d+(?:\.\d+)?$/,
];
const EMPTY = { kind: 'run' as Item['kind'], name: '', print: '', volts: '', count: '1', low: '1' };

/** A part that the truck carries from now on. What is printed on a capacitor decides what it may replace. */
export function NewLine({ onAdd }: { onAdd: (item: Item) => void }) {
  const id = useId();
  const [wish, setWish] = useState(EMPTY);
  const [trouble, setTrouble] = useState<string | null>(null);
  const set = (part: Partial<typeof EMPTY>) => setWish({ ...wish, ...part });
  const add = (): void => {
    const made = itemOf(wish);
    setTrouble(typeof made === 'string' ? made : null);
    if (typeof made === 'string') return;
    onAdd(made);
    setWish({ ...EMPTY, kind: wish.kind });
  };
  const field = (key: 'name' | 'print' | 'volts' | 'count' | 'low', ask: string) => (
    <>
      <label for={`${id}-${key}`}>{ask}</label>
      <input
        id={`${id}-${key}`}
        value={wish[key]}
        maxLength={80}
        inputMode={key === 'name' || key === 'print' ? 'text' : 'numeric'}
        autocomplete="off"
        onInput={(event) => set({ [key]: event.currentTarget.value })}
      />
    </>
  );
  return (
    <details class="fold">
      <summary>Add a line</summary>
      <div class="give">
        <label for={`${id}-kind`}>What it is</label>
        <select
          id={`${id}-kind`}
          value={wish.kind}
          onChange={(event) => set({ kind: event.currentTarget.value as Item['kind'] })}
        >
          {Object.entries(KINDS).map(([kind, words]) => (
            <option key={kind} value={kind}>
              {words}
            </option>
          ))}
        </select>
        {field('name', wish.kind === 'other' ? 'Name, as it is printed' : 'Where it lies')}
        {wish.kind === 'run' && field('print', 'µF by section, such as 45+5')}
        {wish.kind === 'start' && field('print', 'µF from and to, such as 161-193')}
        {wish.kind !== 'other' && field('volts', 'Volts AC')}
        {field('count', 'New line: carried')}
        {field('low', 'New line: low from')}
        {trouble !== null && (
          <p class="refusal" role="alert">
            {trouble}
          </p>
        )}
        <button type="button" class="key" onClick={add}>
          Add it to the list
        </button>
      </div>
    </details>
  );
}

/** The line, or what is missing in words. */
function itemOf({ kind, name, print, volts, count, low }: typeof EMPTY): Item | string {
  if (name.trim() === '') return 'Say where it lies, or what it is called.';
  if (!/^\d+$/.test(count.trim()) || !/^\d+$/.test(low.trim())) return 'Carried and low are whole numbers.';
  const item = {
    ...{ id: `${kind}-${clientId().slice(0, 8)}`, name: name.trim(), kind, sections: [], volts: null, range: null },
    ...{ protection: null, life: null, count: Number(count), low: Number(low) },
  };
  if (kind === 'other') return item;
  if (!VOLTS.test(volts.trim())) return 'Volts AC: a number, as it is printed.';
  if (kind === 'run') {
    const plain = print.replace(/\s/g, '');
    if (!SECTIONS.test(plain)) return 'µF by section: one number, or two with a plus, such as 45+5.';
    return { ...item, sections: plain.split('+'), volts: volts.trim() };
  }
  const [, from, to] = RANGE.exec(print.trim()) ?? [];
  if (from === undefined || to === undefined || Number(from) >= Number(to))
    return 'µF from and to: two numbers, the lower first, such as 161-193.';
  return { ...item, volts: volts.trim(), range: { low: from, high: to } };
}
