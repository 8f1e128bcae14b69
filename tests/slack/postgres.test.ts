/** A call from its opening to the signature on a real PostgreSQL, in two processes: the web chat in one, the bot in the other. */
import { spawnSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { afterAll, beforeAll, expect, test } from 'vitest';
import type { JobView } from '../../engine/desk/index.ts';
import type { Entry, Prompt } from '../../engine/index.ts';
import { checkShop } from '../../engine/store/check.ts';
import type { Store } from '../../engine/store/index.ts';
import { personOf } from '../desk/shop.ts';
import { Conversation, PEOPLE, type PersonId, PROVES, TO_FIGURES, TO_READINGS } from '../people.ts';
import { type PostgresGround, postgresGround } from '../store/postgres-ground.ts';
import { cookieFor, type Server, startServer } from '../store/server-process.ts';
import { Member, wordsOf } from './fake/person.ts';
import { Slack } from './fake/platform.ts';
import { APP_TOKEN, BOT_TOKEN, CREW, eventBody, type Message } from './fake/wire.ts';
import { ACCOUNTS, until } from './workspace.ts';

const MAIN = fileURLToPath(new URL('../../dist/web-chat/server/main.js', import.meta.url));
const LINES = [...TO_READINGS, 'herm 36.1 fan 5.02 hf 4.4 case ol', ...TO_FIGURES, PROVES];
let [slack, ground, store, server] = [] as unknown as [Slack, PostgresGround, Store, Server];
const cookies = new Map<string, string>();
beforeAll(async () => {
  if (!existsSync(MAIN)) spawnSync('npm', ['run', '-s', 'build'], { stdio: 'inherit' });
  slack = await Slack.start();
  slack.pings = 500;
  ground = await postgresGround();
  store = await ground.open();
  for (const p of Object.values(PEOPLE)) {
    await store.savePerson(personOf(p, { chats: { slack: ACCOUNTS[p.id] } }));
    cookies.set(p.id, await cookieFor(store, p.id));
  }
  server = await startServer(
    { path: MAIN, remove: () => undefined },
    {
      ...{ DATABASE_URL: ground.url, NOCOOL_DEMO: 'no', NOCOOL_LOG: 'info', NOCOOL_SLACK_API: slack.api },
      ...{ NOCOOL_SLACK_BOT_TOKEN: BOT_TOKEN, NOCOOL_SLACK_APP_TOKEN: APP_TOKEN, NOCOOL_SLACK_CHANNEL: CREW },
    },
  );
}, 120_000);
afterAll(async () => {
  server?.child.kill('SIGTERM');
  await server?.ended;
  await store?.close();
  await slack?.stop();
  await ground?.remove();
});

const web = async <T>(path: string, body?: object, by: PersonId = 'ines'): Promise<T> => {
  const headers = { cookie: cookies.get(by) ?? '', 'content-type': 'application/json', 'x-nocool': '1' };
  const sent = body === undefined ? { headers } : { headers, method: 'POST', body: JSON.stringify(body) };
  const answer = await fetch(server.url + path, sent);
  expect([200, 201], path).toContain(answer.status);
  return (await answer.json()) as T;
};
interface Health {
  readonly chats: { readonly slack: { readonly state: string } };
}
const state = async (): Promise<string> => (await web<Health>('/healthz')).chats.slack.state;
/** The option that was chosen last. */
function chosenIn({ parts }: Prompt, record: readonly Entry[]): { key: string; id: string; label: string } {
  const last = JSON.stringify(record.findLast((e) => e.kind === 'answered')?.body);
  const options = parts.flatMap((part) =>
    'options' in part ? part.options.map((o) => ({ ...o, key: part.key })) : [],
  );
  const found = options.find(({ id }) => last.includes(`"chosen":["${id}"]`));
  if (!found) throw new Error(`nothing of ${options.map(({ id }) => id).join(' ')} was chosen`);
  return found;
}
const words = (m: Message | undefined): string => (m ? `${m.text}\n${wordsOf(m)}` : '');
const said = (list: readonly Entry[]): unknown[] =>
  list
    .filter(({ kind }) => kind !== 'opened' && kind !== 'set' && kind !== 'assigned' && kind !== 'signed')
    .map(({ kind, body }) => [kind, JSON.parse(JSON.stringify(body).replace(/"(ref|hash)":"[^"]*"/g, '"$1":""'))]);

test('the same call goes on in both, line by line, and is signed from the chat', async () => {
  await until(
    async () => (await state()) === 'up',
    () => server.output(),
    60_000,
    100,
  );
  const [ines, ruth] = [new Member(slack, ACCOUNTS.ines), new Member(slack, ACCOUNTS.ruth)];
  const { view: first } = await web<{ view: JobView }>(
    '/api/jobs',
    { title: 'Elm Row 9', assign: 'ines', client: 'opening' },
    'dana',
  );
  const job = first.job;
  const view = (): Promise<JobView> => web<JobView>(`/api/jobs/${job}`);
  const asked = (): Message | undefined =>
    slack.messages.findLast((m) => m.thread !== undefined && m.blocks.some(({ block_id }) => block_id === 'always'));
  const reply = (seq: number, text: string, client: string) =>
    web<{ refusal: { code: string } | null }>(`/api/jobs/${job}/replies`, { kind: 'text', client, seq, text });
  const engine = new Conversation();
  for (const [n, line] of LINES.entries()) {
    const { prompt } = await view();
    await until(
      () => words(asked()).includes(prompt.title),
      () => `the chat does not ask "${prompt.title}": ${words(asked())}`,
      30_000,
    );
    if (n === 0) {
      // Two answers at once, one in each: one is on the record, and the other is told.
      const told = ines.told.length;
      const { key, id, label } = chosenIn(prompt, engine.types(line).entries);
      const answer = { kind: 'answer', client: 'w0', seq: prompt.seq, parts: { [key]: [id] } };
      const [{ refusal }] = await Promise.all([
        web<{ refusal: { code: string } | null }>(`/api/jobs/${job}/replies`, answer),
        ines.tap(asked() as Message, 'Send', { option: label }),
      ]);
      if (refusal) expect(refusal.code).toBe('stale');
      else await until(() => ines.told.length > told, 'nothing was said');
    } else if (n % 2 === 0) expect((await reply(prompt.seq, line, `w${n}`)).refusal).toBeNull();
    else await ines.type(line, asked()?.thread);
    await until(
      async () => (await view()).prompt.seq > prompt.seq,
      () => `"${line}" was not taken: ${words(ines.told.at(-1))}`,
      30_000,
    );
    if (n > 0) engine.types(line);
  }
  expect((await view()).prompt.kind).toBe('finished');
  expect(said((await store.read(job)).entries)).toEqual(said(engine.entries));
  const notice = (): Message | undefined => ruth.told.findLast((m) => words(m).includes('finished, to be signed'));
  await until(() => notice() !== undefined, 'the senior was not told');
  await ruth.tap(notice() as Message, 'Sign');
  await until(() => slack.modals.length > 0, 'no form');
  expect(await ruth.submit({})).toEqual({ response_action: 'clear' });
  expect((await view()).prompt.kind).toBe('signed');
  await until(async () => (await store.unsaid('slack')).length === 0, 'not all was said', 30_000);
  const ids = slack.messages.flatMap((m) => (m.metadata ? [JSON.stringify(m.metadata.event_payload)] : []));
  expect(new Set(ids).size).toBe(ids.length);
  expect(slack.messages.filter((m) => m.channel === CREW && !m.thread && !m.to)).toHaveLength(1);
  expect((await checkShop(store)).trouble).toEqual([]);
}, 180_000);

test('the app is uninstalled: one line, health says so, the web chat goes on and what has to be said is kept', async () => {
  await slack.deliver('events_api', eventBody({ type: 'app_uninstalled' })).catch(() => undefined);
  await until(
    async () => (await state()) === 'refused',
    () => server.output(),
    30_000,
    50,
  );
  // What was on its way of the call before is said by now; from here on nothing is.
  const posted = slack.called('chat.postMessage').length;
  const { view } = await web<{ view: JobView }>(
    '/api/jobs',
    { title: 'Elm Row 10', assign: 'ines', client: 'o2' },
    'dana',
  );
  await web(`/api/jobs/${view.job}/replies`, { kind: 'text', client: 'x', seq: view.prompt.seq, text: 'd' });
  expect(await state()).toBe('refused');
  expect(slack.called('chat.postMessage').length).toBe(posted);
  await until(() => server.output().includes('nocool: Slack'), 'no line', 10_000);
  const lines = server
    .output()
    .split('\n')
    .filter((line) => line.startsWith('nocool: Slack'));
  expect(lines).toEqual([
    expect.stringMatching(/took the app or its token away: app_uninstalled\. .* what has to be said is kept/),
  ]);
  expect(server.output()).not.toMatch(/xoxb-|xapp-/);
}, 60_000);
