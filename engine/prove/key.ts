/** What makes two states of the walk the same. */

import { folderOf, jobName, type Place, type Plan } from '../flatten.ts';
import { motors } from '../judgements/motors.ts';
import { showsOneSection } from '../judgements/read.ts';
import { datesFor, isSought, judged } from '../known.ts';
import { ASSUMED_METER, DEFAULT_SETTINGS, type Memory } from '../memory.ts';
import { memoryOf, placeIdOf, planOf, type Standing } from '../replay.ts';
import { route } from '../route.ts';
import type { Parts, Value } from '../schema.ts';
import type { JudgeStep } from '../vocabulary.ts';
import type { State } from './bench.ts';
import { CABINETS, type Evidence, isDead, isOne, type Watched } from './rules/evidence.ts';

export interface Node {
  readonly state: State;
  readonly evidence: Watched;
  readonly history: Told | null;
}
/** A turn and those before it. What nobody will read is not put into words. */
export interface Told {
  readonly before: Told | null;
  readonly line: () => string;
}
export const isProved = (s: Standing): boolean => Object.values(memoryOf(s).isolations).some((i) => i.proved !== null);

/**
 * The place; the choices and outcomes of the way through this page (of earlier tries only the last); the gates answered;
 * and everything the evidence monitor remembers but the clock. Two technicians count as one: the key holds who is the
 * holder, not the name. Composed, all of make-dead is one state: its own walk has told its states apart.
 */
export function keyOf({ state, evidence }: Node, composed: boolean): string {
  const e = evidence.outdoor;
  const { standing } = state;
  const [plan, memory] = [planOf(standing), memoryOf(standing)];
  const here = placeIdOf(standing);
  const halted = memory.alarm ?? memory.hazard ?? memory.stop ?? memory.handover;
  const { passed } = route(
    plan,
    halted === null ? memory : { ...memory, alarm: null, hazard: null, stop: null, handover: null },
  );
  const at = plan.places.get(here);
  // Gates that are still known have been passed as well: where make-dead leads back to is told by what came before them.
  const last = composed ? passed.findLast((p) => !p.gate) : passed.at(-1);
  const page = pageOf(at && !at.gate ? here : (last?.id ?? here));
  const onPage = passed.filter((p) => pageOf(p.id) === page);
  const current = folderOf(at && !at.gate ? here : (last?.id ?? here));
  const folders = [...new Set([...onPage.map((p) => folderOf(p.id)), current])];
  const tries = folders.slice(-2);
  const trail = onPage.flatMap((p) => {
    if (!tries.includes(folderOf(p.id))) return [];
    return [p.step.verb === 'judge' ? `${p.id}=${judged(p, memory).outcome}` : p.id];
  });
  const order = at && !at.gate ? at.order : (passed.at(-1)?.order ?? 0);
  trail.push(
    ...passed.flatMap((p) =>
      !p.gate && order < judgedAt(plan, p) ? choicesOf(p, memory.facts[p.id]?.body.parts) : [],
    ),
  );
  trail.push(...unjudged(plan, onPage, memory), ...borneOut(plan, page, order, memory));
  const ahead = sortedAhead(plan, at, passed);
  const wires = onPage.some((p) => p.name === 'wires' && p.page.endsWith('readings'));
  const linesLeft = 3 * (1 + memory.triesOpened) - memory.failed.length;
  const lock = memory.isolations.outdoor;
  const held = lock && [lock.holder === null, lock.holder === e.holder, lock.again];
  const halts = [memory.stop, memory.alarm !== null, memory.hazard !== null, memory.handover !== null, memory.signed];
  // What is seen under the cover decides only later; within make-dead's own walk the gates hold it.
  const kept = composed ? memory.job : {};
  const read = readAhead(plan, at, passed);
  const job = Object.entries(kept).flatMap(([k, f]) =>
    f && !isWords(f.value) && (!composed || read.has(k) || k === 'class')
      ? [`${k} ${pointed(plan, at, passed, k, f.value) ?? counted(page, k, f.value) ?? opened(k, f.value)}`]
      : [],
  );
  job.sort();
  if (planOf(standing).endings.includes(here)) return JSON.stringify([here]);
  const { outdoor } = evidence;
  const { indoor } = evidence;
  const classes = [kindOf(outdoor.unitClass), indoor.unitClass, isHolding(evidence), outdoor.wound];
  if (indoor.unitClass === 'ecm') classes.push(indoor.rested);
  if (/\/(control|who-drops|chatter|runs-on)/.test(here)) classes.push(outdoor.apart);
  if (outdoor.unitClass === 'refrigeration') classes.push(outdoor.calm);
  if (here.includes('/breaker/')) classes.push(outdoor.insulated, outdoor.grounded);
  if (composed && at?.gate)
    return JSON.stringify(['make-dead', trail, wires, job, passed.at(-1)?.round ?? 1, ahead, classes]);
  if (composed) {
    const dead = CABINETS.map((c) => isDead(evidence[c], evidence[c].holder ?? '', evidence[c].lastAt, c));
    const proved = Object.keys(memory.isolations).filter((c) => memory.isolations[c]?.proved != null);
    return JSON.stringify([here, trail, wires, proved, isProved(standing) && dead, halts, job, ahead, classes]);
  }
  const gates = Object.entries(memory.facts)
    .filter(([id]) => id.startsWith('dead:'))
    .map(([id, f]) => `${id} ${gateKey(f.body.parts)}`);
  return JSON.stringify([
    here,
    trail,
    wires,
    isProved(standing) ? 'proved' : gates,
    halts,
    linesLeft,
    held,
    job,
    monitored(e, here),
  ]);
}
const isHolding = (all: Watched): boolean => all.inverter.bus;
/** Make-dead looks at the class for two things alone: whether it may be there, and how many lines there are. */
function kindOf(unitClass: string | null): string | null {
  if (unitClass === null || unitClass === 'three-phase') return unitClass;
  return ['psc', 'ecm', 'refrigeration'].includes(unitClass) ? 'opened' : 'closed';
}
/** The last judge that reads an answer; 0 where none does. Until then the choices in it tell two states apart. */
function judgedAt(plan: Plan, place: Place): number {
  const known = readers.get(plan) ?? new Map<string, number>();
  if (!readers.has(plan))
    for (const p of plan.places.values())
      if (p.step.verb === 'judge') for (const id of Object.values(p.refs).flat()) known.set(id, p.order);
  readers.set(plan, known);
  return known.get(place.id) ?? 0;
}
const readers = new WeakMap<Plan, Map<string, number>>();
const choicesOf = (place: Place, parts: Parts | undefined): string[] => {
  const chosen = Object.values(parts ?? {}).flatMap((v) => (v.kind === 'choice' ? v.chosen : []));
  return chosen.length > 0 ? [`${place.id} ${chosen.join('+')}`] : [];
};
/** Says only whether a line is of its circuit; what it reads decides at the judge behind. */
const LED_ON: readonly string[] = ['foreign-volts'];
/** A line of this page that no judge has read yet: until one does, what it reads tells two states apart. */
function unjudged(plan: Plan, onPage: readonly Place[], { facts }: Memory): string[] {
  const read = new Set(
    onPage.flatMap(({ step, refs }) =>
      step.verb === 'judge' && !LED_ON.includes(step.judgement) ? Object.values(refs).flat() : [],
    ),
  );
  return onPage.flatMap((p) => {
    if (p.gate || read.has(p.id) || judgedAt(plan, p) === 0) return [];
    const figures = Object.entries(facts[p.id]?.body.parts ?? {}).flatMap(([k, v]) =>
      v.kind === 'figure' || v.kind === 'over' ? [`${k} ${v.kind === 'over' ? 'OL' : v.value}`] : [],
    );
    return figures.length > 0 ? [`${p.id} ${figures.join(' ')}`] : [];
  });
}
/** Of a wait that this page judges further down: whether what was said of it is as old as it says, by the record. */
function borneOut(plan: Plan, page: string, order: number, memory: Memory): string[] {
  return (waitsIn(plan).get(page) ?? []).flatMap((p) => {
    if (p.order <= order) return [];
    const { since, off } = datesFor(p, memory);
    if (since === undefined || off === undefined) return [];
    const minutes = (Date.parse(since) - Date.parse(off)) / 60_000;
    return [`${p.id} ${minutes >= Number(p.step.limits.least?.value)}`];
  });
}
type Wait = Place & { readonly step: JudgeStep };
const waits = new WeakMap<Plan, ReadonlyMap<string, readonly Wait[]>>();
/** The judges of waits, by the page that they stand on. */
function waitsIn(plan: Plan): ReadonlyMap<string, readonly Wait[]> {
  const known = waits.get(plan);
  if (known) return known;
  const by = new Map<string, Wait[]>();
  for (const p of plan.places.values()) {
    if (p.step.verb !== 'judge' || p.step.judgement !== 'minutes-since') continue;
    const page = pageOf(p.id);
    by.set(page, [...(by.get(page) ?? []), { ...p, step: p.step }]);
  }
  waits.set(plan, by);
  return by;
}
function monitored(e: Evidence, here: string): unknown[] {
  if (!e.means) return [e.fit, e.again, e.holder === null, kindOf(e.unitClass)];
  const between = here.endsWith('bridge') ? e.between : [];
  return [
    e.fit,
    e.locked,
    e.look,
    e.look !== null && isOne(e),
    e.line,
    e.residual,
    e.bus,
    e.again,
    e.confirmed,
    e.holder === null,
    e.stated,
    e.secondFeed,
    e.neutral,
    e.three,
    between,
    kindOf(e.unitClass),
  ];
}

/** What was found in this round and a step further down sorts by. */
export function sortedAhead(plan: Plan, at: Place | undefined, passed: readonly Place[], only?: string): string[] {
  const round = at && !at.gate ? at.round : (passed.at(-1)?.round ?? 1);
  const order = at && !at.gate ? at.order : (passed.at(-1)?.order ?? 0);
  const own = passed.filter((p) => p.step.verb === 'verdict' && p.round === round);
  const groups = sortsOf(plan).flatMap((p) =>
    p.round === round && p.order > order && (only === undefined || p.id === only)
      ? Object.entries(p.among).flatMap(([g, ids]) => (ids.some((id) => own.some((v) => isSought(id, v))) ? g : []))
      : [],
  );
  return [...new Set(groups)].sort();
}
/** Names of facts of the job that a place further down in this round still reads; the others change nothing any more. */
function readAhead(plan: Plan, at: Place | undefined, passed: readonly Place[]): ReadonlySet<string> {
  const last = passed.at(-1);
  const [round, order] = at && !at.gate ? [at.round, at.order] : [last?.round ?? 1, last?.order ?? 0];
  const known = reading.get(plan) ?? new Map<string, ReadonlySet<string>>();
  reading.set(plan, known);
  const key = `${round} ${order}`;
  const before = known.get(key);
  if (before) return before;
  const names = new Set<string>();
  for (const p of plan.places.values()) {
    if (!p.gate && (p.round !== round || p.order < order)) continue;
    for (const ref of readBy(p)) if (ref.startsWith('@')) for (const name of namesIn(ref)) names.add(name);
    if ('parts' in p.step && !p.gate)
      for (const part of Object.values(p.step.parts)) if (part.as !== undefined) names.add(jobName(part.as, p));
  }
  known.set(key, names);
  return names;
}
/** What a place reads; of what a wait is counted from, only the minute counts, which is no part of a state. */
const readBy = ({ step, refs }: Place): string[] =>
  Object.entries(refs).flatMap(([of, all]) =>
    step.verb === 'judge' && step.judgement === 'minutes-since' && step.of.off === of ? [] : all,
  );
/** How many tabs a terminal has is looked at on the page that counts them; after it, that they were counted. */
const counted = (page: string, name: string, { kind }: Value): string | null =>
  /(^|:)tabs~\d+$/.test(name) && !page.includes('/terminals/') ? kind : null;
/** How fast it trips decides on its own page alone; behind it, whether a fuse opened or a breaker. */
const opened = (name: string, value: Value): string =>
  /(^|:)trip~\d+$/.test(name) ? `${valueKey(value) === 'fuse'}` : valueKey(value);

/**
 * Where only the judge of which motors were measured still reads what was seen, that it points at one of them is all that
 * tells two states apart. Null where something else reads it as well.
 */
function pointed(
  plan: Plan,
  at: Place | undefined,
  passed: readonly Place[],
  name: string,
  seen: Value,
): string | null {
  if (!/(^|:)observation~\d+$/.test(name)) return null;
  const last = passed.at(-1);
  const [round, order] = at && !at.gate ? [at.round, at.order] : [last?.round ?? 1, last?.order ?? 0];
  const by = onlyMotors.get(plan) ?? new Map<string, boolean>();
  onlyMotors.set(plan, by);
  const key = `${name} ${round} ${order}`;
  const known = by.get(key);
  const only =
    known ??
    [...plan.places.values()].every(
      (p) =>
        (!p.gate && (p.round !== round || p.order < order)) ||
        !readBy(p).some((ref) => ref.startsWith('@') && namesIn(ref).includes(name)) ||
        (p.step.verb === 'judge' && p.step.judgement === 'motors'),
    );
  by.set(key, only);
  return only ? motors.run({ seen: { choice: seen } }, {}, NOBODY).outcome : null;
}
/** Who measures with what, which this judge doesn't look at. */
const NOBODY = { settings: DEFAULT_SETTINGS, meter: ASSUMED_METER, truck: null, equipment: null };
const onlyMotors = new WeakMap<Plan, Map<string, boolean>>();
const reading = new WeakMap<Plan, Map<string, ReadonlySet<string>>>();
/** `@name`, or `@+part:name+part:name`. */
const namesIn = (ref: string): string[] =>
  ref.startsWith('@+')
    ? ref
        .slice(2)
        .split('+')
        .map((one) => one.split(':')[1] ?? '')
    : [ref.slice(1)];

interface Sorting {
  readonly id: string;
  readonly round: number;
  readonly order: number;
  readonly among: Readonly<Record<string, readonly string[]>>;
}
const sorts = new WeakMap<Plan, Sorting[]>();
export function sortsOf(plan: Plan): Sorting[] {
  const known = sorts.get(plan);
  if (known) return known;
  const all = [...plan.places.values()].flatMap(({ id, round, order, step }) =>
    step.verb === 'found' ? [{ id, round, order, among: step.among }] : [],
  );
  sorts.set(plan, all);
  return all;
}

/** All tries of a page are one page. A walk asks it of the same few thousand places at every state. */
function pageOf(id: string): string {
  const known = pages.get(id) ?? folderOf(id).replace(/(\/[^/]*)~\d+\/$/, '$1/');
  pages.set(id, known);
  return known;
}
const pages = new Map<string, string>();
type Kept = Parts[string];
/** A note or a photo is shown again and decides nothing. */
const isWords = ({ kind }: Kept): boolean => kind === 'text' || kind === 'photo';
export const valueKey = (v: Kept | undefined): string =>
  v === undefined
    ? ''
    : v.kind === 'choice'
      ? v.chosen.join('+')
      : v.kind === 'label'
        ? `${v.label.herm}+${v.label.fan ?? ''}`
        : v.kind === 'figure' && (v.unit === 'count' || v.unit === 'A')
          ? v.value
          : v.kind;

/** Of a gate's answer, what other questions or judges look at. Figures count by what they prove, which the monitor holds. */
function gateKey(parts: Parts): string {
  return Object.entries(parts)
    .flatMap(([k, v]) => {
      if (k === 'count' && v.kind === 'figure') return [`${v.value} ${showsOneSection(parts)}`];
      return v.kind === 'choice' && !['means', 'condition', 'terminals'].includes(k) ? [v.chosen.join('+')] : [];
    })
    .join(' ');
}
