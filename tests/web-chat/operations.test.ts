/** A server as whoever runs it sees it: its log, whether it is alive and ready, its figures; and days as people have them. */
import { rm } from 'node:fs/promises';
import { pino } from 'pino';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { createDesk, NotKept } from '../../engine/desk/index.ts';
import { SHELF } from '../../flows/index.ts';
import { MOST } from '../../web-chat/server/feed.ts';
import { createLog } from '../../web-chat/server/log.ts';
import { createMetrics } from '../../web-chat/server/metrics.ts';
import { GOOD, MOTORS, PLATE } from '../engine/given.ts';
import { TO_READINGS } from '../people.ts';
import { buildPage } from './browser.ts';
import { type Serving, serve } from './serve.ts';
import { openShop, type Shop } from './shop.ts';

const TOKEN = 'a-token-of-the-shop';
let shop: Shop;
let folder: string;
let serving: Serving;
let ready: () => Promise<boolean> = async () => true;
let waiting: string[] = [];
beforeAll(async () => {
  [folder, shop] = await Promise.all([buildPage(), openShop()]);
  const metrics = createMetrics({ clock: shop.clock, unsaid: async () => waiting });
  shop.store.watch((_job, entry) => metrics.entry(entry));
  const store = metrics.store(shop.store);
  const desk = metrics.desk(shop.desk);
  serving = await serve({
    ...shop,
    desk,
    store,
    pageFolder: folder,
    metrics,
    metricsToken: TOKEN,
    isReady: () => ready(),
  });
});
afterAll(async () => {
  await serving?.close();
  await shop?.close();
  if (folder) await rm(folder, { recursive: true });
});

let count = 0;
const client = (): string => `op${++count}`;
const post = (url: string, cookie: string, payload: unknown, type = 'application/json') =>
  serving.app.inject({
    ...{ method: 'POST', url, headers: { cookie, 'x-nocool': '1', 'content-type': type } },
    payload: payload instanceof Buffer ? payload : JSON.stringify(payload),
  });
const get = (url: string, headers: Record<string, string> = {}) => serving.app.inject({ url, headers });
const scrape = async (): Promise<string> => (await get('/metrics', { authorization: `Bearer ${TOKEN}` })).body;
/** The value of one line of the figures; 0 where there is none yet. */
const figure = (text: string, name: string): number =>
  Number(
    text
      .split('\n')
      .find((line) => line.startsWith(`${name} `))
      ?.slice(name.length + 1) ?? 0,
  );

describe('the log', () => {
  test('of a whole call, with an emergency, trouble and links, holds nothing of a person and nothing that opens anything', async () => {
    const SAID = ['Quillon Marsh', '555-014-7788', 'Larkspur Way 31', 'the spare key', 'burnt toast', 'peeled paint'];
    const [name = '', phone = '', address = '', ...words] = SAID;
    const link = await serving.linkFor('ines');
    const secrets = [link.split('/').at(-1) ?? ''];
    await get(new URL(link).pathname, { referer: link });
    const cookie = await serving.cookieFor('ines');
    const senior = await serving.cookieFor('ruth');
    secrets.push(...[cookie, senior].map((each) => each.split('=')[1] ?? ''));
    const opened = await post('/api/jobs', cookie, { title: `${name}, ${address}, ${phone}`, client: client() });
    const { job } = (opened.json() as { view: { job: string } }).view;
    const type = async (text: string, as = cookie) => {
      const { prompt } = await shop.desk.look('ruth', job);
      return post(`/api/jobs/${job}/replies`, as, { kind: 'text', client: client(), seq: prompt.seq, text });
    };
    for (const line of [
      `note ${words[0]}`,
      ...TO_READINGS,
      GOOD,
      ...MOTORS,
      PLATE,
      'closed',
      '240 239 comp 13.1 fan .9 split 19',
    ])
      expect((await type(line)).json()).toMatchObject({ refusal: null });
    await type(`I got shocked, ${words[1]}`);
    await type(`release ${words[2]}`, senior);
    const shared = await post(`/api/jobs/${job}/shares`, senior, { for: 'customer', days: 7 });
    const { url } = shared.json() as { url: string };
    secrets.push(url.split('/').at(-1) ?? '');
    expect((await get(new URL(url).pathname)).statusCode).toBe(200);
    // What goes wrong is logged without what was sent, or asked for.
    await post('/api/find', senior, { words: address.repeat(50) });
    await get(`/jobs/${encodeURIComponent(address)}`, { cookie });
    await get(`/${encodeURIComponent(name)}?q=${encodeURIComponent(phone)}`, { cookie });
    await post('/api/jobs', cookie, Buffer.from(`{"title":"${address}`));
    await post(`/api/jobs/${job}/photos`, cookie, Buffer.from(address), 'image/jpeg');
    const lines = serving.logged.map((line) => JSON.parse(line) as Record<string, unknown>);
    expect(lines.length).toBeGreaterThan(25);
    const logged = serving.logged.join('');
    expect([...SAID, 'Ines', 'Vale', job, ...secrets].filter((each) => logged.includes(each))).toEqual([]);
    const requests = lines.filter(({ route }) => route !== undefined);
    expect(requests.every(({ reqId }) => /^[0-9a-f]{16}$/.test(String(reqId)))).toBe(true);
    expect(new Set(requests.map(({ reqId }) => reqId)).size).toBe(requests.length);
  });
  test('of a ticket that tells who is vulnerable holds nothing of it', async () => {
    let { view } = await shop.desk.dispatch.take('dana', { client: client() });
    const who = ['none', 'Lena Orchard', '(555) 014-2233', 'Brook Terrace 7', 'free', 'new', 'split'];
    const seen = [
      'hums',
      'blowing',
      'on',
      'fine',
      'nothing',
      'today',
      'skip no plate',
      'baby',
      'indoors 96',
      'nothing',
    ];
    for (const text of [...who, ...seen, 'done', 'somebody comes']) {
      const { seq } = view.prompt;
      view = (await shop.desk.reply('dana', view.job, { kind: 'text', client: client(), seq, text })).view;
    }
    const job = view.opens ?? '';
    await shop.desk.dispatch.assign('dana', job, 'ines', client());
    const cookie = await serving.cookieFor('ines');
    const before = serving.logged.length;
    const [page, data] = await Promise.all([get(`/jobs/${job}`, { cookie }), get(`/api/jobs/${job}`, { cookie })]);
    expect(page.body).toContain('<strong>At the address:</strong> Infant');
    expect(data.json()).toMatchObject({ call: { vulnerable: 'Infant' } });
    expect(serving.logged.length).toBeGreaterThan(before);
    expect(serving.logged.join('\n')).not.toMatch(/infant|orchard|brook terrace/i);
  });

  test('of an error says where it was, and nothing that the error carries or a parser repeats', () => {
    const lines: string[] = [];
    const log = createLog('info', { write: (line) => void lines.push(line) });
    const carried = Object.assign(new Error('duplicate key'), { code: '23505', detail: 'Key (name)=(Quillon Marsh)' });
    log.error({ err: carried });
    try {
      JSON.parse('{"caller": Quillon Marsh');
    } catch (err) {
      log.error({ err });
    }
    expect(lines.join('')).not.toContain('Quillon');
    expect(lines[0]).toContain('23505');
    expect(lines.every((line) => line.includes('operations.test.ts'))).toBe(true);
    // The guard bites: as the library writes errors by itself, it would be there.
    const plain: string[] = [];
    pino({}, { write: (line) => void plain.push(line) }).error({ err: carried });
    expect(plain.join('')).toContain('Quillon');
  });
});

test('alive is alive; ready is where the database answers', async () => {
  expect([(await get('/healthz')).json(), (await get('/readyz')).json()]).toEqual([{ ok: true }, { ok: true }]);
  ready = () => Promise.reject(new NotKept('gone'));
  expect([(await get('/healthz')).statusCode, (await get('/readyz')).statusCode]).toEqual([200, 503]);
  ready = async () => true;
});

describe('the figures', () => {
  test('are for whoever has the token', async () => {
    const all = [await get('/metrics'), await get('/metrics', { authorization: 'Bearer x' })];
    expect(all.map(({ statusCode }) => statusCode)).toEqual([401, 401]);
    expect((await get('/metrics', { authorization: `Bearer ${TOKEN}` })).headers['content-type']).toContain(
      'text/plain',
    );
    const without = await serve({ ...shop, pageFolder: folder });
    expect(
      (await without.app.inject({ url: '/metrics', headers: { authorization: 'Bearer undefined' } })).statusCode,
    ).toBe(404);
    await without.close();
  });
  test('count turns, refusals and proofs that ended, feeds, the wait of messages, and what the database takes', async () => {
    const cookie = await serving.cookieFor('ines');
    const { view } = await shop.desk.open('ines', { title: 'No cool', client: client() });
    const before = await scrape();
    const reply = (text: string, seq: number) =>
      post(`/api/jobs/${view.job}/replies`, cookie, { kind: 'text', client: client(), seq, text });
    await reply('d', view.prompt.seq);
    await reply('psc', 1);
    await reply('where', 1);
    for (const line of TO_READINGS.slice(1, 8))
      await shop.desk.reply('ines', view.job, {
        kind: 'text',
        client: client(),
        seq: (await shop.desk.look('ines', view.job)).prompt.seq,
        text: line,
      });
    await reply('power is back', 1);
    const leaving = new AbortController();
    await fetch(`${serving.url}/api/feed`, { headers: { cookie }, signal: leaving.signal });
    waiting = ['slack.x.question.3'];
    await scrape();
    shop.wait(2);
    const after = await scrape();
    const grew = (name: string): number => figure(after, name) - figure(before, name);
    expect(grew('nocool_turns_total{result="kept"}')).toBe(2);
    expect(grew('nocool_turns_total{result="refused"}')).toBe(1);
    expect(grew('nocool_turns_total{result="told"}')).toBe(1);
    expect(grew('nocool_refusals_total{code="stale"}')).toBe(1);
    expect(grew('nocool_voids_total{reason="power-back"}')).toBe(1);
    expect(figure(after, 'nocool_feed_clients')).toBe(1);
    expect(figure(after, 'nocool_outbox_age_seconds')).toBeGreaterThanOrEqual(120);
    expect(grew('nocool_store_seconds_count{method="session",result="done"}')).toBeGreaterThan(3);
    expect(grew('nocool_http_seconds_count{route="/api/jobs/:job/replies",method="POST",status="200"}')).toBe(4);
    expect(after).not.toMatch(/ines|No cool|[0-9a-f]{32}/i);
    leaving.abort();
    waiting = [];
    await expect.poll(async () => figure(await scrape(), 'nocool_feed_clients')).toBe(0);
    expect(figure(await scrape(), 'nocool_outbox_age_seconds')).toBe(0);
  });
});

test('one person has so many feeds at once; one that is refused takes no place', async () => {
  const cookie = await serving.cookieFor('tomas');
  const { view } = await shop.desk.open('ines', { title: 'No cool', client: client() });
  for (let i = 0; i < MOST + 5; i++) expect((await get(`/api/jobs/${view.job}/feed`, { cookie })).statusCode).toBe(403);
  const leaving = new AbortController();
  const ask = () => fetch(`${serving.url}/api/feed`, { headers: { cookie }, signal: leaving.signal });
  const answers = await Promise.all(Array.from({ length: MOST + 1 }, ask));
  expect(
    answers
      .map(({ status }) => status)
      .sort()
      .slice(-2),
  ).toEqual([200, 429]);
  leaving.abort();
});

test('days and hours are those of the shop’s time zone where people read them, and UTC in the record', async () => {
  const random = (bytes: number) =>
    Array.from({ length: bytes * 2 }, () => Math.floor(Math.random() * 16).toString(16)).join('');
  const now = new Date('2026-07-15T02:30:00.000Z');
  const desk = createDesk({ ...shop, shelf: SHELF, clock: () => now, random, zone: 'America/Chicago' });
  const { view } = await desk.open('ines', { title: 'No cool', client: client() });
  for (const text of [...TO_READINGS, GOOD, ...MOTORS, PLATE, 'closed', '240 239 comp 13.1 fan .9 split 19']) {
    const { prompt } = await desk.look('ines', view.job);
    expect(
      (await desk.reply('ines', view.job, { kind: 'text', client: client(), seq: prompt.seq, text })).refusal,
    ).toBeNull();
  }
  const page = (await desk.reports.read('ruth', view.job, 'customer')).html(() => '');
  expect(page).toContain('Visit of 2026-07-14');
  expect((await desk.reports.read('ruth', view.job, 'shop')).html(() => '')).toContain('2026-07-14 21:30 UTC-5');
  const { entries } = await shop.store.read(view.job);
  expect(entries.every(({ at }) => at.startsWith('2026-07-15T02:30:00'))).toBe(true);
  // A call that was signed in the evening is still of this day for the board, though UTC has gone on.
  await desk.reply('ruth', view.job, { kind: 'command', client: client(), name: 'sign' });
  const own = (await desk.dispatch.board('dana')).crew.find(({ id }) => id === 'ines');
  expect(own?.day).toContain(view.job);
});
