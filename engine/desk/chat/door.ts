/**
 * The way in from a chat outside: which account is whose, which job a thread is about, what a tap, a line or a photo becomes.
 * What was understood of a refused answer is kept with whoever gave it until they go on, so that the rest is asked alone.
 */
import { keepLatest } from '../../latest.ts';
import { sha256 } from '../../report/digest.ts';
import type { GivenParts, Refusal, Reply } from '../../schema.ts';
import type { Saying, Store } from '../../store/port.ts';
import { type Desk, NoRight, NotFound, type Person, type Turn } from '../types.ts';
import { createGiving, type Giving } from './giving.ts';
import { createTaking, type Taking } from './taking.ts';
import type { What } from './types.ts';

/** The question that a tap or a form answers, as it was drawn. */
export interface Asked {
  readonly seq: number;
  readonly place: string;
  /** Where it was an earlier answer again: its seq. */
  readonly amends: number | null;
}
export interface Door extends Giving {
  /** A call with the caller on the line. */
  readonly taking: Taking;
  /** Null where the account is nobody's. */
  who(account: string): Promise<Person | null>;
  accountOf(person: string): Promise<string | null>;
  /** Ties an account to whoever the sign-in link belongs to, once; null where the link opens nothing any more. */
  join(account: string, link: string): Promise<Person | null>;
  /** The job whose thread begins at this place; null where it is no thread of ours. */
  jobAt(place: string): Promise<string | null>;
  /** Where the thread of a job begins. */
  placeOf(job: string): Promise<string | null>;
  answer(by: string, job: string, asked: Asked, parts: GivenParts, client: string): Promise<Turn>;
  /** Leaves the question open, with a reason. */
  skip(by: string, job: string, asked: Asked, reason: string, client: string): Promise<Turn>;
  /** An earlier answer as a question again, in `again`; nothing is changed by asking. */
  back(by: string, job: string, of: number): Promise<Turn>;
  type(by: string, job: string, text: string, client: string): Promise<Turn>;
  command(
    by: string,
    job: string,
    command: Pick<Extract<Reply, { kind: 'command' }>, 'name' | 'text'>,
    client: string,
  ): Promise<Turn>;
  /** Null where the bytes are no photo; `asked` false where this question takes none. */
  photo(by: string, job: string, bytes: Uint8Array, client: string): Promise<{ asked: boolean; turn: Turn | null }>;
  /** What is kept of a refused answer of this person to the question that stands. */
  draft(by: string, job: string, seq: number): GivenParts;
}

/** Drafts kept at most; the oldest goes. They rest on nothing: without one the whole is asked again. */
const DRAFTS = 500;
/** The question stands after these: the same person tries again. */
const TRY_AGAIN: ReadonlySet<Refusal['code']> = new Set([
  'not-a-number',
  'out-of-range',
  'which-unit',
  'which-quantity',
  'unknown-option',
  'missing',
  'unclear',
]);

export function createDoor(parts: { store: Store; desk: Desk; chat: string; clock: () => Date }): Door {
  const { store, desk, chat, clock } = parts;
  const drafts = new Map<string, { seq: number; parts: GivenParts }>();
  const key = (by: string, job: string): string => `${by} ${job}`;
  const draft = (by: string, job: string, seq: number): GivenParts => {
    const kept = drafts.get(key(by, job));
    return kept?.seq === seq ? kept.parts : {};
  };
  const keep = (by: string, job: string, seq: number, { refusal, entries }: Turn): void => {
    if (!refusal && entries.length === 0) return;
    const before = draft(by, job, seq);
    drafts.delete(key(by, job));
    if (!refusal || !TRY_AGAIN.has(refusal.code)) return;
    const wrong = new Set(refusal.parts);
    const good = Object.entries({ ...before, ...refusal.draft }).filter(([part]) => !wrong.has(part));
    if (good.length > 0) keepLatest(drafts, key(by, job), { seq, parts: Object.fromEntries(good) }, DRAFTS);
  };
  const send = async (by: string, job: string, reply: Reply, seq: number): Promise<Turn> => {
    const turn = await desk.reply(by, job, reply);
    keep(by, job, seq, turn);
    return turn;
  };

  return {
    ...createGiving(desk),
    taking: createTaking(desk),
    who: async (account) => (await desk.people()).find((p) => p.active && p.chats?.[chat] === account) ?? null,
    accountOf: async (person) => (await desk.person(person))?.chats?.[chat] ?? null,
    async join(account, link) {
      const token =
        link
          .trim()
          .replace(/[?#].*$/, '')
          .split('/')
          .at(-1) ?? '';
      const id = await store.useLink(sha256(token), clock().toISOString());
      const person = id === null ? null : await desk.person(id);
      if (!person?.active) return null;
      // One account is one person: whoever had it before has it no longer.
      for (const other of await store.people())
        if (other.id !== person.id && other.chats?.[chat] === account) {
          const { [chat]: _, ...chats } = other.chats;
          await store.savePerson({ ...other, chats });
        }
      const joined = { ...person, chats: { ...person.chats, [chat]: account } };
      await store.savePerson(joined);
      return joined;
    },
    async jobAt(place) {
      const saying = await store.sayingAt(chat, place);
      return saying && (saying.body as What).kind === 'head' ? saying.lane : null;
    },
    placeOf: async (job) => headOf(await store.sayings(chat, job)),
    draft,
    async skip(by, job, { seq, place }, reason, client) {
      const { prompt } = await desk.look(by, job);
      const meant = prompt.place === place ? seq : -1;
      return send(by, job, { kind: 'text', client, seq: meant, text: `skip ${reason}` }, meant);
    },
    back: (by, job, of) => desk.reply(by, job, { kind: 'command', client: `${chat}.back.${of}`, name: 'back', of }),
    async answer(by, job, { seq, place, amends }, parts, client) {
      if (amends !== null) return desk.reply(by, job, { kind: 'amend', client, of: amends, parts });
      const { prompt } = await desk.look(by, job);
      // At the same turn another question may stand by now, because time has passed: that is not what was answered.
      const meant = prompt.place === place ? seq : -1;
      const given = { ...draft(by, job, meant), ...parts };
      return send(by, job, { kind: 'answer', client, seq: meant, parts: given }, meant);
    },
    async type(by, job, text, client) {
      const seq = await standing(desk, by, job);
      const begun = draft(by, job, seq);
      const more = Object.keys(begun).length > 0 ? { draft: begun } : {};
      return send(by, job, { kind: 'text', client, seq, text, ...more }, seq);
    },
    command: (by, job, { name, text }, client) =>
      desk.reply(by, job, { kind: 'command', client, name, ...(text ? { text } : {}) }),
    async photo(by, job, bytes, client) {
      const { prompt } = await desk.look(by, job);
      const part = prompt.parts.find(({ kind }) => kind === 'photo');
      if (!part) return { asked: false, turn: null };
      const hash = await desk.savePhoto(by, job, bytes);
      if (hash === null) return { asked: true, turn: null };
      const given = { ...draft(by, job, prompt.seq), [part.key]: hash };
      return {
        asked: true,
        turn: await send(by, job, { kind: 'answer', client, seq: prompt.seq, parts: given }, prompt.seq),
      };
    },
  };
}

const headOf = (lane: readonly Saying[]): string | null =>
  lane.find(({ body }) => (body as What).kind === 'head')?.at ?? null;

/** A line of somebody who may not see the job still goes to the desk: danger is said by anybody. */
async function standing(desk: Desk, by: string, job: string): Promise<number> {
  try {
    return (await desk.look(by, job)).prompt.seq;
  } catch (error) {
    if (error instanceof NoRight) return (await desk.crewView(job)).prompt.seq;
    if (error instanceof NotFound) return -1;
    throw error;
  }
}
