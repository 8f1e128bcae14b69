/** What power that goes on undoes: proofs, what was true only while it was off, and what was agreed for live work. */
import { heardAt } from './facts.ts';
import { folderOf, type Place, type Plan } from './flatten.ts';
import { drop, noticed, type Reentry, voidAll } from './forget.ts';
import type { Memory } from './memory.ts';
import type { AskStep } from './vocabulary.ts';

/** The page that a page stands on. */
const around = (id: string): string => folderOf(folderOf(id).slice(0, -1));

interface Marked {
  readonly place: Place;
  readonly step: AskStep;
}
interface Known extends Marked {
  readonly seq: number;
}
/** Standing answers to steps that are so marked. */
const marked = (plan: Plan, memory: Memory, mark: 'whileOff' | 'sitting'): Known[] =>
  markedIn(plan)[mark].flatMap(({ place, step }) => {
    const fact = memory.facts[place.id];
    return fact ? [{ seq: fact.seq, place, step }] : [];
  });
type ByMark = Readonly<Record<'whileOff' | 'sitting', readonly Marked[]>>;
const marks = new WeakMap<Plan, ByMark>();
function markedIn(plan: Plan): ByMark {
  const known = marks.get(plan);
  if (known) return known;
  const asked = [...plan.places.values()].flatMap((place) =>
    'parts' in place.step ? [{ place, step: place.step }] : [],
  );
  const all = {
    whileOff: asked.filter(({ step }) => step.whileOff),
    sitting: asked.filter(({ step }) => step.sitting),
  };
  marks.set(plan, all);
  return all;
}

/** Answers that hold while the power is off, where it has been off since. */
export const whileOff = (plan: Plan, memory: Memory): string[] =>
  marked(plan, memory, 'whileOff').flatMap(({ place: { id }, seq, step }) => {
    if (seq <= memory.power.on) return [];
    return step.whileOff === 'until-read' && isRead(plan, memory, id, seq) ? [] : [id];
  });
/** Whether what was asked for a dead reading of its page has served. */
const isRead = (plan: Plan, memory: Memory, id: string, seq: number): boolean =>
  Object.entries(memory.facts).some(
    ([other, fact]) => fact.seq > seq && folderOf(other) === folderOf(id) && plan.places.get(other)?.class === 'inside',
  );

/** Power came back, or may have: every isolation ends, what was true only while it was off, and what was agreed for live work. */
export const powered = (plan: Plan, memory: Memory, how: Reentry): Memory => ({
  ...drop(voidAll(plan, memory, how), whileOff(plan, memory)),
  power: { on: memory.last, upset: memory.last },
});

/**
 * Answers that may not lead to this place any more: to hands inside, a rest that was over before power was on again; to a
 * live reading, what was agreed before an emergency, a hand-over or power that came back. Whichever way the job came here.
 */
export function overtaken(plan: Plan, memory: Memory, place: Place): string[] {
  if (place.gate || place.class === 'eyes' || place.class === 'proving') return [];
  const live = place.class === 'live';
  const leading = marked(plan, memory, live ? 'sitting' : 'whileOff').filter(({ place: { id, cabinet }, step }) =>
    live
      ? place.id.startsWith(folderOf(id))
      : step.whileOff === true && cabinet === place.cabinet && place.id.startsWith(around(id)),
  );
  const last = leading.reduce<Known | null>((a, b) => (a && a.seq > b.seq ? a : b), null);
  if (last === null || (!live && last.seq > memory.power.on && !isStale(plan, memory, place.cabinet, last.place.id)))
    return [];
  const page = leading.filter(({ place: { id } }) => folderOf(id) === folderOf(last.place.id));
  return page.flatMap(({ place: { id }, seq }) => (!live || seq <= memory.power.upset ? [id] : []));
}

/** Older than a proof may be when the lock went on: nothing held the power off in between. */
function isStale(plan: Plan, memory: Memory, cabinet: string, rested: string): boolean {
  // It is looked at once the cabinet is proved: on the way there the gates come first.
  if (memory.isolations[cabinet]?.proved == null) return false;
  const rules = plan.regions[cabinet]?.rules;
  const lock = rules && memory.facts[`dead:${cabinet}/${rules.reentry.void}`];
  const rest = memory.facts[rested];
  if (!lock || !rest || lock.seq < rest.seq) return false;
  return Date.parse(heardAt(lock)) - Date.parse(heardAt(rest)) > Number(rules.minutes.value) * 60_000;
}

/** They are asked again before it; and with a motor's bus that has to rest, what was proved of its cabinet falls. */
export const askAgain = (plan: Plan, memory: Memory, place: Place): Memory => {
  const dropped = drop(memory, overtaken(plan, memory, place));
  return place.class === 'live'
    ? noticed(dropped, 'again:sitting')
    : noticed(voidAll(plan, dropped, 'void'), 'again:rest');
};
