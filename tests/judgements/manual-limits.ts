/** The limits that the manual's pages give a judgement, by its id. `tests/flows/limits-given.test.ts` holds the pages to it. */
import type { judgements } from '../../engine/judgements/index.ts';
import type { Limit } from '../../engine/judgements/judgement.ts';
import { LIMITS } from '../../flows/limits.ts';

export type Limits = Readonly<Record<string, Limit>>;
type Id = keyof typeof judgements;

/** Where they don't stand under the judgement's own name. */
const ELSEWHERE: Partial<Record<Id, readonly Limits[]>> = {
  airflow: [LIMITS.split],
  'blower-restart': [LIMITS.restart],
  'case-leak': [LIMITS.shell],
  fuses: [LIMITS.fuses, LIMITS.boardFuse],
  'leads-to-ground': [LIMITS.loadsToGround],
  'evened-out': [{ least: LIMITS.starts.least, typed: LIMITS.starts.typed }],
  'minutes-since': [LIMITS.delay, LIMITS.busRest],
  more: ['1', '2'].map((value) => ({
    than: { value, unit: 'count', source: value === '1' ? 'one part' : 'two parts' },
  })),
  'section-ohms': [LIMITS.ohms],
  'section-values': [LIMITS.sections],
  'supply-located': [LIMITS.supplyLocated],
  'three-windings': [LIMITS.threeWindings, LIMITS.threeFanWindings],
  'volts-held': [LIMITS.during],
  'volts-there': [LIMITS.controlThere],
};

/** Each set that some page gives; none where it takes no limits. */
export function limitsGiven(id: Id): readonly Limits[] {
  const own: Readonly<Record<string, Limits | undefined>> = LIMITS;
  const named = own[id.replace(/-(\w)/g, (_, letter: string) => letter.toUpperCase())];
  return ELSEWHERE[id] ?? (named ? [named] : []);
}
