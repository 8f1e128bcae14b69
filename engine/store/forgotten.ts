/** What is left of a person whose data was removed. */
import type { Person } from '../desk/types.ts';
import type { Entry } from '../schema.ts';

/** The id stays, because entries name it and an entry is never changed. Nobody signs in under it again. */
export const forgotten = ({ chats: _, ...person }: Person): Person => ({
  ...person,
  name: '(removed)',
  initials: '–',
  certified: false,
  meter: null,
  active: false,
});

/** The hashes of all photos that an entry's parts name. */
export function photosNamed(body: Entry['body']): string[] {
  const parts = 'parts' in body ? Object.values(body.parts) : [];
  return parts.flatMap((value) => (value.kind === 'photo' ? [value.hash] : []));
}
