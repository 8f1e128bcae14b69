/** R12 on the words themselves: no page tells anybody to bypass a safety. */
import type { Plan } from '../flatten.ts';
import type { Breach } from './walk.ts';

const BYPASS = /\b(jumper|jump out|bypass|bridge out|short across|tape down|defeat)\b/i;
const DENIED = /\b(never|not|no|don[’']t)\b[^.]*$/i;

/** Sentences of a plan that speak of bypassing without forbidding it. */
export function bypasses(plan: Plan): Breach[] {
  return [...plan.places.values()].flatMap((place) =>
    strings(place.step).flatMap((text) => {
      const at = text.search(BYPASS);
      if (at < 0 || DENIED.test(text.slice(0, at))) return [];
      return [{ rule: 'R12' as const, what: `${place.id} says "${text}"`, conversation: [place.id] }];
    }),
  );
}
const strings = (v: unknown): string[] =>
  typeof v === 'string' ? [v] : typeof v === 'object' && v !== null ? Object.values(v).flatMap(strings) : [];
