/** The window of a call: opened at once, drawn anew step by step, and said where that can't be done. */
import { setTimeout as sleep } from 'node:timers/promises';
import type { ModalView } from '@slack/types';
import { WebAPIPlatformError, WebAPIRateLimitedError } from '@slack/web-api';
import type { CallStep, Person } from '../../../engine/desk/index.ts';
import { readOrder } from '../parse.ts';
import { CALL_TITLE, callForm, goOnRow, opened, over, waiting } from '../render/call.ts';
import { notice } from '../render/modals.ts';
import { type Aside, lines, tell, troubleWords } from '../tell.ts';
import { type ActionArgs, asideFrom, carried } from './action.ts';
import { type BotParts, forPerson, nameOf, placesOf } from './parts.ts';

/** Tries to draw a window anew, and milliseconds between them. */
const [TRIES, WAIT] = [3, 300];

/** A window at once, and what belongs in it as soon as it is there: the platform waits for three seconds. */
export async function openWindow(
  parts: BotParts,
  trigger: string,
  to: Aside,
  title: string,
  fill: (id: string) => Promise<void>,
): Promise<void> {
  const id = await parts.quick.views.open({ trigger_id: trigger, view: waiting(title) }).then(
    ({ view }) => view?.id,
    (error: unknown) => parts.trouble(`a window could not be opened: ${nameOf(error)}`),
  );
  // Nothing was begun: the same button again is a new try.
  if (!id) return tell(parts.quick, to, lines(['That took too long, and nothing was begun. Tap it again.']));
  try {
    await fill(id);
  } catch (error) {
    const words = troubleWords(error);
    if (words === null) parts.trouble(nameOf(error));
    await draw(parts, id, notice(title, [words ?? 'Something is broken here. Try again.']));
  }
}
/** A tap that opens a window about one job, drawn for whoever tapped. */
export const opensOnJob =
  (title: string, view: (parts: BotParts, person: string, job: string) => Promise<ModalView>) =>
  (parts: BotParts) =>
  async (args: ActionArgs): Promise<void> => {
    await args.ack();
    const [read, to] = [readOrder(carried(args.action)), asideFrom(args.body)];
    if (!read) return;
    await forPerson(parts, to, ({ id }) =>
      openWindow(parts, args.body.trigger_id, to, title, async (window) =>
        draw(parts, window, await view(parts, id, read.job)),
      ),
    );
  };
export const openCall = (parts: BotParts, trigger: string, to: Aside, work: () => Promise<CallStep>): Promise<void> =>
  openWindow(parts, trigger, to, CALL_TITLE, async (id) => show(parts, id, to, await work()));

export const isOver = (kind: CallStep['asked']['kind']): boolean => kind === 'finished' || kind === 'signed';
export const formOf = async (parts: BotParts, step: CallStep, lead: readonly string[] = []): Promise<ModalView> =>
  callForm(step, lead, await placesOf(parts, step.known?.calls.map(({ job }) => job) ?? []));
/** What belongs in the window as the call stands. */
export async function windowFor(
  parts: BotParts,
  { id }: Person,
  step: CallStep,
  lead: readonly string[],
): Promise<ModalView> {
  const { opens, prompt } = step.view;
  if (opens !== null) return opened(await parts.desk.crewView(opens), await parts.door.whoGoes(id, opens));
  return isOver(prompt.kind) ? over(step.view) : formOf(parts, step, lead);
}
export async function show(
  parts: BotParts,
  id: string,
  to: Aside,
  step: CallStep,
  lead: readonly string[] = [],
): Promise<void> {
  const person = await parts.door.who(to.user);
  if (!person) return;
  const view = await windowFor(parts, person, step, lead);
  if (!(await drawn(parts, id, view)))
    await tell(
      parts.quick,
      to,
      withGoOn(['The window is closed, or could not be drawn. Nothing is lost.'], step.view.job),
    );
}
export const draw = async (parts: BotParts, id: string, view: ModalView): Promise<void> =>
  void (await drawn(parts, id, view));
async function drawn({ quick, trouble }: BotParts, id: string, view: ModalView): Promise<boolean> {
  for (let n = 1; n <= TRIES; n++) {
    try {
      await quick.views.update({ view_id: id, view });
      return true;
    } catch (error) {
      // Put away meanwhile.
      if (error instanceof WebAPIPlatformError && error.data.error === 'not_found') return false;
      trouble(`a window could not be drawn: ${nameOf(error)}`);
      if (n < TRIES) await sleep(error instanceof WebAPIRateLimitedError ? error.retryAfter * 1_000 : WAIT);
    }
  }
  return false;
}
export const withGoOn = (said: readonly string[], call: string) => {
  const { text, blocks } = lines(said);
  return { text, blocks: [...blocks, goOnRow(call)] };
};
