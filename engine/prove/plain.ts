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

/** What a rule looks at: where the walk stands, and in the block at hand what was found in it. */
interface Here {
  readonly node: Node;
  readonly at: Place;
  readonly job: Memory['job'];
  readonly passed: readonly Place[];
  readonly indoors: boolean;
  /** In a block of dead tests, outdoors or in, which ends where its findings are sorted. */
  readonly inBlock: boolean;
  /** Whether something was found in it. */
  readonly found: () => boolean;
  /** What was found and a step further down sorts by. */
  readonly ahead: () => readonly string[];
}
type Rule = readonly [why: string, plain: (here: Here) => boolean | null];

/** In this order, the first that says yes or no decides. A page that none speaks of is tried in full. */
const RULES: readonly Rule[] = [
  ['a gate is always tried in full', ({ at }) => (at.gate ? false : null)],
  [
    'a later round is a copy of the first, but for what is live',
    ({ at }) => (at.round > 1 ? at.class !== 'live' : null),
  ],
  [
    'after a second part of one round the restart is a copy of the one before it',
    ({ at }) => yes(/^round~1\/(restarted|contactor)\//.test(at.id)),
  ],
  ['a page that several calls come to is tried in full on one of them', (here) => yes(isSeenElsewhere(here))],
  [
    'what is put right after an insulation test is put right as on every other call',
    ({ at, passed }) =>
      yes(/^round~1\/(repair|under-load)\//.test(at.id) && passed.some(({ id }) => id.includes('/insulation~'))),
  ],
  [
    'a new part is measured in full where nothing was found but what it is for; a third one, where the first two were picked alike',
    (here) => yes(isNewPart(here.at) && (isBesideOthers(here) || isThirdOfSeveral(here))),
  ],
  [
    'figures, and a line of volts that is read again, are tried in full on the usual part, on one section where nothing was mended, and such a line beside one plate',
    (here) =>
      yes(
        (/\/restart\/figures$/.test(here.at.id) && !isUsualPart(here) && !isOneUnmended(here)) ||
          (/\/(repeat|at-coil)$/.test(here.at.id) && !isUsualPart(here)) ||
          (/\/restart\/supply\/repeat$/.test(here.at.id) && ['', '9'].includes(valueKey(here.job.lra?.value))),
      ),
  ],
  [
    'other classes go the same pages but for the few that ask for them by name; indoors nothing asks',
    ({ node, at, indoors }) =>
      yes(isOther(node.state.standing) && (at.class !== 'inside' || indoors) && !OF_A_CLASS.test(at.id)),
  ],
  [
    'the indoor board after the blower’s block is a copy of the same page without it',
    ({ at, passed }) =>
      yes(at.id.includes('/source/') && passed.some((p) => p.step.verb === 'verdict' && p.id.includes('/blower/'))),
  ],
  ['outside a block all of a page is tried', ({ inBlock }) => (inBlock ? null : false)],
  [
    'the block of the indoor unit: in full until something is found',
    ({ indoors, found }) => (indoors ? found() : null),
  ],
  [
    'what only another class has is measured in full on that class',
    ({ at }) => (['line', 'shell'].includes(at.name) || at.id.includes('/three~') ? false : null),
  ],
  [
    'what the diagram asks for is tried in full on a clean dual part',
    ({ at, job }) => yes(at.name === 'asked-for' && !/^1 clean \d+\+\d/.test(seenUnder(job))),
  ],
  [
    'behind a high-pressure switch that was laid to the fan the first readings of the part are tried in full',
    ({ at, passed }) =>
      /\/run\/both~1\/sections$/.test(at.id) && concluded(passed, 'high-pressure-fan') ? false : null,
  ],
  [
    'what only a step after the restart sorts by is no reason to try all of a part again',
    ({ at, ahead }) => yes(at.id.includes('/run/') && ahead().length > 0),
  ],
  [
    'a part that the diagram doesn’t ask for, or of which nobody knows, is read once in full',
    ({ at, job }) =>
      yes(/\/run\/(both|one)~[^1]/.test(at.id) && valueKey(job['diagram@outdoor']?.value) !== printed(job)),
  ],
  [
    'with a second capacitor only the second one is new, and which of them is meant by what was seen',
    ({ at, job }) =>
      yes(valueKey(job['count@outdoor']?.value) === '2' && !/another\/|\/run\/(wires|this-one)/.test(at.id)),
  ],
  [
    'both motors are measured in full on one observation and one class, until something is found',
    ({ node, found }) => found() || !isUsualCall(node),
  ],
];
const yes = (plain: boolean): true | null => plain || null;

/**
 * Whether only a plain answer is tried. The tests of a block don't look at what was found before them, so after a finding
 * they are walked plainly to the step that sorts. So they are on other observations and classes than the usual ones, which
 * go fewer of the same pages; and a later round, a copy of the first, is walked plainly to its restart.
 */
export function isPlain(node: Node): boolean {
  const { standing } = node.state;
  const plan = planOf(standing);
  const at = plan.places.get(placeIdOf(standing));
  if (!at) return false;
  const memory = memoryOf(standing);
  const { passed } = route(plan, memory);
  const sort = sortsOf(plan).find((p) => p.round === 1 && p.id.endsWith(SORT) && p.order > at.order);
  const inBlock = sort !== undefined && at.id.startsWith(sort.id.slice(0, -SORT.length + 1));
  const here: Here = {
    ...{ node, at, passed, job: memory.job, indoors: cabinetOf(at.id) === 'indoor' },
    inBlock,
    found: () => inBlock && sortedAhead(plan, at, passed, sort.id).length > 0,
    ahead: () => sortedAhead(plan, at, passed),
  };
  for (const [, plain] of RULES) {
    const said = plain(here);
    if (said !== null) return said;
  }
  return false;
}

/** Findings that send to the insulation test; with others beside them the page is the same. */
const TO_INSULATION = ['good', 'measured', 'low', 'doubtful', 'fuse'];
/**
 * A page that several calls come to is tried in full on one of them. The restart: where nobody was indoors before it. The
 * search for what keeps a motor still: on the plate that most units have. That for the missing 24 V: before anything was
 * repaired, where none arrived outdoors. The air that is not cold: where the call began with one of the two motors, it is a copy. The insulation: where the call began with the trip, on a part that the diagram asks for.
 */
function isSeenElsewhere({ node: { evidence }, at, job, passed, ahead }: Here): boolean {
  switch (/(?<=^round~1\/)(restart|still|source|not-cold|insulation)(?=[~/])/.exec(at.id)?.[0]) {
    case 'restart':
      return evidence.indoor.unitClass !== null;
    case 'still':
      return evidence.indoor.unitClass !== null || job.volts !== undefined || valueKey(job.lra?.value) === '9';
    case 'source':
      return (
        job.rla !== undefined ||
        ahead().includes('doubtful') ||
        (!/\/(door|put-back|door-.*|reset.*)$/.test(at.id) && !concluded(passed, 'no-call-outdoors'))
      );
    case 'not-cold':
      return ['c', 'f'].includes(valueKey(job['round:observation~1']?.value));
    case 'insulation':
      return (
        job.rla !== undefined ||
        valueKey(job['round:observation~1']?.value) === 'a' ||
        valueKey(job['diagram@outdoor']?.value) !== printed(job) ||
        ahead().some((group) => !TO_INSULATION.includes(group))
      );
    default:
      return false;
  }
}

const isNewPart = ({ id }: Place): boolean => /\/repair\/(with-motor|new|new-other)~\d\/part$/.test(id);
/** What the repair goes on to after this part, or only the restart sorts by: the part doesn't look at it. */
const isBesideOthers = ({ at, passed, ahead }: Here): boolean =>
  ahead().some((group) => BESIDE.includes(group)) ||
  (/\/new~/.test(at.id) && passed.some(({ id }) => /\/repair\/with-motor~/.test(id)));
const BESIDE = ['doubtful', 'cleared', 'hot', 'open', 'asked', 'once', 'contactor'];
/** Of three tries the last: picks that were not alike before it lead to the same question. */
function isThirdOfSeveral({ node, at }: Here): boolean {
  const third = /^(.*)~3\/part$/.exec(at.id)?.[1];
  const picked = (n: number): string =>
    valueKey(memoryOf(node.state.standing).facts[`${third}~${n}/part`]?.body.parts.pick);
  return third !== undefined && (picked(1) !== 'first' || picked(2) !== 'first');
}
/** A dual part that the diagram asks for, and no new motor with a print of its own; or none was looked at yet. */
function isUsualPart({ job }: Here): boolean {
  const print = printed(job);
  const asked = valueKey(job['diagram@outdoor']?.value);
  return !print.endsWith('+') && ['', print].includes(asked) && job['motor-label@outdoor'] === undefined;
}
const isOneUnmended = ({ job, ahead }: Here): boolean =>
  printed(job).endsWith('+') &&
  valueKey(job.lra?.value) !== '9' &&
  !ahead().some((group) => ['repaired', ...BESIDE].includes(group));

const concluded = (passed: readonly Place[], verdict: string): boolean =>
  passed.some(({ step }) => step.verb === 'verdict' && step.verdict === verdict);
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
