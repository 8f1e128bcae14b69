/** What every listener works with, and the few steps that all of them take. */
import type { WebClient } from '@slack/web-api';
import type { Desk, Door, Person, Turn } from '../../../engine/desk/index.ts';
import { type Aside, asideOf, lines, tell, troubleWords } from '../tell.ts';

export interface BotParts {
  readonly desk: Desk;
  readonly door: Door;
  /** For what a person waits for: tries nothing twice, waits for no limit. */
  readonly quick: WebClient;
  readonly botToken: string;
  readonly platform: typeof fetch;
  readonly channel: string;
  /** Milliseconds that a photo may take; our own where not given. */
  readonly photoPatience: number | undefined;
  /** A link that signs this person in on the web, once, and opens that page there. */
  readonly webLink: (person: string, to?: string) => Promise<string>;
  readonly addressOf: (place: string) => string;
  /** Draws the home of an account anew. */
  readonly refreshHome: (account: string) => Promise<void>;
  /** The workspace took the app or its token away: nothing is posted any more. */
  readonly revoked: (how: string) => void;
  /** A bug, or trouble with the platform: one line, no words of people. */
  readonly trouble: (what: string) => void;
}
export const STRANGER =
  'This account belongs to nobody of the crew yet. Ask your shop for a sign-in link, then type /nocool join and the link, or paste it in the app’s Home.';
/** Milliseconds after which a form is closed though the desk has not answered: the platform waits for three seconds. */
export const PATIENCE = 2_000;

/** Runs one piece of work for a person; what goes wrong is told to them alone. */
export async function forPerson(
  { door, quick, trouble }: BotParts,
  to: Aside,
  work: (person: Person) => Promise<void>,
): Promise<void> {
  try {
    const person = await door.who(to.user);
    if (person) await work(person);
    else await tell(quick, to, lines([STRANGER]));
  } catch (error) {
    const words = troubleWords(error);
    if (words === null) trouble(nameOf(error));
    await tell(quick, to, lines([words ?? 'Something is broken here. Look again.'])).catch((worse: unknown) =>
      trouble(nameOf(worse)),
    );
  }
}
export const nameOf = (error: unknown): string =>
  error instanceof Error ? `${error.name}: ${error.message}` : 'an error';

/** The addresses of the threads of these jobs, for people. */
export async function placesOf(
  { door, addressOf }: Pick<BotParts, 'door' | 'addressOf'>,
  jobs: readonly string[],
): Promise<(job: string) => string | null> {
  const found = await Promise.all(jobs.map(async (job) => [job, await door.placeOf(job)] as const));
  const places = new Map(found.flatMap(([job, at]) => (at === null ? [] : [[job, addressOf(at)] as const])));
  return (job) => places.get(job) ?? null;
}

/** Tells a person what the thread doesn't. */
export async function after({ door, quick }: BotParts, to: Aside, by: string, turn: Turn): Promise<void> {
  const drawing = asideOf(turn, door.draft(by, turn.view.job, turn.view.prompt.seq));
  if (drawing) await tell(quick, to, drawing);
}

/** Lines of one thread are taken one after another, in the order in which they came. */
export function createLanes(): (lane: string, work: () => Promise<void>) => Promise<void> {
  const lanes = new Map<string, Promise<void>>();
  return (lane, work) => {
    const next = (lanes.get(lane) ?? Promise.resolve()).then(work, work);
    lanes.set(lane, next);
    const done = (): void => {
      if (lanes.get(lane) === next) lanes.delete(lane);
    };
    next.then(done, done);
    return next;
  };
}

/** True the first time only. What is sent twice has one effect anyway; this keeps it from being answered twice. */
export function createOnce(most = 2_000): (key: string) => boolean {
  const seen = new Set<string>();
  return (key) => {
    if (seen.has(key)) return false;
    seen.add(key);
    const oldest = seen.values().next().value;
    if (seen.size > most && oldest !== undefined) seen.delete(oldest);
    return true;
  };
}
