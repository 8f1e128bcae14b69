import { plainWord, shareInside, wordOf } from '../calc/doubt.ts';
import { Exact, type Figure, type Range, within } from '../calc/exact.ts';
import { deviationPercent, limitsMicrofarads } from '../calc/tolerance.ts';
import { type Accuracy, underLoad } from '../calc/under-load.ts';
import type { CapacitorLabel, Finding, Parts } from '../schema.ts';
import { type Force, judgement, type Limit } from './judgement.ts';
import { print, read } from './probing.ts';
import { figureOf, printOf } from './read.ts';
import { finding, say, sayRange, sayShare, saySigned } from './say.ts';

const OUTCOMES = ['pass', 'conditional-pass', 'repeat', 'too-high', 'too-high-twice', 'fails', 'undecided'] as const;
type Outcome = (typeof OUTCOMES)[number];
const MOST_GRAVE: readonly Outcome[] = [
  ...(['pass', 'conditional-pass', 'undecided', 'repeat', 'too-high', 'too-high-twice', 'fails'] as const),
];
type LoadLimits = Readonly<Record<(typeof LIMITS)[number], Limit>>;
const LIMITS = [
  'clampPercent',
  'clampCounts',
  'clampStep',
  'voltsPercent',
  'voltsCounts',
  'voltsStep',
  'lineMost',
  'openShare',
] as const;

/**
 * The values of a run capacitor while it runs: amps in the lead, volts across that section, µF = I/(2πfV). The same
 * words as for a capacitance meter, with the doubt of both meters together. Line volts in place of the section's own
 * read far too high, and are named. Physics; the accuracies taken are our setting.
 */
export const underLoadValues = judgement({
  id: 'under-load',
  semantics: 1,
  takes: ['label', 'readings', 'before'],
  limits: LIMITS,
  outcomes: OUTCOMES,
  run({ label, readings, before }, limits, force) {
    const part = printOf(label);
    if (part === null) {
      const text = 'The rating is not known, so there is no verdict on the value.';
      return {
        outcome: 'undecided',
        findings: [finding({ name: 'Rating', reading: 'not known', word: 'undecided', text })],
      };
    }
    const herm = judgeOne('HERM', part, readings, before, limits, force);
    // FAN is judged where somebody clamped it; without, nothing is said of it.
    const fanRead = part.fan !== null && (has(readings, 'fanAmps') || has(readings, 'fanVolts'));
    const all = fanRead ? [herm, judgeOne('FAN', part, readings, before, limits, force)] : [herm];
    const outcome = all.map((s) => s.outcome).reduce((a, b) => (MOST_GRAVE.indexOf(b) > MOST_GRAVE.indexOf(a) ? b : a));
    return { outcome, findings: all.map((s) => s.finding) };
  },
  probe(limits) {
    const label = print({ herm: '45', fan: '5' });
    const amps = (herm: Figure, volts: Figure = 345): Parts => ({
      hermAmps: read(herm, 'A'),
      hermVolts: read(volts, 'V'),
    });
    const low = amps('5.45');
    return [
      { label, readings: amps('5.853') },
      { label, readings: amps('5.55') },
      { label, readings: low },
      { label, readings: low, before: low },
      // The size of the part that the other probes are about, near its lower limit.
      { label: print({ herm: '60', fan: '30' }), readings: amps('7.28') },
      { label, readings: amps('5.853'), before: low },
      { label, readings: amps('4') },
      { label, readings: amps('7') },
      { label, readings: amps('7'), before: amps('7') },
      { label, readings: amps('7', limits.lineMost.value) },
      { label, readings: amps('5.853', 0) },
      { label, readings: { ...amps('5.853'), fanAmps: read('0.3', 'A'), fanVolts: read(330, 'V') } },
      { label, readings: { ...amps('5.853'), fanAmps: read('0.622', 'A'), fanVolts: read(330, 'V') } },
      { readings: amps('5.853') },
      {},
    ];
  },
});

const has = (parts: Parts | undefined, key: string): boolean =>
  figureOf(parts, key, key.endsWith('Amps') ? 'A' : 'V') !== null;

interface Value {
  readonly amps: Exact;
  readonly volts: Exact;
  readonly microfarads: Exact;
  readonly window: Range;
}

function computed(key: 'herm' | 'fan', parts: Parts | undefined, limits: LoadLimits, force: Force): Value | null {
  const amps = figureOf(parts, `${key}Amps`, 'A')?.abs();
  const volts = figureOf(parts, `${key}Volts`, 'V')?.abs();
  if (!amps || !volts) return null;
  const found = underLoad(amps, clampOf(limits), volts, voltmeterOf(limits), force.settings.hertz);
  return found && { amps, volts, ...found };
}
const clampOf = (l: LoadLimits): Accuracy => ({
  ...{ percent: l.clampPercent.value, counts: Number(l.clampCounts.value), resolution: l.clampStep.value },
});
const voltmeterOf = (l: LoadLimits): Accuracy => ({
  ...{ percent: l.voltsPercent.value, counts: Number(l.voltsCounts.value), resolution: l.voltsStep.value },
});

function judgeOne(
  name: 'HERM' | 'FAN',
  label: CapacitorLabel,
  readings: Parts | undefined,
  before: Parts | undefined,
  limits: LoadLimits,
  force: Force,
): { outcome: Outcome; finding: Finding } {
  const key = name === 'HERM' ? 'herm' : 'fan';
  const rated = new Exact((name === 'HERM' ? label.herm : label.fan) ?? label.herm);
  const allowed = limitsMicrofarads(rated, label.below, label.above);
  const value = computed(key, readings, limits, force);
  if (value === null) {
    const text = `${name} needs amps in its lead and volts across it, C to ${name}, well above zero.`;
    return { outcome: 'undecided', finding: finding({ name, reading: 'no reading', word: 'undecided', text }) };
  }
  const { microfarads, window, volts } = value;
  const above = microfarads.gt(allowed.high);
  const nothing = microfarads.lt(rated.times(limits.openShare.value).div(100));
  // What the leads explain condemns nothing: a clamp on another wire, or volts across the line.
  const doubtful = nothing || (above && volts.lte(limits.lineMost.value));
  const word = force.settings.rule === 'plain' ? plainWord(microfarads, allowed) : wordOf(microfarads, window, allowed);
  const was = computed(key, before, limits, force);
  const outBefore = was !== null && !within(was.microfarads, allowed);
  const highBefore = was?.microfarads.gt(allowed.high) ?? false;
  const byLabel: Outcome = {
    pass: 'pass' as const,
    'conditional pass': 'conditional-pass' as const,
    'conditional fail': outBefore ? ('fails' as const) : ('repeat' as const),
    fail: above ? (highBefore ? ('too-high-twice' as const) : ('too-high' as const)) : ('fails' as const),
  }[word];
  const share = sayShare(shareInside(window, allowed));
  const text = [
    `${say(value.amps, 'A')} at ${say(volts, 'V')} and ${force.settings.hertz}\u2009Hz is ${say(microfarads, 'µF', 2)}, ${saySigned(deviationPercent(microfarads, rated), '%', 1)} off the rated ${say(rated, 'µF')}.`,
    `The label allows ${sayRange(allowed, 'µF')}.`,
    ...(word.startsWith('conditional') ? [`The doubt crosses a limit: P(in tolerance) ${share}.`] : []),
    ...(was ? [`The try before gave ${say(was.microfarads, 'µF', 2)}.`] : []),
    ...(nothing ? ['Next to nothing: the clamp may sit on another wire. A dead reading decides.'] : []),
    ...(doubtful && above ? ['These may be line volts. Read them across the section itself.'] : []),
  ];
  return {
    outcome: doubtful ? 'undecided' : byLabel,
    finding: finding({
      ...{ name, reading: say(microfarads, 'µF', 2), limits: sayRange(allowed, 'µF'), word, text: text.join(' ') },
      doubt: sayRange(window, 'µF', 2),
      source: `I/(2πfV), physics; clamp ±(${say(limits.clampPercent.value, '%')} + ${limits.clampCounts.value} counts), volts ±(${say(limits.voltsPercent.value, '%')} + ${limits.voltsCounts.value} counts), taken as rectangular`,
    }),
  };
}
