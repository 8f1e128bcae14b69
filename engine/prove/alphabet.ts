/** What a person may send at a state: every choice, both sides of every limit, and what may come at any time. */
import { isHalt } from '../compile.ts';
import type { Place, Plan } from '../flatten.ts';
import { isAsked, judgementOf } from '../known.ts';
import { labelWords, prompt } from '../prompt.ts';
import { memoryOf, placeIdOf, planOf } from '../replay.ts';
import type { Given, GivenParts, Parts, Reply, Value } from '../schema.ts';
import type { AskStep, PartSpec } from '../vocabulary.ts';
import { instant, OTHER, SENIOR, type State, TECH, type Turn } from './bench.ts';

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
  const tap = (parts: GivenParts): Turn => ({
    by: TECH,
    after: 1,
    label: `tech: ${Object.entries(parts)
      .map(([k, v]) => `${k} ${String(v)}`)
      .join(', ')}`,
    reply: { kind: 'answer', client: client(), seq, parts },
  });
  if (isHalt(here)) return haltTurns(here, seq, tap);
  const place = plan.places.get(here);
  if (!place) return [];
  if (place.step.verb === 'approval') return [say('approve seen on photo', SENIOR)];
  if (!('parts' in place.step)) return [];
  const skip = say('skip no tool for it');
  return [...answerSets(plan, place, (spec, answer) => isAsked(place, spec, memory, answer)).map(tap), skip];
}

function haltTurns(here: string, seq: number, tap: (p: GivenParts) => Turn): Turn[] {
  switch (here) {
    case '!emergency':
      return [tap({ choice: 'seen' }), tap({ choice: 'not-here' }), say('release all clear, seen in person', SENIOR)];
    case '!hazard':
      return [tap({ choice: 'happening' }), tap({ choice: 'old-mark' })];
    case '!stopping':
      return [tap({ cover: 'on', lock: 'stays' }), tap({ cover: 'on', lock: 'off' })];
    case '!paused':
      return [say('go on')];
    case '!taking-over':
      return [say('take over', OTHER), say('hand over tech', SENIOR, seq)];
    default:
      return [say('approve seen on video', SENIOR)];
  }
}

/** What may come at any state, whoever writes it. */
export function interruptions(state: State): Turn[] {
  const memory = memoryOf(state.standing);
  const out = [
    say('I smell smoke'),
    say('power is back', OTHER),
    say('lock is off'),
    say('hand over other', SENIOR),
    say('stop'),
    say('senior'),
    say('ask what does it read', SENIOR),
    { ...say('where'), after: 31 },
    { ...say('note still here'), after: 31 },
  ];
  for (const [place, fact] of Object.entries(memory.facts)) {
    const gate = place.startsWith('dead:');
    const withdraw: Reply = { kind: 'withdraw', client: client(), of: fact.seq };
    if (gate || fact.seq === memory.since)
      out.push({ by: fact.by, after: 1, label: `${fact.by} takes back ${place}`, reply: withdraw });
    if (place.endsWith('/look') && fact.parts.count?.kind === 'figure') {
      const count = `${Number(fact.parts.count.value) + 1}`;
      if (Number(count) <= 2)
        out.push({
          by: fact.by,
          after: 1,
          label: `${fact.by} changes the count to ${count}`,
          reply: { kind: 'amend', client: client(), of: fact.seq, parts: { count } },
        });
    }
  }
  return out;
}

/** The way a sound technician answers, to get through what another walk has covered. */
export function plainAnswer(state: State): Turn | null {
  return answers(state)[0] ?? null;
}

type Asks = (spec: PartSpec, answer: Parts) => boolean;
const sets = new WeakMap<Place, GivenParts[]>();

/** All answers worth trying at a place: from the probes of the judges that read it, and one part changed at a time. */
function answerSets(plan: Plan, place: Place, asks: Asks): GivenParts[] {
  const all = sets.get(place) ?? [...varied(plan, place), ...probed(plan, place)];
  sets.set(place, all);
  const step = place.step as AskStep;
  const seen = new Set<string>();
  return all.flatMap((given) => {
    const out: Record<string, Given> = {};
    const answer: Record<string, Value> = {};
    for (const [key, spec] of Object.entries(step.parts)) {
      const value = given[key];
      if (!asks(spec, answer)) continue;
      if (value === undefined) {
        if (!spec.optional) return [];
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

function varied(plan: Plan, place: Place): GivenParts[] {
  const step = place.step as AskStep;
  const samples = Object.entries(step.parts).map(([key, spec]) => [key, samplesOf(plan, spec)] as const);
  const base = Object.fromEntries(samples.flatMap(([k, s]) => (s[0] === undefined ? [] : [[k, s[0]]])));
  return [base, ...samples.flatMap(([k, s]) => s.slice(1).map((v) => ({ ...base, [k]: v })))];
}

function samplesOf(plan: Plan, spec: PartSpec): Given[] {
  switch (spec.part) {
    case 'choose':
      return Object.keys(spec.options).map((id) => (spec.several ? [id] : id));
    case 'confirm':
    case 'act':
      return Object.keys(spec.options ?? {});
    case 'label':
      return [labelOf(plan)];
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
            } as const
          )[spec.quantity].map(String);
  }
}

/** One label throughout: that of the probes. */
function labelOf(plan: Plan): string {
  for (const p of plan.places.values()) {
    if (p.step.verb !== 'judge' || p.step.of.label !== '@label') continue;
    for (const probe of judgementOf(p.step.judgement).probe(p.step.limits)) {
      const print = probe.readings && probe.label?.print;
      if (print && print.kind === 'label') return labelWords(print.label);
    }
  }
  return '45+5 µF ±6 % 440 VAC';
}

/** Answers that the probes of a judge hold for the place whose facts it reads. */
function probed(plan: Plan, place: Place): GivenParts[] {
  const out: GivenParts[] = [];
  const keys = Object.keys((place.step as AskStep).parts);
  for (const judge of plan.places.values()) {
    if (judge.step.verb !== 'judge') continue;
    const { of, limits, judgement } = judge.step;
    const names = Object.keys(of).filter((n) => of[n] != null && (judge.refs[of[n] ?? ''] ?? []).includes(place.id));
    for (const name of names) {
      for (const probe of judgementOf(judgement).probe(limits)) {
        const parts = probe[name];
        if (!parts || !Object.keys(parts).every((k) => keys.includes(k))) continue;
        out.push(Object.fromEntries(Object.entries(parts).flatMap(([k, v]) => asGiven(k, v))));
      }
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
