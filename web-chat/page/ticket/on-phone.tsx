/** What the server holds and what it doesn't: replies that wait on this phone, and those that came back. */
import { useEffect, useState } from 'preact/hooks';
import type { KeptReply } from '../kept/shelf.ts';
import { Panel } from './panels.tsx';
import { clockTime } from './time.ts';
import type { Job } from './use-job.ts';
import { useShowUp } from './use-lead-eye.ts';

const WAITS = 'Not sent. Kept on this phone alone, and sent when there is contact: in this order, once each.';
const SIGNED_OUT = 'Not sent: you are signed out here. Open your sign-in link on this phone, then it is sent.';
const LEAVES = 'This browser keeps nothing over a reload: leave the page open until it is sent.';
const ALARM =
  'Nobody has been told: there is no contact. Get away from the unit. Call for help by phone, and tell your shop.';

/** Replies of this job that the server has not confirmed, as lines of the ticket that are not on it yet. */
export function Unsent({ job }: { job: Job }) {
  const { trouble } = job.outbox;
  const waiting = waitingOf(job);
  if (waiting.length === 0) return null;
  const why = trouble?.why === 'signed-out' ? SIGNED_OUT : trouble?.what ? `${trouble.what} ${WAITS}` : WAITS;
  return (
    <section class="not-sent" aria-label="Not sent">
      <p role="alert">{job.outbox.lasts ? why : `${why} ${LEAVES}`}</p>
      <ol>
        {waiting.map((kept) => (
          <li key={kept.order}>
            <Given kept={kept} />
            <button type="button" class="key" onClick={() => void job.outbox.drop(kept.order)}>
              Don’t send it
            </button>
          </li>
        ))}
      </ol>
      <button type="button" class="key main" onClick={() => void job.outbox.flush()}>
        Send now
      </button>
    </section>
  );
}

/** Danger that nobody has heard of yet stands before everything else. */
export function Unheard({ job }: { job: Job }) {
  const alarm = useAlarm(waitingOf(job));
  const panel = useShowUp<HTMLDivElement>(alarm);
  return (
    <div ref={panel} role="alert">
      {alarm && <Panel level="danger" text={ALARM} />}
    </div>
  );
}

/** Whether one of these is an alarm: by its key, or by words that the engine reads as danger. */
function useAlarm(waiting: readonly KeptReply[]): boolean {
  const [words, setWords] = useState<readonly number[]>([]);
  useEffect(() => {
    const typed = waiting.filter(({ reply }) => reply.kind === 'text');
    if (typed.length === 0) return;
    // Loaded where it is needed. The worker keeps it for a phone without contact; before it does, the key is there.
    void import('../kept/danger.ts').then(
      ({ isDanger }) =>
        setWords(typed.filter(({ reply }) => reply.kind === 'text' && isDanger(reply.text)).map(({ order }) => order)),
      () => undefined,
    );
  }, [waiting.map(({ order }) => order).join()]);
  return waiting.some(
    ({ reply, order }) => (reply.kind === 'command' && reply.name === 'alarm') || words.includes(order),
  );
}

interface BackProps {
  readonly job: Job;
  /** Puts what came back into the controls or the line again; null where it doesn't fit what is asked now. */
  readonly again: (kept: KeptReply) => (() => void) | null;
}

/** Replies that the server did not take, beside what stands now. Nothing of them counts. */
export function CameBack({ job, again }: BackProps) {
  const back = backOf(job);
  if (back.length === 0) return null;
  return (
    <section class="came-back" aria-label="Not taken">
      {back.map((kept) => {
        const fill = again(kept);
        return (
          <div key={kept.order} role="alert">
            <p>
              <strong>Not taken, and not on the record.</strong> {kept.back?.text}
            </p>
            <Given kept={kept} />
            <div class="row">
              {fill && (
                <button type="button" class="key" onClick={fill}>
                  Fill it in again
                </button>
              )}
              <button type="button" class="key" onClick={() => void job.outbox.drop(kept.order)}>
                Seen
              </button>
            </div>
          </div>
        );
      })}
    </section>
  );
}

const Given = ({ kept }: { kept: KeptReply }) => (
  <p class="given">
    <time dateTime={new Date(kept.given).toISOString()}>{clockTime(new Date(kept.given).toISOString(), true)}</time>{' '}
    {kept.title !== '' && <span class="asked">{kept.title} </span>}
    {kept.says}
    {Object.keys(kept.photos).length > 0 && ' · with a photo'}
  </p>
);

/** A reply is shown as waiting once its first attempt has failed; until then it is on its way. */
export const waitingOf = ({ outbox, sending, view }: Job): readonly KeptReply[] =>
  sending && !outbox.trouble ? [] : outbox.replies.filter((each) => each.job === view.job && each.back === null);
const backOf = ({ outbox, view }: Job): readonly KeptReply[] =>
  outbox.replies.filter((each) => each.job === view.job && each.back !== null);
