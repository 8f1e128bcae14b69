/** What a place is given, whether its fact is known, and what its judgement says. Pure reads of Memory. */
import { Decimal } from 'decimal.js';
import { jobName, type Place, type Plan } from './flatten.ts';
import { judgements } from './judgements/index.ts';
import type { Force, Judged, Judgement } from './judgements/judgement.ts';
import { ASSUMED_METER, type Memory } from './memory.ts';
import type { Conclusion, Finding, Parts, Value } from './schema.ts';
import type { AskStep, PartSpec, Shown, When } from './vocabulary.ts';

/** The answer behind a resolved reference: the first of its places or `@name` facts that has one. */
export function partsAt(memory: Memory, refs: readonly string[]): Parts | undefined {
  const found = factAt(memory, refs);
  return found?.parts;
}
/** seq of the entry an answer rests on, the last amendment counting. */
export const seqAt = (memory: Memory, refs: readonly string[]): number | undefined => factAt(memory, refs)?.seq;

function factAt(memory: Memory, refs: readonly string[]): { seq: number; by: string; parts: Parts } | undefined {
  for (const ref of refs) {
    if (ref.startsWith('@')) {
      const fact = memory.job[ref.slice(1)];
      if (fact) return { seq: fact.seq, by: fact.by, parts: { [fact.part]: fact.value } };
    } else {
      const fact = memory.facts[ref];
      if (fact) return { seq: fact.amended ?? fact.seq, by: fact.by, parts: fact.parts };
    }
  }
  return undefined;
}

export const isTaken = (v: Value | undefined): v is Value => v !== undefined && v.kind !== 'untaken';

/** Whether a part is asked, given the other parts of the same answer. */
export function isAsked(place: Place, part: PartSpec, memory: Memory, answer: Parts): boolean {
  const when = part.when as When<string> | undefined;
  if (!when) return true;
  if ('again' in when) return memory.isolations[place.cabinet]?.again ?? false;
  if (!('fact' in when)) return chosen(answer[when.part]).some((c) => when.is.includes(c));
  const value = partsAt(memory, place.refs[when.fact] ?? [])?.[when.part];
  if ('above' in when) {
    if (value?.kind !== 'figure') return false;
    const size = new Decimal(value.value).abs();
    return size.gt(when.above.value) && (!when.below || size.lt(when.below.value));
  }
  const options = chosen(value);
  if (when.is) return options.some((c) => when.is?.includes(c));
  return options.length > 0 && !options.some((c) => when.not?.includes(c));
}
const chosen = (v: Value | undefined): readonly string[] => (v?.kind === 'choice' ? v.chosen : []);

/** A question is passed over once it was answered, or where each of its parts is known for the whole job. */
export function isKnown(place: Place, memory: Memory): boolean {
  const { step } = place;
  switch (step.verb) {
    case 'judge':
      return true;
    case 'verdict': {
      const held = memory.concluded[place.id];
      return held !== undefined && sameSeqs(held.body.evidence, evidenceOf(place, memory));
    }
    case 'approval':
      return memory.approvals.includes(step.what);
    default:
      return memory.facts[place.id] !== undefined || knownByJob(place, step, memory);
  }
}
const sameSeqs = (a: readonly number[], b: readonly number[]): boolean =>
  a.length === b.length && a.every((x, i) => x === b[i]);
const knownByJob = (place: Place, step: AskStep, memory: Memory): boolean =>
  Object.values(step.parts).every((p) => p.as !== undefined && isTaken(memory.job[jobName(p.as, place.round)]?.value));

/** seqs of the answers a verdict rests on, ascending, without those that were not given. */
export function evidenceOf(place: Place, memory: Memory): number[] {
  if (place.step.verb !== 'verdict') return [];
  const seqs = place.step.evidence.flatMap((r) => seqAt(memory, place.refs[r] ?? []) ?? []);
  return [...new Set(seqs)].sort((a, b) => a - b);
}

type AnyJudgement = Judgement<string, string, string>;
const registry = judgements as unknown as Readonly<Record<string, AnyJudgement>>;
export function judgementOf(id: string): AnyJudgement {
  const found = registry[id];
  if (!found) throw new Error(`no judgement is called ${id}`);
  return found;
}

const runs = new WeakMap<Memory, Map<string, Judged<string>>>();
/** What a judge place says of the facts as they stand. Remembered per Memory, which never changes. */
export function judged(place: Place, memory: Memory): Judged<string> {
  if (place.step.verb !== 'judge') throw new Error(`${place.id} is no judge`);
  const done = runs.get(memory) ?? new Map<string, Judged<string>>();
  runs.set(memory, done);
  let result = done.get(place.id);
  if (!result) {
    result = compute(place.step, place, memory);
    done.set(place.id, result);
  }
  return result;
}
export const shownFindings = (shown: Shown, place: Place, memory: Memory): readonly Finding[] =>
  compute(shown, place, memory).findings;

function compute(
  what: {
    judgement: string;
    of: Readonly<Record<string, string | null>>;
    limits: Readonly<Record<string, { value: string; unit: string; source: string }>>;
  },
  place: Place,
  memory: Memory,
): Judged<string> {
  const given: Record<string, Parts | undefined> = {};
  let taker: string | undefined;
  for (const [name, ref] of Object.entries(what.of)) {
    const resolved = ref === null ? [] : (place.refs[ref] ?? []);
    given[name] = partsAt(memory, resolved);
    if (name === 'readings') taker = factAt(memory, resolved)?.by;
  }
  const force: Force = {
    settings: memory.settings,
    meter: (taker === undefined ? undefined : memory.meters[taker]) ?? ASSUMED_METER,
  };
  return judgementOf(what.judgement).run(given, what.limits, force);
}

/** The verdict of a verdict place, computed from the facts as they stand. */
export function conclude(plan: Plan, place: Place, memory: Memory): Conclusion {
  const { step } = place;
  if (step.verb !== 'verdict') throw new Error(`${place.id} is no verdict`);
  const findings = step.judged.flatMap((r) => {
    const at = plan.places.get(place.refs[r]?.[0] ?? '');
    return at ? [...judged(at, memory).findings] : [];
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
