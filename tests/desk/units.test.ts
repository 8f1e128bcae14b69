/** Units are shown to each as they prefer; what is kept, judged and asked for is the same whoever reads it. */
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { contentOf } from '../../engine/desk/chat/content.ts';
import type { Desk } from '../../engine/desk/index.ts';
import { DEFAULT_SETTINGS } from '../../engine/memory.ts';
import type { Entry, Units } from '../../engine/schema.ts';
import { GOOD, MOTORS, PLATE } from '../engine/given.ts';
import { TO_READINGS } from '../people.ts';
import { Shop } from './shop.ts';

const METRIC: Units = { temperature: '°C', pressure: 'kPa' };
const LINES = [...TO_READINGS, GOOD, ...MOTORS, PLATE, 'closed'];
let shop: Shop;
let [plain, metric] = ['', ''];

const plainly = (value: unknown): string => JSON.stringify(value).replaceAll('\u2009', ' ');
/** The record without what differs between any two: ids, salts, times, hashes. */
const sameIn = (entries: readonly Entry[]): unknown[] =>
  entries
    .filter((e) => !(e.kind === 'set' && e.body.what === 'settings'))
    .map(({ kind, body }) => JSON.parse(JSON.stringify({ kind, body }).replace(/"(ref|hash)":"[^"]*"/g, '"$1":""')));
const seen = async (desk: Desk, by: string, job: string): Promise<string> => plainly((await desk.look(by, job)).ticket);

beforeAll(async () => {
  shop = await Shop.open();
  plain = await shop.call();
  await shop.desk.shop.saveSettings('otto', { ...DEFAULT_SETTINGS, units: METRIC });
  metric = await shop.call();
  for (const job of [plain, metric]) await shop.types(job, LINES);
});
afterAll(() => shop.close());

describe('a shop that prefers °C and kPa', () => {
  test('asks for the same units and says which one it shows', async () => {
    const field = (await shop.desk.look('ines', metric)).prompt.parts.find(({ key }) => key === 'split');
    expect(field).toMatchObject({ unit: 'Δ°F', prefers: '°C', from: '0', to: '150' });
    expect((await shop.desk.look('ines', metric)).prompt.line).toContain('(a figure without its unit is °F)');
    const before = (await shop.desk.look('ines', plain)).prompt;
    expect(before.parts.some((part) => 'prefers' in part)).toBe(false);
  });

  test('a reading that is out of range is refused in both units, and nothing is kept', async () => {
    const turn = await shop.type(metric, '240 239 comp 13.1 fan .9 split 190');
    expect(turn.entries).toEqual([]);
    expect(turn.refusal?.text.replaceAll('\u2009', ' ')).toContain('reads as 190 °F (105.6 °C)');
  });

  test('a bare figure means the same in both shops; the line reads back both, and the record is the same to the byte', async () => {
    for (const job of [plain, metric]) await shop.types(job, ['240 239 comp 13.1 fan .9 split 19']);
    expect(await seen(shop.desk, 'ines', metric)).toContain('19 °F (10.6 °C)');
    expect(await seen(shop.desk, 'ines', plain)).not.toContain('°C');
    const [a, b] = await Promise.all([plain, metric].map(async (job) => (await shop.store.read(job)).entries));
    expect(sameIn(b ?? [])).toEqual(sameIn(a ?? []));
    expect((await shop.desk.review.recompute('ruth', metric)).difference).toBeNull();
  });

  test('the verdict, the evidence and the report have both; figures in the data are those of the record', async () => {
    const view = await shop.desk.look('ines', metric);
    expect(plainly(view.prompt.verdicts)).toContain('The split is 19 °F (10.6 °C), inside 14–23 °F (7.8–12.8 °C)');
    const { evidence } = await shop.desk.review.look('ruth', metric);
    const split = evidence.flatMap(({ findings }) => findings).find(({ name }) => name === 'Split');
    expect([plainly(split?.reading), plainly(split?.limits)]).toEqual([
      '"19 °F (10.6 °C)"',
      '"14–23 °F (7.8–12.8 °C)"',
    ]);
    const report = await shop.desk.reports.read('ruth', metric, 'shop');
    expect(plainly(report.html(() => ''))).toContain('19 °F (10.6 °C)');
    const data = JSON.parse(report.json());
    expect(plainly(data.blocks)).toContain('19 °F (10.6 °C)');
    expect(plainly(data.verdicts)).not.toContain('°C');
    expect(plainly((await shop.desk.reports.read('ruth', plain, 'shop')).html(() => ''))).not.toContain('°C');
  });
});

test('the team’s chat says a verdict in the shop’s units, as the crew reads along', async () => {
  const said = async (job: string): Promise<string> => {
    const { entries } = await shop.store.read(job);
    const entry = entries.findLast(({ kind }) => kind === 'concluded');
    const what = { kind: 'verdict', seq: entry?.seq ?? 0 } as const;
    const from = { entry: async () => entry, low: async () => null, reviews: async () => false };
    return plainly(await contentOf(what, await shop.desk.crewView(job), from));
  };
  expect(await said(metric)).toContain('The split is 19 °F (10.6 °C), inside 14–23 °F (7.8–12.8 °C)');
  expect(await said(plain)).toContain('The split is 19 °F, inside 14–23 °F');
});

describe('a person who prefers otherwise than the shop', () => {
  test('reads their own units, everybody else the shop’s, and the whole crew reads along in those', async () => {
    await shop.desk.shop.saveUnits('ruth', { temperature: '°F', pressure: 'psig' });
    await shop.desk.shop.saveUnits('ines', { temperature: '°C', pressure: 'bar' });
    expect(await seen(shop.desk, 'ruth', metric)).not.toContain('°C');
    expect(await seen(shop.desk, 'ines', plain)).toContain('19 °F (10.6 °C)');
    expect(plainly((await shop.desk.crewView(metric)).ticket)).toContain('19 °F (10.6 °C)');
    expect(plainly((await shop.desk.crewView(plain)).ticket)).not.toContain('°C');
    // The owner who changes a person leaves it alone.
    const ines = (await shop.desk.shop.look('otto')).people.find(({ id }) => id === 'ines');
    if (ines) await shop.desk.shop.savePerson('otto', { ...ines, name: 'Ines V.' });
    expect((await shop.desk.person('ines'))?.units).toEqual({ temperature: '°C', pressure: 'bar' });
    await shop.desk.shop.saveUnits('ines', null);
    expect(await seen(shop.desk, 'ines', plain)).not.toContain('°C');
  });

  test('what was typed in another unit is kept as typed, and judged by the figure of the field', async () => {
    const job = await shop.call();
    await shop.types(job, [...LINES, '240 239 comp 13.1 fan .9 split 10.6 c']);
    const { entries } = await shop.store.read(job);
    const split = entries.flatMap((e) => (e.kind === 'answered' && e.body.parts.split ? [e.body.parts.split] : []));
    expect(split.at(-1)).toEqual({ kind: 'figure', value: '19.1', unit: 'Δ°F', typed: '10.6 c' });
    expect(await seen(shop.desk, 'ines', job)).toContain('19.1 °F (10.6 °C)');
  });
});

test('a note keeps its words: nothing is put beside what a person wrote', async () => {
  await shop.type(metric, 'note The goods are at 46 °F, said the owner');
  expect(await seen(shop.desk, 'ines', metric)).toContain('The goods are at 46 °F, said the owner');
});
