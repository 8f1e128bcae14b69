/**
 * What is known of the whole job may decide which readings prove a cabinet dead: a three-phase unit has a third line. Where
 * that is said otherwise later, and the line would not be accepted now, it is asked for again.
 */
import type { Place, Plan } from './flatten.ts';
import { noticed, reopen } from './forget.ts';
import { judged } from './known.ts';
import type { Memory } from './memory.ts';

export function judgedAnew(plan: Plan, before: Memory, after: Memory): Memory {
  if (before.job === after.job) return after;
  let out = after;
  for (const { judge, asked, names } of judgesOfGates(plan)) {
    // Where no line was taken yet, none has to be taken again.
    if (before.facts[asked.id] === undefined) continue;
    if (names.every((name) => before.job[name]?.value === after.job[name]?.value)) continue;
    if (judged(judge, before).outcome === judged(judge, out).outcome) continue;
    out = noticed(reopen(plan, out, judge.cabinet, asked.name), 'void:unit');
  }
  return out;
}

interface Judging {
  readonly judge: Place;
  /** Step that takes the readings it judges. */
  readonly asked: Place;
  /** Facts of the whole job that it reads. */
  readonly names: readonly string[];
}
const known = new WeakMap<Plan, readonly Judging[]>();
function judgesOfGates(plan: Plan): readonly Judging[] {
  const all =
    known.get(plan) ??
    Object.values(plan.regions).flatMap(({ places }) =>
      places.flatMap((id, i): Judging[] => {
        const judge = plan.places.get(id);
        if (judge?.step.verb !== 'judge') return [];
        const names = Object.values(judge.refs).flatMap((refs) =>
          refs.flatMap((ref) => (/^@(?!\+)/.test(ref) ? ref.slice(1) : [])),
        );
        const asked = places
          .slice(0, i)
          .flatMap((one) => plan.places.get(one) ?? [])
          .findLast((p) => 'parts' in p.step);
        return names.length === 0 || !asked ? [] : [{ judge, asked, names }];
      }),
    );
  known.set(plan, all);
  return all;
}
