/** What somebody saw of filter, coils, fans: which of it holds the air back. */
import type { Parts } from '../../schema.ts';
import { chosenOf } from '../read.ts';

/** What counts, in the words in which it is told. Whatever else is chosen counts nothing. */
const HOLDS_BACK: Readonly<Record<string, string>> = {
  filter: 'filter clogged',
  'indoor-coil': 'indoor coil dirty',
  registers: 'registers or dampers closed',
  blower: 'blower slow or its wheel dirty',
  'return-leak': 'return draws hot air',
  matted: 'condenser coil matted',
  'outdoor-fan': 'outdoor fan slow or turning the wrong way',
  recirculation: 'warm air drawn in again',
};
/** `clear`: looked at, nothing found. `open`: nobody looked, or nobody was sure. */
export type Seen =
  | { readonly is: 'something'; readonly words: string }
  | { readonly is: 'clear' | 'open'; readonly words: string };

/** Reads the part `seen`. What was found counts even where something else was not sure. */
export function seenIn(parts: Parts | undefined): Seen {
  const chosen = chosenOf(parts, 'seen');
  const found = chosen.flatMap((id) => (Object.hasOwn(HOLDS_BACK, id) ? (HOLDS_BACK[id] ?? []) : []));
  if (found.length > 0) return { is: 'something', words: found.join(', ') };
  const looked = chosen.length === 1 && chosen[0] === 'nothing';
  return looked ? { is: 'clear', words: 'nothing found' } : { is: 'open', words: 'not looked at in full' };
}
