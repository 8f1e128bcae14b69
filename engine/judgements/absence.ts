import type { Exact } from '../calc/exact.ts';
import type { Finding, Parts } from '../schema.ts';
import { judgement, type Limit } from './judgement.ts';
import { PAIRS, type PairKey, pairName, pairVolts } from './line-pairs.ts';
import { chose, past, untaken, volts } from './probing.ts';
import { PROVING_LIMITS, type ProvingLimits, prove } from './proving.ts';
import { chosenOf, leftOpen } from './read.ts';
import { finding, say } from './say.ts';

type AbsenceLimits = ProvingLimits & Readonly<Record<'dead' | 'live', Limit>>;
const OUTCOMES = [
  'live',
  'lost-leg',
  'lines',
  'first-proving',
  'second-proving',
  'ghost',
  'dead',
  'undecided',
] as const;

/**
 * Live-dead-live: whether a proving line shows the absence of voltage. V AC, signs dropped.
 * A pair at or over `live` is live whatever the provings say: no meter trouble makes that safe to doubt. A three-phase
 * unit (`unit`) has three lines: two that read nothing prove nothing of the third.
 */
export const absence = judgement({
  id: 'absence',
  semantics: 2,
  takes: ['line', 'means', 'unit'],
  limits: ['dead', 'live', ...PROVING_LIMITS],
  outcomes: OUTCOMES,
  run({ line, means, unit }, limits, { cabinet }) {
    const pairs = pairVolts(line);
    const before = prove('Known source, before', line, 'before', means, limits);
    const after = prove('Known source, after', line, 'after', means, limits);
    const middle = [...pairs].map(([key, value]) => pairFinding(key, value, limits));
    return {
      outcome: outcomeOf(line, pairs, before.is, after.is, limits, cabinet === undefined && isThree(unit)),
      findings: [before.finding, ...middle, after.finding],
    };
  },
  probe: (limits) => probeLines(limits),
});

/** A pair without volts between two legs that have them: fed back through a winding. */
const LEGS: readonly (readonly [PairKey, PairKey, PairKey])[] = [
  ['l1l2', 'l1g', 'l2g'],
  ['l1l3', 'l1g', 'l3g'],
  ['l2l3', 'l2g', 'l3g'],
];
const isThree = (unit: Parts | undefined): boolean => chosenOf(unit, 'choice').includes('three-phase');

function outcomeOf(
  line: Parts | undefined,
  pairs: ReadonlyMap<PairKey, Exact>,
  before: 'good' | 'bad' | 'missing',
  after: 'good' | 'bad' | 'missing',
  limits: AbsenceLimits,
  three: boolean,
): (typeof OUTCOMES)[number] {
  const isLive = (key: PairKey): boolean => pairs.get(key)?.gte(limits.live.value) ?? false;
  if (LEGS.some(([pair, a, b]) => pairs.has(pair) && !isLive(pair) && isLive(a) && isLive(b))) return 'lost-leg';
  if (PAIRS.some(isLive)) return 'live';
  if (three && !pairs.has('l3g')) return 'lines';
  if (before === 'bad') return 'first-proving';
  if (after === 'bad') return 'second-proving';
  if (before === 'missing' || after === 'missing' || !isComplete(line, pairs)) return 'undecided';
  return [...pairs.values()].some((v) => v.gt(limits.dead.value)) ? 'ghost' : 'dead';
}

/** Every pair of one supply and the load side. A pair that was asked and not read leaves the line open. */
function isComplete(line: Parts | undefined, pairs: ReadonlyMap<PairKey, Exact>): boolean {
  const has = (...keys: PairKey[]): boolean => keys.every((k) => pairs.has(k));
  const supply = has('l1l2', 'l1g', 'l2g') || has('hn', 'hg', 'ng');
  return supply && has('t1g') && !PAIRS.some((key) => leftOpen(line, key, 'V'));
}

function pairFinding(key: PairKey, value: Exact, limits: AbsenceLimits): Finding {
  const live = value.gte(limits.live.value);
  const ghost = !live && value.gt(limits.dead.value);
  const shown = say(value, 'V');
  return finding({
    name: pairName(key),
    reading: shown,
    limits: `${say(limits.dead.value, 'V')} or less`,
    word: live ? 'live' : ghost ? 'volts present' : 'dead',
    text: live
      ? `${shown} on ${pairName(key)} is live.`
      : ghost
        ? `${shown} on ${pairName(key)} may be induced. A load across the pair decides.`
        : `${shown} on ${pairName(key)} is dead.`,
    source: live ? limits.live.source : limits.dead.source,
  });
}

function probeLines(limits: AbsenceLimits): { line?: Parts; means?: Parts; unit?: Parts }[] {
  const { dead, live, sourceMin, sourceWithin, outlet } = limits;
  const means: Parts = { source: chose('outlet') };
  const good = { before: outlet.value, l1l2: 0, l1g: 0, l2g: 0, t1g: 0, t2g: 0, after: outlet.value };
  const high = past(outlet.value, 0).times(past(100, sourceWithin.value)).div(100);
  const lines = [
    good,
    { ...good, l1g: dead.value },
    { ...good, l1g: past(dead.value, '0.01') },
    { ...good, l1g: past(live.value, '-0.01') },
    { ...good, l1g: live.value },
    { ...good, l1l2: -Number(live.value), l1g: live.value, l2g: live.value },
    { ...good, l1l2: 0, l1g: live.value, l2g: live.value },
    { ...good, before: high },
    { ...good, before: past(high, '0.01') },
    { ...good, before: past(sourceMin.value, '-0.01') },
    { ...good, after: high },
    { ...good, after: past(high, '0.01') },
    { ...good, after: 0 },
    { before: outlet.value, hn: 0, hg: 0, ng: 0, t1g: 0, after: outlet.value },
  ].map((line) => ({ line: volts(line), means }));
  const least = volts({ ...good, before: sourceMin.value, after: sourceMin.value });
  const less = volts({ ...good, before: past(sourceMin.value, '-0.01'), after: sourceMin.value });
  const other: Parts = { source: chose('other'), ...volts({ stated: sourceMin.value }) };
  return [
    ...lines,
    { line: least, means: other },
    { line: less, means: other },
    { line: { ...volts(good), t1g: untaken }, means },
    ...[{}, { l1l3: 0, l2l3: 0, l3g: 0, t3g: 0 }, { l1l3: 0, l2l3: 120, l3g: live.value, t3g: 0 }].map((third) => ({
      line: volts({ ...good, ...third }),
      ...{ means, unit: { choice: chose('three-phase') } },
    })),
    {},
  ];
}
