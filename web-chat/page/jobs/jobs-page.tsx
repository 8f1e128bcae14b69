/** The calls of a person, most recent first, and a new one. */
import { useEffect, useState } from 'preact/hooks';
import type { JobCard } from '../../../engine/desk/types.ts';
import { Conditions } from '../conditions.tsx';
import { forgetPhotos } from '../kept/photo-draft.ts';
import { openShelf } from '../kept/shelf.ts';
import { useOutbox } from '../kept/use-outbox.ts';
import { getJobs, postSignOut } from '../net/api.ts';
import { useSettled } from '../net/clock.ts';
import { keepLooking, looking } from '../net/feed.ts';
import { Outdated, useOutdated } from '../outdated.tsx';
import { type CrewMember, isOfOffice, isSenior, type JobsState } from '../state.ts';
import { forgetPages, keptAt } from '../worker/register.ts';
import { HowSoon } from './how-soon.tsx';
import { NewCall } from './new-call.tsx';

const STATES = {
  'under-way': 'under way',
  unreadable: 'can’t be read',
  held: 'held',
  paused: 'paused',
  emergency: 'EMERGENCY',
  finished: 'finished',
  signed: 'signed',
  taking: 'being taken',
  'put-away': 'put away',
  taken: 'taken',
} as const;

export function JobsPage({ me, build, jobs: first, crew }: JobsState) {
  const [jobs, setJobs] = useState(first);
  const [old, setOld] = useState(false);
  const [leaving, setLeaving] = useState(false);
  const outdated = useOutdated(build);
  // A phone comes back to this page out of a pocket.
  useEffect(() => {
    setOld(keptAt() !== null);
    const renew = looking(getJobs, (got) => {
      setOld(!got.ok);
      if (got.ok) setJobs(got.value);
    });
    const back = (): void => {
      if (document.visibilityState === 'visible') renew();
    };
    // A call that is given out is there at once, whoever looks.
    const stop = keepLooking(back, () => setOld(true));
    document.addEventListener('visibilitychange', back);
    window.addEventListener('online', back);
    if (keptAt() !== null) back();
    // What somebody else saw on this phone is theirs.
    void openShelf().then((shelf) => shelf.forgetViews(me.id));
    void forgetPhotos(me.id);
    return () => {
      stop();
      document.removeEventListener('visibilitychange', back);
      window.removeEventListener('online', back);
    };
  }, [me.id]);
  const { replies } = useOutbox(me.id, () => undefined);
  const waits = (job: string): number => replies.filter((each) => each.job === job).length;
  const signOut = async (): Promise<void> => {
    if (replies.length > 0 && !leaving) return setLeaving(true);
    if (!(await postSignOut()).ok) return;
    await Promise.all([forgetPages(), openShelf().then((shelf) => shelf.forgetViews(null)), forgetPhotos(null)]);
    location.reload();
  };
  return (
    <main class="jobs" data-live={useSettled()}>
      <header class="heading">
        <h1>Calls</h1>
        <button type="button" class="key" onClick={() => void signOut()}>
          Sign out
        </button>
        <p>{me.name}</p>
        <a class="key" href="/board">
          {isOfOffice(me) ? 'Board' : 'My day'}
        </a>
        {isSenior(me) && (
          <a class="key" href="/review">
            Review
          </a>
        )}
        {leaving && (
          <p role="alert">
            {`Not on the server yet: ${replies.length}. It stays on this phone and is sent when you sign in here again.`}
          </p>
        )}
        {old && <p role="status">No contact. This list may be old.</p>}
        {outdated && <Outdated />}
      </header>
      {jobs.length === 0 && <p>No call is yours yet. Open one below.</p>}
      <ul class="cards">
        {jobs.map((job) => (
          <Card key={job.job} job={job} crew={crew} waits={waits(job.job)} />
        ))}
      </ul>
      <NewCall me={me} crew={crew} />
      <p>
        <a class="key" href="/devices">
          Where you are signed in
        </a>
      </p>
      <Conditions />
    </main>
  );
}

interface CardProps {
  readonly job: JobCard;
  readonly crew: readonly CrewMember[];
  /** Replies of this job that are on this phone alone. */
  readonly waits: number;
}
/** Nobody has answered anything on it: what is asked first says nothing of it. */
const isNew = ({ state, begun }: JobCard): boolean => state === 'under-way' && !begun;

const Card = ({ job, crew, waits }: CardProps) => (
  <li data-state={job.state}>
    <a href={`/jobs/${encodeURIComponent(job.job)}`}>{job.title}</a>
    <p>
      <strong>{isNew(job) ? 'new' : STATES[job.state]}</strong>
      {job.training && ' · training'}
      {!isNew(job) && ` · ${job.where}`}
    </p>
    {job.state !== 'finished' && job.state !== 'signed' && <HowSoon urgency={job.urgency} />}
    {job.verdict !== null && <p>{job.verdict}</p>}
    <p>{job.isolation}</p>
    {waits > 0 && <p class="standing">{`${waits} on this phone, not on the server`}</p>}
    {job.assigned.length > 0 && (
      <p>{job.assigned.map((id) => crew.find((each) => each.id === id)?.name ?? id).join(', ')}</p>
    )}
  </li>
);
