/** mathjs as an oracle. Its one-file build is loaded: the package's hundreds of modules take seconds in every test file. */
import { createRequire } from 'node:module';
import type * as Mathjs from 'mathjs';
import type { Check } from './check.ts';

const mathjs = createRequire(import.meta.url)('mathjs/lib/browser/math.js') as typeof Mathjs;

/** The number that mathjs comes to, by units and complex figures too; of several statements the last one's. */
export function computed(expression: string): number {
  const result: unknown = mathjs.evaluate(expression);
  return Number(mathjs.isResultSet(result) ? result.entries.at(-1) : result);
}

/** The same as the oracle of a check. */
export const byMathjs = (expression: string, within = 1e-9): NonNullable<Check['oracle']> => ({
  name: 'mathjs',
  says: () => computed(expression),
  within,
});
