/** From a call that is taken to the job on the board, on a real SQLite file: what is kept, found, given out, and to whom it is told. */
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { recordsOf } from '../../engine/desk/dispatch/records.ts';
import { may } from '../../engine/desk/rights.ts';
import { createSheets } from '../../engine/desk/sheets.ts';
import { type News, NoRight, type Turn } from '../../engine/desk/types.ts';
import type { GivenParts } from '../../engine/schema.ts';
import { PEOPLE, type PersonId } from '../people.ts';
import { personOf, Shop } from './shop.ts';

let shop: Shop;
beforeEach(async () => {
  shop = await Shop.open();
});
afterEach(() => shop.close());

const WHO = {
  name: 'Lena Orchard',
  phone: '(555) 014-2233',
  address: 'Brook Terrace 7',
  before: ['new'],
  kind: ['split'],
};
const SIGHT = {
  ...{ 'seen-outdoors#outdoor': ['hum-still'], blower: ['still'], display: ['cooling'], breaker: ['on'] },
  ...{ signs: ['none'], vulnerable: ['infant'], indoor: '96', rh: '65' },
};
async function fill(turn: Turn, given: Readonly<Record<string, string | string[]>>): Promise<Turn> {
  const { job, form, prompt } = turn.view;
  const parts: GivenParts = {};
  for (const part of form?.parts ?? [])
    for (const [name, value] of Object.entries(given))
      if (part.key.endsWith(name.includes('#') ? name : `#${name}`)) parts[part.key] = value;
  const next = await shop.desk.reply('dana', job, { kind: 'answer', client: shop.client(), seq: prompt.seq, parts });
  if (next.refusal) throw new Error(next.refusal.text);
  return next;
}
const take = (training = false): Promise<Turn> => shop.desk.dispatch.take('dana', { client: shop.client(), training });
/** A call up to where it has opened its job. */
async function called(
  who: object = WHO,
  sight: object = SIGHT,
  training = false,
): Promise<{ call: string; job: string }> {
  let turn = await take(training);
  await shop.type(turn.view.job, 'none', 'dana');
  turn = { ...turn, view: await shop.desk.look('dana', turn.view.job) };
  turn = await fill(await fill(turn, { ...WHO, ...who }), { ...SIGHT, ...sight });
  turn = await shop.types(turn.view.job, ['done', 'somebody comes'], 'dana');
  return { call: turn.view.job, job: turn.view.opens ?? '' };
}

describe('a call whose line went dead', () => {
  test('is put away and opens no job, is found while the caller calls again, and goes on where it was', async () => {
    const { view } = await take();
    await shop.type(view.job, 'none', 'dana');
    const turn = await fill({ ...(await shop.type(view.job, 'why', 'dana')) }, WHO);
    const { entries } = await shop.type(view.job, 'stop', 'dana');
    expect(entries).toMatchObject([{ kind: 'paused', body: { safe: {} } }]);
    expect((await shop.desk.dispatch.board('dana')).jobs).toEqual([]);
    const { calls } = await shop.desk.dispatch.known('dana', '555 014');
    expect(calls).toMatchObject([{ job: view.job, state: 'put-away', title: 'Brook Terrace 7' }]);
    expect((await shop.desk.review.queue('ruth')).jobs).toEqual([]);
    const back = await shop.type(view.job, 'go on', 'dana');
    expect(back.view.prompt.title).toBe(turn.view.prompt.title);
    expect((await shop.desk.dispatch.board('dana')).jobs).toMatchObject([{ state: 'taking' }]);
  });

  test('is not put away by whoever takes no calls, nor where a danger was reported', async () => {
    const { view } = await take();
    await expect(shop.type(view.job, 'stop', 'ines')).rejects.toThrow();
    await shop.type(view.job, 'smoke', 'dana');
    expect((await shop.type(view.job, 'stop', 'dana')).refusal).toMatchObject({
      code: 'gate',
      text: expect.stringContaining('A danger was reported'),
    });
  });
});

describe('a call that is taken', () => {
  test('opens a job with what was said, what is likely, what to load; names and numbers beside the record', async () => {
    const { call, job } = await called();
    const view = await shop.desk.look('dana', job);
    expect(view.title).toBe('Brook Terrace 7: The outdoor unit hums and nothing turns');
    expect(view.call).toMatchObject({
      urgency: 'now',
      causes: expect.arrayContaining([{ cause: 'Run capacitor', because: 'The outdoor unit hums and nothing turns' }]),
      certified: false,
    });
    const said = view.ticket.find(({ title }) => title === 'The call, as it was taken')?.says ?? [];
    expect(said).toEqual(
      expect.arrayContaining([
        'Caller: Lena Orchard',
        'Call-back number: (555) 014-2233',
        'Outdoor unit: Hums, nothing turns',
      ]),
    );
    expect(view.prompt.body[0]).toMatch(/^From the call, likely: Run capacitor/);
    const records = JSON.stringify([(await shop.store.read(job)).entries, (await shop.store.read(call)).entries]);
    for (const words of ['Orchard', '014-2233', '0142233', 'Brook']) expect(records).not.toContain(words);
  });
  test('opens it once, whoever looks, and also where the answer to its end was lost before', async () => {
    const { call, job } = await called();
    const again = await Promise.all([shop.desk.look('ruth', call), (await shop.another()).look('dana', call)]);
    expect(again.map(({ opens }) => opens)).toEqual([job, job]);
    expect((await shop.desk.dispatch.board('dana')).jobs.map((card) => card.job)).toEqual([job]);
  });
  test('as training opens a training job, and no unit of the shop', async () => {
    const { job } = await called({}, {}, true);
    expect((await shop.desk.look('dana', job)).training).toBe(true);
    expect(await shop.store.sheets('equipment')).toEqual([]);
  });
  test('of a unit nobody knew makes one, found by its address at the next call, with what was fitted', async () => {
    const { job } = await called();
    const [unit] = await shop.store.sheets('equipment');
    const sheet = { name: 'Brook Terrace 7', facts: {}, history: [] };
    expect(unit?.body).toEqual(sheet);
    const at = '2026-06-01T12:00:00.000Z';
    const past = { at, job, what: 'fitted' as const, item: 'run capacitor', herm: '40.2', fan: '7.54' };
    await createSheets(shop.store).saveEquipment(unit?.id ?? '', { ...sheet, history: [past] });
    const known = await shop.desk.dispatch.known('dana', 'brook ter');
    expect(known.units).toEqual([
      { id: unit?.id, name: 'Brook Terrace 7', history: ['2026-06-01: run capacitor fitted, 40.2 and 7.54\u2009µF'] },
    ]);
    const next = await take();
    const picked = await shop.desk.dispatch.pick('dana', next.view.job, unit?.id ?? '', 'p1');
    expect(picked.entries.map(({ kind }) => kind)).toEqual(['set']);
    await shop.desk.dispatch.pick('dana', next.view.job, unit?.id ?? '', 'p1');
    expect((await shop.store.read(next.view.job)).entries.length).toBe(3);
  });
  test('with a hazard opens an emergency that a senior releases', async () => {
    const turn = await take();
    const told = await shop.types(turn.view.job, ['smoke', 'told'], 'dana');
    const { view } = await fill(told, WHO);
    const job = view.opens ?? '';
    const card = (await shop.desk.dispatch.board('dana')).jobs[0];
    expect(card).toMatchObject({
      job,
      state: 'emergency',
      alarm: { hazard: 'smoke', seen: [] },
      urgency: { level: 'now' },
    });
    await shop.desk.reply('ruth', job, {
      kind: 'command',
      client: 'r',
      name: 'release',
      text: 'a barbecue',
    });
    expect((await shop.desk.look('ruth', job)).prompt.kind).toBe('step');
  });
  test('is found by number, name, place and verdict, however the number is spaced, until it is forgotten', async () => {
    const { call, job } = await called({}, { unit: 'Kestrel AC-36, serial 88-4711X' });
    await shop.type(job, 'note the plate says 90-1234Z', 'ruth');
    const found = async (words: string) => (await shop.desk.dispatch.find('ruth', words)).map((card) => card.job);
    for (const words of ['5550142233', '555 014 22', 'Orch', 'terrace brook', '88-4711x', 'kestrel ac', '90 1234z'])
      expect(await found(words), words).toEqual([job]);
    expect(await found('nowhere')).toEqual([]);
    expect((await shop.desk.dispatch.known('dana', '555 014')).calls.map((card) => card.job)).toEqual([job]);
    expect((await recordsOf(shop.store, call)).sort()).toEqual([call, job].sort());
    for (const id of await recordsOf(shop.store, job)) await shop.store.forget({ job: id });
    expect([await found('orchard'), (await shop.desk.dispatch.known('dana', 'brook')).units]).toEqual([[], []]);
  });
});

describe('who is vulnerable at the address', () => {
  const there = async (job: string) => (await shop.desk.look('ines', job)).call?.vulnerable;
  test('is told to whoever goes, as it was chosen, and on the ticket; nobody named is nothing told', async () => {
    const { job } = await called({}, { vulnerable: ['infant', 'condition'] });
    await shop.desk.dispatch.assign('dana', job, 'ines', shop.client());
    expect(await there(job)).toBe('Infant, Medical condition');
    const lines = (await shop.desk.look('ines', job)).ticket.flatMap(({ says }) => says);
    expect(lines).toContain('Vulnerable there: Infant, Medical condition');
    const nobody = (await called({ address: 'Late Lane 1' }, { vulnerable: ['none'] })).job;
    await shop.desk.dispatch.assign('dana', nobody, 'ines', shop.client());
    expect(await there(nobody)).toBeNull();
  });

  test('stands beside the record and not in it: it can be removed, finds no call, and is no report’s', async () => {
    const { job } = await called();
    await shop.desk.dispatch.assign('dana', job, 'ines', shop.client());
    expect(JSON.stringify((await shop.store.read(job)).entries)).not.toMatch(/infant/i);
    expect(await shop.desk.dispatch.find('ruth', 'infant')).toEqual([]);
    const outside = await shop.desk.reply('tomas', job, { kind: 'text', client: 'w', seq: 1, text: 'gas smell' });
    expect(JSON.stringify(outside)).not.toMatch(/infant/i);
    await shop.store.forget({ job });
    const other = await shop.another();
    expect((await other.look('ines', job)).call?.vulnerable).toBe('(removed)');
  });
});

describe('a call that is forgotten while a server runs', () => {
  const removed = 'Bellwether Terrace 77';
  test.each([
    ['looks at the board', async () => void (await shop.desk.dispatch.board('dana'))],
    ['takes an answer on it', async (job: string) => void (await shop.type(job, 'c', 'ines'))],
  ])('that %s: nothing that was removed is written down again', async (_, happens) => {
    const { call, job } = await called({ address: removed });
    await shop.desk.dispatch.assign('dana', job, 'ines', shop.client());
    for (const id of [call, job]) await shop.desk.look('ruth', id);
    for (const id of await recordsOf(shop.store, job)) await shop.store.forget({ job: id });
    await happens(job);
    const rows = JSON.stringify([await shop.store.board(100), await shop.store.queue(null, 100)]);
    expect(rows).not.toContain('Bellwether');
    expect(JSON.stringify(await shop.desk.look('ruth', job))).not.toContain('Bellwether');
  });
});

describe('the board', () => {
  test('has the most urgent first, and who is free; low stock; training jobs as such', async () => {
    const soon = await called({ address: 'Late Lane 1' }, { vulnerable: ['none'], indoor: '74' });
    const now = await called({ address: 'Hot Hill 2' });
    const plain = await shop.call('tomas', 'By hand');
    await createSheets(shop.store).saveTruck('t1', {
      name: 'Van 1',
      items: [
        {
          id: 'a',
          name: 'Contactor',
          kind: 'other',
          sections: [],
          volts: null,
          range: null,
          protection: null,
          life: null,
          count: 1,
          low: 1,
        },
        {
          id: 'b',
          name: 'Strap',
          kind: 'other',
          sections: [],
          volts: null,
          range: null,
          protection: null,
          life: null,
          count: 2,
          low: 1,
        },
        {
          ...{ id: 'c', name: 'Drawer E', kind: 'start', sections: [], volts: '250', protection: null, life: null },
          ...{ range: { low: '161', high: '193' }, count: 0, low: 1 },
        },
      ],
    });
    await shop.type(plain, 'd', 'tomas');
    const board = await shop.desk.dispatch.board('dana');
    expect(board.jobs.map((card) => card.job)).toEqual([now.job, soon.job, plain]);
    expect(board.jobs[0]?.urgency?.why).toMatch(/feels like 121.*one step up: now/);
    expect(board.crew.map(({ id, available, on }) => [id, available, on])).toEqual([
      ['ines', true, null],
      ['tomas', false, plain],
    ]);
    expect(board.low).toEqual([
      { truck: 'Van 1', item: 'Contactor', left: 1, low: 1 },
      { truck: 'Van 1', item: 'start 161 to 193\u2009µF 250\u2009V, Drawer E', left: 0, low: 1 },
    ]);
  });
  test('gives a call to somebody; given again before it is begun, the next one accepts', async () => {
    const { job } = await called();
    await shop.desk.dispatch.assign('dana', job, 'ines', 'a1');
    await shop.desk.dispatch.assign('dana', job, 'ines', 'a1');
    expect((await shop.desk.look('ines', job)).prompt.kind).toBe('step');
    expect((await shop.desk.dispatch.board('dana')).crew[0]?.day).toEqual([job]);
    await shop.desk.dispatch.assign('dana', job, 'tomas', 'a2');
    expect((await shop.desk.look('tomas', job)).prompt.kind).toBe('taking-over');
  });
  test('a technician sees their own day and nobody else’s', async () => {
    const [mine, other] = [await shop.call('ines', 'Mine'), await shop.call('tomas', 'Other')];
    const board = await shop.desk.dispatch.board('ines');
    expect([board.jobs.map((card) => card.job), board.crew.map(({ id }) => id), board.low]).toEqual([
      [mine],
      ['ines'],
      [],
    ]);
    expect((await shop.desk.dispatch.find('ines', 'other')).map((card) => card.job)).toEqual([]);
    expect((await shop.desk.dispatch.find('dana', 'other')).map((card) => card.job)).toEqual([other]);
  });
  test('is told of what happens: everything to whoever sees the board, their own to the others', async () => {
    const heard: Record<string, News[]> = { dana: [], tomas: [] };
    const stops = await Promise.all(
      Object.entries(heard).map(([who, news]) => shop.desk.dispatch.watch(who, (one) => news.push(one))),
    );
    const mine = await shop.call('tomas');
    const other = await shop.call('ines');
    await expect.poll(() => heard.tomas?.length).toBeGreaterThan(0);
    expect(new Set(heard.dana?.map(({ job }) => job))).toEqual(new Set([mine, other]));
    expect(new Set(heard.tomas?.map(({ job }) => job))).toEqual(new Set([mine]));
    for (const stop of stops) stop();
  });
});

describe('an emergency', () => {
  test('is told to seniors, dispatchers and owners until each has seen it, and says who has', async () => {
    const job = await shop.call('ines');
    await shop.type(job, 'smoke from the unit');
    const alarms = (by: PersonId) => shop.desk.dispatch.alarms(by);
    for (const by of ['ruth', 'dana', 'otto'] as const)
      expect(await alarms(by)).toMatchObject([{ job, hazard: 'smoke', by: 'Ines Vale', seen: [], mine: false }]);
    expect(await alarms('tomas')).toEqual([]);
    await shop.desk.reply('dana', job, { kind: 'command', client: 's', name: 'seen' });
    expect(await alarms('dana')).toMatchObject([{ seen: ['Dana Quill'], mine: true }]);
    expect(await alarms('ruth')).toMatchObject([{ mine: false }]);
    expect((await shop.store.read(job)).entries.at(-1)).toMatchObject({ kind: 'acknowledged', by: 'dana' });
    await shop.desk.reply('ruth', job, { kind: 'command', client: 'r', name: 'release', text: 'steam' });
    expect(await alarms('dana')).toEqual([]);
  });
});

describe('rights, as the table has them', () => {
  const tries: readonly [Parameters<typeof may>[1], (by: string) => Promise<unknown>][] = [
    ['take-call', (by) => shop.desk.dispatch.take(by, { client: shop.client() })],
    ['take-call', (by) => shop.desk.dispatch.known(by, 'brook')],
    ['take-call', (by) => shop.desk.dispatch.pick(by, 'nowhere', 'none', 'c')],
    ['assign', (by) => shop.desk.dispatch.assign(by, 'nowhere', 'ines', 'c')],
  ];
  test.each(tries.map(([use, attempt], i) => [`${use} ${i}`, use, attempt] as const))('%s', async (_, use, attempt) => {
    for (const { id, roles } of Object.values(PEOPLE)) {
      const allowed = may(roles, use, { own: false, holder: false, gate: false, reason: false, participates: false });
      const refused = await attempt(id).then(
        () => false,
        (error: unknown) => error instanceof NoRight,
      );
      expect(`${id} ${!refused}`).toBe(`${id} ${allowed}`);
    }
  });
  test('a technician answers no question of a call, and does not see it', async () => {
    const { view } = await take();
    await expect(shop.desk.look('ines', view.job)).rejects.toThrow(NoRight);
    await shop.store.savePerson(personOf(PEOPLE.tomas, { roles: ['technician', 'dispatcher'] }));
    expect((await shop.type(view.job, 'none', 'tomas')).refusal).toBeNull();
  });
});
