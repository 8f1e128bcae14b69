/** What the SDK's socket can't survive by itself: it neither ends the process nor goes unheard. */
import { afterAll, beforeAll, expect, test } from 'vitest';
import { until, Workspace } from './workspace.ts';

let w: Workspace;
beforeAll(async () => {
  w = await Workspace.open();
});
afterAll(() => w.close());

test('a reconnection that is refused for good is heard, so that a new bot can be started', async () => {
  w.slack.badToken = true;
  w.slack.cut();
  await until(() => w.lost.length > 0, 'nobody heard of it');
  expect(w.lost[0]).toContain('invalid_auth');
  w.slack.badToken = false;
});

test('stopping while it reconnects', async () => {
  await w.restart();
  w.slack.cut();
  await w.bot.stop();
  await w.start();
  const job = await w.call('Again');
  await w.ines.type('d', await w.thread(job));
  await until(async () => (await w.view(job)).prompt.title.startsWith('What kind'), 'not taken');
});
