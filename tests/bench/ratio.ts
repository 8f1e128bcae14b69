/** Two ways to do the same, in turn in one process, so that a machine that slows down slows both. */

export interface Ratio {
  readonly name: string;
  readonly median: number;
  readonly quartiles: readonly [number, number];
  readonly rounds: number;
  /** Medians, for information: they differ from machine to machine. */
  readonly base: number;
  readonly subject: number;
  readonly unit: string;
  readonly gate: string;
  readonly passed: boolean;
}
/** How much was done, in `unit`, by one go of about the given milliseconds. */
export type Go = (ms: number) => Promise<number>;

interface Wanted {
  readonly name: string;
  readonly unit: string;
  readonly base: Go;
  readonly subject: Go;
  /** subject / base must be at least, or at most, this; with neither it is for information. */
  readonly atLeast?: number;
  readonly atMost?: number;
  readonly rounds: number;
  /** Milliseconds of one go, and of warming up before the first. */
  readonly ms: number;
  readonly warmMs: number;
}

export async function ratio(wanted: Wanted): Promise<Ratio> {
  const { name, unit, base, subject, rounds, ms, warmMs, atLeast, atMost } = wanted;
  await base(warmMs / 2);
  await subject(warmMs / 2);
  const [bases, subjects, ratios]: number[][] = [[], [], []];
  for (let round = 0; round < rounds; round++) {
    // First one, then the other, then the other way round: neither always has the warmer cache.
    const order = round % 2 === 0 ? [base, subject] : [subject, base];
    const [a = 0, b = 0] = [await order[0]?.(ms), await order[1]?.(ms)];
    const [of, by] = round % 2 === 0 ? [b, a] : [a, b];
    bases?.push(by);
    subjects?.push(of);
    ratios?.push(of / by);
  }
  const median = at(ratios ?? [], 0.5);
  return {
    ...{ name, unit, rounds, median },
    quartiles: [at(ratios ?? [], 0.25), at(ratios ?? [], 0.75)],
    base: at(bases ?? [], 0.5),
    subject: at(subjects ?? [], 0.5),
    gate: atLeast !== undefined ? `≥ ${atLeast}` : atMost !== undefined ? `≤ ${atMost}` : 'for information',
    passed: median >= (atLeast ?? 0) && median <= (atMost ?? Number.POSITIVE_INFINITY),
  };
}
function at(values: readonly number[], share: number): number {
  const sorted = [...values].sort((a, b) => a - b);
  const place = (sorted.length - 1) * share;
  const [low, high] = [sorted[Math.floor(place)] ?? 0, sorted[Math.ceil(place)] ?? 0];
  return low + (high - low) * (place - Math.floor(place));
}

/** So many at once, each its own, for so long; how many a second. */
export async function perSecond(ms: number, atOnce: number, one: (i: number) => Promise<void>): Promise<number> {
  const began = performance.now();
  let done = 0;
  await Promise.all(
    Array.from({ length: atOnce }, async (_, i) => {
      while (performance.now() - began < ms) {
        await one(i);
        done++;
      }
    }),
  );
  return (done * 1000) / (performance.now() - began);
}

/** Milliseconds of one, as a mean over so long. */
export async function milliseconds(ms: number, one: () => Promise<void>): Promise<number> {
  return 1000 / (await perSecond(ms, 1, one));
}

export const row = (r: Ratio): string =>
  `| ${r.name} | ${r.median.toFixed(2)} (${r.quartiles.map((q) => q.toFixed(2)).join('–')}) | ${r.gate} | ${figure(r.subject)} / ${figure(r.base)} ${r.unit} |`;
const figure = (n: number): string => (n >= 100 ? String(Math.round(n)) : n.toPrecision(3));
