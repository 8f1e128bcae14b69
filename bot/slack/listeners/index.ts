/** Which listener hears what. One for each kind: the SDK runs every one that matches. */
import type { App } from '@slack/bolt';
import { answer, nothing, openForm, openJoin, openNewCall, openReview, openWeb, order, unknown } from './action.ts';
import { callClosed, callSent, goOn, type LookUps, picked, putAway, takeCall, typed } from './call.ts';
import { command } from './command.ts';
import { giveSent, openGive } from './give.ts';
import { homeOpened } from './home.ts';
import { openLook } from './look.ts';
import { messages } from './message.ts';
import type { BotParts } from './parts.ts';
import { formSent, joinSent, newCallSent, reviewSent } from './submission.ts';

const UNKNOWN_ACTION =
  /^(?!(answer\.\d+|send|form|order|alarm|new-call|web|join|menu|link|give|take-call|call\.away)$|look\.|review\.|call\.(go|unit)\.|v\.)/;
const UNKNOWN_VIEW = /^(?!(form|review|new-call|join|call|give)$)/;
const UNKNOWN_COMMAND = /^(?!\/nocool$)/;

export function register(app: App, parts: BotParts): void {
  const heard = messages(parts);
  const lookUps: LookUps = new Map();
  app.event('message', (args) => heard(args));
  app.event('app_mention', (args) => heard(args));
  app.event('app_uninstalled', async () => parts.revoked('app_uninstalled'));
  app.event('tokens_revoked', async ({ event }) => {
    // Tokens of people are none of ours.
    if ((event.tokens.bot ?? []).length > 0) parts.revoked('tokens_revoked');
  });
  app.event('app_home_opened', homeOpened(parts));
  app.action({ type: 'block_actions', action_id: /^(answer\.\d+|send)$/ }, answer(parts));
  app.action({ type: 'block_actions', action_id: 'form' }, openForm(parts));
  app.action({ type: 'block_actions', action_id: /^(order|alarm)$/ }, order(parts));
  app.action({ type: 'block_actions', action_id: /^review\./ }, openReview(parts));
  app.action({ type: 'block_actions', action_id: /^look\./ }, openLook(parts));
  app.action({ type: 'block_actions', action_id: 'new-call' }, openNewCall(parts));
  app.action({ type: 'block_actions', action_id: 'web' }, openWeb(parts));
  app.action({ type: 'block_actions', action_id: 'join' }, openJoin(parts));
  app.action({ type: 'block_actions', action_id: /^(menu|link)$/ }, nothing);
  app.action({ type: 'block_actions', action_id: 'give' }, openGive(parts));
  app.action({ type: 'block_actions', action_id: 'take-call' }, takeCall(parts));
  app.action({ type: 'block_actions', action_id: 'call.away' }, putAway(parts));
  app.action({ type: 'block_actions', action_id: /^call\.go\./ }, goOn(parts));
  app.action({ type: 'block_actions', action_id: /^call\.unit\./ }, picked(parts));
  app.action({ type: 'block_actions', action_id: /^v\./ }, typed(parts, lookUps));
  app.view({ type: 'view_submission', callback_id: 'form' }, formSent(parts));
  app.view({ type: 'view_submission', callback_id: 'review' }, reviewSent(parts));
  app.view({ type: 'view_submission', callback_id: 'new-call' }, newCallSent(parts));
  app.view({ type: 'view_submission', callback_id: 'call' }, callSent(parts, lookUps));
  app.view({ type: 'view_closed', callback_id: 'call' }, callClosed(parts, lookUps));
  app.view({ type: 'view_submission', callback_id: 'give' }, giveSent(parts));
  app.view({ type: 'view_submission', callback_id: 'join' }, joinSent(parts));
  app.command('/nocool', command(parts));

  // Over a socket nothing answers for us what no listener takes: an old button, a form of an earlier version.
  app.action({ type: 'block_actions', action_id: UNKNOWN_ACTION }, unknown(parts));
  app.view({ type: 'view_submission', callback_id: UNKNOWN_VIEW }, async ({ ack }) => ack());
  app.view({ type: 'view_closed', callback_id: UNKNOWN_VIEW }, async ({ ack }) => ack());
  app.command(UNKNOWN_COMMAND, async ({ ack }) => ack());
  app.shortcut(/^/, async ({ ack }) => ack());
  app.options(/^/, async ({ ack }) => ack({ options: [] }));
}
