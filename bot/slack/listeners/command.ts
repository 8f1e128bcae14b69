/** /nocool, answered to whoever typed it alone. */
import type { AllMiddlewareArgs, SlackCommandMiddlewareArgs } from '@slack/bolt';
import type { KnownBlock } from '@slack/types';
import type { Person } from '../../../engine/desk/index.ts';
import { newCall } from '../render/modals.ts';
import { unescaped } from '../render/text.ts';
import { lines, troubleWords } from '../tell.ts';
import { CHAT } from '../voice.ts';
import { WEB_LINES } from './action.ts';
import { type BotParts, forPerson, nameOf, STRANGER } from './parts.ts';
import { NO_LINK } from './submission.ts';
import { openCall } from './window.ts';

export const HELP = [
  'Each call has one thread in the crew’s channel. Answer there, by buttons or by typing.',
  'In a thread: why · where · back and the new value · take back · skip and a reason · note and words · senior · stop · go on · hand over and a name.',
  'Safety, in a thread: power is back · lock is off · alarm. Words of fire, smoke, shock or gas raise the emergency by themselves.',
  '/nocool take: a call with the caller on the line. /nocool new: a new call. /nocool jobs: your calls. /nocool web: sign in on the web. /nocool join and a sign-in link: says who you are.',
];
type CommandArgs = SlackCommandMiddlewareArgs & AllMiddlewareArgs;
interface Said {
  readonly text: string;
  readonly blocks: KnownBlock[];
}

export const command =
  (parts: BotParts) =>
  async ({ command: sent, ack }: CommandArgs): Promise<void> => {
    const [, name = '', rest = ''] = /^\s*(\S*)\s*([\s\S]*)$/.exec(unescaped(sent.text ?? '')) ?? [];
    if (name.toLowerCase() === 'take') {
      await ack();
      const to = { channel: sent.channel_id, user: sent.user_id };
      const client = `${CHAT}.c.${sent.trigger_id}`.replace(/[^\w.-]/g, '').slice(0, 60);
      return forPerson(parts, to, ({ id }) =>
        openCall(parts, sent.trigger_id, to, () => parts.door.taking.begin(id, client, rest.trim() === 'training')),
      );
    }
    const said = await answer(parts, sent.user_id, sent.trigger_id, name.toLowerCase(), rest).catch(
      (error: unknown) => {
        const words = troubleWords(error);
        if (words === null) parts.trouble(nameOf(error));
        return lines([words ?? 'Something is broken here. Look again.']);
      },
    );
    await (said ? ack({ response_type: 'ephemeral', ...said }) : ack());
  };

async function answer(
  parts: BotParts,
  user: string,
  trigger: string,
  name: string,
  rest: string,
): Promise<Said | null> {
  if (name === '' || name === 'help') return lines(HELP);
  if (name === 'join') {
    const joined = await parts.door.join(user, rest);
    return lines([joined ? `You are ${joined.name}. Answer in the threads of your calls.` : NO_LINK]);
  }
  const person = await parts.door.who(user);
  if (!person) return lines([STRANGER]);
  switch (name) {
    case 'new':
      await parts.quick.views.open({ trigger_id: trigger, view: newCall(await parts.desk.people()) });
      return null;
    case 'jobs':
      return lines(await jobLines(parts, person));
    case 'web':
      return lines([...WEB_LINES, await parts.webLink(person.id)]);
    default:
      return lines([`Not understood: ${name.slice(0, 100)}`, ...HELP]);
  }
}
const SHOWN = 20;
async function jobLines({ desk }: BotParts, person: Person): Promise<string[]> {
  const open = (await desk.jobs(person.id)).filter(({ state }) => state !== 'signed');
  const shown = open
    .slice(0, SHOWN)
    .map(({ title, where, isolation }) => `${title}: ${where}${isolation === '' ? '' : ` [${isolation}]`}`);
  const more = open.length > SHOWN ? [`And ${open.length - SHOWN} more, on the web.`] : [];
  return open.length === 0 ? ['No open calls.'] : [...shown, ...more];
}
