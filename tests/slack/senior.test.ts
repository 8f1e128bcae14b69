/** What a senior has in the chat: the queue by risk, kept as things stand; what waits for their word; and to whom low stock is told. */
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { createSheets } from '../../engine/desk/sheets.ts';
import type { Entry } from '../../engine/index.ts';
import { DEFAULT_SETTINGS } from '../../engine/memory.ts';
import { personOf } from '../desk/shop.ts';
import { PEOPLE, plate, stocked, TO_FIGURES, TO_READINGS } from '../people.ts';
import { textsIn } from './fake/limits.ts';
import { elementsOf, wordsOf } from './fake/person.ts';
import type { Json, Message } from './fake/wire.ts';
import { ACCOUNTS, until, Workspace } from './workspace.ts';

let w: Workspace;
beforeAll(async () => {
  w = await Workspace.open();
});
afterAll(() => w.close());

const words = (m: Message | undefined): string => (m ? `${m.text}\n${wordsOf(m)}` : '');
const entries = async (job: string): Promise<Entry[]> => (await w.store.read(job)).entries;
const homeWords = (of = w.ruth): string => textsIn(of.home?.blocks ?? []).join('\n');
const published = (account: string): number =>
  w.slack.called('views.publish').filter(({ args }) => args.user_id === account).length;
async function lines(job: string, ...said: string[]): Promise<void> {
  for (const line of said) {
    const { refusal } = await w.web(job, line);
    if (refusal) throw new Error(`${line}: ${refusal.text}`);
  }
}
const opens = async (tap: () => Promise<unknown>, by = w.ruth): Promise<void> => {
  const before = w.slack.modals.length;
  await tap();
  await until(
    () => w.slack.modals.length > before && !JSON.stringify(w.slack.modals.at(-1)?.view).includes('One moment.'),
    () => `no window: ${words(by.told.at(-1))}`,
  );
};
const NO_LOCK = ['d', 'psc', 'yes', 'pull-out, breaker, no other feed, two legs, outlet', 'no lock fits'];

describe('the home of a senior', () => {
  let awaited: string;
  let smoke: string;
  test('holds the queue in its order, each with what needs attention', async () => {
    await w.store.saveSettings({ ...DEFAULT_SETTINGS, tagWithExtraMeasure: false });
    awaited = await w.call('Elm Row 1: no lock');
    await lines(awaited, ...NO_LOCK);
    await w.store.saveSettings(DEFAULT_SETTINGS);
    smoke = await w.call('Elm Row 2: smoke');
    await lines(smoke, 'd', 'smoke from the unit');
    await w.ruth.openHome();
    await until(() => homeWords().includes('To review (2)') && homeWords().includes('EMERGENCY'), 'no home');
    const queue = (await w.desk.review.queue('ruth')).jobs;
    expect(queue.map(({ job }) => job)).toEqual([smoke, awaited]);
    const at = queue.map(({ title }) => homeWords().indexOf(title));
    expect(at).toEqual([...at].sort((a, b) => a - b));
    for (const { attention } of queue) {
      expect(attention.length).toBeGreaterThan(0);
      for (const { head } of attention) expect(homeWords()).toContain(`• ${head}: `);
    }
  });
  test('moves by itself as a call goes on, is drawn once for what comes together, and not where nothing shows', async () => {
    const job = await w.call('Elm Row 3: quiet');
    await until(() => homeWords().includes('Elm Row 3'), 'the home stands still');
    await w.settled();
    const before = published(ACCOUNTS.ruth);
    for (let n = 0; n < 40; n++) await w.web(job, `note number ${n}`);
    await lines(job, 'd');
    await until(() => /Elm Row 3[\s\S]*What kind of unit is it\?/.test(homeWords()), 'the home stands still');
    // Forty notes show nothing there. Its thread's address does, which it has by now, and so does the answer.
    expect(published(ACCOUNTS.ruth) - before).toBeLessThanOrEqual(2);
    // Whoever watches over calls has theirs kept too; a technician only once they have looked at it.
    expect(published(ACCOUNTS.dana)).toBeGreaterThan(0);
    expect(published(ACCOUNTS.ines)).toBe(0);
  });
  test('waits where the platform says so, and is drawn then as things stand', async () => {
    w.slack.trouble('views.publish', { status: 429, retryAfter: 1 });
    const begun = Date.now();
    const job = await w.call('Elm Row 4: limit');
    await until(() => homeWords().includes('Elm Row 4'), 'the home stands still');
    expect(Date.now() - begun).toBeGreaterThanOrEqual(950);
    await lines(job, 'note done');
  });
  test('opens a call as the review desk has it, with a link that signs in there; a word from it ends both windows', async () => {
    const look = elementsOf(w.ruth.home?.blocks as Json[]).find(({ action_id }) => action_id === `look.${smoke}`);
    expect(look).toBeDefined();
    await opens(() => w.ruth.tap('home', 'Look'));
    const seen = wordsOf({ blocks: w.ruth.modal.view.blocks as Json[] });
    expect(seen).toMatch(/^:octagonal_sign: \*DANGER:\*/);
    expect(seen).toMatch(/Elm Row 2: smoke[\s\S]*Needs attention:[\s\S]*• Hazard: Emergency, smoke/);
    const buttons = elementsOf(w.ruth.modal.view.blocks as Json[]);
    const link = buttons.find((e) => e.action_id === 'link')?.url;
    expect(link).toMatch(new RegExp(`^http://localhost:8080/sign-in/[\\w-]{40,}\\?to=%2Freview%2F${smoke}$`));
    const review = await w.desk.review.look('ruth', smoke);
    const names = buttons.map((e) => String(e.action_id)).filter((id) => id.startsWith('review.'));
    expect(names).toEqual([...review.may.map((name) => `review.${name}`), 'review.note']);
    await opens(() => w.ruth.tap(w.ruth.modal, 'Release'));
    expect(w.slack.called('views.push')).toHaveLength(1);
    expect(await w.ruth.submit({ text: 'everybody is out, seen on the spot' })).toEqual({ response_action: 'clear' });
    expect((await entries(smoke)).at(-1)?.kind).toBe('released');
    await until(() => !homeWords().includes('EMERGENCY'), 'the home still says otherwise');
  });
  test('an approval that is awaited comes to them by itself, is asked twice, and the holder can’t give it', async () => {
    const notice = w.ruth.told.findLast((m) => words(m).includes('Elm Row 1')) as Message;
    expect(words(notice)).toMatch(/Elm Row 1: no lock: Raised/);
    const button = elementsOf(notice.blocks).find((e) => e.action_id === 'review.approve');
    expect(button?.confirm).toMatchObject({ confirm: { text: 'Approve' } });
    await opens(() => w.ruth.tap(notice, 'Approve'));
    expect((await w.view(awaited)).prompt.kind).toBe('waiting');
    expect(await w.ruth.submit({ text: 'breaker out and in the pocket' })).toEqual({ response_action: 'clear' });
    expect((await entries(awaited)).at(-1)).toMatchObject({ kind: 'approved', by: 'ruth' });
    await until(() => w.slack.messages.some((m) => words(m).includes('breaker out and in the pocket')), 'not said');
  });
  test('whoever asked is told of the answer, wherever it was given', async () => {
    await w.web(awaited, 'ask which colour is on C?', 'ruth');
    const told = w.ruth.told.length;
    await lines(awaited, 'reply brown');
    await w.settled();
    const after = w.ruth.told.slice(told).map(words);
    expect(after.filter((text) => text.includes('brown'))).toHaveLength(1);
  });
  test('words that weigh are asked once before their form and once by it; the others by their form alone', async () => {
    const home = elementsOf(w.ruth.home?.blocks as Json[]);
    const asked = (name: string): unknown[] =>
      home.flatMap((e) => (String(e.action_id).startsWith(`review.${name}.`) ? [e.confirm !== undefined] : []));
    expect(new Set(asked('ask'))).toEqual(new Set([false]));
    const job = await w.call('Elm Row 5: alarm');
    await lines(job, 'alarm');
    const release = () =>
      elementsOf(w.ruth.home?.blocks as Json[]).find((e) => e.action_id === `review.release.${job}`);
    await until(() => release() !== undefined, 'the home stands still');
    expect(release()?.confirm).toMatchObject({ style: 'danger' });
    await w.web(job, 'release all clear', 'ruth');
  });
});

test('low stock is told to whom the settings name, once, with what is left, and to nobody else', async () => {
  const sheets = createSheets(w.store);
  await w.store.savePerson(personOf(PEOPLE.ines, { truck: 'van-1', chats: { slack: ACCOUNTS.ines } }));
  await sheets.saveEquipment('unit-1', { name: 'Unit 1', facts: plate('17.9', '96', '1.2'), history: [] });
  await sheets.saveTruck('van-1', { name: 'Van 1', items: [{ ...stocked('45+5', '440', 2), low: 1 }] });
  await w.store.saveSettings({ ...DEFAULT_SETTINGS, toldOfStock: ['ruth'] });
  const oak = { title: 'Oak 1', assign: 'ines', equipment: 'unit-1', client: w.client() };
  const { view } = await w.desk.open('dana', oak);
  const weak = 'herm 36.1 fan 5.02 hf 4.4 case ol';
  await lines(view.job, ...TO_READINGS, weak, ...TO_FIGURES.slice(0, 3), 'first, herm 45.3 fan 5.04', 'fitted');
  await w.settled();
  const told = (of: typeof w.dana): string[] => of.told.map(words).filter((text) => text.includes('Low stock on'));
  expect(told(w.ruth)).toEqual([
    expect.stringMatching(/Low stock on Van 1: run 45\+5.µF 440.V, Bin 45\+5, 1 left\. It is low at 1\./),
  ]);
  expect(told(w.dana)).toEqual([]);
  await w.dana.openHome();
  await until(() => homeWords(w.dana).includes('Low stock (1)'), 'the home says nothing of it');
});

test('the platform refused nothing', () => {
  expect(w.slack.refused).toEqual([]);
});
