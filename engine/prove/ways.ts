/** Which ways of the pages a walk has gone, so that none stays untried. */
import type { Place, Plan } from '../flatten.ts';
import { fold } from '../fold.ts';
import { edgesOf } from '../graph.ts';
import { memoryOf, placeIdOf, planOf, type Standing } from '../replay.ts';
import { eachWay, route } from '../route.ts';
import type { Entry } from '../schema.ts';

/** One way out of a place. */
const wayKey = (place: Pick<Place, 'id'>, on: string): string => `${place.id} ${on}`;

/**
 * The ways that an answer opens, from its place down, or from the judge above that asked for it: before the machine
 * settles, since it forgets the gates that it leaves, and after, with what was concluded.
 */
export function gone(before: Standing, after: Standing, answer: Entry | undefined, ways: Set<string>): void {
  if (answer?.kind !== 'answered') return;
  const plan = planOf(before);
  const here = plan.places.get(placeIdOf(before));
  if (!here) return;
  const { passed } = route(plan, memoryOf(before));
  const add = (place: Place, on: string): void => void ways.add(wayKey(place, on));
  eachWay(plan, fold(plan, memoryOf(before), answer), here, passed, add);
  eachWay(plan, memoryOf(after), here, passed, add);
}

/** Ways out of steps, whatever copy of its page a step stands in, that were gone in no copy; and how many there are. */
export function waysOf(
  plan: Plan,
  taken: ReadonlySet<string>,
  stepOf: (place: Place) => string,
): { readonly count: number; readonly untried: readonly string[] } {
  const all = new Map<string, boolean>();
  for (const place of plan.places.values())
    for (const { on } of edgesOf(place)) {
      const key = `${stepOf(place)} ${on}`;
      all.set(key, all.get(key) === true || taken.has(wayKey(place, on)));
    }
  return { count: all.size, untried: [...all].filter(([, tried]) => !tried).map(([key]) => key) };
}
