/** Once to the eye: limits, errors after acceptance, lost connections, crashes; and a clock that moves while nobody types. */
import { setTimeout as sleep } from 'node:timers/promises';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { wordsOf } from './fake/person.ts';
import { CREW, eventBody, type Json, type Message } from './fake/wire.ts';
import { until, Workspace } from './workspace.ts';

let w: Workspace;
beforeAll(async () => {
  w = await Workspace.open();
});
afterAll(() => w.close());

const idOf = (m: Message): string => String((m.metadata?.event_payload as Json | undefined)?.id ?? '');
/** Everything the bot has said of a job, by what it is; a picture by its file. */
async function saidOf(job: string): Promise<string[]> {
  await w.settled();
  const ours = w.slack.messages.filter((m) => m.user === 'U0BOT' && m.to === undefined);
  return ours.flatMap((m) => {
    const file = m.files?.map(({ name }) => String(name)).find((name) => name.includes(job));
    return idOf(m).includes(job) ? [idOf(m)] : file ? [file] : [];
  });
}
const twice = (ids: readonly string[]): string[] => ids.filter((id, i) => ids.indexOf(id) !== i);

describe('each message comes once', () => {
  test('after a limit: not before the time that was asked for, in order, and nothing else meanwhile', async () => {
    w.slack.trouble('chat.postMessage', { status: 429, retryAfter: 1 });
    const begun = Date.now();
    const job = await w.call('Limit');
    const posts = w.slack.called('chat.postMessage').filter(({ at }) => at >= begun);
    expect((posts[1]?.at ?? 0) - (posts[0]?.at ?? 0)).toBeGreaterThanOrEqual(1000);
    const said = await saidOf(job);
    expect(twice(said)).toEqual([]);
    expect(said[0]).toMatch(/\.head$/);
    expect(said.at(-1)).toMatch(/\.question\./);
  });

  test.each([
    ['a 503 after it was taken', { status: 503, accepted: true }],
    ['a 503 before it was taken', { status: 503 }],
    ['a reset after it was taken', { reset: true, accepted: true }],
    ['a reset before it was taken', { reset: true }],
    ['an error of the platform’s own after it was taken', { error: 'internal_error', accepted: true }],
    ['an answer that takes too long', { delay: 2_300 }],
  ])(
    '%s',
    async (name, trouble) => {
      w.slack.trouble('chat.postMessage', trouble, trouble);
      const { view } = await w.desk.open('dana', { title: name, assign: 'ines', client: w.client() });
      await until(
        async () => (await w.store.sayings('slack', view.job)).some(({ at }) => at !== null),
        'nothing was said',
        20_000,
      );
      await w.head(view.job);
      const said = await saidOf(view.job);
      expect(twice(said)).toEqual([]);
      expect(said.filter((id) => id.endsWith('.head'))).toHaveLength(1);
      expect(said.filter((id) => id.includes('.question.'))).toHaveLength(1);
      expect(w.slack.refused).toEqual([]);
    },
    30_000,
  );

  test('what is never taken is given up and takes nothing with it', async () => {
    const job = await w.call('Never');
    w.slack.trouble('chat.postMessage', { error: 'invalid_blocks' });
    await w.web(job, 'note the key is at the gate');
    await w.web(job, 'd');
    const asked = await w.asked(job);
    expect(wordsOf(asked)).toContain('What kind of unit is it?');
    expect(w.log.join('\n')).toContain('given up: event');
  });

  test('a crash between the record and the message, and between the message and its mark', async () => {
    const job = await w.call('Crash');
    await w.bot.stop();
    // Taken while the bot is gone, and one saying begun by a bot that died after the platform took it.
    await w.web(job, 'd');
    const thread = await w.thread(job);
    const { prompt } = await w.view(job);
    await w.start();
    await w.asked(job);
    const question = (await saidOf(job)).findLast((id) => id.includes('.question.')) ?? '';
    expect(wordsOf(await w.asked(job))).toContain(prompt.title);
    await w.bot.stop();
    // As a crash leaves it: it stands in the thread, and the list says that it was begun and not finished.
    await w.forgetPlace(question);
    await w.start();
    await w.settled();
    expect(twice(await saidOf(job))).toEqual([]);
    expect(w.slack.thread(thread).filter((m) => idOf(m) === question)).toHaveLength(1);
    // The thread goes on where it was: the same buttons work.
    await w.ines
      .tap(await w.asked(job), 'Send', {
        option: prompt.parts.flatMap((p) => ('options' in p ? p.options : []))[0]?.label ?? '',
      })
      .catch(async () => w.ines.type('psc', thread));
    await until(async () => (await w.view(job)).prompt.place !== prompt.place, 'the tap did not work');
  });

  test('two bots of one shop: what both hear is said by one', async () => {
    const second = await w.another();
    const job = await w.call('Two bots');
    for (const line of ['d', 'psc', 'note one', 'note two']) await w.web(job, line);
    await w.asked(job);
    const said = await saidOf(job);
    expect(said.length).toBeGreaterThan(4);
    expect(twice(said)).toEqual([]);
    await second.stop();
  });

  test('lines that come in another order than they were sent go to their own threads', async () => {
    const [a, b] = [await w.call('First'), await w.call('Second')];
    const [to, other] = [await w.thread(a), await w.thread(b)];
    await Promise.all([
      w.ines.type('note of b', other),
      w.ines.type('d', to),
      w.ines.type('d', other),
      w.ines.type('note of a', to),
    ]);
    await until(
      async () =>
        (await Promise.all([w.view(a), w.view(b)])).every(({ prompt }) => prompt.title.startsWith('What kind')),
      'not taken',
    );
    const texts = async (job: string): Promise<string[]> =>
      (await w.store.read(job)).texts.map(({ text }) => text).filter((text) => text.startsWith('of '));
    await until(async () => (await texts(a)).length + (await texts(b)).length === 2, 'not noted');
    expect([await texts(a), await texts(b)]).toEqual([['of a'], ['of b']]);
  });

  test('pictures come once, as PNG, with their words', async () => {
    const job = await w.call('Pictures');
    for (const line of [
      'd',
      'psc',
      'yes',
      'pull-out, breaker, no other feed, two legs, outlet',
      'yes',
      'clean, 1 cap, 45+5 6% 440',
      '121 / 0.2 0 0.1 / 0 0 / 121',
    ])
      await w.web(job, line);
    w.slack.trouble('files.completeUploadExternal', { status: 503, accepted: true });
    await w.web(job, '9.3 / 0.6 0.1 0.5 / 9.3');
    await w.web(job, 'fuses 0.1 0.1 contacts .1 .1 coil 12.6 t1g ol t2g ol');
    await w.web(job, 'no diagram');
    await w.web(job, 'wires off');
    await w.web(job, 'herm 36.1 fan 5.02 hf 4.4 case ol');
    await w.asked(job);
    const files = (await saidOf(job)).filter((id) => id.endsWith('.png'));
    expect(files.length).toBeGreaterThan(1);
    expect(twice(files)).toEqual([]);
    for (const { bytes, alt } of w.slack.files.values()) {
      expect(bytes.subarray(1, 4).toString()).toBe('PNG');
      expect(alt.length).toBeGreaterThan(20);
      expect(alt.length).toBeLessThanOrEqual(1000);
    }
  });
});

test('time passes and nobody types: the head and the question say that the isolation has ended', async () => {
  const job = await w.call('Too old');
  for (const line of [
    'd',
    'psc',
    'yes',
    'pull-out, breaker, no other feed, two legs, outlet',
    'yes',
    'clean, 1 cap, 45+5 6% 440',
    '121 / 0.2 0 0.1 / 0 0 / 121',
    '9.3 / 0.6 0.1 0.5 / 9.3',
  ])
    await w.web(job, line);
  await w.settled();
  expect(wordsOf(await w.head(job))).toContain('PROVED DEAD');
  // The timer runs on the machine's clock: the bot comes back after the deadline, as after a night.
  await w.bot.stop();
  w.offset = 31 * 60_000;
  await w.start();
  const asked = await w.asked(job);
  expect(wordsOf(asked)).toContain('The isolation is too old.');
  await until(async () => !wordsOf(await w.head(job)).includes('PROVED DEAD'), 'the head still says otherwise');
  w.offset = 0;
});

describe('connections', () => {
  test('the platform renews the connection: what comes meanwhile is taken once', async () => {
    const job = await w.call('Refresh');
    const thread = await w.thread(job);
    const before = w.slack.connections;
    w.slack.refresh();
    await w.ines.type('d', thread).catch(() => undefined);
    await until(() => w.slack.connections > before && w.slack.connected, 'no new connection');
    await until(async () => (await w.store.read(job)).entries.some(({ kind }) => kind === 'answered'), 'not taken');
    await w.settled();
    expect((await w.store.read(job)).entries.filter(({ kind }) => kind === 'answered')).toHaveLength(1);
  });

  test('a connection that is cut comes back; unknown envelopes and broken ones harm nobody', async () => {
    const before = w.slack.connections;
    w.slack.raw('no json');
    w.slack.raw('{"type":"unknown","payload":{}}');
    w.slack.cut();
    await until(() => w.slack.connections > before && w.slack.connected, 'no new connection');
    const job = await w.call('Cut');
    await w.ines.type('d', await w.thread(job));
    await until(async () => (await w.view(job)).prompt.title.startsWith('What kind'), 'not taken');
  });

  test('fifty calls at once: each thread has its own words', async () => {
    const jobs = await Promise.all(
      Array.from({ length: 50 }, (_, i) =>
        w.desk.open('dana', { title: `Call number ${i}.`, assign: 'ines', client: w.client() }),
      ),
    );
    // Nothing waits also before the first word of a call was thought of.
    const threads = async () =>
      Promise.all(jobs.map(async ({ view }) => w.slack.thread((await w.head(view.job)).ts).length));
    await until(async () => (await threads()).every((said) => said > 0), 'a thread without a word', 20_000);
    await until(async () => (await w.store.unsaid('slack')).length === 0, 'not all was said', 20_000);
    for (const [i, { view }] of jobs.entries()) {
      const head = await w.head(view.job);
      expect(wordsOf(head)).toContain(`Call number ${i}.`);
      const ids = w.slack.thread(head.ts).map(idOf);
      expect(ids.length).toBeGreaterThan(0);
      expect(ids.every((id) => id.includes(view.job))).toBe(true);
    }
    await Promise.all(jobs.map(async ({ view }) => w.ines.type('d', await w.thread(view.job))));
    await until(
      async () =>
        (await Promise.all(jobs.map(({ view }) => w.view(view.job)))).every(({ prompt }) =>
          prompt.title.startsWith('What kind'),
        ),
      'not all was taken',
      20_000,
    );
  }, 60_000);
});

describe('the workspace takes it away', () => {
  /** Nothing is posted from here on; with a token that is taken again, all of it is. */
  async function silent(title: string): Promise<void> {
    const calls = w.slack.called('chat.postMessage').length;
    const { view } = await w.desk.open('dana', { title, assign: 'ines', client: w.client() });
    await w.web(view.job, 'note later');
    await sleep(100);
    expect(w.slack.called('chat.postMessage').length).toBe(calls);
    w.slack.badToken = false;
    await w.restart();
    expect(wordsOf(await w.head(view.job))).toContain(title);
    expect(twice(await saidOf(view.job))).toEqual([]);
  }
  test('a token that is taken no longer: heard of by the first message, once; nothing is lost', async () => {
    w.slack.badToken = true;
    await w.desk.open('dana', { title: 'No token', assign: 'ines', client: w.client() });
    await until(() => w.revoked.length > 0, 'no word of it');
    await silent('Token gone');
    expect(w.revoked).toEqual(['invalid_auth']);
  });
  test.each([
    ['app_uninstalled', { type: 'app_uninstalled' }],
    ['tokens_revoked', { type: 'tokens_revoked', tokens: { bot: ['U0BOT'] } }],
  ])('%s: heard at once, once; nothing is lost', async (how, event) => {
    const before = w.revoked.length;
    await w.slack.deliver('events_api', eventBody({ type: 'tokens_revoked', tokens: { oauth: ['U1INES'] } }));
    await w.slack.deliver('events_api', eventBody(event));
    await w.slack.deliver('events_api', eventBody(event));
    await until(() => w.revoked.length > before, 'no word of it');
    await silent(how);
    expect(w.revoked.slice(before)).toEqual([how]);
  });
});

test('no log of all this holds a token, a secret or an address that answers', () => {
  expect(w.log.length).toBeGreaterThan(3);
  expect(w.log.join('\n')).not.toMatch(/xox|xapp|shhh|respond\/1|ws:\/\//);
  expect(
    w.slack.messages
      .filter((m) => m.channel === CREW && m.thread === undefined && m.user === 'U0BOT')
      .every((m) => idOf(m).endsWith('.head')),
  ).toBe(true);
});
