/** A call with the caller on the line, in one window: the same questions as on the web, nothing typed lost, who goes. */
import { setTimeout as sleep } from 'node:timers/promises';
import { afterAll, beforeAll, beforeEach, describe, expect, test } from 'vitest';
import type { JobView, Turn } from '../../engine/desk/index.ts';
import type { Entry, GivenParts, Prompt } from '../../engine/index.ts';
import { elementsOf, wordsOf } from './fake/person.ts';
import type { View } from './fake/platform.ts';
import { CREW, type Json, type Message } from './fake/wire.ts';
import { ACCOUNTS, until, Workspace } from './workspace.ts';

let w: Workspace;
beforeAll(async () => {
  w = await Workspace.open('socket', { tomas: { certified: true } });
});
afterAll(() => w.close());

const words = (m: Message | undefined): string => (m ? `${m.text}\n${wordsOf(m)}` : '');
const shows = (): string => wordsOf({ blocks: w.dana.modal.view.blocks as Json[] });
const meant = (of: View = w.dana.modal): string => JSON.parse(String(of.view.private_metadata)).job as string;
const fields = (): string[] =>
  (w.dana.modal.view.blocks as Json[]).flatMap((b) => (b.type === 'input' ? [String(b.block_id)] : []));
const says = async (text: string): Promise<void> =>
  until(
    () => w.slack.modals.some(({ closed }) => !closed) && shows().includes(text),
    () => `the window does not say "${text}": ${w.slack.modals.some(({ closed }) => !closed) ? shows() : ''}`,
  );
/** A key of the form that ends so. */
const key = (name: string): string =>
  fields().find((field) => field === name || field.endsWith(name.includes('#') ? name : `#${name}`)) ??
  `(no ${name} in ${fields().join(' ')})`;
const keyed = (values: Record<string, string | string[]>): Record<string, string | string[]> =>
  Object.fromEntries(Object.entries(values).map(([name, value]) => [key(name), value]));
/** Sends the form that stands; the next one stands in the same window. */
async function send(values: Record<string, string | string[]>): Promise<Json> {
  const ack = await w.dana.submit(keyed(values));
  expect(ack.response_action, JSON.stringify(ack).slice(0, 400)).toBe('update');
  return ack;
}
const begin = async (): Promise<string> => {
  for (const view of w.slack.modals) view.closed = true;
  expect(await w.dana.command('take')).toEqual({});
  await says('Is any of this happening?');
  return meant();
};
const entries = async (job: string): Promise<Entry[]> => (await w.store.read(job)).entries;
const outside = (): number => w.slack.messages.filter((m) => m.channel === CREW && !m.thread && !m.to).length;

const WHO = {
  ...{ name: 'Lena Orchard', phone: '555 0142', address: 'Brook Terrace 7' },
  ...{ before: 'No, a new call', kind: 'Split, a unit outdoors and one indoors' },
};
const SIGHT = {
  ...{ 'seen-outdoors#outdoor': 'Hums, nothing turns', blower: 'Blows as always', display: 'On, calls for cooling' },
  ...{ breaker: 'On', signs: ['Nothing else'], vulnerable: ['Infant'], indoor: '96', rh: '65' },
};
/** The same answers by their ids, as the web's form sends them. */
const onTheWeb = (prompt: Prompt, said: Record<string, string | string[]>): GivenParts =>
  Object.fromEntries(
    prompt.parts.flatMap((part): [string, string | string[]][] => {
      const name = Object.keys(said).find(
        (one) => part.key === one || part.key.endsWith(one.includes('#') ? one : `#${one}`),
      );
      if (name === undefined) return [];
      const given = said[name] ?? '';
      if (!('options' in part)) return [[part.key, given]];
      return [[part.key, [given].flat().map((label) => part.options.find((o) => o.label === label)?.id ?? label)]];
    }),
  );
const said = (list: readonly Entry[]): unknown[] =>
  list
    .filter(({ kind }) => kind !== 'opened' && kind !== 'set')
    .map(({ kind, body }) => [kind, JSON.parse(JSON.stringify(body).replace(/"(ref|hash)":"[^"]*"/g, '"$1":""'))]);

describe('a call that is taken in the chat', () => {
  let call: string;
  let job: string;
  let before: number;
  test('asks what the web asks, form for form, and leaves the same record', async () => {
    before = outside();
    call = await begin();
    const web = async (view: JobView, answers: Record<string, string | string[]>): Promise<Turn> => {
      const asked = view.form ?? view.prompt;
      // Every part of the web's form is a field of the window, by the same words.
      expect(fields()).toEqual(asked.parts.map((part) => part.key));
      for (const part of asked.parts) expect(shows()).toContain(part.ask);
      const parts = onTheWeb(asked, answers);
      const turn = await w.desk.reply('dana', view.job, { kind: 'answer', client: w.client(), seq: asked.seq, parts });
      expect(turn.refusal).toBeNull();
      return turn;
    };
    let { view } = await w.desk.dispatch.take('dana', { client: w.client() });
    for (const answers of [
      { hazard: ['None of these'] },
      WHO,
      SIGHT,
      { did: ['All of it'] },
      { told: ['Somebody comes, and roughly when'] },
    ] as Record<string, string | string[]>[]) {
      view = (await web(view, answers)).view;
      await send(answers);
      expect(shows()).toContain(view.opens === null ? (view.form ?? view.prompt).title : 'Who goes');
    }
    expect(view.opens).not.toBeNull();
    expect(said(await entries(call))).toEqual(said(await entries(view.job)));
    job = (await w.desk.look('dana', call)).opens ?? '';
    expect(job).not.toBe('');
  });
  test('says at its end how soon and why, what is likely, what to load and what was told, and who fits best', async () => {
    expect(shows()).toMatch(/How soon: now\. Indoors 96.°F at 65.% feels like 121.°F/);
    expect(shows()).toMatch(/Likely: Run capacitor \(The outdoor unit hums and nothing turns\)/);
    expect(shows()).toContain('Load: ');
    expect(shows()).toContain('The caller was told: Somebody comes, and roughly when.');
    expect(await w.dana.submit({ to: 'Ines Vale: free' })).toEqual({});
    await until(async () => (await w.view(job)).ticket.some(({ kind }) => kind === 'assigned'), 'not assigned');
  });
  test('its card stands in the crew’s channel, alone, with no word of the caller’s own; the technician is called by name', async () => {
    await w.asked(job);
    await w.settled();
    const card = words(await w.head(job));
    for (const text of [
      'How soon: now.',
      'Likely: Run capacitor',
      'Load: ',
      'The caller was told: ',
      'Crew: Ines Vale',
    ])
      expect(card).toContain(text);
    expect(w.slack.messages.map(words).join('\n')).not.toMatch(/Orchard|0142/);
    const assigned = w.slack.thread(await w.thread(job)).find((m) => wordsOf(m).includes('Assigned'));
    expect(wordsOf(assigned as Message)).toContain(`<@${ACCOUNTS.ines}>`);
    // Two calls ended, here and on the web: two cards, and nothing while they were taken.
    expect(outside()).toBe(before + 2);
  });
});

describe('nothing that was typed is lost', () => {
  let call: string;
  beforeEach(async () => {
    call = await begin();
    await send({ hazard: ['None of these'] });
  });
  test('a window that was put away opens again as it was, from the message or from the home', async () => {
    await w.dana.enter(keyed({ name: 'Pat Rowan', phone: '555 0177', kind: 'Heat pump' }));
    const told = w.dana.told.length;
    await w.dana.dismiss();
    await until(() => w.dana.told.length > told, 'nothing was said');
    expect(words(w.dana.told.at(-1))).toContain('What you typed is kept.');
    await w.dana.tap(w.dana.told.at(-1) as Message, 'Go on with the call');
    await says('Call-back number');
    const values = elementsOf(w.dana.modal.view.blocks as Json[]).map((e) => e.initial_value ?? e.initial_option);
    expect(values).toEqual(expect.arrayContaining(['Pat Rowan', '555 0177']));
    expect(JSON.stringify(values)).toContain('Heat pump');
    expect((await entries(call)).filter(({ kind }) => kind === 'answered')).toHaveLength(1);
  });
  test('what is wrong stands at its field and the rest stays', async () => {
    await send(WHO);
    const ack = await w.dana.submit(keyed({ ...SIGHT, indoor: 'hot' }));
    expect(Object.keys(ack.errors as Json)).toEqual([key('indoor')]);
    // Only what was wrong is filled in anew.
    await send({ indoor: '96' });
  });
  test('others went on meanwhile: what was typed is said, with what stands now', async () => {
    await w.dana.enter(keyed({ name: 'Pat Rowan', kind: 'Heat pump' }));
    const { form } = await w.desk.look('ruth', call);
    const parts = onTheWeb(form as Prompt, { ...WHO, before: 'No, a new call' });
    await w.desk.reply('ruth', call, { kind: 'answer', client: w.client(), seq: form?.seq ?? 0, parts });
    await send({ phone: '555 0199', address: 'Elsewhere 1', before: 'No, a new call' });
    expect(shows()).toMatch(
      /The questions have changed meanwhile[\s\S]*Name: Pat Rowan[\s\S]*Kind of system: Heat pump/,
    );
    expect(shows()).toContain('Outdoor unit');
    expect((await entries(call)).filter(({ by }) => by === 'ruth').length).toBeGreaterThan(3);
    await send(SIGHT);
    expect(shows()).not.toContain('Pat Rowan');
  });
  test('the window can’t be drawn: the answer is kept, and it goes on from a message', async () => {
    w.slack.trouble('views.update', { status: 429, retryAfter: 1 }, { status: 503 }, { reset: true });
    const told = w.dana.told.length;
    await w.dana.dismiss();
    await until(() => w.dana.told.length > told, 'nothing was said');
    await w.dana.tap(w.dana.told.at(-1) as Message, 'Go on with the call');
    await until(() => words(w.dana.told.at(-1)).includes('could not be drawn. Nothing is lost.'), 'not said');
    await w.dana.tap(w.dana.told.at(-1) as Message, 'Go on with the call');
    await says('Call-back number');
  });
  test('a danger in words beside something that is wrong: the alarm goes out at once, and what was typed is said', async () => {
    await send(WHO);
    await send({ ...SIGHT, indoor: 'hot', said: 'there is smoke coming out of it now' });
    expect(shows()).toMatch(/^:octagonal_sign: \*DANGER:\* Emergency\. Tell the caller/);
    expect((await entries(call)).some(({ kind }) => kind === 'alarmed')).toBe(true);
    // Nobody is asked to check anything any more: what they had seen is said, so that it can be noted.
    expect(shows()).toMatch(/The questions have changed meanwhile[\s\S]*Indoors: hot\n[\s\S]*Humidity: 65/);
    await send({ ok: 'Told' });
    expect(shows()).not.toContain('Humidity: 65');
    expect((await entries(call)).filter(({ kind }) => kind === 'alarmed')).toHaveLength(1);
  });
  test('the bot is started anew while a form stands open: what is typed there is looked up, kept and taken', async () => {
    await w.restart();
    await w.dana.enter(keyed({ name: 'Lena Orchard', address: 'Brook Terr' }));
    await says('It is this unit');
    await w.dana.dismiss();
    await until(() => words(w.dana.told.at(-1)).includes('What you typed is kept.'), 'nothing was said');
    await w.dana.tap(w.dana.told.at(-1) as Message, 'Go on with the call');
    await says('Call-back number');
    expect(elementsOf(w.dana.modal.view.blocks as Json[]).map((e) => e.initial_value)).toContain('Brook Terr');
    await w.restart();
    const ack = await w.dana.submit(keyed({ ...WHO, name: 'Lena Orchard' }));
    expect(ack.response_action).toBe('update');
    expect(shows()).toContain('Outdoor unit');
    expect(shows()).not.toContain('Not taken');
  });
  test('the database can’t write: it is said at the field, the form stays, and sent again it is taken', async () => {
    await w.locked(async () => {
      const ack = await w.dana.submit(keyed(WHO));
      expect(Object.values(ack.errors as Json)).toEqual(['Nothing was kept. Send it again.']);
    });
    await send({});
    expect(shows()).toContain('Outdoor unit');
  });
  test('the desk takes longer than the platform waits: a window that waits stands there, then the next form', async () => {
    const reply = w.desk.reply;
    w.desk.reply = async (...all) => {
      await sleep(2_400);
      return reply(...all);
    };
    const ack = await w.dana.submit(keyed(WHO)).finally(() => {
      w.desk.reply = reply;
    });
    expect(JSON.stringify(ack)).toContain('One moment.');
    await says('Outdoor unit');
    expect(w.slack.acks.at(-1)?.ms).toBeLessThan(2_500);
  });
  test('the same Send delivered twice counts once, and both times the next form stands there', async () => {
    const copy = structuredClone(w.dana.modal);
    const acks = await Promise.all([w.dana.submit(keyed(WHO)), w.dana.submit(keyed(WHO), copy)]);
    expect(acks.map(({ response_action }) => response_action)).toEqual(['update', 'update']);
    for (const { view } of acks) expect(JSON.stringify(view)).toContain('Outdoor unit');
    const answered = (await entries(call)).flatMap((e) => (e.kind === 'answered' ? [e.body.place] : []));
    expect(new Set(answered).size).toBe(answered.length);
  });
  test('the line is gone: it is put away, opens nothing, and is found when they call again', async () => {
    await send(WHO);
    await w.dana.tap(w.dana.modal, 'Line is gone: put it away');
    await says('Put away. Nothing was opened.');
    await begin();
    await send({ hazard: ['None of these'] });
    await w.dana.enter(keyed({ phone: '555 0142' }));
    await says('Put away before its end');
    const row = elementsOf(w.dana.modal.view.blocks as Json[]).find((e) => e.value === call);
    expect(row).toBeDefined();
    await w.dana.tap(w.dana.modal, 'Go on with that one');
    await says('Outdoor unit');
    expect(meant()).toBe(call);
  });
});

describe('what the shop knows already', () => {
  test('an open call of the same caller, and the unit with its history, while it is typed; picked by one tap', async () => {
    await begin();
    await send({ hazard: ['None of these'] });
    await w.dana.enter(keyed({ name: 'Lena' }));
    await w.dana.enter(keyed({ address: 'Brook Terr' }));
    await says('It is this unit');
    expect(shows()).toMatch(/Open already: Brook Terrace 7/);
    expect(shows()).toContain('Brook Terrace 7\nNothing on record.');
    await w.dana.tap(w.dana.modal, 'It is this unit');
    await says('✓ This unit');
    // What was typed stayed in its field, and the form that follows is taken.
    await send({ ...WHO, before: 'No, a new call' });
    expect(shows()).toContain('Outdoor unit');
    const set = (await entries(meant())).find((e) => e.kind === 'set' && e.body.what === 'equipment');
    expect(set).toBeDefined();
  });
  test('the same trouble is open: no second call, and it is said what to tell the caller', async () => {
    await begin();
    await send({ hazard: ['None of these'] });
    await send({ ...WHO, before: 'Yes, the same trouble' });
    expect(shows()).toMatch(/Called again about an open call[\s\S]*Tell the caller how it stands/);
  });
});

test('a danger comes first: nobody is asked to check anything, the senior is told, the card begins with it', async () => {
  const call = await begin();
  const told = w.ruth.told.length;
  await send({ hazard: ['Smoke', 'Sparks'] });
  expect(shows()).toMatch(/^:octagonal_sign: \*DANGER:\* Emergency\. Tell the caller/);
  await until(() => w.ruth.told.length > told, 'no senior was told');
  await send({ ok: 'Told' });
  await send({ ...WHO, address: 'Mill Lane 2' });
  expect(shows()).toMatch(/^:octagonal_sign: \*DANGER:\*/);
  const job = (await w.desk.look('dana', call)).opens ?? '';
  await w.settled();
  const card = await w.head(job);
  expect(wordsOf(card)).toMatch(/^DANGER: /);
  expect(card.text).toMatch(/^DANGER: /);
  expect(words(card)).toMatch(/EMERGENCY[\s\S]*How soon: now\./);
  await w.web(job, 'release seen to', 'ruth');
});

test('whoever takes no calls is told so; a tap that came too late begins nothing', async () => {
  const calls = async (): Promise<number> => (await w.store.jobs()).length;
  const before = await calls();
  await w.ines.command('take');
  await says('Calls are taken by a dispatcher');
  await w.dana.openHome();
  await until(() => JSON.stringify(w.dana.home).includes('Take a call'), 'no home');
  const told = w.dana.told.length;
  await w.dana.tap('home', 'Take a call', { trigger: w.slack.trigger(4_000) });
  await until(() => w.dana.told.length > told, 'nothing was said');
  expect(words(w.dana.told.at(-1))).toContain('nothing was begun. Tap it again.');
  expect(await calls()).toBe(before);
  w.slack.refused.length = 0;
});

test('where the refrigerant is likely, whoever is certified stands first on the card, with the reason', async () => {
  const call = await begin();
  await send({ hazard: ['None of these'] });
  await send({ ...WHO, kind: 'Heat pump', address: 'Orchard Row 5' });
  await send({
    ...SIGHT,
    'seen-outdoors#outdoor': 'Runs as always',
    signs: ['Ice on pipes or coil'],
    vulnerable: ['Nobody'],
  });
  await send({ did: ['All of it'] });
  await send({ told: ['Cooling off, fan on, to thaw'] });
  const job = (await w.desk.look('dana', call)).opens ?? '';
  await w.dana.dismiss();
  await w.settled();
  const card = await w.head(job);
  expect(words(card)).toContain('Refrigerant is likely: a certified person should go.');
  await w.dana.tap(card, 'Who goes');
  await says('Who goes');
  const options = elementsOf(w.dana.modal.view.blocks as Json[]).flatMap((e) => (e.options ?? []) as Json[]);
  expect(options.map((o) => (o.text as Json).text)).toEqual([
    'Tomas Brook: free, certified',
    expect.stringMatching(/^Ines Vale: .*not certified, and refrigerant is likely$/),
  ]);
  await w.dana.submit({});
  await until(async () => (await w.view(job)).ticket.some(({ kind }) => kind === 'assigned'), 'not assigned');
  await until(async () => words(await w.head(job)).includes('Crew: Tomas Brook'), 'the card says nobody');
  // A technician gives out nothing.
  const open = w.slack.modals.length;
  await w.ines.tap(await w.head(job), 'Hand over');
  await until(() => JSON.stringify(w.slack.modals[open]?.view ?? '').includes('To whom'), 'no form');
  const ack = await w.ines.submit({ to: 'Tomas Brook' });
  expect(JSON.stringify(ack)).toMatch(/errors/);
});

test('the platform refused nothing, and everything was acknowledged in time', () => {
  expect(Math.max(...w.slack.acks.map(({ ms }) => ms))).toBeLessThan(2_500);
  expect(w.slack.refused).toEqual([]);
});
