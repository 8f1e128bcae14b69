/** The pairs of a proving line and their names. */
import type { Exact } from '../calc/exact.ts';
import type { Parts } from '../schema.ts';
import { figureOf } from './read.ts';

const NAMES = {
  l1l2: 'L1–L2',
  l1l3: 'L1–L3',
  l2l3: 'L2–L3',
  l1g: 'L1–ground',
  l2g: 'L2–ground',
  l3g: 'L3–ground',
  hn: 'hot–neutral',
  hg: 'hot–ground',
  ng: 'neutral–ground',
  t1g: 'T1–ground',
  t2g: 'T2–ground',
  t3g: 'T3–ground',
  x12: 'second feed, across',
  x1g: 'second feed, first wire–ground',
  x2g: 'second feed, second wire–ground',
} as const;
export type PairKey = keyof typeof NAMES;
export const PAIRS = Object.keys(NAMES) as readonly PairKey[];
export const pairName = (key: PairKey): string => NAMES[key];

/** Volts without sign of each pair that was read. */
export const pairVolts = (line: Parts | undefined): ReadonlyMap<PairKey, Exact> =>
  new Map(
    PAIRS.flatMap((key) => {
      const value = figureOf(line, key, 'V');
      return value === null ? [] : [[key, value.abs()] as const];
    }),
  );
