/** A shop with its bot in a workspace: the real SDK over real sockets, a real SQLite file, the platform on loopback. */
import { randomBytes } from 'node:crypto';
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { Writable } from 'node:stream';
import { setTimeout as sleep } from 'node:timers/promises';
import Database from 'better-sqlite3';
import { pino } from 'pino';
import { expect } from 'vitest';
import { type Bot, startBot } from '../../bot/slack/bot.ts';
import type { SlackConfig } from '../../bot/slack/config.ts';
import {
  createDesk,
  createDoor,
  createSpeaker,
  type Desk,
  issueLink,
  type JobView,
  type Person,
} from '../../engine/desk/index.ts';
import { openSqlite, type Store } from '../../engine/store/index.ts';
import { SHELF } from '../../flows/index.ts';
import { personOf } from '../desk/shop.ts';
import { PEOPLE, type PersonId } from '../people.ts';
import { Member, wordsOf } from './fake/person.ts';
import { Slack } from './fake/platform.ts';
import { APP_TOKEN, BOT_TOKEN, CREW, type Message, SECRET } from './fake/wire.ts';

export const ACCOUNTS: Readonly<Record<PersonId, string>> = {
  ines: 'U1INES',
  tomas: 'U2TOMAS',
  ruth: 'U3RUTH',
  dana: 'U4DANA',
  otto: 'U5OTTO',
};

export class Workspace {
  /** Moved by a test; otherwise it runs. */
  offset = 0;
  readonly slack: Slack;
  readonly store: Store;
  readonly desk: Desk;
  readonly log: string[] = [];
  readonly lost: string[] = [];
  readonly revoked: string[] = [];
  contacts = 0;
  bot!: Bot;
  readonly ines: Member;
  readonly tomas: Member;
  readonly ruth: Member;
  readonly dana: Member;
  readonly nobody: Member;
  private readonly folder: string;
  private readonly mode: 'socket' | 'http';
  private count = 0;

  private constructor(folder: string, store: Store, slack: Slack, mode: 'socket' | 'http') {
    [this.folder, this.store, this.slack, this.mode] = [folder, store, slack, mode];
    this.desk = createDesk({ store, shelf: SHELF, clock: this.clock, random: (n) => randomBytes(n).toString('hex') });
    const member = (id: string): Member => new Member(slack, id);
    [this.ines, this.tomas, this.ruth, this.dana] = [
      member(ACCOUNTS.ines),
      member(ACCOUNTS.tomas),
      member(ACCOUNTS.ruth),
      member(ACCOUNTS.dana),
    ];
    this.nobody = member('U9NOBODY');
  }
  static async open(
    mode: 'socket' | 'http' = 'socket',
    people: Partial<Record<PersonId, Partial<Person>>> = {},
  ): Promise<Workspace> {
    const folder = await mkdtemp(join(tmpdir(), 'nocool-slack-'));
    const store = await openSqlite(join(folder, 'shop.sqlite'), { busyMs: 50 });
    for (const p of Object.values(PEOPLE))
      await store.savePerson(personOf(p, { chats: { slack: ACCOUNTS[p.id] }, ...people[p.id] }));
    const workspace = new Workspace(folder, store, await Slack.start(), mode);
    workspace.slack.pings = 100;
    await workspace.start();
    return workspace;
  }
  readonly clock = (): Date => new Date(Date.now() + this.offset);
  config(): SlackConfig {
    return {
      botToken: BOT_TOKEN,
      transport:
        this.mode === 'socket' ? { appToken: APP_TOKEN } : { signingSecret: SECRET, host: '127.0.0.1', port: 0 },
      channel: CREW,
      api: this.slack.api,
      webUrl: 'http://localhost:8080',
      database: join(this.folder, 'shop.sqlite'),
      log: 'info',
      zone: 'UTC',
    };
  }
  async start(): Promise<void> {
    this.bot = await this.another();
    this.slack.appUrl = this.bot.url;
  }
  /** One more bot of the same shop, as another server would have it. */
  async another(): Promise<Bot> {
    const { store, desk, clock } = this;
    const lines = new Writable({
      write: (chunk, _, done) => {
        this.log.push(String(chunk));
        done();
      },
    });
    return startBot({
      config: this.config(),
      desk,
      door: createDoor({ store, desk, chat: 'slack', clock }),
      speaker: (voice) => createSpeaker({ store, desk, voice, clock, trouble: (what) => void this.log.push(what) }),
      store,
      clock,
      webLink: (person, to) => issueLink({ store, clock, publicUrl: 'http://localhost:8080' }, person, to),
      onRevoked: (how) => void this.revoked.push(how),
      homeTimes: { quiet: 20, gap: 50, pace: 1 },
      log: pino({ base: null }, lines),
      onContact: () => void this.contacts++,
      onLost: (why) => void this.lost.push(why),
      pingTimeout: 800,
      timeout: 2_000,
      photoPatience: 300,
    });
  }
  async restart(): Promise<void> {
    await this.bot.stop();
    await this.start();
  }
  async close(): Promise<void> {
    await this.bot.stop();
    await this.slack.stop();
    await this.store.close();
    await rm(this.folder, { recursive: true });
  }

  /** As a crash leaves a saying: begun, and its place never written down. */
  async forgetPlace(id: string): Promise<void> {
    const db = new Database(join(this.folder, 'shop.sqlite'));
    db.prepare('update saying set at = null, tries = 1 where id = ?').run(id);
    db.close();
  }
  /** While nothing can be written. */
  async locked(work: () => Promise<void>): Promise<void> {
    const db = new Database(join(this.folder, 'shop.sqlite'));
    db.exec('begin immediate');
    await work().finally(() => {
      db.exec('rollback');
      db.close();
    });
  }
  client = (): string => `web-${++this.count}`;
  /** A call of Ines, opened on the web. */
  async call(title = 'Fan runs, warm air', assign: PersonId = 'ines'): Promise<string> {
    const { view } = await this.desk.open('dana', { title, assign, client: this.client() });
    await this.head(view.job);
    await this.settled();
    return view.job;
  }
  view(job: string): Promise<JobView> {
    return this.desk.crewView(job);
  }
  /** On the web. */
  async web(job: string, text: string, by: PersonId = 'ines') {
    const { prompt } = await this.view(job);
    return this.desk.reply(by, job, { kind: 'text', client: this.client(), seq: prompt.seq, text });
  }
  /** When everything that is due has been said. */
  async settled(): Promise<void> {
    await until(async () => {
      await this.bot.speaker.idle();
      return (await this.store.unsaid('slack')).length === 0;
    }, 'something is left unsaid');
  }
  async head(job: string): Promise<Message> {
    let found: Message | undefined;
    await until(async () => {
      const place = (await this.store.sayings('slack', job)).find(({ id }) => id.endsWith('.head'))?.at;
      found = this.slack.messages.find((m) => place === `${m.channel}:${m.ts}`);
      return found !== undefined;
    }, 'the thread has no head');
    return found as Message;
  }
  async thread(job: string): Promise<string> {
    return (await this.head(job)).ts;
  }
  /** The question that stands, as it is drawn: the last message of the thread with its controls. */
  async asked(job: string): Promise<Message> {
    const { prompt } = await this.view(job);
    let found: Message | undefined;
    const thread = await this.thread(job);
    await until(async () => {
      found = this.slack.thread(thread).findLast((m) => m.blocks.some(({ block_id }) => block_id === 'always'));
      return (
        found !== undefined && wordsOf(found).includes(prompt.title) && (await this.store.unsaid('slack')).length === 0
      );
    }, `"${prompt.title}" is not asked`);
    return found as Message;
  }
}

export async function until(
  test: () => boolean | Promise<boolean>,
  what: string | (() => string),
  ms = 15_000,
  pause = 10,
): Promise<void> {
  const end = performance.now() + ms;
  while (!(await test())) {
    if (performance.now() > end) expect.fail(typeof what === 'string' ? what : what());
    await sleep(pause);
  }
}
