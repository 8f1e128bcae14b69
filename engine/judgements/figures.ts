/** Figures of a finding for its picture: plain decimals, as exact as they were judged. */
import type { Exact, Range } from '../calc/exact.ts';
import type { Figures, Scale } from '../picture/data.ts';

const rangeFigures = ({ low, high }: Range): Scale['limits'] => ({ low: low.toFixed(), high: high.toFixed() });

interface Judged extends Pick<Scale, 'name' | 'unit' | 'word'> {
  readonly rated?: Exact;
  readonly limits: Range;
  readonly reading: Exact;
  readonly doubt: Range | null;
  readonly habit?: { readonly percent: string; readonly range: Range } | null;
}
/** As many characters as the data of a picture holds in one figure. */
const MOST = 40;
const tooLong = (value: unknown): boolean =>
  typeof value === 'string' ? value.length > MOST : Object.values(value ?? {}).some(tooLong);
/** A finding's picture, or none: limits of an absurd print can have more digits than a picture holds. */
export const pictured = (figures: Figures): { readonly figures?: Figures } => (tooLong(figures) ? {} : { figures });

/** A reading on the scale of its limits. */
export const scaleFigures = ({ name, unit, word, rated, limits, reading, doubt, habit }: Judged): Scale => ({
  kind: 'scale',
  name,
  unit,
  rated: rated?.toFixed() ?? null,
  limits: rangeFigures(limits),
  reading: reading.toFixed(),
  doubt: doubt && rangeFigures(doubt),
  habit: habit ? { percent: habit.percent, ...rangeFigures(habit.range) } : null,
  word,
});
