import { expect, test } from 'vitest';
import { flatten } from '../../engine/flatten.ts';
import { SHELF } from '../../flows/index.ts';
import { limitsGiven } from '../judgements/manual-limits.ts';

test('what judgements are heard to say is said with the limits that the pages give them', () => {
  for (const manual of SHELF)
    for (const { id, step } of flatten(manual).places.values()) {
      const here = step.verb === 'judge' ? [step] : 'shows' in step ? (step.shows ?? []) : [];
      for (const { judgement, limits } of here)
        if (Object.keys(limits).length > 0)
          expect(limitsGiven(judgement), `${id}, ${judgement}`).toContainEqual(limits);
    }
});
