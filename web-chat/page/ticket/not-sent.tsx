import type { Job } from './use-job.ts';

/** A reply that the server did not confirm. Sending again sends the same one, and it counts once. */
export function NotSent({ job }: { job: Job }) {
  const { trouble, unsent, sending } = job;
  if (!trouble) return null;
  const words =
    trouble.why === 'lost'
      ? 'Not sent: no contact with the server. Take it as not kept. Send it again; it counts once.'
      : trouble.why === 'signed-out'
        ? 'Not sent: you are signed out here. Open your sign-in link, then send it again.'
        : trouble.what;
  return (
    <div class="not-sent" role="alert">
      <p>{words}</p>
      {unsent && (
        <div class="row">
          <button type="button" class="key main" aria-disabled={sending} onClick={() => void job.resend()}>
            Send again
          </button>
          <button type="button" class="key" onClick={() => job.restoreUnsent(null)}>
            Don’t send it
          </button>
        </div>
      )}
    </div>
  );
}
