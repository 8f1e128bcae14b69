/** What a person may send at a state: every choice, both sides of every limit, and what may come at any time. */
import { isHalt } from '../compile.ts';
import type { Place, Plan } from '../flatten.ts';
import { isAsked, judgementOf } from '../known.ts';
import { labelWords, prompt } from '../prompt.ts';
import { memoryOf, placeIdOf, planOf } from '../replay.ts';
import type { Given, GivenParts, Parts, Reply, Value } from '../schema.ts';
import type { AskStep, JudgeStep, PartSpec } from '../vocabulary.ts';
import { instant, OTHER, SENIOR, type State, TECH, type Turn } from './bench.ts';

/** More minutes than any page asks to be waited for. */
const WAITED = 6;
let turns = 0;
const client = (): string => `w${++turns}`;
const say = (text: string, by = TECH, seq = 0, after = 1): Turn => ({
  by,
  after,
  label: `${by}: ${text}`,
  reply: { kind: 'text', client: client(), seq, text },
});

/** Answers to the question that stands. */
export function answers(state: State): Turn[] {
  const [plan, here, memory] = [planOf(state.standing), placeIdOf(state.standing), memoryOf(state.standing)];
  const seq = prompt(state.standing, instant(state.minute + 1)).seq;
  const by = memory.handover?.to ?? Object.values(memory.isolations)[0]?.holder ?? TECH;
  const tap = (parts: GivenParts): Turn => ({
    by: whoAnswers(),
    after: 1,
    label: `${whoAnswers()}: ${Object.entries(parts)
      .map(([k, v]) => `${k} ${String(v)}`)
      .join(', ')}`,
    reply: { kind: 'answer', client: client(), seq, parts },
  });
  // Refrigerant takes a certified person; the walk's senior is one.
  const whoAnswers = (): string => {
    const step = plan.places.get(here)?.step;
    return step && 'circuit' in step && step.circuit === 'refrigerant' ? SENIOR : by;
  };
  if (isHalt(here)) return here === '!held' ? [say('approve seen on video', SENIOR)] : [];
  const place = plan.places.get(here);
  if (!place) return [];
  if (place.step.verb === 'approval') return [say('approve seen on photo', SENIOR)];
  if (!('parts' in place.step)) return [];
  const skip = say('skip no tool for it', by, seq);
  const sets = answerSets(plan, place, (spec, answer) => isAsked(place, spec, memory, answer));
  const barred =
    whoAnswers() === by
      ? []
      : sets.slice(0, 1).map((parts) => ({ ...tap(parts), by, label: `${by}, not certified: a line` }));
  // Who says that it has been so for longer, or that it was waited for, may be right: the walk's next answer comes a minute
  // after the last.
  const { waits } = place.step as AskStep;
  const later = sets
    .filter(({ choice, ok }) => choice === 'earlier' || (ok === 'yes' && (waits || isWait(plan, here))))
    .map((parts) => ({ ...tap(parts), after: WAITED, label: `${by}: so for ${WAITED} minutes` }));
  // Said a minute later it is refused where the step counts the wait itself: what leads on comes first.
  const taps = sets.map(tap);
  return [...(waits ? [...later, ...taps] : [...taps, ...later]), ...barred, skip];
}

/**
 * What may come at any state, whoever writes it, each with what brings the job out of its halt again: every step of such
 * a detour is checked, and the walk goes on from where it ends.
 */
export function detours(state: State): Turn[][] {
  const memory = memoryOf(state.standing);
  const holder = Object.values(memory.isolations)[0]?.holder ?? TECH;
  const other = holder === TECH ? OTHER : TECH;
  const tap = (parts: GivenParts, by = holder): Turn => ({
    by,
    after: 1,
    label: `${by}: ${Object.values(parts).join(', ')}`,
    reply: { kind: 'answer', client: client(), seq: -1, parts },
  });
  const out: Turn[][] = [
    [say('I smell smoke', holder), tap({ choice: 'seen' }), say('release all clear, seen in person', SENIOR)],
    [say('burnt tab', holder), tap({ choice: 'old-mark' })],
    [say('burnt tab', holder), tap({ choice: 'happening' }), tap({ choice: 'not-here' })],
    [say('power is back', other)],
    [say('lock is off', holder)],
    [say(`hand over ${other}`, SENIOR), say('take over', other)],
    [say('stop', holder), tap({ cover: 'on', lock: 'stays' }), say('go on', holder)],
    [say('stop', holder), tap({ cover: 'on', lock: 'off' }), say('go on', holder)],
    [say('senior', holder)],
    [say('ask what does it read', SENIOR), say('reply the label', holder)],
    [{ ...say('where', holder), after: 31 }],
    [{ ...say('note still here', other), after: 31 }],
  ];
  for (const [place, fact] of Object.entries(memory.facts)) {
    const gate = place.startsWith('dead:');
    const withdraw: Reply = { kind: 'withdraw', client: client(), of: fact.seq };
    const who = gate ? holder : fact.by;
    if (gate || fact.seq === memory.since)
      out.push([{ by: who, after: 1, label: `${who} takes back ${place}`, reply: withdraw }]);
    if (place.endsWith('/look') && fact.body.parts.count?.kind === 'figure') {
      const count = `${Number(fact.body.parts.count.value) + 1}`;
      const reply: Reply = { kind: 'amend', client: client(), of: fact.seq, parts: { count } };
      if (Number(count) <= 2) out.push([{ by: who, after: 1, label: `${who} changes the count to ${count}`, reply }]);
    }
  }
  return out;
}

/** Ways of a sound technician through make-dead, told apart by what they see under the cover. */
export const LOOKS = 6;
export function plainAnswer(state: State, look: number): Turn | null {
  const all = answers(state);
  const here = placeIdOf(state.standing);
  const unit = memoryOf(state.standing).job.class?.value;
  const three = unit?.kind === 'choice' && unit.chosen.includes('three-phase');
  if (here.endsWith('/means') && three)
    return all.find((t) => t.reply.kind === 'answer' && String(t.reply.parts.supply) === 'three') ?? null;
  if (!here.endsWith('/look')) return all[0] ?? null;
  const is = (p: GivenParts, condition: string, count: string): boolean =>
    String(p.condition) === condition && p.count === count;
  const [dual, single] = labelsOf(planOf(state.standing));
  const wanted = [
    (p: GivenParts): boolean => is(p, 'clean', '1') && p.print === dual,
    (p: GivenParts): boolean => is(p, 'clean', '1') && p.print === undefined,
    (p: GivenParts): boolean => is(p, 'bulged', '1'),
    (p: GivenParts): boolean => is(p, 'clean', '1') && p.print === single,
    (p: GivenParts): boolean => is(p, 'clean', '2'),
  ][look];
  // A bulge where two capacitors are: two things changed at once, which no single answer of the alphabet has.
  const bulged =
    look === 5 ? all.find((t) => t.reply.kind === 'answer' && is(t.reply.parts, 'bulged', '1')) : undefined;
  if (bulged?.reply.kind === 'answer')
    return { ...bulged, reply: { ...bulged.reply, parts: { ...bulged.reply.parts, count: '2' } } };
  return all.find((t) => t.reply.kind === 'answer' && (wanted?.(t.reply.parts) ?? true)) ?? all[0] ?? null;
}

const hasFields = (step: Place['step']): boolean =>
  'parts' in step && !step.by && Object.values(step.parts).every((p: PartSpec) => p.part === 'field');

type Asks = (spec: PartSpec, answer: Parts) => boolean;
const sets = new WeakMap<Place, GivenParts[]>();

/** All answers worth trying at a place: from the probes of the judges that read it, and one part changed at a time. */
function answerSets(plan: Plan, place: Place, asks: Asks): GivenParts[] {
  const all = samplesAt(plan, place);
  const step = place.step as AskStep;
  const seen = new Set<string>();
  const sound: Record<string, Given> = {};
  for (const given of all) for (const [key, value] of Object.entries(given)) sound[key] ??= value;
  return all.flatMap((given) => {
    const out: Record<string, Given> = {};
    const answer: Record<string, Value> = {};
    for (const [key, spec] of Object.entries(step.parts)) {
      const value = given[key];
      if (!asks(spec, answer)) continue;
      if (value === undefined) {
        // Several judges read one line, each its own fields: what one's probe doesn't name reads well. A gate's line has
        // its readings from one probe, and what is ticked beside them from nobody.
        const usual = spec.optional || (place.gate && spec.part === 'field') ? undefined : sound[key];
        if (usual === undefined) {
          if (!spec.optional) return [];
          continue;
        }
        out[key] = usual;
        continue;
      }
      out[key] = value;
      if (Array.isArray(value)) answer[key] = { kind: 'choice', chosen: value };
      else if ('options' in spec) answer[key] = { kind: 'choice', chosen: [value] };
    }
    const print = JSON.stringify(out);
    if (seen.has(print)) return [];
    seen.add(print);
    return [out];
  });
}

/** What is worth trying at a place, whatever of it is asked there now. */
export function samplesAt(plan: Plan, place: Place): readonly GivenParts[] {
  const known = sets.get(place) ?? everySet(plan, place);
  sets.set(place, known);
  return known;
}

/** The first one is what a sound technician sends: a probe's good line, or the first option of each part. */
function everySet(plan: Plan, place: Place): GivenParts[] {
  const both = [probed(plan, place), varied(plan, place)];
  return (place.step.verb === 'measure' || hasFields(place.step) ? both : both.reverse()).flat();
}

function varied(plan: Plan, place: Place): GivenParts[] {
  const step = place.step as AskStep;
  // Where the answer decides the way, every option; beside it the first two and the last stand for the rest.
  const samples = Object.entries(step.parts).map(([key, spec]) => {
    const all = samplesOf(plan, spec);
    return [key, key === step.by || all.length < 4 ? all : [...all.slice(0, 2), ...all.slice(-1)]] as const;
  });
  const base = Object.fromEntries(samples.flatMap(([k, s]) => (s[0] === undefined ? [] : [[k, s[0]]])));
  const bare = Object.fromEntries(Object.entries(base).filter(([k]) => !step.parts[k]?.optional));
  // A gate has to stand whatever else is left out.
  const without = place.gate ? Object.keys(base).flatMap((k) => (step.parts[k]?.optional ? [omit(base, k)] : [])) : [];
  const changed = samples.flatMap(([k, s]) => s.slice(1).map((v) => ({ ...base, [k]: v })));
  return [base, ...changed, ...without, ...(Object.keys(bare).length < Object.keys(base).length ? [bare] : [])];
}

const omit = (of: GivenParts, key: string): GivenParts =>
  Object.fromEntries(Object.entries(of).filter(([k]) => k !== key));

function samplesOf(plan: Plan, spec: PartSpec): Given[] {
  switch (spec.part) {
    case 'choose':
      return Object.keys(spec.options).map((id) => (spec.several ? [id] : id));
    case 'confirm':
    case 'act':
      return Object.keys(spec.options ?? {});
    case 'label':
      return spec.start ? [START_LABEL] : labelsOf(plan);
    case 'note':
      return ['seen'];
    case 'photo':
      return [];
    case 'field':
      return spec.quantity === 'count'
        ? ['1', '0', '2']
        : (
            {
              voltage: ['120'],
              current: ['9'],
              capacitance: [],
              resistance: [],
              insulation: ['OL'],
              percent: [],
              temperature: ['75'],
              difference: ['19'],
              pressure: ['118'],
              humidity: ['50'],
              hours: ['1'],
            } as const
          )[spec.quantity].map(String);
  }
}

/** The range that the probes of start capacitors are about. */
const START_LABEL = '189-227 MFD 330 VAC';
/** Two labels throughout: that of the probes of both sections, and the same HERM alone. */
function labelsOf(plan: Plan): string[] {
  for (const p of plan.places.values()) {
    if (p.step.verb !== 'judge' || p.step.judgement !== 'section-values') continue;
    for (const probe of judgementOf('section-values').probe(p.step.limits)) {
      const print = probe.readings && probe.label?.print;
      if (print?.kind === 'label' && print.label.fan !== null)
        return [labelWords(print.label), labelWords({ ...print.label, fan: null })];
    }
  }
  return ['45+5 µF ±6 % 440 VAC', '45 µF ±6 % 440 VAC'];
}

/** Whether a wait is judged by what is answered here. */
function isWait(plan: Plan, id: string): boolean {
  const known =
    waits.get(plan) ??
    new Set(
      judgesIn(plan).flatMap(({ step, refs }) =>
        step.judgement === 'minutes-since' && step.of.waited ? (refs[step.of.waited] ?? []) : [],
      ),
    );
  waits.set(plan, known);
  return known.has(id);
}
const waits = new WeakMap<Plan, ReadonlySet<string>>();

const judges = new WeakMap<Plan, (Place & { readonly step: JudgeStep })[]>();
/** In the order of the pages; one that keeps quiet of what doesn't fit comes last, since another judges the same line. */
function judgesIn(plan: Plan): (Place & { readonly step: JudgeStep })[] {
  const known = judges.get(plan);
  if (known) return known;
  const all = [...plan.places.values()].flatMap((p) => (p.step.verb === 'judge' ? [{ ...p, step: p.step }] : []));
  const isLast = ({ step }: { step: JudgeStep }): number => Number(step.quiet?.includes('repeat') ?? false);
  all.sort((a, b) => isLast(a) - isLast(b));
  judges.set(plan, all);
  return all;
}
/** Answers that the probes of a judge hold for the place whose facts it reads. */
function probed(plan: Plan, place: Place): GivenParts[] {
  const out: GivenParts[] = [];
  const keys = Object.keys((place.step as AskStep).parts);
  for (const judge of judgesIn(plan)) {
    const { of, limits, judgement } = judge.step;
    const names = Object.keys(of).filter((n) => of[n] != null && (judge.refs[of[n] ?? ''] ?? []).includes(place.id));
    if (names.length === 0) continue;
    for (const probe of judgementOf(judgement).probe(limits)) {
      // A page with one section reads what the probe of two says of it; one line may answer several names at once.
      const own = names.flatMap((name) => Object.entries(probe[name] ?? {}).filter(([k]) => keys.includes(k)));
      if (own.length > 0) out.push(Object.fromEntries(own.flatMap(([k, v]) => asGiven(k, v))));
    }
  }
  return out;
}
function asGiven(key: string, v: Value): [string, Given][] {
  switch (v.kind) {
    case 'choice':
      return [[key, v.chosen.length === 1 ? (v.chosen[0] ?? '') : v.chosen]];
    case 'figure':
      return [[key, v.unit === 'count' ? v.value : `${v.value} ${v.unit}`]];
    case 'over':
      return [[key, 'OL']];
    case 'label':
      return [[key, labelWords(v.label)]];
    default:
      return [];
  }
}
