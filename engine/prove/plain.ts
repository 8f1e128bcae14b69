/** Where one plain answer is enough, because the same page is tried in full elsewhere. */
import type { Place } from '../flatten.ts';
import type { Memory } from '../memory.ts';
import { labelWords } from '../prompt.ts';
import { memoryOf, placeIdOf, planOf, type Standing } from '../replay.ts';
import { route } from '../route.ts';
import type { Turn } from './bench.ts';
import { type Node, sortedAhead, sortsOf, valueKey } from './key.ts';
import { cabinetOf } from './rules/evidence.ts';

/** Pages that ask for the kind of unit by name. */
const OF_A_CLASS = /\/(class|box|monitor|ecm-fan|block|supply|inverter|restart|motors|terminals)(\/|$)/;
const SORT = '/sort';

/**
 * Whether only a plain answer is tried. The tests of a block don't look at what was found before them, so after a finding
 * they are walked plainly to the step that sorts. So they are on other observations and classes than the usual ones, which
 * go fewer of the same pages; and a later round, a copy of the first, is walked plainly to its restart.
 */
export function isPlain(node: Node): boolean {
  const { standing } = node.state;
  const plan = planOf(standing);
  const at = plan.places.get(placeIdOf(standing));
  if (!at || at.gate) return false;
  if (at.round > 1) return at.class !== 'live';
  // After a second part of one round the restart is a copy of the one before it.
  if (/^round~1\/(restarted|contactor)\//.test(at.id)) return true;
  const { passed } = route(plan, memoryOf(standing));
  if (isSeenElsewhere(node, at, passed)) return true;
  // Other classes go the same pages but for the few that ask for them by name; indoors nothing asks.
  const indoors = cabinetOf(at.id) === 'indoor';
  if (isOther(standing) && (at.class !== 'inside' || indoors) && !OF_A_CLASS.test(at.id)) return true;
  // The indoor board after the blower's block is a copy of the same page without it.
  if (at.id.includes('/source/') && passed.some((p) => p.step.verb === 'verdict' && p.id.includes('/blower/')))
    return true;
  // The block at hand, outdoors or in, ends where its findings are sorted.
  const sort = sortsOf(plan).find((p) => p.round === 1 && p.id.endsWith(SORT) && p.order > at.order);
  if (sort === undefined || !at.id.startsWith(sort.id.slice(0, -SORT.length + 1))) return false;
  const found = sortedAhead(plan, at, passed, sort.id).length > 0;
  if (indoors) return found;
  const { job } = memoryOf(standing);
  // Both motors are measured in full on one observation and one class; the others go the same pages.
  // What only another class has is measured in full on that class.
  if (['line', 'shell'].includes(at.name) || at.id.includes('/three~')) return false;
  const usual = isUsualCall(node);
  // What the diagram asks for is tried in full on a clean dual part: on what else is seen under the cover, one answer.
  if (at.name === 'asked-for' && !/^1 clean \d+\+\d/.test(seenUnder(job))) return true;
  // What only a step after the restart sorts by is no reason either to try all of a part again.
  if (at.id.includes('/run/') && sortedAhead(plan, at, passed).length > 0) return true;
  // A part that the diagram doesn't ask for, or of which nobody knows, is read once in full, and plainly when it is read again.
  if (/\/run\/(both|one)~[^1]/.test(at.id) && valueKey(job['diagram@outdoor']?.value) !== printed(job)) return true;
  // With a second capacitor only the second one is new, and which of them is meant by what was seen.
  const second = valueKey(job['count@outdoor']?.value) === '2' && !/another\/|\/run\/(wires|this-one)/.test(at.id);
  return !usual || second || found;
}

/** Findings that send to the insulation test; with others beside them the page is the same. */
const TO_INSULATION = ['good', 'measured', 'low', 'doubtful', 'fuse'];
/**
 * A page that several calls come to is tried in full on one of them. The restart: where nobody was indoors before it. The
 * search for what keeps a motor still: on the plate that most units have. That for the missing 24 V: before anything was
 * repaired. The air that is not cold: where the call began with one of the two motors, it is a copy. The insulation: on a part that the diagram asks for.
 */
function isSeenElsewhere({ state, evidence }: Node, at: Place, passed: readonly Place[]): boolean {
  const { job } = memoryOf(state.standing);
  const ahead = (): string[] => sortedAhead(planOf(state.standing), at, passed);
  switch (/(?<=^round~1\/)(restart|still|source|not-cold|insulation)(?=[~/])/.exec(at.id)?.[0]) {
    case 'restart':
      return evidence.indoor.unitClass !== null;
    case 'still':
      return evidence.indoor.unitClass !== null || job.volts !== undefined || valueKey(job.lra?.value) === '9';
    case 'source':
      return job.rla !== undefined || ahead().includes('doubtful');
    case 'not-cold':
      return ['c', 'f'].includes(valueKey(job['round:observation~1']?.value));
    case 'insulation':
      return (
        job.rla !== undefined ||
        valueKey(job['diagram@outdoor']?.value) !== printed(job) ||
        ahead().some((group) => !TO_INSULATION.includes(group))
      );
    default:
      return false;
  }
}

export const isOther = (standing: Standing): boolean =>
  !['', 'psc'].includes(valueKey(memoryOf(standing).job.class?.value));
const printed = (job: Memory['job']): string => valueKey(job['label@outdoor']?.value);
const seenUnder = (job: Memory['job']): string =>
  ['count@outdoor', 'condition@outdoor', 'label@outdoor'].map((name) => valueKey(job[name]?.value)).join(' ');
/** The call on which the dead tests are walked in full: both motors are measured, on a unit with a run capacitor. */
export function isUsualCall(node: Node): boolean {
  const { job } = memoryOf(node.state.standing);
  return valueKey(job['round:observation~1']?.value) === 'b' && valueKey(job.class?.value) === 'psc';
}

/** A plain answer says again what was read of the part under the cover. */
export function agrees({ reply }: Turn, { state: { standing } }: Node): boolean {
  const label = memoryOf(standing).job[`label@${cabinetOf(placeIdOf(standing))}`]?.value;
  const print = reply.kind === 'answer' ? reply.parts.print : undefined;
  return print === undefined || label?.kind !== 'label' || print === labelWords(label.label);
}
