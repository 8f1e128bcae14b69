/**
 * Every reachable state of a manual, with the rules watching. Composed: make-dead is walked once in full; the pages after
 * it are walked with the isolation as one step. A state's key holds the place, the way taken, and what the monitors
 * remember, so that a fold that hides evidence can't merge a bad state into a good one.
 */
import { memoryOf, placeIdOf, planOf, type Standing } from '../replay.ts';
import { answers, detours, LOOKS, plainAnswer } from './alphabet.ts';
import { instant, open, type Subject, type Turn, turn } from './bench.ts';
import { isProved, keyOf, type Node, type Told } from './key.ts';
import { agrees, isOther, isPlain, isUsualCall } from './plain.ts';
import { cabinetOf, followAll, UNWATCHED } from './rules/evidence.ts';
import { always, type Rule, standing, watch } from './rules/rules.ts';
import { begins, DEAD, isCountedElsewhere, isTriedHere, type Scope } from './scope.ts';
import type { Rank } from './toward.ts';
import { gone } from './ways.ts';

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
/** States still to be walked on from: those of the lowest rank first, of one rank as they came. */
class Frontier {
  readonly #by: (readonly [Node, string])[][] = [];
  push(rank: number, node: Node, key: string): void {
    this.#by[rank] ??= [];
    this.#by[rank].push([node, key]);
  }
  shift(): readonly [Node, string] | undefined {
    return this.#by.find((all) => all !== undefined && all.length > 0)?.shift();
  }
}
const ANY: Rank = () => 0;

export function walk(subject: Subject, scope: Scope, rank: Rank = ANY): Walked {
  const seen = new Map<string, string[]>();
  const places = new Set<string>();
  const ways = new Set<string>();
  const breaches: Breach[] = [];
  const leadsOn = new Map<string, Set<string>>();
  const tried = new Set<string>();
  let edges = 0;
  const first = open(subject);
  const begun: Node = { state: first, evidence: first.entries.reduce(followAll, UNWATCHED), history: null };
  const keyOfFirst = keyOf(begun, scope.composed);
  const queue = new Frontier();
  queue.push(0, begun, keyOfFirst);
  seen.set(keyOfFirst, []);
  const report: Report = (rule, what, history) => {
    if (breaches.some((b) => b.rule === rule && b.what === what)) return;
    breaches.push({ rule, what, conversation: linesOf(history) });
  };

  for (let next = queue.shift(); next && breaches.length < scope.stopAt; next = queue.shift()) {
    const [node, key] = next;
    const here = placeIdOf(node.state.standing);
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
      const after = run(subject, node, steps, report, places, ways);
      edges++;
      if (i < own.length && after.changed) accepted = true;
      const nextKey = keyOf(after.node, scope.composed);
      if (nextKey === key) continue;
      on.add(nextKey);
      if (seen.has(nextKey)) continue;
      seen.set(nextKey, []);
      queue.push(rank(after.node), after.node, nextKey);
    }
    if (!accepted && !isEnd(node.state.standing))
      report('R10', `nothing that is sent at ${here} leads on`, node.history);
  }
  if (breaches.length === 0) deadEnds(leadsOn, keyOfFirst, report);
  return { states: seen.size, edges, places, ways, breaches };
}

/** Own answers; composed, the whole of make-dead as one step. */
function answersAt(subject: Subject, node: Node, scope: Scope): Turn[][] {
  const here = placeIdOf(node.state.standing);
  if (!scope.composed || !here.startsWith(DEAD)) {
    const all = answers(node.state)
      .filter((t) => here !== 'round~1/observation' || begins(scope, t))
      .map((t) => [t]);
    const plainly = scope.plainly?.(here);
    if (plainly === true || (scope.composed && !scope.inFull && isPlain(node))) {
      const plain = all.find(([t]) => t && agrees(t, node)) ?? all[0];
      return plain ? [plain] : [];
    }
    return plainly === undefined
      ? all
      : all.filter(([t]) => t?.reply.kind === 'answer' && t.reply.parts.choice === plainly);
  }
  const { job } = memoryOf(node.state.standing);
  // What is seen under the cover decides in the dead tests, which are walked in full on the usual observation and class.
  const full = cabinetOf(here) === 'outdoor' ? isUsualCall(node) : !isOther(node.state.standing);
  const looks = job[`condition@${cabinetOf(here)}`] === undefined && full ? LOOKS : 1;
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

type Report = (rule: Rule, what: string, history: Told | null) => void;
const linesOf = (history: Told | null): string[] => {
  const lines: string[] = [];
  for (let at = history; at !== null; at = at.before) lines.push(at.line());
  return lines.reverse();
};

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
  const { minute, standing: stands } = state;
  const refused = decision.refusal ? ` — refused: ${decision.refusal.code}` : '';
  const line = (): string => `${instant(minute).slice(11, 16)} ${t.label}${refused} → ${placeIdOf(stands)}`;
  const history: Told = { before: node.history, line };
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
    report('R10', `from ${stuck.length} states no ending can be reached, first ${JSON.parse(stuck[0] ?? '[""]')[0]}`, {
      before: null,
      line: () => start.slice(0, 80),
    });
}
const HALTED = /^\["!(emergency|hazard|stopping|paused|taking-over|held)"/;
