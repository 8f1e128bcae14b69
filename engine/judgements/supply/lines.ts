/** What the pairs of a supply say, by its kind: two legs, hot and neutral, three lines. */
import { type Exact, within } from '../../calc/exact.ts';
import {
  deratingShare,
  extraRisePercent,
  highLegTimes,
  isSinglePhased,
  legsOf,
  type ThreeVolts,
  unbalancePercent,
} from '../../calc/supply.ts';
import type { Finding } from '../../schema.ts';
import { pictured, scaleFigures } from '../figures.ts';
import { figureOf, leftOpen } from '../read.ts';
import { digits, finding, say, sayRange } from '../say.ts';
import type { Seen } from './range.ts';
import { sayBeside } from './say-beside.ts';
import { judgeStart } from './start.ts';

export type SupplyOutcome =
  | 'good'
  | 'absent'
  | 'leg-lost'
  | 'neutral'
  | 'no-ground'
  | 'single-phasing'
  | 'unbalanced'
  | 'out'
  | 'sag'
  | 'contacts'
  | 'report'
  | 'undecided';
export interface SupplyJudged {
  readonly outcome: SupplyOutcome;
  readonly findings: readonly Finding[];
}

const NAMES: Readonly<Record<string, string>> = {
  l1l2: 'L1–L2',
  l2l3: 'L2–L3',
  l1l3: 'L1–L3',
  l1g: 'L1–ground',
  l2g: 'L2–ground',
  l3g: 'L3–ground',
  hn: 'Hot–neutral',
  hg: 'Hot–ground',
  ng: 'Neutral–ground',
};
const read = ({ line }: Seen, key: string): Exact | null => figureOf(line, key, 'V')?.abs() ?? null;

export function judgeTwoLegs(seen: Seen): SupplyJudged | null {
  const [across, one, two] = [read(seen, 'l1l2'), read(seen, 'l1g'), read(seen, 'l2g')];
  if (!across || !one || !two) return null;
  const pairs = [pair(seen, 'l1l2', across), toGround(seen, 'l1g', one), toGround(seen, 'l2g', two)];
  const legs = legsOf(across, one, two, seen.range.range.low, seen.limits.present.value);
  if (legs === 'absent') return { outcome: 'absent', findings: [...pairs, dead] };
  if (legs === 'lost') return { outcome: 'leg-lost', findings: [...pairs, lost] };
  if ([one, two].some((volts) => volts.lt(seen.limits.present.value)))
    return { outcome: 'no-ground', findings: [...pairs, noGround] };
  return ranged(seen, across, pairs);
}

/** 115 V: the neutral has to be sound too, or the unit runs on whatever the other circuits leave it. */
export function judgeHotNeutral(seen: Seen): SupplyJudged | null {
  const [across, hot, neutral] = [read(seen, 'hn'), read(seen, 'hg'), read(seen, 'ng')];
  if (!across || !hot || !neutral) return null;
  const pairs = [pair(seen, 'hn', across), toGround(seen, 'hg', hot), neutralFinding(seen, neutral)];
  const alive = (volts: Exact): boolean => volts.gte(seen.limits.present.value);
  if (!alive(across) && !alive(hot)) return { outcome: 'absent', findings: [...pairs, dead] };
  if (!alive(across) || neutral.gt(seen.limits.neutral.value))
    return { outcome: 'neutral', findings: [...pairs, open] };
  if (!alive(hot)) return { outcome: 'no-ground', findings: [...pairs, noGround] };
  return ranged(seen, across, pairs);
}

export function judgeThree(seen: Seen): SupplyJudged | null {
  const { range, limits } = seen;
  const [a, b, c] = [read(seen, 'l1l2'), read(seen, 'l2l3'), read(seen, 'l1l3')];
  if (!a || !b || !c || ['l1g', 'l2g', 'l3g'].some((key) => leftOpen(seen.line, key, 'V'))) return null;
  const grounds = ['l1g', 'l2g', 'l3g'].flatMap((key) => {
    const volts = read(seen, key);
    return volts ? [{ key, volts }] : [];
  });
  const alive = (volts: Exact): boolean => volts.gte(limits.present.value);
  const lines = [a, b, c] as const;
  const pairs = [
    ...[pair(seen, 'l1l2', a), pair(seen, 'l2l3', b), pair(seen, 'l1l3', c)],
    ...grounds.map(({ key, volts }) => toGround(seen, key, volts)),
    ...highLeg(
      grounds.map((g) => g.volts),
      seen,
    ),
  ];
  // All three lines fed by one leg read nothing to each other and volts to ground.
  if (!lines.some(alive)) {
    return grounds.some((g) => alive(g.volts))
      ? { outcome: 'leg-lost', findings: [...pairs, lost] }
      : { outcome: 'absent', findings: [...pairs, dead] };
  }
  if (isSinglePhased(lines, range.range, limits.singlePhase.value)) {
    return { outcome: 'single-phasing', findings: [...pairs, singlePhasing(limits.singlePhase.source)] };
  }
  const outside = lines.some((v) => !within(v, range.range));
  if (outside && grounds.some((g) => !alive(g.volts))) return { outcome: 'leg-lost', findings: [...pairs, lost] };
  const unbalance = unbalancePercent(lines);
  const findings = [...pairs, unbalanceFinding(unbalance, seen)];
  if (unbalance.gt(limits.stop.value)) return { outcome: 'unbalanced', findings };
  if (outside) return { outcome: 'out', findings };
  const start = judgeStart(seen, a);
  const outcome = start.outcome === 'good' && unbalance.gt(limits.report.value) ? 'report' : start.outcome;
  return { outcome, findings: [...findings, ...start.findings] };
}

function ranged(seen: Seen, across: Exact, pairs: readonly Finding[]): SupplyJudged {
  if (!within(across, seen.range.range)) return { outcome: 'out', findings: pairs };
  const start = judgeStart(seen, across);
  return { outcome: start.outcome, findings: [...pairs, ...start.findings] };
}

function pair({ range }: Seen, key: string, volts: Exact): Finding {
  const is = within(volts, range.range) ? 'inside' : volts.lt(range.range.low) ? 'below' : 'above';
  const said = sayRange(range.range, 'V', 1, 0);
  const assumed = range.assumed === null ? '' : ` A ${range.assumed}\u2009V nameplate is assumed.`;
  const of = { name: nameOf(key), unit: 'V', word: is } as const;
  const scale = scaleFigures({ ...of, limits: range.range, reading: volts, doubt: null });
  return finding({
    name: of.name,
    reading: say(volts, 'V'),
    limits: said,
    word: is,
    text: `${nameOf(key)} reads ${say(volts, 'V')}, ${is} ${said}.${assumed}`,
    source: range.source,
    ...pictured(scale),
  });
}
const nameOf = (key: string): string => NAMES[key] ?? key;

function toGround({ limits }: Seen, key: string, volts: Exact): Finding {
  const alive = volts.gte(limits.present.value);
  const [name, shown] = [nameOf(key), say(volts, 'V')];
  const text = `${name} reads ${shown}: ${alive ? 'volts are there' : 'nothing is there'}.`;
  return finding({ name, reading: shown, word: alive ? 'present' : 'absent', text, source: limits.present.source });
}

function neutralFinding({ limits }: Seen, volts: Exact): Finding {
  const sound = volts.lte(limits.neutral.value);
  const shown = say(volts, 'V');
  return finding({
    name: nameOf('ng'),
    reading: shown,
    limits: `${say(limits.neutral.value, 'V')} or less`,
    word: sound ? 'sound' : 'not sound',
    text: sound
      ? `Neutral to ground reads ${shown}.`
      : `Neutral to ground reads ${shown}: the neutral isn’t sound. Find it.`,
    source: limits.neutral.source,
  });
}

function unbalanceFinding(unbalance: Exact, { limits }: Seen): Finding {
  const stopped = unbalance.gt(limits.stop.value);
  const beside = stopped ? limits.stop : limits.report;
  const shown = sayBeside(unbalance, [limits.report.value, limits.stop.value], '%', 2);
  const [report, stop] = [say(limits.report.value, '%'), say(limits.stop.value, '%')];
  const left = deratingShare(unbalance);
  const heat = `The windings warm about ${say(extraRisePercent(unbalance), '%', 1)} more`;
  const cost = left === null ? `${heat}.` : `${heat}, and about ${say(left.times(100), '%', 0)} of the power is left.`;
  const word = stopped ? 'don’t run' : unbalance.gt(limits.report.value) ? 'report' : 'good';
  const text = {
    'don’t run': `The three lines are ${shown} apart, past ${stop}. Turn it off and don’t run it.`,
    report: `The three lines are ${shown} apart, past ${report}. Report it. ${cost}`,
    good: `The three lines are ${shown} apart.`,
  }[word];
  return finding({ name: 'Unbalance', reading: shown, limits: `${report} or less`, word, text, source: beside.source });
}

function highLeg(grounds: readonly Exact[], { limits }: Seen): Finding[] {
  const leg = areThree(grounds) ? highLegTimes(grounds, limits.highLeg.value) : null;
  if (!leg) return [];
  return [
    finding({
      name: 'High leg',
      reading: say(leg.volts, 'V'),
      word: 'high leg',
      text: `One leg reads ${digits(leg.times, 2)} times the others to ground. A high-leg delta is so: no loads for a single leg on it.`,
      source: `√3 by geometry; ${limits.highLeg.source}`,
    }),
  ];
}

const areThree = (volts: readonly Exact[]): volts is ThreeVolts => volts.length === 3;

const plain = (name: string, word: string, text: string, source: string | null = null): Finding =>
  finding({ name, reading: word, word, text, source });
const dead = plain('Supply', 'absent', 'No pair shows a supply. Look at the means, its fuses and what feeds them.');
const lost = plain('Supply', 'leg lost', 'One leg is missing: a fuse, a lug or the utility. Leave it off.');
const noGround = plain(
  'Supply',
  'no ground',
  'The line is there, and a leg reads nothing to ground. The probe missed bare metal, the ground is open, or that leg is the grounded one. A cabinet without a ground may stand under volts.',
);
const open = plain('Supply', 'neutral', 'The neutral is open or loose. Leave it off and find it.');
const singlePhasing = (source: string): Finding =>
  plain(
    'Supply',
    'single-phasing',
    'One pair is right and two are far below: one line is missing. Turn it off.',
    source,
  );
