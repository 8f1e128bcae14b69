/** What was computed of each answer, so that a reading stands beside its limits, its doubt and where they come from. */

import { amendedFact } from '../facts.ts';
import type { Place, Plan } from '../flatten.ts';
import { judged } from '../known.ts';
import type { Memory } from '../memory.ts';
import { draw } from '../picture/draw.ts';
import { begin, memoryOf, planOf, type Standing, take } from '../replay.ts';
import { onward } from '../route.ts';
import type { Entry, Finding } from '../schema.ts';

/** A finding as the evidence table shows it. */
export interface Evidence extends Omit<Finding, 'figures'> {
  picture: { title: string; svg: string } | null;
}

/** Judges between one answer and the next question; a page has a few. */
const MOST = 50;

/**
 * Findings by the seq of the answer that they were computed from, as they were when it came: a proof of dead that has
 * ended since, and a line that was not accepted, keep theirs. A changed answer has those of its last change.
 */
export function evidence(machine: Standing['machine'], entries: readonly Entry[]): Map<number, Evidence[]> {
  const found = new Map<number, Evidence[]>();
  let standing = begin(machine, entries[0]?.job ?? '');
  for (const entry of entries) {
    standing = take(standing, entry);
    const of = entry.kind === 'amended' ? entry.body.of : entry.seq;
    const answer = entries[of - 1];
    if ((entry.kind !== 'answered' && entry.kind !== 'amended') || answer?.kind !== 'answered') continue;
    const place = planOf(standing).places.get(answer.body.place);
    if (!place || answer.body.skipped) continue;
    const parts = entry.kind === 'amended' ? { ...answer.body.parts, ...entry.body.parts } : entry.body.parts;
    const known = memoryOf(standing).facts[place.id];
    // A line that was not accepted is forgotten at once; what was computed of it is not.
    const fact = known ?? amendedFact(answer, parts, of);
    const memory: Memory = { ...memoryOf(standing), facts: { ...memoryOf(standing).facts, [place.id]: fact } };
    const rows = judgedAfter(planOf(standing), place, memory);
    found.set(
      of,
      rows.map((f, i) => asEvidence(f, `${of}#${i}`)),
    );
  }
  return found;
}

/** What the judges say that stand between this answer and the next question. */
function judgedAfter(plan: Plan, place: Place, memory: Memory): Finding[] {
  const findings: Finding[] = [];
  let here = plan.places.get(onward(place, memory, []));
  for (let hops = 0; here && hops < MOST; hops++) {
    if (here.step.verb === 'judge') {
      const { outcome, findings: said } = judged(here, memory);
      findings.push(...said);
      here = plan.places.get(here.to[outcome] ?? '');
    } else here = here.step.verb === 'verdict' ? plan.places.get(here.next ?? '') : undefined;
  }
  return findings;
}

function asEvidence({ figures, ...rest }: Finding, key: string): Evidence {
  const drawn = figures ? draw(figures, { key: `evidence ${key}` }) : null;
  return { ...rest, picture: drawn && { title: drawn.title, svg: drawn.svg } };
}
