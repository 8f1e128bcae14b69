/** The whole turn over HTTP against the same server with the engine left out. */
import { mkdir, mkdtemp, rm } from 'node:fs/promises';
import { Agent, request } from 'node:http';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { createDesk, type Desk, randomHex, type Turn } from '../../engine/desk/index.ts';
import { openSqlite, type Store } from '../../engine/store/index.ts';
import type { Summary } from '../../engine/store/port.ts';
import { SHELF } from '../../flows/index.ts';
import { personOf } from '../desk/shop.ts';
import { PEOPLE } from '../people.ts';
import { written } from '../store/written.ts';
import { buildPage } from '../web-chat/browser.ts';
import { type Serving, serve } from '../web-chat/serve.ts';
import { perSecond, type Ratio, ratio } from './ratio.ts';
import { judge, report } from './report.ts';

const ROUNDS = { rounds: 9, ms: 700, warmMs: 4_000 };
const done: Ratio[] = [];
let folder = '';
let page = '';
beforeAll(async () => {
  await mkdir('data', { recursive: true });
  folder = await mkdtemp(join('data', 'bench-'));
  page = await buildPage();
});
afterAll(async () => {
  for (const each of [folder, page]) await rm(each, { recursive: true, force: true });
  await report('turn', done);
});

async function shop(name: string): Promise<{ store: Store; desk: Desk }> {
  const store = await openSqlite(join(folder, `${name}.db`));
  for (const person of Object.values(PEOPLE)) await store.savePerson(personOf(person));
  return { store, desk: deskOn(store) };
}
const deskOn = (store: Store): Desk => createDesk({ store, shelf: SHELF, clock: () => new Date(), random: randomHex });

/**
 * The same answers from the same store, to the byte but for ids, with nothing thought about in between: `like` is a call
 * of the same kind, turn by turn, with the line of the list that was kept beside it.
 */
function withoutEngine({ store, desk }: { store: Store; desk: Desk }, like: readonly Like[]): Desk {
  const ends = new Map<string, ReturnType<typeof written>['entries'][number]>();
  const turns = new Map<string, number>();
  const next = (job: string): Like => {
    const count = turns.get(job) ?? 0;
    turns.set(job, count + 1);
    const turn = like[count];
    if (!turn) throw new Error(`turn ${count} was not recorded`);
    return turn;
  };
  const answer = (job: string, { turn }: Like, entries: Turn['entries']): Turn => ({
    ...turn,
    entries,
    view: { ...turn.view, job },
  });
  return {
    ...desk,
    async open() {
      const job = randomHex(16);
      const { entries, texts } = written(job, undefined);
      const turn = next(job);
      await store.create(job, entries, texts, turn.summary);
      if (entries[0]) ends.set(job, entries[0]);
      return answer(job, turn, entries);
    },
    async reply(by, job, reply) {
      const { entries, texts } = written(job, ends.get(job), { by, client: reply.client });
      const turn = next(job);
      await store.append(job, (entries[0]?.seq ?? 1) - 1, entries, texts, turn.summary);
      if (entries[0]) ends.set(job, entries[0]);
      return answer(job, turn, entries);
    },
  };
}
interface Like {
  readonly turn: Turn;
  readonly summary: Summary | undefined;
}
/** A call as the connections below make theirs: opened, the first question answered, then notes. */
async function recorded({ store }: { store: Store }): Promise<Like[]> {
  let summary: Summary | undefined;
  const overheard: Store = {
    ...store,
    create(...of) {
      summary = of[3];
      return store.create(...of);
    },
    append(...of) {
      summary = of[4];
      return store.append(...of);
    },
  };
  const desk = deskOn(overheard);
  const turns = [{ turn: await desk.open('ines', { title: 'No cool', client: 'like' }), summary }];
  const { job, prompt } = (turns[0] as Like).turn.view;
  while (turns.length < TURNS) {
    const turn = await desk.reply('ines', job, { ...said(turns.length, prompt.seq), client: `like-${turns.length}` });
    turns.push({ turn, summary });
  }
  return turns;
}

const TURNS = 40;
const NOTE = { kind: 'command', name: 'note', text: 'Rust under the fan leads.' } as const;
/** What is sent as that turn; `seq` is of the first question. */
const said = (turn: number, seq: number) => (turn === 1 ? ({ kind: 'text', seq, text: 'd' } as const) : NOTE);

/** Each connection writes notes on a call of its own, and opens the next after forty turns. */
function people(serving: Serving, cookie: string, slow: number[]): (i: number) => Promise<void> {
  const agent = new Agent({ keepAlive: true, maxSockets: 64 });
  const calls = new Map<number, { job: string; turns: number; seq: number }>();
  let count = 0;
  const post = (path: string, body: object): Promise<Turn> =>
    new Promise((resolve, reject) => {
      const began = performance.now();
      const headers = { cookie, 'content-type': 'application/json', 'x-nocool': '1' };
      const sent = request(`${serving.url}${path}`, { method: 'POST', agent, headers }, (answer) => {
        let text = '';
        answer.setEncoding('utf8');
        answer.on('data', (piece) => {
          text += piece;
        });
        answer.on('end', () => {
          slow.push(performance.now() - began);
          if ((answer.statusCode ?? 500) < 300) resolve(JSON.parse(text) as Turn);
          else reject(new Error(text));
        });
      });
      sent.on('error', reject);
      sent.end(JSON.stringify(body));
    });
  return async (i) => {
    const call = calls.get(i);
    const client = `b${++count}`;
    if (!call || call.turns >= TURNS) {
      const { view } = await post('/api/jobs', { title: 'No cool', client });
      calls.set(i, { job: view.job, turns: 1, seq: view.prompt.seq });
      return;
    }
    const { entries, refusal } = await post(`/api/jobs/${call.job}/replies`, {
      ...said(call.turns++, call.seq),
      client,
    });
    expect([entries.length > 0, refusal]).toEqual([true, null]);
  };
}
const p99 = (values: number[]): number => values.sort((a, b) => a - b)[Math.floor(values.length * 0.99)] ?? 0;

test('a full turn / the same server with the engine left out, 64 connections', async () => {
  const [whole, bare] = [await shop('whole'), await shop('bare')];
  const servings = [
    await serve({ ...bare, desk: withoutEngine(bare, await recorded(bare)), pageFolder: page }),
    await serve({ ...whole, pageFolder: page }),
  ] as const;
  const [slowBare, slowWhole]: [number[], number[]] = [[], []];
  const floor = people(servings[0], await servings[0].cookieFor('ines'), slowBare);
  const full = people(servings[1], await servings[1].cookieFor('ines'), slowWhole);
  const turns = await ratio({
    name: 'full turn over HTTP / engine left out, 64 connections',
    unit: 'turns/s',
    base: (ms) => perSecond(ms, 64, floor),
    subject: (ms) => perSecond(ms, 64, full),
    atLeast: 0.65,
    ...ROUNDS,
  });
  const slow = await ratio({
    name: 'its p99 / the p99 with the engine left out',
    unit: 'ms',
    base: async (ms) => {
      slowBare.length = 0;
      await perSecond(ms, 64, floor);
      return p99(slowBare);
    },
    subject: async (ms) => {
      slowWhole.length = 0;
      await perSecond(ms, 64, full);
      return p99(slowWhole);
    },
    atMost: 2.5,
    ...ROUNDS,
  });
  for (const serving of servings) await serving.close();
  for (const { store } of [whole, bare]) await store.close();
  judge(done, turns, slow);
});
