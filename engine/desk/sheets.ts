/** The shop's own lists beside the jobs: what a truck carries, what is known of a unit. Kept whole, changed one at a time. */
import * as z from 'zod/mini';
import { pastOf } from '../decide/stock.ts';
import { memoryOf, placeIdOf, planOf } from '../replay.ts';
import { type Entry, Equipment, Past, StockItem, type Truck } from '../schema.ts';
import type { Sheet, SheetList, Store } from '../store/port.ts';
import { Damaged } from '../store/port.ts';
import type { File } from './files.ts';

/** `applied`: up to which entry of a job what it used has been taken off. */
const TruckSheet = z.strictObject({
  name: z.string(),
  items: z.array(StockItem),
  applied: z.record(z.string(), z.number()),
  /** Out of service: it is listed no longer, and jobs that used it stay readable. */
  gone: z.optional(z.boolean()),
});
const EquipmentSheet = z.strictObject({ name: z.string(), facts: Equipment.shape.facts, history: z.array(Past) });
export type TruckSheet = z.infer<typeof TruckSheet>;
export type EquipmentSheet = z.infer<typeof EquipmentSheet>;

const TRIES = 20;

export interface Sheets {
  /** Null where there is none. Rejects with Damaged where it can't be read. */
  truck(id: string): Promise<Truck | null>;
  equipment(id: string): Promise<Equipment | null>;
  trucks(): Promise<Truck[]>;
  /** An item with what is left of it once this entry is taken off, whether or not that was done yet; null where it is gone. */
  itemAfter(
    truck: string,
    entry: Extract<Entry, { kind: 'counted' }>,
  ): Promise<{ truck: string; item: StockItem } | null>;
  /** Adds the sheet, or replaces what it says. */
  saveTruck(id: string, sheet: Omit<TruckSheet, 'applied'>): Promise<void>;
  saveEquipment(id: string, sheet: EquipmentSheet): Promise<void>;
  /** Takes off what the job used, and writes down what was read and fitted once it is at its end. Does nothing twice. */
  settle(job: string, file: File): Promise<void>;
}

export function createSheets(store: Store): Sheets {
  const truckOf = (sheet: Sheet): Truck => {
    const { name, items } = read(TruckSheet, sheet);
    return { id: sheet.id, name, version: sheet.version, items };
  };
  const equipmentOf = (sheet: Sheet): Equipment => ({
    id: sheet.id,
    version: sheet.version,
    ...read(EquipmentSheet, sheet),
  });
  /** Changes a sheet as it stands; of two at once one is first and the other reads again. Null leaves it. */
  const change = async (list: SheetList, id: string, next: (body: Sheet | null) => unknown): Promise<void> => {
    for (let attempt = 0; attempt < TRIES; attempt++) {
      const now = await store.sheet(list, id);
      const body = next(now);
      if (body === null || (await store.saveSheet(list, id, now?.version ?? 0, body))) return;
    }
    throw new Error(`sheet ${list} ${id}: others kept changing it`);
  };

  const takeOff = (truck: string, job: string, file: File): Promise<void> =>
    change('truck', truck, (sheet) => {
      if (!sheet) return null;
      const body = read(TruckSheet, sheet);
      const done = body.applied[job] ?? 0;
      const used = file.entries.flatMap((e) => (e.kind === 'counted' && e.seq > done ? [e] : []));
      const last = used.at(-1);
      if (!last) return null;
      const items = body.items.map((item) => {
        const count = used.reduce((n, e) => (e.body.item === item.id ? n - (e.body.used ?? 1) : n), item.count);
        return { ...item, count: Math.max(0, count) };
      });
      return { ...body, items, applied: { ...body.applied, [job]: last.seq } };
    });
  const writeDown = (unit: string, job: string, file: File): Promise<void> =>
    change('equipment', unit, (sheet) => {
      if (!sheet) return null;
      const body = read(EquipmentSheet, sheet);
      const past = pastOf(planOf(file.standing), memoryOf(file.standing), job);
      const others = body.history.filter((line) => line.job !== job);
      const history = [...others, ...past].sort((a, b) => (a.at < b.at ? -1 : 1));
      return JSON.stringify(history) === JSON.stringify(body.history) ? null : { ...body, history };
    });

  return {
    truck: async (id) => {
      const sheet = await store.sheet('truck', id);
      return sheet && truckOf(sheet);
    },
    equipment: async (id) => {
      const sheet = await store.sheet('equipment', id);
      return sheet && equipmentOf(sheet);
    },
    async itemAfter(id, { job, seq, body: { item: of, used = 1 } }) {
      const sheet = await store.sheet('truck', id);
      const body = sheet && read(TruckSheet, sheet);
      const item = body?.items.find((one) => one.id === of);
      if (!body || body.gone || !item) return null;
      const done = (body.applied[job] ?? 0) >= seq;
      return { truck: body.name, item: { ...item, count: Math.max(0, done ? item.count : item.count - used) } };
    },
    trucks: async () =>
      (await store.sheets('truck')).filter((sheet) => read(TruckSheet, sheet).gone !== true).map(truckOf),
    saveTruck: (id, of) =>
      change('truck', id, (sheet) => ({ ...of, applied: sheet ? read(TruckSheet, sheet).applied : {} })),
    saveEquipment: (id, of) => change('equipment', id, () => of),
    async settle(job, file) {
      const { training, truck, equipment } = memoryOf(file.standing);
      if (training) return;
      if (truck && file.entries.some((e) => e.kind === 'counted')) await takeOff(truck.id, job, file);
      const ended = planOf(file.standing).endings.includes(placeIdOf(file.standing));
      if (equipment && ended) await writeDown(equipment.id, job, file);
    },
  };
}

function read<S extends z.ZodMiniType>(shape: S, sheet: Sheet): z.output<S> {
  const parsed = z.safeParse(shape, sheet.body);
  if (!parsed.success) throw new Damaged(`The sheet ${sheet.id} can’t be read.`, null, null, { cause: parsed.error });
  return parsed.data;
}
