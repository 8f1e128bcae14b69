import { byHumidity, byWetBulb, type MoistAir } from '../../calc/air/moist-air.ts';
import { expectedSplit } from '../../calc/air/split.ts';
import { Exact, type Range, within } from '../../calc/exact.ts';
import type { Parts } from '../../schema.ts';
import { judgement, type Limit } from '../judgement.ts';
import { past, read, untaken } from '../probing.ts';
import { figureOf } from '../read.ts';
import { finding, say, sayRange } from '../say.ts';

const LIMITS = [
  'within',
  'plainLow',
  'plainHigh',
  'coolest',
  'warmest',
  'cfmPerTon',
  'leavingHumidity',
  'capacityPerDegree',
  'dryCoil',
] as const;
type SplitLimits = Readonly<Record<(typeof LIMITS)[number], Limit>>;
type Outcome = 'within' | 'low' | 'high' | 'undecided';

/** What is expected, and the words for it. */
interface Expected {
  readonly range: Range;
  /** Beyond these it is low or high, whatever was not read; null where nothing is sure. */
  readonly sure: Range | null;
  readonly text: string;
  readonly source: string;
}

/**
 * How much the air is cooled, against what its humidity lets expect. Takes return and supply °F (or their difference as
 * `split`), and the return's wet-bulb °F or humidity %. Without humidity the plain range is in; beside it only what no
 * humidity explains is judged.
 */
export const split = judgement({
  id: 'split',
  semantics: 1,
  takes: ['air'],
  limits: LIMITS,
  outcomes: ['within', 'low', 'high', 'undecided'],
  run({ air }, limits) {
    const measured = measuredSplit(air);
    if (measured === null) return open('The split was not read. It takes the return’s and the supply’s temperature.');
    const returned = returnedAir(air, limits);
    if (typeof returned === 'string') return open(returned, say(measured, '°F'));
    const expected = returned ? byModel(returned, limits) : plainly(air, limits);
    const outcome = judge(measured, expected);
    return {
      outcome,
      findings: [
        finding({
          name: 'Split',
          reading: say(measured, '°F'),
          limits: sayRange(expected.range, '°F', 1, 0),
          word: outcome === 'undecided' ? 'not judged' : outcome,
          text: `${saidOf(measured)} ${expected.text}${MEANS[outcome]}`,
          source: expected.source,
        }),
      ],
    };
  },
  probe: (limits) => probeAir(limits),
});

const MEANS: Readonly<Record<Outcome, string>> = {
  within: '',
  low: ' It is low: little capacity, much air, or heat from elsewhere.',
  high: ' It is high: too little air over the coil.',
  undecided: ' The return’s wet-bulb or humidity decides.',
};

const open = (text: string, reading = 'no reading') => ({
  outcome: 'undecided' as const,
  findings: [finding({ name: 'Split', reading, word: 'not judged', text })],
});

function measuredSplit(air: Parts | undefined): Exact | null {
  const [returned, supply] = [figureOf(air, 'return', '°F'), figureOf(air, 'supply', '°F')];
  return returned && supply ? returned.minus(supply) : figureOf(air, 'split', 'Δ°F');
}

const saidOf = (measured: Exact): string =>
  measured.lt(0)
    ? `The supply is ${say(measured.neg(), '°F')} warmer than the return.`
    : `The air is cooled by ${say(measured, '°F')}.`;

/** The return air; null where its humidity or its temperature wasn't read; words where nothing can be expected of it. */
function returnedAir(air: Parts | undefined, limits: SplitLimits): MoistAir | null | string {
  const dry = figureOf(air, 'return', '°F');
  if (dry === null) return null;
  const modelled = { low: new Exact(limits.coolest.value), high: new Exact(limits.warmest.value) };
  if (!within(dry, modelled))
    return `The return is at ${say(dry, '°F')}. A split says something from ${sayRange(modelled, '°F', 1, 0)} only.`;
  const [wet, humidity] = [figureOf(air, 'wb', '°F'), figureOf(air, 'rh', '%')];
  if (wet !== null)
    return (
      byWetBulb(dry.toNumber(), wet.toNumber()) ??
      `No air has ${say(dry, '°F')} and a wet-bulb of ${say(wet, '°F')}. One of them was misread.`
    );
  if (humidity !== null)
    return byHumidity(dry.toNumber(), humidity.toNumber()) ?? `${say(humidity, '%')} is no relative humidity.`;
  return null;
}

const modelOf = (limits: SplitLimits) => ({
  cfmPerTon: limits.cfmPerTon.value,
  leavingHumidityPercent: limits.leavingHumidity.value,
  capacityPercentPerDegree: limits.capacityPerDegree.value,
  dryCoilPercent: limits.dryCoil.value,
});

function byModel(returned: MoistAir, limits: SplitLimits): Expected {
  const middle = expectedSplit(returned, modelOf(limits));
  const beside = say(limits.within.value, '°F');
  const range = { low: middle.minus(limits.within.value), high: middle.plus(limits.within.value) };
  return {
    range,
    sure: range,
    text: `Expected is ${say(middle, '°F')} ±${beside}, for a return at ${say(returned.relativeHumidityPercent, '%', 0)} humidity.`,
    source: `${limits.within.source}; ${limits.cfmPerTon.source}`,
  };
}

function plainly(air: Parts | undefined, limits: SplitLimits): Expected {
  const range = { low: new Exact(limits.plainLow.value), high: new Exact(limits.plainHigh.value) };
  const dry = figureOf(air, 'return', '°F')?.toNumber();
  const [wettest, driest] = [100, 0].map((humidity) => (dry === undefined ? null : byHumidity(dry, humidity)));
  const sure = wettest &&
    driest && {
      low: expectedSplit(wettest, modelOf(limits)).minus(limits.within.value),
      high: expectedSplit(driest, modelOf(limits)).plus(limits.within.value),
    };
  const text = `The humidity was not read, so the plain range of ${sayRange(range, '°F', 1, 0)} stands in.`;
  return { range, sure: sure ?? null, text, source: limits.plainLow.source };
}

function judge(measured: Exact, { range, sure }: Expected): Outcome {
  if (within(measured, range)) return 'within';
  if (sure && measured.lt(sure.low)) return 'low';
  return sure && measured.gt(sure.high) ? 'high' : 'undecided';
}

function probeAir(limits: SplitLimits): { air?: Parts }[] {
  const back = 75;
  const expected = (air: MoistAir | null) => (air ? expectedSplit(air, modelOf(limits)) : new Exact(0));
  const known: Parts = { return: read(back, '°F'), wb: read(63, '°F') };
  const supplied = (more: Parts, difference: Exact): { air: Parts } => ({
    air: { return: read(back, '°F'), ...more, supply: read(new Exact(back).minus(difference), '°F') },
  });
  const around = (more: Parts, { low, high }: Range) => [
    supplied(more, low),
    supplied(more, low.minus('0.1')),
    supplied(more, high),
    supplied(more, high.plus('0.1')),
  ];
  const beside = ({ low, high }: Range): Range => ({
    low: low.minus(limits.within.value),
    high: high.plus(limits.within.value),
  });
  const middle = expected(byWetBulb(back, 63));
  const [damp, dry] = [expected(byHumidity(back, 100)), expected(byHumidity(back, 0))];
  return [
    ...around(known, beside({ low: middle, high: middle })),
    ...around({}, { low: new Exact(limits.plainLow.value), high: new Exact(limits.plainHigh.value) }),
    ...around({}, beside({ low: damp, high: dry })),
    supplied({ rh: read(52, '%') }, middle),
    supplied({ wb: read(back + 1, '°F') }, middle),
    { air: { ...known, return: read(limits.warmest.value, '°F'), supply: read(70, '°F') } },
    { air: { ...known, return: read(past(limits.warmest.value, '0.1'), '°F'), supply: read(70, '°F') } },
    { air: { split: read(limits.plainLow.value, 'Δ°F') } },
    { air: { ...known, supply: untaken } },
    {},
  ];
}
