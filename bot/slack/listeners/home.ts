/** App Home, drawn when somebody opens it and after what they did from there. */
import type { AllMiddlewareArgs, SlackEventMiddlewareArgs } from '@slack/bolt';
import type { Person } from '../../../engine/desk/index.ts';
import { home, stranger } from '../render/home.ts';
import { type BotParts, nameOf } from './parts.ts';

/** Calls whose thread is looked up: more than are shown. */
const LOOKED_UP = 60;

export const homeOpened =
  (parts: BotParts) =>
  async ({ event }: SlackEventMiddlewareArgs<'app_home_opened'> & AllMiddlewareArgs): Promise<void> => {
    if (event.tab === 'home') await publishHome(parts, event.user, await parts.door.who(event.user));
  };

export async function publishHome(
  { desk, door, quick, addressOf, trouble }: Omit<BotParts, 'refreshHome'>,
  user: string,
  person: Person | null,
): Promise<void> {
  try {
    if (!person) return void (await quick.views.publish({ user_id: user, view: stranger() }));
    const cards = await desk.jobs(person.id);
    const open = cards.filter(({ state }) => state !== 'signed').slice(0, LOOKED_UP);
    const places = await Promise.all(open.map(async ({ job }) => [job, await door.placeOf(job)] as const));
    const threads = new Map(
      places.flatMap(([job, place]) => (place === null ? [] : [[job, addressOf(place)] as const])),
    );
    await quick.views.publish({ user_id: user, view: home(person, cards, (job) => threads.get(job) ?? null) });
  } catch (error) {
    trouble(`a home could not be drawn: ${nameOf(error)}`);
  }
}
