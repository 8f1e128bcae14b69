/** Who can be sent to a call, the one who fits best first, and how soon somebody has to go: the same on every surface. */
import type { CrewLine, JobCard } from './desk/types.ts';
import type { Call } from './schema.ts';

/** Certified people first where the refrigerant is likely, then those who are free, then by name. */
export const inOrder = ({ certified }: Pick<JobCard, 'certified'>, crew: readonly CrewLine[]): CrewLine[] =>
  [...crew].sort(
    (a, b) =>
      (certified ? Number(b.certified) - Number(a.certified) : 0) ||
      Number(b.available) - Number(a.available) ||
      (a.name < b.name ? -1 : 1),
  );
/** Why somebody stands where they stand in the list, in words. */
export const whyThere = ({ certified }: Pick<JobCard, 'certified'>, line: CrewLine): string =>
  [
    line.available ? 'free' : 'on a job under way',
    ...(certified ? [line.certified ? 'certified' : 'not certified, and refrigerant is likely'] : []),
  ].join(', ');

const HOW_SOON = {
  now: 'now',
  first: 'today, before everything else',
  today: 'today',
  soon: 'the next free visit',
} as const;
export const sayUrgency = (level: NonNullable<Call['urgency']>): string => HOW_SOON[level];
