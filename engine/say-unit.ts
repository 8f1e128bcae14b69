import type { Unit } from './schema.ts';

/** A unit as people are shown it. A count has none; a difference of temperatures reads °F, and its name says what it is. */
export const sayUnit = (unit: Unit): string => (unit === 'count' ? '' : unit === 'Δ°F' ? '°F' : unit);
