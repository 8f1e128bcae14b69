/** Forms that were sent. The platform waits for three seconds, and what is wrong stands at its field. */
import type { AllMiddlewareArgs, SlackViewMiddlewareArgs, ViewSubmitAction } from '@slack/bolt';
import type { Person, Turn } from '../../../engine/desk/index.ts';
import type { Refusal } from '../../../engine/index.ts';
import { type Drawn, readForm, readOrder, readState, SKIP, type State } from '../parse.ts';
import { type Aside, troubleWords } from '../tell.ts';
import { CHAT } from '../voice.ts';
import { after, type BotParts, nameOf, PATIENCE, STRANGER } from './parts.ts';

export type ViewArgs = SlackViewMiddlewareArgs<ViewSubmitAction> & AllMiddlewareArgs;

/** What was typed can't be read as it stands: the form stays, so that it can be mended. Anything else closes it. */
const AT_THE_FIELD: ReadonlySet<Refusal['code']> = new Set([
  'not-a-number',
  'which-unit',
  'which-quantity',
  'unclear',
  'unknown-option',
]);
type Errors = Record<string, string>;
export const viewClient = ({ view }: ViewArgs): string =>
  `${CHAT}.v.${view.id}.${view.hash.replace(/[^\w.-]/g, '').slice(0, 30)}`;
const stateOf = ({ view }: ViewArgs): State => view.state.values as unknown as State;

/** Acknowledges with what is wrong, or closes; past the patience it closes and the rest is told aside. */
async function answered(
  parts: BotParts,
  args: ViewArgs,
  work: (person: Person) => Promise<Errors | null>,
  told: (person: Person) => Promise<void>,
  /** What to close with: nothing but this window, or those under it as well. */
  done?: { response_action: 'clear' },
): Promise<void> {
  let open = true;
  const close = async (errors?: Errors): Promise<void> => {
    if (!open) return;
    open = false;
    await (errors ? args.ack({ response_action: 'errors', errors }) : done ? args.ack(done) : args.ack());
  };
  const [field] = args.view.blocks.flatMap((b) => (b.type === 'input' && b.block_id ? [b.block_id] : []));
  const late = setTimeout(() => void close().catch(() => undefined), PATIENCE);
  try {
    const person = await parts.door.who(args.body.user.id);
    if (!person) return await close(field === undefined ? undefined : { [field]: STRANGER });
    const errors = await work(person);
    await close(errors ?? undefined);
    if (!errors) await told(person);
  } catch (error) {
    const words = troubleWords(error);
    if (words === null) parts.trouble(nameOf(error));
    await close(field === undefined ? undefined : { [field]: words ?? 'Something is broken here. Look again.' });
  } finally {
    clearTimeout(late);
  }
}

/** The thread of the job, for what one person is told there. */
export async function asideIn({ door, channel }: BotParts, user: string, job: string): Promise<Aside> {
  const place = await door.placeOf(job);
  if (place === null) return { channel, user };
  const at = place.indexOf(':');
  return { channel: place.slice(0, at), user, thread_ts: place.slice(at + 1) };
}

export const formSent =
  (parts: BotParts) =>
  async (args: ViewArgs): Promise<void> => {
    const drawn = readForm(args.view.private_metadata);
    if (!drawn) return void (await args.ack());
    let turn: Turn | null = null;
    await answered(
      parts,
      args,
      async (person) => {
        turn = await send(parts, person, drawn, args);
        return errorsOf(turn, args);
      },
      async (person) => {
        if (turn) await after(parts, await asideIn(parts, args.body.user.id, drawn.job), person.id, turn);
      },
    );
  };
function send({ door }: BotParts, person: Person, drawn: Drawn, args: ViewArgs): Promise<Turn> {
  const { parts, skip } = readState(stateOf(args));
  return skip === null
    ? door.answer(person.id, drawn.job, drawn, parts, viewClient(args))
    : door.skip(person.id, drawn.job, drawn, skip, viewClient(args));
}
/** `all`: whatever is wrong with a part stands at its field, since nothing of the form was taken. */
export function errorsOf({ refusal }: Turn, { view }: ViewArgs, all = false): Errors | null {
  if (!refusal) return null;
  const fields = new Set(view.blocks.flatMap((b) => (b.type === 'input' && b.block_id ? [b.block_id] : [])));
  const at = refusal.parts.filter((part) => fields.has(part));
  if ((all || AT_THE_FIELD.has(refusal.code)) && at.length > 0)
    return Object.fromEntries(at.map((part) => [part, refusal.text]));
  if (refusal.code === 'reason-needed' && fields.has(SKIP)) return { [SKIP]: refusal.text };
  return null;
}

/** A senior's word, a change of hands. */
export const reviewSent =
  (parts: BotParts) =>
  async (args: ViewArgs): Promise<void> => {
    const read = readOrder(args.view.private_metadata);
    if (!read) return void (await args.ack());
    let turn: Turn | null = null;
    await answered(
      parts,
      args,
      async (person) => {
        const given = readState(stateOf(args)).parts.text;
        const text = Array.isArray(given) ? given[0] : given;
        turn = await parts.door.command(
          person.id,
          read.job,
          { name: read.name, ...(text ? { text } : {}) },
          viewClient(args),
        );
        return turn.refusal ? { text: turn.refusal.text } : null;
      },
      async (person) => {
        if (turn?.info) await after(parts, await asideIn(parts, args.body.user.id, read.job), person.id, turn);
        await parts.refreshHome(args.body.user.id);
      },
      { response_action: 'clear' },
    );
  };

export const newCallSent =
  (parts: BotParts) =>
  async (args: ViewArgs): Promise<void> => {
    await answered(
      parts,
      args,
      async (person) => {
        const { title, assign, training } = readState(stateOf(args)).parts;
        if (typeof title !== 'string') return { title: 'Say where, and what the caller says.' };
        const call = {
          title,
          client: viewClient(args),
          ...(Array.isArray(assign) && assign[0] ? { assign: assign[0] } : {}),
          ...(Array.isArray(training) && training.length > 0 ? { training: true } : {}),
        };
        await parts.desk.open(person.id, call);
        return null;
      },
      () => parts.refreshHome(args.body.user.id),
    );
  };

export const joinSent =
  (parts: BotParts) =>
  async (args: ViewArgs): Promise<void> => {
    const { link } = readState(stateOf(args)).parts;
    const person = await parts.door.join(args.body.user.id, typeof link === 'string' ? link : '');
    if (!person) return void (await args.ack({ response_action: 'errors', errors: { link: NO_LINK } }));
    await args.ack();
    await parts.refreshHome(args.body.user.id);
  };
export const NO_LINK = 'This link opens nothing: it was used already, or it is too old. Ask your shop for a new one.';
