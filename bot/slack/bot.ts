/**
 * The bot as a whole: the SDK's app on one of its transports, our listeners, and the speaker that says what is due. Main puts
 * store, desk and flows to it.
 */
import { setTimeout as sleep } from 'node:timers/promises';
import { App, type HTTPReceiver, SocketModeReceiver } from '@slack/bolt';
import { WebAPIPlatformError, WebClient, type WebClientOptions } from '@slack/web-api';
import type { Logger as Pino } from 'pino';
import type { Desk, Door, HomesParts, HomeTimes, Speaker, Voice } from '../../engine/desk/index.ts';
import type { SlackConfig } from './config.ts';
import { platformFetch } from './hosts.ts';
import { createHttpReceiver, listen } from './http.ts';
import { homesOf, refresher } from './listeners/home.ts';
import { register } from './listeners/index.ts';
import type { BotParts } from './listeners/parts.ts';
import { createLogger, withoutSecrets } from './log.ts';
import { REVOKED } from './trouble.ts';
import { createVoice } from './voice.ts';

export interface StartParts {
  readonly config: SlackConfig;
  readonly desk: Desk;
  readonly door: Door;
  readonly speaker: (voice: Voice) => Speaker;
  /** Where it is heard that something has changed. */
  readonly store: HomesParts<unknown>['store'];
  readonly clock: () => Date;
  /** Opens that page of the web chat after signing in; its first page where none is given. */
  readonly webLink: (person: string, to?: string) => Promise<string>;
  readonly log: Pino;
  /** Called with each sign of life of the platform. */
  readonly onContact: () => void;
  /** The connection is lost for good, and this process with it: a new one has to be started. */
  readonly onLost: (why: string) => void;
  /** The workspace took the app or its token away. Called once, when nothing is posted any more. */
  readonly onRevoked: (how: string) => void;
  /** Milliseconds until the SDK takes a socket for dead; the SDK's own where not given. */
  readonly pingTimeout?: number;
  /** Milliseconds that one call of the platform may take. */
  readonly timeout?: number;
  /** Milliseconds that a photo may take. */
  readonly photoPatience?: number;
  /** How often homes are drawn anew; as the platform takes it where not given. */
  readonly homeTimes?: HomeTimes;
}
export interface Bot {
  readonly speaker: Speaker;
  /** In HTTP mode: where requests are taken. */
  readonly url: string | null;
  stop(): Promise<void>;
}
/** A setting that only the shop can set right; trying again does not help. */
export class Refused extends Error {
  override name = 'Refused';
}
const STOP_MS = 1_500;
const REFUSALS = new Set([...REVOKED, 'missing_scope', 'not_allowed_token_type', 'no_permission']);

/** Rejects with Refused where a token is not taken, with the SDK's errors where the platform can't be reached. */
export async function startBot(parts: StartParts): Promise<Bot> {
  const { config, desk, door, log, onContact } = parts;
  const logger = createLogger(log);
  const trouble = (what: string): void => log.warn({ chat: 'slack' }, withoutSecrets(what).slice(0, 300));
  const platform = platformFetch(config.api);
  const heard: typeof fetch = async (input, init) => {
    const answer = await platform(input, init);
    if (answer.ok) onContact();
    return answer;
  };
  const options = (more: WebClientOptions): WebClientOptions => ({
    slackApiUrl: config.api,
    allowAbsoluteUrls: false,
    timeout: parts.timeout ?? 5_000,
    fetch: heard,
    logger,
    ...more,
  });
  // Sends nothing twice by itself: what becomes of a message whose answer was lost is looked up, not guessed.
  const once = (): WebClient =>
    new WebClient(config.botToken, options({ retryConfig: { retries: 0 }, rejectRateLimitedCalls: true }));
  const patient = options({ retryConfig: { retries: 2, minTimeout: 250, maxTimeout: 2_000 } });

  const socket = 'appToken' in config.transport ? socketReceiver(config.transport.appToken, patient, parts) : null;
  const http = 'signingSecret' in config.transport ? createHttpReceiver(config.transport.signingSecret, logger) : null;
  const app = new App({
    token: config.botToken,
    receiver: (socket ?? http) as SocketModeReceiver | HTTPReceiver,
    deferInitialization: true,
    convoStore: false,
    extendedErrorHandler: true,
    ignoreSelf: true,
    logger,
    clientOptions: patient,
  });
  app.error(async ({ error }: { error: Error }) => trouble(`${error.name}: ${error.message}`));
  app.use(async ({ next }) => {
    onContact();
    await next();
  });
  const address = { base: '' };
  const addressOf = (place: string): string => `${address.base}archives/${place.replace(':', '/p').replace('.', '')}`;
  let gone = false;
  const revoked = (how: string): void => {
    if (gone) return;
    gone = true;
    // What has to be said stays in the store, and is said by whoever comes with a token that is taken.
    void Promise.allSettled([speaker.stop(), homes.stop()]).then(() => parts.onRevoked(how));
  };
  const { webLink, store, clock, homeTimes: times } = parts;
  const { botToken, channel, webUrl } = config;
  const quick = once();
  const homes = homesOf({ desk, door, store, clock, times, addressOf, trouble }, quick);
  const refreshHome = refresher(homes, trouble);
  const known: BotParts = {
    ...{ desk, door, quick, botToken, channel, webLink, addressOf, refreshHome, revoked, trouble },
    platform: heard,
    photoPatience: parts.photoPatience,
  };
  register(app, known);
  const client = once();
  const speaker = parts.speaker(
    createVoice({ client, fetch: heard, door, channel, webUrl, addressOf, trouble, revoked }),
  );

  const listening = await begin();
  await speaker.start();
  homes.start();
  return {
    speaker,
    url: listening?.url ?? null,
    async stop() {
      // A socket that is lost already would be waited for in vain.
      if (socket) await Promise.race([socket.stop().catch((error: unknown) => trouble(String(error))), sleep(STOP_MS)]);
      await listening?.close();
      await homes.stop();
      await speaker.stop();
    },
  };

  async function begin() {
    try {
      address.base = String((await client.auth.test()).url ?? 'https://slack.com/');
      await app.init();
      if (socket) await socket.start();
      return http && 'signingSecret' in config.transport ? await listen(http, config.transport, trouble) : null;
    } catch (error) {
      if (error instanceof WebAPIPlatformError && REFUSALS.has(error.data.error))
        throw new Refused(
          `Slack does not take the ${'appToken' in config.transport ? 'tokens' : 'token'}: ${error.data.error}`,
        );
      throw error;
    }
  }
}

function socketReceiver(
  appToken: string,
  clientOptions: WebClientOptions,
  { log, onContact, onLost, pingTimeout }: StartParts,
): SocketModeReceiver {
  const receiver = new SocketModeReceiver({
    appToken,
    logger: createLogger(log),
    installerOptions: { clientOptions },
    ...(pingTimeout === undefined ? {} : { clientPingTimeout: pingTimeout }),
  });
  survive(receiver, onLost);
  receiver.client.on('connected', onContact);
  receiver.client.on('ws_message', onContact);
  return receiver;
}

/**
 * The SDK starts its socket again by itself and waits for nobody: where that fails for good, or is overtaken by a stop, the
 * rejection would end the process (node-slack-sdk 2656). From the second start on it is heard here.
 */
function survive({ client }: SocketModeReceiver, onLost: (why: string) => void): void {
  const start = client.start.bind(client);
  let first = true;
  client.start = () => {
    const started = start();
    if (first) {
      first = false;
      return started;
    }
    return started.catch((error: unknown) => {
      onLost(error instanceof Error ? error.message : 'stopped while it was connecting');
      return new Promise(() => undefined);
    });
  };
}
