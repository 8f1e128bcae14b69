/** The proof of a manual: every reachable state, every rule, and the broken variants that it has to catch. */
import { compile } from '../compile.ts';
import type { Place } from '../flatten.ts';
import type { Manual } from '../vocabulary.ts';
import { type Subject, sound } from './bench.ts';
import { BROKEN, type Variant } from './broken.ts';
import { type Breach, BUS, MAKE_DEAD, PAGES, walk } from './walk.ts';
import { waysOf } from './ways.ts';
import { bypasses } from './wording.ts';

export { rulesTable, walksTable } from './table.ts';
export { BROKEN, type Breach, type Subject, type Variant };
export const RULES = ['R1', 'R2', 'R3', 'R4', 'R5', 'R6', 'R7', 'R8', 'R9', 'R10', 'R12', 'R13'] as const;

export interface Proof {
  readonly walks: readonly { readonly name: string; readonly states: number; readonly edges: number }[];
  readonly breaches: readonly Breach[];
  /** Steps that no walk reached in any copy of their page. */
  readonly unreached: readonly string[];
  /** How many ways lead out of the steps, and those that no walk went in any copy of their page. */
  readonly ways: number;
  readonly untried: readonly string[];
}

export function prove(manual: Manual, may: Subject['may']): Proof {
  const machine = compile(manual);
  const subject = sound(machine, may);
  const dead = walk(subject, MAKE_DEAD);
  const bus = manual.isolations?.inverter ? walk(subject, BUS) : null;
  const pages = walk(subject, PAGES);
  const reached = new Set(
    [...dead.places, ...(bus?.places ?? []), ...pages.places].flatMap(
      (id) => stepOf(machine.plan.places.get(id)) ?? [],
    ),
  );
  const asked = [...machine.plan.places.values()].filter((p) => 'parts' in p.step || p.step.verb === 'approval');
  const ways = waysOf(
    machine.plan,
    new Set([...dead.ways, ...(bus?.ways ?? []), ...pages.ways]),
    (place) => stepOf(place) ?? '',
  );
  return {
    walks: [
      { name: 'make-dead, in full', states: dead.states, edges: dead.edges },
      ...(bus ? [{ name: 'an inverter’s make-dead, from its wait on', states: bus.states, edges: bus.edges }] : []),
      { name: 'the pages, isolation as one step', states: pages.states, edges: pages.edges },
    ],
    breaches: [...dead.breaches, ...(bus?.breaches ?? []), ...pages.breaches, ...bypasses(machine.plan)],
    unreached: [...new Set(asked.map((p) => stepOf(p) ?? ''))].filter((s) => !reached.has(s)),
    ways: ways.count,
    untried: ways.untried,
  };
}
/**
 * A step whatever copy of its page it stands in. The gates up to the line are the same in every cabinet (`flows/gates.ts`)
 * and are walked in full with the first; what an inverter has of its own has a walk of its own.
 */
export function stepOf(place: Place | undefined): string | undefined {
  if (!place) return undefined;
  return `${place.gate && place.name !== 'waited' && place.name !== 'bus' ? 'gates' : place.page}/${place.name}`;
}

export interface Caught {
  readonly variant: Variant;
  /** The breach of the rule that the variant breaks, or null where the proof missed it. */
  readonly breach: Breach | null;
  readonly states: number;
}
/** Walks a broken variant until a rule speaks. */
export function catchIt(variant: Variant, manual: Manual, may: Subject['may']): Caught {
  const subject = variant.subject(manual, may);
  const words = bypasses(subject.machine.plan);
  if (words[0]) return { variant, breach: words[0], states: 0 };
  const walked = walk(subject, { ...variant.scope, stopAt: 1 });
  return { variant, breach: walked.breaches.find((b) => b.rule === variant.rule) ?? null, states: walked.states };
}
