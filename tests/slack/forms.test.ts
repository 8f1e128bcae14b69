/** Readings in a form and what is wrong with them, changes, and photos. */
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import type { Entry } from '../../engine/index.ts';
import { elementsOf, wordsOf } from './fake/person.ts';
import type { Json, Message } from './fake/wire.ts';
import { until, Workspace } from './workspace.ts';

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

describe('readings in a form', () => {
  let job: string;
  beforeAll(async () => {
    job = await w.call('Readings');
    await onTheWeb(job, TO_WIRES);
  });
  test('each field has its unit, the danger and the isolation stand above', async () => {
    await openForm(await w.asked(job));
    const { view } = w.ines.modal;
    const blocks = view.blocks as Json[];
    const label = (key: string): string =>
      ((blocks.find(({ block_id }) => block_id === key)?.label ?? {}) as { text?: string }).text ?? '';
    expect(label('herm')).toBe('HERM to C, µF, or ol');
    expect(label('case')).toContain('MΩ');
    expect(wordsOf({ blocks })).toContain('PROVED DEAD');
    for (const e of elementsOf(blocks)) expect(e.initial_value).toBeUndefined();
  });
  test('what is no figure is said at its field, and the form stays', async () => {
    const before = await entries(job);
    const answer = await w.ines.submit({ herm: 'abc', fan: '5.02', hf: '4.4', case: 'ol' });
    expect(answer).toMatchObject({ response_action: 'errors' });
    expect(Object.keys(answer.errors as object)).toEqual(['herm']);
    expect(await entries(job)).toEqual(before);
  });
  test('what is left empty is asked alone, the rest is kept', async () => {
    const told = w.ines.told.length;
    expect(await w.ines.submit({ herm: '', fan: '5,02', hf: '4.4', case: 'ol' })).toEqual({});
    await until(() => w.ines.told.length > told, 'nothing was said');
    const aside = w.ines.told.at(-1) as Message;
    expect(words(aside)).toContain('Still needed: HERM to C.');
    await openForm(aside, 'Answer the rest');
    const asked = (w.ines.modal.view.blocks as Json[]).flatMap((b) => (b.type === 'input' ? [b.block_id] : []));
    expect(asked.filter((key) => key !== '!skip')).toEqual(['herm']);
    expect(await w.ines.submit({ herm: '36,1' })).toEqual({});
    await until(
      async () => (await w.view(job)).prompt.verdicts.length > 0,
      () => `no verdict: ${words(w.ines.told.at(-1))}`,
    );
    const answered = (await entries(job)).findLast((e) => e.kind === 'answered');
    expect(answered?.kind === 'answered' && answered.body.parts.fan).toMatchObject({ value: '5.02', typed: '5,02' });
  });
  test('the thread shows value and unit, and the verdict with its evidence', async () => {
    await w.asked(job);
    const thread = w.slack
      .thread(await w.thread(job))
      .map(words)
      .join('\n');
    expect(thread).toMatch(/36\.1.µF/);
    expect(thread).toMatch(
      /VERDICT: .*replace it[\s\S]*HERM: FAIL · 36\.1.µF · limits 42\.30–47\.70.µF[\s\S]*Source: /,
    );
    expect(thread.match(/VERDICT: /g)?.length).toBe(2);
  });
  test('an earlier answer is changed by a form that holds it', async () => {
    const told = w.ines.told.length;
    await w.ines.type('back', await w.thread(job));
    await until(() => w.ines.told.length > told, 'nothing was said');
    const again = w.ines.told.at(-1) as Message;
    expect(words(again)).toContain('AN EARLIER ANSWER');
    await openForm(again);
    const herm = elementsOf(w.ines.modal.view.blocks as Json[]).find((e) => e.block === 'herm');
    expect(herm?.initial_value).toBe('36.1');
    await w.ines.submit({ herm: '36.3' });
    await until(
      async () => (await entries(job)).some(({ kind }) => kind === 'amended'),
      () => `not amended: ${words(w.ines.told.at(-1))}`,
    );
  });
  test('what is out of all limits is asked alone too', async () => {
    const call = await w.call('Out of range');
    await onTheWeb(call, TO_WIRES);
    await openForm(await w.asked(call));
    const told = w.ines.told.length;
    expect(await w.ines.submit({ herm: '36,1', fan: '99999', hf: '4.4', case: 'ol' })).toEqual({});
    await until(() => w.ines.told.length > told, 'nothing was said');
    await openForm(w.ines.told.at(-1) as Message, 'Answer the rest');
    const asked = (w.ines.modal.view.blocks as Json[]).flatMap((b) => (b.type === 'input' ? [b.block_id] : []));
    expect(asked.filter((key) => key !== '!skip')).toEqual(['fan']);
  });
  test('a question that can’t be answered is left open with a reason', async () => {
    const call = await w.call('Skipped');
    await onTheWeb(call, TO_WIRES);
    await openForm(await w.asked(call));
    await w.ines.submit({ '!skip': 'no meter for this' });
    await until(
      async () => (await entries(call)).some((e) => e.kind === 'answered' && e.body.skipped !== undefined),
      'not skipped',
    );
  });
  test('a form that opens too late says so', async () => {
    const call = await w.call('Late');
    await onTheWeb(call, ['d', 'psc', 'yes']);
    const told = w.ines.told.length;
    await w.ines.tap(await w.asked(call), 'Answer', { trigger: w.slack.trigger(4000) });
    await until(() => w.ines.told.length > told, 'nothing was said');
    expect(words(w.ines.told.at(-1))).toContain('That took too long. Tap it again, or type the answer in the thread.');
    w.slack.refused.length = 0;
  });
});

describe('photos', () => {
  const JPEG = Buffer.from(
    '/9j/4AAQSkZJRgABAQEAAAAAAAD/2wBDAAEBAQEBAQEBAQEBAQEBAQEBAQEBAQEBAQEBAQEBAQEBAQEBAQEBAQEBAQEBAQEBAQEBAQEBAQEBAQEBAQEBAQH/wAALCAABAAEBAREA/8QAFAABAAAAAAAAAAAAAAAAAAAACf/EABQQAQAAAAAAAAAAAAAAAAAAAAD/2gAIAQEAAD8AKp//2Q==',
    'base64',
  );
  let job: string;
  let thread: string;
  const send = async (
    id: string,
    file: { bytes: Buffer; type: string; size?: number; stalls?: boolean },
  ): Promise<string> => {
    const told = w.ines.told.length;
    const { bytes, type, stalls = false } = file;
    w.slack.files.set(id, { name: `${id}.jpg`, bytes, type, alt: '', stalls });
    await w.ines.type('', thread, {
      files: [{ id, url_private: `${w.slack.url}files/get/${id}`, size: file.size ?? file.bytes.length }],
    });
    await until(() => w.ines.told.length > told, 'nothing was said');
    return words(w.ines.told.at(-1));
  };
  beforeAll(async () => {
    job = await w.call('Photos');
    await onTheWeb(job, TO_WIRES.slice(0, -1));
    thread = await w.thread(job);
  });
  test('what is no photo, too large, too slow, not there or elsewhere is refused, and the call goes on', async () => {
    const before = await entries(job);
    expect(await send('page', { bytes: Buffer.from('<html>'), type: 'text/html' })).toContain('That is no photo');
    expect(await send('fake', { bytes: Buffer.from('no picture'), type: 'image/jpeg' })).toContain('can be kept');
    expect(await send('large', { bytes: JPEG, type: 'image/jpeg', size: 11 * 1024 * 1024 })).toContain(
      'larger than 10 MB',
    );
    const begun = performance.now();
    expect(await send('slow', { bytes: JPEG, type: 'image/jpeg', stalls: true })).toContain('can’t be fetched');
    expect(performance.now() - begun).toBeGreaterThan(250);
    w.slack.files.delete('gone');
    const told = w.ines.told.length;
    await w.ines.type('', thread, { files: [{ url_private: `${w.slack.url}files/get/gone`, size: 5 }] });
    await until(() => w.ines.told.length > told, 'nothing was said');
    expect(words(w.ines.told.at(-1))).toContain('can’t be fetched');
    await w.ines.type('', thread, { files: [{ url_private: 'https://elsewhere.example/x.jpg', size: 5 }] });
    await until(() => w.ines.told.length > told + 1, 'nothing was said');
    expect(words(w.ines.told.at(-1))).toContain('can’t be fetched');
    expect(await entries(job)).toEqual(before);
  });
  test('a photo that the question takes is kept and goes with its answer', async () => {
    const part = (await w.view(job)).prompt.parts.find(({ kind }) => kind === 'photo');
    expect(part).toBeDefined();
    expect(await send('wiring', { bytes: JPEG, type: 'image/jpeg' })).toContain('Still needed');
    await w.ines.type('wires off', thread);
    await until(
      async () => JSON.stringify(await entries(job)).includes('"kind":"photo"'),
      () => `no photo: ${words(w.ines.told.at(-1))}`,
    );
    expect(await w.store.photos()).toHaveLength(1);
  });
});
