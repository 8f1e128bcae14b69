/**
 * What is known of a job: the fold of its entries. A job stands where the first needed fact is missing, so voiding,
 * correcting, handing over and restarting all are "forget some facts and go over the page again" (`forget.ts`).
 */
import type {
  Body,
  Call,
  Conclusion,
  Entry,
  Equipment,
  Meter,
  Parts,
  Settings,
  TextRef,
  Truck,
  Value,
} from './schema.ts';

/** A fact is the entry of the answer that brought it: a job at hand has dozens of them, and holds nothing beside them. */
export type Fact = Omit<Entry & { readonly kind: 'answered' }, 'at' | 'said'> & {
  /** seq of the last amendment, whose figures stand in the parts. */
  readonly amended?: number;
};
/** A fact of the whole job, kept by name whichever question brought it. */
export interface JobFact {
  readonly seq: number;
  /** seq of the answer that brought it; an amendment of that answer has a later `seq`. */
  readonly of: number;
  readonly by: string;
  readonly part: string;
  readonly value: Value;
}
export interface Isolation {
  /** Whose lock it is. */
  readonly holder: string | null;
  readonly proved: { readonly seq: number; readonly at: string } | null;
  /** Entered again after its age alone: the lock is confirmed with the proving line. */
  readonly again: boolean;
  /** The holder's last accepted answer in this job. */
  readonly lastAt: string | null;
}
/** A complete line that was not accepted. */
export interface Failed {
  readonly cabinet: string;
  readonly exit: string;
  readonly seq: number;
  readonly parts: Parts;
}
export interface Memory {
  /** seq and time of the last entry; seq since which the present question stands. */
  readonly last: number;
  readonly at: string;
  readonly since: number;
  readonly title: TextRef | null;
  readonly training: boolean;
  readonly facts: Readonly<Record<string, Fact>>;
  readonly job: Readonly<Record<string, JobFact>>;
  /**
   * By round: the facts of the whole job as they stood when its new part went in. A look or a print taken later is about
   * the new part, and may not rewrite what was found of the old one.
   */
  readonly fitted: Readonly<Record<number, Readonly<Record<string, JobFact>>>>;
  /** Answers that fell with an isolation: the chips stay filled. */
  readonly remembered: Readonly<Record<string, Parts>>;
  readonly concluded: Readonly<Record<string, { readonly seq: number; readonly body: Conclusion }>>;
  readonly isolations: Readonly<Record<string, Isolation>>;
  /** seq of the last entry after which power was on, and of the last that ended whatever was agreed for live work. */
  readonly power: { readonly on: number; readonly upset: number };
  readonly failed: readonly Failed[];
  readonly triesOpened: number;
  /** Cabinets whose means a senior lets be held open otherwise than by a lock. */
  readonly approvals: readonly string[];
  readonly assigned: readonly string[];
  readonly handover: { readonly seq: number; readonly from: string; readonly to: string } | null;
  readonly alarm: {
    readonly seq: number;
    readonly by: string;
    readonly hazard: Body<'alarmed'>['hazard'];
    readonly seen: readonly string[];
  } | null;
  readonly hazard: { readonly seq: number; readonly by: string } | null;
  readonly stop: 'asked' | 'paused' | null;
  readonly raised: readonly Body<'raised'>['why'][];
  readonly question: { readonly seq: number; readonly text: TextRef } | null;
  readonly signed: boolean;
  readonly settings: Settings;
  readonly meters: Readonly<Record<string, Meter>>;
  /** Who may work on the refrigerant. */
  readonly certified: readonly string[];
  /** What the truck carries, as last put on the record, and as it was before: a part that was picked is judged by the list it was picked from. */
  readonly truck: Truck | null;
  readonly trucks: readonly { readonly seq: number; readonly truck: Truck }[];
  /** What is known of the unit. */
  readonly equipment: (Equipment & { readonly asOf: string }) | null;
  /** What was learnt of the call before anybody drove out. */
  readonly call: Call | null;
  /** What just happened, by code, until the next accepted answer. */
  readonly notices: readonly string[];
  /** What was computed of the line that was last not accepted. */
  readonly explained: readonly string[];
  /** seqs of answers that were withdrawn or fell with an isolation. */
  readonly fallen: readonly number[];
}

/** Assumed where a person's meter is not known, and said so (our setting: ±(3 % + 5 counts) at 0.1 µF). */
export const ASSUMED_METER: Meter = { percent: '3', counts: 5, fine: '0.1', coarse: '0.1', split: '10', known: false };
export const DEFAULT_SETTINGS: Settings = {
  hertz: '60',
  rule: 'doubt',
  emergencyNumber: '911',
  tagWithExtraMeasure: true,
};

export const BLANK: Memory = {
  last: 0,
  at: '1970-01-01T00:00:00.000Z',
  since: 0,
  title: null,
  training: false,
  facts: {},
  job: {},
  fitted: {},
  remembered: {},
  concluded: {},
  isolations: {},
  power: { on: 0, upset: 0 },
  failed: [],
  triesOpened: 0,
  approvals: [],
  assigned: [],
  handover: null,
  alarm: null,
  hazard: null,
  stop: null,
  raised: [],
  question: null,
  signed: false,
  settings: DEFAULT_SETTINGS,
  meters: {},
  certified: [],
  truck: null,
  trucks: [],
  equipment: null,
  call: null,
  notices: [],
  explained: [],
  fallen: [],
};
export const NO_ISOLATION: Isolation = { holder: null, proved: null, again: false, lastAt: null };
