/** The isolation strip: one line for each cabinet, in view before every question. */
import type { IsolationLine } from '../../engine/index.ts';

/** An instant as the clock on the wall shows it. */
export type Wall = (instant: string) => string;
export const wallTime: Wall = (instant) => {
  const date = new Date(instant);
  return [date.getHours(), date.getMinutes()].map((n) => String(n).padStart(2, '0')).join(':');
};

/** `[Outdoor unit: PROVED DEAD, until 15:32; since 15:02, lock: Ines Vale]` */
export function stripLine(line: IsolationLine, names: (id: string) => string, wall: Wall): string {
  const until = line.until === null ? '' : `, until ${wall(line.until)}`;
  const more = [
    ...(line.since === null ? [] : [`since ${wall(line.since)}`]),
    ...(line.holder === null ? [] : [`lock: ${names(line.holder)}`]),
  ];
  return `[${line.cabinet}: ${line.words}${until}${more.length === 0 ? '' : `; ${more.join(', ')}`}]`;
}
