/** What a server takes, how much of it, how fast and from whom; what it says where that is too much. */
import { once } from 'node:events';
import { rm } from 'node:fs/promises';
import { type AddressInfo, connect } from 'node:net';
import { setTimeout } from 'node:timers/promises';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { buildPage } from './browser.ts';
import { type Serving, serve } from './serve.ts';
import { openShop, type Shop } from './shop.ts';

let shop: Shop;
let folder: string;
const open: Serving[] = [];
const started = async (more: Partial<Parameters<typeof serve>[0]> = {}): Promise<Serving> => {
  const serving = await serve({ ...shop, pageFolder: folder, ...more });
  open.push(serving);
  return serving;
};
beforeAll(async () => {
  [folder, shop] = await Promise.all([buildPage(), openShop()]);
});
afterAll(async () => {
  await Promise.all(open.map((serving) => serving.close()));
  await shop?.close();
  if (folder) await rm(folder, { recursive: true });
});

describe('the rate', () => {
  test('of one person is limited, that of another is not; it says when to ask again', async () => {
    const { app, cookieFor } = await started({ perPerson: 40 });
    const [ines, ruth] = [await cookieFor('ines'), await cookieFor('ruth')];
    const ask = (cookie: string) => app.inject({ url: '/api/me', headers: { cookie } });
    const statuses: number[] = [];
    for (let i = 0; i < 45; i++) statuses.push((await ask(ines)).statusCode);
    expect([statuses.indexOf(429), statuses.filter((s) => s === 200).length]).toEqual([40, 40]);
    const refused = await ask(ines);
    expect(refused.json()).toMatchObject({
      error: 'too-many',
      what: expect.stringMatching(/^That is more than .* send it again/),
    });
    expect(Number(refused.headers['retry-after'])).toBeGreaterThan(0);
    expect((await ask(ruth)).statusCode).toBe(200);
  });
  test('of tries to sign in is limited by address, and the link is not used up by a try that was refused', async () => {
    const { app, linkFor } = await started({ perPerson: 100 });
    const token = (await linkFor('ines')).split('/').at(-1) ?? '';
    const send = (token: string, remoteAddress: string) =>
      app.inject({
        ...{ method: 'POST', url: '/sign-in', remoteAddress, payload: `token=${token}` },
        headers: { 'content-type': 'application/x-www-form-urlencoded' },
      });
    const tried: number[] = [];
    for (let i = 0; i < 8; i++) tried.push((await send('x'.repeat(43), '192.0.2.7')).statusCode);
    expect(tried).toEqual([401, 401, 401, 401, 401, 429, 429, 429]);
    expect((await send(token, '192.0.2.7')).statusCode).toBe(429);
    expect((await app.inject({ url: `/report/${'0'.repeat(64)}`, remoteAddress: '192.0.2.7' })).statusCode).toBe(429);
    expect((await send(token, '192.0.2.8')).statusCode).toBe(303);
  });
  test('of an address is that of the connection, unless proxies are said to stand in front', async () => {
    const [direct, behind] = [await started({ perPerson: 20 }), await started({ perPerson: 20, proxies: 1 })];
    const from = (on: Serving, forwarded: string) =>
      on.app.inject({ url: `/report/${'0'.repeat(64)}`, headers: { 'x-forwarded-for': forwarded } });
    expect([(await from(direct, '192.0.2.1')).statusCode, (await from(direct, '192.0.2.2')).statusCode]).toEqual([
      404, 429,
    ]);
    // The last one is what our own proxy saw; whatever stands before it, the other side wrote.
    expect((await from(behind, '192.0.2.1')).statusCode).toBe(404);
    expect((await from(behind, '203.0.113.5, 192.0.2.1')).statusCode).toBe(429);
    expect((await from(behind, '192.0.2.2')).statusCode).toBe(404);
  });
});

test('under pressure reading is told to come again, a reply is still taken, and who watches the machine is answered', async () => {
  const { app, cookieFor } = await started({ mostLag: 60 });
  const cookie = await cookieFor('ines');
  const { view } = await shop.desk.open('ines', { title: 'No cool', client: 'pressed' });
  await app.inject({ url: `/jobs/${view.job}`, headers: { cookie } });
  const ask = (url: string) => app.inject({ url, headers: { cookie } });
  const reply = () =>
    app.inject({
      ...{ method: 'POST', url: `/api/jobs/${view.job}/replies`, headers: { cookie, 'x-nocool': '1' } },
      payload: { kind: 'command', name: 'note', text: 'smoke', client: 'pressed-note' },
    });
  // The event loop is really held up, again and again.
  let seen: Awaited<ReturnType<typeof ask>> | null = null;
  const busy = setInterval(() => {
    for (const end = performance.now() + 150; performance.now() < end; ) Math.sqrt(end);
  }, 5);
  for (const end = performance.now() + 15_000; performance.now() < end; ) {
    // Timers get their turn: a request that waits for nothing leaves them none.
    await setTimeout(20);
    const answer = await ask('/api/jobs');
    if (answer.statusCode !== 503) continue;
    seen = answer;
    clearInterval(busy);
    expect((await ask('/healthz')).statusCode).toBe(200);
    expect((await reply()).statusCode).toBe(200);
    break;
  }
  clearInterval(busy);
  expect(seen?.json()).toMatchObject({ error: 'busy' });
  expect(seen?.headers['retry-after']).toBe('5');
  await expect.poll(async () => (await ask('/api/jobs')).statusCode, { timeout: 10_000 }).toBe(200);
}, 60_000);

describe('what is sent', () => {
  /** What a connection gets that sends these bytes, until it is closed. */
  const raw = async (on: Serving, bytes: string): Promise<string> => {
    const socket = connect((on.app.server.address() as AddressInfo).port, '127.0.0.1');
    let told = '';
    socket.on('data', (piece) => {
      told += piece;
    });
    socket.on('error', () => undefined);
    socket.write(bytes);
    await once(socket, 'close');
    return told;
  };
  test('with headers without end, or none that are HTTP, is refused and the connection closed', async () => {
    const on = await started();
    expect(await raw(on, `GET / HTTP/1.1\r\nhost: x\r\nx-a: ${'a'.repeat(20_000)}\r\n\r\n`)).toMatch(/^HTTP\/1.1 431 /);
    expect(await raw(on, 'GET / HTTP/1.1\r\nhost: x\r\ncontent-length: 1\r\ncontent-length: 2\r\n\r\n')).toMatch(
      /^HTTP\/1.1 400 /,
    );
    expect(
      await raw(on, 'POST / HTTP/1.1\r\nhost: x\r\ntransfer-encoding: chunked\r\ncontent-length: 3\r\n\r\nabc'),
    ).toMatch(/ 400 /);
    expect(await raw(on, '\u0000\u0001\u0002\r\n\r\n')).toMatch(/^HTTP\/1.1 400 /);
  });
  test('slowly has a time for its headers and one for the whole', async () => {
    const { server } = (await started()).app;
    expect([server.headersTimeout, server.requestTimeout, server.timeout]).toEqual([15_000, 120_000, 120_000]);
  });
  test.each([
    ['a type that is not taken', 'text/xml', '<a/>', 415],
    ['no JSON', 'application/json', '{"a":', 400],
    ['a photo where words belong', 'image/jpeg', 'x', 415],
    ['more than is taken', 'application/json', JSON.stringify({ title: 'x'.repeat(200_000) }), 413],
  ])('%s', async (_, type, payload, status) => {
    const on = open[0] ?? (await started());
    const cookie = await on.cookieFor('tomas');
    const headers = { cookie, 'x-nocool': '1', 'content-type': type };
    const answer = await on.app.inject({ method: 'POST', url: '/api/jobs', headers, payload });
    expect(answer.statusCode).toBe(status);
  });
});

test('every answer says what a browser may do with it: nothing inline, no frame, no sniffing, no device', async () => {
  const { app, cookieFor } = await started({ secureCookies: true });
  const cookie = await cookieFor('ines');
  expect(cookie).toMatch(/^__Host-nocool=/);
  for (const url of ['/', '/api/me', '/sign-in/none', '/report/none', '/nothing', '/healthz', '/worker.js']) {
    const { headers } = await app.inject({ url, headers: { cookie } });
    const policy = String(headers['content-security-policy']);
    expect(policy).not.toMatch(/unsafe|nonce|\*/);
    for (const rule of [`default-src 'none'`, `object-src 'none'`, `base-uri 'none'`, `frame-ancestors 'none'`])
      expect(policy).toContain(rule);
    expect(headers).toMatchObject({
      'strict-transport-security': 'max-age=31536000; includeSubDomains',
      'x-content-type-options': 'nosniff',
      'x-frame-options': 'DENY',
      'referrer-policy': 'same-origin',
      'cross-origin-opener-policy': 'same-origin',
      'cross-origin-resource-policy': 'same-origin',
      'cache-control': 'no-store',
    });
    expect(String(headers['permissions-policy']).split(', ')).toContain('camera=()');
    expect(String(headers['content-type'])).toMatch(/charset=utf-8$|^application\/json/);
    expect(headers['x-request-id']).toMatch(/^[0-9a-f]{16}$/);
    expect(headers['access-control-allow-origin']).toBeUndefined();
  }
});
