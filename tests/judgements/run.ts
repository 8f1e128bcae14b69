import { type JudgementId, judgements, type OutcomeOf } from '../../engine/judgements/index.ts';
import type { Force, Judged, Judgement, Limit } from '../../engine/judgements/judgement.ts';
import type { Parts } from '../../engine/schema.ts';
import { FORCE, LIMITS } from './fixture.ts';

/** Runs a judgement by its id with the test's limits; facts left out were never asked. */
export function run<Id extends JudgementId>(
  id: Id,
  given: Partial<Record<string, Parts>>,
  force: Force = FORCE,
): Judged<OutcomeOf<Id>> {
  const j = judgements[id] as unknown as Judgement<string, string, OutcomeOf<Id>>;
  const filled = Object.fromEntries(j.takes.map((name) => [name, given[name]]));
  return j.run(filled, LIMITS[id] as Readonly<Record<string, Limit>>, force);
}

/** What each line of a judgement's probe comes to: outcome and the last finding's reading, in plain spaces. */
export function probed(id: JudgementId): string[] {
  const j = judgements[id] as unknown as Judgement<string, string, string>;
  return j.probe(LIMITS[id] as Readonly<Record<string, Limit>>).map((given) => {
    const { outcome, findings } = run(id, given);
    return `${outcome}: ${findings.at(-1)?.reading ?? ''}`.replaceAll('\u2009', ' ');
  });
}
