import { expectTypeOf, test } from 'vitest';
import type { JudgementId, LimitsOf, OutcomeOf, TakesOf } from '../../engine/judgements/index.ts';

test('outcomes, facts and limits of a judgement are literal', () => {
  expectTypeOf<OutcomeOf<'bridge'>>().toEqualTypeOf<'induced' | 'real' | 'proving' | 'undecided'>();
  expectTypeOf<TakesOf<'residual'>>().toEqualTypeOf<'line' | 'look'>();
  expectTypeOf<LimitsOf<'case-leak'>>().toEqualTypeOf<'fail' | 'clear'>();
  expectTypeOf<LimitsOf<'sight'>>().toEqualTypeOf<never>();
  expectTypeOf<'section-values'>().toExtend<JudgementId>();
  // @ts-expect-error: no judgement is called that
  expectTypeOf<OutcomeOf<'section-value'>>();
});
