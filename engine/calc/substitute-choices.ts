/** Every way to make up the wanted sections from usable stock, ranked. µF in parallel add: physics. */
import { Exact, within } from './exact.ts';
import type { Choice, Element, Fill, StockItem, Target, Wanted } from './substitute.ts';
import { deviationPercent } from './tolerance.ts';

/** Every admissible choice worth showing, the best first. */
export function ranked(wanted: Wanted, targets: readonly Target[], usable: readonly StockItem[]): Choice[] {
  const byId = new Map(usable.map((item) => [item.id, item]));
  const perTarget = targets.map((target) => fillsFor(target, usable, wanted));
  const combined = perTarget.reduce<Fill[][]>(
    (all, fills) => all.flatMap((done) => fills.map((fill) => [...done, fill])),
    [[]],
  );
  const made = combined.flatMap((fills) => choiceOf(fills, byId) ?? []);
  const order = (a: Choice, b: Choice): number =>
    a.worstPercent.cmp(b.worstPercent) ||
    a.partCount - b.partCount ||
    voltsOf(a, byId).cmp(voltsOf(b, byId)) ||
    (keyOf(a) < keyOf(b) ? -1 : 1);
  const sorted = made.sort(order);
  // A dual with a section left unused is the last resort: only where no choice takes its parts whole.
  const whole = sorted.filter((choice) => choice.way !== 'section-unused');
  const kept: Choice[] = [];
  for (const choice of whole.length > 0 ? whole : sorted) {
    if (!kept.some((better) => contains(choice, better))) kept.push(choice);
  }
  return kept;
}

/** Whether the first takes every part of the second: then it only adds parts to a choice at least as exact. */
const contains = (more: Choice, less: Choice): boolean =>
  less.parts.every(({ id, count }) => more.parts.some((part) => part.id === id && part.count >= count));

/**
 * What lies within the section's limits: one element, or for run capacitors two in parallel. Only singles are paired,
 * and the two sections of one dual where a single is wanted: other ties are more wiring than anybody should invent.
 */
function fillsFor({ rated, limits }: Target, usable: readonly StockItem[], wanted: Wanted): Fill[] {
  const elements = usable.map((item) =>
    item.sectionsMicrofarads.map((of, section): Element => ({ id: item.id, section, microfarads: new Exact(of) })),
  );
  const singles = elements.flatMap((all) => (all.length === 1 ? all : []));
  const duals = wanted.sectionsMicrofarads.length === 1 ? elements.filter((all) => all.length === 2) : [];
  const pairs = [...singles.flatMap((first, i) => singles.slice(i).map((second) => [first, second])), ...duals];
  const sets = [...elements.flat().map((element) => [element]), ...(wanted.kind === 'run' ? pairs : [])];
  return sets.flatMap((set) => {
    const microfarads = set.reduce((sum, element) => sum.plus(element.microfarads), new Exact(0));
    if (!within(microfarads, limits)) return [];
    const off = deviationPercent(microfarads, rated);
    return [{ wantedMicrofarads: rated, elements: set, microfarads, deviationPercent: off }];
  });
}

/** The choice these fills make; null where the truck has too few of an item. */
function choiceOf(fills: readonly Fill[], byId: ReadonlyMap<string, StockItem>): Choice | null {
  const uses = new Map<string, number[]>();
  for (const { id, section } of fills.flatMap((fill) => fill.elements)) {
    const of = uses.get(id) ?? byId.get(id)?.sectionsMicrofarads.map(() => 0) ?? [];
    of[section] = (of[section] ?? 0) + 1;
    uses.set(id, of);
  }
  // A dual gives each of its sections once, so the section used most often says how many are needed.
  const parts = [...uses].map(([id, of]) => ({ id, count: Math.max(...of) })).sort((a, b) => (a.id < b.id ? -1 : 1));
  if (parts.some(({ id, count }) => count > (byId.get(id)?.count ?? 0))) return null;
  const partCount = parts.reduce((sum, part) => sum + part.count, 0);
  const unused = [...uses.values()].some((of) => Math.min(...of) < Math.max(...of));
  const lone = fills.every((fill) => fill.elements.length === 1);
  const way = unused ? 'section-unused' : !lone ? 'parallel' : partCount === 1 ? 'same' : 'singles';
  return { way, fills, parts, partCount, worstPercent: Exact.max(...fills.map((f) => f.deviationPercent.abs())) };
}

const voltsOf = (choice: Choice, byId: ReadonlyMap<string, StockItem>): Exact =>
  Exact.max(...choice.parts.map((part) => byId.get(part.id)?.volts ?? 0));
const keyOf = (choice: Choice): string =>
  JSON.stringify(choice.fills.map((fill) => fill.elements.map((e) => [e.id, e.section])));
