/** What a senior does with a job: go over it anew, ask, approve, release, sign, send back. */
import { useState } from 'preact/hooks';
import type { CommandName } from '../../../engine/index.ts';
import { type CommandKey, SENIOR_KEYS } from '../ticket/commands.ts';
import { WordsForm } from '../ticket/words-form.tsx';
import { RecomputedNow } from './recomputed.tsx';
import type { useReview } from './use-review.ts';

interface DecideProps {
  readonly job: ReturnType<typeof useReview>;
  readonly asking: CommandName | null;
  readonly onAsking: (name: CommandName | null) => void;
}

export function Decide({ job, asking, onAsking }: DecideProps) {
  const { view, may } = job.review;
  const [sure, setSure] = useState(false);
  const keys = may.flatMap((name) => SENIOR_KEYS[name] ?? []);
  const open = keys.find(({ name }) => name === asking);
  const tap = (key: CommandKey): void => {
    if (job.busy) return;
    // Signing ends a job: asked twice.
    setSure(!key.words && !sure);
    if (key.words) onAsking(key.name);
    else if (sure) void job.command(key.name, '');
  };
  return (
    <section class="decide" aria-labelledby="decide">
      <h2 id="decide" tabIndex={-1}>
        What you can do
      </h2>
      <p>{standWords(job)}</p>
      {view.question !== null && <p class="question">{`Asked, not answered yet: ${view.question}`}</p>}
      {open?.words ? (
        <WordsForm
          {...open.words}
          key={open.name}
          disabled={job.busy}
          onLeave={() => onAsking(null)}
          onSend={(words) => void job.command(open.name, words).then((done) => done && onAsking(null))}
        />
      ) : (
        <div class="row">
          <button type="button" class="key" aria-disabled={job.busy} onClick={() => void job.recompute()}>
            Recompute
          </button>
          {keys.map((key) => (
            <button
              key={key.name}
              type="button"
              class="key"
              data-command={key.name}
              aria-disabled={job.busy}
              onClick={() => tap(key)}
            >
              {key.words === undefined && sure ? `${key.label}: sure` : key.label}
            </button>
          ))}
          <a class="key" href={`/jobs/${encodeURIComponent(view.job)}`}>
            The ticket
          </a>
          <a class="key" href={`/api/jobs/${encodeURIComponent(view.job)}/export`} download>
            The record as a file
          </a>
        </div>
      )}
      {job.said !== null && (
        <p class="refusal" role="status">
          {job.said}
        </p>
      )}
      {job.recomputed && <RecomputedNow of={job.recomputed} />}
    </section>
  );
}

function standWords({ review }: ReturnType<typeof useReview>): string {
  const { kind, title } = review.view.prompt;
  if (kind === 'signed') return 'Signed.';
  return kind === 'finished' ? `Finished, not signed: ${title}` : `Under way: ${title}`;
}
