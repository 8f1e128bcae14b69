/** What a place is given, whether its fact is known, and what its judgement says. Pure reads of Memory. */
import { Decimal } from 'decimal.js';
import { givenAt, heardAt } from './facts.ts';
import { jobName, type Place, type Plan } from './flatten.ts';
import { judgements } from './judgements/index.ts';
import type { Judged, Judgement } from './judgements/judgement.ts';
import { showsOneSection } from './judgements/read.ts';
import { ASSUMED_METER, type JobFact, type Memory } from './memory.ts';
import type { Conclusion, Finding, Meter, Parts, Recalled, Value } from './schema.ts';
import type { AskStep, FoundStep, JudgeStep, PartSpec, Shown, When } from './vocabulary.ts';

/** The answer behind a reference of a place: the first of its places or `@name` facts that has one. */
const partsAt = (place: Place, memory: Memory, ref: string): Parts | undefined => factAt(place, memory, ref)?.parts;

/** What was noted or photographed earlier and is shown again here. */
export const recalled = (place: Place, step: AskStep, memory: Memory): Recalled[] =>
  Object.entries(step.recalls ?? {}).flatMap(([ask, ref]) => {
    const fact = factAt(place, memory, ref);
    return Object.values(fact?.parts ?? {}).flatMap((value) => (fact ? [{ ask, seq: fact.seq, value }] : []));
  });

/** `source` is the object that stays the same while the answer does. */
interface Found {
  readonly seq: number;
  readonly by: string;
  readonly parts: Parts;
  readonly source: object;
  /** When it was answered; null for what is put together from facts of the job. */
  readonly at: string | null;
  /** When the server heard of it. */
  readonly heard?: string;
}
/** A fact of the whole job as a place knows it: in a round whose new part went in, as it stood then. */
export const jobFactAt = (place: Place, memory: Memory, name: string): JobFact | undefined =>
  (place.gate ? undefined : memory.fitted[place.round]?.[name]) ?? memory.job[name];

function factAt(place: Place, memory: Memory, of: string): Found | undefined {
  for (const ref of place.refs[of] ?? []) {
    if (ref.startsWith('@+')) {
      const found = together(place, memory, ref);
      if (found) return found;
    } else if (ref.startsWith('@')) {
      const fact = jobFactAt(place, memory, nameIn(ref));
      if (fact) return { seq: fact.seq, by: fact.by, parts: { [fact.part]: fact.value }, source: fact.value, at: null };
    } else {
      const fact = memory.facts[ref];
      if (fact)
        return {
          seq: fact.amended ?? fact.seq,
          by: fact.by,
          parts: fact.body.parts,
          source: fact.body.parts,
          at: givenAt(fact),
          heard: heardAt(fact),
        };
    }
  }
  return undefined;
}

/** The name in `@name`: one string for all who ask, which is found faster than one that is cut anew. */
function nameIn(ref: string): string {
  const known = names.get(ref);
  if (known !== undefined) return known;
  names.set(ref, ref.slice(1));
  return ref.slice(1);
}
const names = new Map<string, string>();

/** Parts of one question from facts of the job; the same object as long as the facts are the same. */
const sets = new WeakMap<object, { readonly values: readonly Value[]; readonly parts: Parts }[]>();
function together(place: Place, memory: Memory, ref: string): Found | undefined {
  const named = ref
    .slice(2)
    .split('+')
    .map((one) => one.split(':'));
  const known = named.flatMap(([key = '', name = '']) => {
    const fact = jobFactAt(place, memory, name);
    return fact ? [{ key, fact }] : [];
  });
  const [first] = known;
  if (!first) return undefined;
  const values = known.map(({ fact }) => fact.value);
  const before = sets.get(first.fact.value) ?? [];
  const same = before.find((set) => set.values.length === values.length && set.values.every((v, i) => v === values[i]));
  const parts = same?.parts ?? Object.fromEntries(known.map(({ key, fact }) => [key, fact.value]));
  if (!same) sets.set(first.fact.value, [...before, { values, parts }]);
  const seq = Math.max(...known.map(({ fact }) => fact.seq));
  return { seq, by: first.fact.by, parts, source: parts, at: null };
}

export const isTaken = (v: Value | undefined): v is Value => v !== undefined && v.kind !== 'untaken';

/** Whether a part is asked, given the other parts of the same answer. */
export function isAsked(place: Place, part: PartSpec, memory: Memory, answer: Parts): boolean {
  const when = part.when as When<string> | undefined;
  if (!when) return true;
  if ('again' in when) return memory.isolations[place.cabinet]?.again ?? false;
  if (!('fact' in when)) return chosen(answer[when.part]).some((c) => when.is.includes(c));
  const value = partsAt(place, memory, when.fact)?.[when.part];
  if ('above' in when) {
    if (value?.kind !== 'figure') return false;
    const size = new Decimal(value.value).abs();
    return size.gt(when.above.value) && (!when.below || size.lt(when.below.value));
  }
  if ('unless' in when) return !showsOneSection(partsAt(place, memory, when.fact));
  const options = chosen(value);
  if (when.is) return options.some((c) => when.is?.includes(c));
  // Where nothing was said, it is asked.
  return !options.some((c) => when.not?.includes(c));
}
/** A part as it is asked here: what an earlier answer has may be left out. */
export function asAsked(place: Place, key: string, part: PartSpec, memory: Memory): PartSpec {
  if (part.unless === undefined || !isTaken(partsAt(place, memory, part.unless)?.[key])) return part;
  return { ...part, optional: true };
}
const chosen = (v: Value | undefined): readonly string[] => (v?.kind === 'choice' ? v.chosen : []);

/** A question is passed over once it was answered, or where each of its parts is known for the whole job. */
export function isKnown(place: Place, memory: Memory): boolean {
  const { step } = place;
  switch (step.verb) {
    case 'judge':
    case 'found':
    case 'verdict':
      return true;
    case 'approval':
      return memory.approvals.includes(place.cabinet);
    default:
      return memory.facts[place.id] !== undefined || knownByJob(place, step, memory);
  }
}
/** Whether the verdict on the record was drawn from the answers as they stand. */
export function isConcluded(place: Place, memory: Memory): boolean {
  const held = memory.concluded[place.id];
  return held !== undefined && sameSeqs(held.body.evidence, evidenceOf(place, memory));
}
const sameSeqs = (a: readonly number[], b: readonly number[]): boolean =>
  a.length === b.length && a.every((x, i) => x === b[i]);
const knownByJob = (place: Place, step: AskStep, memory: Memory): boolean =>
  Object.values(step.parts).every(
    (p) => p.as !== undefined && !p.anew && isTaken(jobFactAt(place, memory, jobName(p.as, place))?.value),
  );

/** seqs of the answers a verdict rests on, ascending, without those that were not given. */
export function evidenceOf(place: Place, memory: Memory): number[] {
  if (place.step.verb !== 'verdict') return [];
  const seqs = place.step.evidence.flatMap((r) => factAt(place, memory, r)?.seq ?? []);
  return [...new Set(seqs)].sort((a, b) => a - b);
}

type AnyJudgement = Judgement<string, string, string>;
const registry = judgements as unknown as Readonly<Record<string, AnyJudgement>>;
export function judgementOf(id: string): AnyJudgement {
  const found = registry[id];
  if (!found) throw new Error(`no judgement is called ${id}`);
  return found;
}

/** What a judge place says of the facts as they stand. */
export function judged(place: Place, memory: Memory): Judged<string> {
  if (place.step.verb !== 'judge') throw new Error(`${place.id} is no judge`);
  // The machine, the way told in plain code and the verdicts ask the same of one memory in one turn.
  const said = lastSaid.memory === memory ? lastSaid.by : new Map<Place, Judged<string>>();
  if (lastSaid.memory !== memory) lastSaid = { memory, by: said };
  const known = said.get(place);
  if (known) return known;
  const result = compute(place.step, place, memory);
  said.set(place, result);
  return result;
}
let lastSaid: { readonly memory: Memory | null; readonly by: Map<Place, Judged<string>> } = {
  memory: null,
  by: new Map(),
};
export const shownFindings = (shown: Shown, place: Place, memory: Memory): readonly Finding[] =>
  compute(shown, place, memory).findings;

/** A judgement as a flow names it: what it reads and against which limits. */
type Asked = Pick<JudgeStep, 'judgement' | 'of' | 'limits'>;
interface Run {
  readonly sources: readonly (object | null)[];
  readonly beside: string | null;
  readonly result: Judged<string>;
}
/** From when a wait is counted. */
const BEGINS: readonly string[] = ['since'];
/** What stands under a name of the round, the cabinet or the job, dated by the answer that brought it. */
const LAST: readonly string[] = ['ran', 'off'];
const saidAt = ({ facts }: Memory, found: Found | undefined): string | null => {
  const fact = Object.values(facts).find(
    (f) => f !== undefined && found !== undefined && (f.amended ?? f.seq) === found.seq,
  );
  return fact ? givenAt(fact) : null;
};
/** Whose meter counts: that of whoever took what is judged. */
const METERED: readonly string[] = ['readings', 'part'];
/**
 * Runs by the flow's step, and within it by the first answer it read: going over the page again asks the same of the same
 * answers, and answers never change once they are kept.
 */
interface Asking {
  readonly reads: readonly (readonly [name: string, ref: string | null])[];
  readonly runs: WeakMap<object, Run[]>;
}
const asked = new WeakMap<Asked, Asking>();
function askedOf(what: Asked): Asking {
  const known = asked.get(what);
  if (known) return known;
  const asking = { reads: Object.entries(what.of), runs: new WeakMap<object, Run[]>() };
  asked.set(what, asking);
  return asking;
}
/** A wait is no longer than either clock shows: a device that is behind makes its beginning no older. */
const dated = (name: string, found: Found | undefined, memory: Memory): string | null | undefined =>
  BEGINS.includes(name) ? found?.heard : (found?.at ?? (LAST.includes(name) ? saidAt(memory, found) : null));
/** When each answer was given that a judge takes, by the name it takes it by; none that is not there yet. */
export const datesFor = (
  place: Place & { readonly step: JudgeStep },
  memory: Memory,
): Readonly<Record<string, string>> =>
  Object.fromEntries(
    Object.entries(place.step.of).flatMap(([name, ref]) => {
      const found = ref === null ? undefined : factAt(place, memory, ref);
      const when = dated(name, found, memory);
      return when ? [[name, when]] : [];
    }),
  );
const NONE = {};

function compute(what: Asked, place: Place, memory: Memory): Judged<string> {
  const { settings, equipment, alarm } = memory;
  let { truck } = memory;
  let meter: Meter = ASSUMED_METER;
  const { reads, runs } = askedOf(what);
  const read: (Found | undefined)[] = [];
  const sources: (object | null)[] = [settings, equipment];
  for (const [name, ref] of reads) {
    const found = ref === null ? undefined : factAt(place, memory, ref);
    read.push(found);
    sources.push(found?.source ?? null);
    if (name === 'part' && found) truck = memory.trucks.findLast((t) => t.seq < found.seq)?.truck ?? null;
    if (METERED.includes(name) && found) meter = memory.meters[found.by] ?? ASSUMED_METER;
  }
  sources.push(alarm, truck, meter);
  const { beside } = place;
  const first = sources.find((x, i) => i > 1 && i < 2 + reads.length && x !== null) ?? NONE;
  const known = runs.get(first) ?? [];
  const done = known.find((run) => run.beside === beside && run.sources.every((x, i) => x === sources[i]));
  if (done) return done.result;
  const given: Record<string, Parts | undefined> = {};
  const at: Record<string, string> = {};
  for (const [i, [name]] of reads.entries()) {
    given[name] = read[i]?.parts;
    const when = dated(name, read[i], memory);
    if (when) at[name] = when;
  }
  const result = judgementOf(what.judgement).run(given, what.limits, {
    ...{ settings, meter, truck, equipment, at },
    ...(beside === null ? {} : { cabinet: beside }),
    ...(alarm ? { alarm: alarm.hazard } : {}),
  });
  runs.set(first, [...known.slice(-15), { sources, beside, result }]);
  return result;
}

/**
 * The first group of a sorting step that has a verdict among those passed in its round, or `none`. What was found on the
 * way decides, not what the record once said: a verdict whose evidence changed is passed no longer.
 */
export function foundAt(place: Place, passed: readonly Place[]): string {
  if (place.step.verb !== 'found') throw new Error(`${place.id} sorts nothing`);
  const own = passed.filter((p) => p.round === place.round);
  const groups = Object.entries((place.step as FoundStep).among);
  return groups.find(([, ids]) => ids.some((id) => own.some((p) => isSought(id, p))))?.[0] ?? 'none';
}

/** Whether a verdict's place is what a sorting step looks for: by its id, or by the includes it stands in and its id. */
export function isSought(sought: string, { id, step }: Place): boolean {
  if (step.verb !== 'verdict') return false;
  if (!sought.endsWith(step.verdict)) return false;
  const at = sought.lastIndexOf('/') + 1;
  if (sought.length - at !== step.verdict.length) return false;
  return at === 0 || `/${id.replace(/~\d+/g, '')}`.includes(`/${sought.slice(0, at)}`);
}

/** The verdict of a verdict place, computed from the facts as they stand. Judges off the way passed have no say in it. */
export function conclude(plan: Plan, place: Place, memory: Memory, passed: readonly Place[]): Conclusion {
  const { step } = place;
  if (step.verb !== 'verdict') throw new Error(`${place.id} is no verdict`);
  const findings = step.judged.flatMap((r) => {
    const at = plan.places.get(place.refs[r]?.[0] ?? '');
    return at && passed.includes(at) ? [...judged(at, memory).findings] : [];
  });
  return {
    place: place.id,
    verdict: step.verdict,
    title: step.title,
    says: [...step.says],
    next: [...step.next],
    who: step.who,
    findings,
    evidence: evidenceOf(place, memory),
  };
}
