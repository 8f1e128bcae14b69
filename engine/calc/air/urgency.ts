/** How soon somebody must go. No published scale was found: the steps and their order are our setting. */
import type { HeatCategory } from './heat-index.ts';

/** From the least to the most urgent. `first`: today, before everything else. */
export const URGENCIES = ['soon', 'today', 'first', 'now'] as const;
export type Urgency = (typeof URGENCIES)[number];

const BY_HEAT: Readonly<Record<HeatCategory, Urgency>> = {
  none: 'soon',
  caution: 'soon',
  'extreme-caution': 'today',
  danger: 'first',
  'extreme-danger': 'now',
};
/** The urgency of a heat category for somebody in good health. */
export const urgencyOfHeat = (category: HeatCategory): Urgency => BY_HEAT[category];

/** One step up, for somebody vulnerable; `now` stays. */
export const stepUp = (urgency: Urgency): Urgency => URGENCIES[URGENCIES.indexOf(urgency) + 1] ?? 'now';

/** The more urgent of several; `soon` where there is none. */
export const mostUrgent = (all: readonly Urgency[]): Urgency =>
  URGENCIES.findLast((urgency) => all.includes(urgency)) ?? 'soon';
