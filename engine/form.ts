/**
 * Consecutive questions as one form, for a surface with room and a keyboard. Derived from the flow: those whose answer
 * decides no way and which read nothing of each other. Answered together or one by one, the record is the same.
 */
import type { Place, Plan } from './flatten.ts';
import { isKnown } from './known.ts';
import type { Memory } from './memory.ts';
import { prompt, question } from './prompt.ts';
import { asOf, memoryOf, placeIdOf, planOf, type Standing } from './replay.ts';
import type { Prompt } from './schema.ts';

/** Between the place of a question and its part, in the keys of a form. No place and no part has it in its name. */
export const JOINT = '#';
export const keyIn = (place: string, part: string): string => `${place}${JOINT}${part}`;

/** The questions that can be answered together from where the job stands; one alone where there is no second. */
export function formOf(plan: Plan, memory: Memory, here: string): Place[] {
  const form: Place[] = [];
  const seen = new Set<string>();
  for (let at = plan.places.get(here); at && decidesNothing(at); at = plan.places.get(at.next ?? '')) {
    if (Object.values(at.refs).some((refs) => refs.some((ref) => seen.has(ref)))) break;
    if (isKnown(at, memory)) continue;
    form.push(at);
    seen.add(at.id);
    for (const name of namesOf(at)) seen.add(name);
  }
  return form;
}

const decidesNothing = ({ step, class: of, gate }: Place): boolean =>
  'parts' in step && step.by === undefined && of === 'eyes' && !gate && (step.shows ?? []).length === 0;
const namesOf = ({ step }: Place): string[] =>
  'parts' in step ? Object.values(step.parts).flatMap(({ as }) => (as === undefined ? [] : [`@${as}`])) : [];

/** The form that stands at `now`; null where one question stands alone. */
export function formPrompt(standing: Standing, now: string): Prompt | null {
  const s = asOf(standing, now);
  const [plan, memory] = [planOf(s), memoryOf(s)];
  const places = formOf(plan, memory, placeIdOf(s));
  if (places.length < 2) return null;
  const base = prompt(s, now);
  const asked = places.flatMap((place) =>
    'parts' in place.step ? [{ place, q: question(base, place, place.step, memory, true) }] : [],
  );
  return {
    ...base,
    title: base.progress.label,
    body: asked.flatMap(({ q }) => q.body ?? []),
    parts: asked.flatMap(({ place, q }) => q.parts.map((part) => ({ ...part, key: keyIn(place.id, part.key) }))),
    line: null,
    skippable: false,
    why: null,
    sources: [],
  };
}
