/** The board: what is open, the most urgent first; who is free; what runs out. */
import type { When } from '../../report/when.ts';
import type { Truck } from '../../schema.ts';
import type { Board, CrewLine, JobCard, LowStock, Person } from '../types.ts';

const LEVELS = ['now', 'first', 'today', 'soon'] as const;
/** An emergency before everything; then how soon; of equals the one that waits longest. */
const rank = ({ alarm, state, urgency }: JobCard): number =>
  alarm !== null || state === 'emergency' ? -1 : urgency === null ? LEVELS.length : LEVELS.indexOf(urgency.level);
export const byUrgency = (a: JobCard, b: JobCard): number => rank(a) - rank(b) || (a.opened < b.opened ? -1 : 1);

/** On these somebody stands at the unit. */
const AT_WORK: readonly JobCard['state'][] = ['under-way', 'held', 'emergency'];

/** `today`: an instant of the day that counts, which is a day of the shop. */
export function crewLines(
  crew: readonly Person[],
  jobs: readonly JobCard[],
  today: string,
  { day: dayOf }: When,
): CrewLine[] {
  const day = dayOf(today);
  const sent = crew.filter(({ active, roles }) => active && roles.includes('technician'));
  return sent.map(({ id, name, certified }) => {
    const theirs = jobs.filter(({ assigned }) => assigned.includes(id));
    const on = theirs.find(({ begun, state }) => state === 'emergency' || (begun && AT_WORK.includes(state))) ?? null;
    const due = theirs.filter((job) => job.state !== 'signed' || dayOf(job.updated) === day);
    const ordered = due.sort((a, b) => (a.opened < b.opened ? -1 : 1));
    return { id, name, certified, available: on === null, on: on?.job ?? null, day: ordered.map(({ job }) => job) };
  });
}

export const lowStock = (trucks: readonly Truck[]): LowStock[] =>
  trucks.flatMap(({ name, items }) =>
    items
      .filter(({ count, low }) => count <= low)
      .map((item) => ({ truck: name, item: itemName(item), left: item.count, low: item.low })),
  );
export function itemName({ name, kind, sections, range, volts }: Truck['items'][number]): string {
  if (kind === 'other') return name;
  // A start part is printed as a range.
  const print = range === null ? sections.join('+') : `${range.low} to ${range.high}`;
  return `${kind} ${print}\u2009µF${volts === null ? '' : ` ${volts}\u2009V`}, ${name}`;
}

/** Of a person who sees what they take part in alone: their own line and nobody's stock. */
export const ownBoard = (jobs: JobCard[], crew: readonly Person[], by: string, now: string, when: When): Board => ({
  jobs: jobs.sort(byUrgency),
  crew: crewLines(
    crew.filter(({ id }) => id === by),
    jobs,
    now,
    when,
  ),
  low: [],
  now,
});
