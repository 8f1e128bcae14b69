/** What stands in a question's controls, and what of it is sent. */
import type { GivenParts, Part, Prompt } from '../../../engine/index.ts';

/** Per part: ids for choices, text for the rest. */
export type Values = Readonly<Record<string, string | readonly string[]>>;

/** By part: taken and not sent yet. */
export type Photos = Readonly<Record<string, Blob>>;

/** Which question this is: the same key, the same controls. */
export const questionKey = ({ seq, place, amends, kind }: Prompt): string => `${seq} ${kind} ${place} ${amends ?? ''}`;

/**
 * What is filled in before anybody touches it. Choices, prints and figures off a plate are remembered; a reading at
 * the unit is never, or a gate could be sent without measuring. A change begins with what was answered.
 */
export function filledIn(prompt: Prompt): Values {
  const out: Record<string, string | readonly string[]> = {};
  for (const part of prompt.parts) {
    if (!('remembered' in part) || part.remembered === null || part.remembered.length === 0) continue;
    if (part.kind === 'field' && prompt.amends === null && prompt.class !== 'eyes') continue;
    // What was kept is in the field's own unit, and would else be taken for one in the unit that is chosen beside it.
    const bare = part.kind === 'field' && choosesUnit(part) && /\d/.test(part.remembered);
    out[part.key] = bare ? `${part.remembered} ${part.unit.replace('Δ', '')}` : part.remembered;
  }
  return out;
}

/** The one part whose options may be sent by a tap, because nothing else has to be answered. */
export function tappedPart({
  parts,
  amends,
}: Prompt): Exclude<Part, { kind: 'field' | 'label' | 'photo' | 'note' }> | null {
  const needed = parts.filter((part) => !part.optional);
  const [only] = needed;
  if (!only || needed.length > 1 || !('options' in only)) return null;
  if (only.kind === 'choose' && only.several) return null;
  const spare = parts.filter((part) => part !== only);
  if (!spare.every((part) => part.kind === 'note' || part.kind === 'photo' || part.kind === 'label')) return null;
  return amends !== null && spare.length > 0 ? null : only;
}

/** Where the unit chosen beside a reading is kept among the values. */
export const unitKey = (part: Part): string => `${part.key} unit`;

const choosesUnit = (part: Part): boolean => part.kind === 'field' && (part.unitNeeded || part.prefers !== undefined);

function withUnit(part: Part, value: string, values: Values): string {
  const unit = values[unitKey(part)] ?? (part.kind === 'field' ? part.prefers : undefined);
  const bare = choosesUnit(part) && /\d\s*$/.test(value);
  return bare && typeof unit === 'string' ? `${value.trim()} ${unit}` : value;
}

/** What to send. A change sends what is different; an answer sends what is not empty. */
export function givenOf(prompt: Prompt, values: Values): GivenParts {
  const before = filledIn(prompt);
  const given: GivenParts = {};
  for (const part of prompt.parts) {
    // Its hash comes when it is sent.
    if (part.kind === 'photo') continue;
    const raw = values[part.key];
    const value = typeof raw === 'string' ? withUnit(part, raw, values) : raw;
    const empty = value === undefined || value.length === 0 || (typeof value === 'string' && value.trim() === '');
    const was = before[part.key];
    if (prompt.amends !== null) {
      if (String(value ?? '') === String(was ?? '')) continue;
      if (empty) given[part.key] = part.kind === 'field' ? '_' : [];
      else given[part.key] = typeof value === 'string' ? value : [...value];
    } else if (!empty) given[part.key] = typeof value === 'string' ? value : [...value];
  }
  return given;
}

/** The unsent contents of a question in one line, for a person whose question is gone. */
export function spelledOut(prompt: Prompt, values: Values): string {
  const pieces = prompt.parts.flatMap((part) => {
    const value = values[part.key];
    if (value === undefined || value.length === 0) return [];
    if (typeof value === 'string') return [`${part.ask}: ${value}`];
    const options = 'options' in part ? part.options : [];
    return [`${part.ask}: ${value.map((id) => options.find((o) => o.id === id)?.label ?? id).join(', ')}`];
  });
  return pieces.join(' · ');
}
