/** Forgetting: every way in which an isolation, an answer, or what rests on it stops counting. The record keeps it all. */
import { jobName, type Place, type Plan } from './flatten.ts';
import { type Memory, NO_ISOLATION } from './memory.ts';
import type { Parts } from './schema.ts';

export type Reentry = 'age' | 'void' | 'holder';

export const noticed = (memory: Memory, code: string): Memory =>
  memory.notices.includes(code) ? memory : { ...memory, notices: [...memory.notices, code] };

/** Drops the places named and remembers their answers for the chips. */
export function drop(memory: Memory, places: readonly string[]): Memory {
  const falling = places.flatMap((id) => (memory.facts[id] ? [[id, memory.facts[id]] as const] : []));
  if (falling.length === 0) return memory;
  const gone = new Set(falling.map(([id]) => id));
  return {
    ...memory,
    facts: Object.fromEntries(Object.entries(memory.facts).filter(([id]) => !gone.has(id))),
    remembered: { ...memory.remembered, ...Object.fromEntries(falling.map(([id, { body }]) => [id, body.parts])) },
    fallen: memory.fallen.concat(falling.map(([, { seq }]) => seq)),
  };
}

/**
 * From this step of make-dead on, everything is asked again, and nothing is proved. `age`: the lock stays, but it is
 * confirmed with the proving line; that stays due until the line is accepted or the lock itself is asked again, and is
 * due again where the line that confirmed it is forgotten.
 */
export function reopen(plan: Plan, memory: Memory, cabinet: string, step: string, age = false): Memory {
  const places = plan.regions[cabinet]?.places ?? [];
  const from = places.indexOf(`dead:${cabinet}/${step}`);
  if (from < 0) throw new Error(`make-dead has no step ${step}`);
  const lock = places.indexOf(`dead:${cabinet}/${plan.regions[cabinet]?.rules.reentry.void}`);
  const asked = places.slice(from);
  const dropped = drop(memory, asked);
  const before = dropped.isolations[cabinet] ?? NO_ISOLATION;
  const due = before.again || asked.some((id) => hasConfirmed(plan, id, memory.facts[id]?.body.parts));
  const again = age || (due && from > lock);
  // How the means is held open is approved for this lock and this means; where they are asked again, so is that.
  const approve = places.findIndex((id) => plan.places.get(id)?.step.verb === 'approval');
  const approvals =
    from <= approve && dropped.approvals.includes(cabinet)
      ? dropped.approvals.filter((c) => c !== cabinet)
      : dropped.approvals;
  return {
    ...dropped,
    approvals,
    isolations: { ...dropped.isolations, [cabinet]: { ...before, proved: null, again } },
  };
}

/** Whether a line said that the lock is still there, which is asked after a silence alone. */
const hasConfirmed = (plan: Plan, id: string, parts: Parts | undefined): boolean => {
  const step = plan.places.get(id)?.step;
  if (!parts || !step || !('parts' in step)) return false;
  return Object.entries(step.parts).some(([key, { when }]) => when && 'again' in when && parts[key] !== undefined);
};

/** Whether anything from a way of re-entry on (the lock, by default) has been answered: only then is there something to void. */
export function isBegun(plan: Plan, memory: Memory, cabinet: string, from: Reentry = 'void'): boolean {
  const places = plan.regions[cabinet]?.places ?? [];
  const first = places.indexOf(`dead:${cabinet}/${plan.regions[cabinet]?.rules.reentry[from]}`);
  return memory.isolations[cabinet]?.proved != null || places.slice(first).some((id) => memory.facts[id] !== undefined);
}

/** Whether any cabinet's isolation has. */
export const isAnyBegun = (plan: Plan, memory: Memory): boolean =>
  Object.keys(plan.regions).some((cabinet) => isBegun(plan, memory, cabinet));

/** Ends every isolation of the job. `age` keeps the chips and the lock, which is then confirmed with the proving line. */
export function voidAll(plan: Plan, memory: Memory, how: Reentry): Memory {
  let out = memory;
  for (const [cabinet, { rules }] of Object.entries(plan.regions)) {
    if (how !== 'holder' && !isBegun(plan, out, cabinet)) continue;
    out = reopen(plan, out, cabinet, rules.reentry[how], how === 'age');
  }
  return out;
}

/** Places that rest on others, and on which. */
const resting = new WeakMap<Plan, { readonly p: Place; readonly on: readonly string[] }[]>();
function restingIn(plan: Plan): readonly { readonly p: Place; readonly on: readonly string[] }[] {
  const known = resting.get(plan);
  if (known) return known;
  const all = [...plan.places.values()].flatMap((p) => {
    const on = 'restsOn' in p.step ? (p.step.restsOn ?? []).flatMap((r: string) => p.refs[r] ?? []) : [];
    return on.length > 0 ? [{ p, on }] : [];
  });
  resting.set(plan, all);
  return all;
}

/** An answer and all that rests on it, directly or through others. */
export function withdraw(plan: Plan, memory: Memory, place: string): Memory {
  const falling = new Set([place]);
  for (let grew = true; grew; ) {
    grew = false;
    for (const { p, on } of restingIn(plan)) {
      if (!falling.has(p.id) && on.some((id) => falling.has(id))) {
        falling.add(p.id);
        grew = true;
      }
    }
  }
  let out = memory;
  const fact = memory.facts[place];
  if (fact) {
    const without = (job: Memory['job']): Memory['job'] =>
      Object.fromEntries(Object.entries(job).filter(([, f]) => f.of !== fact.seq));
    const at = plan.places.get(place);
    const undone = at && 'act' in at.step && at.step.act === 'fit' ? at : undefined;
    const fitted = Object.fromEntries(
      Object.entries(out.fitted).flatMap(([round, job]) =>
        undone?.round === Number(round) ? [] : [[round, without(job)]],
      ),
    );
    // The old part is in again, and with it what was known of it.
    const then = (undone && out.fitted[undone.round]) ?? {};
    const renews = (undone && 'renews' in undone.step ? undone.step.renews : undefined) ?? [];
    const back = renews.flatMap((as) => {
      const name = undone ? jobName(as, undone) : as;
      return then[name] && !out.job[name] ? [[name, then[name]] as const] : [];
    });
    out = { ...out, job: { ...Object.fromEntries(back), ...without(out.job) }, fitted };
  }
  for (const id of falling) {
    const p = plan.places.get(id);
    out = p?.gate ? reopen(plan, out, p.cabinet, p.name) : drop(out, [id]);
  }
  return out;
}
