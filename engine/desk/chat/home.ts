/** What one person finds on their own page in a chat: what waits for them, what is open, what runs out. For any platform. */
import { may } from '../rights.ts';
import type { Desk, JobCard, LowStock, Person, ReviewQueue } from '../types.ts';

export interface Home {
  readonly person: Person;
  /** Calls with a caller on the line, or whose line went dead today; null for whoever takes none. */
  readonly taking: readonly JobCard[] | null;
  /** The first page of the queue, the most pressing first; null for whoever reviews nothing. */
  readonly review: ReviewQueue | null;
  /** What stands in no queue of this person and waits for somebody all the same. */
  readonly waits: readonly JobCard[];
  readonly open: readonly JobCard[];
  /** Whether the open ones are everybody's. */
  readonly all: boolean;
  readonly low: readonly LowStock[];
}
const NOBODY = { own: false, holder: false, gate: false, reason: false, participates: false };
const WAITS: ReadonlySet<JobCard['state']> = new Set(['emergency', 'held', 'finished', 'unreadable']);
const CALLS: ReadonlySet<JobCard['state']> = new Set(['taking', 'put-away', 'taken']);
/** Hours for which a call that was put away is kept in sight. */
const AWAY_MS = 12 * 3_600_000;

export async function homeOf(desk: Desk, person: Person, now: Date): Promise<Home> {
  const right = (use: Parameters<typeof may>[1]): boolean => may(person.roles, use, NOBODY);
  const all = right('board');
  const cards = await desk.jobs(person.id);
  const review = right('review') ? await desk.review.queue(person.id) : null;
  const queued = new Set(review?.jobs.map(({ job }) => job));
  const since = new Date(now.getTime() - AWAY_MS).toISOString();
  const rest = cards.filter(({ job, state }) => state !== 'signed' && !CALLS.has(state) && !queued.has(job));
  const waits = all ? rest.filter(({ state }) => WAITS.has(state)) : [];
  const waiting = new Set(waits);
  const mine = all ? rest : rest.filter(({ assigned }) => assigned.includes(person.id));
  const onTheLine = ({ state, updated }: JobCard): boolean =>
    state === 'taking' || (state === 'put-away' && updated >= since);
  return {
    ...{ person, review, waits, all, open: mine.filter((card) => !waiting.has(card)) },
    taking: right('take-call') ? cards.filter(onTheLine) : null,
    low: all ? (await desk.dispatch.board(person.id)).low : [],
  };
}
