/** One entry more: Memory → Memory. Says what each kind of entry adds or makes forgotten; where that leaves the job is the machine's. */
import { Decimal } from 'decimal.js';
import { TranscriptMismatch, unreachable } from './errors.ts';
import { amendedFact, givenAt, jobFactOf } from './facts.ts';
import { jobName, type Place, type Plan } from './flatten.ts';
import { isAnyBegun, noticed, reopen, voidAll, withdraw } from './forget.ts';
import { judgedAnew } from './judged-anew.ts';
import { chosenOf, showsOneSection } from './judgements/read.ts';
import { isTaken, judged } from './known.ts';
import { BLANK, type JobFact, type Memory, NO_ISOLATION } from './memory.ts';
import { powered } from './power.ts';
import type { Entry, Equipment, Parts, Truck, VoidReason } from './schema.ts';
import type { AskStep } from './vocabulary.ts';

/**
 * True where the entry only adds: the job goes on from where it stands. Else the page is gone over from its start, as it
 * is where an answer brings a fact of the whole job, which an earlier step may have looked at and missed.
 */
export function onlyAdds(plan: Plan, entry: Entry): boolean {
  if (entry.kind === 'noted') return entry.body.as !== 'hazard' && entry.body.as !== 'old-mark';
  if (entry.kind !== 'answered') return entry.kind === 'concluded' || entry.kind === 'raised' || entry.kind === 'asked';
  const step = plan.places.get(entry.body.place)?.step;
  if (!step || !('parts' in step)) return true;
  return step.powers === undefined && Object.values(step.parts).every((p) => p.as === undefined);
}

export const fold = (plan: Plan, before: Memory, entry: Entry): Memory =>
  judgedAnew(plan, before, folded(plan, before, entry));

function folded(plan: Plan, before: Memory, entry: Entry): Memory {
  // Nearly every entry is an answer: it copies what is known once.
  if (entry.kind === 'answered') return answered(plan, before, entry);
  const memory: Memory = { ...before, last: entry.seq, at: entry.at };
  if (entry.kind === 'noted' && onlyAdds(plan, entry)) return memory;
  const moved: Memory = { ...memory, since: entry.seq };
  switch (entry.kind) {
    case 'opened':
      return { ...moved, title: entry.body.title, training: entry.body.training };
    case 'set':
      if (entry.body.what === 'settings') return { ...memory, settings: entry.body.settings };
      if (entry.body.what === 'truck') return carried(memory, entry.seq, entry.body.truck);
      if (entry.body.what === 'equipment') return known(plan, memory, entry, entry.body.equipment);
      if (entry.body.what === 'certified') return certified(memory, entry.body.person, entry.body.certified);
      if (entry.body.what === 'call') return { ...memory, call: entry.body.call };
      return { ...memory, meters: { ...memory.meters, [entry.body.person]: entry.body.meter } };
    case 'assigned':
      return { ...memory, assigned: withOne(memory.assigned, entry.body.to) };
    case 'amended':
      return amended(plan, moved, entry);
    case 'withdrawn': {
      const place = placeOf(moved, entry.body.of);
      return place === null ? moved : noticed(withdraw(plan, moved, place), 'withdrawn');
    }
    case 'voided':
      return noticed(endedBy(plan, moved, entry.body.reason), `void:${entry.body.reason}`);
    case 'concluded':
      return { ...moved, concluded: { ...memory.concluded, [entry.body.place]: entry } };
    case 'paused':
      return { ...moved, stop: entry.body.safe ? 'paused' : 'asked', power: { ...memory.power, upset: entry.seq } };
    case 'resumed':
      return { ...moved, stop: null };
    case 'handed-over':
      return handedOver(plan, moved, entry);
    case 'acknowledged':
      return acknowledged(moved, memory, entry);
    case 'raised':
      return { ...memory, raised: [...memory.raised, entry.body.why] };
    case 'alarmed': {
      const alarm = { seq: entry.seq, by: entry.by, hazard: entry.body.hazard, seen: [] };
      return noticed({ ...powered(plan, moved, 'void'), alarm, hazard: null }, 'void:emergency');
    }
    case 'released':
      return { ...moved, alarm: null };
    case 'asked':
      return { ...memory, question: { seq: entry.seq, text: entry.body.text } };
    case 'replied':
      return { ...memory, question: null };
    case 'approved':
      if (entry.body.what === 'tries') return { ...moved, triesOpened: memory.triesOpened + 1 };
      return entry.body.cabinet === undefined
        ? moved
        : { ...moved, approvals: withOne(memory.approvals, entry.body.cabinet) };
    case 'signed':
      return { ...moved, signed: true };
    case 'sent-back':
      return { ...moved, signed: false, question: { seq: entry.seq, text: entry.body.reason } };
    case 'counted':
      if (!memory.truck) return memory;
      return carried(memory, entry.seq, leftOf(memory.truck, entry.body.item, entry.body.left));
    case 'noted':
      return { ...moved, hazard: entry.body.as === 'hazard' ? { seq: entry.seq, by: entry.by } : null };
    default:
      return unreachable(entry);
  }
}

/** Silence, and an answer without contact, end a proof and put no power on. */
function endedBy(plan: Plan, memory: Memory, reason: VoidReason): Memory {
  if (reason === 'age') return voidAll(plan, memory, 'age');
  return reason === 'offline' ? voidAll(plan, memory, 'void') : powered(plan, memory, 'void');
}

const carried = (memory: Memory, seq: number, truck: Truck): Memory => ({
  ...memory,
  truck,
  trucks: [...memory.trucks, { seq, truck }],
});
const leftOf = (truck: Truck, item: string, left: number): Truck => ({
  ...truck,
  items: truck.items.map((one) => (one.id === item ? { ...one, count: left } : one)),
});

/** What the record of the unit says is known for the job where the manual takes it as known; else it fills the chips. */
function known(plan: Plan, memory: Memory, entry: Entry, equipment: Equipment): Memory {
  const job = { ...memory.job };
  for (const name of plan.manual.fromRecord) {
    const value = equipment.facts[name];
    if (value !== undefined && job[name] === undefined)
      job[name] = { seq: entry.seq, of: entry.seq, by: entry.by, part: name, value };
  }
  return { ...memory, job, equipment: { ...equipment, asOf: entry.at } };
}

const certified = (memory: Memory, person: string, is: boolean): Memory => ({
  ...memory,
  certified: is ? withOne(memory.certified, person) : memory.certified.filter((one) => one !== person),
});

const withOne = (list: readonly string[], one: string): readonly string[] =>
  list.includes(one) ? list : list.concat(one);
/** The place whose standing answer came with this entry. */
export function placeOf(memory: Memory, seq: number): string | null {
  for (const [place, fact] of Object.entries(memory.facts)) if (fact.seq === seq) return place;
  return null;
}

function answered(plan: Plan, before: Memory, entry: Entry & { kind: 'answered' }): Memory {
  const { place: id, parts } = entry.body;
  const place = plan.places.get(id);
  if (!place || !('parts' in place.step)) throw new TranscriptMismatch(`entry ${entry.seq}: no question at ${id}`);
  const job = jobFacts(place, before.job, entry);
  const ends = turnsOn(place.step, parts);
  const powers = ends || place.class === 'live';
  const now = { last: entry.seq, at: entry.at, since: entry.seq, notices: BLANK.notices, explained: BLANK.explained };
  const power = powers ? { ...before.power, on: entry.seq } : before.power;
  const kept: Memory = { ...before, ...now, power, facts: { ...before.facts, [id]: entry }, job };
  const newPart = place.step.act === 'fit' && parts.ok?.kind === 'choice' && parts.ok.chosen[0] === 'done';
  const then = newPart ? renewed(kept, place, place.step.renews ?? []) : kept;
  const held = heldSince(moreSections(plan, then, place, parts), place, entry.by, givenAt(entry));
  return ends ? ended(plan, held) : held;
}
/** Whether with this answer the lock came off and power went on. */
const turnsOn = ({ powers = [], by = '' }: AskStep, parts: Parts): boolean =>
  powers.some((option) => chosenOf(parts, by).includes(option));

/** A new part is in: its round keeps what was known of the old one, and what was known of that one alone is forgotten. */
function renewed(memory: Memory, place: Place, renews: readonly string[]): Memory {
  // The first one of a round: when a second goes in, the look that was taken between is about the first. What was not
  // known then, or was taken back since, is kept as it is known now.
  const names = renews.map((as) => jobName(as, place));
  const now = names.flatMap((name) => (memory.job[name] ? [[name, memory.job[name]] as const] : []));
  const before = memory.fitted[place.round];
  const fitted = before ? { ...Object.fromEntries(now), ...before } : memory.job;
  const job = { ...memory.job };
  for (const name of names) delete job[name];
  return { ...memory, fitted: { ...memory.fitted, [place.round]: fitted }, job };
}

/** The print shows two sections where the look showed one: what is left in the other was never measured. */
function moreSections(plan: Plan, memory: Memory, place: Place, parts: Parts): Memory {
  const { step: asking } = place;
  if (place.gate || !('parts' in asking)) return memory;
  const two = Object.entries(parts).some(
    ([key, value]) => value.kind === 'label' && value.label.fan !== null && asking.parts[key]?.as === 'cabinet:label',
  );
  const step = two ? plan.regions[place.cabinet]?.rules.grows?.step : undefined;
  if (step === undefined || !showsOneSection(memory.facts[`dead:${place.cabinet}/${step}`]?.body.parts)) return memory;
  return noticed(reopen(plan, memory, place.cabinet, step), 'void:sections');
}

/** Answers kept by name for the whole job; what was not taken overwrites nothing. */
function jobFacts(
  place: Place,
  job: Memory['job'],
  entry: Entry & { kind: 'answered' | 'amended' },
  fitted: Memory['fitted'] = {},
): Memory['job'] {
  if (!('parts' in place.step)) return job;
  const { parts } = entry.body;
  let out: Record<string, JobFact> | null = null;
  for (const [key, { as, anew }] of Object.entries(place.step.parts)) {
    const value = parts[key];
    if (as === undefined || !isTaken(value)) continue;
    if (entry.kind === 'amended' && isOfOldPart(jobName(as, place), entry.body.of, job, fitted)) continue;
    // What was read last stays that: an older reading with another figure is no later one.
    if (anew && entry.kind === 'amended' && (job[jobName(as, place)]?.of ?? 0) > entry.body.of) continue;
    out ??= { ...job };
    out[jobName(as, place)] = jobFactOf(entry, key);
  }
  return out ?? job;
}

/** Whether an answer was about a part that has come out since: put right, it is right for its own round alone. */
const isOfOldPart = (name: string, seq: number, job: Memory['job'], fitted: Memory['fitted']): boolean =>
  job[name]?.of !== seq && Object.values(fitted).some((then) => then[name]?.of === seq);

/** The first to answer a gate holds the lock; the holder's answers, and only theirs, keep the isolation young. */
function heldSince(memory: Memory, place: Place, by: string, at: string): Memory {
  if (!place.gate && Object.keys(memory.isolations).length === 0) return memory;
  const isolations = { ...memory.isolations };
  for (const cabinet of new Set([...Object.keys(isolations), ...(place.gate ? [place.cabinet] : [])])) {
    const now = isolations[cabinet] ?? NO_ISOLATION;
    const holder = now.holder ?? (place.gate && place.cabinet === cabinet ? by : null);
    if (holder !== by) continue;
    isolations[cabinet] = { ...now, holder, lastAt: now.lastAt !== null && now.lastAt > at ? now.lastAt : at };
  }
  return { ...memory, isolations };
}

/**
 * The same observation with another figure. What came later stays and is judged anew. A gate's figure carries its
 * isolation: a line of readings is taken again whole, a chip keeps its new value and what follows it is asked again.
 */
function amended(plan: Plan, memory: Memory, entry: Entry & { kind: 'amended' }): Memory {
  const id = placeOf(memory, entry.body.of);
  const fact = id === null ? undefined : memory.facts[id];
  const place = id === null ? undefined : plan.places.get(id);
  if (!fact || !place || !('parts' in place.step)) return memory;
  const parts: Parts = { ...fact.body.parts, ...entry.body.parts };
  const next = amendedFact(fact, parts, entry.seq);
  const out: Memory = noticed(
    {
      ...memory,
      facts: { ...memory.facts, [place.id]: next },
      job: jobFacts(place, memory.job, entry, memory.fitted),
      fitted: Object.fromEntries(
        Object.entries(memory.fitted).map(([round, job]) => {
          const known = Object.keys(entry.body.parts).some((key) =>
            Object.values(job).some((f) => f.of === fact.seq && f.part === key),
          );
          return [round, known ? jobFacts(place, job, entry) : job];
        }),
      ),
    },
    'amended',
  );
  if (!place.gate) return moreSections(plan, out, place, entry.body.parts);
  if (!endsIsolation(plan, place, fact.body.parts, entry.body.parts)) return out;
  if (place.class === 'proving') return noticed(reopen(plan, out, place.cabinet, place.name), 'void:amended');
  const following = plan.regions[place.cabinet]?.places ?? [];
  const after = plan.places.get(following[following.indexOf(place.id) + 1] ?? '');
  return noticed(after ? reopen(plan, out, place.cabinet, after.name) : out, 'void:amended');
}

/** A print or a look doesn't carry the isolation (the residual decided); one more capacitor does, one fewer doesn't. */
function endsIsolation(plan: Plan, place: Place, was: Parts, changed: Parts): boolean {
  if (!('parts' in place.step)) return false;
  const grows = plan.regions[place.cabinet]?.rules.grows;
  if (place.name === grows?.step && showsOneSection(was) && !showsOneSection({ ...was, ...changed })) return true;
  for (const [key, value] of Object.entries(changed)) {
    if (JSON.stringify(was[key]) === JSON.stringify(value)) continue;
    if (
      place.step.parts[key]?.as !== undefined &&
      place.class === 'eyes' &&
      place.name === grows?.step &&
      key !== grows.part
    )
      continue;
    if (place.name === grows?.step && key === grows.part) {
      const [from, to] = [was[key], value];
      if (from?.kind === 'figure' && to.kind === 'figure' && new Decimal(to.value).lte(from.value)) continue;
    }
    return true;
  }
  return false;
}

/** The lock changes hands: nothing of the old isolation counts for the new holder, who starts from the first prompt. */
function handedOver(plan: Plan, memory: Memory, entry: Entry & { kind: 'handed-over' }): Memory {
  const out = powered(plan, memory, 'holder');
  const isolations = Object.fromEntries(
    Object.entries(out.isolations).map(([k, i]) => [k, { ...i, holder: null, lastAt: null }]),
  );
  const handover = { seq: entry.seq, from: entry.by, to: entry.body.to };
  return noticed({ ...out, isolations, handover }, 'void:hand-over');
}

function acknowledged(moved: Memory, still: Memory, entry: Entry & { kind: 'acknowledged' }): Memory {
  if (still.handover?.seq === entry.body.of) {
    const isolations = Object.fromEntries(
      Object.entries(still.isolations).map(([k, i]) => [k, { ...i, holder: entry.by }]),
    );
    return { ...moved, handover: null, isolations, assigned: withOne(still.assigned, entry.by) };
  }
  if (still.alarm?.seq !== entry.body.of) return still;
  return { ...still, alarm: { ...still.alarm, seen: withOne(still.alarm.seen, entry.by) } };
}

/** What leaving make-dead by this exit means. Only `proved` proves. */
export function leave(plan: Plan, memory: Memory, cabinet: string, exit: string): Memory {
  const was = memory.isolations[cabinet] ?? NO_ISOLATION;
  if (exit === 'proved') {
    const proved = { seq: memory.last, at: memory.at };
    return { ...memory, isolations: { ...memory.isolations, [cabinet]: { ...was, proved, again: false } } };
  }
  const leaving = plan.regions[cabinet]?.rules.leaving[exit];
  if (!leaving) throw new Error(`make-dead's exit ${exit} has no meaning`);
  const explained = explain(plan, memory, cabinet);
  const line = Object.values(memory.facts).find((f) => f.seq === memory.last);
  const out = noticed(reopen(plan, memory, cabinet, leaving.forget), `leaving:${exit}`);
  if (!leaving.tries) return { ...out, explained };
  return {
    ...out,
    explained,
    failed: [...out.failed, { cabinet, exit, seq: memory.last, parts: line?.body.parts ?? {} }],
  };
}

/** The findings of the judges that read the line just typed: they say which figure was in the way. */
function explain(plan: Plan, memory: Memory, cabinet: string): string[] {
  const typed = Object.keys(memory.facts).find((id) => memory.facts[id]?.seq === memory.last);
  if (typed === undefined) return [];
  return (plan.regions[cabinet]?.places ?? []).flatMap((id) => {
    const place = plan.places.get(id);
    if (place?.step.verb !== 'judge' || !Object.values(place.refs).some((r) => r.includes(typed))) return [];
    // A judge that waits for a line nobody was asked for has nothing to say of this one.
    if (Object.values(place.refs).some((r) => r.every((ref) => !ref.startsWith('@') && !memory.facts[ref]))) return [];
    return judged(place, memory).findings.map((f) => f.text);
  });
}

/** A live place ends every isolation before it is shown: power comes back for it. */
export const energise = (plan: Plan, memory: Memory): Memory => ({
  ...ended(plan, memory),
  power: { ...memory.power, on: memory.last },
});
function ended(plan: Plan, memory: Memory): Memory {
  return isAnyBegun(plan, memory) ? noticed(voidAll(plan, memory, 'void'), 'void:live') : memory;
}

/** What is said where the tries of one kind of line are used up, or null. */
export function spentTries(plan: Plan, memory: Memory): string | null {
  if (memory.failed.length === 0) return null;
  for (const { rules, exit, times, held } of countedIn(plan)) {
    const failed = memory.failed.filter((f) => f.exit === exit && plan.regions[f.cabinet]?.rules === rules);
    if (failed.length >= times * (1 + memory.triesOpened)) return held;
  }
  return null;
}
interface Counted {
  readonly rules: object;
  readonly exit: string;
  readonly times: number;
  readonly held: string;
}
/** The ways out of make-dead that count as tries, of every kind of cabinet once. */
const counted = new WeakMap<Plan, readonly Counted[]>();
function countedIn(plan: Plan): readonly Counted[] {
  const known = counted.get(plan);
  if (known) return known;
  const all = [...new Set(Object.values(plan.regions).map((r) => r.rules))].flatMap((rules) =>
    Object.entries(rules.leaving as Record<string, { tries?: { times: number; held: string } }>).flatMap(
      ([exit, { tries }]) => (tries ? [{ rules, exit, ...tries }] : []),
    ),
  );
  counted.set(plan, all);
  return all;
}
