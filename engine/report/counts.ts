/** Under what an ended job counts: each verdict, each person whose lock was on it or who was sent, each part, its unit. */
import type { Standing } from '../replay.ts';
import type { Entry } from '../schema.ts';
import type { Count, Counts } from '../store/port.ts';
import { closed } from './closed.ts';
import { fittedWords } from './customer.ts';
import { UTC } from './when.ts';

/** Null while it is under way, for a training job, and for a call that was only taken: those never count. */
export function countsOf(standing: Standing, entries: readonly Entry[]): Counts | null {
  // Words that people typed are in no count: what is removed on a wish must not stay in a table.
  const job = closed(
    standing,
    entries,
    () => '',
    (id) => id,
  );
  if (!job || job.memory.training || job.manual.caller) return null;
  const { memory } = job;
  const holders = Object.values(memory.isolations).flatMap(({ holder }) => holder ?? []);
  const under: Count[] = [
    ...job.verdicts.map(({ body }): Count => ({ by: 'verdict', what: body.title })),
    ...[...memory.assigned, ...holders].map((what): Count => ({ by: 'person', what })),
    ...job.fitted.map((fitted): Count => ({ by: 'part', what: fittedWords(fitted) })),
    ...(memory.equipment ? [{ by: 'unit', what: memory.equipment.id } as const] : []),
  ];
  const ended = entries.findLast(({ kind }) => kind === 'answered' || kind === 'concluded' || kind === 'amended');
  const seen = new Set<string>();
  const once = under.filter(({ by, what }) => {
    const key = JSON.stringify([by, what]);
    if (seen.has(key)) return false;
    seen.add(key);
    return true;
  });
  return { day: UTC.day(ended?.at ?? memory.at), under: once };
}
