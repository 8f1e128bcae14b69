import { useId, useState } from 'preact/hooks';
import { type NewCall as Call, postCall } from '../net/api.ts';
import { clientId } from '../net/client-id.ts';
import type { CrewMember, Me } from '../state.ts';

interface Wish {
  readonly title: string;
  readonly assign: string;
  readonly training: boolean;
}

/** Opens a call. Whoever doesn't drive out says who does. */
export function NewCall({ me, crew }: { me: Me; crew: readonly CrewMember[] }) {
  const id = useId();
  const [wish, setWish] = useState<Wish>({ title: '', assign: '', training: false });
  // The same wish pressed twice is one call; a changed one is another.
  const [client, setClient] = useState<string | null>(null);
  const [busy, setBusy] = useState(false);
  const [trouble, setTrouble] = useState<string | null>(null);
  const change = (part: Partial<Wish>) => {
    setWish({ ...wish, ...part });
    setClient(null);
  };
  const ready = !busy && wish.title.trim() !== '';
  const open = async (event: Event): Promise<void> => {
    event.preventDefault();
    if (!ready) return;
    const own = client ?? clientId();
    setClient(own);
    setBusy(true);
    const sent = await postCall(callOf(wish, own));
    if (sent.ok) return location.assign(`/jobs/${encodeURIComponent(sent.value.view.job)}`);
    setBusy(false);
    setTrouble(sent.why === 'lost' ? 'Not sent: no contact with the server. Send it again.' : sent.what);
  };
  return (
    <form class="new-call" onSubmit={(event) => void open(event)}>
      <h2>New call</h2>
      <label for={`${id}-title`}>What and where, in a few words</label>
      <input
        id={`${id}-title`}
        value={wish.title}
        maxLength={200}
        autocomplete="off"
        onInput={(event) => change({ title: event.currentTarget.value })}
      />
      {!me.roles.includes('technician') && (
        <>
          <label for={`${id}-assign`}>Who goes</label>
          <select
            id={`${id}-assign`}
            value={wish.assign}
            onChange={(event) => change({ assign: event.currentTarget.value })}
          >
            <option value="">Nobody yet</option>
            {crew
              .filter(({ technician }) => technician)
              .map((each) => (
                <option key={each.id} value={each.id}>
                  {each.name}
                </option>
              ))}
          </select>
        </>
      )}
      <label class="pick">
        <input
          type="checkbox"
          checked={wish.training}
          onChange={(event) => change({ training: event.currentTarget.checked })}
        />
        <span>Training, never counts</span>
      </label>
      {trouble !== null && (
        <p class="refusal" role="alert">
          {trouble}
        </p>
      )}
      <button type="submit" class="key wide main" aria-disabled={!ready}>
        Open the call
      </button>
    </form>
  );
}

const callOf = ({ title, assign, training }: Wish, client: string): Call => ({
  title: title.trim(),
  client,
  ...(assign === '' ? {} : { assign }),
  ...(training ? { training } : {}),
});
