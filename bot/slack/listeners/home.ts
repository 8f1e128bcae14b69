/** App Home: drawn when somebody opens it, after what they did from there, and as calls go on. */
import type { AllMiddlewareArgs, SlackEventMiddlewareArgs } from '@slack/bolt';
import type { HomeView } from '@slack/types';
import { WebAPIRateLimitedError, type WebClient } from '@slack/web-api';
import type { HomesParts } from '../../../engine/desk/index.ts';
import { createHomes, type Homes, Later } from '../../../engine/desk/index.ts';
import { home, stranger } from '../render/home.ts';
import { CHAT } from '../voice.ts';
import { type BotParts, nameOf, placesOf } from './parts.ts';

export const homeOpened =
  (parts: BotParts) =>
  async ({ event }: SlackEventMiddlewareArgs<'app_home_opened'> & AllMiddlewareArgs): Promise<void> => {
    if (event.tab === 'home') await parts.refreshHome(event.user);
  };

type Parts = Pick<BotParts, 'desk' | 'door' | 'addressOf' | 'trouble'> &
  Pick<HomesParts<HomeView>, 'store' | 'clock' | 'times'>;
export function homesOf(parts: Parts, client: WebClient): Homes {
  return createHomes<HomeView>({
    ...parts,
    chat: CHAT,
    async render(of) {
      if (of === null) return stranger();
      const jobs = [...(of.review?.jobs ?? []), ...of.waits, ...of.open].map(({ job }) => job);
      return home(of, await placesOf(parts, jobs.slice(0, LOOKED_UP)));
    },
    async publish(user_id, view) {
      try {
        await client.views.publish({ user_id, view });
      } catch (error) {
        throw error instanceof WebAPIRateLimitedError ? new Later('rate limited', error.retryAfter * 1_000) : error;
      }
    },
  });
}
/** Calls whose thread is looked up: more than are shown. */
const LOOKED_UP = 60;
/** For whoever opened it or tapped there; that it could not be drawn is trouble of the log, not theirs. */
export const refresher =
  (homes: Homes, trouble: (what: string) => void) =>
  (account: string): Promise<void> =>
    homes.draw(account).catch((error: unknown) => trouble(`a home could not be drawn: ${nameOf(error)}`));
