/** What a close-out summary is drawn from: a job at its end, with what of its record still stands. */
import type { Place } from '../flatten.ts';
import type { Fact, Memory } from '../memory.ts';
import { memoryOf, placeIdOf, planOf, type Standing } from '../replay.ts';
import { route } from '../route.ts';
import type { Conclusion, Entry, Finding, Parts, Units } from '../schema.ts';
import { askedIn, conclusionIn } from '../units/shown.ts';
import type { AskStep, Manual } from '../vocabulary.ts';
import { answerWords, type Resolve } from '../words.ts';
import { UTC, type When } from './when.ts';

/** A verdict on the way, with the step that drew it. */
export interface Drawn {
  readonly seq: number;
  readonly place: Place;
  readonly body: Conclusion;
}
export interface Fitted {
  readonly place: Place;
  readonly fact: Fact;
  /** In the words of the page. */
  readonly words: string;
  /** The verdict that the new part reads right; null where none was drawn for it. */
  readonly part: Drawn | null;
}
export interface Closed {
  readonly manual: Manual;
  readonly memory: Memory;
  readonly entries: readonly Entry[];
  readonly ending: { readonly title: string; readonly says: string };
  readonly passed: readonly Place[];
  readonly verdicts: readonly Drawn[];
  readonly fitted: readonly Fitted[];
  /** The last verdict rests on readings of the running unit, and calls for nobody. */
  readonly proven: boolean;
  readonly signed: (Entry & { kind: 'signed' }) | null;
  readonly resolve: Resolve;
  readonly name: (person: string) => string;
  readonly when: When;
  /** Shown beside °F and psig. */
  readonly units: Units | undefined;
  readonly place: (id: string) => Place | undefined;
}

/** Null until the job stands at an ending. */
export function closed(
  standing: Standing,
  entries: readonly Entry[],
  resolve: Resolve,
  name: (person: string) => string,
  when: When = UTC,
  units?: Units,
): Closed | null {
  const [plan, memory, here] = [planOf(standing), memoryOf(standing), placeIdOf(standing)];
  const ending = plan.endings.includes(here) ? plan.manual.endings[here.slice(1)] : undefined;
  if (!ending) return null;
  const { passed } = route(plan, memory);
  const verdicts = passed.flatMap((place): Drawn[] => {
    const held = memory.concluded[place.id];
    return place.step.verb === 'verdict' && held ? [{ ...held, body: conclusionIn(held.body, units), place }] : [];
  });
  const last = verdicts.at(-1);
  return {
    manual: plan.manual,
    memory,
    entries,
    ending,
    passed,
    verdicts,
    fitted: fittedOf(passed, memory, verdicts),
    proven: last !== undefined && !raises(last.place) && readsLive(last, plan.places, memory),
    signed: memory.signed ? (entries.findLast((e) => e.kind === 'signed') ?? null) : null,
    resolve,
    name,
    when,
    units,
    place: (id) => plan.places.get(id),
  };
}

const raises = ({ step }: Place): boolean => step.verb === 'verdict' && step.raises !== undefined;

/** Whether a verdict rests on a figure that was read with the power on. */
function readsLive(drawn: Drawn, places: ReadonlyMap<string, Place>, memory: Memory): boolean {
  return Object.entries(memory.facts).some(
    ([id, fact]) =>
      drawn.body.evidence.includes(fact.amended ?? fact.seq) &&
      places.get(id)?.class === 'live' &&
      Object.values(fact.body.parts).some((value) => value.kind === 'figure'),
  );
}

const isDone = (parts: Parts): boolean => parts.ok?.kind === 'choice' && parts.ok.chosen[0] === 'done';
/** A judgement of a new part says under this name what was picked. */
const NEW_PART = 'New part';
export const newPartOf = (body: Conclusion): Finding | undefined => body.findings.find((f) => f.name === NEW_PART);

function fittedOf(passed: readonly Place[], memory: Memory, verdicts: readonly Drawn[]): Fitted[] {
  let part: Drawn | null = null;
  return passed.flatMap((place): Fitted[] => {
    const drawn = verdicts.find((v) => v.place === place);
    if (drawn && newPartOf(drawn.body)) part = drawn;
    const fact = memory.facts[place.id];
    if (!('act' in place.step) || place.step.act !== 'fit' || !fact || !isDone(fact.body.parts)) return [];
    const one = { place, fact, words: answerWords(place.step, fact.body.parts, () => '').join(', '), part };
    part = null;
    return [one];
  });
}

/** The question behind an answer. */
export function askedAt(of: Closed, id: string): AskStep | null {
  const step = of.place(id)?.step;
  return step && 'parts' in step ? askedIn(step, of.units) : null;
}
/** A sentence of what may end in a full stop already. */
export const sentence = (text: string): string => (/[.?…]$/.test(text) ? text : `${text}.`);
