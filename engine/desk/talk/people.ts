/** An invented crew: two technicians, one of them certified, and those who lead them. */
import type { Meter } from '../../schema.ts';
import type { Person, Role } from '../types.ts';

/** ±(1.9 % + 2 counts), which is what the proof's rules of verdicts reckon with. */
const METER: Meter = { percent: '1.9', counts: 2, fine: '0.01', coarse: '0.1', split: '10', known: true };
const person = (id: string, name: string, role: Role, certified = false): Person => ({
  ...{ id, name, initials: name.replace(/[^A-Z]/g, ''), roles: [role], certified, meter: METER, active: true },
});
export const JUNIOR = 'mira';
export const SECOND = 'jonas';
export const SENIOR = 'edda';
export const DISPATCHER = 'piet';
export const OWNER = 'lena';
export const CREW: readonly Person[] = [
  person(JUNIOR, 'Mira Holt', 'technician'),
  person(SECOND, 'Jonas Reed', 'technician', true),
  person(SENIOR, 'Edda Stone', 'senior', true),
  person(DISPATCHER, 'Piet Lund', 'dispatcher'),
  person(OWNER, 'Lena Ford', 'owner'),
];
export const firstName = (id: string): string => CREW.find((p) => p.id === id)?.name.split(' ')[0] ?? id;
