/** Low, normal or high, and both words where a reading stands so near a limit that its doubt reaches over it. */
import type { Exact, Figure, Range } from '../../calc/exact.ts';
import type { Column, Level, Pattern } from '../cooling/cause-table.ts';
import { COLUMNS } from '../cooling/cause-table.ts';

export function levelsOf(value: Exact, { low, high }: Range, doubt: Figure): readonly Level[] {
  const levels: Level[] = [];
  if (value.minus(doubt).lt(low)) levels.push('low');
  if (value.plus(doubt).gte(low) && value.minus(doubt).lte(high)) levels.push('normal');
  if (value.plus(doubt).gt(high)) levels.push('high');
  return levels;
}

export const turned = (levels: readonly Level[]): readonly Level[] =>
  levels.map((level) => (level === 'low' ? 'high' : level === 'high' ? 'low' : level));

export type Levels = Readonly<Record<Column, readonly Level[]>>;

/** Every pattern that the doubt leaves open. */
export const patternsOf = (levels: Levels): readonly Pattern[] =>
  COLUMNS.reduce<readonly Partial<Pattern>[]>(
    (all, column) => all.flatMap((one) => levels[column].map((level) => ({ ...one, [column]: level }))),
    [{}],
  ) as readonly Pattern[];
