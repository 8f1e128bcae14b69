/** Chance from a seed: the same seed, the same conversations, on any machine. */
import { uniformInt } from 'pure-rand/distribution/uniformInt';
import { xoroshiro128plus } from 'pure-rand/generator/xoroshiro128plus';

export interface Chance {
  /** A whole number from 0 up to, not including, `n`. */
  below(n: number): number;
  /** True so many times in a thousand. */
  in1000(times: number): boolean;
  one<T>(of: readonly [T, ...T[]]): T;
  /** One of them, each as likely as its weight; null where there is none. */
  weighed<T>(of: readonly (readonly [number, T])[]): T | null;
}

export function chance(seed: number): Chance {
  const from = xoroshiro128plus(seed);
  const below = (n: number): number => uniformInt(from, 0, n - 1);
  return {
    below,
    in1000: (times) => below(1000) < times,
    one: (of) => of[below(of.length)] ?? of[0],
    weighed: (of) => {
      const sum = of.reduce((all, [weight]) => all + weight, 0);
      if (sum === 0) return null;
      let left = below(sum);
      for (const [weight, what] of of) {
        if (left < weight) return what;
        left -= weight;
      }
      return null;
    },
  };
}
