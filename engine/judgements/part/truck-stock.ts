/** The capacitors of a truck, and what of them may take the place of a part. */

import { Exact } from '../../calc/exact.ts';
import { type StockItem as Counted, type Substitutes, substitutes } from '../../calc/substitutes.ts';
import type { StockItem, Truck } from '../../schema.ts';
import { asWanted, type Rating } from './wanted.ts';

export interface Offer {
  /** Every capacitor on the list, whether it fits or not. */
  readonly items: readonly StockItem[];
  readonly found: Substitutes;
  /** What can't be judged: its µF or its volts are not on the list. */
  readonly incomplete: readonly StockItem[];
}

/** How many choices are offered by number: nobody weighs a fourth at the unit (our setting). */
export const OFFERED = 3;

/** Null where no truck, or a truck without capacitors, is on record. An id that the list names twice counts once. */
export function offerOf(rating: Rating, truck: Truck | null): Offer | null {
  const all = (truck?.items ?? []).filter((item) => item.kind !== 'other');
  const items = all.filter((item, i) => all.findIndex((other) => other.id === item.id) === i);
  if (items.length === 0) return null;
  const stock = items.map((item) => ({ item, counted: countedOf(item) }));
  return {
    items,
    found: substitutes(
      asWanted(rating),
      stock.flatMap(({ counted }) => counted ?? []),
    ),
    incomplete: stock.flatMap(({ item, counted }) => (counted ? [] : [item])),
  };
}

/**
 * As the arithmetic takes it; null where the list lacks what decides. A start part may give its range alone. No print that
 * is asked for names protection or class, so those of the list decide nothing.
 */
export function countedOf(item: StockItem): Counted | null {
  const { id, kind, sections, volts, range, count } = item;
  const all = sections.length === 0 && range ? [range.high] : sections;
  const whole = all.length > 0 && all.every((s) => new Exact(s).gt(0));
  if (kind === 'other' || volts === null || !whole) return null;
  return {
    ...{ id, kind, sectionsMicrofarads: all, volts, count },
    ...(range ? { range: { lowMicrofarads: range.low, highMicrofarads: range.high } } : {}),
  };
}
