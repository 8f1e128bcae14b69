/**
 * Hostile words through every door: kept as they were typed (half characters and NUL as U+FFFD), shown as words, obeyed by
 * nothing, and read in no time.
 */
import { createHash, randomBytes } from 'node:crypto';
import { rm } from 'node:fs/promises';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { head } from '../../bot/slack/render/head.ts';
import { event } from '../../bot/slack/render/told.ts';
import { render } from '../../bot/terminal/render.ts';
import { visible } from '../../bot/terminal/safe-text.ts';
import { Session } from '../../bot/terminal/session.ts';
import { wellFormed } from '../../engine/desk/heard.ts';
import { createDoor } from '../../engine/desk/index.ts';
import { checkShop } from '../../engine/store/check.ts';
import { buildPage } from '../web-chat/browser.ts';
import { type Serving, serve } from '../web-chat/serve.ts';
import { openShop, type Shop } from '../web-chat/shop.ts';
import { HOSTILE } from './strings.ts';

let shop: Shop;
let serving: Serving;
let folder: string;
let cookie: string;
beforeAll(async () => {
  [folder, shop] = await Promise.all([buildPage(), openShop()]);
  serving = await serve({ ...shop, pageFolder: folder });
  cookie = await serving.cookieFor('otto');
  // The manual is laid once, by the first call of a process.
  await shop.desk.open('otto', { title: 'First', client: 'first' });
});
afterAll(async () => {
  expect((await checkShop(shop.store)).trouble).toEqual([]);
  expect(Object.keys(Object.prototype)).toEqual([]);
  await serving?.close();
  await shop?.close();
  if (folder) await rm(folder, { recursive: true });
});

let count = 0;
const client = (): string => `h${++count}`;
const post = (url: string, body: unknown) =>
  serving.app.inject({
    ...{ method: 'POST', url, headers: { cookie, 'x-nocool': '1', 'content-type': 'application/json' } },
    payload: typeof body === 'string' ? body : JSON.stringify(body),
  });
const get = (url: string) => serving.app.inject({ url, headers: { cookie } });
const textsOf = async (job: string): Promise<string[]> => (await shop.store.read(job)).texts.map(({ text }) => text);
/** Milliseconds; the reading itself takes a few, the machine of the tests is shared. */
const SLOW = 2_000;

/** Nothing of ours holds these, so wherever one stands, words became markup. */
function expectNoMarkup(page: string): void {
  const outside = page.replace(/<script type="application\/json" id="state">.*?<\/script>/s, (state) => {
    expect(state.slice(1, -1)).not.toMatch(/<(?!\/script$|script type)/);
    return '';
  });
  expect(outside).not.toMatch(
    /<(?:script(?! type="module" src="\/assets\/)|img(?! src="\/api\/)|iframe|foreignObject)/i,
  );
  expect(outside).not.toMatch(/<[^>]*\son\w+=/i);
  expect(outside).not.toMatch(/(?:href|src)="javascript:/i);
}

describe.each(Object.entries(HOSTILE))('%s', (_name, words) => {
  const kept = wellFormed(words);
  test('is kept over the web, shown as words on every page, and read quickly', async () => {
    const begun = performance.now();
    const title = words.trim().slice(0, 200) || 'empty';
    const opened = await post('/api/jobs', { title, client: client() });
    expect(opened.statusCode).toBe(201);
    const { job, prompt } = (opened.json() as { view: { job: string; prompt: { seq: number } } }).view;
    const replies = [
      { kind: 'text', seq: prompt.seq, text: words },
      { kind: 'command', name: 'note', text: words },
      { kind: 'text', seq: prompt.seq, text: `skip ${words}` },
      { kind: 'answer', seq: prompt.seq, parts: { choice: [words.slice(0, 200)], [words.slice(0, 100)]: words } },
      { kind: 'amend', of: 2, parts: { choice: words }, reason: words },
      { kind: 'command', name: 'hand over', text: words },
    ];
    for (const reply of replies) {
      const answer = await post(`/api/jobs/${job}/replies`, { client: client(), ...reply });
      expect([200, 400]).toContain(answer.statusCode);
      if (answer.statusCode === 400) expect(reply.kind).not.toBe('text');
    }
    for (const body of [{ words: words.slice(0, 200) }, { typed: words.slice(0, 200) }])
      expect((await post('words' in body ? '/api/find' : '/api/known', body)).statusCode).toBe(200);
    expect(performance.now() - begun).toBeLessThan(SLOW);
    const texts = await textsOf(job);
    expect(texts.some((text) => text.includes(kept.trim()))).toBe(true);
    for (const url of ['/', `/jobs/${job}`, `/review/${job}`, '/board']) {
      const page = await get(url);
      expect(page.statusCode).toBe(200);
      expectNoMarkup(page.body);
    }
    const path = await get(`/api/jobs/${encodeURIComponent(wellFormed(words).slice(0, 100))}`);
    expect([400, 404]).toContain(path.statusCode);
  });

  test('is kept from the terminal and the team’s chat, and gives them no order', async () => {
    const { view } = await shop.desk.open('otto', { title: words.slice(0, 200), client: client() });
    const otto = await shop.desk.person('otto');
    if (!otto) throw new Error('otto is missing');
    const session = new Session(shop.desk, otto, view, client);
    await session.type(`note ${words}`);
    const around = { me: 'otto', names: (id: string) => id, question: words };
    const screen = [
      render(session.prompt, around),
      visible(session.view.title),
      ...session.view.ticket.flatMap((l) => l.says.map(visible)),
    ].join('\n');
    // biome-ignore lint/suspicious/noControlCharactersInRegex: these are what must not be there
    expect(screen).not.toMatch(/[\u0000-\u0009\u000b-\u001f\u007f-\u009f\u202a-\u202e\u2066-\u2069]/);

    const door = createDoor({ ...shop, chat: 'slack' });
    await door.type('otto', view.job, `note ${words}`, client());
    const after = await shop.desk.look('otto', view.job);
    const line = after.ticket.at(-1);
    if (!line) throw new Error('no line');
    const drawn = JSON.stringify([head(after, (id) => id, 'http://localhost'), event(line, (id) => id, [])]);
    const marked = [...drawn.matchAll(/"type":"mrkdwn","text":"((?:[^"\\]|\\.)*)"/g)]
      .map(([, text]) => text ?? '')
      .join('\n');
    expect(marked.replace(/<!date\^\d+\^\{time\}\|\d\d:\d\d UTC>|<http:\/\/localhost[^>]*>/g, '')).not.toMatch(
      /<[!@#h]/,
    );
    expect(drawn).not.toMatch(/\\u00(?:0[0-8]|1b|9b)|\u202e/);
    // Signs between a command and its words belong to neither; where nothing else is left, nothing was noted.
    const noted = kept.replace(/^[\s.,:;!)]+/, '').trim();
    const says = /[\p{L}\p{N}]/u.test(noted);
    if (says) expect((await textsOf(view.job)).filter((text) => text.includes(noted)).length).toBeGreaterThan(1);
  });
});

describe('a body', () => {
  const deep = (open: string, close: string, n: number): string => `${open.repeat(n)}1${close.repeat(n)}`;
  test.each([
    ['of a hundred thousand brackets', deep('[', ']', 50_000), 400],
    ['of objects in objects', `{"title":${deep('{"a":', '}', 10_000)},"client":"x"}`, 400],
    ['with a prototype', '{"title":"A call","client":"p1","__proto__":{"admin":true}}', 400],
    ['with a constructor', '{"title":"A call","client":"p2","constructor":{"prototype":{"admin":true}}}', 400],
    ['with a name twice', '{"title":"A","title":"B","client":"p3"}', 201],
    ['of bytes that are no UTF-8', Buffer.from('{"title":"\xff\xfe","client":"p4"}', 'latin1'), 201],
    ['of another encoding', Buffer.from('{"title":"A","client":"p5"}', 'utf16le'), 400],
    ['of nothing', '', 400],
    ['of null', 'null', 400],
    ['of a number without end', `{"title":${'9'.repeat(100_000)},"client":"x"}`, 400],
    [
      'of ten thousand names',
      JSON.stringify(Object.fromEntries(Array.from({ length: 8_000 }, (_, i) => [`k${i}`, i]))),
      400,
    ],
  ])('%s', async (_, payload, status) => {
    const headers = { cookie, 'x-nocool': '1', 'content-type': 'application/json' };
    const answer = await serving.app.inject({ method: 'POST', url: '/api/jobs', headers, payload });
    expect(answer.statusCode).toBe(status);
    expect(answer.body).not.toMatch(/node_modules|\bat \w+ \(/);
    expect(({} as { admin?: boolean }).admin).toBeUndefined();
  });

  test('of parts named as a prototype is a refusal like any other', async () => {
    const { view } = await shop.desk.open('otto', { title: 'Parts', client: client() });
    for (const name of ['__proto__', 'constructor', 'toString', 'hasOwnProperty']) {
      const body = `{"kind":"answer","client":"${client()}","seq":${view.prompt.seq},"parts":{"${name}":["d"]}}`;
      const answer = await post(`/api/jobs/${view.job}/replies`, body);
      expect([200, 400]).toContain(answer.statusCode);
      if (answer.statusCode === 200) expect(answer.json()).toMatchObject({ entries: [], refusal: expect.anything() });
    }
  });
});

test('paths lead nowhere but where they should', async () => {
  const tries = [
    '/assets/../main.js',
    '/assets/..%2f..%2fpackage.json',
    '/assets/%2e%2e/%2e%2e/package.json',
    '//etc/passwd',
  ];
  for (const url of [
    ...tries,
    '/assets/..\\..\\package.json',
    '/%00',
    '/jobs/%ff',
    '/assets/%c0%ae%c0%ae/x',
    '/api/jobs/..%2f..',
  ]) {
    const answer = await serving.app.inject({ url, headers: { cookie } });
    expect([400, 403, 404]).toContain(answer.statusCode);
    expect(answer.body).not.toMatch(/"devDependencies"|root:/);
  }
});

test('ids and what opens something are long and made by chance', async () => {
  const jobs = new Set<string>();
  for (let i = 0; i < 50; i++) jobs.add((await shop.desk.open('otto', { title: 'x', client: client() })).view.job);
  expect(jobs.size).toBe(50);
  expect([...jobs].every((job) => /^[0-9a-f]{32}$/.test(job))).toBe(true);
  // No digit of them stands still from one to the next.
  for (let at = 0; at < 32; at++) expect(new Set([...jobs].map((job) => job[at])).size).toBeGreaterThan(4);
  const token = (await serving.linkFor('ines')).split('/').at(-1) ?? '';
  expect(token).toMatch(/^[\w-]{43}$/);
  expect(createHash('sha256').update(randomBytes(1)).digest('hex')).not.toBe(token);
});
