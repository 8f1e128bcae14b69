/** The live feed over real HTTP: in order, without gaps, resumed where it was, ended when it should. */
import { rm } from 'node:fs/promises';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { buildPage } from './browser.ts';
import { type Serving, serve } from './serve.ts';
import { openShop, type Shop } from './shop.ts';

let shop: Shop;
let serving: Serving;
let folder: string;
let cookie: string;

beforeAll(async () => {
  [folder, shop] = await Promise.all([buildPage(), openShop()]);
  serving = await serve({ ...shop, pageFolder: folder });
  cookie = await serving.cookieFor('ines');
});
afterAll(async () => {
  await serving?.close();
  await shop?.close();
  if (folder) await rm(folder, { recursive: true });
});

let count = 0;
const openCall = async () => (await shop.desk.open('ines', { title: 'No cool', client: `f${++count}` })).view;
const note = (job: string, text: string) =>
  shop.desk.reply('ines', job, { kind: 'command', name: 'note', text, client: `f${++count}` });

interface Listening {
  /** Everything received so far. */
  readonly text: () => string;
  readonly until: (pattern: RegExp) => Promise<void>;
  /** Resolves when the server ends it. */
  readonly ended: Promise<void>;
  readonly stop: () => void;
}

async function listen(job: string, { query = '', headers = {}, as = cookie, on = serving } = {}): Promise<Listening> {
  const leaving = new AbortController();
  const answer = await fetch(`${on.url}/api/jobs/${job}/feed${query}`, {
    headers: { cookie: as, ...headers },
    signal: leaving.signal,
  });
  expect(answer.headers.get('content-type')).toBe('text/event-stream');
  let text = '';
  const ended = (async () => {
    const decoder = new TextDecoder();
    for await (const piece of answer.body ?? []) text += decoder.decode(piece as Uint8Array, { stream: true });
  })().catch(() => undefined);
  return {
    text: () => text,
    until: (pattern) => expect.poll(() => text, { timeout: 5000, interval: 10 }).toMatch(pattern),
    ended,
    stop: () => leaving.abort(),
  };
}
const idsIn = (text: string): number[] => [...text.matchAll(/^id: (\d+)$/gm)].map(([, id]) => Number(id));

test('what was and what comes arrives once and in order; an event says seq, kind and who', async () => {
  const { job, prompt } = await openCall();
  const feed = await listen(job);
  for (let i = 0; i < 20; i++) await note(job, `note ${i}`);
  await feed.until(new RegExp(`id: ${prompt.last + 20}\n`));
  expect(idsIn(feed.text())).toEqual(Array.from({ length: prompt.last + 20 }, (_, i) => i + 1));
  expect(feed.text()).toContain(`data: {"seq":1,"kind":"opened","by":"ines"}`);
  expect(feed.text()).not.toContain('note 3');
  feed.stop();
});

test.each([
  ['Last-Event-ID', (seq: number) => ({ headers: { 'last-event-id': String(seq) }, query: '?after=0' })],
  ['after', (seq: number) => ({ query: `?after=${seq}` })],
])('resumed by %s, it goes on with the next', async (_how, from) => {
  const { job, prompt } = await openCall();
  await note(job, 'missed while away');
  const feed = await listen(job, from(prompt.last));
  await note(job, 'and one more');
  await feed.until(new RegExp(`id: ${prompt.last + 2}\n`));
  expect(idsIn(feed.text())).toEqual([prompt.last + 1, prompt.last + 2]);
  feed.stop();
});

test('a made-up place to go on from is refused or not heeded', async () => {
  const { job } = await openCall();
  expect((await fetch(`${serving.url}/api/jobs/${job}/feed?after=x`, { headers: { cookie } })).status).toBe(400);
  const feed = await listen(job, { headers: { 'last-event-id': 'x' } });
  await feed.until(/id: 1\n/);
  feed.stop();
});

test('a server that stops lets go of its readers', async () => {
  const other = await serve({ ...shop, pageFolder: folder });
  const { job } = await openCall();
  const feed = await listen(job, { on: other });
  await feed.until(/id: 1\n/);
  await other.close();
  await feed.ended;
});

test('a sign of life at every beat; a reader who signed out, or may not see it any more, is let go at the next', async () => {
  const other = await serve({ ...shop, pageFolder: folder, heartbeat: 300 });
  const { job } = await openCall();
  const leaver = await other.cookieFor('ines');
  const [staying, leaving] = [await listen(job, { on: other }), await listen(job, { on: other, as: leaver })];
  const headers = { cookie: leaver, 'x-nocool': '1', 'content-type': 'application/json' };
  await fetch(`${other.url}/sign-out`, { method: 'POST', body: '{}', headers });
  await leaving.ended;
  const ruth = await shop.desk.person('ruth');
  if (!ruth) throw new Error('ruth is missing');
  const senior = await other.cookieFor('ruth');
  const both = await Promise.all(
    [`/api/jobs/${job}/feed`, '/api/feed'].map((path) => fetch(other.url + path, { headers: { cookie: senior } })),
  );
  expect(both.map(({ status }) => status)).toEqual([200, 200]);
  await shop.store.savePerson({ ...ruth, roles: ['technician'] });
  await Promise.all(both.map((answer) => answer.text()));
  await shop.store.savePerson(ruth);
  const beats = leaving.text().match(/^event: beat$/gm) ?? [];
  await staying.until(/^event: beat$/m);
  await note(job, 'still there');
  await staying.until(/"noted"/);
  expect(staying.text().match(/^event: beat$/gm)?.length).toBeGreaterThan(beats.length);
  expect(leaving.text()).not.toContain('noted');
  staying.stop();
  await other.close();
});
