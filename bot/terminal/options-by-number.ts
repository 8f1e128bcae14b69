/** The numbers before the options. They run through all parts of a question, so that one line may answer several. */
import type { GivenParts, Option, Part } from '../../engine/index.ts';

export interface Numbered {
  readonly part: string;
  readonly option: Option;
}

/** In the order shown; none where a bare number could be a reading or a label. */
export function numbered(parts: readonly Part[]): Numbered[] {
  if (parts.some((p) => p.kind === 'label' || (p.kind === 'field' && !p.optional))) return [];
  return parts.flatMap((p) => ('options' in p ? p.options.map((option) => ({ part: p.key, option })) : []));
}

/** "2", "1 4, 9": what these numbers choose; null for a line of anything else. */
export function chosenByNumber(line: string, parts: readonly Part[]): GivenParts | null {
  if (!/^\d{1,2}([\s,;&+]+\d{1,2})*\.?$/.test(line.trim())) return null;
  const options = numbered(parts);
  const chosen: Record<string, string[]> = {};
  for (const number of line.match(/\d+/g) ?? []) {
    const meant = options[Number(number) - 1];
    if (!meant) return null;
    chosen[meant.part] = [...(chosen[meant.part] ?? []), meant.option.id];
  }
  return chosen;
}
