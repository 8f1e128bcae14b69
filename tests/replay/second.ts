/** A second version of the manual, as it would be published next: made in the test, with limits moved. */
import type { Manual } from '../../engine/vocabulary.ts';
import { SHELF } from '../../flows/index.ts';

export const [FIRST] = SHELF;

/** With another value for each limit of this name, wherever a judge is given one. */
export function withLimit(manual: Manual, name: string, value: string): Manual {
  const next = structuredClone(manual);
  let found = 0;
  const seen = new Set<unknown>();
  const look = (at: unknown): void => {
    if (typeof at !== 'object' || at === null || seen.has(at)) return;
    seen.add(at);
    const { limits } = at as { limits?: Record<string, { value: string }> };
    const limit = limits?.[name];
    if (limit) {
      limit.value = value;
      found += 1;
    }
    for (const inner of Object.values(at)) look(inner);
  };
  look(next);
  if (found === 0) throw new Error(`no judge has a limit ${name}`);
  return next;
}

/** Two limits moved: line voltage at the restart up to 230 V, and ±10 % where a label prints no tolerance. */
export const SECOND: Manual = {
  ...withLimit(FIRST, 'high', '230'),
  labelTolerance: { ...FIRST.labelTolerance, value: '10' },
  version: FIRST.version + 1,
};
