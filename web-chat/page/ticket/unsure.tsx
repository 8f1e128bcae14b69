import type { Job } from './use-job.ts';

/** A word that makes sense only in contact and had no answer. Sending again sends the same one, and it counts once. */
export function Unsure({ job }: { job: Job }) {
  const { trouble, unsure, sending } = job;
  if (!trouble) return null;
  const words =
    trouble.why === 'lost'
      ? 'No answer came. This needs contact and is not kept on the phone. Look at what stands, then say it again.'
      : trouble.why === 'signed-out'
        ? 'You are signed out here. Open your sign-in link.'
        : trouble.what;
  return (
    <div class="not-sent" role="alert">
      <p>{words}</p>
      {unsure && (
        <div class="row">
          <button type="button" class="key main" aria-disabled={sending} onClick={() => void job.resend()}>
            Send again
          </button>
          <button type="button" class="key" onClick={job.leaveUnsure}>
            Leave it
          </button>
        </div>
      )}
    </div>
  );
}
