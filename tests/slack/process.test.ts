/** `npm start` as it is shipped: the bot beside the web chat, started by it, and unable to take it down. */
import { spawnSync } from 'node:child_process';
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { afterAll, afterEach, beforeAll, expect, test } from 'vitest';
import type { Store } from '../../engine/store/index.ts';
import { personOf } from '../desk/shop.ts';
import { PEOPLE } from '../people.ts';
import { cookieFor, type Server, startServer } from '../store/server-process.ts';
import { type SqliteGround, sqliteGround } from '../store/sqlite-ground.ts';
import { Member, wordsOf } from './fake/person.ts';
import { Slack } from './fake/platform.ts';
import { APP_TOKEN, BOT_TOKEN, CREW } from './fake/wire.ts';
import { ACCOUNTS, until } from './workspace.ts';

const MAIN = fileURLToPath(new URL('../../dist/web-chat/server/main.js', import.meta.url));
let slack: Slack;
let ground: SqliteGround;
let store: Store;
let server: Server | null = null;
beforeAll(async () => {
  // Built where `npm test` has not done it; the page is any that was built.
  if (!existsSync(MAIN) || process.env.SLACK_BUILD) spawnSync('npm', ['run', '-s', 'build'], { stdio: 'inherit' });
  slack = await Slack.start();
  slack.pings = 500;
  ground = await sqliteGround();
  store = await ground.open();
  for (const p of Object.values(PEOPLE)) await store.savePerson(personOf(p, { chats: { slack: ACCOUNTS[p.id] } }));
}, 120_000);
afterEach(async () => {
  // With a word, so that its bot goes too.
  server?.child.kill('SIGTERM');
  await server?.ended;
  server = null;
});
afterAll(async () => {
  await store.close();
  await slack.stop();
  await ground.remove();
});

const start = async (env: Record<string, string> = {}): Promise<Server> => {
  server = await startServer(
    { path: MAIN, remove: () => undefined },
    {
      NOCOOL_DB: ground.file,
      NOCOOL_DEMO: 'no',
      NOCOOL_LOG: 'info',
      NOCOOL_SLACK_BOT_TOKEN: BOT_TOKEN,
      NOCOOL_SLACK_APP_TOKEN: APP_TOKEN,
      NOCOOL_SLACK_CHANNEL: CREW,
      NOCOOL_SLACK_API: slack.api,
      ...env,
    },
  );
  return server;
};
interface Health {
  readonly ok: boolean;
  readonly chats: { readonly slack: { readonly state: string; readonly contact: string | null } };
}
const health = async (of: Server): Promise<Health> => (await (await fetch(`${of.url}/healthz`)).json()) as Health;
const linesOf = (of: Server): string[] =>
  of
    .output()
    .split('\n')
    .filter((line) => line.startsWith('nocool: Slack'));

test('a call goes from the web to the chat and back, live, through two processes on one file', async () => {
  const running = await start();
  await until(
    async () => (await health(running)).chats.slack.state === 'up',
    () => running.output(),
    60_000,
    100,
  );
  expect(Date.now() - Date.parse((await health(running)).chats.slack.contact ?? '')).toBeLessThan(20_000);
  await until(() => slack.connected, 'no socket');
  const cookie = await cookieFor(store, 'ines');
  const post = (path: string, body: object): Promise<Response> =>
    fetch(running.url + path, {
      method: 'POST',
      headers: { cookie, 'content-type': 'application/json', 'x-nocool': '1' },
      body: JSON.stringify(body),
    });
  await post('/api/jobs', { title: 'Across', client: 'opening' });
  const [row] = await store.jobs();
  const job = row?.job ?? '';
  const asked = () =>
    slack.messages.findLast((m) => m.thread !== undefined && m.blocks.some(({ block_id }) => block_id === 'always'));
  await until(() => asked() !== undefined, 'the web’s call has no thread');
  // The web's page follows what is answered in the chat.
  const feed = await fetch(`${running.url}/api/jobs/${job}/feed?after=${row?.lastSeq}`, { headers: { cookie } });
  const reader = feed.body?.getReader();
  const ines = new Member(slack, ACCOUNTS.ines);
  const question = asked();
  await ines.type('d', question?.thread);
  let seen = '';
  await until(async () => {
    const { value } = (await reader?.read()) ?? {};
    seen += new TextDecoder().decode(value);
    return seen.includes('"kind":"answered"');
  }, 'the web did not hear of it');
  await reader?.cancel();
  await until(() => wordsOf(asked() ?? { blocks: [] }).includes('What kind of unit is it?'), 'the chat does not go on');
  // And the chat follows the web.
  const view = (await (await fetch(`${running.url}/api/jobs/${job}`, { headers: { cookie } })).json()) as {
    prompt: { seq: number };
  };
  await post(`/api/jobs/${job}/replies`, { kind: 'text', client: 'w1', seq: view.prompt.seq, text: 'psc' });
  await until(
    () => !wordsOf(asked() ?? { blocks: [] }).includes('What kind of unit is it?'),
    'the chat did not hear of it',
  );
  await until(async () => (await store.unsaid('slack')).length === 0, 'not all was said');
  // A crash of the bot: the web chat is there, and a new bot comes.
  const connections = slack.connections;
  process.kill(childOf(running.child.pid), 'SIGKILL');
  await until(async () => (await health(running)).chats.slack.state === 'down', 'nobody noticed');
  expect(
    (await post(`/api/jobs/${job}/replies`, { kind: 'command', name: 'note', client: 'w2', text: 'while it was gone' }))
      .status,
  ).toBe(200);
  await until(() => slack.connections > connections, 'no new bot', 60_000);
  await until(
    () => slack.messages.some((m) => wordsOf(m).includes('while it was gone')),
    'what happened meanwhile was not said',
    60_000,
  );
  // Stopped while a line is on its way: it is taken before the end, or delivered again to the next bot; once.
  const last = ines.type('note typed as it stops', question?.thread).catch(() => undefined);
  const begun = performance.now();
  running.child.kill('SIGTERM');
  expect((await running.ended)[0]).toBe(0);
  expect(performance.now() - begun).toBeLessThan(10_000);
  const noted = async () => (await store.read(job)).texts.filter(({ text }) => text === 'typed as it stops').length;
  if ((await noted()) === 0) await start();
  await until(async () => (await noted()) === 1, 'the line is lost', 60_000);
  await last;
  expect(running.output()).not.toMatch(/xoxb-|xapp-|sign-in\/[\w-]{20}/);
}, 180_000);

test.each([
  [
    'a token that is not taken',
    { NOCOOL_SLACK_BOT_TOKEN: 'xoxb-another' },
    'refused',
    /^nocool: Slack: Slack does not take the tokens: invalid_auth\. Look at NOCOOL_SLACK_BOT_TOKEN/,
  ],
  [
    'a platform that is not there',
    { NOCOOL_SLACK_API: 'http://127.0.0.1:9/api/' },
    'down',
    /^nocool: Slack: it can’t be reached: .*Trying again\.$/,
  ],
])(
  '%s: one line, and the web chat goes on',
  async (_, env, state, line) => {
    const running = await start(env as unknown as Record<string, string>);
    await until(
      async () => (await health(running)).chats.slack.state === state,
      () => running.output(),
      60_000,
      100,
    );
    expect((await health(running)).ok).toBe(true);
    // What it says comes by another way than how it is.
    await until(() => linesOf(running).length > 0, 'no line', 10_000);
    const lines = linesOf(running);
    expect(lines[0]).toMatch(line);
    if (state === 'refused') expect(lines).toHaveLength(1);
    expect(running.output()).not.toMatch(/xoxb-|xapp-| at .*\.js:/);
  },
  120_000,
);

/** The bot's process, by its parent. */
function childOf(parent: number | undefined): number {
  const pids = readdirSync('/proc').filter((name) => /^\d+$/.test(name));
  const found = pids.find((pid) => {
    try {
      return (
        Number(
          readFileSync(`/proc/${pid}/stat`, 'utf8')
            .replace(/^.*\) /s, '')
            .split(' ')[1],
        ) === parent
      );
    } catch {
      return false;
    }
  });
  if (found === undefined) throw new Error('the server has no child');
  return Number(found);
}
