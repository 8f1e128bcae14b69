/**
 * Every use case as everybody, on their own calls and on others’, through every door, against a table written from the
 * trade. What is refused changes nothing and tells nothing of a call that one may not see.
 */
import { createHash, randomBytes } from 'node:crypto';
import { readdirSync, readFileSync } from 'node:fs';
import type { AddressInfo } from 'node:net';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { Session } from '../../bot/terminal/session.ts';
import { createDoor, type Door, NoRight, type Turn } from '../../engine/desk/index.ts';
import { buildServer } from '../../web-chat/server/app.ts';
import { createLog } from '../../web-chat/server/log.ts';
import type { PersonId } from '../people.ts';
import { type Calls, openCalls, SECRET, type State } from './calls.ts';
import { type Asked, CASES, type Case, type There } from './cases.ts';
import { type Cell, COLUMNS, type Column, EXPECTED } from './table.ts';

/** Who tries: of two of a kind the call is the first one’s. */
const WHO: Readonly<Record<Column, PersonId | null>> = {
  nobody: null,
  'technician own': 'ines',
  'technician other': 'tomas',
  'senior own': 'ruth',
  'senior other': 'ruth',
  'dispatcher other': 'dana',
  'owner own': 'otto',
  'owner other': 'otto',
};
/** Refusals that say whose it is. Any other is about what was sent, and would be a mistake of the test. */
const NOT_THEIRS: readonly string[] = ['no-right', 'not-holder'];

const ROUTES = new URL('../../web-chat/server/routes/', import.meta.url);

let calls: Calls;
let app: ReturnType<typeof buildServer>;
let door: Door;
let url: string;
let count = 0;
/** A call in each state that nobody who is refused may change. */
const shared = new Map<string, Promise<string>>();
const cookies = new Map<PersonId, string>();

beforeAll(async () => {
  calls = await openCalls();
  const { shop } = calls;
  const clock = () => new Date(shop.now);
  await shop.store.saveSheet('equipment', 'unit-1', 0, { name: 'Unit 1', facts: {}, history: [] });
  const log = createLog('silent');
  app = buildServer({
    desk: shop.desk,
    store: shop.store,
    clock,
    log,
    secureCookies: false,
    perPerson: 0,
    mostLag: 60_000,
    publicUrl: 'http://localhost',
  });
  door = createDoor({ store: shop.store, desk: shop.desk, chat: 'slack', clock });
  await app.listen({ host: '127.0.0.1', port: 0 });
  url = `http://127.0.0.1:${(app.server.address() as AddressInfo).port}`;
  for (const id of ['ines', 'tomas', 'ruth', 'dana', 'otto'] as const) cookies.set(id, await signedIn(id));
});
afterAll(async () => {
  app.server.closeAllConnections();
  await app.close();
  await calls.close();
});

const hashOf = (token: string): string => createHash('sha256').update(token).digest('hex');
async function signedIn(person: string): Promise<string> {
  const token = randomBytes(32).toString('base64url');
  await calls.shop.store.saveSession(hashOf(token), person, '2099-01-01T00:00:00.000Z');
  return `nocool=${token}`;
}

interface Tried {
  readonly cell: Cell | string;
  /** All that was told. */
  readonly told: string;
}
/** What becomes of a try, and that nothing became of it where it was refused. */
async function outcome(
  column: Column,
  one: Case,
  attempt: (there: There) => Promise<Tried>,
  expected: Cell,
): Promise<string> {
  const own = column.endsWith('own');
  const by = WHO[column];
  const state: State = one.state ?? 'eyes';
  const fresh = () => calls.copy(state, own && by !== null ? by : undefined);
  const key = `${state} ${own ? by : ''}`;
  // What is expected to be refused shares a call: it would be noticed if it changed.
  const job = await (expected === 'y' ? fresh() : (shared.get(key) ?? keep(key, fresh())));
  const { store, desk } = calls.shop;
  const { entries } = await store.read(job);
  const of = (place: string): number =>
    entries.findLast((e) => e.kind === 'answered' && e.body.place.endsWith(place))?.seq ?? 1;
  const { prompt } = await desk.crewView(job);
  const { shares, device } = await around(job, one, by);
  const there = { ...{ job, client: `r${++count}`, seq: prompt.seq, of, photo: calls.photo, shares, by, device } };
  const { cell, told } = await attempt(there);
  const added = (await store.read(job)).entries.slice(entries.length);
  const seen = EXPECTED.get(one.state === 'caller' ? 'look at a caller’s call' : 'look at a call')?.get(column);
  if (seen === '-' && told.includes(SECRET)) return `${cell}, and tells of it`;
  // Words that are refused are kept as a note, which whoever may see the call may leave there.
  if (!one.feed && cell !== 'y' && added.some(({ kind }) => seen === '-' || kind !== 'noted'))
    return `${cell}, and changed it`;
  if (cell === 'y' && one.writes && added.length === 0) return 'y, and nothing came of it';
  // To whom the call is nothing at all, any refusal is the same.
  return cell === 'n' && expected === '-' ? '-' : cell;
}
const keep = (key: string, job: Promise<string>): Promise<string> => {
  shared.set(key, job);
  return job;
};
const NOBODYS = '0'.repeat(64);
const NONE = { customer: NOBODYS, shop: NOBODYS };
async function around(job: string, one: Case, by: PersonId | null): Promise<Pick<There, 'shares' | 'device'>> {
  const { desk } = calls.shop;
  const { path } = one.ask({
    job,
    shares: NONE,
    device: { own: NOBODYS, other: NOBODYS },
    of: () => 1,
  } as unknown as There);
  if (path.includes('/devices/')) {
    const anew = async (person: string) => hashOf((await signedIn(person)).replace('nocool=', ''));
    return { shares: NONE, device: { own: by ? await anew(by) : NOBODYS, other: await anew('tess') } };
  }
  if (!path.includes('/shares')) return { shares: NONE, device: { own: NOBODYS, other: NOBODYS } };
  const made = async (audience: 'customer' | 'shop') => (await desk.reports.share('mira', job, audience, 7)).link.id;
  return {
    shares: { customer: await made('customer'), shop: await made('shop') },
    device: { own: NOBODYS, other: NOBODYS },
  };
}

/** Nobody comes in several ways. */
const STRANGERS = ['', 'nocool=', `nocool=${'x'.repeat(43)}`, `nocool=${'0'.repeat(500)}`];
const headersOf = (by: PersonId | null, body: Asked['body']): Record<string, string> => ({
  cookie: by === null ? (STRANGERS[count % STRANGERS.length] ?? '') : (cookies.get(by) ?? ''),
  ...(body === undefined
    ? {}
    : { 'x-nocool': '1', 'content-type': body instanceof Buffer ? 'image/jpeg' : 'application/json' }),
});
const overHttp =
  (by: PersonId | null, one: Case) =>
  async (there: There): Promise<Tried> => {
    const { path, body, method } = one.ask(there);
    const headers = headersOf(by, body);
    if (path === '/sign-out' && by) headers.cookie = await signedIn(by);
    const payload = body instanceof Buffer ? body : JSON.stringify(body);
    const answer = await app.inject({
      ...{ method: method ?? (body === undefined ? 'GET' : 'POST'), url: path, headers },
      ...(body === undefined ? {} : { payload }),
    });
    const told = answer.body;
    if ([401, 403].includes(answer.statusCode)) return { cell: answer.statusCode === 401 ? '-' : 'n', told };
    if (answer.statusCode >= 400) return { cell: `${answer.statusCode} ${told.slice(0, 200)}`, told };
    if (one.shows && !one.shows(told, there)) return { cell: 'n', told };
    const { refusal } = one.state !== null && told.startsWith('{') ? (JSON.parse(told) as Partial<Turn>) : {};
    return { cell: cellOf(refusal), told };
  };
const cellOf = (refusal: Turn['refusal'] | undefined): string =>
  !refusal ? 'y' : NOT_THEIRS.includes(refusal.code) ? 'n' : `${refusal.code}: ${refusal.text}`;

/** What comes on a feed when somebody says something on this call: done where it is heard. */
const overFeed =
  (by: PersonId | null, one: Case) =>
  async (there: There): Promise<Tried> => {
    const leaving = new AbortController();
    const answer = await fetch(url + one.ask(there).path, {
      headers: headersOf(by, undefined),
      signal: leaving.signal,
    });
    if (answer.status !== 200) return { cell: answer.status === 401 ? '-' : 'n', told: await answer.text() };
    let told = '';
    const reading = (async () => {
      for await (const piece of answer.body ?? []) told += new TextDecoder().decode(piece as Uint8Array);
    })().catch(() => undefined);
    const { desk } = calls.shop;
    // One’s own call comes after it: by then the other would have come too.
    const mark = await calls.copy('eyes', by ?? undefined);
    for (const job of [there.job, mark])
      await desk.reply('mira', job, { kind: 'command', client: `feed${++count}`, name: 'note', text: 'heard' });
    const last = one.feed === 'call' ? there.job : mark;
    await expect.poll(() => told).toContain(one.feed === 'call' ? '"kind":"noted"' : last);
    leaving.abort();
    await reading;
    return { cell: one.feed === 'call' || told.includes(there.job) ? 'y' : 'n', told };
  };

const rows = [...EXPECTED];
test('each use case that is expected is tried, and none besides', () => {
  expect(Object.keys(CASES).sort()).toEqual(rows.map(([name]) => name).sort());
  expect(rows.length).toBeGreaterThan(80);
});

/** For nobody in particular: tested where they are said, or below. */
const FOR_ANYBODY = /^\/(?:healthz|readyz|metrics|worker\.js|offline|sign-in.*|report\/:token.*)$/;
test('each route of the server is tried', () => {
  const routes = readdirSync(ROUTES).flatMap((name) => {
    const text = readFileSync(new URL(name, ROUTES), 'utf8');
    return [...text.matchAll(/\bapp\.(get|post|delete|put|patch)\(\s*['`]([^'`$]+)['`]/g)].map(([, method, path]) => [
      (method ?? '').toUpperCase(),
      path ?? '',
    ]);
  });
  expect(routes.length).toBeGreaterThan(40);
  const there = {
    job: 'j',
    client: 'c',
    photo: 'p',
    shares: NONE,
    device: { own: NOBODYS, other: NOBODYS },
    of: () => 1,
  };
  const asked = Object.values(CASES).map((one) => {
    const { path, body, method } = one.ask({ ...there, seq: 1, by: null });
    return `${method ?? (body === undefined ? 'GET' : 'POST')} ${path}`;
  });
  const untried = routes.filter(([method, path = '']) => {
    const pattern = new RegExp(`^${method} ${path.replace(/:\w+/g, '[^/]+')}$`);
    return !FOR_ANYBODY.test(path) && !asked.some((each) => pattern.test(each));
  });
  // The plain forms behind the page of one’s devices do what the API does.
  expect(untried).toEqual([
    ['POST', '/devices'],
    ['POST', '/devices/units'],
  ]);
});

test('a link to a report opens that report and nothing else', async () => {
  const { shop, copy, photo } = calls;
  const [job, other] = [await copy('ended'), await copy('ended')];
  const tokenOf = async (of: string, audience: 'customer' | 'shop') =>
    (await shop.desk.reports.share('ruth', of, audience, 7)).token;
  const [customer, record] = [await tokenOf(job, 'customer'), await tokenOf(other, 'shop')];
  const open = (path: string, headers = {}) => app.inject({ url: path, headers });
  const [page, whole] = [await open(`/report/${customer}`), await open(`/report/${record}`)];
  expect([page.statusCode, whole.statusCode]).toEqual([200, 200]);
  expect(page.body).toContain(`${SECRET}, ${job.slice(0, 8)}`);
  expect(page.body).not.toContain(other.slice(0, 8));
  // What only the shop's record says is in no form of the customer's page.
  const evidence = 'What it rests on';
  expect(whole.body).toContain(evidence);
  for (const path of ['', '/json']) expect((await open(`/report/${customer}${path}`)).body).not.toContain(evidence);
  expect((await open(`/report/${customer}/photos/${photo}`)).statusCode).toBe(200);
  for (const path of [`/photos/${'0'.repeat(64)}`, '/shop', '/json/shop', `/jobs/${job}`])
    expect((await open(`/report/${customer}${path}`)).statusCode).toBe(404);
  const elsewhere = [
    '/',
    `/jobs/${job}`,
    `/api/jobs/${job}`,
    `/api/jobs/${job}/photos/${photo}`,
    `/jobs/${job}/report/customer`,
  ];
  for (const path of elsewhere)
    for (const headers of [
      { cookie: `nocool=${customer}` },
      { authorization: `Bearer ${customer}` },
      { referer: `/report/${customer}` },
    ])
      expect((await open(path, headers)).statusCode).toBe(401);
  for (const wrong of [customer.slice(1), `${customer}0`, customer.toUpperCase(), '0'.repeat(64), '%00'])
    expect((await open(`/report/${wrong}`)).statusCode).toBe(404);
});

describe('over HTTP', () => {
  test.each(rows)('%s', async (name, cells) => {
    const one = CASES[name] as Case;
    const found: [Column, string][] = [];
    for (const column of COLUMNS) {
      const by = WHO[column];
      const attempt = one.feed ? overFeed(by, one) : overHttp(by, one);
      found.push([column, await outcome(column, one, attempt, cells.get(column) ?? 'n')]);
    }
    expect(Object.fromEntries(found)).toEqual(Object.fromEntries(cells));
  });
});

const typed = rows.filter(([name]) => CASES[name]?.line !== undefined);
const attemptTo = async (work: Promise<Turn>): Promise<Tried> =>
  work.then(
    (turn) => ({ cell: cellOf(turn.refusal), told: JSON.stringify(turn) }),
    (error: unknown) => ({ cell: error instanceof NoRight ? 'n' : String(error), told: String(error) }),
  );

describe('typed into the team’s chat', () => {
  test.each(typed)('%s', async (name, cells) => {
    const one = CASES[name] as Case;
    for (const column of COLUMNS.slice(1)) {
      const by = WHO[column] as PersonId;
      const attempt = ({ job, client }: There) => attemptTo(door.type(by, job, one.line ?? '', client));
      const expected = cells.get(column) ?? 'n';
      expect(`${column}: ${await outcome(column, one, attempt, expected)}`).toBe(`${column}: ${expected}`);
    }
  });
  test('an account that joined as nobody is nobody', async () => {
    for (const account of ['', 'U9NOBODY', 'undefined', '__proto__']) expect(await door.who(account)).toBeNull();
  });
});

describe('typed at the terminal', () => {
  test.each(typed)('%s', async (name, cells) => {
    const one = CASES[name] as Case;
    for (const column of COLUMNS.slice(1)) {
      const by = WHO[column] as PersonId;
      const { desk } = calls.shop;
      const attempt = async ({ job, client }: There): Promise<Tried> => {
        const view = await desk.look(by, job).catch((error: unknown) => {
          if (error instanceof NoRight) return null;
          throw error;
        });
        const person = await desk.person(by);
        // It begins with the call on the screen: whoever may not see it comes no further.
        if (!view || !person) return { cell: '-', told: '' };
        return attemptTo(new Session(desk, person, view, () => client).type(one.line ?? ''));
      };
      const sees = EXPECTED.get(one.state === 'caller' ? 'look at a caller’s call' : 'look at a call')?.get(column);
      const expected = sees === 'y' ? (cells.get(column) ?? 'n') : '-';
      expect(`${column}: ${await outcome(column, one, attempt, expected)}`).toBe(`${column}: ${expected}`);
    }
  });
});
