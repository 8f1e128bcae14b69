/**
 * Keeps the pages of people in a chat as things stand, for any platform: drawn anew when something has changed, not more
 * often than a person can read or a platform takes, and not where it would look the same.
 */
import { setTimeout as sleep } from 'node:timers/promises';
import type { Store } from '../../store/port.ts';
import { may } from '../rights.ts';
import type { Desk, Person } from '../types.ts';
import { type Home, homeOf } from './home.ts';
import { Later } from './types.ts';

/** Milliseconds. */
export interface HomeTimes {
  /** After something has changed, so that what comes together is drawn once. */
  readonly quiet: number;
  /** Between two drawings for one person. */
  readonly gap: number;
  /** Between any two drawings: a platform takes some hundred a minute. */
  readonly pace: number;
}
const TIMES: HomeTimes = { quiet: 1_000, gap: 5_000, pace: 700 };
/** The longest that a timer of Node takes. */
const LONGEST = 2_000_000_000;

export interface HomesParts<Page> {
  readonly store: Pick<Store, 'watch'>;
  readonly desk: Desk;
  readonly chat: string;
  readonly clock: () => Date;
  readonly times?: HomeTimes | undefined;
  /** Null: the account is nobody's. */
  readonly render: (home: Home | null) => Promise<Page>;
  /** Throws Later where it was surely not taken. */
  readonly publish: (account: string, page: Page) => Promise<void>;
  readonly trouble: (what: string) => void;
}
export interface Homes {
  start(): void;
  /** Draws it now: somebody looks, or has done something. From then on it is kept as things stand. */
  draw(account: string): Promise<void>;
  stop(): Promise<void>;
}
const NOBODY = { own: false, holder: false, gate: false, reason: false, participates: false };

export function createHomes<Page>(parts: HomesParts<Page>): Homes {
  const { store, desk, chat, clock, trouble, times = TIMES } = parts;
  const opened = new Set<string>();
  const due = new Set<string>();
  /** What stands on a page, and when it was drawn. */
  const shown = new Map<string, { print: string; at: number }>();
  const lanes = new Map<string, Promise<void>>();
  const end = new AbortController();
  let stopListening = (): void => undefined;
  let timer: NodeJS.Timeout | undefined;
  /** Set for the first isolation that grows too old. */
  let later: NodeJS.Timeout | undefined;
  let wakes: number | null = null;
  let working: Promise<void> | null = null;
  let again = false;
  const pause = (ms: number): Promise<void> =>
    sleep(ms, undefined, { signal: end.signal, ref: false }).catch(() => undefined);

  /** One drawing of a page after another: what was read first must not stand there last. */
  function drawn(account: string, asked: boolean): Promise<boolean> {
    const before = lanes.get(account) ?? Promise.resolve();
    const next = before.then(() => drawNow(account, asked));
    const done = next.then(
      () => undefined,
      () => undefined,
    );
    lanes.set(account, done);
    return next;
  }
  /** True where it was drawn; not where it looks as it did, unless somebody asked for it. */
  async function drawNow(account: string, asked: boolean): Promise<boolean> {
    const person = (await desk.people()).find(({ active, chats }) => active && chats?.[chat] === account) ?? null;
    const home = person && (await homeOf(desk, person, clock()));
    const page = await parts.render(home);
    const print = JSON.stringify(page);
    watchTheClock(home);
    if (!asked && shown.get(account)?.print === print) return false;
    await parts.publish(account, page);
    shown.set(account, { print, at: Date.now() });
    return true;
  }
  /** An isolation grows too old, whether or not anybody types. */
  function watchTheClock(home: Home | null): void {
    const next = Math.min(...deadlinesOf(home));
    if (!Number.isFinite(next) || (wakes !== null && wakes <= next)) return;
    clearTimeout(later);
    wakes = next;
    const wait = Math.min(LONGEST, Math.max(0, next - clock().getTime()) + 50);
    later = setTimeout(() => {
      wakes = null;
      changed();
    }, wait).unref();
  }
  function changed(): void {
    if (working) again = true;
    else if (timer === undefined && !end.signal.aborted) timer = setTimeout(begin, times.quiet).unref();
  }
  function begin(): void {
    timer = undefined;
    working = everybody()
      .catch((error: unknown) => trouble(`homes could not be drawn: ${nameOf(error)}`))
      .finally(() => {
        working = null;
        if (again) {
          again = false;
          changed();
        }
      });
  }
  /** Whoever watches over calls has their page kept from the start; others once they have looked at it. */
  async function everybody(): Promise<void> {
    const oversees = ({ active, roles }: Person): boolean => active && may(roles, 'board', NOBODY);
    for (const person of await desk.people()) {
      const account = person.chats?.[chat];
      if (account !== undefined && oversees(person)) due.add(account);
    }
    for (const account of opened) due.add(account);
    for (const account of [...due]) {
      if (end.signal.aborted) return;
      if (Date.now() - (shown.get(account)?.at ?? 0) < times.gap) again = true;
      else if (await tried(account)) await pause(times.pace);
    }
  }
  async function tried(account: string): Promise<boolean> {
    due.delete(account);
    try {
      return await drawn(account, false);
    } catch (error) {
      if (error instanceof Later) {
        due.add(account);
        again = true;
        await pause(error.ms);
      } else trouble(`a home could not be drawn: ${nameOf(error)}`);
      return false;
    }
  }

  return {
    start() {
      stopListening = store.watch(changed);
    },
    async draw(account) {
      opened.add(account);
      due.delete(account);
      await drawn(account, true);
    },
    async stop() {
      end.abort();
      stopListening();
      clearTimeout(timer);
      clearTimeout(later);
      await working;
    },
  };
}

const deadlinesOf = (home: Home | null): number[] =>
  [...(home?.open ?? []), ...(home?.waits ?? []), ...(home?.review?.jobs ?? [])].flatMap(({ until }) =>
    until === null ? [] : [Date.parse(until)],
  );
const nameOf = (error: unknown): string => (error instanceof Error ? `${error.name}: ${error.message}` : 'an error');
