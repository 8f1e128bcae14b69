import { FAILED, REPLACED } from '../capacitor/verdicts.ts';

/** Which of two capacitors was condemned: the new part goes by that one's print. */
export const FIRST = REPLACED.map((verdict) => `block/run/${verdict}`);
const of = (which: string) => FAILED.map((verdict) => `block/${which}/${verdict}`);
export const SECOND = of('another');
export const THIRD = of('yet-another');
export const OTHER = [...SECOND, ...THIRD];
