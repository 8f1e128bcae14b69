import { Exact } from '../../calc/exact.ts';
import { leakMilliamps, ohmsForAmps } from '../../calc/leakage.ts';
import type { Finding, Parts } from '../../schema.ts';
import { type Judged, judgement, type Limit } from '../judgement.ts';
import { read } from '../probing.ts';
import { figureOf, type Reading } from '../read.ts';
import { finding, say } from '../say.ts';
import { sayBeside } from '../supply/say-beside.ts';
import { FRAME_LIMITS, type FrameBand, type FrameLimits, frameBand, frameEdges, frameFinding } from './frame.ts';
import { ohmsOf, sayOhms } from './look.ts';
import { type Cell, more, ohmParts } from './probing.ts';

type TripLimits = Readonly<Record<'volts' | 'gfci' | 'breaker' | 'beside', Limit>>;
const LEADS = [
  ['t1g', 'T1–ground'],
  ['t2g', 'T2–ground'],
  ['t3g', 'T3–ground'],
] as const;

/**
 * All loads at once to ground, Ω, from the contactor's load side. An ohm figure has to explain a trip: the current it lets
 * through is compared with a GFCI's and with the breaker's, from the plate's MOP or else the smallest breaker made.
 */
export const loadsToGround = judgement({
  id: 'loads-to-ground',
  semantics: 1,
  takes: ['readings', 'plate'],
  limits: [...FRAME_LIMITS, 'volts', 'gfci', 'breaker', 'beside'],
  outcomes: ['none-found', 'low', 'undecided'],
  run({ readings, plate }, limits) {
    const leads = LEADS.map(([key, name]) => ({ key, name, reading: ohmsOf(readings, key) })).filter(
      // Only a three-phase unit has a third load terminal: it counts where it was read.
      ({ key, reading }) => key !== 't3g' || reading.kind !== 'none',
    );
    return toGround(leads, plate, limits);
  },
  probe(limits) {
    const line = (t1g: Cell, t2g: Cell, more: Readonly<Record<string, Cell>> = {}): { readings: Parts } => ({
      readings: ohmParts({ t1g, t2g, ...more }),
    });
    const [volts, gfci] = [limits.volts.value, new Exact(limits.gfci.value).div(1000)];
    const [toGfci, toBreaker] = [ohmsForAmps(volts, gfci), ohmsForAmps(volts, limits.breaker.value)];
    const toBeside = toBreaker.times(100).div(limits.beside.value);
    return [
      line('OL', 'OL'),
      line('OL', 'OL', { t3g: 'OL' }),
      ...frameEdges(limits).map((r) => line(r, 'OL')),
      ...frameEdges(limits).map((r) => line('OL', 'OL', { t3g: r })),
      line('OL', toGfci),
      line('OL', more(toGfci)),
      line('OL', toBeside),
      line('OL', more(toBeside)),
      line('OL', toBreaker),
      line('OL', more(toBreaker)),
      line(0, 0),
      { ...line('OL', ohmsForAmps(volts, 40)), plate: { mop: read(40, 'A') } },
      { ...line('OL', more(ohmsForAmps(volts, 40))), plate: { mop: read(40, 'A') } },
      line('OL', '_'),
      {},
    ];
  },
});

/** The leads of one motor to ground, Ω, all at once: an indoor blower's, off its board or relay. */
export const leadsToGround = judgement({
  id: 'leads-to-ground',
  semantics: 1,
  takes: ['readings', 'plate'],
  limits: [...FRAME_LIMITS, 'volts', 'gfci', 'breaker', 'beside'],
  outcomes: ['none-found', 'low', 'undecided'],
  run: ({ readings, plate }, limits) =>
    toGround([{ name: 'Leads to ground', reading: ohmsOf(readings, 'leads') }], plate, limits),
  probe: (limits) => [
    ...['OL', ...frameEdges(limits), 0, '_' as const].map((leads) => ({ readings: ohmParts({ leads }) })),
    {},
  ],
});

interface Lead {
  readonly name: string;
  readonly reading: Reading;
}
function toGround(
  leads: readonly Lead[],
  plate: Parts | undefined,
  limits: FrameLimits & TripLimits,
): Judged<'none-found' | 'low' | 'undecided'> {
  const bands = leads.map(({ reading }) => frameBand(reading, limits));
  const least = leastOf(leads.map(({ reading }) => reading));
  const findings = leads.map(({ name, reading }) => frameFinding(name, reading, limits));
  if (least && frameBand({ kind: 'figure', value: least }, limits) !== 'clear') {
    findings.push(explains(least, breakerAmps(plate, limits), limits));
  }
  return { outcome: outcomeOf(bands), findings };
}

function outcomeOf(bands: readonly FrameBand[]): 'none-found' | 'low' | 'undecided' {
  if (bands.includes('low')) return 'low';
  return bands.every((band) => band === 'clear') ? 'none-found' : 'undecided';
}
function leastOf(readings: readonly Reading[]): Exact | null {
  const figures = readings.flatMap((r) => (r.kind === 'figure' ? [r.value] : []));
  return figures.length === 0 ? null : Exact.min(...figures);
}

interface Breaker {
  readonly amps: Exact;
  readonly of: string;
}
function breakerAmps(plate: Parts | undefined, { breaker }: TripLimits): Breaker {
  const mop = figureOf(plate, 'mop', 'A');
  return mop?.gt(0)
    ? { amps: mop, of: `the ${say(mop, 'A')} breaker` }
    : { amps: new Exact(breaker.value), of: `the smallest breaker of ${say(breaker.value, 'A')}` };
}

/** What the lowest figure explains: a breaker's trip, a GFCI's, or neither. */
function explains(ohms: Exact, { amps, of }: Breaker, { volts, gfci, breaker, beside }: TripLimits): Finding {
  const at = `at ${say(volts.value, 'V')}`;
  const found = (word: string, reading: string, text: string): Finding =>
    finding({
      name: 'What it explains',
      reading,
      limits: `GFCI ${say(gfci.value, 'mA')}, breaker ${say(amps, 'A')}`,
      word,
      text,
      source: `Ohm’s law; ${gfci.source}; ${breaker.source}`,
    });
  if (ohms.isZero())
    return found('a short', sayOhms(ohms), `${sayOhms(ohms)} to ground is a short: it explains any trip.`);
  const leak = leakMilliamps(volts.value, ohms);
  const inAmps = leak.div(1000);
  const small = amps.times(beside.value).div(100);
  const current = leak.gte(1000)
    ? sayBeside(inAmps, [amps, small], 'A', 1)
    : sayBeside(leak, [gfci.value, small.times(1000)], 'mA', leak.gte(1) ? 1 : 3);
  const lets = `${sayOhms(ohms)} lets ${current} through ${at}.`;
  if (inAmps.gte(amps)) return found('a breaker’s trip', current, `${lets} That trips ${of}.`);
  if (inAmps.gte(small)) {
    return found('a trip beside the load', current, `${lets} That trips ${of} only on top of its load, and any GFCI.`);
  }
  if (leak.gte(gfci.value)) {
    return found('a GFCI’s trip', current, `${lets} That trips a GFCI, never ${of}: look on for a breaker’s reason.`);
  }
  return found('no trip', current, `${lets} That trips neither a GFCI nor a breaker.`);
}
