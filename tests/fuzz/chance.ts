/** Chance that comes out the same for the same seed (mulberry32, which is in the public domain). */
export interface Chance {
  /** From 0 to below n. */
  readonly below: (n: number) => number;
  readonly of: <T>(list: readonly T[]) => T;
  /** True so often of 1. */
  readonly often: (share: number) => boolean;
}
export function chanceOf(seed: number): Chance {
  let state = seed >>> 0;
  const next = (): number => {
    state = (state + 0x6d2b79f5) >>> 0;
    let t = state;
    t = Math.imul(t ^ (t >>> 15), t | 1);
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61);
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
  const below = (n: number): number => Math.floor(next() * n);
  return {
    below,
    of: (list) => list[below(list.length)] as (typeof list)[number],
    often: (share) => next() < share,
  };
}
