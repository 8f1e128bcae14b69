/** Answers to several questions at once, as `form.ts` put them together: all of them are taken, or none. */
import { formOf, JOINT, keyIn } from '../form.ts';
import { memoryOf, placeIdOf, planOf, type Standing } from '../replay.ts';
import type { Draft, GivenParts } from '../schema.ts';
import { mayAnswer, readParts } from './answer.ts';
import { type Context, refuse, type Scribe, type Wish } from './types.ts';

export const isForm = (given: GivenParts): boolean => Object.keys(given).some((key) => key.includes(JOINT));

export function decideForm(s: Standing, given: GivenParts, offline: boolean, c: Context, keep: Scribe): Wish {
  const memory = memoryOf(s);
  const places = formOf(planOf(s), memory, placeIdOf(s));
  const known = new Set(places.flatMap(({ id, step }) => ('parts' in step ? keysOf(id, step.parts) : [])));
  const stranger = Object.keys(given).find((key) => !known.has(key));
  if (stranger !== undefined) return refuse('unknown-option', 'This form asks something else now.', { draft: given });
  const drafts: Draft[] = [];
  const said: string[] = [];
  const wrong: string[] = [];
  let code: NonNullable<Wish['refusal']>['code'] | null = null;
  for (const place of places) {
    const barred = mayAnswer(place, memory, c);
    if (barred) return barred;
    const read = readParts(place, ownOf(place.id, given), memory, s, keep);
    if ('refusal' in read) {
      const { refusal } = read.refusal;
      code ??= refusal?.code ?? 'missing';
      said.push(refusal?.text ?? '');
      wrong.push(...(refusal?.parts ?? []).map((key) => keyIn(place.id, key)));
      continue;
    }
    const mark = offline ? { offline: true as const } : {};
    drafts.push({ kind: 'answered', body: { place: place.id, parts: read.parts, ...mark } });
    for (const text of read.idle) drafts.push({ kind: 'noted', body: { as: 'note', text: keep.keep(text) } });
  }
  if (code === null) return { drafts };
  const draft = Object.fromEntries(Object.entries(given).filter(([key]) => !wrong.includes(key)));
  return refuse(code, said.join(' '), { parts: wrong, draft });
}

const keysOf = (place: string, parts: object): string[] => Object.keys(parts).map((key) => keyIn(place, key));
const ownOf = (place: string, given: GivenParts): GivenParts =>
  Object.fromEntries(
    Object.entries(given).flatMap(([key, value]) =>
      key.startsWith(`${place}${JOINT}`) ? [[key.slice(place.length + JOINT.length), value]] : [],
    ),
  );
