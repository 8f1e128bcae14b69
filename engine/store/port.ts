/**
 * What the desk needs kept, in words of the trade: no database shows through. Every promise that writes resolves only
 * when the write is on the disk and survives a crash.
 *
 * Instants are UTC ISO 8601 with milliseconds, so that they compare as text. Links and sessions come as hashes; what
 * opens them never gets here.
 *
 * Every method may throw NotKept (locked, full, read-only, failing disk, no connection: this call was not acknowledged,
 * and sending it again is safe) or Damaged (what is kept can't be read). Anything else thrown is a bug.
 */
import type { Person } from '../desk/types.ts';
import type { Entry, Settings, Text } from '../schema.ts';

/** A job's entries in order, and the words behind them. */
export interface Pages {
  readonly entries: Entry[];
  readonly texts: Text[];
}
/** One line of all jobs: how far its record goes and when it last grew. */
export interface JobRow {
  readonly job: string;
  readonly lastSeq: number;
  readonly updated: string;
}

/**
 * One of the shop's own lists, kept whole as JSON: what is known of a unit, what a truck carries. `version` counts its
 * changes from 1.
 */
export type SheetList = 'equipment' | 'truck';
export interface Sheet {
  readonly id: string;
  readonly version: number;
  readonly body: unknown;
}

/**
 * What a list of jobs shows of one: made by the desk from the record, kept beside it so that a list reads no records.
 * Nothing rests on it. Where it is missing or older than the record, `board` gives null and the desk makes it anew.
 */
export interface Summary {
  /** Nobody has anything to do on it any more: it may fall off the end of the list. */
  readonly closed: boolean;
  /** The desk's own data as JSON. */
  readonly card: string;
  /** Its place in the queue of review, the smaller first; null or left out: none is due. */
  readonly review?: number | null;
  /** What the job counts under, once it has ended; left out: under nothing. */
  readonly counts?: Counts;
}
/** Under what an ended job counts, and on which day it ended, UTC. */
export interface Counts {
  readonly day: string;
  readonly under: readonly Count[];
}
/** One thing that a job counts under: a verdict, a person, a part, a unit. */
export interface Count {
  readonly by: CountBy;
  readonly what: string;
}
export type CountBy = 'verdict' | 'person' | 'part' | 'unit';
/** Which jobs are counted: ended from this day to that one, UTC, both included, and under each of these as well. */
export interface CountFilter {
  readonly from: string;
  readonly to: string;
  readonly also: readonly Count[];
}
export interface Counted extends Count {
  readonly jobs: number;
}
export interface BoardRow extends JobRow {
  readonly closed: boolean;
  readonly card: string | null;
  /** As in the summary; 0 where there is no card and so nobody knows. */
  readonly review: number | null;
  /** As in the summary, as JSON. */
  readonly counts: string | null;
}

/** Where a page of the queue ended; the next one begins behind it. */
export interface QueueMark {
  readonly review: number;
  readonly updated: string;
  readonly nr: number;
}
export type QueueRow = BoardRow & QueueMark;

/**
 * Something that has to be said in a chat outside. Kept until it was said, and from then on with the place where it stands,
 * so that it can be drawn anew and what is typed under it finds its way. Holds ids and numbers, never what a person typed.
 */
export interface Saying {
  /** What is said, by a name that comes out the same whenever it is asked for: so nothing is said twice. */
  readonly id: string;
  readonly chat: string;
  /** Sayings of one lane are said one after another, in the order in which they came. */
  readonly lane: string;
  /** The desk's own data as JSON. */
  readonly body: unknown;
  /** How often somebody began to say it. Above 0 it may stand there already, whoever began was interrupted. */
  readonly tries: number;
  /** Where it stands, in the chat's own words; null: not said yet. */
  readonly at: string | null;
}
/** Up to which entry of a job a chat has heard. */
export interface Heard {
  readonly chat: string;
  readonly lane: string;
  readonly seq: number;
}

/** Everything that belongs to the shop and to no job. Links and sessions are hashes here as well. */
export interface ShopRows {
  readonly people: Person[];
  /** null: none were ever saved. */
  readonly settings: Settings | null;
  readonly links: SignIn[];
  readonly sessions: Session[];
  readonly sheets: (Sheet & { readonly list: SheetList })[];
  readonly meta: { readonly key: string; readonly value: string }[];
  readonly sayings: Saying[];
  readonly heard: Heard[];
  readonly shares: Share[];
}
export interface SignIn {
  readonly hash: string;
  readonly person: string;
  readonly expires: string;
}
/** Somebody signed in on one device; null where it began before that was kept. */
export interface Session extends SignIn {
  readonly made: string | null;
  /** What sort of device it is, in a word; never what tells two of a sort apart. */
  readonly device: string | null;
}

/** A link that opens one report to whoever has it. The hash names it; what opens it never gets here. */
export interface Share {
  readonly hash: string;
  readonly job: string;
  readonly audience: 'customer' | 'shop';
  /** Who made it, and when. */
  readonly by: string;
  readonly made: string;
  readonly expires: string;
}

/** Whose words go: all that was typed on one job, with its photos, or all that one person ever typed. */
export type Whose = { readonly job: string } | { readonly person: string };

export interface Store {
  /** `job` is its public id, made by chance by the caller; one that exists throws. */
  create(job: string, entries: readonly Entry[], texts: readonly Text[], summary?: Summary): Promise<void>;
  /** Nothing at all for a job that doesn't exist. */
  read(job: string): Promise<Pages>;
  /** Entries after this seq, with at least the words they name. */
  readAfter(job: string, seq: number): Promise<Pages>;
  /** All or nothing. `conflict`: the record ends elsewhere than at `expectedSeq`, somebody else was first. */
  append(
    job: string,
    expectedSeq: number,
    entries: readonly Entry[],
    texts: readonly Text[],
    summary?: Summary,
  ): Promise<'kept' | 'conflict'>;
  /** What the reply with this client id put on the record; empty if it never came. */
  byClient(job: string, client: string): Promise<Entry[]>;
  /** Every job there is, from the records themselves. The one that grew last comes first. */
  jobs(): Promise<JobRow[]>;
  /** The list of jobs: all that are not closed, and the last so many that are. The one that grew last comes first. */
  board(closed: number): Promise<BoardRow[]>;
  /**
   * The queue of review after this mark, so many rows: by `review`, and of two alike the one that grew longest ago first.
   * A job that has no card comes first, with 0: nobody knows yet what it needs.
   */
  queue(after: QueueMark | null, limit: number): Promise<QueueRow[]>;
  /**
   * Jobs with words that begin so, each of them, the one that grew last first: titles, verdicts, units, and what a caller
   * said in words. `beginnings` as `beginningsOf` makes them.
   */
  find(beginnings: readonly string[], limit: number): Promise<BoardRow[]>;
  /** Units whose name has words that begin so. */
  findUnits(beginnings: readonly string[], limit: number): Promise<Sheet[]>;
  /** How many ended jobs count under what, the most first. Never by reading the jobs. */
  counts(by: CountBy, filter: CountFilter): Promise<Counted[]>;
  /** The jobs behind such a count, the one that ended last first. */
  countedJobs(filter: CountFilter, limit: number): Promise<BoardRow[]>;
  /** Made anew from a record that ended at `seq`; without effect where the record has grown since. */
  saveSummary(job: string, seq: number, summary: Summary): Promise<void>;
  /**
   * Removes words for good, with their salt; entries keep the salted hash, and every chain still verifies. Of a job also
   * its photos, unless a job that is not forgotten names them too, its shares, and the name on the sheet of the unit that
   * it was about; of a person also name, initials, meter, links and sessions; the id stays, since it is in the entries.
   * How many texts went.
   */
  forget(whose: Whose): Promise<number>;
  /** How many times words were removed: whoever holds some in memory reads them anew after each. */
  removals(): Promise<number>;
  /**
   * Clears what the database's file still holds of removed rows. False where somebody else has it open or the disk is
   * full: then it is to be tried again. PostgreSQL does so by `VACUUM FULL`, which the application has no right to: false.
   */
  scrub(): Promise<boolean>;
  /** Calls back after the commit with each entry, those of a job in their order. Returns the unsubscribe. */
  watch(onEntry: (job: string, entry: Entry) => void): () => void;

  people(): Promise<Person[]>;
  /** Adds, or replaces the person of the same id. */
  savePerson(person: Person): Promise<void>;
  /** The engine's defaults until some are saved. */
  settings(): Promise<Settings>;
  saveSettings(settings: Settings): Promise<void>;

  /** Null where there is none. */
  sheet(list: SheetList, id: string): Promise<Sheet | null>;
  /** By id, ascending. */
  sheets(list: SheetList): Promise<Sheet[]>;
  /** Keeps it where the sheet still stands at `version` (0: there is none). False: somebody else was first. */
  saveSheet(list: SheetList, id: string, version: number, body: unknown): Promise<boolean>;

  saveLink(hash: string, person: string, expires: string): Promise<void>;
  /** Whom the link signs in. Once: the second use, and any from `expires` on, gives null. */
  useLink(hash: string, now: string): Promise<string | null>;
  saveSession(hash: string, person: string, expires: string, began?: { made: string; device: string }): Promise<void>;
  /** Whose session it is; null from `expires` on, after its end, or if there is none. */
  session(hash: string, now: string): Promise<string | null>;
  endSession(hash: string): Promise<void>;
  /** Where a person is signed in at `now`, the latest first. */
  devices(person: string, now: string): Promise<Session[]>;
  /** Ends every session of a person, and every link that would begin one. How many went. */
  signOut(person: string): Promise<number>;

  saveShare(share: Share): Promise<void>;
  /** Null from `expires` on, after its end, or if there is none. */
  share(hash: string, now: string): Promise<Share | null>;
  /** Those of a job that are still open at `now`, the latest first. */
  shares(job: string, now: string): Promise<Share[]>;
  endShare(hash: string): Promise<void>;

  /** Removes links, sessions and shares that have expired by `now`. How many went. */
  expire(now: string): Promise<number>;

  /** Keeps a photo under the SHA-256 of its bytes, as 64 hex digits, and returns that. The same photo again is the same. */
  savePhoto(bytes: Uint8Array): Promise<string>;
  /** null where there is none. Throws Damaged where the bytes are no longer those that were kept. */
  photo(hash: string): Promise<Uint8Array | null>;
  photos(): Promise<string[]>;

  /** Adds those that are not there, and remembers how far this lane was heard. A mark never goes back. */
  willSay(mark: Heard, sayings: readonly Pick<Saying, 'id' | 'body'>[]): Promise<void>;
  heard(chat: string): Promise<Heard[]>;
  /** The first of each lane that was not said yet. */
  unsaid(chat: string): Promise<Saying[]>;
  /**
   * Takes it until then, counts one more try, and gives it as it was before; null where it was said meanwhile or another
   * process has it at `now`. Of two at once one has it.
   */
  takeSaying(id: string, now: string, until: string): Promise<Saying | null>;
  /** It was not said: whoever comes next may take it at once. */
  letGo(id: string): Promise<void>;
  /** It stands there. null: it was said and leaves nothing behind, so it is removed. */
  said(id: string, at: string | null): Promise<void>;
  /** All of a lane, in their order. */
  sayings(chat: string, lane: string): Promise<Saying[]>;
  /** What stands at this place; null where it is nothing of ours. */
  sayingAt(chat: string, at: string): Promise<Saying | null>;

  /** Small facts about this database itself, such as whether the demo was loaded. */
  meta(key: string): Promise<string | null>;
  setMeta(key: string, value: string): Promise<void>;
  /** Sets it where it isn't set, and gives what is set then: of many at once, in whatever process, all get the same. */
  claim(key: string, value: string): Promise<string>;
  /** All of it, for a copy. */
  shop(): Promise<ShopRows>;
  /**
   * All of it as it is there. People, settings, sheets and small facts are added or replaced: none of them ever goes. Links,
   * sessions, shares, sayings and how far a chat has heard are these and no others.
   */
  saveShop(rows: ShopRows): Promise<void>;
  /** For a copy: of this job's words these stay, and what was made of the others goes with them. How many went. */
  onlyWords(job: string, refs: readonly string[]): Promise<number>;
  /** For a copy: of all photos these stay. How many went. */
  onlyPhotos(hashes: readonly string[]): Promise<number>;

  /** Keeps what waits, then lets go of the database. */
  close(): Promise<void>;
}

/** Trouble that is nobody's mistake and nobody's bug: the store could not keep it. The person may send again. */
export class NotKept extends Error {
  override name = 'NotKept';
  /** False where the answer of the database was lost: it may have been kept after all. Sent again, it counts once. */
  readonly certain: boolean;
  constructor(what: string, options?: ErrorOptions & { readonly certain?: boolean }) {
    super(what, options);
    this.certain = options?.certain ?? true;
  }
}

/** What is kept can't be read. `job` and `seq` say where, as far as that is known. */
export class Damaged extends Error {
  override name = 'Damaged';
  readonly job: string | null;
  readonly seq: number | null;
  constructor(what: string, job: string | null = null, seq: number | null = null, options?: ErrorOptions) {
    super(job === null ? what : `${what} (job ${job}${seq === null ? '' : `, entry ${seq}`})`, options);
    this.job = job;
    this.seq = seq;
  }
}

/** Throws where the tables took a step that this version does not know. */
export function refuseLater(taken: readonly string[], known: object): void {
  const strange = taken.find((name) => !Object.hasOwn(known, name));
  if (strange !== undefined) throw new NotKept(`A later version of nocool has written this database: ${strange}.`);
}
