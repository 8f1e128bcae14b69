/** The proof of a manual: every reachable state, every rule, and the broken variants that it has to catch. */
import { compile } from '../compile.ts';
import { flatten, type Place } from '../flatten.ts';
import type { Manual } from '../vocabulary.ts';
import { type Subject, sound } from './bench.ts';
import { BROKEN, type Variant } from './broken.ts';
import { BUS, MAKE_DEAD, PAGES } from './scope.ts';
import { toward } from './toward.ts';
import { type Breach, type Walked, walk } from './walk.ts';
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

const isUsual = (unit: string): boolean => unit === 'psc';
/** The walks of which a proof is made up, the longest first: each may be gone by a process of its own. */
const WALKS = {
  usual: {
    name: 'the pages of a unit with a run capacitor, isolation as one step',
    scope: { ...PAGES, units: isUsual },
  },
  dead: { name: 'make-dead, in full', scope: MAKE_DEAD },
  others: {
    name: 'the pages of every other unit, isolation as one step',
    scope: { ...PAGES, units: (unit: string) => !isUsual(unit) },
  },
  bus: { name: 'an inverter’s make-dead, from its wait on', scope: BUS },
} as const;
export type WalkName = keyof typeof WALKS;
export const walksOf = ({ isolations }: Manual): readonly WalkName[] =>
  isolations?.inverter ? ['usual', 'dead', 'others', 'bus'] : ['usual', 'dead', 'others'];

/** One of the walks, as plain data. */
export interface Gone extends Omit<Walked, 'places' | 'ways'> {
  readonly walk: WalkName;
  readonly places: readonly string[];
  readonly ways: readonly string[];
}
export function goOver(manual: Manual, may: Subject['may'], name: WalkName): Gone {
  const walked = walk(sound(compile(manual), may), WALKS[name].scope);
  return { ...walked, walk: name, places: [...walked.places], ways: [...walked.ways] };
}

/** What all the walks of a manual say together. */
export function together(manual: Manual, gone: readonly Gone[]): Proof {
  const { plan } = compile(manual);
  const reached = new Set(gone.flatMap(({ places }) => places).flatMap((id) => stepOf(plan.places.get(id)) ?? []));
  const asked = [...plan.places.values()].filter((p) => 'parts' in p.step || p.step.verb === 'approval');
  const ways = waysOf(plan, new Set(gone.flatMap((one) => one.ways)), (place) => stepOf(place) ?? '');
  return {
    walks: walksOf(manual).flatMap((name) =>
      gone.filter((one) => one.walk === name).map(({ states, edges }) => ({ name: WALKS[name].name, states, edges })),
    ),
    breaches: [...gone.flatMap(({ breaches }) => breaches), ...bypasses(plan)],
    unreached: [...new Set(asked.map((p) => stepOf(p) ?? ''))].filter((s) => !reached.has(s)),
    ways: ways.count,
    untried: ways.untried,
  };
}
/**
 * A step whatever copy of its page it stands in. The gates up to the line are the same in every cabinet (`flows/dead/`)
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
  const { plan } = subject.machine;
  const walked = walk(subject, { ...variant.scope, stopAt: 1 }, toward(plan, flatten(manual)) ?? undefined);
  return { variant, breach: walked.breaches.find((b) => b.rule === variant.rule) ?? null, states: walked.states };
}
