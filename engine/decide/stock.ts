/** What goes down on the truck when a part is fitted, and what the unit's record remembers of a call. */
import { givenAt } from '../facts.ts';
import type { Place, Plan } from '../flatten.ts';
import { judged } from '../known.ts';
import type { Memory } from '../memory.ts';
import { route } from '../route.ts';
import type { Draft, Parts, Past } from '../schema.ts';

const isDone = (parts: Parts | undefined): boolean => parts?.ok?.kind === 'choice' && parts.ok.chosen[0] === 'done';

/** `counted` for the parts that the new part's judgement says are used up, once it is fitted at this place. */
export function counted(plan: Plan, memory: Memory, fitted: string): Draft[] {
  const { passed } = route(plan, memory);
  const at = passed.findIndex((p) => p.id === fitted);
  const before = passed.slice(0, Math.max(at, 0));
  // Another part that was fitted since has nothing to do with this one.
  const since = before.findLastIndex((p) => 'act' in p.step && p.step.act === 'fit');
  const uses = before.slice(since + 1).flatMap((p) => (p.step.verb === 'judge' ? (judged(p, memory).uses ?? []) : []));
  return uses.flatMap(({ item, count }): Draft[] => {
    const known = memory.truck?.items.find((one) => one.id === item);
    if (!known) return [];
    return [{ kind: 'counted', body: { item, left: Math.max(0, known.count - count), used: count } }];
  });
}

/** What was read on the capacitors of this unit and what was fitted, in the order of the pages. */
export function pastOf(plan: Plan, memory: Memory, job: string): Past[] {
  const past: Past[] = [];
  let candidate: Past | null = null;
  const { passed } = route(plan, memory);
  for (const place of passed) {
    const fact = memory.facts[place.id];
    if ('act' in place.step && place.step.act === 'fit' && isDone(fact?.body.parts) && candidate && fact) {
      past.push({ ...candidate, at: givenAt(fact) });
      candidate = null;
    }
    if (place.step.verb !== 'judge') continue;
    const { judgement, of } = place.step;
    const name = judgement === 'section-values' ? of.readings : judgement === 'new-part' ? of.part : null;
    const readings = name == null ? undefined : memory.facts[place.refs[name]?.[0] ?? ''];
    if (!readings) continue;
    const [herm, fan] = [microfarads(readings.body.parts, 'herm'), microfarads(readings.body.parts, 'fan')];
    if (herm === null && fan === null) continue;
    const cabinet = place.beside === null ? {} : { cabinet: place.beside };
    const at = givenAt(readings);
    const line = { at, job, item: ITEM, ...cabinet, herm, fan };
    if (judgement === 'new-part') candidate = { ...line, what: 'fitted' };
    else if (past.at(-1)?.at !== at) past.push({ ...line, what: 'read' });
  }
  return withFigures(past, passed, memory, job);
}

/** Figures of the running unit stand with the last line of the call; of two rounds the later one's. */
function withFigures(past: readonly Past[], passed: readonly Place[], memory: Memory, job: string): Past[] {
  const figures = new Map<string, NonNullable<Past['figures']>[number]>();
  let at: string | null = null;
  for (const { id, step, class: kind, beside } of passed) {
    const fact = memory.facts[id];
    if (kind !== 'live' || !fact || !('parts' in step)) continue;
    for (const [key, { ask }] of Object.entries(step.parts)) {
      const value = fact.body.parts[key];
      if (value?.kind !== 'figure') continue;
      at = givenAt(fact);
      const cabinet = beside === null ? {} : { cabinet: beside };
      figures.set(`${beside ?? ''} ${ask}`, { name: ask, unit: value.unit, value: value.value, ...cabinet });
    }
  }
  const last = past.at(-1);
  if (at === null) return [...past];
  const all = [...figures.values()];
  if (last) return [...past.slice(0, -1), { ...last, figures: all }];
  return [{ at, job, what: 'read', item: 'running figures', herm: null, fan: null, figures: all }];
}
const ITEM = 'run capacitor';

function microfarads(parts: Parts, key: string): string | null {
  const value = parts[key];
  return value?.kind === 'figure' && value.unit === 'µF' ? value.value : null;
}
