/** Who goes, from a card or at the end of a call. */
import { readOrder, readState, type State } from '../parse.ts';
import { give } from '../render/call.ts';
import { troubleWords } from '../tell.ts';
import { after, type BotParts, nameOf } from './parts.ts';
import { asideIn, type ViewArgs, viewClient } from './submission.ts';
import { opensOnJob } from './window.ts';

export const openGive = opensOnJob('Who goes', async (parts, person, job) =>
  give(await parts.door.whoGoes(person, job), job),
);
export const giveSent =
  (parts: BotParts) =>
  async (args: ViewArgs): Promise<void> => {
    const read = readOrder(args.view.private_metadata);
    const { to } = readState(args.view.state.values as unknown as State).parts;
    if (!read || !Array.isArray(to) || to[0] === undefined) return void (await args.ack());
    const wrong = (said: string): Promise<void> => args.ack({ response_action: 'errors', errors: { to: said } });
    try {
      const person = await parts.door.who(args.body.user.id);
      if (!person) return await wrong('This account belongs to nobody of the crew.');
      const turn = await parts.door.give(person.id, read.job, to[0], viewClient(args));
      if (turn.refusal) return await wrong(turn.refusal.text);
      await args.ack();
      if (turn.info) await after(parts, await asideIn(parts, args.body.user.id, read.job), person.id, turn);
      await parts.refreshHome(args.body.user.id);
    } catch (error) {
      const words = troubleWords(error);
      if (words === null) parts.trouble(nameOf(error));
      await wrong(words ?? 'Something is broken here. Look again.');
    }
  };
