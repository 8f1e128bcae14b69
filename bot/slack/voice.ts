/** Posts, draws anew and finds again what the desk wants said. Sends each message once: what becomes of it, the desk decides. */
import type { WebClient } from '@slack/web-api';
import { type Door, Never, type Spoken, type Voice } from '../../engine/desk/index.ts';
import { head } from './render/head.ts';
import type { Names } from './render/isolation.ts';
import { type Drawing, question } from './render/question.ts';
import { cut, escaped } from './render/text.ts';
import { attention, closed, event, low, verdict } from './render/told.ts';
import { createTrouble } from './trouble.ts';

export interface VoiceParts {
  /** Tries nothing twice and waits for no limit by itself. */
  readonly client: WebClient;
  readonly fetch: typeof fetch;
  readonly door: Pick<Door, 'accountOf'>;
  /** The crew's channel. */
  readonly channel: string;
  readonly webUrl: string;
  /** Of a message, for people. */
  readonly addressOf: (place: string) => string;
  readonly trouble: (what: string) => void;
  /** The token is taken no longer. */
  readonly revoked: (how: string) => void;
}
export const CHAT = 'slack';
/** Nothing of these in a message is a name, a channel or a picture of another site. */
const QUIET = { unfurl_links: false, unfurl_media: false, link_names: false, parse: 'none' } as const;
/** Messages looked through for one whose posting was interrupted. */
const LOOKED_THROUGH = 200;

/** A place is `channel:ts`; of a picture, `file:id`. */
export const placeOf = (channel: string, ts: string): string => `${channel}:${ts}`;
const splitPlace = (place: string): { channel: string; ts: string } => {
  const at = place.indexOf(':');
  return { channel: place.slice(0, at), ts: place.slice(at + 1) };
};

export function createVoice(parts: VoiceParts): Voice {
  const { client, door, channel, webUrl, addressOf } = parts;
  const namesOf =
    ({ view }: Spoken): Names =>
    (id) =>
      view.people[id]?.name ?? id;
  const metadata = ({ id, job }: Spoken) => ({ event_type: 'nocool_saying', event_payload: { id, job } });

  async function drawing(spoken: Spoken): Promise<Drawing> {
    const { view, content, under } = spoken;
    const names = namesOf(spoken);
    switch (content.kind) {
      case 'head':
        return head(view, names, webUrl);
      case 'question':
        return question(view.prompt, { names, asked: view.question });
      case 'event': {
        const accounts = await Promise.all(content.mention.map((person) => door.accountOf(person)));
        return event(
          content.line,
          names,
          accounts.filter((account) => account !== null),
        );
      }
      case 'verdict':
        return verdict(content.verdict);
      case 'attention':
        return attention(content, view, names, under === null ? null : addressOf(under));
      case 'low':
        return low(content.stock, view.title);
      case 'closed':
        return closed(content.lines, names);
      case 'picture':
        return { text: escaped(content.text), blocks: [] };
    }
  }
  const call = createTrouble(parts);
  /** The channel of a message: the thread's, or the one with a single person. */
  async function where({ content, under }: Spoken): Promise<{ channel: string; thread_ts?: string }> {
    if ('to' in content) {
      const account = await door.accountOf(content.to);
      if (account === null) throw new Never('the person left this chat');
      const { channel: own } = await client.conversations.open({ users: account });
      return { channel: own?.id ?? '' };
    }
    if (under === null) return { channel };
    const head = splitPlace(under);
    return { channel: head.channel, thread_ts: head.ts };
  }

  return {
    chat: CHAT,
    say: (spoken) =>
      call(async () => {
        const to = await where(spoken);
        const drawn = await drawing(spoken);
        if (spoken.content.kind === 'picture') return share(spoken, to, drawn.text);
        const posted = await client.chat.postMessage({ ...to, ...drawn, ...QUIET, metadata: metadata(spoken) });
        return placeOf(posted.channel ?? to.channel, posted.ts ?? '');
      }),
    find: (spoken) =>
      call(async () => {
        const to = await where(spoken);
        for await (const message of written(to)) {
          const file = message.files?.find(({ name }) => name === fileName(spoken));
          if (file) return `file:${file.id}`;
          if (message.metadata?.event_payload?.id === spoken.id && message.ts) return placeOf(to.channel, message.ts);
        }
        return null;
      }),
    draw: (place, spoken) =>
      call(async () => {
        const drawn = await drawing(spoken);
        await client.chat.update({
          ...splitPlace(place),
          ...drawn,
          link_names: false,
          parse: 'none',
          metadata: metadata(spoken),
        });
      }),
  };

  /** What stands in a thread, or last in a channel. */
  async function* written({ channel, thread_ts }: { channel: string; thread_ts?: string }): AsyncGenerator<Found> {
    const options = { channel, limit: LOOKED_THROUGH, include_all_metadata: true };
    if (thread_ts === undefined) {
      yield* ((await client.conversations.history(options)).messages ?? []) as Found[];
      return;
    }
    for (let cursor: string | undefined = ''; cursor !== undefined; ) {
      const page = await client.conversations.replies({
        ...options,
        ts: thread_ts,
        ...(cursor === '' ? {} : { cursor }),
      });
      yield* (page.messages ?? []) as Found[];
      cursor = page.response_metadata?.next_cursor || undefined;
    }
  }

  /** Three calls; the picture is there with the last one. */
  async function share(spoken: Spoken, to: { channel: string; thread_ts?: string }, words: string): Promise<string> {
    if (spoken.content.kind !== 'picture') throw new Error('no picture');
    const { png, title, text } = spoken.content;
    // The platform calls it alt_txt and takes 1,000 characters; the SDK's types have another name for it.
    const about = { filename: fileName(spoken), length: png.byteLength, alt_txt: cut(text, 1_000) };
    const { upload_url, file_id } = await client.files.getUploadURLExternal(about);
    if (!upload_url || !file_id) throw new Error('no place for the picture');
    const sent = await parts.fetch(upload_url, { method: 'POST', body: new Blob([Uint8Array.from(png)]) });
    if (!sent.ok) throw new Error(`the picture was answered ${sent.status}`);
    const thread = to.thread_ts === undefined ? {} : { thread_ts: to.thread_ts };
    await client.files.completeUploadExternal({
      files: [{ id: file_id, title: cut(title, 200) }],
      channel_id: to.channel,
      ...thread,
      initial_comment: cut(words, 1_000),
    } as Parameters<typeof client.files.completeUploadExternal>[0]);
    return `file:${file_id}`;
  }
}

interface Found {
  readonly ts?: string;
  readonly metadata?: { readonly event_payload?: { readonly id?: string } };
  readonly files?: readonly { readonly id: string; readonly name?: string }[];
}
const fileName = ({ id }: Spoken): string => `${id}.png`;
