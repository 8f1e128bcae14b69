/** A call with the caller on the line: one form after another in one window, and who goes at its end. */
import type { AllMiddlewareArgs, BlockAction, SlackViewMiddlewareArgs, ViewClosedAction } from '@slack/bolt';
import type { ModalView } from '@slack/types';
import * as z from 'zod/mini';
import type { CallStep, Person, Sent } from '../../../engine/desk/index.ts';
import { type Drawn, json, readForm, readState, type State } from '../parse.ts';
import { waiting } from '../render/call.ts';
import { notice } from '../render/modals.ts';
import { type Aside, lines, tell, troubleWords } from '../tell.ts';
import { type ActionArgs, asideFrom, carried, clientOf } from './action.ts';
import { type BotParts, forPerson, nameOf, PATIENCE } from './parts.ts';
import { errorsOf, type ViewArgs, viewClient } from './submission.ts';
import { draw, formOf, isOver, openCall, show, windowFor, withGoOn } from './window.ts';

/** Milliseconds of silence before what was typed is looked up. */
const PAUSE = 300;

export const takeCall =
  (parts: BotParts) =>
  async (args: ActionArgs): Promise<void> => {
    await args.ack();
    const to = asideFrom(args.body);
    await forPerson(parts, to, ({ id }) =>
      openCall(parts, args.body.trigger_id, to, () => parts.door.taking.begin(id, clientOf(args), false)),
    );
  };
/** Goes on with a call: in a window of its own, or in the one that stands open. */
export const goOn =
  (parts: BotParts) =>
  async (args: ActionArgs): Promise<void> => {
    await args.ack();
    const [call, to] = [carried(args.action) ?? '', asideFrom(args.body)];
    await forPerson(parts, to, async ({ id }) => {
      const step = (): Promise<CallStep> => parts.door.taking.goOn(id, call, clientOf(args));
      const open = windowOf(args.body);
      if (open === null) return openCall(parts, args.body.trigger_id, to, step);
      await show(parts, open, to, await step());
    });
  };

/** Look-ups that wait until the fingers rest, by the window. One that is sent or put away needs none. */
export type LookUps = Map<string, NodeJS.Timeout>;
const forget = (lookUps: LookUps, id: string): void => {
  clearTimeout(lookUps.get(id));
  lookUps.delete(id);
};
/** What stands in the form is kept with each change, and what can be looked up is. */
export const typed =
  (parts: BotParts, lookUps: LookUps) =>
  async ({ ack, body }: ActionArgs): Promise<void> => {
    await ack();
    const { view } = body;
    const meant = readForm(view?.private_metadata);
    const person = await parts.door.who(body.user.id);
    if (!view || !meant || !person) return;
    const { taking } = parts.door;
    taking.typed(person.id, meant.job, meant, readState(view.state.values as unknown as State).parts);
    forget(lookUps, view.id);
    const later = async (): Promise<void> => {
      const step = await taking.lookUp(person.id, meant.job);
      const drawn = step && (await formOf(parts, step));
      // Sent or put away meanwhile, something else stands there now; and what was typed since is looked up by itself.
      if (!drawn || lookUps.get(view.id) !== timer) return;
      lookUps.delete(view.id);
      await parts.quick.views.update({ view_id: view.id, view: drawn });
    };
    // What isn't found while somebody types is no trouble of theirs.
    const timer = setTimeout(() => void later().catch((error: unknown) => parts.trouble(nameOf(error))), PAUSE);
    lookUps.set(view.id, timer.unref());
  };

export const picked =
  (parts: BotParts) =>
  async (args: ActionArgs): Promise<void> => {
    await args.ack();
    const read = z.tuple([z.string(), z.string()]).safeParse(json(carried(args.action)));
    const [to, open] = [asideFrom(args.body), windowOf(args.body)];
    if (!read.success || open === null) return;
    const [call, unit] = read.data;
    await forPerson(parts, to, async ({ id }) => {
      await show(parts, open, to, await parts.door.taking.pick(id, call, unit, clientOf(args)));
    });
  };
export const putAway =
  (parts: BotParts) =>
  async (args: ActionArgs): Promise<void> => {
    await args.ack();
    const [call, to, open] = [carried(args.action) ?? '', asideFrom(args.body), windowOf(args.body)];
    await forPerson(parts, to, async (person) => {
      const { refusal } = await parts.door.taking.putAway(person.id, call, clientOf(args));
      const said = refusal ? refusal.text : 'Put away. Nothing was opened. It is found when they call again.';
      if (open === null) await tell(parts.quick, to, lines([said]));
      else if (refusal) await show(parts, open, to, await parts.door.taking.look(person.id, call), [said]);
      else await draw(parts, open, notice('Take a call', [said]));
      await parts.refreshHome(args.body.user.id);
    });
  };

/** A form was sent: the next one stands in the same window, or what is wrong at its field. */
export const callSent =
  (parts: BotParts, lookUps: LookUps) =>
  async (args: ViewArgs): Promise<void> => {
    forget(lookUps, args.view.id);
    const meant = readForm(args.view.private_metadata);
    if (!meant) return void (await args.ack());
    const [user, id] = [args.body.user.id, args.view.id];
    const to: Aside = { channel: user, user };
    let answered = false;
    const answer = (view: ModalView): Promise<void> => {
      if (answered) return draw(parts, id, view);
      answered = true;
      return args.ack({ response_action: 'update', view });
    };
    // Past that time the platform would show an error: a window that waits stands there meanwhile.
    const late = setTimeout(() => void answer(waiting()).catch(() => undefined), PATIENCE);
    try {
      const person = await parts.door.who(user);
      if (!person) return void (await answer(notice('Take a call', ['This account belongs to nobody of the crew.'])));
      const { turn, step } = await sendStep(parts, person, meant, args);
      const errors = turn.entries.length === 0 ? errorsOf(turn, args, true) : null;
      if (errors && !answered) {
        answered = true;
        return void (await args.ack({ response_action: 'errors', errors }));
      }
      await answer(await windowFor(parts, person, step, turn.refusal ? [turn.refusal.text] : []));
    } catch (error) {
      const words = troubleWords(error);
      if (words === null) parts.trouble(nameOf(error));
      const said = words ?? 'Something is broken here. Look again.';
      // What was typed stays in the form.
      const [field] = args.view.blocks.flatMap((b) => (b.type === 'input' && b.block_id ? [b.block_id] : []));
      if (!answered && field !== undefined) {
        answered = true;
        await args.ack({ response_action: 'errors', errors: { [field]: said } });
      } else await tell(parts.quick, to, withGoOn([said], meant.job));
    } finally {
      clearTimeout(late);
    }
  };
function sendStep({ door }: BotParts, { id }: Person, meant: Drawn, args: ViewArgs): Promise<Sent> {
  const { parts } = readState(args.view.state.values as unknown as State);
  return door.taking.send(id, meant.job, meant, parts, viewClient(args));
}

/** Closed before its end: nothing that was typed is gone, and it is said how to go on. */
export const callClosed =
  (parts: BotParts, lookUps: LookUps) =>
  async ({ ack, body, view }: SlackViewMiddlewareArgs<ViewClosedAction> & AllMiddlewareArgs): Promise<void> => {
    forget(lookUps, view.id);
    await ack();
    const meant = readForm(view.private_metadata);
    if (!meant) return;
    const to: Aside = { channel: body.user.id, user: body.user.id };
    await forPerson(parts, to, async (person) => {
      const { view: now } = await parts.door.taking.look(person.id, meant.job);
      if (now.opens !== null || isOver(now.prompt.kind)) return;
      await tell(parts.quick, to, withGoOn(['The call is not finished. What you typed is kept.'], meant.job));
      await parts.refreshHome(body.user.id);
    });
  };

/** The window that somebody tapped in; null in a message or a home. */
const windowOf = ({ view }: BlockAction): string | null => (view?.type === 'modal' ? view.id : null);
