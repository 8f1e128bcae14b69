/** The web chat and back, a new call, hand-over, what a senior does from here, homes, who is who. */
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { issueLink } from '../../engine/desk/index.ts';
import type { Entry } from '../../engine/index.ts';
import { personOf } from '../desk/shop.ts';
import { PEOPLE, PROVES, TO_FIGURES } from '../people.ts';
import { elementsOf, wordsOf } from './fake/person.ts';
import { CREW, type Json, type Message } from './fake/wire.ts';
import { ACCOUNTS, until, Workspace } from './workspace.ts';

let w: Workspace;
beforeAll(async () => {
  // Tomas has not said yet who he is.
  w = await Workspace.open('socket', { tomas: { chats: {} } });
});
afterAll(() => w.close());

const entries = async (job: string): Promise<Entry[]> => (await w.store.read(job)).entries;
const words = (m: Message | undefined): string => (m ? `${m.text}\n${wordsOf(m)}` : '');
const DEAD = [
  'd',
  'psc',
  'yes',
  'pull-out, breaker, no other feed, two legs, outlet',
  'yes',
  'clean, 1 cap, 45+5 6% 440',
  '121 / 0.2 0 0.1 / 0 0 / 121',
  '9.3 / 0.6 0.1 0.5 / 9.3',
];
const TO_WIRES = [...DEAD, 'fuses 0.1 0.1 contacts .1 .1 coil 12.6 t1g ol t2g ol', 'no diagram', 'wires off'];
async function onTheWeb(job: string, lines: readonly string[]): Promise<void> {
  for (const line of lines) {
    const { refusal } = await w.web(job, line);
    if (refusal) throw new Error(`${line}: ${refusal.text}`);
  }
}
const openForm = async (on: Message | 'home', label = 'Answer', by = w.ines): Promise<void> => {
  const open = w.slack.modals.length;
  await by.tap(on, label);
  await until(
    () => w.slack.modals.length > open,
    () => `no form: ${words(by.told.at(-1))}`,
  );
};

describe('the same call here and on the web', () => {
  test('one goes on where the other stopped, and both read the same words', async () => {
    const job = await w.call('Both');
    const thread = await w.thread(job);
    await w.ines.type('d', thread);
    await until(async () => (await w.view(job)).prompt.title.startsWith('What kind'), 'not taken');
    const seen: string[] = [];
    for (const line of ['psc', 'yes', ...DEAD.slice(3)]) {
      const { prompt } = await w.view(job);
      const asked = words(await w.asked(job));
      for (const text of [
        prompt.title,
        ...prompt.body,
        ...prompt.parts.flatMap((p) => ('options' in p ? p.options.map((o) => o.label) : [p.ask])),
      ])
        expect(asked).toContain(text);
      seen.push(prompt.title);
      if (seen.length % 2 === 0) await w.web(job, line);
      else {
        await w.ines.type(line, thread);
        await until(
          async () => (await w.view(job)).prompt.title !== prompt.title,
          () => `"${line}": ${words(w.ines.told.at(-1))}`,
        );
      }
    }
    expect((await w.view(job)).prompt.isolation[0]?.words).toBe('PROVED DEAD');
  });
  test('two people answer at once, one here and one on the web: one is taken, the other is told', async () => {
    const job = await w.call('Race');
    const asked = await w.asked(job);
    const told = w.ines.told.length;
    const { prompt } = await w.view(job);
    const [turn] = await Promise.all([
      w.desk.reply('ruth', job, { kind: 'text', client: w.client(), seq: prompt.seq, text: 'd' }),
      w.ines.tap(asked, 'Send', { option: 'Hum, nothing turns' }),
    ]);
    await w.settled();
    expect((await entries(job)).filter(({ kind }) => kind === 'answered')).toHaveLength(1);
    if (turn.refusal) expect(turn.refusal.code).toBe('stale');
    else {
      await until(() => w.ines.told.length > told, 'nothing was said');
      expect(words(w.ines.told.at(-1))).toContain('This is what stands now.');
    }
    const [taken] = (await entries(job)).filter(({ kind }) => kind === 'answered');
    expect(taken?.by).toBe(turn.refusal ? 'ines' : 'ruth');
  });
});

describe('dispatcher and senior', () => {
  test('a new call is opened in a form and assigned; its thread calls the technician, the channel hears nothing else', async () => {
    expect(await w.dana.command('new')).toEqual({});
    const options = (elementsOf(w.dana.modal.view.blocks as Json[]).find((e) => e.block === 'assign')?.options ??
      []) as Json[];
    expect(JSON.stringify(options)).toContain('Ines Vale');
    const outside = w.slack.messages.filter((m) => m.channel === CREW && !m.thread && !m.to).length;
    expect(await w.dana.submit({ title: 'Elm Street 3: silent <!here>', assign: 'Ines Vale' })).toEqual({});
    await until(
      async () => (await w.desk.jobs('dana')).some(({ title }) => title.startsWith('Elm Street 3')),
      'no call',
    );
    const job = (await w.desk.jobs('dana')).find(({ title }) => title.startsWith('Elm Street 3'))?.job ?? '';
    await w.asked(job);
    const [event] = w.slack.thread(await w.thread(job)).filter((m) => wordsOf(m).includes('Assigned'));
    expect(wordsOf(event as Message)).toContain(`<@${ACCOUNTS.ines}>`);
    expect(w.slack.messages.filter((m) => m.channel === CREW && !m.thread && !m.to).length).toBe(outside + 1);
  });
  test('a call changes hands by the head’s button, and the next one takes it over', async () => {
    await w.store.savePerson(personOf(PEOPLE.tomas, { chats: { slack: ACCOUNTS.tomas } }));
    const job = await w.call('Hands');
    const open = w.slack.modals.length;
    await w.dana.tap(await w.head(job), 'Hand over');
    await until(() => JSON.stringify(w.slack.modals[open]?.view ?? '').includes('To whom'), 'no form');
    expect(await w.dana.submit({ to: 'Tomas Brook: free' })).toEqual({});
    const asked = await w.asked(job);
    expect(wordsOf(asked)).toContain('This job changes hands.');
    await w.tomas.tap(asked, 'I take it over');
    await until(async () => (await w.view(job)).prompt.kind === 'step', 'not taken over');
    await w.store.savePerson(personOf(PEOPLE.tomas));
  });
  test('a senior is told of an emergency with the thread’s address, releases it by two steps, and nobody else can', async () => {
    const job = await w.call('Release');
    await w.ines.type('I got shocked', await w.thread(job));
    await until(async () => (await w.view(job)).prompt.kind === 'emergency', 'no emergency');
    await w.settled();
    const notice = w.ruth.told.findLast((m) => words(m).includes('Release: EMERGENCY')) as Message;
    expect(words(notice)).toContain('|Open the thread>');
    const taps = w.slack.modals.length;
    // Whoever reviews nothing is offered nothing of it, and taking a senior's button opens nothing for them.
    const other = w.dana.told.findLast((m) => words(m).includes('Release: EMERGENCY')) as Message;
    expect(JSON.stringify(other.blocks)).not.toContain('review.release');
    await w.dana.tap(notice, 'Release');
    await until(() => w.slack.modals.length > taps, 'no form');
    expect(await w.dana.submit({ text: 'fine' })).toMatchObject({ response_action: 'errors' });
    await w.ruth.tap(notice, 'Release');
    await until(() => w.slack.modals.length > taps + 1, 'no form');
    expect((await w.view(job)).prompt.kind).toBe('emergency');
    expect(await w.ruth.submit({ text: 'seen on the spot, all clear' })).toEqual({ response_action: 'clear' });
    expect((await entries(job)).some(({ kind }) => kind === 'released')).toBe(true);
  });
  test('a finished call waits for a senior, who sends it back and signs it from here', async () => {
    const job = await w.call('Finished');
    await onTheWeb(job, [...TO_WIRES, 'herm 36.1 fan 5.02 hf 4.4 case ol', ...TO_FIGURES, PROVES]);
    await w.asked(job);
    expect(wordsOf(await w.head(job))).toContain('FINISHED, to be signed');
    const notices = (): Message[] => w.ruth.told.filter((m) => words(m).includes('Finished: finished, to be signed'));
    expect(notices()).toHaveLength(1);
    await openForm(notices()[0] as Message, 'Send back', w.ruth);
    expect(await w.ruth.submit({ text: 'the amps once more' })).toEqual({ response_action: 'clear' });
    await w.settled();
    expect(
      w.slack
        .thread(await w.thread(job))
        .map(words)
        .join('\n'),
    ).toContain('the amps once more');
    await onTheWeb(job, (await w.view(job)).prompt.kind === 'finished' ? [] : [PROVES]);
    await openForm(notices()[0] as Message, 'Sign', w.ruth);
    expect(await w.ruth.submit({})).toEqual({ response_action: 'clear' });
    expect((await entries(job)).at(-1)?.kind).toBe('signed');
    await w.settled();
    expect(wordsOf(await w.head(job))).toContain('SIGNED');
    // It is over for the chat too: no button is left at the head.
    expect(elementsOf((await w.head(job)).blocks)).toEqual([]);
  });
  test('ask and reply', async () => {
    const job = await w.call('Ask');
    const { refusal } = await w.web(job, 'senior');
    expect(refusal).toBeNull();
    await w.settled();
    const notice = w.ruth.told.findLast((m) => words(m).includes('Ask: Raised'));
    expect(w.ruth.told.map(({ text }) => text).at(-1)).toContain('Ask: Raised');
    await openForm(notice as Message, 'Ask', w.ruth);
    await w.ruth.submit({ text: 'what colour is it?' });
    const asked = await w.asked(job);
    expect(wordsOf(asked)).toContain('A senior asks: what colour is it?');
    await w.ines.type('reply black', await w.thread(job));
    await until(async () => (await entries(job)).some(({ kind }) => kind === 'replied'), 'no reply');
  });
});

test('an emergency is said again to each alone until one of them taps that they have seen it', async () => {
  const job = await w.call('Smoke there');
  await w.web(job, 'alarm');
  await w.settled();
  const said = () => w.ruth.told.filter((m) => words(m).includes('Smoke there')).length;
  const before = said();
  expect(before).toBeGreaterThan(0);
  w.offset += 61_000;
  await w.web(job, 'note still here');
  await w.settled();
  expect(said()).toBe(before + 1);
  const notice = w.ruth.told.findLast((m) => words(m).includes('Smoke there'));
  await w.ruth.tap(notice as Message, 'I have seen it');
  await until(
    async () => (await entries(job)).some(({ kind, by }) => kind === 'acknowledged' && by === 'ruth'),
    'not acknowledged',
  );
  w.offset += 61_000;
  await w.web(job, 'note and on');
  await w.settled();
  expect(said()).toBe(before + 1);
});

describe('homes, and who is who', () => {
  test('a home has its person’s calls; a senior’s what needs attention', async () => {
    await w.ines.openHome();
    await until(() => w.ines.home !== undefined, 'no home');
    expect(JSON.stringify(w.ines.home)).toContain('Your calls');
    expect(JSON.stringify(w.ines.home)).not.toContain('Needs attention');
    const call = await w.call('Attention please');
    await w.web(call, 'alarm');
    await w.ruth.openHome();
    await until(() => /To review \([\s\S]*Attention please/.test(JSON.stringify(w.ruth.home)), 'no home');
    // Too late for a form: it is said to her alone, where there is no channel.
    await w.settled();
    const told = w.ruth.told.length;
    await w.ruth.tap('home', 'Release', { trigger: w.slack.trigger(4000) });
    await until(() => w.ruth.told.length > told, 'nothing was said');
    expect(words(w.ruth.told.at(-1))).toContain('Tap it again');
    w.slack.refused.length = 0;
    await openForm('home', 'Release', w.ruth);
    expect(await w.ruth.submit({ text: 'all clear' })).toEqual({ response_action: 'clear' });
  });
  test('an account that is nobody’s yet is tied to whoever the sign-in link belongs to, once', async () => {
    await w.tomas.openHome();
    await until(() => w.tomas.home !== undefined, 'no home');
    expect(JSON.stringify(w.tomas.home)).toContain('Who are you?');
    const link = await issueLink({ store: w.store, clock: w.clock, publicUrl: 'http://localhost:8080' }, 'tomas');
    await openForm('home', 'Paste the link', w.tomas);
    expect(await w.tomas.submit({ link: 'http://localhost:8080/sign-in/nothing' })).toMatchObject({
      response_action: 'errors',
    });
    expect(await w.tomas.submit({ link })).toEqual({});
    await until(() => JSON.stringify(w.tomas.home).includes('Calls of Tomas Brook'), 'still nobody');
    expect(JSON.stringify(await w.nobody.command(`join ${link}`))).toContain('opens nothing');
    expect((await w.desk.person('tomas'))?.chats).toEqual({ slack: ACCOUNTS.tomas });
  });
  test('/nocool: help, jobs, the web, what it doesn’t know', async () => {
    const say = async (text: string): Promise<string> => JSON.stringify(await w.ines.command(text));
    for (const text of ['', 'help', 'x'.repeat(8000), '🧰', 'שלום']) {
      const begun = performance.now();
      expect(await say(text)).toContain('/nocool web');
      expect(performance.now() - begun).toBeLessThan(1000);
    }
    expect(await say('jobs')).toContain('Both: ');
    expect(await say('web')).toMatch(/http:\/\/localhost:8080\/sign-in\/[\w-]{40,}/);
    expect(JSON.stringify(await w.nobody.command('jobs'))).toContain('belongs to nobody');
    const told = w.ines.told.length;
    await w.ines.type('hello', undefined, { channel: `D${w.ines.id.slice(1)}` });
    await until(() => w.ines.told.length > told, 'a word to the bot alone is not answered');
    // Danger that is typed where no call is meant is not raised on any, so it is said at once what to do.
    await w.ines.type('I got shocked', undefined, { channel: `D${w.ines.id.slice(1)}` });
    const alone = (): string => w.ines.told.flatMap((m) => (m.user === w.ines.id ? [] : [words(m)])).at(-1) ?? '';
    await until(() => alone().includes('get away first'), 'nothing was said');
    expect(alone()).toMatch(/get away first[\s\S]*Call 911[\s\S]*in the call’s thread/);
  });
  test('everything was acknowledged in time, and the platform refused nothing', () => {
    expect(Math.max(...w.slack.acks.map(({ ms }) => ms))).toBeLessThan(2_500);
    expect(w.slack.refused).toEqual([]);
  });
});
