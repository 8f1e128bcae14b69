/** The server by itself, over real HTTP, on a real desk and a real database. */
import { readFile, rm } from 'node:fs/promises';
import Database from 'better-sqlite3';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import * as z from 'zod/mini';
import type { Turn } from '../../engine/desk/index.ts';
import { createVerifier } from '../../engine/report/verify.ts';
import { SHELF } from '../../flows/index.ts';
import { Turn as TurnShape } from '../../web-chat/server/shapes.ts';
import { buildPage } from './browser.ts';
import { type Serving, serve } from './serve.ts';
import { openShop, type Shop } from './shop.ts';

let shop: Shop;
let serving: Serving;
let folder: string;
const cookies: Record<string, string> = {};

beforeAll(async () => {
  [folder, shop] = await Promise.all([buildPage(), openShop()]);
  serving = await serve({ ...shop, pageFolder: folder });
  for (const person of ['ines', 'tomas', 'ruth']) cookies[person] = await serving.cookieFor(person);
});
afterAll(async () => {
  await serving?.close();
  await shop?.close();
  if (folder) await rm(folder, { recursive: true });
});

interface Asked {
  readonly as?: string;
  readonly body?: unknown;
  readonly method?: string;
  readonly headers?: Record<string, string>;
}
function ask(path: string, { as, body, method, headers }: Asked = {}): Promise<Response> {
  const sent = body === undefined ? {} : { body: typeof body === 'string' ? body : JSON.stringify(body) };
  return fetch(serving.url + path, {
    method: method ?? (body === undefined ? 'GET' : 'POST'),
    redirect: 'manual',
    ...sent,
    headers: {
      ...(as === undefined ? {} : { cookie: cookies[as] ?? as }),
      ...(body === undefined ? {} : { 'content-type': 'application/json', 'x-nocool': '1' }),
      ...headers,
    },
  });
}
let count = 0;
const client = () => `t${++count}`;
const openCall = async (as = 'ines', title = 'No cool upstairs'): Promise<Turn> =>
  (await (await ask('/api/jobs', { as, body: { title, client: client() } })).json()) as Turn;
const send = async (turn: Turn, reply: object, as = 'ines') => {
  const answer = await ask(`/api/jobs/${turn.view.job}/replies`, { as, body: { client: client(), ...reply } });
  return (await answer.json()) as Turn;
};

describe('signing in', () => {
  test('a link may be looked at as often as one likes, and is used once', async () => {
    const link = await serving.linkFor('ines');
    for (let i = 0; i < 3; i++) {
      const page = await fetch(link);
      expect([page.status, page.headers.get('set-cookie')]).toEqual([200, null]);
      expect((await page.text()).match(/<button/g)).toHaveLength(1);
    }
    const body = new URLSearchParams({ token: link.split('/').at(-1) ?? '' });
    const first = await fetch(`${serving.url}/sign-in`, { method: 'POST', body, redirect: 'manual' });
    expect([first.status, first.headers.get('location')]).toEqual([303, '/']);
    expect(first.headers.get('set-cookie')).toMatch(/^nocool=[\w-]{43}; .*Path=\/; HttpOnly; SameSite=Lax$/);
    const second = await fetch(`${serving.url}/sign-in`, { method: 'POST', body, redirect: 'manual' });
    expect([second.status, second.headers.get('set-cookie')]).toEqual([401, null]);
  });

  test.each([
    ['/review/job-1', '/review/job-1'],
    ['/review', '/review'],
    ['//elsewhere.example', '/'],
    ['https://elsewhere.example/review/job-1', '/'],
    ['/review/../../x', '/'],
    ['/sign-out', '/'],
  ])('a link may name the page of ours that opens then: %s', async (to, opens) => {
    const link = await serving.linkFor('ruth');
    const page = await (await fetch(`${link}?${new URLSearchParams({ to })}`)).text();
    expect(page.includes('name="to"')).toBe(opens !== '/');
    const body = new URLSearchParams({ token: link.split('/').at(-1) ?? '', to });
    const answer = await fetch(`${serving.url}/sign-in`, { method: 'POST', body, redirect: 'manual' });
    expect([answer.status, answer.headers.get('location')]).toEqual([303, opens]);
  });

  test('nothing that signs in is in the database or in the log', async () => {
    const link = await serving.linkFor('ines');
    const cookie = await serving.cookieFor('ines');
    await fetch(link, { headers: { cookie, referer: link } });
    await ask('/api/me', { as: cookie });
    const kept = Buffer.concat([await readFile(shop.file), await readFile(`${shop.file}-wal`)]).toString('latin1');
    const said = serving.logged.join('');
    expect(said).toContain('/sign-in/:token');
    for (const secret of [link.split('/').at(-1), cookie.split('=')[1]]) {
      expect(secret).toMatch(/^[\w-]{43}$/);
      expect(kept).not.toContain(secret);
      expect(said).not.toContain(secret);
    }
  });

  test('whoever is signed in is told who they are; signing out ends it', async () => {
    const cookie = await serving.cookieFor('tomas');
    expect(await (await ask('/api/me', { as: cookie })).json()).toEqual({
      id: 'tomas',
      name: 'Tomas Brook',
      initials: 'TB',
      roles: ['technician'],
      certified: false,
    });
    expect((await ask('/sign-out', { as: cookie, body: {} })).status).toBe(200);
    expect((await ask('/api/me', { as: cookie })).status).toBe(401);
  });

  test('of all the places where somebody is signed in, the one at hand is named', async () => {
    await serving.cookieFor('tomas');
    const cookie = await serving.cookieFor('tomas');
    const page = await (await fetch(`${serving.url}/devices`, { headers: { cookie } })).text();
    expect(page.match(/(?:This )?computer, since/g)?.filter((words) => words.startsWith('This'))).toHaveLength(1);
    expect(page.match(/>computer, since/g)?.length).toBeGreaterThan(0);
  });
  test('a person who left the crew is signed in no longer', async () => {
    const person = await shop.desk.person('otto');
    if (!person) throw new Error('otto is missing');
    const cookie = await serving.cookieFor('otto');
    expect((await ask('/api/me', { as: cookie })).status).toBe(200);
    await shop.store.savePerson({ ...person, active: false });
    expect((await ask('/api/me', { as: cookie })).status).toBe(401);
    await shop.store.savePerson(person);
  });

  test.each(['/api/me', '/api/jobs', '/api/jobs/x', '/api/jobs/x/feed', '/', '/jobs/x'])(
    '%s is for people who are signed in',
    async (path) => {
      const answers = [await ask(path), await ask(path, { as: 'nocool=made-up' })];
      expect(answers.map(({ status }) => status)).toEqual([401, 401]);
    },
  );
});

describe('what is sent from elsewhere changes nothing', () => {
  const body = { title: 'A call', client: 'elsewhere' };
  test.each([
    ['without the header', { headers: { 'x-nocool': '' } }],
    ['from another site', { headers: { origin: 'https://elsewhere.example' } }],
    ['from nowhere', { headers: { origin: 'null' } }],
  ])('%s', async (_how, more) => {
    const answer = await ask('/api/jobs', { as: 'ines', body, ...more });
    expect(answer.status).toBe(403);
    expect(Object.keys((await answer.json()) as object)).toEqual(['error', 'what']);
  });
  test('the same from here is taken', async () => {
    const answer = await ask('/api/jobs', { as: 'ines', body, headers: { origin: serving.url } });
    expect(answer.status).toBe(201);
    const turn = (await answer.json()) as Turn;
    expect(answer.headers.get('location')).toBe(`/jobs/${turn.view.job}`);
  });
  test('a sign-in form from another site is refused before the link is used', async () => {
    const token = (await serving.linkFor('ines')).split('/').at(-1) ?? '';
    const form = (origin: string) =>
      fetch(`${serving.url}/sign-in`, {
        method: 'POST',
        body: new URLSearchParams({ token }),
        redirect: 'manual',
        headers: { origin },
      });
    expect((await form('https://elsewhere.example')).status).toBe(403);
    expect((await form(serving.url)).status).toBe(303);
  });
});

describe('errors are a status, a code and what to do', () => {
  const reply = { kind: 'text', seq: 1, text: 'why', client: 'e' };
  test.each([
    [400, 'a reply of no kind', '/api/jobs/x/replies', { kind: 'wish', client: 'e' }],
    [400, 'a body that is no JSON', '/api/jobs', '{'],
    [400, 'a title of nothing', '/api/jobs', { title: '  ', client: 'e' }],
    [400, 'a key too many', '/api/jobs', { title: 'A call', client: 'e', admin: true }],
    [404, 'a job that is not', '/api/jobs/x/replies', reply],
    [404, 'a path that is not', '/api/nothing', {}],
    [413, 'a body without end', '/api/jobs', { title: 'x'.repeat(200_000), client: 'e' }],
  ])('%i: %s', async (status, _what, path, body) => {
    const answer = await ask(path, { as: 'ines', body });
    expect(answer.status).toBe(status);
    const said = (await answer.json()) as { error: string; what: string };
    expect(Object.keys(said)).toEqual(['error', 'what']);
    expect(said.what.length).toBeGreaterThan(10);
  });

  test('403: a call of somebody else', async () => {
    const { view } = await openCall('ines');
    for (const path of [`/api/jobs/${view.job}`, `/api/jobs/${view.job}/feed`, `/jobs/${view.job}`])
      expect((await ask(path, { as: 'tomas' })).status).toBe(403);
  });

  test('503: nothing was kept while the database is locked; sent again it counts once', async () => {
    const turn = await openCall();
    const again = { kind: 'command', name: 'note', text: 'the gate sticks', client: client() };
    const other = new Database(shop.file);
    other.exec('begin exclusive');
    const answer = await ask(`/api/jobs/${turn.view.job}/replies`, { as: 'ines', body: again });
    other.exec('rollback');
    other.close();
    expect(answer.status).toBe(503);
    expect(await answer.json()).toEqual({ error: 'not-kept', what: 'Nothing was kept. Send it again.' });
    const [first, second] = [await send(turn, again), await send(turn, again)];
    expect(first.entries.map(({ seq }) => seq)).toEqual([turn.view.prompt.last + 1]);
    expect(second.entries).toEqual(first.entries);
    expect(second.view.prompt.last).toBe(first.view.prompt.last);
  });

  test('500: a bug is logged and nothing of it is told', async () => {
    const desk = { ...shop.desk, jobs: () => Promise.reject(new Error('at secret/place.ts')) };
    const broken = await serve({ ...shop, desk, pageFolder: folder });
    const cookie = await broken.cookieFor('ines');
    const answer = await fetch(`${broken.url}/api/jobs`, { headers: { cookie } });
    expect(answer.status).toBe(500);
    expect(await answer.text()).not.toContain('secret');
    expect(broken.logged.join('')).toContain('secret');
    await broken.close();
  });
});

describe('the API', () => {
  test('a refusal is an answer, not an error', async () => {
    const turn = await openCall();
    const refused = await send(turn, { kind: 'answer', seq: turn.view.prompt.seq, parts: { choice: ['nonsense'] } });
    expect(refused.refusal?.code).toBe('unknown-option');
    for (const each of [turn, refused]) expect(z.safeParse(TurnShape, each).error).toBeUndefined();
    const stale = await send(turn, { kind: 'answer', seq: turn.view.prompt.seq + 9, parts: {} });
    expect(stale.refusal?.code).toBe('stale');
    expect(stale.view.prompt.last).toBe(turn.view.prompt.last);
  });

  test('its document names every route and every schema is resolved', async () => {
    const document = (await (await ask('/api/openapi.json', { as: 'ines' })).json()) as {
      openapi: string;
      paths: Record<string, object>;
    };
    expect(document.openapi).toMatch(/^3\./);
    expect(Object.fromEntries(Object.entries(document.paths).map(([path, of]) => [path, Object.keys(of)]))).toEqual({
      '/api/jobs/{job}/photos': ['post'],
      '/api/jobs/{job}/photos/{hash}': ['get'],
      '/healthz': ['get'],
      '/readyz': ['get'],
      '/sign-out': ['post'],
      '/api/me': ['get'],
      '/api/me/devices': ['get'],
      '/api/me/units': ['post'],
      '/api/me/devices/{device}/revoke': ['post'],
      '/api/jobs': ['get', 'post'],
      '/api/jobs/{job}': ['get'],
      '/api/jobs/{job}/export': ['get'],
      '/api/jobs/{job}/replies': ['post'],
      '/api/jobs/{job}/feed': ['get'],
      '/api/jobs/{job}/assign': ['post'],
      '/api/jobs/{job}/shares': ['get', 'post'],
      '/api/jobs/{job}/shares/{id}': ['delete'],
      '/jobs/{job}/report/{audience}/json': ['get'],
      '/api/review': ['get'],
      '/api/review/{job}': ['get'],
      '/api/review/{job}/recompute': ['post'],
      '/api/alarms': ['get'],
      '/api/awaited': ['get'],
      '/api/board': ['get'],
      '/api/calls': ['post'],
      '/api/calls/{job}/unit': ['post'],
      '/api/feed': ['get'],
      '/api/find': ['post'],
      '/api/known': ['post'],
      '/api/shop': ['get'],
      '/api/shop/people': ['post'],
      '/api/shop/people/{id}/devices': ['get'],
      '/api/shop/people/{id}/devices/{device}/revoke': ['post'],
      '/api/shop/people/{id}/link': ['post'],
      '/api/shop/people/{id}/revoke': ['post'],
      '/api/shop/settings': ['post'],
      '/api/shop/trucks': ['post'],
    });
    const text = JSON.stringify(document);
    for (const word of ['control-live', 'take back', 'set-aside', 'not-proved']) expect(text).toContain(word);
    const missing = [...text.matchAll(/"\$ref":"#\/components\/schemas\/([^"]+)"/g)].filter(
      ([, name]) => !text.includes(`"${name}":{`),
    );
    expect(missing).toEqual([]);
  });

  test('a job comes as one file to whoever takes part, and to nobody else', async () => {
    const { job } = (await openCall()).view;
    const answer = await ask(`/api/jobs/${job}/export`, { as: 'ines' });
    expect(answer.headers.get('content-disposition')).toBe(`attachment; filename="${job}.json"`);
    const { troubles } = createVerifier(SHELF, []).verify(new Uint8Array(await answer.arrayBuffer()));
    expect(troubles.map((t) => t.word)).toEqual(['signature missing']);
    expect((await ask(`/api/jobs/${job}/export`, { as: 'tomas' })).status).toBe(403);
    // On the page it is for whoever reads the record, and works without a script.
    const link = `href="/api/jobs/${job}/export" download`;
    expect(await (await ask(`/jobs/${job}`, { as: 'ruth' })).text()).toContain(link);
    expect(await (await ask(`/jobs/${job}`, { as: 'ines' })).text()).not.toContain(link);
    expect((await ask('/api/jobs/nothing/export', { as: 'ines' })).status).toBe(404);
  });

  test('it says that it is alive', async () => {
    expect(await (await ask('/healthz')).json()).toEqual({ ok: true });
  });
});

describe('what every answer carries', () => {
  test('a policy without inline script, no sniffing, no frame, nothing kept by the browser', async () => {
    for (const path of ['/', '/api/me', '/healthz', '/nothing', '/sign-in/x']) {
      const { headers } = await ask(path, { as: 'ines' });
      const policy = headers.get('content-security-policy') ?? '';
      expect(policy).toContain(`default-src 'none'`);
      expect(policy).toContain(`script-src 'self'`);
      expect(policy).toContain(`frame-ancestors 'none'`);
      expect(policy).not.toMatch(/unsafe|\*/);
      expect(headers.get('x-content-type-options')).toBe('nosniff');
      expect(headers.get('x-frame-options')).toBe('DENY');
      expect(headers.get('cache-control')).toBe('no-store');
    }
  });

  test('the built files are kept for ever, by names that change with them', async () => {
    const page = await (await ask('/', { as: 'ines' })).text();
    const files = [...page.matchAll(/(?:src|href)="(\/assets\/[^"]+)"/g)].map(([, path]) => path ?? '');
    expect(files.some((path) => path.endsWith('.js')) && files.some((path) => path.endsWith('.woff2'))).toBe(true);
    for (const path of files) {
      const answer = await ask(path);
      expect(answer.status).toBe(200);
      expect((await answer.arrayBuffer()).byteLength).toBeGreaterThan(1000);
      expect(answer.headers.get('cache-control')).toContain('immutable');
    }
  });

  test('words of people end no script and no element', async () => {
    const title = `</script><script>alert(1)</script>\u2028<img src=x onerror=alert(2)>`;
    const { view } = await openCall('ines', title);
    const page = await (await ask(`/jobs/${view.job}`, { as: 'ines' })).text();
    expect(page).not.toContain('<script>alert');
    expect(page).not.toContain('<img');
    const state = /<script type="application\/json" id="state">(.*?)<\/script>/.exec(page)?.[1] ?? '';
    expect(JSON.parse(state)).toMatchObject({ page: 'ticket', view: { title } });
  });

  test('behind https the cookie is sent over https alone', async () => {
    const secure = await serve({ ...shop, pageFolder: folder, secureCookies: true });
    const token = (await secure.linkFor('ines')).split('/').at(-1) ?? '';
    const answer = await fetch(`${secure.url}/sign-in`, {
      method: 'POST',
      body: new URLSearchParams({ token }),
      redirect: 'manual',
    });
    expect(answer.headers.get('set-cookie')).toContain('Secure');
    expect(answer.headers.get('strict-transport-security')).toContain('max-age');
    await secure.close();
  });
});
