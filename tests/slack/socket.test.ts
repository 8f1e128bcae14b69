/** What the SDK's socket can't survive by itself: it neither ends the process nor goes unheard. */
import { afterAll, beforeAll, expect, test } from 'vitest';
import { until, Workspace } from './workspace.ts';

let w: Workspace;
beforeAll(async () => {
  w = await Workspace.open();
});
afterAll(() => w.close());

test('what no listener takes is acknowledged all the same', async () => {
  const job = await w.call('Unknown');
  const head = structuredClone(await w.head(job));
  const old = {
    type: 'button',
    action_id: 'of-an-earlier-version',
    text: { type: 'plain_text', text: 'Old' },
    value: 'x',
  };
  expect(await w.ines.tap({ ...head, blocks: [{ type: 'actions', elements: [old] }] }, 'Old')).toEqual({});
  await until(() => w.ines.told.some(({ text }) => text.includes('does nothing any more')), 'nothing was said');
  const who = { user: { id: w.ines.id }, team: { id: 'T0SHOP' } };
  for (const type of ['shortcut', 'message_action'])
    await w.slack.deliver('interactive', { type, callback_id: 'old', trigger_id: '1', ...who });
  await w.slack.deliver('interactive', {
    type: 'view_submission',
    ...who,
    view: { id: 'V', callback_id: 'old', hash: 'h', blocks: [], state: { values: {} }, private_metadata: '' },
  });
  await w.slack.deliver('slash_commands', { command: '/older', user_id: w.ines.id, team_id: 'T0SHOP', text: '' });
  expect(w.slack.refused).toEqual([]);
});

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
