/**
 * Which states of a broken copy are walked on from first: those nearest to what was changed, before it and behind it.
 * Every state that can be reached is still walked where nothing is found; only the order is another.
 */
import type { Place, Plan } from '../flatten.ts';
import { edgesOf } from '../graph.ts';
import { isSought } from '../known.ts';
import { memoryOf, placeIdOf, planOf } from '../replay.ts';
import { onward, route } from '../route.ts';
import type { Node } from './key.ts';

/** The order of a state, 0 the first; states of one rank are walked as they come. */
export type Rank = (node: Node) => number;
/** Of what leads nowhere near, or has the verdict still to find that leads there. */
const FAR = 1_000;

/** Null where no place was changed: then no state is nearer than another. */
export function toward(broken: Plan, sound: Plan): Rank | null {
  const changed = [...broken.places.values()].filter((place) => isChanged(place, sound.places.get(place.id)));
  if (changed.length === 0) return null;
  const sorted = soughtBy(broken, sound, changed);
  const before = leadsTo(broken);
  const [toChange, toVerdict] = [distances(before, changed), distances(before, sorted)];
  return ({ state: { standing } }) => {
    const here = placeIdOf(standing);
    const memory = memoryOf(standing);
    const { passed } = route(planOf(standing), memory);
    const wrong = passed.findIndex((place, i) => {
      if (toChange.get(place.id) !== 0) return false;
      const was = sound.places.get(place.id);
      const way = passed.slice(0, i + 1);
      return was !== undefined && onward(was, memory, way) !== onward(place, memory, way);
    });
    if (wrong >= 0) return passed.length - 1 - wrong;
    const page = passed.findLast((place) => !place.gate)?.id ?? '';
    const lacks = sorted.length > 0 && !passed.some(({ id }) => toVerdict.get(id) === 0);
    const far = lacks ? toVerdict : toChange;
    return 1 + (far.get(here) ?? far.get(page) ?? FAR) + (lacks ? FAR : 0);
  };
}

const isChanged = (place: Place, was: Place | undefined): boolean =>
  was === undefined || was.step !== place.step || was.cabinet !== place.cabinet;

/** Where a step that sorts by verdicts leads elsewhere for some of them, one of those has to be found first. */
function soughtBy(broken: Plan, sound: Plan, changed: readonly Place[]): readonly Place[] {
  const sought = changed.flatMap(({ id, step, to }) => {
    const was = sound.places.get(id);
    if (step.verb !== 'found' || !was || to.none !== was.to.none) return [];
    return Object.entries(step.among).flatMap(([group, ids]) => (to[group] === was.to[group] ? [] : ids));
  });
  return [...broken.places.values()].filter((place) => sought.some((one) => isSought(one, place)));
}

/** From which places each place is come to; to make-dead, from those that hands go into. */
function leadsTo(plan: Plan): ReadonlyMap<string, readonly string[]> {
  const before = new Map<string, string[]>();
  const leads = (from: string, on: string): void => {
    const known = before.get(on) ?? [];
    known.push(from);
    before.set(on, known);
  };
  for (const place of plan.places.values()) {
    for (const edge of edgesOf(place)) leads(edge.from, edge.to);
    const gates = plan.regions[place.cabinet]?.first;
    if ((place.class === 'inside' || place.class === 'control live') && gates !== undefined) leads(place.id, gates);
  }
  return before;
}

/** How many places lie between a place and the next one of these; 0 for these alone. */
function distances(before: ReadonlyMap<string, readonly string[]>, to: readonly Place[]): ReadonlyMap<string, number> {
  const far = new Map(to.map(({ id }) => [id, 0]));
  const queue = [...far.keys()];
  for (let id = queue.shift(); id !== undefined; id = queue.shift()) {
    for (const from of before.get(id) ?? []) {
      if (far.has(from)) continue;
      far.set(from, (far.get(id) ?? 0) + 1);
      queue.push(from);
    }
  }
  return far;
}
