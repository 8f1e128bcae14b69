/** The line at a restart: L1–L2 against its limits, what is lost to T1–T2, how far T1–T2 falls while it starts. */
import { Exact, type Range, within } from '../../calc/exact.ts';
import { dropPercent, fitsOtherRating, ratedRangeVolts, unbalancePercent } from '../../calc/supply.ts';
import type { Parts } from '../../schema.ts';
import { chosenOf, figureOf } from '../read.ts';
import { finding, say, sayRange } from '../say.ts';
import type { Judging, RestartLimits } from './judging.ts';

interface Supply {
  readonly range: Range;
  readonly source: string;
  readonly assumed: boolean;
}

/** 208/230 V has limits of its own by phase; a single printed voltage ± its percentage. Not read: 208/230 V is assumed. */
export function supplyOf(
  plate: Parts | undefined,
  limits: Pick<RestartLimits, 'low' | 'lowThree' | 'high' | 'ratedWithin'>,
  phases: 1 | 3 = 1,
): Supply {
  const figures = chosenOf(plate, 'volts').flatMap((option) => option.match(/\d{2,3}/g) ?? []);
  const [rated, second] = [...new Set(figures)];
  if (rated === undefined || second !== undefined) {
    const low = phases === 3 ? limits.lowThree : limits.low;
    const range = { low: new Exact(low.value), high: new Exact(limits.high.value) };
    return { range, source: low.source, assumed: rated === undefined };
  }
  return { range: ratedRangeVolts(rated, limits.ratedWithin.value), source: limits.ratedWithin.source, assumed: false };
}

type Pair = 'l1l2' | 'l2l3' | 'l1l3';
const voltsIn = (figures: Parts | undefined, key: Pair | 't1t2' | 'min'): Exact | null =>
  figureOf(figures, key, 'V')?.abs() ?? null;

/** Whether the line fits a nameplate other than 208/230 V. */
export const fitsOther = (figures: Parts | undefined, { ratedWithin }: RestartLimits): boolean => {
  const volts = voltsIn(figures, 'l1l2');
  return volts !== null && fitsOtherRating(volts, ratedWithin.value);
};

/** `name`: what the line is called; a blower may have one leg and neutral. */
export function judgeSupply(
  figures: Parts | undefined,
  { range, source, assumed }: Supply,
  name = 'L1–L2',
  key: Pair = 'l1l2',
): Judging {
  const volts = voltsIn(figures, key);
  const said = sayRange(range, 'V', 1, 0);
  const is = volts === null ? 'open' : within(volts, range) ? 'in' : 'out';
  const reading = volts === null ? 'no reading' : say(volts, 'V');
  const [were, reads] = name.includes('–') ? ['was', 'reads'] : ['were', 'read'];
  const plainly = {
    open: `${name} ${were} not read.`,
    in: `${name} ${reads} ${reading}, inside ${said}.`,
    out: `${name} ${reads} ${reading}, outside ${said}.`,
  }[is];
  const text = assumed ? `${plainly} A 208/230\u2009V nameplate is assumed.` : plainly;
  return {
    is,
    finding: finding({ name, reading, limits: said, word: is === 'open' ? 'missing' : is, text, source }),
  };
}

/** The other two pairs of three lines, and how far the three are apart. */
export function judgeThreeLines(figures: Parts | undefined, of: Supply, { linesApart }: RestartLimits): Judging[] {
  const pairs = [judgeSupply(figures, of, 'L2–L3', 'l2l3'), judgeSupply(figures, of, 'L1–L3', 'l1l3')];
  const volts = (['l1l2', 'l2l3', 'l1l3'] as const).flatMap((key) => voltsIn(figures, key) ?? []);
  if (volts.length < 3 || volts.every((v) => v.isZero())) return pairs;
  const apart = unbalancePercent(volts);
  const [shown, most] = [say(apart, '%', 1), say(linesApart.value, '%')];
  const out = apart.gt(linesApart.value);
  return [
    ...pairs,
    {
      is: out ? 'out' : 'in',
      finding: finding({
        ...{ name: 'Unbalance of the lines', reading: shown, limits: `${most} at most`, word: out ? 'out' : 'in' },
        ...{ text: `The three lines are ${shown} apart.${out ? ' The windings cook: turn it off.' : ''}` },
        source: linesApart.source,
      }),
    },
  ];
}

/** Neither motor draws: no drop across a pole is one then. */
export function isIdle(figures: Parts | undefined, { idle }: RestartLimits): boolean {
  const amps = (key: string): Exact | null => figureOf(figures, key, 'A')?.abs() ?? null;
  const legs = ['comp', 'comp2', 'comp3'].flatMap((key) => amps(key) ?? []);
  return amps('comp') !== null && legs.every((leg) => leg.lt(idle.value)) && (amps('fan')?.isZero() ?? false);
}

/** And T was not read or has not the line's volts: the contactor may not be in. */
export function isNotIn(figures: Parts | undefined, limits: RestartLimits): boolean {
  const { notIn } = limits;
  if (!isIdle(figures, limits)) return false;
  const [line, load] = [voltsIn(figures, 'l1l2'), voltsIn(figures, 't1t2')];
  return load === null || (line?.minus(load).gte(notIn.value) ?? false);
}

/** Two readings carry more doubt than one across a pole, so what is lost between them only raises the question. */
export function judgeDrop(figures: Parts | undefined, limits: RestartLimits): Judging[] {
  const { dropAsk } = limits;
  const [line, load] = [voltsIn(figures, 'l1l2'), voltsIn(figures, 't1t2')];
  if (!line || !load) return [];
  const lost = line.minus(load);
  const notIn = isNotIn(figures, limits);
  // Without amps a little lost is no drop: T has its volts, and what stands still is another question.
  const out = lost.gte(dropAsk.value) && (notIn || !isIdle(figures, limits));
  const text = out
    ? `T1–T2 reads ${say(load, 'V')}, ${say(lost, 'V')} below L1–L2. ${notIn ? 'Nothing draws: the contactor is not in, or nothing passes it.' : 'Read across each closed pole under load.'}`
    : lost.gte(dropAsk.value)
      ? `T1–T2 reads ${say(load, 'V')}, ${say(lost, 'V')} below L1–L2, and nothing draws: that is no drop.`
      : `T1–T2 reads ${say(load, 'V')}, less than ${say(dropAsk.value, 'V')} below L1–L2.`;
  return [
    {
      is: out ? 'out' : 'in',
      finding: finding({
        ...{ name: 'T1–T2', reading: say(load, 'V'), limits: `less than ${say(dropAsk.value, 'V')} below L1–L2` },
        ...{ word: notIn ? 'not in' : out ? 'read the poles' : 'in', text, source: dropAsk.source },
      }),
    },
  ];
}

/** Where L1–L2 was not read, or read nothing, the lower limit alone is held against the lowest volts. */
export function judgeStart(figures: Parts | undefined, { range }: Supply, { sag }: RestartLimits): Judging[] {
  const [line, min] = [voltsIn(figures, 'l1l2'), voltsIn(figures, 'min')];
  if (!min) return [];
  const fall = line?.gt(0) ? dropPercent(line, min) : null;
  const out = min.lt(range.low) || (fall?.gt(sag.value) ?? false);
  const [shown, most, least] = [say(min, 'V'), say(sag.value, '%'), say(range.low, 'V', 1)];
  const fell = fall?.gt(0) ? `, ${say(fall, '%', 1)} below L1–L2` : '';
  const text = `While starting T1–T2 falls to ${shown}${fell}.${out ? ` Allowed is ${most}, and no less than ${least}.` : ''}`;
  const limits = `${least} or more, ${most} down at most`;
  return [
    {
      is: out ? 'out' : 'in',
      finding: finding({
        ...{
          name: 'T1–T2 while starting',
          reading: shown,
          limits,
          word: out ? 'sags' : 'in',
          text,
          source: sag.source,
        },
      }),
    },
  ];
}
