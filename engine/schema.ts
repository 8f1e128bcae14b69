/**
 * The shapes that cross a border: what is stored (Entry), what is shown (Prompt), what comes back (Reply).
 * Everything else in the engine derives from these. zod/mini, because the browser loads this file too.
 *
 * Decimal strings: every figure is kept as a plain decimal string in its field's unit, rounded half-even to the
 * digits of its quantity (`quantity.ts`), before it is compared, stored or hashed. The string the person typed stays
 * beside it.
 */
import * as z from 'zod/mini';
import { Figures, Picture } from './picture/data.ts';

const id = z.string().check(z.minLength(1), z.maxLength(200));
const instant = z.string().check(z.regex(/^\d{4}-\d\d-\d\dT\d\d:\d\d:\d\d\.\d{3}Z$/));
const decimal = z.string().check(z.regex(/^-?\d+(\.\d+)?$/), z.maxLength(40));
const seq = z.number().check(z.int(), z.gte(1));

/** Text a person typed: the words live beside the record, the body holds only this. `hash` = SHA-256(salt ‖ text). */
export const TextRef = z.strictObject({ ref: id, hash: z.string().check(z.regex(/^[0-9a-f]{64}$/)) });
export type TextRef = z.infer<typeof TextRef>;

/** The words behind a TextRef. Removing the row removes the words; the chain still verifies. */
export const Text = z.strictObject({ ref: id, salt: z.string(), text: z.string() });
export type Text = z.infer<typeof Text>;

/** `°F` a temperature, `Δ°F` a difference of two, `psig` above the atmosphere. */
export const Unit = z.enum(['µF', 'V', 'A', 'Ω', 'MΩ', '%', 's', 'J', 'count', '°F', 'Δ°F', 'psig', 'h']);
export type Unit = z.infer<typeof Unit>;

/**
 * The print of a capacitor, in microfarads. A dual run part has HERM (the larger) and FAN, a single one HERM only. A
 * start part is printed as a range: `range` holds it, and HERM is its upper end.
 */
export const CapacitorLabel = z.strictObject({
  herm: decimal,
  fan: z.nullable(decimal),
  /** Tolerance in percent, below and above; `printed` is false where the default was taken. */
  below: decimal,
  above: decimal,
  printed: z.boolean(),
  /** AC volts; the highest where the print gives two ("440/370"); null where none is printed. */
  volts: z.nullable(decimal),
  range: z.optional(z.strictObject({ low: decimal, high: decimal })),
});
export type CapacitorLabel = z.infer<typeof CapacitorLabel>;

/** What one part of a question was answered with. */
export const Value = z.discriminatedUnion('kind', [
  /** Option ids in the order of the options; a confirm is yes | no | cant, an act is done | cant. */
  z.strictObject({ kind: z.literal('choice'), chosen: z.array(id).check(z.maxLength(40)) }),
  z.strictObject({ kind: z.literal('figure'), value: decimal, unit: Unit, typed: z.string().check(z.maxLength(60)) }),
  /** The meter showed OL (over range). No number, and no verdict by itself. */
  z.strictObject({ kind: z.literal('over'), typed: z.string().check(z.maxLength(60)) }),
  /** Not taken (`_`, or an optional field left out). */
  z.strictObject({ kind: z.literal('untaken') }),
  z.strictObject({ kind: z.literal('label'), label: CapacitorLabel, typed: TextRef }),
  z.strictObject({ kind: z.literal('text'), text: TextRef }),
  z.strictObject({ kind: z.literal('photo'), hash: z.string().check(z.regex(/^[0-9a-f]{64}$/)) }),
]);
export type Value = z.infer<typeof Value>;
export const Parts = z.record(id, Value);
export type Parts = z.infer<typeof Parts>;

/** A capacitance meter's accuracy: ±(percent % + counts) with a resolution below and above a split, in µF. */
export const Meter = z.strictObject({
  percent: decimal,
  counts: z.number().check(z.int(), z.gte(0), z.lte(100)),
  /** Resolution in µF for readings below `split` µF, and from `split` on. */
  fine: decimal,
  coarse: decimal,
  split: decimal,
  known: z.boolean(),
});
export type Meter = z.infer<typeof Meter>;

/** In which units a temperature and a pressure are shown besides °F and psig. Never in which they are kept or judged. */
export const Units = z.strictObject({
  temperature: z.enum(['°F', '°C']),
  /** kPa and bar above the atmosphere, as a gauge shows them. */
  pressure: z.enum(['psig', 'kPa', 'bar']),
});
export type Units = z.infer<typeof Units>;

/** Settings of the shop in force for a job; an entry, or replay would not be deterministic. */
export const Settings = z.strictObject({
  hertz: z.enum(['50', '60']),
  /** `doubt`: the four-way rule with the meter's doubt. `plain`: in or out by the label alone. */
  rule: z.enum(['doubt', 'plain']),
  emergencyNumber: z.string().check(z.maxLength(40)),
  /** Whether the shop allows a tag with one extra measure where no lock fits. */
  tagWithExtraMeasure: z.boolean(),
  /** Where the shop works, as it is shown beside the emergency number. */
  region: z.optional(z.string().check(z.maxLength(60))),
  /** Minutes after which a proof of dead is too old, where the shop wants it sooner than the manual. Never later. */
  minutes: z.optional(z.number().check(z.int(), z.gte(5), z.lte(30))),
  /** °F and psig where it isn't there. It decides nothing but what is shown. */
  units: z.optional(Units),
  /** Who is told in the team's chat when a part runs low; every dispatcher where nobody was named. */
  toldOfStock: z.optional(z.array(id).check(z.maxLength(50))),
});
export type Settings = z.infer<typeof Settings>;

/** One kind of part on a truck. Capacitors carry their print: µF per section, AC volts; a start part its printed range. */
export const StockItem = z.strictObject({
  id,
  name: z.string().check(z.maxLength(120)),
  kind: z.enum(['run', 'start', 'other']),
  sections: z.array(decimal).check(z.maxLength(2)),
  volts: z.nullable(decimal),
  range: z.nullable(z.strictObject({ low: decimal, high: decimal })),
  protection: z.nullable(z.enum(['none', 'P0', 'P1', 'P2', 'S0', 'S1', 'S2', 'S3', 'protected'])),
  life: z.nullable(z.enum(['A', 'B', 'C', 'D'])),
  count: z.number().check(z.int(), z.gte(0)),
  /** At this count or below, whoever the settings name hears of it. */
  low: z.number().check(z.int(), z.gte(0)),
});
export type StockItem = z.infer<typeof StockItem>;
/** What a truck carries, as it was when the job needed to know. */
export const Truck = z.strictObject({ id, name: z.string(), version: z.number(), items: z.array(StockItem) });
export type Truck = z.infer<typeof Truck>;

/** Something that was done or read on a unit at an earlier call. */
export const Past = z.strictObject({
  at: instant,
  job: id,
  what: z.enum(['fitted', 'read']),
  item: z.string().check(z.maxLength(120)),
  /** Where it is another cabinet than the manual's first. */
  cabinet: z.optional(id),
  /** µF by section where a capacitor was read. */
  herm: z.nullable(decimal),
  fan: z.nullable(decimal),
  /** What was read on the running unit at that call. */
  figures: z.optional(
    z.array(
      z.strictObject({
        name: z.string().check(z.maxLength(120)),
        unit: Unit,
        value: decimal,
        cabinet: z.optional(id),
      }),
    ),
  ),
});
export type Past = z.infer<typeof Past>;
/** What is known of a unit before anybody looks at it: facts by the names that the manual keeps them under. */
export const Equipment = z.strictObject({
  id,
  name: z.string().check(z.maxLength(200)),
  version: z.number(),
  facts: z.record(id, Value),
  /** The oldest first. */
  history: z.array(Past),
});
export type Equipment = z.infer<typeof Equipment>;

/** One line of evidence as a person reads it. All strings, all computed. */
export const Finding = z.strictObject({
  name: z.string(),
  reading: z.string(),
  limits: z.nullable(z.string()),
  doubt: z.nullable(z.string()),
  word: z.string(),
  text: z.string(),
  source: z.nullable(z.string()),
  /** The same in figures, where a picture shows it. */
  figures: z.optional(Figures),
});
export type Finding = z.infer<typeof Finding>;

export const Conclusion = z.strictObject({
  place: id,
  /** The flow's own id of the verdict, and its words. */
  verdict: id,
  title: z.string(),
  says: z.array(z.string()),
  next: z.array(z.string()),
  /** Whose word it takes: a junior may conclude, a senior confirms, a certified person decides. */
  who: z.enum(['junior', 'senior', 'certified']),
  findings: z.array(Finding),
  /** seq of each entry it rests on. */
  evidence: z.array(seq),
});
export type Conclusion = z.infer<typeof Conclusion>;

/** Why an isolation no longer stands. `age` is dated at its deadline. */
export const VoidReason = z.enum(['age', 'power-back', 'lock-off', 'line-voltage', 'offline']);
export type VoidReason = z.infer<typeof VoidReason>;

export const Hazard = z.enum([
  'shock',
  'fire',
  'smoke',
  'burning',
  'explosion',
  'gas',
  'hurt',
  'collapse',
  'heat',
  'refrigerant',
  'other',
]);
export type Hazard = z.infer<typeof Hazard>;

/** How soon somebody must go, from the least to the most urgent. */
const Urgency = z.enum(['soon', 'today', 'first', 'now']);

/** What was learnt of a call before anybody drove out: computed lines, and the caller's own words beside the record. */
export const Call = z.strictObject({
  /** The record that it was taken on. */
  from: id,
  /** null: nothing was said that decides it. */
  urgency: z.nullable(Urgency),
  reasons: z.array(z.string()),
  /** The likeliest first. */
  causes: z.array(z.strictObject({ cause: z.string(), because: z.string() })),
  load: z.array(z.string()),
  /** A likely cause asks for a person with the refrigerant certification. */
  certified: z.boolean(),
  /** What the caller chose of what was asked, a line each. */
  said: z.array(z.string()),
  told: z.array(z.string()),
  /** By what they are: name, phone, address and so on. */
  words: z.record(id, TextRef),
});
export type Call = z.infer<typeof Call>;

const bodies = {
  opened: z.strictObject({
    manual: id,
    version: z.number(),
    fingerprint: z.string(),
    semantics: z.number(),
    title: TextRef,
    training: z.boolean(),
  }),
  set: z.discriminatedUnion('what', [
    z.strictObject({ what: z.literal('settings'), settings: Settings }),
    z.strictObject({ what: z.literal('meter'), person: id, meter: Meter }),
    /** EPA 608: a step on the refrigerant is answered by a certified person alone. */
    z.strictObject({ what: z.literal('certified'), person: id, certified: z.boolean() }),
    z.strictObject({ what: z.literal('truck'), truck: Truck }),
    z.strictObject({ what: z.literal('equipment'), equipment: Equipment }),
    z.strictObject({ what: z.literal('call'), call: Call }),
  ]),
  assigned: z.strictObject({ to: id }),
  answered: z.strictObject({
    place: id,
    parts: Parts,
    skipped: z.optional(TextRef),
    /** Answered on a device without contact: kept as a finding, authorises nothing. */
    offline: z.optional(z.literal(true)),
  }),
  amended: z.strictObject({ of: seq, parts: Parts, reason: z.optional(TextRef) }),
  withdrawn: z.strictObject({ of: seq, reason: z.optional(TextRef) }),
  voided: z.strictObject({ reason: VoidReason, since: instant, text: z.optional(TextRef) }),
  concluded: Conclusion,
  /** First without, then with what was made safe. */
  paused: z.strictObject({ safe: z.optional(Parts) }),
  resumed: z.strictObject({}),
  'handed-over': z.strictObject({ to: id }),
  raised: z.strictObject({
    why: z.enum(['asked', 'not-covered', 'tries', 'approval', 'verdict', 'spent']),
    text: z.optional(TextRef),
  }),
  alarmed: z.strictObject({ hazard: Hazard, text: z.optional(TextRef) }),
  /** A hand-over taken, an emergency seen. */
  acknowledged: z.strictObject({ of: seq }),
  released: z.strictObject({ of: seq, as: z.enum(['clear', 'not-here']), reason: z.optional(TextRef) }),
  asked: z.strictObject({ text: TextRef }),
  replied: z.strictObject({ of: seq, text: TextRef }),
  /** `cabinet`: whose means is held open otherwise. */
  approved: z.strictObject({
    what: z.enum(['lock-alternative', 'tries']),
    cabinet: z.optional(id),
    reason: z.optional(TextRef),
  }),
  signed: z.strictObject({}),
  'sent-back': z.strictObject({ reason: TextRef }),
  counted: z.strictObject({ item: id, left: z.number(), used: z.optional(z.number()) }),
  /** `hazard`: words that may be an old mark, one tap is asked. `old-mark`: that tap. */
  noted: z.strictObject({
    as: z.enum(['note', 'unclear', 'hazard', 'old-mark', 'observation']),
    text: z.optional(TextRef),
    of: z.optional(seq),
  }),
} as const;

export type EntryKind = keyof typeof bodies;
export type Body<K extends EntryKind> = z.infer<(typeof bodies)[K]>;

/** What decide wants on the record; the desk numbers, dates and seals it. */
export type Draft = { [K in EntryKind]: { kind: K; body: Body<K> } }[EntryKind];

/** One line of the record. `hash` = SHA-256 over the RFC 8785 JSON of everything else in it. */
export type Entry = Draft & {
  /** Shape of the entry; older shapes are lifted in `upcast.ts`. */
  v: 1;
  job: string;
  seq: number;
  by: string;
  /** Server time, UTC ISO 8601 with milliseconds. */
  at: string;
  /** What the device's clock claimed when the person answered. */
  said: string | null;
  /** The reply's client id; the same id has one effect. */
  client: string | null;
  prev: string;
  hash: string;
};
const hex64 = z.string().check(z.regex(/^[0-9a-f]{64}$/));
const entryOf = <K extends EntryKind>(kind: K) =>
  z.strictObject({
    v: z.literal(1),
    kind: z.literal(kind),
    job: id,
    seq,
    by: id,
    at: instant,
    said: z.nullable(instant),
    client: z.nullable(id),
    body: bodies[kind],
    prev: z.string(),
    hash: hex64,
  });
const kinds = Object.keys(bodies) as [EntryKind, ...EntryKind[]];
const OfKind = z.looseObject({ kind: z.enum(kinds) });
const shapes = new Map(kinds.map((kind) => [kind, entryOf(kind)]));
/** Reads a stored entry; throws a ZodError where the row is not one. */
export function parseEntry(row: unknown): Entry {
  const { kind } = z.parse(OfKind, row);
  const shape = shapes.get(kind);
  if (!shape) throw new Error(`no entry is of kind ${kind}`);
  return z.parse(shape, row) as Entry;
}

// ---------------------------------------------------------------------------------------------------- what is shown

export type StepClass = 'eyes' | 'proving' | 'inside' | 'control live' | 'live';
export const Callout = z.strictObject({ level: z.enum(['danger', 'warning', 'caution', 'notice']), text: z.string() });
export type Callout = z.infer<typeof Callout>;

const Option = z.strictObject({ id, label: z.string(), words: z.array(z.string()) });
export type Option = z.infer<typeof Option>;
const common = { key: id, ask: z.string(), optional: z.boolean() };
export const Part = z.discriminatedUnion('kind', [
  z.strictObject({
    kind: z.literal('choose'),
    ...common,
    several: z.boolean(),
    options: z.array(Option),
    remembered: z.array(id),
  }),
  z.strictObject({ kind: z.literal('confirm'), ...common, options: z.array(Option) }),
  z.strictObject({ kind: z.literal('act'), ...common, options: z.array(Option) }),
  z.strictObject({
    kind: z.literal('field'),
    ...common,
    unit: Unit,
    /** Other names it goes by in a typed line. */
    words: z.array(z.string()),
    /** False: only a number will do (a gate); OL is refused. */
    over: z.boolean(),
    /** True: a bare number is asked back, because Ω, kΩ and MΩ decide differently. */
    unitNeeded: z.boolean(),
    remembered: z.nullable(z.string()),
    /** The unit that whoever is asked prefers. A bare number has the field's unit all the same. */
    prefers: z.optional(z.enum(['°C', 'kPa', 'bar'])),
    /** Plausible range in the field's unit; outside is asked about, never stored. */
    from: decimal,
    to: decimal,
  }),
  z.strictObject({ kind: z.literal('label'), ...common, remembered: z.nullable(z.string()) }),
  z.strictObject({ kind: z.literal('photo'), ...common }),
  z.strictObject({ kind: z.literal('note'), ...common, finds: z.optional(z.enum(['phone', 'place', 'unit'])) }),
]);
export type Part = z.infer<typeof Part>;

/** One line of the isolation strip, for one cabinet. */
export const IsolationLine = z.strictObject({
  cabinet: z.string(),
  state: z.enum(['not-proved', 'being-proved', 'proved', 'control-live']),
  holder: z.nullable(id),
  /** When it was proved, and when it goes stale if nobody answers. */
  since: z.nullable(instant),
  until: z.nullable(instant),
  done: z.number(),
  of: z.number(),
  words: z.string(),
});
export type IsolationLine = z.infer<typeof IsolationLine>;

/** Something that happened and that the person should read before the question. */
export const Notice = z.strictObject({ code: id, text: z.string() });
export type Notice = z.infer<typeof Notice>;

/** An earlier note or photo that is shown again: what it is called, its entry, and the answer itself. */
export const Recalled = z.strictObject({ ask: z.string(), seq, value: Value });
export type Recalled = z.infer<typeof Recalled>;

export const Prompt = z.strictObject({
  job: id,
  /** seq since which this question stands; an answer carries it back. */
  seq: z.number(),
  /** seq of the last entry of the record. */
  last: z.number(),
  place: id,
  kind: z.enum([
    'step',
    'waiting',
    'emergency',
    'hazard-question',
    'stopping',
    'paused',
    'taking-over',
    'held',
    'finished',
    'signed',
  ]),
  class: z.enum(['eyes', 'proving', 'inside', 'control live', 'live']),
  title: z.string(),
  body: z.array(z.string()),
  callouts: z.array(Callout),
  notices: z.array(Notice),
  parts: z.array(Part),
  recalls: z.array(Recalled),
  /** How the parts may be typed in one line; null where one part or none. */
  line: z.nullable(z.string()),
  /** Whether `skip <reason>` is taken here: never at a gate. */
  skippable: z.boolean(),
  why: z.nullable(z.string()),
  sources: z.array(z.string()),
  progress: z.strictObject({ answered: z.number(), label: z.string() }),
  isolation: z.array(IsolationLine),
  /** Who may answer: null = whoever takes part. */
  holder: z.nullable(id),
  /** Where this is a question about an earlier answer: its seq. */
  amends: z.nullable(z.number()),
  verdicts: z.array(Conclusion),
  /** Drawn of the same data as the words; each says in text all that it shows. */
  pictures: z.array(Picture),
  /** How long the resistor tool is held on each pair, in s, where this question discharges and that was computed. */
  holdSeconds: z.optional(decimal),
  /** An unanswered question of a senior. */
  question: z.nullable(z.strictObject({ seq, text: TextRef })),
});
export type Prompt = z.infer<typeof Prompt>;

// ------------------------------------------------------------------------------------------------- what comes back

/** What a person sends for one part, before it is read: text for fields and labels, ids for choices. */
export const Given = z.union([z.string().check(z.maxLength(10_000)), z.array(id).check(z.maxLength(40))]);
export type Given = z.infer<typeof Given>;
export const GivenParts = z.record(id, Given);
export type GivenParts = z.infer<typeof GivenParts>;

export const CommandName = z.enum([
  'back',
  'why',
  'where',
  'help',
  'stop',
  'go on',
  'senior',
  'photo',
  'skip',
  'take back',
  'hand over',
  'take over',
  'power is back',
  'lock is off',
  'alarm',
  'happening',
  'old mark',
  'not here',
  'seen',
  'release',
  'approve',
  'ask',
  'reply',
  'note',
  'sign',
  'send back',
]);
export type CommandName = z.infer<typeof CommandName>;

const client = z.string().check(z.regex(/^[A-Za-z0-9._:~-]{1,64}$/));
const head = { client, said: z.optional(z.nullable(instant)) };
export const Reply = z.discriminatedUnion('kind', [
  z.strictObject({
    kind: z.literal('answer'),
    ...head,
    seq: z.number(),
    parts: GivenParts,
    /** Given without contact. A copy sent again may say so later; what counts is the copy that was kept. */
    offline: z.optional(z.literal(true)),
  }),
  z.strictObject({ kind: z.literal('amend'), ...head, of: seq, parts: GivenParts, reason: z.optional(z.string()) }),
  z.strictObject({ kind: z.literal('withdraw'), ...head, of: seq, reason: z.optional(z.string()) }),
  /** `text` is the rest of the command: a reason, a name, a question. `of` names an entry where one is meant. */
  z.strictObject({
    kind: z.literal('command'),
    ...head,
    name: CommandName,
    text: z.optional(z.string().check(z.maxLength(10_000))),
    of: z.optional(seq),
  }),
  z.strictObject({
    kind: z.literal('text'),
    ...head,
    seq: z.number(),
    text: z.string().check(z.maxLength(100_000)),
    amends: z.optional(seq),
    draft: z.optional(GivenParts),
    offline: z.optional(z.literal(true)),
  }),
]);
export type Reply = z.infer<typeof Reply>;

/** Why a reply changed nothing. A value, never thrown. */
export const Refusal = z.strictObject({
  code: z.enum([
    'not-certified',
    'stale',
    'not-a-number',
    'out-of-range',
    'which-unit',
    'which-quantity',
    'unknown-option',
    'missing',
    'unclear',
    'gate',
    'not-holder',
    'no-right',
    'not-here',
    'closed',
    'nothing-to-change',
    'too-long',
    'unknown-person',
    'reason-needed',
    'too-early',
    'held',
  ]),
  /** What was understood, what is needed, what can be typed. */
  text: z.string(),
  /** Keys of the parts it is about. */
  parts: z.array(id),
  /** What was understood of the reply and is still good; a surface sends it back with the missing rest. */
  draft: GivenParts,
});
export type Refusal = z.infer<typeof Refusal>;
