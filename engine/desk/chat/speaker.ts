/**
 * Says of each job what has to be said, once to the eye. What is due is kept before it is said and leaves the list when it
 * stands: a crash, a lost answer, a second process change nothing of that. Of one job one saying comes after another.
 */
import type { Entry } from '../../schema.ts';
import { NotKept, type Saying, type Store } from '../../store/port.ts';
import { may } from '../rights.ts';
import type { Desk, JobView, Person } from '../types.ts';
import { contentOf } from './content.ts';
import { due, nextRound } from './due.ts';
import { lowAfter, toldOfStock } from './low.ts';
import { type Content, Later, Never, type Spoken, type Voice, type What } from './types.ts';

export interface SpeakerParts {
  readonly store: Store;
  readonly desk: Pick<Desk, 'crewView' | 'people' | 'settings'>;
  readonly voice: Voice;
  readonly clock: () => Date;
  /** Trouble for the log: one line, no words of people. */
  readonly trouble: (what: string) => void;
}
export interface Speaker {
  /** Catches up with what happened meanwhile, then listens. */
  start(): Promise<void>;
  /** Nothing new is begun; what is under way is finished. */
  stop(): Promise<void>;
  /** Resolves when nothing is under way that could be said now. For tests and for the end. */
  idle(): Promise<void>;
}

/** Milliseconds that one process may take over one saying before another takes it. */
const LEASE = 20_000;
const [FIRST_PAUSE, LONGEST_PAUSE] = [500, 60_000];
/** Jobs that ended while nobody listened. */
const CLOSED_HEARD = 100;
const LONGEST_TIMER = 2_000_000_000;
const NOBODY = { own: false, holder: false, gate: false, reason: false, participates: false };
/** Said to one person, wherever the thread is. */
const ALONE: ReadonlySet<What['kind']> = new Set(['attention', 'low']);

export function createSpeaker({ store, desk, voice, clock, trouble }: SpeakerParts): Speaker {
  const { chat } = voice;
  const heard = new Map<string, number>();
  const hearing = new Map<string, Promise<void>>();
  const deadlines = new Map<string, NodeJS.Timeout>();
  /** Per lane: not before, and how long the last pause was. */
  const pauses = new Map<string, { until: number; ms: number }>();
  /** Surely not taken: it needs not be looked for. */
  const clean = new Set<string>();
  let silent = 0;
  let stopped = false;
  let stopListening = (): void => undefined;
  let pumping: Promise<void> | null = null;
  let again = false;
  let timer: NodeJS.Timeout | undefined;
  const at = (ms = 0): string => new Date(clock().getTime() + ms).toISOString();
  const isOf = (client: string | null): boolean => client?.startsWith(`${chat}.m.`) ?? false;

  /** One hearing of a job after another; a call while one runs is one more afterwards. */
  function hear(job: string): Promise<void> {
    const before = hearing.get(job) ?? Promise.resolve();
    const next = before.then(() => hearNow(job)).catch((error: unknown) => failed(job, error));
    hearing.set(job, next);
    void next.then(() => {
      if (hearing.get(job) === next) hearing.delete(job);
    });
    return next;
  }
  async function hearNow(job: string): Promise<void> {
    if (stopped) return;
    const { entries } = await store.readAfter(job, heard.get(job) ?? 0);
    const [view, said, crew] = await Promise.all([desk.crewView(job), store.sayings(chat, job), membersOf(desk, chat)]);
    const sayings = due(chat, view, entries, said, crew, isOf, toldOfStock(await desk.settings(), crew));
    const seq = entries.at(-1)?.seq ?? heard.get(job) ?? 0;
    if (sayings.length > 0 || entries.length > 0) await store.willSay({ chat, lane: job, seq }, sayings);
    heard.set(job, seq);
    watchTheClock(job, view);
    pump();
  }
  function failed(job: string, error: unknown): void {
    if (stopped) return;
    trouble(`job ${job.slice(0, 8)} could not be heard: ${nameOf(error)}`);
    // A record that can't be read stays so; what could not be kept is tried again.
    if (error instanceof NotKept) setTimeout(() => void hear(job), 1_000).unref();
  }
  /** An isolation grows too old, and an emergency is said again, whether or not anybody types. */
  function watchTheClock(job: string, view: JobView): void {
    clearTimeout(deadlines.get(job));
    deadlines.delete(job);
    const stale = view.prompt.isolation.flatMap(({ until }) => (until === null ? [] : [Date.parse(until)]));
    const next = Math.min(...stale, nextRound(view) ?? Number.POSITIVE_INFINITY);
    if (!Number.isFinite(next)) return;
    const wait = Math.min(LONGEST_TIMER, Math.max(0, next - clock().getTime()) + 50);
    deadlines.set(job, setTimeout(() => void hear(job), wait).unref());
  }

  function pump(): void {
    if (stopped) return;
    if (pumping) {
      again = true;
      return;
    }
    pumping = sayAll()
      .catch((error: unknown) => {
        trouble(`the list of what is to be said can’t be read: ${nameOf(error)}`);
        wake(1_000);
      })
      .finally(() => {
        pumping = null;
        if (again) {
          again = false;
          pump();
        }
      });
  }
  function wake(ms: number): void {
    clearTimeout(timer);
    timer = setTimeout(pump, Math.max(1, ms)).unref();
  }
  async function sayAll(): Promise<void> {
    for (;;) {
      if (stopped) return;
      const now = clock().getTime();
      if (silent > now) return wake(silent - now);
      const waiting = await store.unsaid(chat);
      const ready = waiting.filter(({ lane }) => (pauses.get(lane)?.until ?? 0) <= now);
      let done = 0;
      for (const saying of ready) {
        if (stopped || silent > now) break;
        if (await sayOne(saying)) done += 1;
      }
      if (done > 0) continue;
      if (waiting.length === 0) return;
      const next = Math.min(...waiting.map(({ lane }) => pauses.get(lane)?.until ?? now + LEASE));
      return wake(Math.max(silent, next) - now);
    }
  }
  /** True where it is done with. */
  async function sayOne(listed: Saying): Promise<boolean> {
    const saying = await store.takeSaying(listed.id, at(), at(LEASE));
    if (!saying) return false;
    try {
      await store.said(saying.id, await placed(saying));
      pauses.delete(saying.lane);
      clean.delete(saying.id);
      return true;
    } catch (error) {
      return notSaid(saying, error);
    }
  }
  async function entryAt(job: string, what: What): Promise<Entry | undefined> {
    return 'seq' in what ? (await store.readAfter(job, what.seq - 1)).entries[0] : undefined;
  }
  /** Where it stands now; null where it leaves nothing behind. */
  async function placed(saying: Saying): Promise<string | null> {
    const { id, lane: job } = saying;
    const what = saying.body as What;
    const view = await desk.crewView(job);
    const lane = await store.sayings(chat, job);
    const under = lane.find(({ body }) => (body as What).kind === 'head')?.at ?? null;
    const spoken = (content: Content): Spoken => ({ id, job, view, under, content });
    if (what.kind === 'redraw') {
      // One that comes later draws the same.
      const last = lane.findLast(({ body }) => (body as What).kind === 'redraw');
      if (last?.id !== id) return null;
      if (under !== null) await voice.draw(under, spoken({ kind: 'head' }));
      return null;
    }
    if (what.kind === 'close') {
      const question = lane.find((other) => other.id === what.of)?.at ?? null;
      const lines = view.ticket.filter((l) => l.kind === 'answered' && l.seq > what.after && l.seq <= what.to);
      if (question !== null) await voice.draw(question, spoken({ kind: 'closed', lines }));
      return `closed ${what.of}`;
    }
    const content = await contentOf(what, view, {
      entry: () => entryAt(job, what),
      low: (seq) => lowAfter(store, job, seq),
      reviews: async (of) =>
        may((await desk.people()).find(({ id: one }) => one === of)?.roles ?? [], 'review', NOBODY),
    });
    if (content === null) return null;
    // A head that can't be found is not a reason to fill the channel.
    if (under === null && what.kind !== 'head' && !ALONE.has(what.kind)) throw new Never('the thread has no head');
    const tried = saying.tries > 0 && !clean.has(id);
    return (tried ? await voice.find(spoken(content)) : null) ?? (await voice.say(spoken(content)));
  }
  async function notSaid(saying: Saying, error: unknown): Promise<boolean> {
    if (error instanceof Never) {
      trouble(`given up: ${(saying.body as What).kind} of job ${saying.lane.slice(0, 8)}: ${error.message}`);
      await store.said(saying.id, null);
      return true;
    }
    if (error instanceof Later) {
      silent = clock().getTime() + error.ms;
      clean.add(saying.id);
    } else {
      const ms = Math.min(LONGEST_PAUSE, (pauses.get(saying.lane)?.ms ?? FIRST_PAUSE / 2) * 2);
      pauses.set(saying.lane, { ms, until: clock().getTime() + ms });
      trouble(`not said yet: ${(saying.body as What).kind} of job ${saying.lane.slice(0, 8)}: ${nameOf(error)}`);
    }
    await store.letGo(saying.id).catch(() => undefined);
    return false;
  }

  async function catchUp(): Promise<void> {
    const rows = await store.board(CLOSED_HEARD);
    for (const { lane, seq } of await store.heard(chat)) heard.set(lane, seq);
    // Calls from before this chat was there get a thread when something happens on them.
    const since = await store.claim(`${chat}-since`, at());
    for (const { job, lastSeq, updated, closed } of [...rows].reverse()) {
      if (!heard.has(job) && updated < since) {
        await store.willSay({ chat, lane: job, seq: lastSeq }, []);
        heard.set(job, lastSeq);
      } else if (!closed || (heard.get(job) ?? 0) < lastSeq) {
        const quiet = (heard.get(job) ?? 0) >= lastSeq && (await store.sayings(chat, job)).length === 0;
        if (!quiet) await hear(job);
      }
    }
  }

  return {
    async start() {
      stopListening = store.watch((job, _entry: Entry) => void hear(job));
      await catchUp();
      pump();
    },
    async stop() {
      stopped = true;
      stopListening();
      clearTimeout(timer);
      for (const deadline of deadlines.values()) clearTimeout(deadline);
      await Promise.allSettled([...hearing.values(), pumping]);
    },
    async idle() {
      while (hearing.size > 0 || pumping) await Promise.allSettled([...hearing.values(), pumping]);
    },
  };
}

/** Who of the crew can be told there. */
const membersOf = async (desk: Pick<Desk, 'people'>, chat: string): Promise<Person[]> =>
  (await desk.people()).filter(({ active, chats }) => active && chats?.[chat] !== undefined);
const nameOf = (error: unknown): string => (error instanceof Error ? `${error.name}: ${error.message}` : 'an error');
