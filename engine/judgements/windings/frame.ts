/** A winding or a load to ground, read with an ohmmeter: weaker than an insulation test, and said so. */
import type { Finding } from '../../schema.ts';
import type { Limit } from '../judgement.ts';
import { past } from '../probing.ts';
import type { Reading } from '../read.ts';
import { finding } from '../say.ts';
import { sayOhms, sayReading } from './look.ts';

/** Both in MΩ: below `grounded` it is a ground; from `clear` on there is none; between, it is noted. */
export const FRAME_LIMITS = ['grounded', 'clear'] as const;
export type FrameLimits = Readonly<Record<(typeof FRAME_LIMITS)[number], Limit>>;
export type FrameBand = 'low' | 'between' | 'clear' | 'missing';

const ohms = (megohms: Limit) => past(megohms.value, 0).times(1_000_000);

/** A reading on a limit is in: it belongs to the better band. */
export function frameBand(reading: Reading, { grounded, clear }: FrameLimits): FrameBand {
  if (reading.kind !== 'figure') return reading.kind === 'over' ? 'clear' : 'missing';
  if (reading.value.lt(ohms(grounded))) return 'low';
  return reading.value.lt(ohms(clear)) ? 'between' : 'clear';
}

export function frameFinding(name: string, reading: Reading, limits: FrameLimits): Finding {
  const band = frameBand(reading, limits);
  const shown = sayReading(reading);
  const [grounded, clear] = [sayOhms(ohms(limits.grounded)), sayOhms(ohms(limits.clear))];
  const text = {
    low: `${shown} to ground is below ${grounded} at meter voltage. Split the branches: the wire before the motor.`,
    between: `${shown} to ground lies between ${grounded} and ${clear}. It is noted; an insulation test decides.`,
    clear: `${shown} to ground: no ground found at meter voltage. An insulation test says more.`,
    missing: name === 'Frame' ? 'Nothing was read to the frame.' : `${name} was not read.`,
  }[band];
  const source = band === 'low' ? limits.grounded.source : limits.clear.source;
  return finding({ name, reading: shown, limits: `${clear} or more, or OL`, word: band, text, source });
}

/** Ω on both sides of each limit, for probes: low, on the first limit, under the second, on it. */
export const frameEdges = ({ grounded, clear }: FrameLimits): readonly string[] =>
  [ohms(grounded).minus('0.001'), ohms(grounded), ohms(clear).minus('0.001'), ohms(clear)].map((r) => r.toFixed(3));
