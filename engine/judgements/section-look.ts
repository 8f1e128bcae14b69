/** What is looked at to judge the values of a run capacitor: the readings that count, now and in the try before. */
import { Exact } from '../calc/exact.ts';
import type { CapacitorLabel } from '../schema.ts';
import type { Force, Given, Limit } from './judgement.ts';
import { figureOf, type Reading } from './read.ts';
import { judgeSection, type Section, type SectionName } from './section.ts';
import {
  contradicts,
  fanInBand,
  figureIn,
  hermMaybeFan,
  leadTrouble,
  type Part,
  type Try,
  tryOf,
} from './section-try.ts';

export const SECTION_TAKES = ['label', 'readings', 'third', 'before', 'beforeThird', 'wires', 'exact', 'tabs'] as const;
export const SECTION_OUTCOMES = [
  'pass',
  'conditional-pass',
  'repeat',
  'fails',
  'ask-third',
  'fan-undecided',
  'pair',
  'swapped',
  'too-high',
  'too-high-twice',
  'wires',
  'ohms',
  'open',
  'exact',
  'contradiction',
  'undecided',
] as const;
export type SectionOutcome = (typeof SECTION_OUTCOMES)[number];
type SectionGiven = Given<(typeof SECTION_TAKES)[number]>;
export type SectionLimits = Readonly<Record<'openShare' | 'habit', Limit>>;

/** Everything a decision looks at, computed once. */
export interface Look {
  readonly given: SectionGiven;
  readonly part: Part;
  readonly now: Try;
  /** The try before; null where this is the first. */
  readonly was: Try | null;
  /** Sections not read again, taken from the try before. */
  readonly carried: readonly SectionName[];
  readonly sections: readonly Section[];
  /** Sections of the try before that count as a reading of that section. */
  readonly earlier: readonly Section[];
}

export function takeIn(given: SectionGiven, label: CapacitorLabel, limits: SectionLimits, force: Force): Look {
  const part: Part = { label, meter: force.meter, openPercent: new Exact(limits.openShare.value) };
  const fresh = tryOf(given.readings, given.third);
  const was = given.before || given.beforeThird ? tryOf(given.before, given.beforeThird) : null;
  const counted = was === null ? [] : countable(was, part);
  // "repeat: herm 37.3" repeats one section. The other stands as it was read, if it was read soundly.
  const again = fresh.herm.kind !== 'none' || fresh.fan.kind !== 'none';
  const carried = again ? counted.filter((name) => readingFor(fresh, name).kind === 'none') : [];
  const now: Try = {
    herm: was && carried.includes('HERM') ? was.herm : fresh.herm,
    fan: was && carried.includes('FAN') ? was.fan : fresh.fan,
    hf: fresh.hf,
  };
  const judge = (t: Try, names: readonly SectionName[]): Section[] =>
    names.flatMap((name) => {
      const reading = figureIn(readingFor(t, name));
      return (reading && judgeSection(name, label, reading, force)) ?? [];
    });
  const repeated = counted.filter((name) => !carried.includes(name));
  return {
    given,
    part,
    now,
    was,
    carried,
    sections: judge(now, ['HERM', 'FAN']),
    earlier: was ? judge(was, repeated) : [],
  };
}

export const readingFor = (t: Try, name: SectionName): Reading => (name === 'HERM' ? t.herm : t.fan);

/** Sections whose reading in that try was of that section, as far as it could be told. */
function countable(t: Try, part: Part): SectionName[] {
  if (leadTrouble(t, part)) return [];
  const settled = contradicts(t, part) === false;
  const names: SectionName[] = [];
  if (figureIn(t.herm) && (settled || !hermMaybeFan(t, part))) names.push('HERM');
  if (part.label.fan !== null && figureIn(t.fan) && (settled || !fanInBand(t, part))) names.push('FAN');
  return names;
}

/** Both first readings equal to the label's last digit: more likely copied than read. */
export function isExact({ given, part: { label } }: Look): boolean {
  if (label.fan === null) return false;
  const [herm, fan] = [figureOf(given.readings, 'herm', 'µF'), figureOf(given.readings, 'fan', 'µF')];
  return herm !== null && fan !== null && herm.eq(label.herm) && fan.eq(label.fan);
}
