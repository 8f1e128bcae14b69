/** The truck and the unit's own record beside the jobs: each counted and written down once, and read at the next call. */
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { due } from '../../engine/desk/chat/due.ts';
import { lowAfter, toldOfStock } from '../../engine/desk/chat/low.ts';
import { createSheets, type Sheets } from '../../engine/desk/sheets.ts';
import type { JobView } from '../../engine/desk/types.ts';
import { DEFAULT_SETTINGS } from '../../engine/memory.ts';
import type { Entry } from '../../engine/schema.ts';
import { Damaged } from '../../engine/store/port.ts';
import { PEOPLE, PROVES, plate, stocked, TO_READINGS } from '../people.ts';
import { personOf, Shop } from './shop.ts';

const WEAK = 'herm 36.1 fan 5.02 hf 4.4 case ol';
const TO_PICK = [...TO_READINGS, WEAK, 'spin free', 'cr .9 cs 2.7 sr 3.6 g ol', 'nothing'];
const PICK = 'first, herm 45.3 fan 5.04';
const TO_END = ['wires back', 'closed', PROVES];
const DUAL = 'run-45-5-440';

let shop: Shop;
let sheets: Sheets;
beforeEach(async () => {
  shop = await Shop.open();
  sheets = createSheets(shop.store);
  await shop.store.savePerson(personOf(PEOPLE.ines, { truck: 'van-1' }));
  await sheets.saveTruck('van-1', { name: 'Van 1', items: [stocked('45+5', '440', 3), stocked('45', '440', 2)] });
  await sheets.saveEquipment('unit-1', { name: 'Unit 1', facts: plate('17.9', '96', '1.2'), history: [] });
});
afterEach(() => shop.close());

const opened = async (client: string, more: { training?: boolean } = {}): Promise<string> =>
  (await shop.desk.open('dana', { title: 'Warm air', assign: 'ines', equipment: 'unit-1', client, ...more })).view.job;
const left = async (): Promise<number[]> => ((await sheets.truck('van-1'))?.items ?? []).map((item) => item.count);
const history = async () => (await sheets.equipment('unit-1'))?.history ?? [];
const record = async (job: string): Promise<Entry[]> => (await shop.store.read(job)).entries;

describe('given a part picked off the truck', () => {
  test('when it is fitted, then it goes down by one, also where the reply or the whole rest is sent again', async () => {
    const job = await opened('o1');
    await shop.types(job, [...TO_PICK, PICK]);
    expect(await left()).toEqual([3, 2]);
    const fitted = await shop.line(job, 'fitted');
    await shop.desk.reply('ines', job, fitted);
    expect(await left()).toEqual([2, 2]);
    await shop.desk.reply('ines', job, fitted);
    await (await shop.another()).reply('ines', job, fitted);
    await shop.types(job, TO_END);
    expect(await left()).toEqual([2, 2]);
    const counted = (await record(job)).flatMap((e) => (e.kind === 'counted' ? [e.body] : []));
    expect(counted).toEqual([{ item: DUAL, left: 2, used: 1 }]);
    // The unit's record had the plate, so nobody was asked for it; what was read and fitted is on it now, once.
    expect((await record(job)).some((e) => e.kind === 'answered' && e.body.place.endsWith('/plate'))).toBe(false);
    expect(await history()).toEqual([
      expect.objectContaining({ job, what: 'read', herm: '36.1', fan: '5.02' }),
      expect.objectContaining({ job, what: 'fitted', herm: '45.3', fan: '5.04' }),
    ]);
    await shop.type(job, 'note the customer was told');
    expect([await left(), (await history()).length]).toEqual([[2, 2], 2]);
  });
  test('when the job is for training, then nothing goes down and nothing is written down', async () => {
    const job = await opened('o1', { training: true });
    await shop.types(job, [...TO_PICK, PICK, 'fitted', ...TO_END]);
    expect((await record(job)).some((e) => e.kind === 'counted')).toBe(true);
    expect([await left(), await history()]).toEqual([[3, 2], []]);
  });
  test('when the dispatcher filled the truck meanwhile, then what is used comes off the new count', async () => {
    const job = await opened('o1');
    await shop.types(job, [...TO_PICK, PICK]);
    await sheets.saveTruck('van-1', { name: 'Van 1', items: [stocked('45+5', '440', 9)] });
    await shop.types(job, ['fitted']);
    expect(await left()).toEqual([8]);
  });
});

test.each([
  ['100 days later, then it is the second in a season and a senior hears of it', 100, true],
  ['200 days later, then it is only said', 200, false],
])('given a part fitted at an earlier call, when the next one is opened %s', async (_, days, senior) => {
  await shop.types(await opened('o1'), [...TO_PICK, PICK, 'fitted', ...TO_END]);
  shop.now += days * 86_400_000;
  const job = await opened('o2');
  const turn = await shop.types(job, TO_PICK);
  const entries = await record(job);
  const raised = entries.some((e) => e.kind === 'concluded' && e.body.verdict === 'second-in-a-season');
  expect([raised, entries.some((e) => e.kind === 'raised')]).toEqual([senior, senior]);
  // Raised or not, the repair goes on.
  expect(turn.view.prompt.title).toContain('Pick the new part');
  if (!senior) expect(turn.view.prompt.notices.map((n) => n.text).join()).toContain('longer than a season');
});

describe('given a sheet that can’t be read', () => {
  test('of a truck, then whoever asks for it is told which, and nothing of the answer is kept', async () => {
    const job = await opened('o1');
    const sheet = await shop.store.sheet('truck', 'van-1');
    await shop.store.saveSheet('truck', 'van-1', sheet?.version ?? 0, { name: 'Van 1', items: 'three' });
    const before = (await record(job)).length;
    await expect(sheets.truck('van-1')).rejects.toThrow('The sheet van-1 can’t be read.');
    await expect(shop.type(job, 'd')).rejects.toThrow(Damaged);
    expect((await record(job)).length).toBe(before);
  });
  test('of a unit, then no call is opened on it; without it one is', async () => {
    const sheet = await shop.store.sheet('equipment', 'unit-1');
    await shop.store.saveSheet('equipment', 'unit-1', sheet?.version ?? 0, { name: 'Unit 1', facts: [] });
    await expect(opened('o1')).rejects.toThrow('The sheet unit-1 can’t be read.');
    expect((await shop.desk.open('dana', { title: 'Warm air', assign: 'ines', client: 'o2' })).view.title).toBe(
      'Warm air',
    );
  });
});

describe('what runs low', () => {
  const used = async (count: number, more: { training?: boolean } = {}): Promise<{ job: string; seq: number }> => {
    await sheets.saveTruck('van-1', { name: 'Van 1', items: [{ ...stocked('45+5', '440', count), low: 1 }] });
    const job = await opened(shop.client(), more);
    await shop.types(job, [...TO_PICK, PICK, 'fitted']);
    return { job, seq: (await record(job)).find((e) => e.kind === 'counted')?.seq ?? 0 };
  };
  const DUE = (view: JobView, entries: Entry[], to: string[]) =>
    due('c', view, entries, [], [], () => false, to).flatMap(({ id, body }) => (body.kind === 'low' ? [id] : []));
  test('is said of a part that leaves few of its kind, and not where there are enough or it was filled again', async () => {
    const { job, seq } = await used(2);
    const low = { truck: 'Van 1', item: 'run 45+5\u2009µF 440\u2009V, Bin 45+5', left: 1, low: 1 };
    expect(await lowAfter(shop.store, job, seq)).toEqual(low);
    // Also before the sheet has it, and never for an entry that used nothing.
    expect(await lowAfter(shop.store, job, seq - 1)).toBeNull();
    await shop.store.saveSheet('truck', 'van-1', (await shop.store.sheet('truck', 'van-1'))?.version ?? 0, {
      ...{ name: 'Van 1', items: [{ ...stocked('45+5', '440', 2), low: 1 }], applied: {} },
    });
    expect(await lowAfter(shop.store, job, seq)).toEqual(low);
    await sheets.saveTruck('van-1', { name: 'Van 1', items: [{ ...stocked('45+5', '440', 9), low: 1 }] });
    expect(await lowAfter(shop.store, job, seq)).toBeNull();
    const enough = await used(4);
    expect(await lowAfter(shop.store, enough.job, enough.seq)).toBeNull();
  });
  test('is due once to each who is told, never of a training call', async () => {
    const { job, seq } = await used(2);
    expect(DUE(await shop.desk.crewView(job), await record(job), ['dana', 'otto'])).toEqual([
      `c.${job}.low.${seq}.dana`,
      `c.${job}.low.${seq}.otto`,
    ]);
    const learning = await used(2, { training: true });
    expect(DUE(await shop.desk.crewView(learning.job), await record(learning.job), ['dana'])).toEqual([]);
  });
  test('is told to those whom the settings name, and to every dispatcher where they name nobody', () => {
    const crew = Object.values(PEOPLE).map((p) => personOf(p));
    expect(toldOfStock(DEFAULT_SETTINGS, crew)).toEqual(['dana']);
    expect(toldOfStock({ ...DEFAULT_SETTINGS, toldOfStock: ['otto', 'ruth', 'gone'] }, crew)).toEqual(['ruth', 'otto']);
    expect(toldOfStock({ ...DEFAULT_SETTINGS, toldOfStock: [] }, crew)).toEqual([]);
  });
});
