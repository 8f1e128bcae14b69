/** The class of a step, derived from what it does. No author types it, so none can be forgotten or talked down. */

import type { Quantity } from './quantity.ts';
import type { StepClass } from './schema.ts';
import type { AskStep, Step } from './vocabulary.ts';

const LEADS_ON_DEAD_PARTS: readonly Quantity[] = ['capacitance', 'resistance', 'insulation'];
const PRESENT: readonly Quantity[] = ['voltage', 'current'];

/**
 * Inside: an act, or µF, Ω, MΩ on anything. Volts or amps on line or on a part are live, and *proving* only within
 * make-dead's own pages; on the 24 V circuit they are control live. The rest touches nothing.
 */
export function classOf(step: Exclude<Step, { verb: 'include' }>, inMakeDead: boolean): StepClass {
  if (!('parts' in step)) return 'eyes';
  if (step.verb === 'act') return 'inside';
  if (step.circuit === 'none') return 'eyes';
  const measured = quantities(step);
  if (measured.some((q) => LEADS_ON_DEAD_PARTS.includes(q))) return 'inside';
  if (!measured.some((q) => PRESENT.includes(q))) return 'eyes';
  if (step.circuit === 'control') return 'control live';
  return inMakeDead ? 'proving' : 'live';
}

export const quantities = (step: AskStep): Quantity[] =>
  Object.values(step.parts).flatMap((p) => (p.part === 'field' ? [p.quantity] : []));
