/** The queue of review: what a senior reads next, and why. */
import { useEffect, useState } from 'preact/hooks';
import type { ReviewCard } from '../../../engine/desk/types.ts';
import { Conditions } from '../conditions.tsx';
import { getQueue } from '../net/api.ts';
import { useSettled } from '../net/clock.ts';
import { keepLooking, looking } from '../net/feed.ts';
import { Outdated, useOutdated } from '../outdated.tsx';
import type { QueueState } from '../state.ts';
import { Keys } from './keys.tsx';
import { focusOn, type KeyTo, useKeys } from './use-keys.ts';

const STATES: Readonly<Record<ReviewCard['state'], string>> = {
  'under-way': 'under way',
  held: 'waits for a senior',
  paused: 'paused',
  emergency: 'EMERGENCY',
  finished: 'finished, not signed',
  signed: 'signed',
  unreadable: 'can’t be read',
  taking: 'a call being taken',
  'put-away': 'a call that was put away',
  taken: 'a call that was taken',
};
export function QueuePage({ me, build, queue: first }: QueueState) {
  const [pages, setPages] = useState([first]);
  const [old, setOld] = useState(false);
  const outdated = useOutdated(build);
  const jobs = pages.flatMap((page) => page.jobs);
  const next = pages.at(-1)?.next ?? null;

  useEffect(() => {
    const look = looking(
      () => getQueue(null),
      (got) => {
        setOld(!got.ok);
        // Only the first page is renewed: what somebody has paged to stays under their eyes.
        if (got.ok) setPages((was) => (was.length > 1 ? was : [got.value]));
      },
    );
    return keepLooking(look, () => setOld(true));
  }, []);
  const more = async (): Promise<void> => {
    const got = await getQueue(next);
    setOld(!got.ok);
    if (!got.ok) return;
    const at = jobs.length;
    setPages((was) => [...was, got.value]);
    requestAnimationFrame(() => document.querySelectorAll<HTMLElement>('.queue a')[at]?.focus());
  };

  const keys: readonly KeyTo[] = [
    { key: 'q', does: 'to the first job', go: () => document.querySelector<HTMLElement>('.queue a')?.focus() },
    { key: 'n', does: 'next job', go: () => step(1) },
    { key: 'p', does: 'job before', go: () => step(-1) },
    { key: 'k', does: 'to these keys', go: () => focusOn('keys') },
  ];
  const { on, set } = useKeys(keys);
  return (
    <main class="jobs review-queue" data-live={useSettled()}>
      <header class="heading">
        <h1>Review</h1>
        <a class="key" href="/">
          Calls
        </a>
        <a class="key" href="/review/counts">
          Counts
        </a>
        <p>{me.name}</p>
        {old && <p role="status">No contact. This list may be old.</p>}
        {outdated && <Outdated />}
      </header>
      <p>
        An emergency comes first, then where somebody waits for a senior, then by the gravest thing to look at; of two
        alike the one that waits longer.
      </p>
      {jobs.length === 0 && <p>Nothing waits for a review.</p>}
      <ol class="cards queue">
        {jobs.map((job) => (
          <Card key={job.job} job={job} />
        ))}
      </ol>
      {next !== null && (
        <button type="button" class="key wide" onClick={() => void more()}>
          More jobs
        </button>
      )}
      <div id="keys" tabIndex={-1}>
        <Keys keys={keys} on={on} onSet={set} />
      </div>
      <Conditions />
    </main>
  );
}

const Card = ({ job }: { job: ReviewCard }) => (
  <li data-state={job.state}>
    <a href={`/review/${encodeURIComponent(job.job)}`}>{job.title}</a>
    <p>
      <strong>{STATES[job.state]}</strong> · {job.where}
    </p>
    {job.verdict !== null && <p>{job.verdict}</p>}
    {job.attention.length === 0 ? (
      <p>Nothing stands out.</p>
    ) : (
      <ul>
        {job.attention.slice(0, SHOWN).map(({ head, words, seq }, i) => (
          <li key={`${seq} ${i}`}>
            <strong>{head}</strong>: {words}
          </li>
        ))}
        {job.attention.length > SHOWN && <li>{`and ${job.attention.length - SHOWN} more`}</li>}
      </ul>
    )}
  </li>
);
/** Things named on a card; the rest is counted. */
const SHOWN = 4;

/** From the job that has the focus to its neighbour. */
function step(by: 1 | -1): void {
  const all = [...document.querySelectorAll<HTMLElement>('.queue a')];
  const at = all.indexOf(document.activeElement as HTMLElement);
  all[at < 0 ? 0 : Math.min(all.length - 1, Math.max(0, at + by))]?.focus();
}
