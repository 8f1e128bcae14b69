/**
 * What the desk needs kept, in words of the trade: no database shows through. Every promise that writes resolves only
 * when the write is on the disk and survives a crash.
 *
 * Instants are UTC ISO 8601 with milliseconds, so that they compare as text. Links and sessions come as hashes; what
 * opens them never gets here.
 *
 * Every method may throw NotKept (locked, full, read-only, failing disk: nothing of this call was kept, sending again
 * is safe) or Damaged (what is kept can't be read). Anything else thrown is a bug.
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

export interface Store {
  /** `job` is its public id, made by chance by the caller; one that exists throws. */
  create(job: string, entries: readonly Entry[], texts: readonly Text[]): Promise<void>;
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
  ): Promise<'kept' | 'conflict'>;
  /** What the reply with this client id put on the record; empty if it never came. */
  byClient(job: string, client: string): Promise<Entry[]>;
  /** The one that grew last comes first. */
  jobs(): Promise<JobRow[]>;
  /** Calls back after the commit with each entry, in the order they were kept. Returns the unsubscribe. */
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
  saveSession(hash: string, person: string, expires: string): Promise<void>;
  /** Whose session it is; null from `expires` on, after its end, or if there is none. */
  session(hash: string, now: string): Promise<string | null>;
  endSession(hash: string): Promise<void>;

  /** Small facts about this database itself, such as whether the demo was loaded. */
  meta(key: string): Promise<string | null>;
  setMeta(key: string, value: string): Promise<void>;

  /** Keeps what waits, then lets go of the database. */
  close(): Promise<void>;
}

/** Trouble that is nobody's mistake and nobody's bug: the store could not keep it. The person may send again. */
export class NotKept extends Error {
  override name = 'NotKept';
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
