/** The proof's own people and turn: the real machine and decide, no store, no clock. Time is counted in the walk. */
import type { Machine, Position } from '../compile.ts';
import { decide } from '../decide/decide.ts';
import type { Context, Decision, Relation, UseCase } from '../decide/types.ts';
import { DEFAULT_SETTINGS } from '../memory.ts';
import { asOf, begin, memoryOf, type Standing, take } from '../replay.ts';
import type { Draft, Entry, Meter, Reply } from '../schema.ts';

export const TECH = 'tech';
export const OTHER = 'other';
export const SENIOR = 'senior';
const ROLES = { [TECH]: ['technician'], [OTHER]: ['technician'], [SENIOR]: ['senior'] } as const;
const NAMES = [
  { id: TECH, name: 'Tech' },
  { id: OTHER, name: 'Other' },
  { id: SENIOR, name: 'Senior' },
];
const METER: Meter = { percent: '1.9', counts: 2, fine: '0.01', coarse: '0.1', split: '10', known: true };
const START = Date.parse('2026-01-05T08:00:00.000Z');

type Decided = Omit<Decision, 'after'>;

/** What is under test. A broken engine replaces one of these. */
export interface Subject {
  readonly machine: Machine;
  /** Where it says the job stands then is not believed: each entry is taken. */
  decide(s: Standing, reply: Reply, c: Context): Decided;
  /** The rights table: role × use case. */
  may(roles: readonly string[], use: UseCase, to: Relation & { participates: boolean }): boolean;
  /** What the fold is given of an entry; the record keeps the entry itself. */
  mangle(entry: Entry): Entry;
}
export const sound = (machine: Machine, may: Subject['may']): Subject => ({
  machine: remembering(machine),
  decide,
  may,
  mangle: (e) => e,
});

/**
 * `decide` tries each of its drafts on the machine before it is an entry, and the record then takes the same body from the
 * same position at the same minute: the machine is pure, so it is asked once. Another entry, or a mangled one, is asked anew.
 */
function remembering(machine: Machine): Machine {
  const last = new WeakMap<Position, { readonly entry: Entry; readonly after: Position }>();
  return {
    ...machine,
    step(at, entry) {
      const known = last.get(at);
      if (known && isSame(known.entry, entry)) return known.after;
      const after = machine.step(at, entry);
      last.set(at, { entry, after });
      return after;
    },
  };
}
const isSame = (a: Entry, b: Entry): boolean =>
  a.body === b.body && a.kind === b.kind && a.seq === b.seq && a.by === b.by && a.at === b.at && a.said === b.said;

/** A state of the walk: where the job stands, the minute it is, and the record that led here. */
export interface State {
  readonly standing: Standing;
  readonly minute: number;
  readonly entries: readonly Entry[];
}
export interface Turn {
  readonly by: string;
  readonly label: string;
  /** A seq of −1 stands for that of the question then open. */
  readonly reply: Reply;
  /** Minutes that pass before it. */
  readonly after: number;
}
const instants: string[] = [];
/** The same minutes come again at every state. */
export function instant(minute: number): string {
  const known = instants[minute] ?? new Date(START + minute * 60_000).toISOString();
  instants[minute] = known;
  return known;
}

/** A job just opened and handed to the technician, with whoever is certified beside the senior. */
export function open(subject: Subject, certified: readonly string[] = []): State {
  const { manual } = subject.machine.plan;
  const title = { ref: 't', hash: '0'.repeat(64) };
  const drafts: Draft[] = [
    {
      kind: 'opened',
      body: { manual: manual.id, version: manual.version, fingerprint: '', semantics: 0, title, training: false },
    },
    { kind: 'set', body: { what: 'settings', settings: DEFAULT_SETTINGS } },
    { kind: 'assigned', body: { to: TECH } },
    { kind: 'set', body: { what: 'meter', person: TECH, meter: METER } },
    ...[SENIOR, ...certified].map(
      (person): Draft => ({ kind: 'set', body: { what: 'certified', person, certified: true } }),
    ),
  ];
  return append(subject, { standing: begin(subject.machine, 'walk'), minute: 0, entries: [] }, drafts, SENIOR, 'open')
    .state;
}

/** One turn on a state. The record grows by what was decided. */
export function turn(subject: Subject, state: State, t: Turn): { state: State; added: Entry[]; decision: Decided } {
  const minute = state.minute + t.after;
  const memory = memoryOf(state.standing);
  let salt = 0;
  const seq = memoryOf(asOf(state.standing, instant(minute))).since;
  const reply = 'seq' in t.reply && t.reply.seq < 0 ? { ...t.reply, seq } : t.reply;
  const decision = subject.decide(state.standing, reply, {
    by: t.by,
    at: instant(minute),
    said: null,
    client: t.reply.client,
    may: (use, to) =>
      subject.may(ROLES[t.by as keyof typeof ROLES], use, { ...to, participates: memory.assigned.includes(t.by) }),
    salt: () => `${++salt}`,
    people: NAMES,
  });
  const grown = append(subject, { ...state, minute }, decision.drafts, t.by, t.reply.client);
  return { ...grown, decision };
}

function append(
  subject: Subject,
  state: State,
  drafts: readonly Draft[],
  by: string,
  client: string,
): { state: State; added: Entry[] } {
  let standing = state.standing;
  const added = drafts.map((draft, i) => {
    const head = {
      v: 1 as const,
      job: 'walk',
      seq: state.entries.length + i + 1,
      by,
      at: instant(state.minute),
      said: null,
      client,
      prev: '',
      hash: '',
    };
    const entry = { ...head, ...draft } as Entry;
    standing = take(standing, subject.mangle(entry));
    return entry;
  });
  return { state: { standing, minute: state.minute, entries: [...state.entries, ...added] }, added };
}
