/** What every line of a restart is judged into, and the plate's figures it is judged by. */
import { shareOf } from '../../calc/amps.ts';
import type { Exact } from '../../calc/exact.ts';
import type { Finding, Parts } from '../../schema.ts';
import type { Limit } from '../judgement.ts';
import { figureOf } from '../read.ts';
import { say } from '../say.ts';

export const RESTART_LIMITS = [
  'low',
  'lowThree',
  'high',
  'ratedWithin',
  'nearLocked',
  'mccRatio',
  'idle',
  'dropAsk',
  'notIn',
  'sag',
  'splitLow',
  'splitHigh',
  'linesApart',
  'legsApart',
  'boxFall',
  'standing',
  'few',
  'fewFan',
] as const;
export type RestartLimits = Readonly<Record<(typeof RESTART_LIMITS)[number], Limit>>;

/** `open`: it can't be told. `stalled`: amps near locked rotor. `heavy`: more than the protector lets pass for long. */
export interface Judging {
  readonly is: 'in' | 'out' | 'open' | 'stalled' | 'heavy' | 'high';
  readonly finding: Finding;
}

export const plateAmps = (plate: Parts | undefined, key: 'rla' | 'lra' | 'fla'): Exact | null => {
  const amps = figureOf(plate, key, 'A');
  return amps?.gt(0) ? amps : null;
};
export const percentOf = (amps: Exact, plate: Exact): string => say(shareOf(amps, plate).times(100), '%', 0);
