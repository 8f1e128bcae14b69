/**
 * Long conversations by chance on the real desk and a real database, and the rules of the trade listening to them.
 *
 *   const { figures, breach } = await talk(asItIs(SHELF[0]), { turns: 20_000, seed: 7 });
 */
import { compile } from '../../compile.ts';
import type { Manual } from '../../vocabulary.ts';
import { clockFor } from '../clock.ts';
import type { Product } from './world.ts';

export { BROKEN_TALK } from './broken.ts';
export { talk } from './talk.ts';
export { tellBreach, tellFigures } from './tell.ts';
export type { Product } from './world.ts';

export const asItIs = (manual: Manual): Product => ({
  ...{ manual, machine: compile(manual), around: (desk) => desk, clock: clockFor },
});
