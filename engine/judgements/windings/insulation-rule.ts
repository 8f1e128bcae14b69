/** Which figure of insulation is enough, and where a reading stands beside it. */
import { Exact } from '../../calc/exact.ts';
import { type Enough, enoughMegohms } from '../../calc/insulation.ts';
import type { Parts } from '../../schema.ts';
import type { Limit } from '../judgement.ts';
import { figureOf, type Reading, readingOf } from '../read.ts';
import { told } from './look.ts';

export const INSULATION_LIMITS = [
  'scroll',
  'reciprocating',
  'motor',
  'testVolts',
  'good',
  'fair',
  'watch',
  'at40',
] as const;
export type InsulationLimits = Readonly<Record<(typeof INSULATION_LIMITS)[number], Limit>>;
export type Standing = 'missing' | 'low' | 'open' | 'enough';

/** The volts of an insulation tester; null for an ohmmeter and where nobody said. */
export function testVolts(test: Parts | undefined): Exact | null {
  const digits = told(test)
    .flatMap((option) => option.match(/^\d{2,5}$/g) ?? [])
    .at(0);
  return digits === undefined ? null : new Exact(digits);
}

const KINDS = {
  scroll: 'a scroll compressor’s',
  reciprocating: 'a reciprocating compressor’s',
  motor: 'a fan or blower motor’s',
} as const;
export interface Rule {
  readonly enough: Enough | null;
  readonly of: string;
  readonly source: string;
}
export function enoughFor(machine: Parts | undefined, maker: Parts | undefined, limits: InsulationLimits): Rule {
  const printed = figureOf(maker, 'maker', 'MΩ');
  const kind = (['scroll', 'reciprocating', 'motor'] as const).find((k) => told(machine).includes(k));
  const enough = enoughMegohms(printed?.gt(0) ? printed : null, kind ? limits[kind].value : null);
  if (enough?.by === 'maker') return { enough, of: 'the maker’s', source: 'the maker’s figure' };
  return kind
    ? { enough, of: KINDS[kind], source: limits[kind].source }
    : { enough, of: '', source: `${limits.scroll.source}; ${limits.reciprocating.source}` };
}

/** A resistance is never below zero. */
export function megohmsOf(parts: Parts | undefined): Reading {
  const reading = readingOf(parts, 'megohms', 'MΩ');
  return reading.kind === 'figure' && reading.value.lt(0) ? { kind: 'none' } : reading;
}

/** Where the kind is unknown, only what is low or enough for every compressor decides. */
export function standing(reading: Reading, { enough }: Rule, { scroll, reciprocating }: InsulationLimits): Standing {
  if (reading.kind !== 'figure') return reading.kind === 'over' ? 'enough' : 'missing';
  if (enough) return reading.value.lt(enough.megohms) ? 'low' : 'enough';
  if (reading.value.lt(scroll.value)) return 'low';
  return reading.value.lt(reciprocating.value) ? 'open' : 'enough';
}
