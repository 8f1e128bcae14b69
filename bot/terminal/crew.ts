/** The people of a database that has none: invented, so that a first run needs no setting up. */
import type { Person, Role } from '../../engine/desk/index.ts';
import type { Meter } from '../../engine/index.ts';

/** ±(1.9 % + 2 counts), 0.1 µF from 10 µF up, 0.01 below: invented, as the crew is. */
const METER: Meter = { percent: '1.9', counts: 2, fine: '0.01', coarse: '0.1', split: '10', known: true };

const someone = (id: string, name: string, initials: string, role: Role): Person => ({
  id,
  name,
  initials,
  roles: [role],
  certified: false,
  meter: METER,
  active: true,
});

export const CREW: readonly Person[] = [
  someone('nell', 'Nell Ashgrove', 'NA', 'technician'),
  someone('idris', 'Idris Fenway', 'IF', 'technician'),
  someone('greta', 'Greta Holm', 'GH', 'senior'),
  someone('lou', 'Lou Bramley', 'LB', 'dispatcher'),
  someone('odell', 'Odell Kerr', 'OK', 'owner'),
];

/** How far this person’s meter is trusted. */
export const meterWords = ({ meter }: Person): string =>
  meter === null || !meter.known ? 'meter not known' : `meter ±(${meter.percent}\u2009% + ${meter.counts} counts)`;

/** By id, full name, or a first or last name that one person alone has. */
export function findPerson(people: readonly Person[], wanted: string): Person | null {
  const word = wanted.trim().toLowerCase();
  const active = people.filter((p) => p.active);
  const exact = active.find((p) => p.id === wanted.trim()) ?? active.find((p) => p.name.toLowerCase() === word);
  if (exact) return exact;
  const named = active.filter((p) => p.name.toLowerCase().split(/\s+/).includes(word));
  return named.length === 1 ? (named[0] ?? null) : null;
}

/** Who types where nobody is named. */
export const firstPerson = (people: readonly Person[]): Person | null =>
  people.find((p) => p.active && p.roles.includes('technician')) ?? people.find((p) => p.active) ?? null;

export const nobody = (people: readonly Person[], wanted: string): string =>
  `There is nobody called "${wanted}". People: ${people
    .filter((p) => p.active)
    .map((p) => `${p.name} (${p.id})`)
    .join(', ')}.`;
