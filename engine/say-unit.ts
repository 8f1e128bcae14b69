import type { Unit } from './schema.ts';

/** A unit as people are shown it. A count has none; a difference of temperatures reads °F, and its name says what it is. */
export const sayUnit = (unit: Unit): string => (unit === 'count' ? '' : unit === 'Δ°F' ? '°F' : unit);

/** A field's key as a line may begin it: "battery-before" for batteryBefore. Typed so it is read as that field. */
export const sayKey = (key: string): string => key.replace(/[A-Z]/g, (capital) => `-${capital.toLowerCase()}`);
