/**
 * Where a job stands, said a second time in plain code: a second opinion on the machine of `compile.ts`, compared with it
 * at every state of the proof's walk and after every turn of the tests. It shares the facts, not the way of walking.
 */

import { isSkipped } from './facts.ts';
import { jobName, type Place, type Plan, skipTarget } from './flatten.ts';
import { energise, leave, spentTries } from './fold.ts';
import { isAnyBegun } from './forget.ts';
import { conclude, foundAt, isKnown, jobFactAt, judged } from './known.ts';
import type { Memory } from './memory.ts';
import { askAgain, overtaken } from './power.ts';
import type { Conclusion } from './schema.ts';

interface Way {
  readonly place: string;
  /** With what the way forgot. */
  readonly memory: Memory;
  readonly passed: readonly Place[];
}
/** A turn asks for the same way several times: for its verdicts, its question, its ticket. */
const ways = new WeakMap<Memory, Way & { readonly plan: Plan }>();

/** From the first page downwards to the first missing fact. */
export function route(plan: Plan, memory: Memory): Way {
  const known = ways.get(memory);
  if (known?.plan === plan) return known;
  const way = { ...(sameWay(plan, memory) ?? goDown(plan, memory)), plan };
  ways.set(memory, way);
  if (way.memory === memory) lastGone.set(plan, way);
  return way;
}

/** The way gone last, where the memory has changed in nothing that a way looks at: a verdict more is on the record. */
function sameWay(plan: Plan, memory: Memory): Way | null {
  const last = lastGone.get(plan);
  if (last === undefined) return null;
  for (const key of Object.keys(memory) as (keyof Memory)[])
    if (memory[key] !== last.memory[key] && !BESIDE.has(key)) return null;
  return { place: last.place, passed: last.passed, memory };
}
const lastGone = new WeakMap<Plan, Way>();
const BESIDE: ReadonlySet<keyof Memory> = new Set([
  'last',
  'at',
  'since',
  'concluded',
  'raised',
  'notices',
  'explained',
]);

/**
 * Every way that is gone from a place down to the first missing fact, by the names of `graph.ts`. `passed`: what lies
 * before it.
 */
export function eachWay(
  plan: Plan,
  memory: Memory,
  from: Place,
  passed: readonly Place[],
  gone: (place: Place, on: string) => void,
): void {
  const way = [...passed];
  let place: Place | undefined = from;
  // Up goes only a question to its judge, which is then gone on from.
  for (let hops = 0; place && hops < 1000 && isKnown(place, memory); hops++) {
    way.push(place);
    const on = wayOut(place, memory, way);
    gone(place, on);
    place = plan.places.get(targetOf(place, on));
  }
}

/** What a way forgets is gone over from the start, until nothing more is forgotten. */
function goDown(plan: Plan, from: Memory): Way {
  let memory = from;
  for (let starts = 0; starts < 1000; starts++) {
    const halt = haltOf(plan, memory);
    if (halt !== null) return { place: halt, memory, passed: [] };
    const way = downFromStart(plan, memory);
    const left = leftAt(plan, way);
    if (left === null) return way;
    memory = left;
  }
  throw new Error('the page has no end');
}

function downFromStart(plan: Plan, memory: Memory): Way {
  const passed: Place[] = [];
  let here = plan.start;
  for (let hops = 0; hops < 10_000; hops++) {
    const place = plan.places.get(here);
    if (!place) return { place: here, memory, passed };
    if (isKnown(place, memory)) {
      passed.push(place);
      here = onward(place, memory, passed);
      continue;
    }
    if (overtaken(plan, memory, place).length > 0) return { place: here, memory, passed };
    const bare = !SEEN.includes(place.class) && !memory.isolations[place.cabinet]?.proved;
    const gates = bare ? plan.regions[place.cabinet]?.first : undefined;
    if (gates === undefined) return { place: here, memory, passed };
    here = gates;
  }
  throw new Error('the page has no end');
}
/** What no isolation is asked for. */
const SEEN: readonly string[] = ['eyes', 'proving', 'live'];

/** What is left where a way came out of make-dead, or to a live place while an isolation stands; null where it rests. */
function leftAt(plan: Plan, { place: here, memory }: Way): Memory | null {
  const place = plan.places.get(here);
  if (!place) {
    const left = Object.entries(plan.regions).find(([, r]) => r.exits[here] !== undefined);
    return left ? leave(plan, memory, left[0], left[1].exits[here] ?? '') : null;
  }
  if (overtaken(plan, memory, place).length > 0) return askAgain(plan, memory, place);
  if (place.class !== 'live' || !isAnyBegun(plan, memory)) return null;
  return energise(plan, memory);
}

/** The verdict of a place on the way, as the answers stand. */
export const concludeAt = (plan: Plan, place: Place, memory: Memory): Conclusion =>
  conclude(plan, place, memory, route(plan, memory).passed);

function haltOf(plan: Plan, m: Memory): string | null {
  if (m.alarm && !plan.manual.caller) return '!emergency';
  if (m.hazard) return '!hazard';
  if (m.stop) return m.stop === 'asked' ? '!stopping' : '!paused';
  if (m.handover) return '!taking-over';
  return spentTries(plan, m) === null ? null : '!held';
}

/** Where a known place leads. */
export const onward = (place: Place, memory: Memory, passed: readonly Place[]): string =>
  targetOf(place, wayOut(place, memory, passed));

const targetOf = (place: Place, on: string): string =>
  place.to[on] ?? (on === 'skip' ? skipTarget(place) : place.next) ?? '';

/** By which way a known place is left: an outcome, an option, `skip` or `next`. */
function wayOut(place: Place, memory: Memory, passed: readonly Place[]): string {
  const { step } = place;
  if (step.verb === 'found') return foundAt(place, passed);
  if (step.verb === 'judge') return judged(place, memory).outcome;
  const fact = memory.facts[place.id];
  if (isSkipped(fact)) return 'skip';
  if ('parts' in step && step.by !== undefined) {
    const as = step.parts[step.by]?.as;
    const value =
      fact?.body.parts[step.by] ?? (as === undefined ? undefined : jobFactAt(place, memory, jobName(as, place))?.value);
    const chosen = value?.kind === 'choice' ? (value.chosen[0] ?? '') : '';
    if (place.to[chosen] !== undefined) return chosen;
  }
  return 'next';
}
