/** What of a manual a walk goes over, and what another walk, or another state of it, has already. */
import { memoryOf, placeIdOf, planOf } from '../replay.ts';
import type { Turn } from './bench.ts';
import { isProved, type Node, valueKey } from './key.ts';
import { cabinetOf, type Evidence, isOne } from './rules/evidence.ts';

export interface Scope {
  /** Whether a state is walked on from, and whether the isolation is made in one step. */
  readonly inside: (place: string, proved: boolean) => boolean;
  /** Of the states outside, those at which what may come at any time still comes. */
  readonly around?: (proved: boolean) => boolean;
  readonly composed: boolean;
  readonly stopAt: number;
  /** Only calls that begin with one of these observations; all of them where it is left out. */
  readonly calls?: string;
  /** Only units of one of these classes, once the class is said; the others have a walk beside this one. */
  readonly units?: (unit: string) => boolean;
  /** Where one answer alone is sent: the class of the unit that is walked, and gates that another walk has in full. */
  readonly plainly?: (place: string) => string | true | undefined;
  /** Pages that the proof goes over plainly, because it has them in full elsewhere, are gone over in full here as well. */
  readonly inFull?: true;
}
export const DEAD = 'dead:';
export const MAKE_DEAD: Scope = {
  // The gates of another cabinet are a copy of the same page, and what leads there is walked with the pages.
  // Of the pages before it only the two questions that lead there are walked on from: what they say is walked with the pages.
  inside: (place, proved) =>
    place.startsWith(DEAD)
      ? cabinetOf(place) === 'outdoor'
      : !proved && (place.startsWith('!') || /^round~1\/(observation|class)$/.test(place)),
  // A proof ends as well: what a gate said of the lock, or of its answers, may be taken back once dead is proved.
  around: (proved) => proved,
  composed: false,
  stopAt: 3,
};
/** An inverter's own make-dead: its gates up to the lock are those of every cabinet, its wait and its bus are tried in full. */
export const BUS: Scope = {
  inside: (place, proved) =>
    place.startsWith(`${DEAD}inverter/`) ||
    (!proved && (place.startsWith('!') || /^round~1\/(observation|class|inverter\/.*)$/.test(place))),
  composed: false,
  stopAt: 3,
  plainly: (place) => (place === 'round~1/class' ? 'inverter' : /\/(waited|bus)$/.test(place) ? undefined : true),
};
export const PAGES: Scope = { inside: () => true, composed: true, stopAt: 3 };

/** The usual supply, source and capacitor, or none of them known yet. */
const isUsual = (e: Evidence): boolean => !isOne(e) && (!e.means || (e.stated === 120 && !e.neutral && !e.secondFeed));
/**
 * Lines that are not accepted are counted alike on every supply, source, part and cabinet: that is walked on the usual
 * ones. So they are after a silence: there the first of them is walked.
 */
export const isCountedElsewhere = (scope: Scope, { state, evidence: { outdoor: e } }: Node): boolean => {
  const { failed: lines, job } = memoryOf(state.standing);
  const failed = lines.length;
  // The turn that says another class, at whatever step, is made and watched here; its pages are walked on beside this.
  // So are the pages indoors that ask for no class, where a walk is of the units that are not usual.
  if (scope.composed && scope.units !== undefined)
    return job.class === undefined
      ? cabinetOf(placeIdOf(state.standing)) === 'indoor' && !scope.units('psc')
      : !scope.units(valueKey(job.class.value));
  if (scope.composed) return false;
  if (!isUsual(e) && failed > 0) return true;
  return failed > 1 && (scope.plainly !== undefined || e.again || e.confirmed);
};

/**
 * What may come at any time is tried at every state of make-dead on the usual supply, source and capacitor, which it
 * doesn't look at; and at every step of the first round, in whatever try it stands, once with the isolation proved and once without.
 * The rounds after it are copies of the same pages.
 */
export function isTriedHere(scope: Scope, { state, evidence }: Node, tried: Set<string>): boolean {
  const here = placeIdOf(state.standing);
  if (!scope.composed) return isUsual(evidence.outdoor);
  if (here.startsWith(DEAD) || (planOf(state.standing).places.get(here)?.round ?? 1) !== 1) return false;
  const step = `${here.replace(/~\d+/g, '')} ${isProved(state.standing)}`;
  if (tried.has(step)) return false;
  tried.add(step);
  return true;
}

/** Make-dead is the same whatever was seen: it is walked from one observation whose dead tests come at once. */
export const begins = ({ composed, calls = composed ? undefined : 'd' }: Scope, { reply }: Turn): boolean =>
  calls === undefined || reply.kind !== 'answer' || calls.includes(String(reply.parts.choice));
