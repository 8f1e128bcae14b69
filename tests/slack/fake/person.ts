/** A person in the workspace: sees what they may see, taps, types, fills in. Everything goes through what the app has drawn. */
import { textsIn } from './limits.ts';
import type { Slack, View } from './platform.ts';
import { BOT, CREW, eventBody, type Json, type Message, TEAM } from './wire.ts';

interface Element extends Json {
  readonly block: string;
}
const named = (of: Json): string => ((of.text ?? {}) as { text?: string }).text ?? '';

export class Member {
  readonly slack: Slack;
  readonly id: string;
  constructor(slack: Slack, id: string) {
    [this.slack, this.id] = [slack, id];
  }

  /** What only this person was told. */
  get told(): Message[] {
    return this.slack.messages.filter((m) => m.to === this.id || m.channel === `D${this.id.slice(1)}`);
  }
  get home(): Json | undefined {
    return this.slack.homes.get(this.id);
  }

  /** Writes in a channel, or in a thread. Gives the message's ts. */
  async type(
    text: string,
    thread?: string,
    more: { channel?: string; retries?: number; id?: string; mention?: boolean; files?: Json[] } = {},
  ): Promise<string> {
    const channel = more.channel ?? CREW;
    const ts = this.slack.ts();
    const escaped = text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;');
    const message: Message = { channel, ts, user: this.id, text: escaped, blocks: [], ...(thread ? { thread } : {}) };
    this.slack.messages.push(message);
    const event = {
      type: 'message',
      channel,
      channel_type: channel.startsWith('D') ? 'im' : 'channel',
      user: this.id,
      text: escaped,
      ts,
      event_ts: ts,
      ...(thread ? { thread_ts: thread } : {}),
      ...(more.files ? { subtype: 'file_share', files: more.files } : {}),
    };
    const body = eventBody(event, more.id);
    await this.slack.deliver('events_api', body);
    for (let n = 1; n <= (more.retries ?? 0); n++) await this.slack.deliver('events_api', body, n);
    if (more.mention) await this.slack.deliver('events_api', eventBody({ ...event, type: 'app_mention' }));
    return ts;
  }
  async edit(ts: string, text: string): Promise<void> {
    const message = this.#own(ts);
    const before = this.#wire(message);
    message.text = text;
    const at = this.slack.ts();
    await this.slack.deliver(
      'events_api',
      eventBody({
        type: 'message',
        subtype: 'message_changed',
        hidden: true,
        channel: message.channel,
        message: { ...this.#wire(message), edited: { user: this.id, ts: at } },
        previous_message: before,
        ts: at,
        event_ts: at,
      }),
    );
  }
  async remove(ts: string): Promise<void> {
    const message = this.#own(ts);
    const at = this.slack.ts();
    await this.slack.deliver(
      'events_api',
      eventBody({
        type: 'message',
        subtype: 'message_deleted',
        hidden: true,
        channel: message.channel,
        deleted_ts: ts,
        previous_message: this.#wire(message),
        ts: at,
        event_ts: at,
      }),
    );
  }
  #own(ts: string): Message {
    const message = this.slack.messages.find((m) => m.ts === ts && m.user === this.id);
    if (!message) throw new Error(`no message ${ts} of ${this.id}`);
    return message;
  }
  #wire = (m: Message): Json => ({
    type: 'message',
    user: m.user,
    text: m.text,
    ts: m.ts,
    ...(m.thread ? { thread_ts: m.thread } : {}),
  });

  /** Taps a button by its label, in a message, a home or a modal. `option`: of a menu beside it, chosen before. */
  async tap(
    on: Message | 'home' | View,
    label: string,
    { option, trigger = this.slack.trigger() }: { option?: string; trigger?: string } = {},
  ): Promise<Json> {
    const blocks =
      on === 'home' ? (this.home?.blocks as Json[]) : 'blocks' in on ? on.blocks : (on.view.blocks as Json[]);
    const all = elementsOf(blocks);
    const button = all.find(
      (e) => (e.type === 'button' || e.type === 'overflow') && (named(e) === label || optionOf(e, label)),
    );
    if (!button) throw new Error(`no button "${label}"; there are: ${all.map((e) => named(e)).join(' | ')}`);
    const values: Record<string, Json> = {};
    if (option !== undefined) {
      const menu = all.find((e) => e.type === 'static_select' && optionOf(e, option));
      if (!menu) throw new Error(`no option "${option}"`);
      values[menu.block] = {
        [String(menu.action_id)]: { type: 'static_select', selected_option: optionOf(menu, option) },
      };
    }
    const { block, ...element } = button;
    const action = {
      type: element.type,
      action_id: element.action_id,
      block_id: block,
      ...(element.type === 'overflow'
        ? { selected_option: optionOf(button, label) }
        : { value: element.value, text: element.text }),
      action_ts: this.slack.ts(),
    };
    const where =
      on === 'home' || 'view' in on
        ? {
            container: { type: 'view' },
            view:
              on === 'home'
                ? { id: 'V0', type: 'home', ...this.home }
                : { ...on.view, id: on.id, hash: on.hash, state: { values: this.#stateOf(on) } },
          }
        : {
            container: {
              type: 'message',
              message_ts: on.ts,
              channel_id: on.channel,
              is_ephemeral: on.to !== undefined,
              ...(on.thread ? { thread_ts: on.thread } : {}),
            },
            channel: { id: on.channel, name: 'crew' },
            ...(on.to === undefined
              ? {
                  message: {
                    type: 'message',
                    user: BOT.user,
                    bot_id: BOT.bot,
                    ts: on.ts,
                    text: on.text,
                    blocks: on.blocks,
                    ...(on.thread ? { thread_ts: on.thread } : {}),
                  },
                }
              : {}),
            state: { values },
          };
    return this.slack.deliver('interactive', {
      type: 'block_actions',
      ...this.#who(),
      trigger_id: trigger,
      response_url: `${this.slack.url}respond/1`,
      ...where,
      actions: [action],
    });
  }

  /** The modal that stands uppermost: the last that was opened and is not closed. */
  get modal(): View {
    const view = this.slack.modals.findLast(({ closed }) => !closed);
    if (!view) throw new Error('no modal is open');
    return view;
  }
  /** Fills in without sending: what tells of each change does so, with all that stands in the form. */
  async enter(values: Readonly<Record<string, string | readonly string[]>>, view = this.modal): Promise<void> {
    for (const [key, given] of Object.entries(values)) {
      const block = (view.view.blocks as Json[]).find((b) => b.type === 'input' && b.block_id === key);
      if (!block) throw new Error(`no field ${key}; there are: ${fieldsOf(view).join(' ')}`);
      const element = block.element as Json;
      const action_id = String(element.action_id);
      view.state[key] = { [action_id]: filled(element, given) };
      if (block.dispatch_action !== true) continue;
      await this.slack.deliver('interactive', {
        type: 'block_actions',
        ...this.#who(),
        trigger_id: this.slack.trigger(),
        container: { type: 'view', view_id: view.id },
        view: { ...view.view, id: view.id, hash: view.hash, state: { values: this.#stateOf(view) } },
        actions: [{ ...filled(element, given), action_id, block_id: key, action_ts: this.slack.ts() }],
      });
    }
  }
  #stateOf(view: View): Record<string, Json> {
    return Object.fromEntries(
      (view.view.blocks as Json[]).flatMap((block): [string, Json][] => {
        if (block.type !== 'input') return [];
        const [key, element] = [String(block.block_id), block.element as Json];
        return [[key, view.state[key] ?? { [String(element.action_id)]: filled(element, undefined) }]];
      }),
    );
  }
  /** Fills in and sends. Text by the id of its block; options by their labels. What is left out stays as it was. */
  async submit(values: Readonly<Record<string, string | readonly string[]>>, view = this.modal): Promise<Json> {
    for (const [key, given] of Object.entries(values)) {
      const block = (view.view.blocks as Json[]).find((b) => b.type === 'input' && b.block_id === key);
      if (!block) throw new Error(`no field ${key}; there are: ${fieldsOf(view).join(' ')}`);
      view.state[key] = { [String((block.element as Json).action_id)]: filled(block.element as Json, given) };
    }
    // The platform itself sends nothing that is not whole.
    const left = (view.view.blocks as Json[]).filter(
      (b) => b.type === 'input' && b.optional !== true && isEmpty(this.#stateOf(view)[String(b.block_id)]),
    );
    if (left.length > 0) throw new Error(`needed: ${left.map(({ block_id }) => block_id).join(' ')}`);
    const ack = await this.slack.deliver('interactive', {
      type: 'view_submission',
      ...this.#who(),
      trigger_id: this.slack.trigger(),
      view: { ...view.view, id: view.id, hash: view.hash, state: { values: this.#stateOf(view) } },
    });
    this.slack.submitted(view, ack);
    return ack;
  }
  /** Puts the window away without sending it. */
  async dismiss(view = this.modal): Promise<void> {
    view.closed = true;
    if (view.view.notify_on_close !== true) return;
    await this.slack.deliver('interactive', {
      type: 'view_closed',
      ...this.#who(),
      is_cleared: false,
      view: { ...view.view, id: view.id, hash: view.hash, state: { values: {} } },
    });
  }
  command(text: string): Promise<Json> {
    return this.slack.deliver('slash_commands', {
      command: '/nocool',
      text,
      user_id: this.id,
      team_id: TEAM,
      channel_id: CREW,
      api_app_id: 'A0',
      trigger_id: this.slack.trigger(),
      response_url: `${this.slack.url}respond/1`,
    });
  }
  openHome(): Promise<Json> {
    return this.slack.deliver(
      'events_api',
      eventBody({
        type: 'app_home_opened',
        user: this.id,
        channel: `D${this.id.slice(1)}`,
        tab: 'home',
        event_ts: this.slack.ts(),
      }),
    );
  }
  #who = (): Json => ({ user: { id: this.id, team_id: TEAM }, team: { id: TEAM }, api_app_id: 'A0', token: 'old' });
}

const fieldsOf = ({ view }: View): string[] =>
  (view.blocks as Json[]).flatMap((b) => (b.type === 'input' ? [String(b.block_id)] : []));
/** Nothing typed, nothing chosen. */
const isEmpty = (state: Json | undefined): boolean =>
  Object.values(state ?? {}).every((element) => {
    const { value, selected_option, selected_options } = element as Json;
    return !value && !selected_option && ((selected_options ?? []) as unknown[]).length === 0;
  });

const optionOf = (of: Json, label: string): Json | undefined =>
  ((of.options ?? []) as Json[]).find((o) => named(o) === label);
export function elementsOf(blocks: readonly Json[]): Element[] {
  return blocks.flatMap((block, n) => {
    const inside = [
      ...((block.elements ?? []) as Json[]),
      ...(block.accessory ? [block.accessory as Json] : []),
      ...(block.element ? [block.element as Json] : []),
    ];
    return inside
      .filter(({ action_id }) => action_id !== undefined)
      .map((element) => ({ ...element, block: String(block.block_id ?? `b${n}`) }));
  });
}
/** Every word of a message, one line a block. */
export const wordsOf = (m: { blocks: Json[] }): string => textsIn(m.blocks).join('\n');

function filled(element: Json, given: string | readonly string[] | undefined): Json {
  const type = String(element.type);
  if (type === 'plain_text_input') return { type, value: given ?? element.initial_value ?? null };
  const pick = (label: string): Json => {
    const option = optionOf(element, label);
    if (!option)
      throw new Error(`no option "${label}"; there are: ${((element.options ?? []) as Json[]).map(named).join(' | ')}`);
    return option;
  };
  if (type === 'checkboxes' || type === 'multi_static_select')
    return { type, selected_options: given === undefined ? (element.initial_options ?? []) : [given].flat().map(pick) };
  return { type, selected_option: given === undefined ? (element.initial_option ?? null) : pick(String(given)) };
}
