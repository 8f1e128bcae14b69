/** The same bot over HTTP: signatures, stamps, bodies of every kind, retries; what is asked of Socket Mode holds here too. */
import { afterAll, beforeAll, expect, test } from 'vitest';
import { readConfig } from '../../bot/slack/config.ts';
import manifest from '../../bot/slack/manifest.json' with { type: 'json' };
import { wordsOf } from './fake/person.ts';
import type { Message } from './fake/wire.ts';
import { until, Workspace } from './workspace.ts';

let w: Workspace;
beforeAll(async () => {
  w = await Workspace.open('http');
});
afterAll(() => w.close());

const FORM = { 'content-type': 'application/x-www-form-urlencoded' };
const JSON_TYPE = { 'content-type': 'application/json' };
const help = new URLSearchParams({
  command: '/nocool',
  text: 'help',
  user_id: 'U1INES',
  team_id: 'T0SHOP',
  channel_id: 'C0CREW',
  trigger_id: '1.1',
}).toString();
/** Neither a call of the platform nor a word on a record. */
async function changesNothing(work: () => Promise<void>): Promise<void> {
  const calls = w.slack.spoken;
  await work();
  await w.settled();
  expect(w.slack.spoken).toBe(calls);
}

test('a signed command is answered at once, to whoever typed it alone', async () => {
  const begun = performance.now();
  const answer = await w.slack.request(help, FORM);
  expect(performance.now() - begun).toBeLessThan(1000);
  expect(answer.status).toBe(200);
  const said = (await answer.json()) as { response_type: string; text: string };
  expect(said.response_type).toBe('ephemeral');
  for (const verb of ['why', 'back', 'senior', 'stop', '/nocool take', '/nocool jobs'])
    expect(said.text).toContain(verb);
});

test.each([
  ['another secret', { secret: 'another-secret' }, 401],
  ['no signature', { sign: false }, 401],
  ['a stamp 301 s old', { age: 301 }, 401],
  ['a stamp 301 s ahead', { age: -301 }, 401],
  ['a stamp 290 s old', { age: 290 }, 200],
] as const)('%s', async (_, how, status) => {
  await changesNothing(async () => {
    expect((await w.slack.request(help, FORM, how)).status).toBe(status);
  });
});

test('the address is proved with a signature, not without; only a POST is taken', async () => {
  const proof = JSON.stringify({ type: 'url_verification', challenge: 'c0ffee' });
  const answer = await w.slack.request(proof, JSON_TYPE);
  expect([answer.status, await answer.text()]).toEqual([200, expect.stringContaining('c0ffee')]);
  expect((await w.slack.request(proof, JSON_TYPE, { sign: false })).status).toBe(401);
  expect((await fetch(w.slack.appUrl ?? '')).status).toBe(404);
  expect((await fetch(new URL('/elsewhere', w.slack.appUrl ?? ''), { method: 'POST' })).status).toBe(404);
});

test('bodies that nobody should send leave it alive', async () => {
  await changesNothing(async () => {
    const wrong = [
      [help, { 'content-type': 'application/x-www-form-urlencoded; charset=utf-8' }],
      ['x'.repeat(5 * 1024 * 1024), JSON_TYPE],
      ['{', JSON_TYPE],
      ['[]', JSON_TYPE],
      ['payload=nothing', FORM],
    ] as const;
    const answers = wrong.map(async ([body, headers]) => {
      const { status } = await w.slack.request(body, headers).catch(() => ({ status: 413 }));
      expect(status, body.slice(0, 20)).toBeGreaterThanOrEqual(400);
    });
    await Promise.all(answers);
    expect((await w.slack.request(help, FORM)).status).toBe(200);
  });
}, 30_000);

test('a line, redelivered three times, has one effect; a form says at its field what is wrong', async () => {
  const job = await w.call('Over HTTP');
  const thread = await w.thread(job);
  await w.ines.type('d', thread, { retries: 3 });
  await until(async () => (await w.view(job)).prompt.title.startsWith('What kind'), 'not taken');
  await w.settled();
  expect((await w.store.read(job)).entries.filter(({ kind }) => kind === 'answered')).toHaveLength(1);
  for (const line of ['psc', 'yes', 'pull-out, breaker, no other feed, two legs, outlet', 'yes'])
    await w.web(job, line);
  const asked = await w.asked(job);
  await w.ines.tap(asked, 'Answer');
  await until(() => w.slack.modals.length > 0, 'no form');
  const fields = w.ines.modal.view.blocks as { block_id?: string; element?: { type?: string } }[];
  const count = fields.find(({ element }) => element?.type === 'plain_text_input')?.block_id ?? '';
  expect(await w.ines.submit({ [count]: 'abc' })).toMatchObject({ response_action: 'errors' });
  const told = w.ines.told.length;
  await w.nobody.tap(asked, 'Answer');
  await until(() => w.nobody.told.length > 0, 'nothing was said');
  expect(wordsOf(w.nobody.told.at(-1) as Message)).toContain('belongs to nobody');
  expect(w.ines.told.length).toBe(told);
});

test('a call is taken over HTTP as well, one form after another in one window', async () => {
  const dana = w.dana;
  expect(await dana.command('take')).toEqual({});
  const stands = (): string => JSON.stringify(dana.modal.view);
  await until(() => stands().includes('Is any of this happening?'), 'no form');
  const [hazard = ''] = (dana.modal.view.blocks as { type: string; block_id: string }[]).flatMap((b) =>
    b.type === 'input' ? [b.block_id] : [],
  );
  expect(await dana.submit({ [hazard]: ['None of these'] })).toMatchObject({ response_action: 'update' });
  expect(stands()).toContain('Call-back number');
  expect(w.slack.refused).toEqual([]);
});

test('wrong settings are one line each, which holds nothing of what was set', () => {
  const set = { NOCOOL_SLACK_BOT_TOKEN: 'xoxb-1', NOCOOL_SLACK_APP_TOKEN: 'xapp-1', NOCOOL_SLACK_CHANNEL: 'C0CREW' };
  expect(readConfig(set)).toMatchObject({ transport: { appToken: 'xapp-1' }, api: 'https://slack.com/api/' });
  const { NOCOOL_SLACK_APP_TOKEN: _, ...noApp } = set;
  expect(readConfig({ ...noApp, NOCOOL_SLACK_SIGNING_SECRET: 'shhh-shhh' })).toMatchObject({
    transport: { port: 8090 },
  });
  for (const [env, name] of [
    [{ ...set, NOCOOL_SLACK_CHANNEL: 'general' }, 'NOCOOL_SLACK_CHANNEL'],
    [{ ...set, NOCOOL_SLACK_BOT_TOKEN: 'xoxp-secret' }, 'NOCOOL_SLACK_BOT_TOKEN'],
    [{ ...set, NOCOOL_SLACK_API: 'https://elsewhere.example/api/' }, 'NOCOOL_SLACK_API'],
    [noApp, 'NOCOOL_SLACK_APP_TOKEN'],
    [{}, 'NOCOOL_SLACK_BOT_TOKEN'],
  ] as const) {
    const read = readConfig(env);
    expect('wrong' in read && read.wrong).toMatch(new RegExp(`^${name} is not`));
    expect(JSON.stringify(read)).not.toMatch(/secret|elsewhere|general/);
  }
});

test('the manifest asks for what is used and for nothing else', () => {
  const { scopes } = manifest.oauth_config;
  const used: Record<string, string[]> = {
    'chat:write': ['chat.postMessage', 'chat.postEphemeral', 'chat.update'],
    'im:write': ['conversations.open'],
    'channels:history': ['conversations.history', 'conversations.replies', 'message.channels'],
    'groups:history': ['message.groups'],
    'im:history': ['message.im'],
    'app_mentions:read': ['app_mention'],
    'files:read': ['url_private'],
    'files:write': ['files.getUploadURLExternal', 'files.completeUploadExternal'],
    commands: ['/nocool'],
  };
  expect([...scopes.bot].sort()).toEqual(Object.keys(used).sort());
  expect(manifest.settings.event_subscriptions.bot_events.sort()).toEqual([
    'app_home_opened',
    'app_mention',
    'app_uninstalled',
    'message.channels',
    'message.groups',
    'message.im',
    'tokens_revoked',
  ]);
  expect(manifest.display_information.name.length).toBeLessThanOrEqual(35);
  expect(manifest.display_information.description.length).toBeLessThanOrEqual(140);
});
