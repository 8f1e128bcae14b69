/** Buttons and menus. */
import type { AllMiddlewareArgs, BlockAction, SlackActionMiddlewareArgs } from '@slack/bolt';
import type { ModalView } from '@slack/types';
import { type Drawn, readButton, readOrder } from '../parse.ts';
import { form } from '../render/form.ts';
import { join, newCall, notice, review } from '../render/modals.ts';
import { type Aside, lines, tell } from '../tell.ts';
import { CHAT } from '../voice.ts';
import { after, type BotParts, forPerson } from './parts.ts';

export type ActionArgs = SlackActionMiddlewareArgs<BlockAction> & AllMiddlewareArgs;

/** Where whoever tapped is told something. In a home there is no channel: the one with them alone. */
export function asideFrom({ user, channel, container, message }: BlockAction): Aside {
  const place = channel?.id ?? (container.channel_id as string | undefined) ?? user.id;
  const thread = (container.thread_ts as string | undefined) ?? (message?.thread_ts as string | undefined);
  return { channel: place, user: user.id, ...(thread === undefined ? {} : { thread_ts: thread }) };
}
export const carried = (action: ActionArgs['action']): string | undefined =>
  'value' in action
    ? action.value
    : 'selected_option' in action
      ? (action.selected_option as { value?: string } | null)?.value
      : undefined;
/** One tap is one client id, however often it is delivered; a second tap is another. */
export const clientOf = ({ action, body }: ActionArgs): string =>
  `${CHAT}.t.${'action_ts' in action ? action.action_ts : ''}.${body.user.id}`;

/** An answer: a button with its option, or Send beside a menu. */
export const answer =
  (parts: BotParts) =>
  async (args: ActionArgs): Promise<void> => {
    await args.ack();
    const drawn = readButton(carried(args.action));
    const to = asideFrom(args.body);
    if (!drawn) return;
    await forPerson(parts, to, async (person) => {
      const option = drawn.option === '' ? chosen(args.body) : drawn.option;
      if (option === null) return tell(parts.quick, to, lines(['Choose one in the menu first, then Send.']));
      const turn = await parts.door.answer(person.id, drawn.job, drawn, { [drawn.part]: [option] }, clientOf(args));
      await after(parts, to, person.id, turn);
    });
  };
/** What stands in the menu beside Send. */
function chosen({ state }: BlockAction): string | null {
  for (const block of Object.values(state?.values ?? {})) {
    const option = block.menu?.selected_option?.value;
    if (option) return option;
  }
  return null;
}

/** Opens within the three seconds that a tap is worth. */
async function open(parts: BotParts, { body }: ActionArgs, to: Aside, view: ModalView): Promise<void> {
  try {
    // From a window the next one stands above it.
    const how = body.view?.type === 'modal' ? 'push' : 'open';
    await parts.quick.views[how]({ trigger_id: body.trigger_id, view });
  } catch (error) {
    parts.trouble(`a form could not be opened: ${error instanceof Error ? error.message : ''}`);
    await tell(parts.quick, to, lines(['That took too long. Tap it again, or type the answer in the thread.']));
  }
}

/** Opens the question as a form. One that no longer stands opens nothing: it shows what stands. */
export const openForm =
  (parts: BotParts) =>
  async (args: ActionArgs): Promise<void> => {
    await args.ack();
    const drawn = readButton(carried(args.action));
    const to = asideFrom(args.body);
    if (!drawn) return;
    await forPerson(parts, to, async (person) => {
      const view = await parts.desk.look(person.id, drawn.job);
      const names = (id: string): string => view.people[id]?.name ?? id;
      const again = drawn.amends === null ? null : await questionAgain(parts, person.id, drawn);
      if (again === null && (view.prompt.seq !== drawn.seq || view.prompt.place !== drawn.place)) {
        const turn = await parts.door.answer(person.id, drawn.job, drawn, {}, clientOf(args));
        return after(parts, to, person.id, turn);
      }
      const prompt = again ?? view.prompt;
      const draft = again ? {} : parts.door.draft(person.id, drawn.job, drawn.seq);
      await open(parts, args, to, form(prompt, draft, names));
    });
  };
async function questionAgain({ door }: BotParts, by: string, drawn: Drawn) {
  const turn = await door.back(by, drawn.job, drawn.amends ?? 0);
  return turn.again;
}

/** A word that works everywhere, by menu or by the emergency button. */
export const order =
  (parts: BotParts) =>
  async (args: ActionArgs): Promise<void> => {
    await args.ack();
    const read = readOrder(carried(args.action));
    const to = asideFrom(args.body);
    if (!read) return;
    await forPerson(parts, to, async (person) => {
      const turn = await parts.door.command(person.id, read.job, { name: read.name }, clientOf(args));
      await after(parts, to, person.id, turn);
    });
  };

/** A senior's word: a form first. */
export const openReview =
  (parts: BotParts) =>
  async (args: ActionArgs): Promise<void> => {
    await args.ack();
    const value = carried(args.action) ?? '';
    const read = readOrder(value);
    const to = asideFrom(args.body);
    if (!read) return;
    await forPerson(parts, to, async () => {
      const { title } = await parts.desk.crewView(read.job);
      const view = review(read.name, value, title);
      if (view) await open(parts, args, to, view);
    });
  };

export const openNewCall =
  (parts: BotParts) =>
  async (args: ActionArgs): Promise<void> => {
    await args.ack();
    const to = asideFrom(args.body);
    await forPerson(parts, to, async () => open(parts, args, to, newCall(await parts.desk.people())));
  };
export const openWeb =
  (parts: BotParts) =>
  async (args: ActionArgs): Promise<void> => {
    await args.ack();
    const to = asideFrom(args.body);
    await forPerson(parts, to, async (person) =>
      open(parts, args, to, notice('On the web', WEB_LINES, await parts.webLink(person.id))),
    );
  };
export const WEB_LINES = ['This link signs you in on the web, once. It is yours alone: pass it to nobody.'];
export const openJoin =
  (parts: BotParts) =>
  async (args: ActionArgs): Promise<void> => {
    await args.ack();
    await open(parts, args, asideFrom(args.body), join());
  };
/** A menu before its Send, a link: nothing to do but to say that it came. */
export const nothing = async ({ ack }: ActionArgs): Promise<void> => ack();
export const unknown =
  (parts: BotParts) =>
  async (args: ActionArgs): Promise<void> => {
    await args.ack();
    await tell(
      parts.quick,
      asideFrom(args.body),
      lines(['This button is of an earlier time and does nothing any more.']),
    );
  };
