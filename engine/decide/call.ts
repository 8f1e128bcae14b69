/** What was learnt while a call was taken, as the job that it opens will know it. Pure: the same record, the same call. */
import type { Place, Plan } from '../flatten.ts';
import { judged } from '../known.ts';
import type { Memory } from '../memory.ts';
import { route } from '../route.ts';
import type { Call, Finding, Parts, TextRef } from '../schema.ts';
import { chosenLabels } from '../words.ts';

/** Facts that a caller brought are kept under names that begin so. */
const CALLER = 'caller:';
/** Among the words of a call: who is there whom the heat endangers. */
export const VULNERABLE = 'vulnerable';
const TOLD = `${CALLER}told`;
/** Of the form, not of the call. */
const ASIDE: readonly string[] = [TOLD, `${CALLER}before`];

/** The call without what only the desk can add: where it was taken, and the words under their new references. */
export interface Learnt {
  readonly call: Omit<Call, 'from' | 'words'>;
  /** The words as the record of the call has them, by what they are: name, phone, address and so on. */
  readonly words: Readonly<Record<string, TextRef>>;
  /**
   * Who is there whom the heat endangers, as it was chosen; null where nobody was named. It says how somebody is, so
   * the desk keeps it as words, which can be removed, and not in an entry.
   */
  readonly vulnerable: string | null;
}

export function learnt(plan: Plan, memory: Memory): Learnt {
  const placeOf = (judgement: string) =>
    route(plan, memory).passed.findLast(({ step }) => step.verb === 'judge' && step.judgement === judgement);
  const found = (judgement: string) => {
    const place = placeOf(judgement);
    return place ? judged(place, memory) : null;
  };
  const [urgency, causes, load] = [found('urgency'), found('likely-causes'), found('load')];
  const said = sayings(plan, memory);
  return {
    call: {
      urgency: urgencyOf(memory.alarm ? 'now' : urgency?.outcome),
      reasons: texts(urgency?.findings),
      causes:
        causes === null || causes.outcome === 'undecided'
          ? []
          : causes.findings.map(({ name, reading }) => ({ cause: name, because: reading })),
      load: load === null || load.outcome === 'undecided' ? [] : texts(load.findings),
      certified: causes?.outcome === 'certified',
      said: said.flatMap(({ name, line }) => (ASIDE.includes(name) ? [] : [line])),
      told: said.flatMap(({ name, labels }) => (name === TOLD ? labels : [])),
    },
    words: Object.fromEntries(
      Object.entries(memory.job).flatMap(([name, { value }]) =>
        name.startsWith(CALLER) && value.kind === 'text' ? [[name.slice(CALLER.length), value.text]] : [],
      ),
    ),
    vulnerable: vulnerableOf(plan, memory, placeOf('urgency')),
  };
}

/** What the urgency was judged by, in the words of the page. */
function vulnerableOf(plan: Plan, memory: Memory, judge: Place | undefined): string | null {
  const written = judge?.step.verb === 'judge' ? judge.step.of.people : null;
  const asked = judge?.refs[written ?? '']?.find((id) => memory.facts[id] !== undefined);
  const step = asked === undefined ? undefined : plan.places.get(asked)?.step;
  if (asked === undefined || !step || !('parts' in step)) return null;
  const parts: Parts = memory.facts[asked]?.body.parts ?? {};
  const value = parts.vulnerable;
  const named = value?.kind === 'choice' ? value.chosen.filter((id) => id !== 'none' && id !== 'cant') : [];
  return named.length === 0 ? null : chosenLabels(step.parts.vulnerable, named).join(', ');
}

const texts = (findings: readonly Finding[] = []): string[] => findings.map(({ text }) => text);
function urgencyOf(outcome: string | undefined): Call['urgency'] {
  return outcome === 'now' || outcome === 'first' || outcome === 'today' || outcome === 'soon' ? outcome : null;
}

interface Saying {
  readonly name: string;
  readonly labels: string[];
  readonly line: string;
}
/** Every choice of the caller by its words, in the order of the pages. */
function sayings(plan: Plan, memory: Memory): Saying[] {
  const out: Saying[] = [];
  for (const { step } of plan.places.values()) {
    if (!('parts' in step)) continue;
    for (const part of Object.values(step.parts)) {
      const value = part.as?.startsWith(CALLER) ? memory.job[part.as]?.value : undefined;
      if (value?.kind !== 'choice' || part.as === undefined) continue;
      const labels = chosenLabels(part, value.chosen);
      out.push({ name: part.as, labels, line: `${part.ask}: ${labels.join(', ')}` });
    }
  }
  return out;
}
