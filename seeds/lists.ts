/** The demo's own lists: what a truck carries, what is known of two units. Everything is invented. */
import type { EquipmentSheet, TruckSheet } from '../engine/desk/sheets.ts';
import type { Past, StockItem, Value } from '../engine/schema.ts';

/** A run capacitor: "40+7.5" has two sections. `name` says where it lies. */
const run = (name: string, sections: string, volts: string, count: number, low = 1): StockItem => ({
  id: `run-${sections.replace('+', '-').replace('.', 'p')}-${volts}`,
  name,
  kind: 'run',
  sections: sections.split('+'),
  volts,
  range: null,
  protection: null,
  life: null,
  count,
  low,
});
const OTHER = { sections: [] as string[], volts: null, range: null, protection: null, life: null };

export const DEMO_TRUCK = 'truck-2';
export const TRUCK: Omit<TruckSheet, 'applied'> = {
  name: 'Truck 2',
  items: [
    run('Drawer A', '35+5', '440', 2),
    run('Drawer A', '40+5', '440', 3),
    run('Drawer B', '40+7.5', '440', 2),
    run('Drawer B', '45+5', '440', 1, 2),
    run('Drawer C', '35', '440', 1),
    run('Drawer C', '40', '440', 1),
    run('Drawer D', '5', '440', 4, 2),
    run('Drawer D', '7.5', '440', 2),
    {
      ...OTHER,
      id: 'start-161-193-250',
      name: 'Drawer E',
      kind: 'start',
      volts: '250',
      range: { low: '161', high: '193' },
      count: 1,
      low: 1,
    },
    {
      ...OTHER,
      id: 'contactor-2-30-24',
      name: 'Contactor, 2 poles, 30 A, 24 V coil',
      kind: 'other',
      count: 2,
      low: 1,
    },
  ],
};

const amps = (value: string): Value => ({ kind: 'figure', value, unit: 'A', typed: value });
const plate = (rla: string, lra: string, fla: string) => ({ rla: amps(rla), lra: amps(lra), fla: amps(fla) });

/** `today`: milliseconds. The second unit had a new capacitor within a season, so a senior hears of another. */
export function units(today: number): Readonly<Record<string, EquipmentSheet>> {
  const fitted = (daysAgo: number, job: string, herm: string, fan: string): Past => ({
    at: new Date(today - daysAgo * 86_400_000).toISOString(),
    job,
    what: 'fitted',
    item: 'run capacitor',
    herm,
    fan,
  });
  return {
    'unit-1': {
      name: 'Alder Court 14, unit 3',
      facts: plate('14.7', '80', '1.1'),
      history: [fitted(640, 'before-1', '40.2', '7.54')],
    },
    'unit-2': {
      name: 'Mill Lane 2',
      facts: plate('13.5', '68', '0.9'),
      history: [fitted(120, 'before-2', '35.3', '5.04')],
    },
  };
}
