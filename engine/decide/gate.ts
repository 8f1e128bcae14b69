/** What is said beside the answer to a gate. */
import { placeIdOf, planOf, type Standing } from '../replay.ts';
import type { GivenParts, Prompt } from '../schema.ts';
import { saysNothing } from '../understand/index.ts';
import { refuse, type Scribe, type Wish } from './types.ts';

interface Typed {
  readonly text: string;
  readonly given: GivenParts;
  readonly unread: readonly string[];
}

/**
 * R6: a yes to a gate, or a line that proves, stands alone. "Yes, breaker is on" may take back what the yes says, so it
 * is asked once more; the plain answer passes, and the words are kept. Null where the answer may be taken.
 */
export function besideGate(s: Standing, { parts }: Prompt, typed: Typed, keep: Scribe): Wish | null {
  const place = planOf(s).places.get(placeIdOf(s));
  if (!place?.gate) return null;
  const proves = place.class === 'proving';
  const passing = parts.filter(({ key, kind }) =>
    kind === 'confirm' ? typed.given[key]?.[0] === 'yes' : proves && kind === 'field' && typed.given[key] !== undefined,
  );
  const beside = typed.unread.filter((piece) => !saysNothing(piece, passing));
  if (passing.length === 0 || beside.length === 0) return null;
  const again = proves ? 'type the line again without it' : 'answer again without it';
  return refuse(
    'gate',
    `A gate takes its answer alone. Beside it stands ${beside.map((piece) => `“${piece}”`).join(', ')}. If that changes nothing, ${again}; if it does, put it right first. Your words are kept as a note.`,
    { drafts: [{ kind: 'noted', body: { as: 'unclear', text: keep.keep(typed.text) } }] },
  );
}
