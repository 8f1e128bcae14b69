/**
 * npm start: the database, the demo on first run, the web chat, and a sign-in link for each person of the demo.
 * Exit codes: 0 stopped by a signal · 2 wrong settings · 3 the database, the shop's key or the port can't be had.
 */
import {
  clockFor,
  createDesk,
  issueLink,
  KeyTrouble,
  keyPlace,
  openKey,
  randomHex,
  type ShopKey,
} from '../../engine/desk/index.ts';
import { isNews, isPostgres, nameOf, openStore, relayed } from '../../engine/store/index.ts';
import { SHELF } from '../../flows/index.ts';
import { DEMO_PEOPLE, loadDemo } from '../../seeds/index.ts';
import { buildServer } from './app.ts';
import { type Chat, startChat } from './chats.ts';
import { readConfig } from './config.ts';
import { createLog } from './log.ts';
import { createMetrics } from './metrics.ts';

const say = (line: string): void => void process.stdout.write(`${line}\n`);
const quit = (code: number, lines: readonly string[]): never => {
  for (const line of lines) process.stderr.write(`nocool: ${line}\n`);
  process.exit(code);
};

const read = readConfig(process.env);
if ('wrong' in read) quit(2, read.wrong);
const { config } = read as Extract<typeof read, { config: unknown }>;
const because = (error: unknown): string => (error instanceof Error ? error.message : String(error));

const where = config.DATABASE_URL ?? config.NOCOOL_DB;
const store = await openStore(where).catch((error: unknown) =>
  quit(3, [`the database ${nameOf(where)} can’t be opened: ${because(error)}`]),
);
const keyAt = (place: string): ShopKey => {
  try {
    return openKey(place);
  } catch (error) {
    if (!(error instanceof KeyTrouble)) throw error;
    return quit(3, [error.message]);
  }
};
// Made before anything is recorded, so that there is one to pin.
const key = keyAt(keyPlace(process.env, config.NOCOOL_DB));
const parts = { shelf: SHELF, clock: await clockFor(store), random: randomHex };
// Of several that start on a new database at one moment, one loads the demo.
const mine = randomHex(16);
if (config.NOCOOL_DEMO === 'yes' && (await store.claim('demo-by', mine)) === mine && (await loadDemo(store, parts)))
  say('The demo was loaded: an invented shop, three people, three jobs.');

const zone = config.NOCOOL_ZONE ?? Intl.DateTimeFormat().resolvedOptions().timeZone;
const publicUrl = config.NOCOOL_URL ?? `http://localhost:${config.NOCOOL_PORT}`;
// A chat outside is another process. SQLite tells it nothing of what is written here, so we do.
const slackSet = config.NOCOOL_SLACK_BOT_TOKEN !== undefined;
const relay = slackSet && !isPostgres(where) ? relayed(store, (news) => slack?.send(news)) : null;
let slack: Chat | null = null;
const unsaid = async (): Promise<string[]> => (slackSet ? (await store.unsaid('slack')).map(({ id }) => id) : []);
const metrics = config.NOCOOL_METRICS_TOKEN === undefined ? null : createMetrics({ clock: parts.clock, unsaid });
const kept = relay?.store ?? store;
const desk = createDesk({ ...parts, store: metrics?.store(kept) ?? kept, key, zone });
if (metrics) kept.watch((_job, entry) => metrics.entry(entry));
const web = {
  desk: metrics?.desk(desk) ?? desk,
  store: metrics?.store(store) ?? store,
  isReady: async () => (await store.meta('ready')) !== undefined,
  ...(metrics && config.NOCOOL_METRICS_TOKEN ? { metrics, metricsToken: config.NOCOOL_METRICS_TOKEN } : {}),
  clock: parts.clock,
  log: createLog(config.NOCOOL_LOG),
  secureCookies: publicUrl.startsWith('https:'),
  publicUrl,
  perPerson: config.NOCOOL_RATE,
  proxies: config.NOCOOL_PROXIES,
  ...(slackSet ? { chats: () => ({ slack: slack?.health() ?? { state: 'starting' as const, contact: null } }) } : {}),
};
const app = buildServer(web);
await app
  .listen({ port: config.NOCOOL_PORT, host: config.NOCOOL_HOST })
  .catch((error: unknown) => quit(3, [`port ${config.NOCOOL_PORT} can’t be had: ${because(error)}`]));

if (slackSet) {
  const onMessage = (message: unknown): void => {
    if (isNews(message)) relay?.hear(message);
  };
  slack = startChat({ program: '../../bot/slack/main.js', env: { ...process.env, NOCOOL_URL: publicUrl }, onMessage });
}
say(`nocool is at ${publicUrl}`);
// A browser holds one sign-in for each name of a machine, so on localhost each of the demo gets a name of their own.
const at = (id: string, link: string): string =>
  config.NOCOOL_URL ? link : link.replace('//localhost:', `//${id}.localhost:`);
if ((await store.meta('demo')) !== null) {
  say('Sign in as (each link works once, for seven days):');
  for (const { id, name, roles } of DEMO_PEOPLE)
    say(`  ${name}, ${roles.join(' and ')}: ${at(id, await issueLink(web, id))}`);
}

// Links and sessions that have expired open nothing; once an hour they go.
const expire = (): Promise<unknown> =>
  store.expire(parts.clock().toISOString()).catch((error: unknown) => web.log.warn({ err: error }));
await expire();
setInterval(expire, 3_600_000).unref();

let stopping = false;
for (const signal of ['SIGINT', 'SIGTERM'] as const) {
  process.on(signal, () => {
    if (stopping) return;
    stopping = true;
    // What is under way gets its answer; a hanging connection does not keep the program alive.
    setTimeout(() => process.exit(0), 9_000).unref();
    void Promise.allSettled([app.close(), slack?.stop()])
      .then(() => store.close())
      .then(() => process.exit(0));
  });
}
