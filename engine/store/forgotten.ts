/** What is left of a person whose data was removed. */
import type { Person } from '../desk/types.ts';
import type { Entry } from '../schema.ts';
import { json } from './rows.ts';

/** Under this name the shop’s notes count the removals. */
export const FORGETS = 'forgets';
/**
 * Under this beginning and a job's id they say up to which entry it was forgotten. A copy takes the notes along, so what
 * was forgotten here is forgotten there.
 */
export const FORGOTTEN = 'forgotten:';

/** The id stays, because entries name it and an entry is never changed. Nobody signs in under it again. */
export const forgotten = ({ chats: _, ...person }: Person): Person => ({
  ...person,
  name: '(removed)',
  initials: '–',
  certified: false,
  meter: null,
  active: false,
});

/** The units that a job was about. */
export const unitsNamed = (body: Entry['body']): string[] =>
  'what' in body && body.what === 'equipment' ? [body.equipment.id] : [];
/** A unit's sheet without its name, which says whose it is and where. What was read and fitted there is nobody's. */
export const unnamed = (sheet: string): string => JSON.stringify({ ...(json(sheet) as object), name: '(removed)' });

/** The hashes of all photos that an entry's parts name. */
export function photosNamed(body: Entry['body']): string[] {
  const parts = 'parts' in body ? Object.values(body.parts) : [];
  return parts.flatMap((value) => (value.kind === 'photo' ? [value.hash] : []));
}
