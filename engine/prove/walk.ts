/**
 * Every reachable state of a manual, with the rules watching. Composed: make-dead is walked once in full; the pages after
 * it are walked with the isolation as one step. A state's key holds the place, the way taken, and what the monitors
 * remember, so that a fold that hides evidence can't merge a bad state into a good one.
 */

import { strip } from '../prompt.ts';
import { asOf, memoryOf, placeIdOf, planOf, type Standing } from '../replay.ts';
import { route } from '../route.ts';
import type { Entry } from '../schema.ts';
import { answers, detours, LOOKS, plainAnswer } from './alphabet.ts';
import { instant, open, SENIOR, type State, type Subject, type Turn, turn } from './bench.ts';
import {
  CABINETS,
  type Cabinet,
  cabinetOf,
  chosen,
  type Evidence,
  followAll,
  isControl,
  isDead,
  isInside,
  isOne,
  UNWATCHED,
  type Watched,
} from './evidence.ts';
import { isProved, keyOf, type Node, sortedAhead, sortsOf, valueKey } from './key.ts';
import { unproven } from './verdicts.ts';
import { gone } from './ways.ts';

export type Rule = 'R1' | 'R2' | 'R3' | 'R4' | 'R5' | 'R6' | 'R7' | 'R8' | 'R9' | 'R10' | 'R12' | 'R13' | 'opinion';
export interface Breach {
  readonly rule: Rule;
  readonly what: string;
  /** The conversation that shows it, line by line. */
  readonly conversation: readonly string[];
}
export interface Walked {
  readonly states: number;
  readonly edges: number;
  readonly places: ReadonlySet<string>;
  /** The ways that were gone, as `ways.ts` names them. */
  readonly ways: ReadonlySet<string>;
  readonly breaches: readonly Breach[];
}
export interface Scope {
  /** Whether a state is walked on from, and whether the isolation is made in one step. */
  readonly inside: (place: string, proved: boolean) => boolean;
  /** Of the states outside, those at which what may come at any time still comes. */
  readonly around?: (proved: boolean) => boolean;
  readonly composed: boolean;
  readonly stopAt: number;
  /** Only calls that begin with one of these observations; all of them where it is left out. */
  readonly calls?: string;
  /** Where one answer alone is sent: the class of the unit that is walked, and gates that another walk has in full. */
  readonly plainly?: (place: string) => string | true | undefined;
}
const DEAD = 'dead:';
export const MAKE_DEAD: Scope = {
  // The gates of another cabinet are a copy of the same page, and what leads there is walked with the pages.
  // Of the pages before it only the two questions that lead there are walked on from: what they say is walked with the pages.
  inside: (place, proved) =>
    place.startsWith(DEAD)
      ? cabinetOf(place) === 'outdoor'
      : !proved && (place.startsWith('!') || /^round~1\/(observation|class)$/.test(place)),
  // A proof ends as well: what a gate said of the lock, or of its answers, may be taken back once dead is proved.
  around: (proved) => proved,
  composed: false,
  stopAt: 3,
};
/** An inverter's own make-dead: its gates up to the lock are those of every cabinet, its wait and its bus are tried in full. */
export const BUS: Scope = {
  inside: (place, proved) =>
    place.startsWith(`${DEAD}inverter/`) ||
    (!proved && (place.startsWith('!') || /^round~1\/(observation|class|inverter\/.*)$/.test(place))),
  composed: false,
  stopAt: 3,
  plainly: (place) => (place === 'round~1/class' ? 'inverter' : /\/(waited|bus)$/.test(place) ? undefined : true),
};
export const PAGES: Scope = { inside: () => true, composed: true, stopAt: 3 };

export function walk(subject: Subject, scope: Scope): Walked {
  const seen = new Map<string, string[]>();
  const places = new Set<string>();
  const ways = new Set<string>();
  const breaches: Breach[] = [];
  const leadsOn = new Map<string, Set<string>>();
  const tried = new Set<string>();
  let edges = 0;
  const first = open(subject);
  const queue: Node[] = [{ state: first, evidence: first.entries.reduce(followAll, UNWATCHED), history: [] }];
  const keyOfFirst = keyOf(queue[0] as Node, scope.composed);
  seen.set(keyOfFirst, []);
  const report = (rule: Rule, what: string, history: readonly string[]): void => {
    if (breaches.some((b) => b.rule === rule && b.what === what)) return;
    breaches.push({ rule, what, conversation: history });
  };

  for (let node = queue.shift(); node && breaches.length < scope.stopAt; node = queue.shift()) {
    const here = placeIdOf(node.state.standing);
    const key = keyOf(node, scope.composed);
    places.add(here);
    const on = new Set<string>();
    leadsOn.set(key, on);
    const proved = isProved(node.state.standing);
    const inside = scope.inside(here, proved);
    if (isCountedElsewhere(scope, node) || !(inside || scope.around?.(proved))) {
      on.add('out');
      continue;
    }
    if (!inside) on.add('out');
    let accepted = !inside;
    const own = inside ? answersAt(subject, node, scope) : [];
    for (const [i, steps] of [...own, ...(isTriedHere(scope, node, tried) ? detours(node.state) : [])].entries()) {
      const next = run(subject, node, steps, report, places, ways);
      edges++;
      if (i < own.length && next.changed) accepted = true;
      const nextKey = keyOf(next.node, scope.composed);
      if (nextKey === key) continue;
      on.add(nextKey);
      if (seen.has(nextKey)) continue;
      seen.set(nextKey, []);
      queue.push(next.node);
    }
    if (!accepted && !isEnd(node.state.standing))
      report('R10', `nothing that is sent at ${here} leads on`, node.history);
  }
  if (breaches.length === 0) deadEnds(leadsOn, keyOfFirst, report);
  return { states: seen.size, edges, places, ways, breaches };
}

/** The usual supply, source and capacitor, or none of them known yet. */
const isUsual = (e: Evidence): boolean => !isOne(e) && (!e.means || (e.stated === 120 && !e.neutral && !e.secondFeed));
/**
 * Lines that are not accepted are counted alike on every supply, source, part and cabinet: that is walked on the usual
 * ones. So they are after a silence: there the first of them is walked.
 */
const isCountedElsewhere = (scope: Scope, { state, evidence: { outdoor: e } }: Node): boolean => {
  const failed = memoryOf(state.standing).failed.length;
  if (scope.composed) return false;
  if (!isUsual(e) && failed > 0) return true;
  return failed > 1 && (scope.plainly !== undefined || e.again || e.confirmed);
};

/**
 * What may come at any time is tried at every state of make-dead on the usual supply, source and capacitor, which it
 * doesn't look at; and at every step of the first round, in whatever try it stands, once with the isolation proved and once without.
 * The rounds after it are copies of the same pages.
 */
function isTriedHere(scope: Scope, { state, evidence }: Node, tried: Set<string>): boolean {
  const here = placeIdOf(state.standing);
  if (!scope.composed) return isUsual(evidence.outdoor);
  if (here.startsWith(DEAD) || (planOf(state.standing).places.get(here)?.round ?? 1) !== 1) return false;
  const step = `${here.replace(/~\d+/g, '')} ${isProved(state.standing)}`;
  if (tried.has(step)) return false;
  tried.add(step);
  return true;
}

/** Pages that ask for the kind of unit by name. */
const OF_A_CLASS = /\/(class|box|monitor|ecm-fan|block|supply|inverter|restart|motors)(\/|$)/;
const SORT = '/sort';

/**
 * Whether only a plain answer is tried. The tests of a block don't look at what was found before them, so after a finding
 * they are walked plainly to the step that sorts. So they are on other observations and classes than the usual ones, which
 * go fewer of the same pages; and a later round, a copy of the first, is walked plainly to its restart.
 */
function isPlain(node: Node): boolean {
  const { standing } = node.state;
  const plan = planOf(standing);
  const at = plan.places.get(placeIdOf(standing));
  if (!at || at.gate) return false;
  if (at.round > 1) return at.class !== 'live';
  // After a second part of one round the restart is a copy of the one before it.
  if (/^round~1\/(restarted|contactor)\//.test(at.id)) return true;
  const { passed } = route(plan, memoryOf(standing));
  // Other classes go the same pages but for the few that ask for them by name.
  const unit = valueKey(memoryOf(standing).job.class?.value);
  if (unit !== '' && unit !== 'psc' && at.class !== 'inside' && !OF_A_CLASS.test(at.id)) return true;
  // The block at hand, outdoors or in, ends where its findings are sorted.
  const sort = sortsOf(plan).find((p) => p.round === 1 && p.id.endsWith(SORT) && p.order > at.order);
  if (sort === undefined || !at.id.startsWith(sort.id.slice(0, -SORT.length + 1))) return false;
  const found = sortedAhead(plan, at, passed, sort.id).length > 0;
  if (cabinetOf(at.id) === 'indoor') return found;
  const { job } = memoryOf(standing);
  // Both motors are measured in full on one observation and one class; the others go the same pages.
  // What only another class has is measured in full on that class.
  if (at.name === 'line' || at.id.includes('/three~')) return false;
  const usual = isUsualCall(node);
  // With a second capacitor only the second one is new, and which of them is meant by what was seen.
  const second = valueKey(job['count@outdoor']?.value) === '2' && !/another\/|\/run\/(wires|this-one)/.test(at.id);
  return !usual || second || found;
}

/** The call on which the dead tests are walked in full: both motors are measured, on a unit with a run capacitor. */
function isUsualCall(node: Node): boolean {
  const { job } = memoryOf(node.state.standing);
  return valueKey(job['round:observation~1']?.value) === 'b' && valueKey(job.class?.value) === 'psc';
}

/** Own answers; composed, the whole of make-dead as one step. */
function answersAt(subject: Subject, node: Node, scope: Scope): Turn[][] {
  const here = placeIdOf(node.state.standing);
  if (!scope.composed || !here.startsWith(DEAD)) {
    const all = answers(node.state)
      .filter((t) => here !== 'round~1/observation' || begins(scope, t))
      .map((t) => [t]);
    const plainly = scope.plainly?.(here);
    if (plainly === true || (scope.composed && isPlain(node))) return all.slice(0, 1);
    return plainly === undefined
      ? all
      : all.filter(([t]) => t?.reply.kind === 'answer' && t.reply.parts.choice === plainly);
  }
  const { job } = memoryOf(node.state.standing);
  // What is seen under the cover decides in the dead tests, which are walked in full on the usual observation and class.
  const looks =
    job[`condition@${cabinetOf(here)}`] === undefined && (cabinetOf(here) !== 'outdoor' || isUsualCall(node))
      ? LOOKS
      : 1;
  return Array.from({ length: looks }, (_, look) => {
    const steps: Turn[] = [];
    let state = node.state;
    for (let i = 0; i < 20 && placeIdOf(state.standing).startsWith(DEAD); i++) {
      const plain = plainAnswer(state, look);
      if (!plain) break;
      steps.push(plain);
      state = turn(subject, state, plain).state;
    }
    return steps;
  });
}

/** Make-dead is the same whatever was seen: it is walked from one observation whose dead tests come at once. */
const begins = ({ composed, calls = composed ? undefined : 'd' }: Scope, { reply }: Turn): boolean =>
  calls === undefined || reply.kind !== 'answer' || calls.includes(String(reply.parts.choice));

type Report = (rule: Rule, what: string, history: readonly string[]) => void;

function run(
  subject: Subject,
  from: Node,
  steps: readonly Turn[],
  report: Report,
  places: Set<string>,
  ways: Set<string>,
): { node: Node; changed: boolean } {
  let node = from;
  let changed = false;
  for (const t of steps) {
    const next = one(subject, node, t, report, ways);
    changed ||= memoryOf(next.state.standing).since !== memoryOf(node.state.standing).since;
    node = next;
    // Where several turns are one step, each question on the way was asked and answered under every rule.
    places.add(placeIdOf(node.state.standing));
  }
  return { node, changed };
}

/** One turn, every rule asked about it. */
function one(subject: Subject, node: Node, t: Turn, report: Report, ways: Set<string>): Node {
  const { state, added, decision } = turn(subject, node.state, t);
  const refused = decision.refusal ? ` — refused: ${decision.refusal.code}` : '';
  const history = [
    ...node.history,
    `${instant(state.minute).slice(11, 16)} ${t.label}${refused} → ${placeIdOf(state.standing)}`,
  ];
  gone(node.state.standing, state.standing, added[0], ways);
  let evidence = node.evidence;
  for (const [i, entry] of added.entries()) {
    const record = state.entries.slice(0, state.entries.length - added.length + i);
    watch(entry, evidence, record, (rule, what) => report(rule, what, history));
    evidence = followAll(evidence, entry);
  }
  const say = (rule: Rule, what: string): void => report(rule, what, history);
  standing(state, evidence, say);
  always(node, t, added, state, say);
  return { state, evidence, history };
}

/** R13: what each cabinet's hands may touch. A unit with a bus, or one that nobody is sure of, has its own procedure. */
const OPENED: Readonly<Record<Cabinet, readonly string[]>> = {
  outdoor: ['psc', 'ecm', 'three-phase', 'refrigeration'],
  indoor: ['psc', 'ecm'],
  inverter: ['inverter', 'unsure'],
};

/** Rules about an entry as it comes. */
function watch(entry: Entry, all: Watched, record: readonly Entry[], say: (rule: Rule, what: string) => void): void {
  if (entry.kind === 'answered' && entry.body.skipped === undefined) {
    const { place, parts } = entry.body;
    const e = all[cabinetOf(place)];
    const inside = isInside(place, parts) || isControl(place, parts);
    if (inside) {
      const lacks = isDead(e, entry.by, Date.parse(entry.at), cabinetOf(place));
      if (lacks !== null) say(ruleOf(lacks, record), `hands inside at ${place}: ${lacks}`);
      if (e.wound) say('R1', `hands inside at ${place}: an insulation test’s charge, and no residual within its limit`);
    }
    if ((inside || place.startsWith(DEAD)) && !OPENED[cabinetOf(place)].includes(e.unitClass ?? '')) {
      say('R13', `${place} on a unit of class ${e.unitClass ?? 'unknown'}`);
    }
    if (inside && e.unitClass === 'refrigeration' && !e.calm)
      say('R4', `hands inside at ${place} beside a refrigerant that may burn`);
    // 6.3: live control beside a locked line is 24 V that come from another cabinet.
    if (isControl(place, parts) && cabinetOf(place) === 'outdoor' && !e.apart)
      say('R2', `control live at ${place} on a coil that nobody said is on 24 V from outside`);
    // After a trip or a fuse the insulation test decides, and what read low in ohms is never energised.
    if (place.endsWith('/breaker/start') && !chosen(parts.choice).includes('off')) {
      if (!e.insulated) say('R7', 'started after a trip without an insulation test that holds');
      if (e.grounded) say('R7', 'started with a compressor that read low to ground at its own leads');
    }
    if (Object.values(parts).some((v) => v.kind === 'figure' && v.unit === 'psig') && entry.by !== SENIOR)
      say('R9', `a pressure at ${place} by somebody who is not certified`);
  }
  if (entry.kind === 'concluded') {
    const lacks = unproven(entry.body, record);
    if (lacks !== null)
      say(
        entry.body.verdict === 'section-fails-value' || entry.body.verdict.startsWith('capacitor-') ? 'R8' : 'R7',
        lacks,
      );
  }
}
/** The same gap is R2 after live work, R3 after what makes stale, else R1. */
function ruleOf(lacks: string, record: readonly Entry[]): Rule {
  if (lacks.includes('older than')) return 'R3';
  const ends = record.findLast(
    (x) =>
      ['alarmed', 'handed-over', 'voided', 'withdrawn', 'amended'].includes(x.kind) ||
      (x.kind === 'answered' && x.body.place.endsWith('/figures')),
  );
  if (ends === undefined) return 'R1';
  return ends.kind === 'answered' ? 'R2' : 'R3';
}

/** Rules about where the job stands after a turn: the strip never says dead without the evidence. */
function standing(state: State, all: Watched, say: (rule: Rule, what: string) => void): void {
  const now = instant(state.minute);
  for (const line of strip(asOf(state.standing, now))) {
    if (line.state !== 'proved' && line.state !== 'control-live') continue;
    const cabinet = cabinetNamed(state.standing, line.cabinet);
    const e = all[cabinet];
    const lacks = isDead(e, e.holder ?? '', Date.parse(now), cabinet);
    if (lacks !== null) say(ruleOf(lacks, state.entries), `${line.cabinet}: PROVED DEAD is shown while ${lacks}`);
  }
  const opinion = route(planOf(state.standing), memoryOf(state.standing));
  if (opinion.place !== placeIdOf(state.standing))
    say('opinion', `the machine stands at ${placeIdOf(state.standing)}, the second opinion at ${opinion.place}`);
}

const cabinetNamed = (s: Standing, words: string): Cabinet =>
  CABINETS.find((c) => planOf(s).manual.cabinets[c] === words) ?? 'outdoor';

/** R4, R5, R6: what must hold for a kind of message at any state. */
function always(
  before: Node,
  t: Turn,
  added: readonly Entry[],
  after: State,
  say: (rule: Rule, what: string) => void,
): void {
  const was = placeIdOf(before.state.standing);
  const here = placeIdOf(after.standing);
  if (t.reply.kind === 'text' && t.reply.text === 'I smell smoke') {
    if (was !== '!emergency' && !added.some((x) => x.kind === 'alarmed'))
      say('R4', `"I smell smoke" raises nothing at ${was}`);
    if (here !== '!emergency') say('R4', `after "I smell smoke" the job stands at ${here}`);
    if (isProved(after.standing)) say('R4', 'an isolation outlives the emergency');
  }
  if (
    t.reply.kind === 'text' &&
    t.reply.text === 'stop' &&
    !['!emergency', '!hazard', '!stopping', '!paused'].includes(was) &&
    here !== '!stopping'
  ) {
    say('R5', `stop is not taken at ${was}`);
  }
  if (t.reply.kind === 'text' && t.reply.text.startsWith('skip') && was.startsWith(DEAD)) {
    if (!isProved(before.state.standing) && isProved(after.standing))
      say('R6', `skip at the gate ${was} proves the isolation`);
    const place = planOf(after.standing).places.get(was);
    if (place?.cant === null && added.some((x) => x.kind === 'answered')) say('R6', `the gate ${was} is skipped`);
  }
}

const isEnd = (s: Standing): boolean => planOf(s).endings.includes(placeIdOf(s));

/** R10: from every state an ending can be reached. */
function deadEnds(leadsOn: ReadonlyMap<string, ReadonlySet<string>>, start: string, report: Report): void {
  const good = new Set<string>(['out']);
  for (const key of leadsOn.keys()) if (/^\["![a-z]/.test(key) && !HALTED.test(key)) good.add(key);
  for (let grew = true; grew; ) {
    grew = false;
    for (const [key, on] of leadsOn) {
      if (good.has(key) || ![...on].some((k) => good.has(k))) continue;
      good.add(key);
      grew = true;
    }
  }
  const stuck = [...leadsOn.keys()].filter((k) => !good.has(k));
  if (stuck.length > 0)
    report('R10', `from ${stuck.length} states no ending can be reached, first ${JSON.parse(stuck[0] ?? '[""]')[0]}`, [
      start.slice(0, 80),
    ]);
}
const HALTED = /^\["!(emergency|hazard|stopping|paused|taking-over|held)"/;
