import type { Finding, Parts } from '../schema.ts';
import { judgement, type Limit } from './judgement.ts';
import { over, past, reads, untaken } from './probing.ts';
import { type Reading, readingOf } from './read.ts';
import { finding, say } from './say.ts';

type CaseLimits = Readonly<Record<'fail' | 'clear', Limit>>;
/** From the worst on. */
const BANDS = ['low', 'between', 'clear'] as const;
type Band = (typeof BANDS)[number];
const OUTCOMES = ['clear', 'low', 'wet', 'leak', 'ask', 'undecided'] as const;

/**
 * The lowest reading from any terminal to the case, in MΩ, all wires off. Below `fail` twice, or not clear after wiping
 * and drying, is a leak. OL or above `clear` is none. `alone` is the reading asked by itself where the line left it out;
 * `third` may bring it as well. `before…` are those of the try before. `last` is what this part's case read last, on
 * whichever page: a worse one than this try's own is heard.
 */
export const caseLeak = judgement({
  id: 'case-leak',
  semantics: 1,
  takes: ['readings', 'third', 'alone', 'before', 'beforeThird', 'beforeAlone', 'last'],
  limits: ['fail', 'clear'],
  outcomes: OUTCOMES,
  run({ readings, third, alone, before, beforeThird, beforeAlone, last }, limits) {
    const now = worse(latest(readings, third, alone), latest(last), limits);
    const first = latest(before, beforeThird, beforeAlone);
    const earlier = bandOf(first, limits);
    const band = bandOf(now, limits);
    const outcome = ((): (typeof OUTCOMES)[number] => {
      if (band === 'clear') return 'clear';
      if (band === null) return readings !== undefined && alone === undefined ? 'ask' : 'undecided';
      // A low reading first asks for a repeat only: not clear after *wiping* needs a band between before it.
      if (band === 'low') return earlier === 'low' || earlier === 'between' ? 'leak' : 'low';
      return earlier === 'between' ? 'leak' : 'wet';
    })();
    const shown = [
      ...(earlier === null ? [] : [said('Case, earlier', first, earlier, limits)]),
      said('Case', now, band, limits),
    ];
    if (outcome !== 'leak') return { outcome, findings: shown };
    const text = `${sayReading(first)} and then ${sayReading(now)} to the case: a leak.`;
    return {
      outcome,
      findings: [
        ...shown,
        finding({ name: 'Case, both tries', reading: sayReading(now), word: 'leak', text, source: limits.fail.source }),
      ],
    };
  },
  probe({ fail, clear }) {
    const of = (value: Parameters<typeof past>[0]) => reads({ case: value }, 'MΩ');
    const low = of(past(fail.value, '-0.01'));
    const wet = of(fail.value);
    const stillWet = of(clear.value);
    return [
      { readings: { case: over } },
      { readings: of(past(clear.value, '0.01')) },
      { readings: stillWet },
      { readings: wet },
      { readings: low },
      { readings: low, before: low },
      { readings: wet, before: low },
      { readings: low, before: wet },
      { readings: wet, before: stillWet },
      { readings: { case: over }, before: low },
      { readings: { case: untaken } },
      { readings: { case: untaken }, alone: { case: over } },
      { readings: { case: untaken }, alone: low, before: { case: untaken }, beforeAlone: low },
      { readings: { case: untaken }, alone: { case: untaken } },
      { readings: { case: untaken }, third: { case: over } },
      { readings: { case: untaken }, third: low, before: { case: untaken }, beforeThird: wet },
      { readings: { case: over }, last: low },
      { readings: { case: over }, last: stillWet },
      { readings: low, last: { case: over } },
      { readings: { case: untaken }, last: low },
      {},
    ];
  },
});

/** What was asked later counts where it holds a reading. */
function latest(...asked: readonly (Parts | undefined)[]): Reading {
  const read = asked.map((parts) => readingOf(parts, 'case', 'MΩ')).filter(({ kind }) => kind !== 'none');
  return read.at(-1) ?? { kind: 'none' };
}
/** Where a later reading of the same part is worse than the one at hand, it is the one that counts. */
function worse(own: Reading, last: Reading, limits: CaseLimits): Reading {
  const [mine, heard] = [bandOf(own, limits), bandOf(last, limits)];
  if (mine === null || heard === null) return own;
  return BANDS.indexOf(heard) < BANDS.indexOf(mine) ? last : own;
}
function bandOf(reading: Reading, limits: CaseLimits): Band | null {
  if (reading.kind !== 'figure') return reading.kind === 'over' ? 'clear' : null;
  if (reading.value.gt(limits.clear.value)) return 'clear';
  return reading.value.lt(limits.fail.value) ? 'low' : 'between';
}
const sayReading = (reading: Reading): string =>
  reading.kind === 'figure' ? say(reading.value, 'MΩ') : reading.kind === 'over' ? 'OL' : 'no reading';

function said(name: string, reading: Reading, band: Band | null, limits: CaseLimits): Finding {
  const shown = sayReading(reading);
  const [fail, clear] = [say(limits.fail.value, 'MΩ'), say(limits.clear.value, 'MΩ')];
  const text =
    band === null
      ? 'No reading to the case.'
      : {
          clear: `${shown} to the case: no leak.`,
          low: `${shown} to the case is below ${fail}. It counts when it is steady twice.`,
          between: `${shown} to the case lies between ${fail} and ${clear}. Two fingers on the probes read as little.`,
        }[band];
  return finding({
    name,
    reading: shown,
    limits: `above ${clear}, or OL`,
    word: band ?? 'missing',
    text,
    source: limits.clear.source,
  });
}
