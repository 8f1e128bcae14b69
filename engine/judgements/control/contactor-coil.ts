/** The coil of a contactor in Ω. Only a 24 V coil has a band; OL is open at any rating. */
import { Exact } from '../../calc/exact.ts';
import type { Finding, Parts } from '../../schema.ts';
import type { Limit } from '../judgement.ts';
import { chosenOf, figureOf, readingOf } from '../read.ts';
import { say, sayRange } from '../say.ts';
import { type Band, ohmsFinding, sayOhms } from './ohm-band.ts';

type CoilLimits = Readonly<Record<'shorted' | 'low' | 'high' | 'rated', Limit>>;
/** `other volts`: not rated as the band is, or nobody knows. */
export type CoilBand = Band | 'other volts';

/** Printed coil volts: a figure, or a choice that is one. Null: not asked. `other`: chosen, and no one figure. */
export function ratedVolts(rated: Parts | undefined): Exact | 'other' | null {
  const figure = figureOf(rated, 'volts', 'V');
  if (figure) return figure;
  const [chosen] = [...chosenOf(rated, 'volts'), ...chosenOf(rated, 'rated')];
  if (chosen === undefined) return null;
  return /^\d{1,3}$/.test(chosen) ? new Exact(chosen) : 'other';
}

export function coilBand(
  readings: Parts | undefined,
  volts: ReturnType<typeof ratedVolts>,
  limits: CoilLimits,
): CoilBand {
  const reading = readingOf(readings, 'coil', 'Ω');
  if (reading.kind !== 'figure') return reading.kind === 'over' ? 'open' : 'missing';
  const ohms = reading.value.abs();
  const low = ohms.lt(limits.shorted.value);
  // A coil for more volts has more ohms: what is a short at the rated volts is one at any above.
  if (low && (volts === null || volts === 'other' || volts.gte(limits.rated.value))) return 'low';
  if (volts === 'other' || (volts && !volts.eq(limits.rated.value))) return 'other volts';
  return ohms.gte(limits.low.value) && ohms.lte(limits.high.value) ? 'good' : 'between';
}

export function coilFinding(
  readings: Parts | undefined,
  volts: ReturnType<typeof ratedVolts>,
  limits: CoilLimits,
): Finding {
  const band = coilBand(readings, volts, limits);
  const reading = readingOf(readings, 'coil', 'Ω');
  const shown = sayOhms(reading);
  const range = sayRange({ low: new Exact(limits.low.value), high: new Exact(limits.high.value) }, 'Ω', 4, 0);
  const rated = say(limits.rated.value, 'V');
  const least = say(limits.shorted.value, 'Ω');
  const text = {
    good: `The coil reads ${shown}, inside ${range}.`,
    open: 'The coil reads OL. It is open.',
    low: `The coil reads ${shown}, under ${least}. It is shorted and blows the fuse that feeds it.`,
    between: `The coil reads ${shown}, outside ${range}. Two coils in parallel read about half. Take one wire off and read it again.`,
    missing: 'The coil was not read.',
    'other volts': `The coil reads ${shown}. The band holds for a ${rated} coil and this one is not, so it is not judged.`,
  }[band];
  const assumed = volts === null && (band === 'good' || band === 'low' || band === 'between');
  const words = { good: 'good', open: 'open', low: 'shorted', between: 'between', missing: 'missing' } as const;
  return ohmsFinding(
    'Coil',
    reading,
    band === 'other volts' ? 'not judged' : words[band],
    assumed ? `${text} A ${rated} coil is assumed.` : text,
    limits.low,
    `${range}; shorted under ${least}`,
  );
}
