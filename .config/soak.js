/**
 * npm run soak -- --minutes N: the real server under a steady load for half an hour, or so many minutes. People open calls,
 * answer, watch and go; what its memory and its open handles do is printed, and a growth that goes on is a failure.
 * Exit codes: 0 nothing grew · 1 something did, or the server broke · 2 wrong usage.
 */
import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { mkdtempSync, rmSync } from 'node:fs';
import { createServer } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { setTimeout as sleep } from 'node:timers/promises';
import { parseArgs } from 'node:util';

let minutes = 0;
try {
  minutes = Number(parseArgs({ options: { minutes: { type: 'string', default: '30' } } }).values.minutes);
} catch {
  // Said below.
}
if (!(minutes >= 1 && minutes <= 10_000)) {
  process.stderr.write('usage: npm run soak -- [--minutes N], at least 1\n');
  process.exit(2);
}
const TOKEN = 'soak-soak-soak-soak';
const [PEOPLE, PAUSE, SAMPLES] = [6, 200, 60];
/** The first part of the run fills caches, which have an end: it is left out. */
const WARM_UP = 0.4;
/** What may lie between the lowest of the middle and the lowest of the end: a share, and bytes or handles on top. */
const ROOM = {
  heap: { share: 1.2, more: 24e6, unit: 1e6, name: 'nocool_nodejs_heap_size_used_bytes' },
  memory: { share: 1.2, more: 48e6, unit: 1e6, name: 'nocool_process_resident_memory_bytes' },
  handles: { share: 1, more: 20, unit: 1, name: 'nocool_nodejs_active_resources_total' },
};
const LINES = [
  'd',
  'psc',
  'yes',
  'pull-out, breaker, no other feed, two legs, outlet',
  'yes',
  'clean, 1 cap, 45+5 6% 440',
];
const MORE = [
  '121 / 0.2 0 0.1 / 0 0 / 121',
  '9.3 / 0.6 0.1 0.5 / 9.3',
  'why',
  'not understood at all',
  'power is back',
];

const probe = createServer().listen(0, '127.0.0.1');
await once(probe, 'listening');
const { port } = probe.address();
probe.close();
const folder = mkdtempSync(join(tmpdir(), 'nocool-soak-'));
const env = { ...process.env, NOCOOL_DB: join(folder, 'shop.db'), NOCOOL_PORT: String(port), NOCOOL_HOST: '127.0.0.1' };
Object.assign(env, { NOCOOL_RATE: '0', NOCOOL_METRICS_TOKEN: TOKEN, NOCOOL_LOG: 'error' });
const server = spawn(process.execPath, ['dist/web-chat/server/main.js'], { env, stdio: ['ignore', 'pipe', 'inherit'] });
let said = '';
server.stdout.on('data', (text) => {
  said += text;
});
let over = false;
server.once('exit', () => {
  if (over) return;
  process.stderr.write('The server ended by itself.\n');
  process.exit(1);
});
while ((said.match(/\/sign-in\//g) ?? []).length < 3) await sleep(50);
const base = `http://127.0.0.1:${port}`;
const cookies = [];
for (const [, token] of said.matchAll(/\/sign-in\/([\w-]+)/g)) {
  const body = new URLSearchParams({ token });
  const answer = await fetch(`${base}/sign-in`, { method: 'POST', body, redirect: 'manual' });
  cookies.push(answer.headers.getSetCookie()[0].split(';')[0]);
}

let [turns, broken] = [0, 0];
async function ask(cookie, path, body) {
  const headers = { cookie, ...(body ? { 'content-type': 'application/json', 'x-nocool': '1' } : {}) };
  const init = body ? { method: 'POST', body: JSON.stringify(body), headers } : { headers };
  const answer = await fetch(base + path, init);
  if (answer.status >= 500) broken += 1;
  const text = await answer.text();
  return answer.headers.get('content-type')?.startsWith('application/json') ? JSON.parse(text) : text;
}
async function person(n) {
  const cookie = cookies[n % cookies.length];
  for (let round = 0; !over; round++) {
    const id = `soak-${n}-${round}`;
    await ask(cookie, '/');
    const opened = await ask(cookie, '/api/jobs', { title: `No cool, house ${id}`, client: id });
    const { job, prompt } = opened.view;
    const leaving = new AbortController();
    const feed = fetch(`${base}/api/jobs/${job}/feed`, { headers: { cookie }, signal: leaving.signal })
      .then((answer) => answer.text())
      .catch(() => '');
    let { seq } = prompt;
    for (const [i, text] of [...LINES, ...MORE].entries()) {
      const turn = await ask(cookie, `/api/jobs/${job}/replies`, { kind: 'text', client: `${id}-${i}`, seq, text });
      seq = turn.view.prompt.seq;
      turns += 1;
      await sleep(PAUSE);
    }
    for (const path of [`/jobs/${job}`, '/board', '/api/review', `/api/jobs/${job}/export`, '/nothing'])
      await ask(cookie, path);
    leaving.abort();
    await feed;
  }
}
async function sample() {
  const headers = { authorization: `Bearer ${TOKEN}` };
  const text = await (await fetch(`${base}/metrics`, { headers })).text();
  return Object.fromEntries(
    Object.entries(ROOM).map(([what, { name }]) => {
      const line = text.split('\n').find((each) => each.startsWith(`${name} `) || each.startsWith(`${name}{`));
      return [what, Number(line?.split(' ').at(-1))];
    }),
  );
}

const people = Array.from({ length: PEOPLE }, (_, n) => person(n));
const samples = [];
const every = (minutes * 60_000) / SAMPLES;
process.stdout.write('minute    turns   heap MB   memory MB   handles\n');
for (let i = 1; i <= SAMPLES; i++) {
  await sleep(every);
  const now = await sample();
  samples.push(now);
  const figures = [(now.heap / 1e6).toFixed(1), (now.memory / 1e6).toFixed(1), String(now.handles)];
  const at = ((i * every) / 60_000).toFixed(1);
  if (i % 5 === 0)
    process.stdout.write(
      `${at.padStart(6)} ${String(turns).padStart(8)} ${figures.map((f) => f.padStart(10)).join(' ')}\n`,
    );
}
over = true;
await Promise.allSettled(people);
server.kill('SIGTERM');
await once(server, 'exit');
rmSync(folder, { recursive: true });

const [from, half] = [Math.floor(SAMPLES * WARM_UP), Math.floor(SAMPLES * (1 + WARM_UP) * 0.5)];
let grew = broken > 0;
for (const [what, { share, more, unit }] of Object.entries(ROOM)) {
  const low = (some) => Math.min(...some.map((each) => each[what]));
  const [middle, end] = [low(samples.slice(from, half)), low(samples.slice(half))];
  const flat = end <= middle * share + more;
  grew ||= !flat;
  const [a, b] = [middle, end].map((value) => (value / unit).toFixed(1));
  process.stdout.write(`${what}: lowest ${a} in the middle, ${b} at the end: ${flat ? 'flat' : 'IT GREW'}\n`);
}
process.stdout.write(`${turns} turns, ${broken} answers of trouble\n`);
process.exitCode = grew ? 1 : 0;
