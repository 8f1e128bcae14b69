/** What a caller says of the unit, by the questions that take it down: each is one answer with one part of the same name. */
import type { Parts } from '../../schema.ts';
import type { Given } from '../judgement.ts';
import { chosenOf } from '../read.ts';

export const SEEN = ['display', 'blower', 'outdoor', 'breaker', 'signs', 'recent', 'kind'] as const;
export type SeenPart = (typeof SEEN)[number];
export type Seen = Given<SeenPart>;

/** Whether one of these was chosen. */
export const saw = (seen: Seen, part: SeenPart, ...options: string[]): boolean =>
  chosenOf(seen[part], part).some((option) => options.includes(option));

/** What was chosen, `outdoor.silent`, in the order of the questions. */
export const sightings = (seen: Seen): string[] =>
  SEEN.flatMap((part) => chosenOf(seen[part], part).map((option) => `${part}.${option}`));

/** A probe's answers. */
export const told = (of: Partial<Record<SeenPart, string | readonly string[]>>): Partial<Record<SeenPart, Parts>> =>
  Object.fromEntries(
    Object.entries(of).map(([part, chosen]) => [part, { [part]: { kind: 'choice', chosen: [chosen].flat() } }]),
  );
