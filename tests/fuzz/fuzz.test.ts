/**
 * Requests by the thousand, made of the document that the server gives of itself, and live feeds that are opened and
 * dropped at random. 20,000 here; `npm run fuzz -- --requests N --seed S` sends any number. What fails is printed with its
 * seed, so that it can be sent again.
 */
import { randomBytes } from 'node:crypto';
import { existsSync, mkdtempSync } from 'node:fs';
import { rm } from 'node:fs/promises';
import { type AddressInfo, connect, type Socket } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { setTimeout as sleep } from 'node:timers/promises';
import type { InjectOptions } from 'fastify';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { createDesk, type Desk } from '../../engine/desk/index.ts';
import { checkShop } from '../../engine/store/check.ts';
import { openSqlite, type Store } from '../../engine/store/index.ts';
import { SHELF } from '../../flows/index.ts';
import { personOf } from '../desk/shop.ts';
import { PEOPLE } from '../people.ts';
import { buildPage } from '../web-chat/browser.ts';
import { type Serving, serve } from '../web-chat/serve.ts';
import { type Chance, chanceOf } from './chance.ts';
import { type Document, operationsOf, type Request, requestOf } from './requests.ts';

const REQUESTS = Number(process.env.FUZZ_REQUESTS ?? 20_000);
const SEED = Number(process.env.FUZZ_SEED ?? Date.now() % 1_000_000_000);
/** Of the requests, feeds. */
const FEEDS = Math.ceil(REQUESTS / 40);
const AT_ONCE = 32;
/** Pages and files besides the document, which hides them. */
const PATHS = [
  '',
  '/jobs',
  '/calls',
  '/review',
  '/board',
  '/shop',
  '/devices',
  '/sign-in',
  '/report',
  '/assets',
  '/worker.js',
  '/offline',
  '/api',
];

let [folder, home]: [string, string] = ['', ''];
let store: Store;
let desk: Desk;
let serving: Serving;
let cookies: string[];
beforeAll(async () => {
  // On a disk of memory where there is one: what is tried is the server, not the disk.
  home = mkdtempSync(join(existsSync('/dev/shm') ? '/dev/shm' : tmpdir(), 'nocool-fuzz-'));
  store = await openSqlite(join(home, 'shop.sqlite'));
  for (const person of Object.values(PEOPLE)) await store.savePerson(personOf(person));
  desk = createDesk({ store, shelf: SHELF, clock: () => new Date(), random: (n) => randomBytes(n).toString('hex') });
  folder = await buildPage();
  serving = await serve({ desk, store, pageFolder: folder });
  cookies = ['', 'nocool=x'];
  for (const id of Object.keys(PEOPLE)) cookies.push(await serving.cookieFor(id));
});
afterAll(async () => {
  await serving?.close();
  await store?.close();
  for (const each of [folder, home]) if (each !== '') await rm(each, { recursive: true });
});

/** What is wrong with an answer; null: nothing. 503 is for the machine’s trouble, of which there is none here. */
function wrongWith(status: number, type: string, body: string): string | null {
  if (status >= 500) return `it was answered with ${status}`;
  if (/node_modules|\n\s+at .+:\d+:\d+|SqliteError|ZodError/.test(body)) return 'it tells of the inside';
  // Whoever asks for the head alone gets no body.
  if (status < 400 || body === '' || !type.startsWith('application/json') || status === 431) return null;
  const said = JSON.parse(body) as Record<string, unknown>;
  return typeof said.error === 'string' && typeof said.what === 'string' ? null : 'it doesn’t say what is wrong';
}

test(
  `${REQUESTS} requests, seed ${SEED}: none breaks it`,
  async () => {
    const chance = chanceOf(SEED);
    const answer = await serving.app.inject({ url: '/api/openapi.json', headers: { cookie: cookies.at(-1) ?? '' } });
    const document = answer.json() as Document;
    // A feed has no end, and a session that ends would leave nobody to ask: feeds are below, and signing out in its own test.
    const left = /\/feed$|^\/sign-out$|\/revoke$|^\/api\/shop\/people$/;
    const operations = operationsOf(document).filter(({ path }) => !left.test(path));
    expect(operations.length).toBeGreaterThan(20);
    const ids = [...Object.keys(PEOPLE), 'customer', 'shop', '1', '0'.repeat(64)];
    for (const by of ['ines', 'dana'] as const)
      ids.push(
        (await desk.open(by, { title: 'No cool', client: `fuzz-${by}`, assign: by === 'dana' ? 'tomas' : by })).view
          .job,
      );
    ids.push((await desk.dispatch.take('dana', { client: 'fuzz-call' })).view.job);
    const statuses = new Map<number, number>();
    const send = async (request: Request, n: number): Promise<void> => {
      const { statusCode, body, headers } = await serving.app.inject(request as InjectOptions);
      statuses.set(statusCode, (statuses.get(statusCode) ?? 0) + 1);
      const wrong = wrongWith(statusCode, String(headers['content-type'] ?? ''), body);
      if (wrong !== null)
        throw new Error(
          `${wrong}; request ${n} of seed ${SEED}: ${JSON.stringify(request).slice(0, 4_000)}\n${body.slice(0, 300)}`,
        );
      // A request that takes it compressed gets it so.
      if (statusCode === 201 && ids.length < 60 && headers['content-encoding'] === undefined)
        ids.push((JSON.parse(body) as { view?: { job?: string } }).view?.job ?? 'x');
    };
    for (let n = 0; n < REQUESTS - FEEDS; n += AT_ONCE) {
      const some = Array.from({ length: Math.min(AT_ONCE, REQUESTS - FEEDS - n) }, () =>
        requestOf(operations, document, chance, { ids, cookies, paths: PATHS }),
      );
      await Promise.all(some.map((request, i) => send(request, n + i)));
      // Timers get their turn.
      if (n % (AT_ONCE * 20) === 0) await sleep(0);
    }
    // It was no mere refusing: every sort of answer came, and many were taken.
    const sorts = REQUESTS < 10_000 ? [] : [200, 201, 400, 401, 403, 404];
    for (const status of sorts) expect(statuses.get(status) ?? 0, String(status)).toBeGreaterThan(5);
    expect(({} as Record<string, unknown>).polluted).toBeUndefined();
    const broken = serving.logged.filter((line) => line.includes('"level":50'));
    expect(broken).toEqual([]);
    expect((await checkShop(store)).trouble).toEqual([]);
  },
  Math.max(120_000, REQUESTS * 20),
);

test(
  `${FEEDS} feeds, seed ${SEED}: each is in order and without gaps, and none is left open`,
  async () => {
    const chance = chanceOf(SEED + 1);
    const connections = (): Promise<number> =>
      new Promise((done) => void serving.app.server.getConnections((_, count) => done(count)));
    // Those that signed people in are kept for the next request.
    const before = await connections();
    const { view } = await desk.open('ines', { title: 'No cool', client: 'feeds' });
    const port = (serving.app.server.address() as AddressInfo).port;
    let said = 0;
    const writing = async (): Promise<void> => {
      for (let i = 0; i < 5; i++)
        await desk.reply('ines', view.job, { kind: 'command', client: `w${++said}`, name: 'note', text: 'x' });
    };
    for (let n = 0; n < FEEDS; n += AT_ONCE) {
      const some = Array.from({ length: Math.min(AT_ONCE, FEEDS - n) }, () => feedOf(port, view.job, chance));
      await Promise.all([...some, writing()]);
    }
    await expect.poll(connections, { timeout: 10_000 }).toBeLessThanOrEqual(before);
  },
  Math.max(120_000, FEEDS * 100),
);

/** One feed as chance has it: what it was asked, what came, until somebody hung up. */
async function feedOf(port: number, job: string, chance: Chance): Promise<void> {
  const after = chance.of([
    '',
    '?after=0',
    '?after=3',
    '?after=x',
    '?after=999999999',
    '?after=-1',
    '?after=1&after=2',
    '?%00',
  ]);
  const path = chance.often(0.3) ? '/api/feed' : `/api/jobs/${chance.often(0.9) ? job : 'none'}/feed${after}`;
  const last = chance.of([
    '',
    'last-event-id: 2\r\n',
    'last-event-id: \u00ff\r\n',
    `last-event-id: ${'9'.repeat(500)}\r\n`,
  ]);
  const cookie = chance.of(cookies);
  const asked = `GET ${path} HTTP/1.1\r\nhost: x\r\ncookie: ${cookie}\r\n${last}\r\n`;
  const [breaks, stays] = [chance.often(0.1), chance.below(60)];
  let told = '';
  const socket: Socket = connect(port, '127.0.0.1');
  const gone = new Promise<void>((done) => socket.once('close', () => done()));
  socket
    .on('error', () => undefined)
    .on('data', (piece) => {
      told += piece.toString('latin1');
    });
  // Some hang up in the middle of asking, some as soon as they have asked, some while they are told.
  socket.write(breaks ? asked.slice(0, chance.below(asked.length)) : asked);
  await sleep(stays);
  socket.destroy();
  await gone;
  if (told === '') return;
  const wrong = wrongIn(told);
  if (wrong) throw new Error(`${wrong}; seed ${SEED}: ${JSON.stringify(asked)}\n${told.slice(0, 2_000)}`);
}

function wrongIn(told: string): string | null {
  const status = Number(/^HTTP\/1\.1 (\d+)/.exec(told)?.[1]);
  if (![200, 400, 401, 403, 404, 431].includes(status)) return `it was answered with ${status}`;
  if (status !== 200) return null;
  const body = told.slice(told.indexOf('\r\n\r\n') + 4);
  // The last line may be cut off by whoever hung up; sizes of chunks stand between.
  const lines = body
    .split('\n')
    .slice(0, -1)
    .map((line) => line.replace(/\r$/, ''));
  const strange = lines.find(
    (line) => !/^(?:|[0-9a-f]+|id: \d+|retry: \d+|event: beat|data:|data: \{.*\})$/.test(line),
  );
  if (strange !== undefined) return `a line is of no kind: ${strange}`;
  const ids = lines.flatMap((line) => /^id: (\d+)$/.exec(line)?.[1] ?? []).map(Number);
  return ids.every((id, i) => i === 0 || id === (ids[i - 1] ?? 0) + 1)
    ? null
    : 'the entries are out of order, or one is missing';
}
