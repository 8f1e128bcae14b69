import { useState } from 'preact/hooks';
import { clientId } from '../net/client-id.ts';
import { postTake } from './net.ts';

/** Begins a call. The first key of the page, so that a ringing telephone needs one press. */
export function TakeCall() {
  const [client, setClient] = useState<string | null>(null);
  const [trouble, setTrouble] = useState<string | null>(null);
  const take = async (training: boolean): Promise<void> => {
    const own = client ?? clientId();
    setClient(own);
    const sent = await postTake(own, training);
    if (sent.ok) return location.assign(`/calls/${encodeURIComponent(sent.value.view.job)}`);
    setTrouble(sent.why === 'lost' ? 'No contact with the server. Press it again.' : sent.what);
  };
  return (
    <>
      <div class="row">
        <button type="button" class="key main" onClick={() => void take(false)}>
          Take a call
        </button>
        <button type="button" class="key" onClick={() => void take(true)}>
          Training call
        </button>
      </div>
      {trouble !== null && (
        <p class="refusal" role="alert">
          {trouble}
        </p>
      )}
    </>
  );
}
