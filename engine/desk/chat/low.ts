/** What runs low by a part that a job used, and who is told of it. */
import type { Settings } from '../../schema.ts';
import type { Store } from '../../store/port.ts';
import { itemName } from '../dispatch/board.ts';
import { createSheets } from '../sheets.ts';
import type { LowStock, Person } from '../types.ts';

/** Those of the crew that the settings name; every dispatcher where nobody was named. */
export const toldOfStock = ({ toldOfStock: named }: Settings, crew: readonly Person[]): string[] =>
  crew.flatMap(({ id, roles }) => ((named ? named.includes(id) : roles.includes('dispatcher')) ? [id] : []));

/** Null where the truck still carries enough of it after this entry, or carries it no longer. */
export async function lowAfter(store: Store, job: string, seq: number): Promise<LowStock | null> {
  const { entries } = await store.readAfter(job, 0);
  const counted = entries[seq - 1];
  const before = entries.slice(0, seq).flatMap((e) => (e.kind === 'set' && e.body.what === 'truck' ? [e.body] : []));
  const carried = before.at(-1)?.truck;
  if (counted?.kind !== 'counted' || !carried) return null;
  const found = await createSheets(store).itemAfter(carried.id, counted);
  // It may have been filled again meanwhile.
  if (!found || found.item.count > found.item.low) return null;
  const { truck, item } = found;
  return { truck, item: itemName(item), left: item.count, low: item.low };
}
