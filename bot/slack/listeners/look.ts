/** What a senior looks at before a word that counts, with a link to the rest. */
import { readOrder } from '../parse.ts';
import { look } from '../render/review.ts';
import { type ActionArgs, asideFrom, carried } from './action.ts';
import { type BotParts, forPerson, placesOf } from './parts.ts';
import { draw, openWindow } from './window.ts';

export const openLook =
  (parts: BotParts) =>
  async (args: ActionArgs): Promise<void> => {
    await args.ack();
    const [read, to] = [readOrder(carried(args.action)), asideFrom(args.body)];
    if (!read) return;
    await forPerson(parts, to, ({ id }) =>
      openWindow(parts, args.body.trigger_id, to, 'Review', async (window) => {
        const review = await parts.desk.review.look(id, read.job);
        const [place, link] = await Promise.all([
          placesOf(parts, [read.job]),
          parts.webLink(id, `/review/${read.job}`),
        ]);
        await draw(parts, window, look(review, link, place(read.job)));
      }),
    );
  };
