/** What every adapter sees of the desk. No SDK type, no database type. */

import type { Recomputed } from '../report/on-the-spot.ts';
import type { Audience } from '../report/paper/paper.ts';
import type { Evidence } from '../review/evidence.ts';
import type { Attention } from '../review/risk.ts';
import type { Trend } from '../review/trends.ts';
import type {
  Call,
  CommandName,
  Entry,
  Hazard,
  Meter,
  Prompt,
  Refusal,
  Reply,
  Settings,
  Truck,
  Units,
} from '../schema.ts';
import type { Count, CountBy } from '../store/port.ts';

export type Role = 'technician' | 'senior' | 'dispatcher' | 'owner';
export interface Person {
  id: string;
  name: string;
  initials: string;
  roles: readonly Role[];
  /** EPA 608 certification on file. */
  certified: boolean;
  meter: Meter | null;
  /** Whose stock counts on this person’s jobs. */
  truck?: string;
  /** What they prefer shown beside °F and psig; the shop's setting where it isn't there. */
  units?: Units;
  /** Their account in each chat outside that they joined. */
  chats?: Readonly<Record<string, string>>;
  active: boolean;
}

/** One line of the ticket so far: what was asked, what was answered, and whether it still counts. */
export interface TicketLine {
  seq: number;
  at: string;
  by: string;
  /** Heading, e.g. the step's title or what happened. */
  title: string;
  /** The answer or event in words, resolved and ready to show. */
  says: string[];
  kind: Entry['kind'];
  /** kept: counts now. set-aside: still recorded, its step is no longer on the way. fallen: voided or withdrawn. event: no answer. */
  standing: 'kept' | 'set-aside' | 'fallen' | 'event';
  place: string | null;
  amendable: boolean;
  /** Hashes of the photos that came with it. */
  photos: string[];
}

/** Everything a surface needs to draw a job. */
export interface JobView {
  job: string;
  title: string;
  training: boolean;
  prompt: Prompt;
  ticket: TicketLine[];
  people: Record<string, { name: string; initials: string }>;
  /** Words behind the prompt's question, if one is open. */
  question: string | null;
  /** A finished job in plain words for the customer, and with all evidence for the shop; null until it is at an ending. */
  summary: { customer: string[]; shop: string[] } | null;
  /** What was computed of the call before anybody drove out, and what the caller was told; null where it was not taken so. No words of the caller. */
  call:
    | (Pick<Call, 'urgency' | 'reasons' | 'causes' | 'load' | 'certified' | 'told'> & {
        /** Who is there whom the heat endangers, as the caller said; null where nobody was named. For whoever goes. */
        vulnerable: string | null;
      })
    | null;
  /** A call that is being taken: the questions that can be answered together; null where one stands alone, or elsewhere. */
  form: Prompt | null;
  /** What stands beside °F and psig in all of this; null: nothing. */
  units: Units | null;
  /** An emergency that nobody has released, and who has seen it. */
  alarm: JobCard['alarm'];
  /** A record of a call that is or was being taken: names and numbers of callers, for whoever takes calls. */
  calling: boolean;
  /** The job that a taken call has opened. */
  opens: string | null;
  /** Server's clock when this was made; countdowns are relative to it. */
  now: string;
}

/** What one reply led to. */
export interface Turn {
  view: JobView;
  /** New entries of this reply, already durable. Empty when refused. */
  entries: Entry[];
  refusal: Refusal | null;
  /** Answer to why, where, help: lines to show, nothing on the record. */
  info: string[] | null;
  /** `back`: the last answer as a question again; reply with `amend`. */
  again: Prompt | null;
}

export interface JobCard {
  job: string;
  title: string;
  /** `taking`: the caller is on the line. `put-away`: the line went dead, nothing was opened. `taken`: that record is done, and a job may have been opened by it. */
  state:
    | 'under-way'
    | 'held'
    | 'paused'
    | 'emergency'
    | 'finished'
    | 'signed'
    | 'unreadable'
    | 'taking'
    | 'put-away'
    | 'taken';
  where: string;
  assigned: string[];
  verdict: string | null;
  updated: string;
  isolation: string;
  /** When the first of its isolations is too old; null where none is proved. */
  until: string | null;
  training: boolean;
  opened: string;
  /** Somebody has answered something on it. */
  begun: boolean;
  /** How soon, and why in words; null where nothing was computed. */
  urgency: { level: NonNullable<Call['urgency']>; why: string } | null;
  /** The refrigerant is likely: somebody who holds the certification goes. */
  certified: boolean;
  causes: string[];
  load: string[];
  /** An emergency that nobody has released, and who has seen it. */
  alarm: { seq: number; at: string; by: string; hazard: Hazard; seen: string[] } | null;
}

/** A job in the queue of review. */
export interface ReviewCard extends JobCard {
  attention: Attention[];
}
/** One page of the queue, the most pressing first. */
export interface ReviewQueue {
  jobs: ReviewCard[];
  /** Where the next page begins; null on the last one. */
  next: string | null;
}
export type { Recomputed } from '../report/on-the-spot.ts';
export type { Audience } from '../report/paper/paper.ts';
export type { Count, CountBy } from '../store/port.ts';
/** An answer with what was computed of it. */
export interface EvidenceRow extends TicketLine {
  /** A proof of dead. */
  gate: boolean;
  /** Why it no longer counts, where that says more than `standing`. */
  ended: string | null;
  findings: Evidence[];
}
/** A job as a senior reads it: the conversation in `view.ticket`, beside it the evidence. */
export interface ReviewView {
  view: JobView;
  attention: Attention[];
  evidence: EvidenceRow[];
  /** What was read on this unit over its visits; empty where the shop has no record of it. */
  trends: Trend[];
  /** What this person may do here now. */
  may: CommandName[];
}
export interface CountsAsked {
  /** `2026-07-14` */
  from: string;
  to: string;
  /** Only jobs that count under each of these as well. */
  also: Count[];
}
export interface ReviewCounts {
  groups: { by: CountBy; counts: { what: string; name: string; jobs: number }[] }[];
  /** The last jobs behind them, where something is filtered by. */
  jobs: JobCard[];
}
/** Somebody can't go on until a senior has approved. */
export interface AwaitedLine {
  job: string;
  title: string;
  /** Who is on it. */
  who: string[];
  /** What is to be approved, in the words of the page. */
  what: string;
  since: string;
}
/** What only seniors and owners do. Everything throws NoRight for others. */
export interface ReviewDesk {
  /** Ended jobs between two days (UTC, both included), counted by verdict, person, part and unit. */
  counts(by: string, asked: CountsAsked): Promise<ReviewCounts>;
  /** `after`: the `next` of the page before; anything else begins at the start. */
  queue(by: string, after?: string): Promise<ReviewQueue>;
  /** Where somebody waits for this person's approval, the longest first; not on a call that they take part in. */
  awaited(by: string): Promise<AwaitedLine[]>;
  look(by: string, job: string): Promise<ReviewView>;
  /** Goes over the record as it is kept: the same verdicts byte for byte, or where it differs. */
  recompute(by: string, job: string): Promise<Recomputed>;
}

/** Somebody who can be sent. */
export interface CrewLine {
  id: string;
  name: string;
  certified: boolean;
  /** Not on a job under way. */
  available: boolean;
  /** The job that they are on. */
  on: string | null;
  /** Their jobs of today, in the order in which they were opened. */
  day: string[];
}
export interface LowStock {
  truck: string;
  item: string;
  left: number;
  low: number;
}
export interface Board {
  /** The most urgent first. Whoever may not see the board sees what they take part in. */
  jobs: JobCard[];
  crew: CrewLine[];
  low: LowStock[];
  now: string;
}
/** What the shop knows already of what is being typed. */
export interface Known {
  calls: JobCard[];
  units: { id: string; name: string; history: string[] }[];
}
export interface AlarmLine {
  job: string;
  title: string;
  seq: number;
  at: string;
  hazard: Hazard;
  by: string;
  /** Names of those who have seen it. */
  seen: string[];
  /** Whether this person has. */
  mine: boolean;
}
/** Something happened on a job that this person may see. */
export interface News {
  job: string;
  seq: number;
  kind: Entry['kind'];
}
/** Calls, the board, who goes, who is told. Throws NoRight where the table of rights says so. */
export interface DispatchDesk {
  /** A call, with the caller on the line, on the shelf's manual for callers. Its end opens a job. */
  take(by: string, call: { client: string; training?: boolean }): Promise<Turn>;
  /** What is known of a number, a place or a unit while it is being typed. */
  known(by: string, typed: string): Promise<Known>;
  /** The call is about this unit of the shop's records. */
  pick(by: string, call: string, unit: string, client: string): Promise<Turn>;
  board(by: string): Promise<Board>;
  /** Jobs by words: caller, place, unit, verdict. */
  find(by: string, words: string): Promise<JobCard[]>;
  /** A call that nobody has begun gets its person; one that somebody has is handed over, and the new one accepts. */
  assign(by: string, job: string, to: string, client: string): Promise<Turn>;
  /** Emergencies that this person has to know of, wherever they look. */
  alarms(by: string): Promise<AlarmLine[]>;
  /** Calls back with whatever happens on jobs that this person may see. Returns the unsubscribe. */
  watch(by: string, onNews: (news: News) => void): Promise<() => void>;
}

/** A finished call as it is given to somebody: the same words as a page, a PDF and data. */
export interface Report {
  readonly title: string;
  /** Inside of an HTML page; `photoAt` gives each photo's address. */
  html(photoAt: (hash: string) => string): string;
  pdf(size: 'A4' | 'letter'): Promise<Uint8Array>;
  json(): string;
  /** A photo that stands on it, as JPEG; null for any other. */
  photo(hash: string): Promise<Uint8Array | null>;
}
/** A link that opens one report; what opens it is shown once, when it is made. */
export interface SharedLink {
  id: string;
  audience: Audience;
  by: string;
  made: string;
  expires: string;
}
export interface ReportDesk {
  /** Throws NotFound until the call has ended, NoRight. */
  read(by: string, job: string, audience: Audience): Promise<Report>;
  /** `token` opens the report and nothing else, until then. At most 90 days. */
  share(by: string, job: string, audience: Audience, days: number): Promise<{ token: string; link: SharedLink }>;
  /** Links of a job that are still open and that this person may take back. */
  shares(by: string, job: string): Promise<SharedLink[]>;
  endShare(by: string, job: string, id: string): Promise<void>;
  /** For whoever has the token; null where it opens nothing, or no longer. */
  shared(token: string): Promise<Report | null>;
}

/** What the owner changes of a person. Their accounts in chats and their words stay as they are. */
export type PersonWish = Pick<Person, 'id' | 'name' | 'initials' | 'certified' | 'active'> &
  Partial<Pick<Person, 'meter' | 'truck'>> & { roles: Role[] };
export interface ShopView {
  people: PersonWish[];
  trucks: Truck[];
  settings: Settings;
  /** Whether this person may change it; else it is to be read. */
  mine: boolean;
}
/** One place where somebody is signed in. */
export interface Device {
  /** Names it, and opens nothing. */
  id: string;
  /** A phone, a computer; null where that was not kept. */
  device: string | null;
  /** Since when; null where that was not kept. */
  made: string | null;
  /** Until when. */
  expires: string;
}
/** The crew and the shop: read by whoever sends people, changed by the owner. Throws NoRight. */
export interface ShopDesk {
  look(by: string): Promise<ShopView>;
  /** Adds, or changes the person of the same id. The last owner stays one. */
  savePerson(by: string, person: PersonWish): Promise<void>;
  /** A new link that signs this person in, once: its path. */
  link(by: string, person: string): Promise<string>;
  /** Ends every session and every link of a person. How many went. */
  revoke(by: string, person: string): Promise<number>;
  /** What this person prefers shown beside °F and psig; null: as the shop. */
  saveUnits(by: string, units: Units | null): Promise<void>;
  /** Where a person is signed in: for themselves and for the owner. */
  devices(by: string, person: string): Promise<Device[]>;
  /** Ends one of them. */
  endDevice(by: string, person: string, device: string): Promise<void>;
  saveSettings(by: string, settings: Settings): Promise<void>;
  /** What a truck carries, whole; `version` as it was read: of two who change it at once one is told. */
  saveTruck(by: string, truck: Truck & { gone?: boolean }): Promise<void>;
}

export interface Desk {
  people(): Promise<Person[]>;
  person(id: string): Promise<Person | null>;
  /** `equipment`: the unit’s own record, whose plate, print and history then count from the start. */
  open(
    by: string,
    call: { title: string; assign?: string; training?: boolean; equipment?: string; client: string },
  ): Promise<Turn>;
  reply(by: string, job: string, reply: Reply): Promise<Turn>;
  look(by: string, job: string): Promise<JobView>;
  /** The same for a place where the whole crew reads along; nobody's right is asked. */
  crewView(job: string): Promise<JobView>;
  jobs(by: string): Promise<JobCard[]>;
  readonly review: ReviewDesk;
  readonly dispatch: DispatchDesk;
  readonly shop: ShopDesk;
  readonly reports: ReportDesk;
  /** Calls back with each new entry of a job from `after` on (exclusive), in order, without gaps. Returns the unsubscribe. */
  watch(by: string, job: string, after: number, onEntry: (entry: Entry) => void): Promise<() => void>;
  /** Whether this person may see this job now: rights and crew change while somebody watches. */
  sees(by: string, job: string): Promise<boolean>;
  /**
   * Keeps a photo for an answer on this job and gives its hash. A JPEG or PNG, drawn anew and kept without place, time, camera or any other
   * metadata; null where the bytes are none. The same photo again is the same.
   */
  savePhoto(by: string, job: string, bytes: Uint8Array): Promise<string | null>;
  /** A photo that the job's record names, as JPEG. Throws NoRight, NotFound. */
  photo(by: string, job: string, hash: string): Promise<Uint8Array>;
  settings(): Promise<Settings>;
  /** What the trucks carry now. */
  trucks(by: string): Promise<Truck[]>;
  /** The job as one file that `npm run verify` checks, signed by the shop's key. Throws NoRight, NotFound. */
  exportJob(by: string, job: string): Promise<string>;
}

/** Thrown by the store, which may not import the desk: so it is written at its port. */
export { NotKept } from '../store/port.ts';
/** No such job or person, or none that this person may see. */
export class NotFound extends Error {
  override name = 'NotFound';
}
/** What was wished can't be done, and the text says why; nothing was changed. */
export class Refused extends Error {
  override name = 'Refused';
}
/** The role table says no. */
export class NoRight extends Error {
  override name = 'NoRight';
}
