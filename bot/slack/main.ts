/**
 * The bot as a process of its own, started by `npm start` where its tokens are set: whatever becomes of it, the web chat goes on.
 * Exit codes: 0 stopped · 2 wrong settings, or a token that is not taken · 3 the database can't be had · 5 the platform
 * can't be reached, or the SDK broke; whoever started it tries again.
 */
import { clockFor, createDesk, createDoor, createSpeaker, issueLink, randomHex } from '../../engine/desk/index.ts';
import { isNews, isPostgres, nameOf, openStore, relayed, type Store } from '../../engine/store/index.ts';
import { SHELF } from '../../flows/index.ts';
import { type Bot, Refused, startBot } from './bot.ts';
import { readConfig, type SlackConfig } from './config.ts';
import { createPino, withoutSecrets } from './log.ts';
import { CHAT } from './voice.ts';

/** Milliseconds that what is under way may take at the end. */
const STOP_MS = 8_000;
const EXIT = { stopped: 0, settings: 2, database: 3, again: 5 } as const;
const tellParent = (message: object): void => {
  // Whoever started it may be gone: then there is nobody to tell.
  if (process.connected) process.send?.(message, undefined, undefined, () => undefined);
};
function quit(code: number, line: string): never {
  tellParent({ kind: 'state', state: code === EXIT.settings ? 'refused' : 'down' });
  process.stderr.write(`nocool: Slack: ${withoutSecrets(line)}\n`);
  process.exit(code);
}
const because = (error: unknown): string =>
  (error instanceof Error ? error.message : String(error)).split('\n', 1).join('');

// Where something fails that nobody waits for, this process ends and a new one takes its place.
process.on('unhandledRejection', (error) => quit(EXIT.again, `the connection broke: ${because(error)}`));
process.on('uncaughtException', (error) => quit(EXIT.again, `it broke: ${because(error)}`));

const config = readConfig(process.env);
const set: SlackConfig = 'wrong' in config ? quit(EXIT.settings, config.wrong) : config;
const opened = await openStore(set.database).catch((error: unknown) =>
  quit(EXIT.database, `the database ${nameOf(set.database)} can’t be opened: ${because(error)}`),
);
const store: Store = isPostgres(set.database) ? opened : shared(opened);
function shared(own: Store): Store {
  const relay = relayed(own, tellParent);
  process.on('message', (message) => {
    if (isNews(message)) relay.hear(message);
  });
  return relay.store;
}

const clock = await clockFor(store);
const log = createPino(set.log);
const desk = createDesk({ store, shelf: SHELF, clock, random: randomHex, zone: set.zone });
const door = createDoor({ store, desk, chat: CHAT, clock });
let told = 0;
let stopping = false;
let bot: Bot | null = null;
async function stop(): Promise<void> {
  if (stopping) return;
  stopping = true;
  setTimeout(() => process.exit(EXIT.stopped), STOP_MS).unref();
  await bot?.stop();
  await store.close();
  process.exit(EXIT.stopped);
}
for (const signal of ['SIGINT', 'SIGTERM'] as const) process.on(signal, () => void stop());
// Without whoever started it there is nobody left to stop it.
process.on('disconnect', () => void stop());

bot = await startBot({
  config: set,
  desk,
  door,
  speaker: (voice) =>
    createSpeaker({ store, desk, voice, clock, trouble: (what) => log.warn({ chat: CHAT }, withoutSecrets(what)) }),
  store,
  clock,
  webLink: (person, to) => issueLink({ store, clock, publicUrl: set.webUrl }, person, to),
  log,
  onRevoked: (how) =>
    quit(
      EXIT.settings,
      `the workspace took the app or its token away: ${how}. Nothing is posted any more, and what has to be said is kept. Install the app again, set NOCOOL_SLACK_BOT_TOKEN, and start anew.`,
    ),
  onLost: (why) => {
    if (!stopping) quit(EXIT.again, `the connection is lost: ${why}`);
  },
  onContact: () => {
    // Once a second at most: it is for a person who asks how it is.
    if (Date.now() - told < 1_000) return;
    told = Date.now();
    tellParent({ kind: 'state', state: 'up', contact: new Date(told).toISOString() });
  },
}).catch((error: unknown) =>
  error instanceof Refused
    ? quit(EXIT.settings, `${error.message}. Look at NOCOOL_SLACK_BOT_TOKEN and NOCOOL_SLACK_APP_TOKEN.`)
    : quit(EXIT.again, `it can’t be reached: ${because(error)}. Trying again.`),
);
