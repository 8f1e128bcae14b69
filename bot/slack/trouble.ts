/** What an error of the platform means to what is to be said: not taken yet, never to be taken, or not known. */
import { WebAPIPlatformError, WebAPIRateLimitedError } from '@slack/web-api';
import { Later, Never } from '../../engine/desk/index.ts';

/** What the shop has to set right; nothing is lost meanwhile. */
const AWAIT = new Set(['channel_not_found', 'not_in_channel', 'is_archived', 'missing_scope']);
/** The token, or the whole app, was taken away. */
export const REVOKED = new Set(['invalid_auth', 'not_authed', 'account_inactive', 'token_revoked', 'token_expired']);
/** The platform's own trouble, of which it is not known what came. */
const UNSURE = new Set(['internal_error', 'fatal_error', 'service_unavailable', 'request_timeout']);
const AWAIT_MS = 60_000;

interface TroubleParts {
  readonly trouble: (what: string) => void;
  /** The token is taken no longer. */
  readonly revoked: (how: string) => void;
}
/** Runs a call of the platform. Of what lasts it is said once, and again only after something was taken. */
export function createTrouble({ trouble, revoked }: TroubleParts): <T>(work: () => Promise<T>) => Promise<T> {
  let said: string | null = null;
  const meaning = (error: unknown): unknown => {
    if (error instanceof WebAPIRateLimitedError) return new Later('rate limited', error.retryAfter * 1000);
    if (!(error instanceof WebAPIPlatformError)) return error;
    const what = error.data.error;
    if (what === 'ratelimited' || what === 'rate_limited') return new Later(what, 1_000);
    if (UNSURE.has(what)) return error;
    if (REVOKED.has(what)) {
      revoked(what);
      return new Later(what, AWAIT_MS);
    }
    if (!AWAIT.has(what)) {
      const why = error.data.response_metadata?.messages ?? [];
      return new Never([what, ...why].join(': '));
    }
    if (said !== what) trouble(`Slack says ${what}: nothing is posted until that is set right. Nothing is lost.`);
    said = what;
    return new Later(what, AWAIT_MS);
  };
  return async (work) => {
    try {
      const done = await work();
      said = null;
      return done;
    } catch (error) {
      throw meaning(error);
    }
  };
}
