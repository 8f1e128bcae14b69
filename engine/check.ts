/**
 * What the types can't see of a manual: order, gates, limits with sources, words that name two options. Returns every
 * finding, so that an author mends them all at once; an empty list is a sound manual.
 */
import { flatten, type Place, type Plan } from './flatten.ts';
import { allEdges } from './graph.ts';
import { judgements } from './judgements/index.ts';
import type { Judgement, Limit } from './judgements/judgement.ts';
import { isSought } from './known.ts';
import type { AskStep, Manual, PartSpec } from './vocabulary.ts';

export interface Fault {
  readonly place: string;
  readonly what: string;
}

export function check(manual: Manual): Fault[] {
  const plan = flatten(manual);
  const places = [...plan.places.values()];
  return [
    ...places.flatMap((p) => [
      ...data(p),
      ...order(plan, p),
      ...gates(plan, p),
      ...afar(plan, p),
      ...judging(p),
      ...asking(p),
      ...concluding(p),
      ...sorting(plan, p),
    ]),
    ...reach(plan),
    ...leaving(plan),
  ];
}

const fault = (p: Place | string, what: string): Fault => ({ place: typeof p === 'string' ? p : p.id, what });

/** A page is plain data: nothing that JSON would lose. */
function data(p: Place): Fault[] {
  const lost = (v: unknown, path: string): string[] => {
    if (v === null || ['string', 'boolean', 'number'].includes(typeof v)) return [];
    if (typeof v !== 'object' || v === undefined)
      return [`${path} is ${v === undefined ? 'undefined' : `a ${typeof v}`}`];
    return Object.entries(v).flatMap(([k, x]) => lost(x, `${path}.${k}`));
  };
  return lost(p.step, p.name).map((w) => fault(p, w));
}

/** Ways lead down the page; up only from a question to the judge that takes its answer. */
function order(plan: Plan, p: Place): Fault[] {
  return allWays(p).flatMap((to) => {
    const target = plan.places.get(to);
    if (!target || target.order > p.order) return [];
    const names = [p.id, ...('parts' in p.step ? Object.values(p.step.parts).map((part) => `@${part.as}`) : [])];
    const takes =
      target.step.verb === 'judge' && Object.values(target.refs).some((r) => r.some((n) => names.includes(n)));
    return takes ? [] : [fault(p, `leads up the page to ${to}`)];
  });
}
const allWays = (p: Place): string[] => [
  ...Object.values(p.to),
  ...(p.next === null ? [] : [p.next]),
  ...(p.cant === null ? [] : [p.cant]),
];

/** Make-dead holds gates and nothing else; its "can't" never proves; nobody measures line volts as a gate elsewhere. */
function gates(plan: Plan, p: Place): Fault[] {
  const out: Fault[] = [];
  if (p.gate && p.class !== 'eyes' && p.class !== 'proving')
    out.push(fault(p, `a step of class ${p.class} inside make-dead`));
  if (!p.gate && p.class === 'proving') out.push(fault(p, 'proving outside make-dead'));
  if (p.gate && p.cant !== null) {
    const exit = plan.regions[p.cabinet]?.exits[p.cant];
    if (exit === undefined || exit === 'proved') out.push(fault(p, 'a gate’s "can’t" has to leave make-dead unproved'));
  }
  if (p.gate && 'parts' in p.step) {
    for (const [key, part] of Object.entries(p.step.parts)) {
      if (part.part === 'field' && part.over) out.push(fault(p, `${key}: a gate takes numbers only`));
      if (part.part === 'field' && (part.optional || part.unless !== undefined))
        out.push(fault(p, `${key}: a gate’s reading can’t be optional`));
    }
  }
  return out;
}

/** Without a cabinet there is no make-dead, so nobody may be led to a step that would need one. */
function afar(plan: Plan, p: Place): Fault[] {
  if (p.class === 'eyes' || p.gate || plan.regions[p.cabinet]) return [];
  return [fault(p, `a step of class ${p.class} at no cabinet of the manual`)];
}

function judging(p: Place): Fault[] {
  const { step } = p;
  if (step.verb !== 'judge') return [];
  const known = (judgements as unknown as Record<string, Judgement<string, string, string>>)[step.judgement];
  if (!known) return [fault(p, `no judgement is called ${step.judgement}`)];
  const same = (what: string, has: readonly string[], wants: readonly string[]): Fault[] => [
    ...wants.filter((w) => !has.includes(w)).map((w) => fault(p, `${what} ${w} is missing`)),
    ...has.filter((h) => !wants.includes(h)).map((h) => fault(p, `${what} ${h} is unknown to ${step.judgement}`)),
  ];
  return [
    ...same('outcome', Object.keys(step.then), known.outcomes),
    ...same('input', Object.keys(step.of), known.takes),
    ...known.limits.filter((l) => !Object.hasOwn(step.limits, l)).map((l) => fault(p, `limit ${l} is missing`)),
    ...Object.keys(step.says ?? {})
      .filter((o) => !known.outcomes.includes(o))
      .map((o) => fault(p, `says something for unknown outcome ${o}`)),
    ...Object.entries(step.limits).flatMap(([name, limit]) => limits(p, name, limit)),
  ];
}
function limits(p: Place, name: string, limit: Limit): Fault[] {
  const out: Fault[] = [];
  if (!/^-?\d+(\.\d+)?$/.test(limit.value)) out.push(fault(p, `limit ${name} is no decimal`));
  if (limit.unit.trim() === '') out.push(fault(p, `limit ${name} has no unit`));
  if (limit.source.trim() === '') out.push(fault(p, `limit ${name} has no source`));
  return out;
}

function asking(p: Place): Fault[] {
  if (!('parts' in p.step)) return [];
  const step = p.step as AskStep;
  const out: Fault[] = [];
  if (Object.keys(step.parts).length === 0) out.push(fault(p, 'asks nothing'));
  if (step.say.split(/\s+/).length > 25) out.push(fault(p, 'says more than 25 words'));
  if (step.by !== undefined) {
    const part = step.parts[step.by];
    const options = part && 'options' in part ? Object.keys(part.options ?? {}) : [];
    for (const o of options) if (!Object.hasOwn(p.to, o)) out.push(fault(p, `option ${o} leads nowhere`));
    for (const o of Object.keys(p.to))
      if (!options.includes(o)) out.push(fault(p, `a way for ${o}, which is not offered`));
  } else if (p.next === null) out.push(fault(p, 'leads nowhere'));
  for (const o of step.powers ?? [])
    if (!Object.hasOwn(p.to, o)) out.push(fault(p, `power goes on with ${o}, which leads nowhere`));
  if (step.verb === 'measure' && !Object.values(step.parts).some((x) => x.part === 'field'))
    out.push(fault(p, 'measures nothing'));
  if (step.verb === 'act' && !('done' in p.to)) out.push(fault(p, 'an act that can’t be done'));
  if (step.picture?.kind === 'probes')
    for (const { part } of step.picture.on)
      if (part !== undefined && !Object.hasOwn(step.parts, part))
        out.push(fault(p, `draws ${part}, which is not asked`));
  return [...out, ...Object.entries(step.parts).flatMap(([key, part]) => wordsTwice(p, key, part))];
}
/** A word that names two options would have to be guessed. */
function wordsTwice(p: Place, key: string, part: PartSpec): Fault[] {
  const seen = new Map<string, string>();
  const out: Fault[] = [];
  for (const [id, o] of Object.entries('options' in part ? (part.options ?? {}) : {})) {
    for (const word of new Set([id, o.label, ...(o.words ?? [])].map((w) => w.toLowerCase()))) {
      const other = seen.get(word);
      if (other !== undefined && other !== id) out.push(fault(p, `${key}: "${word}" names ${other} and ${id}`));
      seen.set(word, id);
    }
  }
  return out;
}

function concluding(p: Place): Fault[] {
  const { step } = p;
  if (step.verb !== 'verdict') return [];
  const out: Fault[] = [];
  if (step.next.length === 0) out.push(fault(p, 'a verdict without a next step'));
  if (step.says.length === 0) out.push(fault(p, 'a verdict without words'));
  if (step.who !== 'junior' && step.raises === undefined)
    out.push(fault(p, `only a ${step.who} concludes this, and nobody is told`));
  return out;
}

/** What a sorting step looks for is a verdict that stands further up the page. */
function sorting(plan: Plan, p: Place): Fault[] {
  if (p.step.verb !== 'found') return [];
  const above = [...plan.places.values()].filter(
    (x) => x.step.verb === 'verdict' && x.order < p.order && x.round === p.round,
  );
  return Object.entries(p.step.among as Record<string, readonly string[]>).flatMap(([group, ids]) => [
    ...(ids.length === 0 ? [fault(p, `group ${group} is empty`)] : []),
    ...ids.filter((id) => !above.some((x) => isSought(id, x))).map((id) => fault(p, `${id} is no verdict above`)),
  ]);
}

/** Every place can be reached by the pages' own ways, and every way out leads somewhere. */
function reach(plan: Plan): Fault[] {
  const edges = allEdges(plan);
  const seen = new Set([plan.start, ...Object.values(plan.regions).map((r) => r.first)]);
  for (let grew = true; grew; ) {
    grew = false;
    for (const e of edges) {
      if (seen.has(e.from) && !seen.has(e.to)) {
        seen.add(e.to);
        grew = true;
      }
    }
  }
  const ends = new Set([...plan.endings, ...Object.values(plan.regions).flatMap((r) => Object.keys(r.exits))]);
  return [
    ...[...plan.places.keys()].filter((id) => !seen.has(id)).map((id) => fault(id, 'can’t be reached')),
    ...[...ends].filter((id) => !seen.has(id)).map((id) => fault(id, 'an exit that nothing leads to')),
    ...edges
      .filter((e) => !plan.places.has(e.to) && !ends.has(e.to))
      .map((e) => fault(e.from, `leads to ${e.to}, which is nowhere`)),
  ];
}

/** Every exit of make-dead but `proved` has a meaning that asks something again. */
function leaving(plan: Plan): Fault[] {
  const all = new Set(Object.values(plan.regions).map((r) => r.rules));
  return [...all].flatMap(leavingOf);
}
function leavingOf(isolation: Manual['isolation']): Fault[] {
  const names = Object.keys(isolation.page.steps);
  return [
    ...(isolation.page.exits as readonly string[])
      .filter((x) => x !== 'proved' && !Object.hasOwn(isolation.leaving, x))
      .map((x) => fault(`make-dead!${x}`, 'has no meaning')),
    ...Object.entries(isolation.leaving as Record<string, { forget: string }>)
      .filter(([, l]) => !names.includes(l.forget))
      .map(([x, l]) => fault(`make-dead!${x}`, `forgets ${l.forget}, which is no step`)),
    ...Object.values(isolation.reentry as Record<string, string>)
      .filter((n) => !names.includes(n))
      .map((n) => fault('make-dead', `is entered again at ${n}, which is no step`)),
    ...(isolation.page.exits.includes('proved') ? [] : [fault('make-dead', 'can never be proved')]),
  ];
}
