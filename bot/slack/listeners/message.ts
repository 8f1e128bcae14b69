/** What is typed in a thread of ours, sent there as a photo, edited or removed afterwards. Everything else is left unread. */
import type { AllMiddlewareArgs } from '@slack/bolt';
import * as z from 'zod/mini';
import { readHazard } from '../../../engine/index.ts';
import { unescaped } from '../render/text.ts';
import { type Aside, lines, tell } from '../tell.ts';
import { CHAT, placeOf } from '../voice.ts';
import { HELP } from './command.ts';
import { after, type BotParts, createLanes, createOnce, forPerson } from './parts.ts';
import { fetchPhoto } from './photo.ts';

const text = z.optional(z.string());
const File = z.object({ url_private: text, size: z.optional(z.number()) });
const Message = z.object({
  type: z.string(),
  channel: z.string(),
  channel_type: text,
  user: text,
  bot_id: text,
  subtype: text,
  text,
  ts: z.string(),
  thread_ts: text,
  files: z.optional(z.array(File)),
});
const Inner = z.object({ user: text, bot_id: text, text, ts: z.string(), thread_ts: text });
const Changed = z.object({
  channel: z.string(),
  ts: z.string(),
  subtype: z.string(),
  message: z.optional(Inner),
  previous_message: z.optional(Inner),
});
type Typed = z.infer<typeof Message>;
const TYPED = new Set([undefined, 'file_share', 'thread_broadcast']);

/** What is used of both kinds of event. */
interface MessageArgs {
  readonly event: unknown;
  readonly context: AllMiddlewareArgs['context'];
}

export function messages(parts: BotParts): (args: MessageArgs) => Promise<void> {
  const inLane = createLanes();
  const first = createOnce();
  return async ({ event, context }) => {
    const changed = Changed.safeParse(event);
    if (changed.success && changed.data.subtype.startsWith('message_')) return afterwards(parts, changed.data, first);
    const read = Message.safeParse(event);
    if (!read.success) return;
    const message = read.data;
    if (!TYPED.has(message.subtype) || message.bot_id !== undefined || message.user === undefined) return;
    // A mention in a channel comes as two events of one message.
    if (!first(`${message.channel}.${message.ts}`)) return;
    const place = message.thread_ts === undefined ? null : placeOf(message.channel, message.thread_ts);
    const job = place === null ? null : await parts.door.jobAt(place);
    const to: Aside = {
      channel: message.channel,
      user: message.user,
      ...(message.thread_ts === undefined ? {} : { thread_ts: message.thread_ts }),
    };
    if (job !== null) return inLane(job, () => typed(parts, to, job, message, context.botUserId));
    const toUs = message.channel_type === 'im' || message.type === 'app_mention';
    if (toUs)
      await forPerson(parts, to, async () =>
        tell(parts.quick, to, lines(await withoutCall(parts, message.text ?? ''))),
      );
  };
}

/** Typed to the bot where no call is meant. Danger can't be raised on a call that nobody named, so it is said what to do. */
async function withoutCall({ desk }: BotParts, text: string): Promise<readonly string[]> {
  if (readHazard(unescaped(text), []) === null) return HELP;
  const { emergencyNumber } = await desk.settings();
  return [
    'If this is happening now: get away first.',
    `Call ${emergencyNumber}.`,
    'Nothing was raised: type it in the call’s thread, where the senior and the dispatcher are told.',
  ];
}

async function typed(parts: BotParts, to: Aside, job: string, message: Typed, self: string | undefined): Promise<void> {
  await forPerson(parts, to, async (person) => {
    const client = `${CHAT}.m.${message.channel}.${message.ts}`;
    const [photo] = message.files ?? [];
    if (photo) {
      const bytes = await fetchPhoto(photo, parts.botToken, parts.platform, parts.photoPatience);
      if (typeof bytes === 'string') await tell(parts.quick, to, lines([bytes]));
      else await photographed(parts, to, person.id, job, bytes, `${client}.p`);
    }
    const words = unescaped((message.text ?? '').replaceAll(`<@${self}>`, '')).trim();
    if (words === '') return;
    await after(parts, to, person.id, await parts.door.type(person.id, job, words, client));
  });
}
async function photographed(
  parts: BotParts,
  to: Aside,
  by: string,
  job: string,
  bytes: Uint8Array,
  client: string,
): Promise<void> {
  const { asked, turn } = await parts.door.photo(by, job, bytes, client);
  if (turn) return after(parts, to, by, turn);
  const why = asked
    ? 'That is no photo that can be kept. Send a JPEG.'
    : 'This question takes no photo. Type note and what it shows.';
  await tell(parts.quick, to, lines([why]));
}

/** Changes nothing of what was taken; the record says that it happened. */
async function afterwards(
  parts: BotParts,
  change: z.infer<typeof Changed>,
  first: (key: string) => boolean,
): Promise<void> {
  const { channel, ts, message, previous_message: before } = change;
  const gone = change.subtype === 'message_deleted';
  if (!before?.user || before.bot_id !== undefined || before.thread_ts === undefined) return;
  if (!gone && (message?.text === undefined || message.text === before.text)) return;
  const job = await parts.door.jobAt(placeOf(channel, before.thread_ts));
  if (job === null || !first(`${channel}.${ts}.changed`)) return;
  const person = await parts.door.who(before.user);
  if (!person) return;
  const words = gone
    ? 'A message was deleted in the chat after it was sent. Nothing changes by it.'
    : `A message was edited in the chat after it was sent. Nothing changes by it. It now reads: ${unescaped(message?.text ?? '')}`;
  const to: Aside = { channel, user: before.user, thread_ts: before.thread_ts };
  await forPerson(parts, to, async () => {
    await parts.door.command(person.id, job, { name: 'note', text: words }, `${CHAT}.e.${channel}.${ts}`);
    await tell(parts.quick, to, lines([gone ? DELETED : EDITED]));
  });
}
const EDITED =
  'What you sent was taken as it was; editing changes nothing. Type back and the new value to change an answer.';
const DELETED = 'What you sent was taken; deleting changes nothing. Type take back to withdraw an answer.';
