import { useId, useRef, useState } from 'preact/hooks';
import type { CrewLine, JobCard } from '../../../engine/desk/types.ts';
import { inOrder, whyThere } from '../../../engine/index.ts';
import { clientId } from '../net/client-id.ts';
import { postAssign } from './net.ts';

interface GiveProps {
  readonly card: JobCard;
  readonly crew: readonly CrewLine[];
  readonly onGiven: () => void;
}
/** Says who goes. The first of the list is the one who fits best. */
export function Give({ card, crew, onGiven }: GiveProps) {
  const id = useId();
  const others = inOrder(card, crew).filter((line) => !card.assigned.includes(line.id));
  const [to, setTo] = useState<string | null>(null);
  const [trouble, setTrouble] = useState<string | null>(null);
  const client = useRef<string | null>(null);
  const chosen = to ?? others[0]?.id;
  if (chosen === undefined) return null;
  const give = async (event: Event): Promise<void> => {
    event.preventDefault();
    client.current ??= clientId();
    const sent = await postAssign(card.job, chosen, client.current);
    if (!sent.ok) return setTrouble(sent.why === 'lost' ? 'No contact. Press it again.' : sent.what);
    client.current = null;
    setTo(null);
    setTrouble(sent.value.refusal?.text ?? null);
    onGiven();
  };
  return (
    <form class="give" onSubmit={(event) => void give(event)}>
      <label for={id}>{card.assigned.length === 0 ? 'Who goes' : 'Hand over to'}</label>
      <select
        id={id}
        value={chosen}
        onChange={(event) => {
          client.current = null;
          setTo(event.currentTarget.value);
        }}
      >
        {others.map((line) => (
          <option key={line.id} value={line.id}>{`${line.name}: ${whyThere(card, line)}`}</option>
        ))}
      </select>
      <button type="submit" class="key">
        {card.assigned.length === 0 ? 'Give it' : 'Hand over'}
      </button>
      {trouble !== null && (
        <p class="refusal" role="alert">
          {trouble}
        </p>
      )}
    </form>
  );
}
