import type { Exact } from '../calc/exact.ts';
import { residualsAgree } from '../calc/residual.ts';
import type { Finding, Parts } from '../schema.ts';
import { battery } from './battery.ts';
import { judgement, type Limit } from './judgement.ts';
import { past, print, read, untaken, volts } from './probing.ts';
import { figureOf, showsOneSection } from './read.ts';
import { finding, say } from './say.ts';

type ResidualLimits = Readonly<Record<'batteryMin' | 'batteryMax' | 'residual' | 'agree', Limit>>;
const OUTCOMES = ['battery', 'too-high', 'disagree', 'discharged', 'undecided'] as const;
const NAMES: Readonly<Record<string, string>> = { hc: 'HERM–C', fc: 'FAN–C', hf: 'HERM–FAN' };
/** More capacitors than a line can hold: nothing is proved for the rest. */
const MOST = 20;

/**
 * Whether every capacitor is empty: residual V DC on each pair, between two readings of a battery. Signs may be left off.
 * A capacitor known to have one section needs its one pair only.
 */
export const residual = judgement({
  id: 'residual',
  semantics: 1,
  takes: ['line', 'look'],
  limits: ['batteryMin', 'batteryMax', 'residual', 'agree'],
  outcomes: OUTCOMES,
  run({ line, look }, limits) {
    const due = dueOf(look);
    const batteries = (
      [
        ['Battery, before', 'batteryBefore'],
        ['Battery, after', 'batteryAfter'],
      ] as const
    ).map(([name, key]) => battery(name, figureOf(line, key, 'V'), limits, METER));
    // A reading that nobody asked for still counts where it is high.
    const pairs = [...new Set([...(due ?? []), ...Object.keys(NAMES), 'c2', 'c3', 'c4'])].flatMap((key) => {
      const value = figureOf(line, key, 'V');
      return value === null ? [] : [{ high: value.abs().gt(limits.residual.value), finding: pair(key, value, limits) }];
    });
    const agreed = agreement(line, limits);
    const findings = [
      ...batteries.map((b) => b.finding),
      ...pairs.map((p) => p.finding),
      ...(agreed ? [agreed.finding] : []),
    ];
    const outcome = (): (typeof OUTCOMES)[number] => {
      if (batteries.some((b) => b.is === 'out')) return 'battery';
      if (pairs.some((p) => p.high)) return 'too-high';
      if (batteries.some((b) => b.is === 'missing') || due === null) return 'undecided';
      if (due.some((key) => figureOf(line, key, 'V') === null)) return 'undecided';
      return agreed && !agreed.fits ? 'disagree' : 'discharged';
    };
    return { outcome: outcome(), findings };
  },
  probe: (limits) => probeLines(limits),
});

/** Keys of the readings that are due; null where nobody knows how many capacitors there are. */
function dueOf(look: Parts | undefined): string[] | null {
  const count = figureOf(look, 'count', 'count');
  if (count === null || count.lt(1) || count.gt(MOST)) return null;
  const first = showsOneSection(look) ? ['hc'] : ['hc', 'fc', 'hf'];
  const more = Array.from({ length: count.ceil().toNumber() - 1 }, (_, i) => `c${i + 2}`);
  return [...first, ...more];
}

function pair(key: string, value: Exact, limits: ResidualLimits): Finding {
  const name = NAMES[key] ?? `capacitor ${key.slice(1)}`;
  const most = say(limits.residual.value, 'V');
  const high = value.abs().gt(limits.residual.value);
  return finding({
    name,
    reading: say(value, 'V'),
    limits: `${most} or less`,
    word: high ? 'charged' : 'discharged',
    text: high
      ? `${name} still holds ${say(value, 'V')}, over ${most}. A wire, tab or winding on that section may be open.`
      : `${name} holds ${say(value, 'V')}.`,
    source: limits.residual.source,
  });
}

function agreement(line: Parts | undefined, limits: ResidualLimits): { fits: boolean; finding: Finding } | null {
  const [hc, fc, hf] = ['hc', 'fc', 'hf'].map((key) => figureOf(line, key, 'V'));
  if (!hc || !fc || !hf) return null;
  const fits = residualsAgree(hc, fc, hf, limits.agree.value);
  const apart = say(limits.agree.value, 'V');
  const said = finding({
    name: 'Three pairs',
    reading: `${say(hc, 'V')}, ${say(fc, 'V')}, ${say(hf, 'V')}`,
    limits: `within ${apart}`,
    word: fits ? 'agree' : 'disagree',
    text: fits
      ? `The three pairs agree within ${apart}.`
      : `HERM–FAN has to be the difference of the other two within ${apart}. A probe had no contact.`,
    source: limits.agree.source,
  });
  return { fits, finding: said };
}

function probeLines(limits: ResidualLimits): { line?: Parts; look?: Parts }[] {
  const { batteryMin, batteryMax, residual, agree } = limits;
  const look: Parts = { count: read(1, 'count') };
  const two: Parts = { count: read(2, 'count') };
  const good = { batteryBefore: batteryMin.value, hc: 0, fc: 0, hf: 0, batteryAfter: batteryMax.value };
  const single: Parts = { ...look, ...print({ herm: '45', fan: null }) };
  return [
    ...[
      good,
      { ...good, hc: residual.value, fc: -Number(residual.value), hf: 0 },
      { ...good, hc: residual.value, hf: residual.value },
      { ...good, hc: past(residual.value, '0.01'), hf: residual.value },
      { ...good, fc: past(0, '-100') },
      { ...good, hf: agree.value },
      { ...good, hf: past(agree.value, '0.01') },
      { ...good, batteryBefore: past(batteryMin.value, '-0.01') },
      { ...good, batteryAfter: past(batteryMin.value, '-0.01') },
      { ...good, batteryBefore: past(batteryMax.value, '0.01') },
      { ...good, batteryAfter: 0 },
    ].map((line) => ({ line: volts(line), look })),
    { line: volts({ ...good, c2: residual.value }), look: two },
    { line: volts({ ...good, c2: past(residual.value, '0.01') }), look: two },
    { line: volts(good), look: two },
    { line: { ...volts(good), hf: untaken }, look },
    { line: volts({ batteryBefore: batteryMin.value, hc: 0, batteryAfter: batteryMin.value }), look: single },
    {},
  ];
}

const METER = {
  proved: (shown: string) => `The meter read the battery at ${shown}.`,
  out: (shown: string) => `${shown} does not prove the meter on DC. The residuals between do not count.`,
  word: 'not proved',
};
