/** Calls brought to a point, so that a test says only what it is about. */
import type { Settings } from '../../engine/schema.ts';
import { Conversation, type PersonId } from '../people.ts';

export const MEANS = 'pull-out, breaker, no other feed, two legs, outlet';
/** Live-dead-live in one line, and the residuals between two readings of the battery. */
export const PROVING = '121 / 0.2 0 0.1 / 0 0 / 121';
export const RESIDUAL = '9.3 / 0.6 0.1 0.5 / 9.3';
/** Three lines, on which no motor needs a capacitor. */
export const THREE = { unit: 'three-phase', means: 'breaker, no other feed, three lines, outlet' };
export const PROVING_THREE = '121 / 0.2 0 0 0.1 0 0 / 0 0 0 / 121';
/** Fuses, contactor and loads to ground; the spin and the compressor's windings: all good. */
export const BLOCK = 'fuses 0.1 0.1 contacts .1 .1 coil 12.6 t1g ol t2g ol';
export const MOTORS = ['spin free', 'cr .9 cs 2.7 sr 3.6 g ol'];
/** The new part, measured dead and fitted, the wires back. */
export const REPAIR = ['nothing', 'other 45+5 440 herm 45.3 fan 5.04', 'fitted', 'wires back'];
export const PLATE = '17.9 96 1.2';
/** A print of 45+5 µF ±6 %: both sections good, HERM weak, FAN weak. */
export const GOOD = 'herm 44.6 fan 5.03 hf 4.52 case ol';
export const WEAK_HERM = 'herm 36.1 fan 5.02 hf 4.4 case ol';
export const WEAK_FAN = 'herm 44.6 fan 2.9 hf 2.72 case ol';

interface Given {
  unit?: string;
  means?: string;
  look?: string;
  settings?: Partial<Settings>;
  assigned?: readonly PersonId[];
  by?: PersonId;
}
const STEPS = [
  'observation',
  'class',
  'fit',
  'means',
  'locked',
  'look',
  'proving',
  'residual',
  'block',
  'asked-for',
  'wires',
  'readings',
] as const;
export type Step = (typeof STEPS)[number];

/** A sound call that has been answered up to this question, which now stands. */
export function at(step: Step, given: Given = {}): Conversation {
  const { unit = 'psc', means = MEANS, look = 'clean, 1 cap, 45+5 6% 440', by = 'ines', ...options } = given;
  const lines = ['d', unit, 'yes', means, 'yes', look, PROVING, RESIDUAL, BLOCK, 'no diagram', 'done'];
  return typed(new Conversation(options), lines.slice(0, STEPS.indexOf(step)), by);
}

/** After a weak HERM: the new part is in, and the live figures stand to be read. */
export const atFigures = (given: Given = {}): Conversation =>
  typed(at('readings', given), [WEAK_HERM, ...MOTORS, ...REPAIR, PLATE, 'closed'], given.by);

/** Lines that all have to be taken. */
export function typed(c: Conversation, lines: readonly string[], by: PersonId = 'ines'): Conversation {
  for (const line of lines) {
    c.type(line, by);
    if (c.refusal) throw new Error(`"${line}" at ${c.place}: ${c.refusal.code} ${c.refusal.text}`);
  }
  return c;
}

/** The last name of a place: `dead:outdoor/proving` is proving. */
export const here = (c: Conversation): string => c.prompt().place.split('/').at(-1) ?? '';
export const strip = (c: Conversation): string => c.prompt().isolation[0]?.state ?? '';
/** Everything the last verdict on the record says of its readings. */
export function evidence(c: Conversation): string {
  const last = c.entries.findLast((e) => e.kind === 'concluded' && e.body.findings.length > 0);
  return last?.kind === 'concluded' ? last.body.findings.map((f) => `${f.name}: ${f.word}. ${f.text}`).join('\n') : '';
}
